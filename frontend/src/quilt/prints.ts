/**
 * Prints of fabrics, by the names of their patterns. A print lies in its unit and turns with it; of a fabric that must
 * stand upright the pattern is turned back by as much, in steps of an eighth.
 */
import type { Matrix } from "./motion";

export const PRINT_TURNS = [0, 45, 90, 135, 180, 225, 270, 315] as const;

export const printId = (letter: string, turn = 0): string => `print-${letter}-${turn}`;

export interface Clothed {
  letter: string;
  colour: string;
  upright?: boolean;
  photo?: { inches: number | null } | null;
}

/** Return what fills with a fabric: the pattern of a photo whose scale is known, or its colour. */
export function paintOf(fabric: Clothed): string {
  return fabric.photo?.inches ? `url(#${printId(fabric.letter)})` : fabric.colour;
}

/** Return the letters of fabrics whose prints stand upright and are shown. */
export function uprightOf(fabrics: readonly Clothed[]): string[] {
  return fabrics.filter((fabric) => fabric.upright && fabric.photo?.inches).map((fabric) => fabric.letter);
}

/** Return the properties that turn upright prints back where something is laid by a matrix. */
export function turnedBack(letters: readonly string[], [a, b]: Matrix): string {
  const turn = ((Math.round((Math.atan2(b, a) * 180) / Math.PI / 45) * 45) + 360) % 360;
  return turn === 0 ? "" : letters.map((letter) => `--cloth-${letter}:url(#${printId(letter, turn)})`).join(";");
}
