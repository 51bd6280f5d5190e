/** One stroke of the hand over the quilt: what it has touched, and the act that it comes to. */
import type { Act } from "$/api/shapes";
import type { Painted } from "$/quilt/model";
import { keyOf } from "$/quilt/spots";
import { wordOf } from "$/quilt/words";

export class Stroke {
  private readonly cells = new Map<string, Painted>();
  /** Quarter turns, where all that was touched was turned alike; null where it was laid or turned both ways. */
  private by: number | null | undefined;

  /** Touch some cells, and return those that this stroke has not touched before. */
  touch(painted: readonly Painted[], by: number | null): Painted[] {
    const fresh = painted.filter((each) => !this.cells.has(keyOf(each)));
    for (const each of fresh) this.cells.set(keyOf(each), each);
    if (fresh.length) this.by = this.by === undefined || this.by === by ? by : null;
    return fresh;
  }

  get size(): number {
    return this.cells.size;
  }

  /** Return the act; null where nothing was touched. */
  act(): Act | null {
    return actOf([...this.cells.values()], this.by ?? null);
  }
}

/** Return the act that writes words into cells: a turn where `by` says so, else a laying. */
export function actOf(painted: readonly Painted[], by: number | null): Act | null {
  const cells = painted.map(({ section, row, column }) => ({ section, row, column }));
  if (cells.length === 0) return null;
  if (by !== null) return { name: "turn", cells, by };
  const words = painted.map((each) => wordOf(each.word));
  const units = words.map((word) => word?.name ?? "");
  const turns = words.map((word) => word?.turn ?? 0) as (0 | 1 | 2 | 3)[];
  const isOne = new Set(units).size === 1;
  return { name: "lay", cells, unit: units[0] ?? "", turns, ...(isOne ? {} : { units }) };
}

/** Return points on the way from one place to another, so close that no unit between is missed. */
export function pointsBetween(
  from: readonly [number, number],
  to: readonly [number, number],
  apart: number,
): (readonly [number, number])[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / apart));
  return Array.from({ length: steps }, (_, k) => {
    const share = (k + 1) / steps;
    return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share] as const;
  });
}
