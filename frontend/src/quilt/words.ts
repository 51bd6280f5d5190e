/** Words of a map, as the file writes them: `a2`, `a-tl2`, `A`, `wreath1`. */
export type Word =
  | { kind: "unit"; name: string; turn: number }
  | { kind: "section"; name: string; turn: number }
  | { kind: "cloth"; name: string; turn: 0 };

const UNIT = /^([a-z]{1,2}(?:-[a-z]{2})?)([0-3])?$/;
const SECTION = /^([a-z]{3,20})([0-3])?$/;
const CLOTH = /^[A-Z]{1,2}$/;

/** Return what a word means; null where nothing stands (a strip of a line). */
export function wordOf(text: string): Word | null {
  if (CLOTH.test(text)) return { kind: "cloth", name: text, turn: 0 };
  for (const [kind, pattern] of [["unit", UNIT], ["section", SECTION]] as const) {
    const found = pattern.exec(text);
    if (found?.[1]) return { kind, name: found[1], turn: Number(found[2] ?? 0) };
  }
  return null;
}

/** Return a word as a map writes it. */
export function written(name: string, turn: number): string {
  return CLOTH.test(name) ? name : `${name}${turn}`;
}

/** Return a word turned so many quarters further clockwise; plain cloth stays as it is. */
export function turnedWord(text: string, by: number): string {
  const word = wordOf(text);
  return word ? written(word.name, (((word.turn + by) % 4) + 4) % 4) : text;
}

/** Return the colourways of the units among words, those that are there most often first. */
export function codesByCount(words: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const word of words) {
    const found = wordOf(word);
    const code = found?.kind === "unit" ? (found.name.split("-")[0] ?? "") : "";
    if (code) counts.set(code, (counts.get(code) ?? 0) + 1);
  }
  return [...counts.keys()].toSorted((one, other) => (counts.get(other) ?? 0) - (counts.get(one) ?? 0));
}
