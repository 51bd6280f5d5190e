/**
 * Prints of fabrics, by the names of their patterns. A print lies in its unit and turns with it; of a fabric that must
 * stand upright the pattern is turned back by as much, in steps of an eighth.
 */
import type { Matrix } from "./motion";

export const PRINT_TURNS = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** What a pattern shows of a fabric: its photo, or the way in which its print runs. */
export type Shows = "print" | "way";

export const printId = (letter: string, turn = 0, shows: Shows = "print"): string => `${shows}-${letter}-${turn}`;

export interface Clothed {
  letter: string;
  colour: string;
  upright?: boolean;
  photo?: { inches: number | null } | null;
  /** Whether the way of its print is shown, instead of what it looks like. */
  showsWay?: boolean;
}

const shows = (fabric: Clothed): Shows | null => (fabric.showsWay ? "way" : fabric.photo?.inches ? "print" : null);

/** Return what fills with a fabric: the pattern of a photo whose scale is known, or its colour. */
export function paintOf(fabric: Clothed): string {
  const pattern = shows(fabric);
  return pattern ? `url(#${printId(fabric.letter, 0, pattern)})` : fabric.colour;
}

/** A fabric whose pattern is turned back, as one word: its letter and what is shown of it. */
export type Upright = `${string}/${Shows}`;

/** Return the fabrics whose prints stand upright and are shown. */
export function uprightOf(fabrics: readonly Clothed[]): Upright[] {
  return fabrics.flatMap((fabric) => {
    const pattern = shows(fabric);
    return fabric.upright && pattern ? [`${fabric.letter}/${pattern}` as const] : [];
  });
}

/** Return the properties that turn upright prints back where something is laid by a matrix. */
export function turnedBack(upright: readonly Upright[], [a, b]: Matrix): string {
  const turn = ((Math.round((Math.atan2(b, a) * 180) / Math.PI / 45) * 45) + 360) % 360;
  if (turn === 0) return "";
  const named = upright.map((each) => each.split("/") as [string, Shows]);
  return named.map(([letter, pattern]) => `--cloth-${letter}:url(#${printId(letter, turn, pattern)})`).join(";");
}
