/**
 * Every text of the page comes out of one catalogue. `{name}` in a text is filled; a text that counts is written once
 * for each plural form of its language (`one`, `other`), chosen by `{n}`.
 */
import english from "./en.json";

type Counted = { one?: string; few?: string; many?: string; other: string };
type Keys<T> = T extends string | { other: string }
  ? never
  : { [K in keyof T & string]: T[K] extends string | { other: string } ? K : `${K}.${Keys<T[K]>}` }[keyof T & string];

/** The dotted name of a text that the catalogue has. */
export type WordKey = Keys<typeof english>;
export type Fillings = Record<string, string | number>;

export const language = "en";
const plurals = new Intl.PluralRules(language);

function find(key: string): string | Counted | undefined {
  let here: unknown = english;
  for (const part of key.split(".")) {
    if (typeof here !== "object" || here === null) return undefined;
    here = (here as Record<string, unknown>)[part];
  }
  return typeof here === "string" || (typeof here === "object" && here !== null && "other" in here)
    ? (here as string | Counted)
    : undefined;
}

function filled(text: string, fillings: Fillings): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(fillings[name] ?? whole));
}

function chosen(text: string | Counted, fillings: Fillings): string {
  if (typeof text === "string") return text;
  const form = plurals.select(Number(fillings.n ?? 0));
  return (form in text ? text[form as keyof Counted] : text.other) ?? text.other;
}

/** Return a text of the catalogue with its blanks filled. */
export function t(key: WordKey, fillings: Fillings = {}): string {
  const text = find(key);
  return text === undefined ? key : filled(chosen(text, fillings), fillings);
}

/** Return a text whose name is only known while running, such as that of an act; `otherwise` where there is none. */
export function told(key: string, fillings: Fillings = {}, otherwise = ""): string {
  const text = find(key);
  return text === undefined ? otherwise : filled(chosen(text, fillings), fillings);
}
