/** Where the cloth of a plan is drawn: what comes off the bolt, and below it each piece of cloth by itself. Pixels. */
import type { PlanView } from "./changes";

/** Room at the left for the names of strips, above for what is said of a piece of cloth, and between pieces. */
export const GUTTER = 62;
export const RULER = 24;
const LINE = 16;
const EDGE = 14;
const GAP = 18;
/** What is said of a piece of cloth takes so much for each letter. */
const LETTER = 5.8;

type ParcelView = PlanView["parcels"][number];

export interface Laid {
  parcel: ParcelView;
  /** Its corner as it is squared up. */
  x: number;
  y: number;
}

export interface Layout {
  width: number;
  height: number;
  parcels: readonly Laid[];
}

export const hasBolt = (plan: PlanView): boolean => plan.bought.inches > 0;

/** Return how wide the widest cloth of a plan is, in inches. */
export function widest(plan: PlanView): number {
  return Math.max(...plan.parcels.map((each) => each.whole_width), hasBolt(plan) ? plan.width.inches : 0, 1);
}

/** Return the pixels an inch by which the widest cloth goes into a window. */
export const fitting = (plan: PlanView, wide: number): number => (wide - GUTTER - EDGE) / widest(plan);

/** Return the room above a piece of cloth: a line for what it is, and one where its strips run along it. */
const headOf = (parcel: ParcelView): number => (parcel.upright ? 2 : 1) * LINE + 12;

/** Return where all cloth is drawn: pieces side by side as far as the window goes, in rows below the bolt. */
export function layoutOf(plan: PlanView, scale: number, wide: number): Layout {
  const bolt = hasBolt(plan) ? RULER + plan.bought.inches * scale + GAP : 0;
  let [left, top, tall, far] = [0, bolt, 0, hasBolt(plan) ? GUTTER + plan.width.inches * scale + EDGE : 0];
  const parcels = plan.parcels.map((parcel) => {
    const head = headOf(parcel);
    const width = Math.max(GUTTER + parcel.whole_width * scale, parcel.said.length * LETTER) + EDGE;
    if (left > 0 && left + width > wide) [left, top, tall] = [0, top + tall, 0];
    const laid = { parcel, x: left + GUTTER, y: top + head };
    left += width;
    tall = Math.max(tall, head + parcel.whole_height * scale + GAP);
    far = Math.max(far, left);
    return laid;
  });
  return { width: far, height: top + tall, parcels };
}

/** Return where the corner of a plan's inches lies for what is on a strip. */
export function cornerOf(strip: PlanView["strips"][number], layout: Layout, scale: number): readonly [number, number] {
  const laid = strip.parcel === null ? undefined : layout.parcels[strip.parcel];
  return laid ? [laid.x, laid.y - laid.parcel.y * scale] : [GUTTER, RULER];
}
