/** What keys do with the needle on the quilt, and the deeds of what is marked. */
import { desk } from "$/desk/desk.svelte";
import { notices } from "$/desk/notices.svelte";
import { hear, isSingle, type Handlers } from "$/keys/deeds";
import { singles } from "$/keys/singles.svelte";
import type { Painted } from "$/quilt/model";
import { keyOf, nextSpot, type Cell, type Spot, type Way } from "$/quilt/spots";
import { codesByCount, written, wordOf } from "$/quilt/words";
import { t } from "$/words/words";
import { brush, LAID_TURNS, TOOLS } from "./brush.svelte";
import { side } from "./side.svelte";
import { spokenCell } from "./spoken";
import { actOf } from "./strokes";

interface Sight {
  reveal(x: number, y: number): void;
}

export class NeedleWork {
  isHere = $state(false);
  /** Rises when what lies below the needle may have changed. */
  pulse = $state(0);
  before = $state.raw<Spot | null>(null);
  private at = $state<number>(0);
  private home = 0;
  private from: Cell | null = null;

  /** Where the needle stands; the model may have been made anew. */
  spot = $derived.by(() => {
    const spots = this.spots;
    return desk.quilt?.spots[this.at] ?? spots[0] ?? null;
  });

  constructor(private readonly sight: () => Sight | undefined) {}

  private get spots(): readonly Spot[] {
    const all = desk.quilt?.spots ?? [];
    const seen = brush.section === null ? all : all.filter((spot) => spot.section === brush.section);
    const sections = brush.section === null ? seen.filter((spot) => spot.unit || !this.holdsSection(spot)) : seen;
    return sections.length ? sections : all;
  }

  /** A section in a map is passed over where its own units can be stood on. */
  private holdsSection(spot: Spot): boolean {
    return wordOf(desk.quilt?.word(spot) ?? "")?.kind === "section";
  }

  to(spot: Spot): void {
    this.before = this.spot;
    this.at = spot.index;
    this.home = spot.middle[0];
    this.pulse++;
  }

  readonly onkeydown = (event: KeyboardEvent): void => {
    if (isSingle(event) && !singles.on && event.key !== " ") return;
    if (event.key === "Escape" && brush.marked.size) {
      event.preventDefault();
      return this.unmark();
    }
    hear(event, "quilt", this.handlers);
  };

  private readonly handlers: Handlers = {
    needle: (key) => this.go(key, false),
    "mark-more": (key) => this.go(key.replace("Shift+", ""), true),
    "needle-far": (key) => this.goFar(key),
    "mark-all": () => this.markAll(),
    turn: () => this.turn(1),
    "turn-back": () => this.turn(-1),
    lay: () => this.lay(),
    fill: () => this.fill(),
    copy: () => this.copy(),
    stamp: () => this.stamp(),
    swap: () => this.swap(),
    pick: () => this.pick(),
    "brush-next": () => this.loadNext(1),
    "brush-before": () => this.loadNext(-1),
    "brush-turn": () => this.turnLoaded(),
    symmetry: () => {
      brush.nextSymmetry();
      notices.speak(t("rooms.quilt.symmetry-now", { symmetry: t(`ledge.symmetries.${brush.symmetry}`) }));
    },
    tool: () => {
      brush.tool = brush.next(TOOLS, brush.tool);
      notices.speak(t("rooms.quilt.tool-now", { tool: t(`ledge.tool.${brush.tool}`) }));
    },
    sections: () => (side.shown = "sections"),
    borders: () => (side.shown = "borders"),
    motif: () => (side.shown = "motifs"),
  };

  private go(key: string, marks: boolean): void {
    const from = this.spot;
    if (!from) return;
    const way = key.replace("Arrow", "").toLowerCase() as Way;
    if (way === "left" || way === "right") this.home = from.middle[0];
    const to = nextSpot(this.spots, from, way, this.home || from.middle[0]);
    if (!to) return;
    if (marks) this.markTo(from, to);
    const home = way === "up" || way === "down" ? this.home || from.middle[0] : to.middle[0];
    this.to(to);
    this.home = home;
    this.sight()?.reveal(to.middle[0], to.middle[1]);
  }

  private goFar(key: string): void {
    const way = ({ Home: "left", End: "right", PageUp: "up", PageDown: "down" } as const)[key];
    let here = this.spot;
    for (let next = here; next && way; next = nextSpot(this.spots, next, way, this.spot?.middle[0] ?? 0)) here = next;
    if (!here) return;
    this.to(here);
    this.sight()?.reveal(here.middle[0], here.middle[1]);
  }

  private markTo(from: Spot, to: Spot): void {
    this.from ??= from;
    const start = this.from;
    if (start.section !== to.section) return;
    const [top, bottom] = [Math.min(start.row, to.row), Math.max(start.row, to.row)];
    const [left, right] = [Math.min(start.column, to.column), Math.max(start.column, to.column)];
    brush.mark(
      this.spots.filter(
        ({ section, row, column }) =>
          section === to.section && row >= top && row <= bottom && column >= left && column <= right,
      ),
    );
    this.sayMarked();
  }

  private markAll(): void {
    const section = this.spot?.section;
    brush.mark(this.spots.filter((spot) => spot.section === section));
    this.sayMarked();
  }

  unmark(): void {
    brush.mark([]);
    this.from = null;
    notices.speak(t("rooms.quilt.unmarked"));
  }

  sayMarked(): void {
    notices.speak(t("rooms.quilt.marked", { n: brush.marked.size }));
  }

  /** What a deed works on: what is marked, or else where the needle stands with all that the brush repeats. */
  private get targets(): readonly Cell[] {
    if (brush.marked.size) return [...brush.marked.values()];
    return this.spot ? [this.spot] : [];
  }

  turn(by: number): void {
    const painted = unique(this.targets.flatMap((cell) => brush.turned(cell, by)));
    this.write(painted, brush.symmetry.startsWith("mirror") ? null : by);
  }

  lay(): void {
    if (!brush.loaded) return this.turn(1);
    const painted = unique(this.targets.flatMap((cell) => brush.laid(cell)));
    const isSame = painted.every((each) => desk.quilt?.word(each) === each.word);
    if (isSame) this.turn(1);
    else this.write(painted, null);
  }

  fill(): void {
    if (!brush.loaded) return notices.say(t("rooms.quilt.nothing-loaded"), "refused");
    const section = this.spot?.section;
    const turn = brush.turn === "own" ? 0 : brush.turn;
    if (brush.marked.size) {
      const word = (cell: Cell): string =>
        written(brush.loaded, brush.turn === "own" ? (wordOf(desk.quilt?.word(cell) ?? "")?.turn ?? 0) : turn);
      this.write([...brush.marked.values()].map((cell) => ({ ...plain(cell), word: word(cell) })), null);
    } else if (section) desk.do({ name: "fill", section, unit: brush.loaded, turn });
  }

  copy(): void {
    const cells = this.targets;
    const [first] = cells;
    if (!first || !desk.quilt) return;
    const same = cells.filter((cell) => cell.section === first.section);
    const rows = same.map((cell) => cell.row);
    const columns = same.map((cell) => cell.column);
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    const words = desk.quilt.block(first.section, top, left, Math.max(...rows), Math.max(...columns));
    const wanted = new Set(same.map(keyOf));
    brush.copied = words.map((row, r) =>
      row.map((word, c) => (wanted.has(keyOf({ section: first.section, row: top + r, column: left + c })) ? word : "")),
    );
    notices.say(t("rooms.quilt.copied", { n: same.length }));
  }

  stamp(): void {
    const spot = this.spot;
    if (brush.copied.length === 0) return notices.say(t("rooms.quilt.nothing-copied"), "refused");
    if (!spot) return;
    const { section, row, column } = spot;
    const painted = brush.copied.flatMap((words, r) =>
      words.map((word, c) => ({ section, row: row + r, column: column + c, word })),
    );
    desk.do(
      { name: "stamp", section, row, column, words: brush.copied },
      painted.filter((each) => each.word && desk.quilt?.word(each)),
    );
    this.pulse++;
  }

  /** The two colourways that change places: what is loaded and what lies here, or the two that are marked most. */
  readonly pair = $derived.by((): readonly [a: string, b: string] => {
    const places = brush.marked.size ? [...brush.marked.values()] : this.spot ? [this.spot] : [];
    const codes = codesByCount(places.map((place) => desk.quilt?.word(place) ?? ""));
    const loaded = /^[a-z]{1,2}(?=-|$)/.exec(brush.loaded)?.[0] ?? "";
    const others = codes.filter((code) => code !== loaded);
    return loaded && others[0] ? [others[0], loaded] : [codes[0] ?? "", codes[1] ?? (codes[0] === loaded ? "" : loaded)];
  });

  swap(): void {
    const [a, b] = this.pair;
    if (!a) return notices.say(t("rooms.quilt.no-unit-here"), "refused");
    if (!b) return notices.say(t(brush.loaded.split("-")[0] === a ? "rooms.quilt.swap-same" : "rooms.quilt.nothing-loaded"), "refused");
    const cells = brush.marked.size ? [...brush.marked.values()] : null;
    desk.do({ name: "swap-colourways", a, b, section: brush.section, cells });
  }

  private pick(): void {
    const word = wordOf(this.spot ? (desk.quilt?.word(this.spot) ?? "") : "");
    if (!word) return;
    brush.load(word.name);
    if (brush.turn !== "own") brush.turn = word.turn as 0 | 1 | 2 | 3;
    this.sayLoaded();
  }

  private loadNext(by: number): void {
    const names = [...desk.kinds.values()].filter((kind) => kind.fits_map).map((kind) => kind.name);
    const all = [...names, ...(desk.paper?.fabrics ?? []).map((fabric) => fabric.letter)];
    if (all.length === 0) return;
    brush.load(all.includes(brush.loaded) ? brush.next(all, brush.loaded, by) : (all[0] ?? ""));
    this.sayLoaded();
  }

  private sayLoaded(): void {
    const fabric = desk.paper?.fabrics.find((each) => each.letter === brush.loaded);
    const what = desk.kinds.get(brush.loaded)?.spoken ?? fabric?.name ?? brush.loaded;
    notices.speak(t("rooms.quilt.loaded-now", { what }));
  }

  private turnLoaded(): void {
    brush.turn = brush.next(LAID_TURNS, brush.turn);
    notices.speak(t("rooms.quilt.turn-now", { turn: t(`ledge.turns.${brush.turn}`) }));
  }

  private write(painted: readonly Painted[], by: number | null): void {
    const act = actOf(painted, by);
    if (!act) return;
    desk.do(act, painted);
    this.pulse++;
    const spot = this.spot;
    if (spot) notices.speak(spokenCell(spot, desk.quilt?.word(spot) ?? "", desk.kinds, desk.paper?.fabrics ?? []));
  }
}

const plain = ({ section, row, column }: Cell): Cell => ({ section, row, column });

function unique(painted: readonly Painted[]): Painted[] {
  return [...new Map(painted.map((each) => [keyOf(each), each])).values()];
}
