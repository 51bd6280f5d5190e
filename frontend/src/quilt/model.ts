/**
 * The quilt as the page holds it: what the server drew, and on top of it what the hand has just painted and the server
 * has not answered yet.
 */
import type { KindView, QuiltView, SectionView } from "$/api/shapes";
import { depthsOf, Finding, keyOf, seen, spotsOf, type Cell, type Spot } from "./spots";
import { written, wordOf } from "./words";

export interface Painted extends Cell {
  word: string;
}

export class QuiltModel {
  readonly spots: Spot[];
  private readonly finding: Finding;
  private readonly byCell = new Map<string, Spot[]>();
  private readonly words: Map<string, string[][]>;

  constructor(
    readonly view: QuiltView,
    sections: readonly SectionView[],
  ) {
    this.words = new Map(sections.map((each) => [each.name, each.words.map((row) => [...row])]));
    this.spots = spotsOf(view, depthsOf(this.words));
    this.finding = new Finding(this.spots);
    for (const spot of this.spots) {
      const key = keyOf(spot);
      const kept = this.byCell.get(key);
      if (kept) kept.push(spot);
      else this.byCell.set(key, [spot]);
    }
  }

  /** Return the place at a point of the top. */
  at(x: number, y: number, section: string | null): Spot | null {
    return this.finding.at([x, y], section);
  }

  /** Return the word of a cell as it is written now; empty where none stands. */
  word(cell: Cell): string {
    const written = this.words.get(cell.section)?.[cell.row]?.[cell.column];
    if (written !== undefined) return written;
    const spot = this.byCell.get(keyOf(cell))?.[0];
    return spot?.unit ? `${spot.unit}${spot.turn}` : "";
  }

  /** Return the places that show a cell. */
  places(cell: Cell): readonly Spot[] {
    return this.byCell.get(keyOf(cell)) ?? [];
  }

  /** Write words into cells, and return the places that look otherwise now. */
  paint(cells: readonly Painted[]): Spot[] {
    const changed: Spot[] = [];
    for (const cell of cells) {
      if (this.word(cell) === cell.word) continue;
      const row = this.words.get(cell.section)?.[cell.row];
      if (row) row[cell.column] = cell.word;
      const word = wordOf(cell.word);
      if (!word || word.kind === "section") continue;
      for (const spot of this.places(cell)) {
        spot.unit = word.name;
        spot.turn = word.kind === "cloth" ? 0 : seen(spot.lie, word.turn);
        changed.push(spot);
      }
    }
    return changed;
  }

  /** Return the words of a block of cells of one section, for a copy. */
  block(section: string, top: number, left: number, bottom: number, right: number): string[][] {
    const rows = (this.words.get(section) ?? []).slice(top, bottom + 1);
    return rows.map((row) => row.slice(left, right + 1));
  }
}

/** Return what a hearer is told of a place: what lies there, and how it is turned. */
export function kindOf(kinds: ReadonlyMap<string, KindView>, word: string): { spoken: string; turn: number } | null {
  const found = wordOf(word);
  const kind = found && kinds.get(found.name);
  return found && kind ? { spoken: kind.spoken, turn: found.turn } : null;
}

export { written };
