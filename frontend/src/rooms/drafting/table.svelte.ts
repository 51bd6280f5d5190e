/** What lies on the drafting table, kept while other rooms are visited. */
import type { Units } from "$/measure/length";

class Table {
  recipe = $state("");
  /** The colourway in whose cloth the recipe is shown. */
  way = $state("");
  /** The mark of the ruler to which hands snap, in inches. */
  step = $state<Partial<Record<Units, number>>>({});
}

export const table = new Table();
