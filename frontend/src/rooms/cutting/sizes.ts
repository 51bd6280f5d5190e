/** Sizes as the file writes them: their keys, their beds, and the values that differ. */
import type { JsonValue, PaperView } from "$/api/shapes";
import { t, told } from "$/words/words";

/** Return a part of a dotted key as the file writes it: in quotes where it is no bare word. */
const quoted = (part: string): string => (/^[A-Za-z0-9_-]+$/.test(part) ? part : JSON.stringify(part));

export const sizeKey = (name: string): string => `sizes.${quoted(name)}`;

/** Return what is put where a size is meant for a known bed, for a mattress of these sides, or (nothing) for no bed. */
export function bedValues(key: string, stated: Readonly<Record<string, unknown>>, bed: string | readonly string[]): Record<string, JsonValue> {
  const values: Record<string, JsonValue> = { [`${key}.bed`]: null, [`${key}.mattress`]: null };
  if (typeof bed !== "string") return { ...values, [`${key}.mattress`]: [...bed] };
  if (bed) return { ...values, [`${key}.bed`]: bed };
  for (const name of ["drop", "tuck", "within"]) if (name in stated) values[`${key}.${name}`] = null;
  return values;
}

/** Return a value as it is typed: a number, yes or no, a list or table of JSON, or else text such as a length. */
export function readValue(text: string): JsonValue {
  if (text === t("rooms.cutting.sized.gone")) return {};
  try {
    return JSON.parse(text) as JsonValue;
  } catch {
    return text;
  }
}

/** Return a value as it is typed; what is taken away in a size is told by a word. */
export function writeValue(value: unknown): string {
  if (typeof value === "string") return value;
  const text = JSON.stringify(value);
  return text === "{}" ? t("rooms.cutting.sized.gone") : text;
}

const PLACES = [
  [/^(?:setting|sections\.(?<of>\w+))\.(?<what>across|down)$/, "repeats"],
  [/^(?:sections\.(?<of>\w+)\.)?borders\.(?<n>\d+)\.width$/, "border-width"],
  [/^(?:sections\.(?<of>\w+)\.)?borders\.(?<n>\d+)$/, "border"],
  [/^recipes\.(?<of>"[^"]+"|[\w-]+)\.finished$/, "finished"],
] as const;

/** Return what a place of the file is called; the key itself of one that has no words. */
export function calledPlace(key: string): string {
  for (const [pattern, word] of PLACES) {
    const { of, n, what } = pattern.exec(key)?.groups ?? {};
    if (n === undefined && what === undefined && of === undefined) continue;
    const said = told(`rooms.cutting.sized.places.${what ?? word}`, { n: Number(n) + 1, of: of ?? "" });
    return of && word !== "finished" ? t("rooms.cutting.sized.places.of", { what: said, of }) : said;
  }
  return key;
}

/** Return the places of the file that differ most often from size to size. */
export function oftenChanged(paper: PaperView | null): string[] {
  const sections = (paper?.sections ?? []).flatMap((section) => [
    ...(section.kind === "straight" ? [`${section.key}.across`, `${section.key}.down`] : []),
    ...section.borders.filter((border) => border.width !== null).map((border) => `${border.key}.width`),
    ...section.borders.map((border) => border.key),
  ]);
  return [...sections, ...(paper?.recipes ?? []).map((recipe) => `recipes.${quoted(recipe.name)}.finished`)];
}
