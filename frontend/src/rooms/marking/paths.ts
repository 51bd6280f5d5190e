/**
 * Path data as the server writes it (absolute M, L, C, A and Z, with spaces between), moved into another frame, and
 * strung together so that it runs on from piece to piece. Frames are turned and mirrored, never stretched.
 */
import { moved, type Matrix, type Point } from "$/quilt/motion";

type Stretch =
  | { kind: "L"; from: Point; to: Point }
  | { kind: "C"; from: Point; to: Point; by: readonly [Point, Point] }
  | { kind: "A"; from: Point; to: Point; radius: number; sweep: boolean; large: boolean };
export interface Line {
  stretches: Stretch[];
  closed: boolean;
}

/** Return the lines that path data draws. Unknown letters end it. */
export function linesOf(data: string): Line[] {
  const words = data.trim().split(/[\s,]+/);
  const lines: Line[] = [];
  let k = 0;
  let here: Point = [0, 0];
  const number = (): number => Number(words[k++]);
  const point = (): Point => [number(), number()];
  const add = (stretch: Stretch): void => {
    lines[lines.length - 1]?.stretches.push(stretch);
    here = stretch.to;
  };
  while (k < words.length) {
    const letter = words[k++];
    if (letter === "M") {
      here = point();
      lines.push({ stretches: [], closed: false });
    } else if (letter === "L") add({ kind: "L", from: here, to: point() });
    else if (letter === "C") {
      const by = [point(), point()] as const;
      add({ kind: "C", from: here, by, to: point() });
    } else if (letter === "A") {
      const [radius, , , large, sweep] = [number(), number(), number(), number(), number()];
      add({ kind: "A", from: here, radius, large: large === 1, sweep: sweep === 1, to: point() });
    } else if (letter === "Z") {
      const line = lines[lines.length - 1];
      if (line) line.closed = true;
    } else return lines;
  }
  return lines;
}

function movedStretch(stretch: Stretch, at: Matrix): Stretch {
  const ends = { from: moved(at, stretch.from), to: moved(at, stretch.to) };
  if (stretch.kind === "L") return { kind: "L", ...ends };
  if (stretch.kind === "C") return { kind: "C", ...ends, by: [moved(at, stretch.by[0]), moved(at, stretch.by[1])] };
  const mirrored = at[0] * at[3] - at[1] * at[2] < 0;
  return { ...stretch, ...ends, sweep: stretch.sweep !== mirrored };
}

/** Return lines as they lie in another frame. */
export function movedLines(lines: readonly Line[], at: Matrix): Line[] {
  return lines.map((line) => ({ ...line, stretches: line.stretches.map((each) => movedStretch(each, at)) }));
}

function backwards(line: Line): Line {
  const stretches = line.stretches.map((each): Stretch => {
    const ends = { from: each.to, to: each.from };
    if (each.kind === "C") return { ...each, ...ends, by: [each.by[1], each.by[0]] };
    return each.kind === "A" ? { ...each, ...ends, sweep: !each.sweep } : { ...each, ...ends };
  });
  return { ...line, stretches: stretches.reverse() };
}

const startOf = (line: Line): Point | null => line.stretches[0]?.from ?? null;
const endOf = (line: Line): Point | null => line.stretches[line.stretches.length - 1]?.to ?? null;
const apart = (one: Point | null, other: Point | null): number =>
  one && other ? Math.hypot(one[0] - other[0], one[1] - other[1]) : Infinity;

/** Return lines each of which begins as near as can be where the one before it ends. */
export function strung(lines: readonly Line[]): Line[] {
  const found: Line[] = [];
  for (const [k, line] of lines.entries()) {
    const before = found[found.length - 1];
    const next = lines[k + 1];
    const goes = before
      ? apart(endOf(before), endOf(line)) < apart(endOf(before), startOf(line))
      : next !== undefined && nearest(startOf(line), next) < nearest(endOf(line), next);
    found.push(goes ? backwards(line) : line);
  }
  return found;
}

function nearest(point: Point | null, line: Line): number {
  return Math.min(apart(point, startOf(line)), apart(point, endOf(line)));
}

const figure = (n: number): string => String(+n.toFixed(4));
const pair = (point: Point): string => `${figure(point[0])} ${figure(point[1])}`;

function written(stretch: Stretch): string {
  if (stretch.kind === "L") return `L ${pair(stretch.to)}`;
  if (stretch.kind === "C") return `C ${pair(stretch.by[0])} ${pair(stretch.by[1])} ${pair(stretch.to)}`;
  const radius = figure(stretch.radius);
  return `A ${radius} ${radius} 0 ${Number(stretch.large)} ${Number(stretch.sweep)} ${pair(stretch.to)}`;
}

/** Return lines as path data; a line that begins within `joins` inches of where the last one ends goes on from it. */
export function dataOf(lines: readonly Line[], joins = 0): string {
  const parts: string[] = [];
  let end: Point | null = null;
  for (const line of lines) {
    const start = startOf(line);
    if (!start) continue;
    if (apart(end, start) > joins || joins === 0) parts.push(`M ${pair(start)}`);
    else parts.push(`L ${pair(start)}`);
    parts.push(...line.stretches.map(written));
    if (line.closed) parts.push("Z");
    end = line.closed ? null : endOf(line);
  }
  return parts.join(" ");
}

/** Return path data as it lies in another frame. */
export function movedData(data: string, at: Matrix): string {
  return dataOf(movedLines(linesOf(data), at));
}

/** Return path data that draws an upright rectangle. */
export function rectangle(width: number, height: number): string {
  return `M 0 0 L ${width} 0 L ${width} ${height} L 0 ${height} Z`;
}
