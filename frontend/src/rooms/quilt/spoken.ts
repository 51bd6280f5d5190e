/** What is said of a place to those who hear the page. */
import type { FabricView, KindView } from "$/api/shapes";
import { ROOT, type Cell } from "$/quilt/spots";
import { wordOf } from "$/quilt/words";
import { t } from "$/words/words";

export function spokenCell(
  cell: Cell,
  text: string,
  kinds: ReadonlyMap<string, KindView>,
  fabrics: readonly FabricView[],
): string {
  const word = wordOf(text);
  const place = { row: cell.row + 1, column: cell.column + 1, section: cell.section };
  if (!word) return t("rooms.quilt.cell-flat", { ...place, what: t("rooms.quilt.nothing") });
  if (word.kind === "cloth") {
    const name = fabrics.find((fabric) => fabric.letter === word.name)?.name ?? word.name;
    return t("rooms.quilt.cell-flat", { ...place, what: t("rooms.quilt.plain", { name }) });
  }
  const what =
    word.kind === "section"
      ? t("rooms.quilt.section-here", { name: word.name })
      : (kinds.get(word.name)?.spoken ?? word.name);
  const turn = t(`ledge.turns.${word.turn as 0 | 1 | 2 | 3}`);
  return t(cell.section === ROOT ? "rooms.quilt.cell" : "rooms.quilt.cell-section", { ...place, what, turn });
}
