/** The values of the file's tables, and which sheet of them lies open. */
import { get } from "$/api/client";
import type { Schemas } from "$/api/shapes";
import { Fresh } from "$/rooms/fresh.svelte";

export type ValuesView = Schemas["ValuesView"];
export type TableView = Schemas["TableView"];
export type ValueView = Schemas["ValueView"];

/** Which tables lie on which sheet, in their order. */
export const SHEETS = {
  allowances: ["making", "making.stitch", "binding", "backing", "batting"],
  selling: ["money", "money.minutes", "notions", "kits", "class"],
} as const;
export type Sheet = keyof typeof SHEETS;

/** What a table that must state something begins with. */
export const BEGINNINGS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  kits: { "kits.count": 6 },
  class: { "class.students": 8, "class.hours": 6 },
};

export const load = (): Fresh<ValuesView> => new Fresh<ValuesView>((id) => get<ValuesView>(`/designs/${encodeURIComponent(id)}/values`));

class Open {
  shown = $state<Sheet | null>(null);
  /** The table whose values are unfolded. */
  table = $state("");

  /** Open the sheet on which a key has its field, if it has one there. */
  at(key: string): void {
    const sheets = Object.keys(SHEETS) as Sheet[];
    for (const sheet of sheets) {
      const table = [...SHEETS[sheet]].toSorted((a, b) => b.length - a.length).find((each) => key === each || key.startsWith(`${each}.`));
      if (table) [this.shown, this.table] = [sheet, table];
    }
  }
}

export const open = new Open();

/** The catalogue's name of a key: `making.ring_in` is `making-ring-in`, and that of a fabric has no letter. */
export const slug = (key: string): string => key.replace(/^fabrics\.[A-Z]+\./, "fabrics.").replace(/[^a-z]+/g, "-");

/** Return two lengths of one text, `9" × 12"`; null where there are not two. */
export function pairOf(text: string): [string, string] | null {
  const sides = text.split(/[×x*]/).map((side) => side.trim());
  return sides.length === 2 && sides[0] && sides[1] ? [sides[0], sides[1]] : null;
}
