/** The contact sheet of the finder: what is asked, how a setting is drawn from words, and how keys move over the sheet. */
import type { Schemas } from "$/api/shapes";
import { attribute, turnedInPlace } from "$/quilt/motion";
import { wordOf } from "$/quilt/words";

export type FindView = Schemas["FindView"];
export type FoundView = Schemas["FoundView"];
export type FinderView = Schemas["FinderView"];
export type FindQuestion = Schemas["FindQuestion"];
export type SymmetryName = NonNullable<FindQuestion["symmetry"]>;

export const REPEATS = [1, 2, 3, 4] as const;
export const SYMMETRIES = ["slide", "mirror", "turn", "half turn"] as const satisfies readonly SymmetryName[];
export const MEASURES = ["flow", "rounds", "cloth", "balance"] as const;
export const FEW = 12;
export const MANY = 48;

/** A unit of a picture: which one, and where it lies. */
export interface Laid {
  code: string;
  transform: string;
}

interface Sized {
  width: number;
  height: number;
}

/** Return where the units of a picture lie; all units of a search are squares of one size. */
export function laidUnits(rows: readonly (readonly string[])[], units: Readonly<Record<string, Sized>>): Laid[] {
  return rows.flatMap((row, down) =>
    row.flatMap((text, across) => {
      const word = wordOf(text);
      const unit = word && units[word.name];
      if (!word || !unit) return [];
      const [a, b, c, d, e, f] = turnedInPlace(unit.width, unit.height, word.turn);
      return [{ code: word.name, transform: attribute([a, b, c, d, e + across * unit.width, f + down * unit.height]) }];
    }),
  );
}

/** Return the codes to search with: those that lie in the quilt and fit, of one size, as many as can be. */
export function firstCodes(view: FinderView): string[] {
  const fit = view.codes.filter((each) => !each.why);
  const laid = fit.filter((each) => each.laid);
  const some = laid.length ? laid : fit;
  return some.filter((each) => each.side === some[0]?.side).slice(0, view.most).map((each) => each.code);
}

/** Return the side of the units that are searched with, where another has another: that cannot lie with them. */
export function otherSide(view: FinderView, used: readonly string[], code: string): string {
  const side = (of: string | undefined): string => view.codes.find((each) => each.code === of)?.side ?? "";
  const ours = side(used[0]);
  return ours && side(code) && side(code) !== ours ? ours : "";
}

/** Return the place on a sheet of so many columns that a key goes to, or null where it is no such key. */
export function placeAfter(key: string, place: number, count: number, columns: number): number | null {
  const ways: Record<string, number> = {
    ArrowLeft: place - 1,
    ArrowRight: place + 1,
    ArrowUp: place - columns,
    ArrowDown: place + columns,
    Home: 0,
    End: count - 1,
  };
  const wanted = ways[key];
  if (wanted === undefined) return null;
  return wanted < 0 || wanted >= count ? place : wanted;
}

/** Return how many columns a grid has, by where its items lie. */
export function columnsOf(items: Iterable<{ offsetTop: number }>): number {
  const tops = [...items].map((item) => item.offsetTop);
  return Math.max(1, tops.filter((top) => top === tops[0]).length);
}

export const hundredths = (share: number): number => Math.round(share * 100);
