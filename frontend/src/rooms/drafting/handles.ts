/** What a hand does to a master by its handles: how far things move, and the acts that come of it. Inches, y down. */
import type { Act } from "$/api/shapes";
import { readLength, snapped, writeLength, type Units } from "$/measure/length";
import type { DraftView, ShapeView } from "./drafts";

export type Point = readonly [number, number];
export type Cut = readonly [number, number, number, number];

/** What is being moved, and how it stands while it moves. */
export type Held =
  | { what: "size"; shape: number; width: number }
  | { what: "place"; shape: number; at: Point }
  | { what: "turn"; shape: number; degrees: number }
  | { what: "cut"; cut: number; end: 0 | 1; line: Cut };

const LEAST = 0.25;

export const isCircle = (shape: ShapeView): boolean => shape.outline === "circle";
/** Whether its place is free: of recipes that have one shape it is the middle. */
export const isPlaced = (draft: DraftView): boolean => draft.kind === "shapes cut";
/** How finely it turns: by quarters where it is cut both ways into units that are alike. */
export const turnStep = (draft: DraftView): number => (isPlaced(draft) ? 5 : 90);

export function widthOf(shape: ShapeView, units: Units): number {
  return readLength(shape.width, units) ?? 0;
}

export function placeOf(shape: ShapeView, units: Units): Point {
  return [readLength(shape.at[0], units) ?? 0, readLength(shape.at[1], units) ?? 0];
}

function turned([x, y]: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}

/** Return where the handles of a shape stand on the master: at its right side, and off its left one. */
export function handlesOf(shape: ShapeView, units: Units, away: number): { size: Point; turn: Point } {
  const half = widthOf(shape, units) / 2;
  const [x, y] = shape.middle;
  const side = turned([half, 0], shape.degrees);
  const off = turned([-half - away, 0], shape.degrees);
  return { size: [x + side[0], y + side[1]], turn: [x + off[0], y + off[1]] };
}

/** Return the width that a shape has when its side is dragged to a point. */
export function widthTo(shape: ShapeView, to: Point, step: number): number {
  const [x, y] = turned([to[0] - shape.middle[0], to[1] - shape.middle[1]], -shape.degrees);
  return Math.max(snapped(2 * (isCircle(shape) ? Math.hypot(x, y) : Math.abs(x)), step), LEAST);
}

/** Return the degrees that a shape is turned by when its left handle is dragged to a point. */
export function degreesTo(shape: ShapeView, to: Point, step: number): number {
  const [x, y] = [to[0] - shape.middle[0], to[1] - shape.middle[1]];
  const degrees = (Math.atan2(-y, -x) * 180) / Math.PI;
  return wrapped(snapped(degrees, step));
}

export const wrapped = (degrees: number): number => ((Math.round(degrees * 100) / 100 % 360) + 360) % 360;

/** Return a cut with one end at a point. */
export function cutTo(line: Cut, end: 0 | 1, to: Point, step: number): Cut {
  const [x, y] = [snapped(to[0], step), snapped(to[1], step)];
  return end === 0 ? [x, y, line[2], line[3]] : [line[0], line[1], x, y];
}

/** Return the matrix that shows a shape as it is held, of how it lies in its master. */
export function heldAs(held: Held, shape: ShapeView, units: Units): string {
  const [x, y] = shape.middle;
  if (held.what === "size") {
    const scale = held.width / (widthOf(shape, units) || 1);
    return `translate(${x} ${y}) scale(${scale}) translate(${-x} ${-y})`;
  }
  if (held.what === "turn") return `rotate(${held.degrees - shape.degrees} ${x} ${y})`;
  if (held.what === "place") {
    const [left, top] = placeOf(shape, units);
    return `translate(${held.at[0] - left} ${held.at[1] - top})`;
  }
  return "";
}

/** Return whether what is held stands otherwise than it did. */
export function isMoved(held: Held, draft: DraftView, units: Units): boolean {
  if (held.what === "cut") return String(draft.master?.cuts[held.cut]) !== String(held.line);
  const shape = draft.master?.shapes[held.shape];
  if (!shape) return false;
  if (held.what === "size") return Math.abs(held.width - widthOf(shape, units)) > 1e-6;
  if (held.what === "turn") return Math.abs(held.degrees - wrapped(shape.degrees)) > 1e-6;
  const [x, y] = placeOf(shape, units);
  return Math.hypot(held.at[0] - x, held.at[1] - y) > 1e-6;
}

/** Return what is held in words of the file. */
export function heldText(held: Held, units: Units): string {
  if (held.what === "size") return writeLength(held.width, units);
  if (held.what === "turn") return `${held.degrees}°`;
  const [x, y] = held.what === "place" ? held.at : held.end === 0 ? held.line : [held.line[2], held.line[3]];
  return `${writeLength(x, units)} · ${writeLength(y, units)}`;
}

/** Return the act that leaves the design as the hand holds it. */
export function actOf(held: Held, draft: DraftView, units: Units): Act {
  if (held.what === "cut") return cutsAct(draft, (draft.master?.cuts ?? []).map((cut, k) => (k === held.cut ? held.line : cut)), units);
  const key = draft.master?.shapes[held.shape]?.key ?? "";
  if (held.what === "place") return { name: "put", at: `${key}.at`, value: held.at.map((each) => writeLength(each, units)) };
  if (held.what === "turn") {
    const turn = isPlaced(draft) ? held.degrees : Math.round(held.degrees / 90) % 4;
    return { name: "put", at: `${key}.turn`, value: turn };
  }
  const text = writeLength(held.width, units);
  if (draft.kind !== "circle cut both ways") return { name: "put", at: `${key}.width`, value: text };
  return { name: "puts", values: { [`${key}.diameter`]: text, [`${key}.radius`]: null, [`${key}.flow`]: null } };
}

/** Return the act that writes the cuts of a recipe as lines of one's own. */
export function cutsAct(draft: DraftView, cuts: readonly Cut[], units: Units): Act {
  const point = (x: number, y: number): string[] => [writeLength(x, units), writeLength(y, units)];
  return { name: "put", at: `${draft.key}.cuts`, value: cuts.map(([a, b, c, d]) => [point(a, b), point(c, d)]) };
}

const WAYS: Record<string, Point> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** Return how what is held stands after an arrow key; null for other keys. */
export function heldAfter(held: Held, key: string, step: number, draft: DraftView): Held | null {
  const way = WAYS[key];
  if (!way) return null;
  const more = way[0] - way[1];
  if (held.what === "size") return { ...held, width: Math.max(snapped(held.width + more * step, step), LEAST) };
  if (held.what === "turn") return { ...held, degrees: wrapped(held.degrees + more * turnStep(draft)) };
  const [dx, dy] = [way[0] * step, way[1] * step];
  if (held.what === "place") return { ...held, at: [snapped(held.at[0] + dx, step), snapped(held.at[1] + dy, step)] };
  const from: Point = held.end === 0 ? [held.line[0], held.line[1]] : [held.line[2], held.line[3]];
  return { ...held, line: cutTo(held.line, held.end, [from[0] + dx, from[1] + dy], step) };
}
