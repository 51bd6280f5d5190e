/**
 * Where what can be painted lies: each place of the top that a word of a map fills, its frame, and what lies there now.
 * Several places can show one cell (repeats, a section laid twice); they are painted together.
 */
import type { BoxView, PlacedView, QuiltView } from "$/api/shapes";
import { boxOf, inverse, moved, inTurn, turnedInPlace, type Matrix, type Point } from "./motion";
import { wordOf } from "./words";

/** The name of the section that is the whole. */
export const ROOT = "centre";

export interface Cell {
  section: string;
  row: number;
  column: number;
}

export interface Spot extends Cell {
  index: number;
  /** The frame of the place: its top left corner at 0, 0, not turned. */
  frame: Matrix;
  /** Its size in that frame. */
  width: number;
  height: number;
  middle: Point;
  /** How a turn in the map is seen there, as `PlacedView.lie` tells. */
  lie: number;
  /** How deep in sections it lies: what lies deeper is found first. */
  depth: number;
  /** What lies there: a unit by name and seen turn; empty where the cloth below shows. */
  unit: string;
  turn: number;
}

const mod4 = (turn: number): number => ((turn % 4) + 4) % 4;

/** Return the turn seen at a place of a cell that the map writes with a turn. */
export function seen(lie: number, turn: number): number {
  return lie >= 4 ? mod4(lie - 4 - turn) : mod4(lie + turn);
}

/** Return the turn that the map writes for one that is to be seen at a place. */
export function unseen(lie: number, turn: number): number {
  return lie >= 4 ? mod4(lie - 4 - turn) : mod4(turn - lie);
}

/** Return a cell's address as one text. */
export function keyOf(cell: Cell): string {
  return `${cell.section}/${cell.row}/${cell.column}`;
}

/** How deep each section lies in others. */
type Depths = Map<string, number>;

function spotOfUnit(view: QuiltView, placed: PlacedView, index: number, depths: Depths): Spot | null {
  const unit = view.units[placed.unit];
  if (!placed.cell || !unit) return null;
  const undone = inverse(turnedInPlace(unit.width, unit.height, placed.turn));
  const frame = inTurn(undone, placed.at as Matrix);
  const [width, height] = placed.turn % 2 ? [unit.height, unit.width] : [unit.width, unit.height];
  return spot(placed.written, placed.cell, frame, width, height, placed.lie, index, depths, placed.unit, placed.turn);
}

function spotOfBox(box: BoxView, index: number, depths: Depths): Spot | null {
  if (!box.cell) return null;
  const frame = inTurn(inverse(turnedInPlace(box.width, box.height, box.turn)), box.at as Matrix);
  const [width, height] = box.turn % 2 ? [box.height, box.width] : [box.width, box.height];
  return spot(box.holder, box.cell, frame, width, height, box.lie, index, depths, "", 0);
}

function spot(
  section: string,
  cell: readonly [number, number],
  frame: Matrix,
  width: number,
  height: number,
  lie: number,
  index: number,
  depths: Depths,
  unit: string,
  turn: number,
): Spot {
  const middle = moved(frame, [width / 2, height / 2]);
  const depth = depths.get(section) ?? 0;
  return { section, row: cell[0], column: cell[1], index, frame, width, height, middle, lie, depth, unit, turn };
}

/** Return how deep each section lies in others, by the words of all maps; the root is 0. */
export function depthsOf(words: ReadonlyMap<string, readonly (readonly string[])[]>): Depths {
  const depths: Depths = new Map([[ROOT, 0]]);
  const queue = [ROOT];
  for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
    for (const text of (words.get(name) ?? []).flat()) {
      const word = wordOf(text);
      const depth = (depths.get(name) ?? 0) + 1;
      if (word?.kind === "section" && depth > (depths.get(word.name) ?? -1) && depth < 12) {
        depths.set(word.name, depth);
        queue.push(word.name);
      }
    }
  }
  return depths;
}

/** Return all places that can be painted, in the order in which they are drawn. */
export function spotsOf(view: QuiltView, depths: Depths): Spot[] {
  const found: Spot[] = [];
  const add = (made: Spot | null): void => {
    if (made) found.push(made);
  };
  for (const placed of view.placed) add(spotOfUnit(view, placed, found.length, depths));
  for (const box of view.boxes) add(spotOfBox(box, found.length, depths));
  return found;
}

/** Return the matrix that draws a unit of this size at a place, turned as seen there. */
export function drawnAt(place: Spot, width: number, height: number, turn: number): Matrix {
  return inTurn(turnedInPlace(width, height, turn), place.frame);
}

/** Tell whether a point of the top lies in a place. */
export function holds(place: Spot, point: Point): boolean {
  const [x, y] = moved(inverse(place.frame), point);
  return x >= 0 && y >= 0 && x <= place.width && y <= place.height;
}

/** Return the outline of a place in the window, as the data of a path. */
export function outline(place: Spot, look: { scale: number; x: number; y: number }): string {
  const corners = ([[0, 0], [1, 0], [1, 1], [0, 1]] as const).map(([x, y]) => {
    const [px, py] = moved(place.frame, [x * place.width, y * place.height]);
    return `${(look.x + px * look.scale).toFixed(1)} ${(look.y + py * look.scale).toFixed(1)}`;
  });
  return `M${corners.join("L")}z`;
}

/** Finds places by a point, quickly: they are kept in squares of a grid. */
export class Finding {
  private readonly squares = new Map<number, Spot[]>();
  private readonly side: number;

  constructor(spots: readonly Spot[]) {
    const sides = spots.map((each) => Math.max(each.width, each.height)).sort((a, b) => a - b);
    this.side = Math.max(sides[sides.length >> 1] ?? 1, 0.1);
    for (const each of spots) this.keep(each);
  }

  private keep(each: Spot): void {
    const [left, top, right, bottom] = boxOf(each.frame, each.width, each.height).map((n) => Math.floor(n / this.side));
    for (let y = top ?? 0; y <= (bottom ?? 0); y++) {
      for (let x = left ?? 0; x <= (right ?? 0); x++) {
        const key = y * 65_536 + x;
        const kept = this.squares.get(key);
        if (kept) kept.push(each);
        else this.squares.set(key, [each]);
      }
    }
  }

  /** Return the place at a point: the deepest one, or that of one section where it is named. */
  at(point: Point, section: string | null = null): Spot | null {
    const key = Math.floor(point[1] / this.side) * 65_536 + Math.floor(point[0] / this.side);
    let best: Spot | null = null;
    for (const each of this.squares.get(key) ?? []) {
      if (section !== null && each.section !== section) continue;
      if ((best === null || each.depth > best.depth) && holds(each, point)) best = each;
    }
    return best;
  }
}

export type Way = "left" | "right" | "up" | "down";
const STEPS: Record<Way, Point> = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] };

/**
 * Return the next place in a direction, or null at the edge. Sideways it stays in the row as seen; up and down it goes to
 * the nearest row, which on point is half a place away. `home` is where an upward or downward way began, so that it keeps straight.
 */
export function nextSpot(spots: readonly Spot[], from: Spot, way: Way, home: number): Spot | null {
  const [dx, dy] = STEPS[way];
  const level = dy === 0;
  const [x, y] = from.middle;
  let best: Spot | null = null;
  let least = Infinity;
  for (const each of spots) {
    const along = (each.middle[0] - x) * dx + (each.middle[1] - y) * dy;
    if (along < 1e-3) continue;
    const off = Math.abs(level ? each.middle[1] - y : each.middle[0] - home);
    const cost = along + off * (level ? 3 : 0.6);
    if (cost < least - 1e-6) [best, least] = [each, cost];
  }
  return best;
}
