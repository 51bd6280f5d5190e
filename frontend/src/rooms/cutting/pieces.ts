/** A plan as it is walked by keys: its strips, the pieces on them, and what each piece is called and counts. */
import { t } from "$/words/words";
import type { PlanView } from "./changes";

export interface Spot {
  /** Its strip and its place on it; what is left over has no label and is not among them. */
  strip: number;
  place: number;
  label: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Return all pieces of a plan that have a name, strip by strip. */
export function spotsOf(plan: PlanView): Spot[][] {
  return plan.strips.map((strip, number) =>
    strip.pieces
      .filter((piece) => piece.label)
      .map((piece, place) => ({ ...piece, strip: number, place })),
  );
}

/** Return what a piece is, for those who hear or point at it. */
export function spokenPiece({ label, name, size, count }: PlanView["pieces"][number]): string {
  return t("rooms.cutting.piece-spoken", { label, name, size, n: count });
}

/** Return which pieces of the bill a label of the plan stands for: itself, or what is cut from the run of its strip. */
export function piecesOf(plan: PlanView, label: string): string[] {
  if (plan.pieces.some((piece) => piece.label === label)) return [label];
  const runs = plan.runs.filter((run) => run.strip === label || run.label === label);
  return runs.flatMap((run) => run.pieces.map((piece) => piece.label));
}

const STEPS: Record<string, readonly [number, number]> = {
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
};

/** Return the piece that a key goes to from another: along its strip, or to what lies nearest on the next one. */
export function next(spots: readonly (readonly Spot[])[], from: Spot, key: string): Spot | null {
  const strip = spots[from.strip] ?? [];
  if (key === "Home") return strip[0] ?? null;
  if (key === "End") return strip[strip.length - 1] ?? null;
  const step = STEPS[key];
  if (!step) return null;
  if (step[1]) return strip[from.place + step[1]] ?? null;
  const middle = from.x + from.width / 2;
  for (let k = from.strip + step[0]; k >= 0 && k < spots.length; k += step[0]) {
    const there = spots[k] ?? [];
    if (there.length) return there.reduce((best, each) => (off(each, middle) < off(best, middle) ? each : best));
  }
  return null;
}

function off(spot: Spot, x: number): number {
  return Math.max(spot.x - x, x - spot.x - spot.width, 0);
}
