/** What is laid over the quilt, as path data: joins, curves that flow, layers of cloth, and which way seams are pressed. */
import type { QuiltView, Schemas } from "$/api/shapes";
import { moved, type Matrix, type Point } from "$/quilt/motion";
import { dataOf, linesOf, movedLines, strung } from "$/rooms/marking/paths";
import type { Look } from "$/shell/scale";

export type SeamsView = Schemas["SeamsView"];
type Ends = readonly number[];
export const OVERLAYS = ["joins", "flow", "bulk", "pressing"] as const;
export type Overlay = (typeof OVERLAYS)[number];
/** What shows of a finding that lies on seams, by its code. */
export const TELLING: Readonly<Record<string, Overlay>> = {
  "edges-step": "joins",
  "seam-peaks": "joins",
  "round-left-open": "flow",
  "seam-bulky": "bulk",
  "pressing-clashes": "pressing",
  "wool-bulk": "pressing",
};
export const MEETINGS = ["match", "step", "end"] as const;
export type Meeting = (typeof MEETINGS)[number];

const n = (number: number): string => String(+number.toFixed(2));
const clamp = (low: number, number: number, high: number): number => Math.min(Math.max(low, number), high);

/** So far apart are the signs on a long seam, in pixels. */
const APART = 72;

/** Return the middle of a stretch, in pixels of the window. */
function middle(at: Ends, look: Look): Point {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = at;
  return [look.x + ((x1 + x2) / 2) * look.scale, look.y + ((y1 + y2) / 2) * look.scale];
}

/** Return where signs stand along a stretch: in the middle of equal parts of it. */
function along(at: Ends, look: Look): Point[] {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = at;
  const count = Math.max(1, Math.round((Math.hypot(x2 - x1, y2 - y1) * look.scale) / APART));
  const point = (part: number): Point => [look.x + (x1 + (x2 - x1) * part) * look.scale, look.y + (y1 + (y2 - y1) * part) * look.scale];
  return Array.from({ length: count }, (_, number) => point((number + 0.5) / count));
}

const SIGNS: Record<Meeting, (x: number, y: number, r: number) => string> = {
  match: (x, y, r) => `M${n(x - r)} ${n(y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0z`,
  step: (x, y, r) => `M${n(x - r)} ${n(y - r)}L${n(x + r)} ${n(y + r)}M${n(x + r)} ${n(y - r)}L${n(x - r)} ${n(y + r)}`,
  end: (x, y, r) => `M${n(x - r)} ${n(y - r)}h${n(2 * r)}v${n(2 * r)}h${n(-2 * r)}z`,
};

/** Return the signs of all joins: a disc where edges match, a cross where they step, an open square where one ends. */
export function joinSigns(joins: SeamsView["joins"], look: Look): Record<Meeting, string> {
  const signs: Record<Meeting, string[]> = { match: [], step: [], end: [] };
  const size = clamp(1.8, look.scale * 0.32, 6);
  for (const join of joins) {
    const meeting = join.meeting as Meeting;
    const [x, y] = middle(join.at, look);
    signs[meeting]?.push(SIGNS[meeting](x, y, meeting === "step" ? size * 1.25 : size * 0.9));
  }
  return { match: signs.match.join(""), step: signs.step.join(""), end: signs.end.join("") };
}

export function countOf(joins: SeamsView["joins"], meeting: Meeting): number {
  return joins.filter((join) => join.meeting === meeting).length;
}

/** Return arrows across each seam that is pressed to a side, and diamonds on each that is pressed open. */
export function pressSigns(pressing: SeamsView["pressing"], look: Look): { arrows: string; open: string } {
  const [arrows, open]: [string[], string[]] = [[], []];
  const size = clamp(3, look.scale * 0.9, 11);
  for (const { at, towards } of pressing) {
    for (const [x, y] of along(at, look)) {
      if (towards) arrows.push(arrow(x, y, towards[0], towards[1], size));
      else open.push(`M${n(x - size / 2)} ${n(y)}l${n(size / 2)} ${n(-size / 2)}l${n(size / 2)} ${n(size / 2)}l${n(-size / 2)} ${n(size / 2)}z`);
    }
  }
  return { arrows: arrows.join(""), open: open.join("") };
}

/** An arrow starts so much of its length behind the seam: where two meet on a narrow strip, both are seen. */
const TAIL = 0.35;

function arrow(x: number, y: number, dx: number, dy: number, size: number): string {
  const [tx, ty] = [x + dx * size, y + dy * size];
  const barb = (side: number): string => {
    const [bx, by] = [tx - dx * size * 0.7 - dy * side * size * 0.5, ty - dy * size * 0.7 + dx * side * size * 0.5];
    return `M${n(tx)} ${n(ty)}L${n(bx)} ${n(by)}`;
  };
  return `M${n(x - dx * size * TAIL)} ${n(y - dy * size * TAIL)}L${n(tx)} ${n(ty)}${barb(1)}${barb(-1)}`;
}

export interface Thickness {
  layers: number;
  path: string;
  /** Where the number stands. */
  middles: Point[];
}

const INSET = 0.14;
/** Layers that are worth a line: one is nothing but the unit's own cloth. */
const LEAST = 2;

function stretch(side: string, start: number, end: number, width: number, height: number): readonly [Point, Point] {
  if (side === "top") return [[start, INSET], [end, INSET]];
  if (side === "bottom") return [[start, height - INSET], [end, height - INSET]];
  if (side === "left") return [[INSET, start], [INSET, end]];
  return [[width - INSET, start], [width - INSET, end]];
}

/** Return, by how many layers lie in the allowances, where that is, the thickest last. */
export function thicknesses(layers: SeamsView["layers"], view: QuiltView): Thickness[] {
  const found = new Map<number, { parts: string[]; middles: Point[] }>();
  for (const placed of view.placed) {
    const unit = view.units[placed.unit];
    if (!unit) continue;
    for (const each of layers[placed.unit] ?? []) {
      if (each.layers < LEAST) continue;
      const ends = stretch(each.side, each.start, each.end, unit.width, unit.height);
      const [from, to] = [moved(placed.at as Matrix, ends[0]), moved(placed.at as Matrix, ends[1])];
      const kept = found.get(each.layers) ?? { parts: [], middles: [] };
      kept.parts.push(`M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}`);
      kept.middles.push([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
      found.set(each.layers, kept);
    }
  }
  return [...found]
    .sort(([one], [other]) => one - other)
    .map(([count, { parts, middles }]) => ({ layers: count, path: parts.join(""), middles }));
}

export interface Strand {
  path: string;
  tint: string;
  trail: SeamsView["trails"][number];
}

const GOLDEN = 137.508;

/** Return each curve that is followed as one line, in inches, with a tint of its own. */
export function strands(seams: SeamsView, view: QuiltView): Strand[] {
  return seams.trails.map((trail, k) => {
    const lines = trail.units.flatMap((place, passed) => {
      const placed = view.placed[place];
      const data = placed && seams.curves[placed.unit]?.[trail.numbers[passed] ?? 0];
      return placed && data ? movedLines(linesOf(data), placed.at as Matrix) : [];
    });
    const [hue, light] = [(k * GOLDEN) % 360, 38 + ((k * 7) % 3) * 9];
    return { path: dataOf(strung(lines), 0.08), tint: `hsl(${hue.toFixed(0)} 78% ${light}%)`, trail };
  });
}
