/** What the hand holds: the tool, what is loaded, how the brush repeats it, where it works, and what is marked. */
import type { KindView } from "$/api/shapes";
import { desk } from "$/desk/desk.svelte";
import { keyOf, type Cell } from "$/quilt/spots";
import { BRUSHES, strokes, type Brush, type Ground, type Paint } from "$/quilt/symmetry";
import { turnedWord, written, wordOf } from "$/quilt/words";
import type { Painted } from "$/quilt/model";

export const TOOLS = ["turn", "lay", "mark", "pan"] as const;
export type Tool = (typeof TOOLS)[number];
/** A turn of what is laid, or that of what lay there before. */
export type LaidTurn = 0 | 1 | 2 | 3 | "own";
export const LAID_TURNS: readonly LaidTurn[] = [0, 1, 2, 3, "own"];

class BrushState {
  tool = $state<Tool>("turn");
  /** A unit, fabric or section by its name; empty: nothing yet. */
  loaded = $state("");
  turn = $state<LaidTurn>(0);
  symmetry = $state<Brush>("none");
  every = $state(0);
  /** The section that is worked in alone; null: whatever lies on top. */
  section = $state<string | null>(null);
  marked = $state.raw<ReadonlyMap<string, Cell>>(new Map());
  copied = $state.raw<string[][]>([]);

  load(name: string): void {
    this.loaded = name;
    this.tool = "lay";
  }

  /** Lay down what the design on the desk does not have (any more). */
  fit(): void {
    const has = (name: string): boolean =>
      desk.kinds.has(name) ||
      !!desk.paper?.fabrics.some((fabric) => fabric.letter === name) ||
      !!desk.paper?.sections.some((section) => section.name === name);
    if (this.loaded && !has(this.loaded)) [this.loaded, this.tool] = ["", "turn"];
    if (this.section !== null && !has(this.section)) this.section = null;
    const kept = [...this.marked.values()].filter((cell) => desk.quilt?.places(cell).length);
    if (kept.length !== this.marked.size) this.mark(kept);
  }

  mark(cells: readonly Cell[]): void {
    this.marked = new Map(cells.map((cell) => [keyOf(cell), cell]));
  }

  next<T>(list: readonly T[], now: T, by = 1): T {
    const at = (list.indexOf(now) + by + list.length) % list.length;
    return list[at] ?? now;
  }

  nextSymmetry(): void {
    this.symmetry = this.next(BRUSHES, this.symmetry);
  }

  /** Return the ground of a section's map; null where the brush cannot repeat: in a line, or the corners of a border. */
  ground(section: string): Ground | null {
    const found = desk.paper?.sections.find((each) => each.name === section);
    if (!found || (found.kind !== "straight" && found.kind !== "on point")) return null;
    const isOnPoint = found.kind === "on point";
    return { rows: isOnPoint ? (found.rows + 1) / 2 : found.rows, columns: found.columns, on_point: isOnPoint };
  }

  /** Return what is written, with all that the symmetry repeats, when what is loaded is laid in a cell. */
  laid(cell: Cell): Painted[] {
    const own = wordOf(desk.quilt?.word(cell) ?? "")?.turn ?? 0;
    const turn = this.turn === "own" ? own : this.turn;
    return this.repeated(cell, paintOf(this.loaded, turn, desk.kinds)).map((each) => ({
      ...each,
      word: this.turn === "own" && this.symmetry === "none" ? this.kept(each) : each.word,
    }));
  }

  /** Return what is written when what lies in a cell, and in all that repeat it, is turned. */
  turned(cell: Cell, by: number): Painted[] {
    const model = desk.quilt;
    const word = wordOf(model?.word(cell) ?? "");
    if (!model || !word || word.kind === "cloth") return [];
    const cells = this.repeated(cell, paintOf(word.name, word.turn, desk.kinds));
    return cells.map((each, k) => {
      const isMirrored = k > 0 && this.symmetry.startsWith("mirror") && isFlipped(each, cell);
      return { ...each, word: turnedWord(model.word(each), isMirrored ? -by : by) };
    });
  }

  private kept(each: Painted): string {
    const lies = wordOf(desk.quilt?.word(each) ?? "");
    return written(this.loaded, lies?.turn ?? 0);
  }

  private repeated(cell: Cell, paint: Paint): Painted[] {
    const ground = this.ground(cell.section);
    const alone = { section: cell.section, row: cell.row, column: cell.column, word: written(paint.unit, paint.turn) };
    if (!ground) return [alone];
    return strokes(ground, cell.row, cell.column, paint, this.symmetry, this.every).map((laid) => ({
      section: cell.section,
      row: laid.row,
      column: laid.column,
      word: written(laid.unit, laid.turn),
    }));
  }
}

/** A cell that is the image of another in one mirror alone turns the other way. */
function isFlipped(each: Cell, cell: Cell): boolean {
  return (each.row !== cell.row) !== (each.column !== cell.column);
}

/** Return what the brush paints of a name: a unit with its mirror image, plain cloth, or a section, which has none. */
export function paintOf(name: string, turn: number, kinds: ReadonlyMap<string, KindView>): Paint {
  const kind = kinds.get(name);
  const isCloth = /^[A-Z]/.test(name);
  return {
    unit: name,
    turn: isCloth ? 0 : turn,
    mirror: isCloth ? name : (kind?.mirror ?? null),
    mirror_turn: isCloth ? 0 : (kind?.mirror_turn ?? 0),
    turns: !isCloth,
  };
}

export const brush = new BrushState();
