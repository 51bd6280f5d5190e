/** What the drafting table asks of the server, and how it reads the records that come. */
import { ask, get } from "$/api/client";
import type { Act, ColourwayView, FabricView, FindingView, Schemas } from "$/api/shapes";

export type BlocksView = Schemas["BlocksView"];
export type DraftView = Schemas["DraftView"];
export type MasterView = Schemas["MasterView"];
export type ShapeView = Schemas["ShapeView"];
export type SewnView = Schemas["SewnView"];
export type DraftUnit = Schemas["DraftUnit"];
export type OutlinesView = Schemas["OutlinesView"];
export type ProofView = Schemas["ProofView"];

const of = (id: string): string => `/designs/${encodeURIComponent(id)}`;

export const loadBlocks = (id: string): Promise<BlocksView> => get(`${of(id)}/blocks`);
export const loadProof = (id: string): Promise<ProofView> => get(`${of(id)}/proof`);
export const readDrawing = (id: string, drawing: Blob): Promise<OutlinesView> => ask("POST", `${of(id)}/outline`, drawing);

/** Return the findings of a key of the file, and of what lies inside it where that is wanted. */
export function findingsOf(proof: ProofView | null, key: string, isWhole = false): FindingView[] {
  const found = (proof?.findings ?? []).map((each) => each.finding);
  return found.filter((each) => each.key === key || (isWhole && each.key.startsWith(`${key}.`)));
}

/** Return what of a recipe's findings stands beside none of the keys that have a field. */
export function otherFindings(proof: ProofView | null, key: string, shown: ReadonlySet<string>): FindingView[] {
  return findingsOf(proof, key, true).filter((each) => !shown.has(each.key));
}

/** The end of a dotted key. */
export function lastOf(key: string): string {
  return key.slice(key.lastIndexOf(".") + 1);
}

const EXCLUDES: Record<string, readonly string[]> = {
  finished: ["start"],
  start: ["finished"],
  finished_width: ["width"],
  width: ["finished_width"],
  finished_height: ["height"],
  height: ["finished_height"],
  diameter: ["radius", "flow"],
  radius: ["diameter", "flow"],
};

/** Of halves rejoined either is enough. */
const OF_HALVES: typeof EXCLUDES = { finished: ["trim"], trim: ["finished"] };

/**
 * Return the act that gives a master of shapes cut a width and a height of its own, or makes it a square again: it begins
 * with the sides that it has.
 */
export function formAct(draft: DraftView, isSquare: boolean): Act {
  const sizes = ["finished", "start", "finished_width", "finished_height", "width", "height"];
  const gone = Object.fromEntries(sizes.map((name) => [`${draft.key}.${name}`, null]));
  const side = (name: string): string => draft.numbers.find((each) => lastOf(each.key) === name)?.value ?? "";
  const given = isSquare ? { start: side("width") } : { width: side("start"), height: side("start") };
  const kept = Object.entries(given).map(([name, value]) => [`${draft.key}.${name}`, value]);
  return { name: "puts", values: { ...gone, ...Object.fromEntries(kept) } };
}

/**
 * Return the act that calls a shape another part. Its colourways give the new part the cloth of the old one, which goes
 * with its last shape.
 */
export function partAct(draft: DraftView, shape: ShapeView, part: string, ways: readonly ColourwayView[]): Act {
  const isLast = (draft.master?.shapes ?? []).filter((each) => each.part === shape.part).length === 1;
  const values: Record<string, string | null> = { [`${shape.key}.name`]: part };
  for (const way of ways.filter((each) => each.recipe === draft.name)) {
    const cloths = way.cloths as Record<string, string>;
    const key = (name: string): string => `colourways.${way.code}.shapes.${/^[A-Za-z0-9_-]+$/.test(name) ? name : JSON.stringify(name)}`;
    if (!cloths[part]) values[key(part)] = cloths[shape.part] ?? null;
    if (isLast) values[key(shape.part)] = null;
  }
  return { name: "puts", values };
}

/**
 * Return the act that puts a number of a recipe. Of the sizes that add up to one another, and of the ways to say how
 * large a circle is, the one that is put takes the place of the other; nothing written takes the key away.
 */
export function numberAct(draft: DraftView, key: string, text: string): Act {
  const table = key.slice(0, key.lastIndexOf("."));
  const stated = new Set(draft.numbers.filter((each) => each.stated).map((each) => each.key));
  const others = ((draft.of ? OF_HALVES : EXCLUDES)[lastOf(key)] ?? []).map((name) => `${table}.${name}`);
  const gone = others.filter((other) => stated.has(other));
  if (text === "") return { name: "put", at: key, value: null };
  if (gone.length === 0) return { name: "put", at: key, value: text };
  return { name: "puts", values: { [key]: text, ...Object.fromEntries(gone.map((other) => [other, null])) } };
}

/** The cloth of each part of a recipe in a colourway; of halves rejoined the parts of both. */
export function clothsOf(way: ColourwayView | undefined, ways: readonly ColourwayView[]): Record<string, string> {
  if (!way) return {};
  if (!way.first) return way.cloths as Record<string, string>;
  const found: Record<string, string> = {};
  for (const half of ["first", "second"] as const) {
    const inner = ways.find((each) => each.code === way[half]);
    for (const [part, letter] of Object.entries(inner?.cloths ?? {})) found[`${half}/${part}`] = letter;
  }
  return found;
}

const TINTS = ["#f3ead8", "#c9805f", "#7c94a6", "#a8a06a", "#8d6f87", "#d9b26a"];

/** Return what fills a part: its cloth in a colourway, or a tint of the table where it has none yet. */
export function fillOf(part: string, parts: readonly string[], cloths: Readonly<Record<string, string>>): string {
  const letter = cloths[part];
  if (letter) return `fill:var(--cloth-${letter})`;
  return `fill:${TINTS[Math.max(parts.indexOf(part), 0) % TINTS.length]}`;
}

/** Return a name for something new that is not taken: the wanted one, or that with a number behind. */
export function freeName(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted)) return wanted;
  let number = 2;
  while (taken.has(`${wanted} ${number}`)) number++;
  return `${wanted} ${number}`;
}

/** Return the first code of a colourway that is free. */
export function freeCode(taken: ReadonlySet<string>): string {
  const letters = [..."abcdefghijklmnopqrstuvwxyz"];
  const codes = [...letters, ...letters.flatMap((one) => letters.map((other) => one + other))];
  return codes.find((code) => !taken.has(code)) ?? "";
}

export type Fabrics = readonly FabricView[];

/** Return the SVG matrix of six numbers. */
export const matrixOf = (numbers: readonly number[]): string => `matrix(${numbers.join(" ")})`;
