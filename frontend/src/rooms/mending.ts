/** From a finding to where it is mended: what it speaks of is taken up in its room, and the field has the focus. */
import { desk } from "$/desk/desk.svelte";
import { ROOT } from "$/quilt/spots";
import { style } from "$/rooms/booklet/style.svelte";
import { hand } from "$/rooms/cloth/hand.svelte";
import { bench } from "$/rooms/cutting/bench.svelte";
import { table } from "$/rooms/drafting/table.svelte";
import { open } from "$/rooms/values/values.svelte";
import type { Found } from "$/rooms/proof/filter";
import { brush } from "$/rooms/quilt/brush.svelte";
import { errand } from "$/rooms/quilt/errand.svelte";
import { motifs } from "$/rooms/quilt/motifs.svelte";
import { side } from "$/rooms/quilt/side.svelte";

type Spot = Found["spot"];
const FIELD = "input:not(:disabled),select,textarea,button:not(:disabled)";

/** What stands on the sheet of house style. */
const STYLED = /^(house\.|(title|maker|contact|about)$)/;

/** Take up what a finding speaks of, and give its field the focus as soon as its room shows it. */
export function takeUp({ spot, finding }: Found): void {
  const taken = TAKEN[spot.kind];
  taken?.(spot);
  if (STYLED.test(finding.key)) style.isShown = true;
  else open.at(finding.key);
  const place = spot.kind === "cells" ? desk.quilt?.places(spot.cells[0] ?? { section: "", row: 0, column: 0 })[0] : undefined;
  const wanted = place ? [`[data-spot="${place.index}"]`] : beginnings(finding.key).map((key) => `[data-at="${CSS.escape(key)}"]`);
  if (wanted.length) focusWhenThere(wanted);
}

const TAKEN: Record<string, (spot: Spot) => void> = {
  fabric: ({ name }) => (hand.letter = bench.shown = name),
  size: ({ name }) => (bench.size = name),
  recipe: ({ name }) => (table.recipe = name),
  section: ({ name }) => {
    brush.section = only(name);
    side.shown = "sections";
  },
  border: ({ name }) => {
    brush.section = only(name.slice(name.indexOf(" of ") + 4));
    side.shown = "borders";
  },
  motif: ({ name }) => {
    const [panel = "", number = "0"] = name.split(" ");
    motifs.panel = panel;
    motifs.chosen = Number(number);
    side.shown = "motifs";
  },
  cells: ({ cells }) => {
    if (brush.section !== cells[0]?.section) brush.section = null;
    brush.mark(cells);
    errand.cell = cells[0] ?? null;
  },
};

/** The section to work in; of a quilt of one alone there is none to choose. */
function only(name: string): string | null {
  return name === ROOT ? null : name;
}

/** Return a dotted key and what it lies in, down to the item: `fabrics.A.width`, `fabrics.A`; of a single word that. */
export function beginnings(key: string): string[] {
  const parts = key.match(/(?:"[^"]*"|[^.])+/g) ?? [];
  const least = Math.min(parts.length, parts[0] === "setting" ? 1 : 2);
  return parts.map((_, k) => parts.slice(0, parts.length - k).join(".")).slice(0, parts.length - least + 1);
}

/** Focus the first that is there, once any is; a hand that does something else meanwhile is not disturbed. */
function focusWhenThere(wanted: readonly string[]): void {
  const watch = new MutationObserver(() => {
    if (wanted.some((each) => document.querySelector(each))) requestAnimationFrame(arrive);
  });
  const stop = (): void => {
    watch.disconnect();
    removeEventListener("pointerdown", stop);
    removeEventListener("keydown", stop);
  };
  function arrive(): void {
    const found = wanted.map((each) => document.querySelector<HTMLElement>(each)).find((each) => each !== null);
    if (!found) return;
    stop();
    const field = found.matches("[tabindex]") ? found : (found.querySelector<HTMLElement>("input:checked") ?? found.querySelector<HTMLElement>(FIELD) ?? found);
    field.focus();
    field.scrollIntoView({ block: "nearest" });
  }
  watch.observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ["data-at", "data-spot"] });
  addEventListener("pointerdown", stop);
  addEventListener("keydown", stop);
}
