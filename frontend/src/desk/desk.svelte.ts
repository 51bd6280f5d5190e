/** The design on the desk: what the server says of it, and what the hand does to it. One for the whole page. */
import { designs, RefusedError } from "$/api/client";
import type { Act, FiguresView, KindView, Outcome, PaperView, Refused } from "$/api/shapes";
import { QuiltModel, type Painted } from "$/quilt/model";
import { ROOT, type Spot } from "$/quilt/spots";
import { keyInWords } from "$/words/byHand";
import { t, told } from "$/words/words";
import { notices } from "./notices.svelte";
import { ActQueue } from "./queue";

/** `told` hears why the act was refused, or null when it is done and shown. */
type Task = { act: Act; told?: (fault: Refused | null) => void } | { undo: true } | { redo: true };
type Repaint = (spots: readonly Spot[]) => void;
export type NewsName = "revision" | "figures" | "plans" | "findings" | "rehearsal" | "publish" | "saved" | "fault";
export type Facts = Record<string, number | string>;
type Hear = (event: NewsName, facts: Facts) => void;
const NEWS: readonly NewsName[] = ["revision", "figures", "plans", "findings", "rehearsal", "publish", "saved", "fault"];

const CUT: Refused = { detail: t("shell.cut"), remedy: "", can_anyway: false, findings: [] };

class Desk {
  id = $state<string | null>(null);
  paper = $state.raw<PaperView | null>(null);
  quilt = $state.raw<QuiltModel | null>(null);
  figures = $state.raw<FiguresView | null>(null);
  /** Rises with each revision that is known, so that rooms load again what they show. */
  revision = $state(0);
  /** Acts that the server has not answered. */
  waiting = $state(0);
  /** Why the quilt cannot be drawn now; the last one that could stays on the mat. */
  stopped = $state<string | null>(null);
  outside = $state(false);
  windows = $state(1);
  /** Whether the studio has gone away: nothing is kept then, and so nothing is done. */
  isCut = $state(false);
  kinds = $derived(kindsOf(this.paper));

  /** Those whose acts are done and not yet shown. */
  private readonly untold: ((fault: null) => void)[] = [];
  private queue: ActQueue<Task, Outcome> | null = null;
  private news: EventSource | null = null;
  private readonly painters = new Set<Repaint>();
  private readonly hearers = new Set<Hear>();

  /** Take a design onto the desk. */
  async open(id: string): Promise<void> {
    if (this.id === id && this.paper) return;
    this.leave();
    notices.clear();
    this.id = id;
    this.queue = new ActQueue<Task, Outcome>(
      (revision, task) => this.send(id, revision, task),
      { done: (answer, task, left) => this.done(answer, task, left), failed: (reason, task, dropped) => this.failed(reason, task, dropped) },
      (reason) => reason instanceof RefusedError && reason.status !== 409,
    );
    await this.reload();
    this.listen(id);
  }

  leave(): void {
    this.tell(Promise.resolve());
    this.news?.close();
    this.news = null;
    this.queue = null;
    Object.assign(this, { id: null, paper: null, quilt: null, figures: null, stopped: null, outside: false, isCut: false });
    this.waiting = 0;
  }

  /** Do an act; `painted` shows it at once, before the server has answered. */
  do(act: Act, painted: readonly Painted[] = []): void {
    if (!this.queue) return;
    if (this.isCut) return notices.speak(t("shell.cut"));
    if (painted.length) this.repaint(painted);
    this.queue.add({ act });
    this.waiting = this.queue.length;
  }

  /** Do an act whose refusal is told where the hand is: the answer is why it was refused, or null when it is shown. */
  attempt(act: Act): Promise<Refused | null> {
    const { queue } = this;
    if (!queue || this.isCut) return Promise.resolve(this.isCut ? CUT : null);
    return new Promise((told) => {
      queue.add({ act, told });
      this.waiting = queue.length;
    });
  }

  undo(): void {
    this.step({ undo: true }, this.paper?.can_undo ?? false, "shell.nothing-to-undo");
  }

  redo(): void {
    this.step({ redo: true }, this.paper?.can_redo ?? false, "shell.nothing-to-redo");
  }

  /** Write the file where it is. */
  async save(): Promise<void> {
    try {
      await this.saveAt({});
    } catch (reason) {
      this.complain(reason);
    }
  }

  /** Write the file somewhere else, and only if told over another that lies there, or in a new folder. Throws. */
  async saveAt(where: { path?: string; replace?: boolean; make_folder?: boolean }): Promise<void> {
    if (!this.id) return;
    const paper = await designs.save(this.id, where);
    await this.reloadPaper();
    notices.say(t("shell.saved-now", { path: paper.path }));
  }

  /** Go on with one of two versions, where the file was changed elsewhere. */
  async keep(which: "ours" | "theirs"): Promise<void> {
    if (!this.id) return;
    try {
      await designs.keep(this.id, this.revision, which);
    } catch (reason) {
      this.complain(reason);
    }
    await this.reload();
  }

  /** Be told which places look otherwise, while painting. Returns how to stop. */
  onPaint(repaint: Repaint): () => void {
    this.painters.add(repaint);
    return () => this.painters.delete(repaint);
  }

  /** Be told the news of the design as they come. Returns how to stop. */
  onNews(hear: Hear): () => void {
    this.hearers.add(hear);
    return () => this.hearers.delete(hear);
  }

  repaint(painted: readonly Painted[]): void {
    const spots = this.quilt?.paint(painted) ?? [];
    for (const repaint of this.painters) repaint(spots);
  }

  complain(reason: unknown): void {
    const known = reason instanceof RefusedError;
    if (!known && this.id) this.isCut = true;
    notices.say(known ? reason.message : t("shell.no-answer"), "refused");
  }

  /** Load again all that the shell shows. */
  async reload(): Promise<void> {
    const id = this.id;
    if (!id) return;
    await this.reloadPaper();
    const drawn = this.loadQuilt(id);
    void this.loadFigures(id);
    await drawn;
  }

  private step(task: Task, can: boolean, otherwise: "shell.nothing-to-undo" | "shell.nothing-to-redo"): void {
    if (!this.queue || this.isCut) return;
    if (!can && this.waiting === 0) return notices.say(t(otherwise));
    this.queue.add(task);
    this.waiting = this.queue.length;
  }

  /** How many places of the quilt an act is done to: a cell lies in as many as the map has repeats. */
  private placesOf(task: Task): number {
    if (!("act" in task && "cells" in task.act && task.act.cells) || !this.quilt) return 0;
    const { quilt } = this;
    return task.act.cells.reduce((count, cell) => count + quilt.places(cell).length, 0);
  }

  private send(id: string, revision: number, task: Task): Promise<Outcome> {
    if ("act" in task) return designs.act(id, revision, task.act);
    return "undo" in task ? designs.undo(id, revision) : designs.redo(id, revision);
  }

  private done(answer: Outcome, task: Task, left: number): void {
    this.waiting = left;
    const way = "act" in task ? "" : "undo" in task ? "undone" : "redone";
    const name = told(`acts.${answer.act}`, {}, answer.act);
    const facts: Record<string, string | number> = { ...answer.facts, n: this.placesOf(task) || (answer.facts["cells"] ?? 1) };
    if (facts["section"] === ROOT) facts["section"] = t("shell.whole");
    const isPut = answer.act === "put" && typeof facts["at"] === "string";
    const said = isPut ? t("acts-done.put-what", { what: keyInWords(String(facts["at"])) }) : told(`acts-done.${answer.act}`, facts, name);
    notices.say(way ? t(way === "undone" ? "shell.undone" : "shell.redone", { act: name }) : said);
    if (this.paper && answer.changed && !way) this.paper = { ...this.paper, can_undo: true, undo_of: answer.act };
    if (this.paper && answer.changed && way === "undone") this.paper = { ...this.paper, can_redo: true };
    if (this.paper && answer.changed && way === "redone") this.paper = { ...this.paper, can_undo: true };
    if ("act" in task && task.told) this.untold.push(task.told);
    if (left === 0) this.tell(this.reload());
  }

  /** Tell those who wait that their acts are done, when the desk shows them. */
  private tell(shown: Promise<void>): void {
    const done = this.untold.splice(0);
    void shown.finally(() => {
      for (const told of done) told(null);
    });
  }

  private failed(reason: unknown, task: Task, dropped: readonly Task[] = []): void {
    this.waiting = this.queue ? this.queue.length - 1 : 0;
    const fault = reason instanceof RefusedError ? reason : null;
    const told = "act" in task ? task.told : undefined;
    const isTold = told !== undefined && fault !== null && fault.status !== 409;
    told?.(isTold ? fault.fault : null);
    for (const other of dropped) if ("act" in other) other.told?.(null);
    if (isTold) notices.speak(fault.message);
    else if (fault?.status === 409) notices.say(t("shell.stale"), "refused");
    else if (fault?.fault.can_anyway && "act" in task) {
      notices.say(fault.message, "refused", () => this.do({ ...task.act, anyway: true }));
    } else this.complain(reason);
    if (this.waiting === 0) this.tell(this.isCut ? Promise.resolve() : this.reload());
  }

  private async reloadPaper(): Promise<void> {
    const { id, queue } = this;
    if (!id || !queue) return;
    const paper = await designs.paper(id);
    if (this.queue !== queue) return;
    // An answer that was overtaken tells what is no longer so: acts done meanwhile have left a newer revision.
    if (queue.length === 0) queue.revision = Math.max(queue.revision, paper.revision);
    if (this.paper && paper.revision < this.revision) return;
    this.paper = paper;
    this.outside = paper.outside;
    this.revision = paper.revision;
  }

  private async loadQuilt(id: string): Promise<void> {
    try {
      const view = await designs.quilt(id);
      if (this.id !== id || (this.queue && this.queue.length > 0)) return;
      this.quilt = new QuiltModel(view, this.paper?.sections ?? []);
      this.stopped = null;
    } catch (reason) {
      this.stopped = reason instanceof Error ? reason.message : String(reason);
    }
  }

  private async loadFigures(id: string): Promise<void> {
    try {
      const figures = await designs.figures(id);
      if (this.id === id && figures.revision >= (this.figures?.revision ?? 0)) this.figures = figures;
    } catch {
      this.figures = null; // the slip says why: the quilt cannot be drawn
    }
  }

  private listen(id: string): void {
    const news = new EventSource(designs.news(id));
    const on = (name: string, then: (told: Record<string, number>) => void): void =>
      news.addEventListener(name, (event) => then(JSON.parse((event as MessageEvent<string>).data) as Record<string, number>));
    for (const name of NEWS) {
      on(name, (facts) => {
        for (const hear of this.hearers) hear(name, facts);
      });
    }
    on("revision", ({ revision }) => {
      if (this.queue?.length === 0 && (revision ?? 0) > this.revision) void this.reload();
    });
    on("figures", () => void this.loadFigures(id));
    on("plans", () => void this.loadFigures(id));
    on("findings", () => void this.reloadPaper());
    on("outside", () => {
      this.outside = true;
      notices.say(t("shell.outside"), "refused");
    });
    on("window", ({ windows }) => (this.windows = windows ?? 2));
    news.onerror = () => void designs.paper(id).catch((reason: unknown) => (this.isCut ||= !(reason instanceof RefusedError)));
    news.onopen = () => {
      if (!this.isCut) return;
      this.isCut = false;
      void this.reload();
    };
    this.news = news;
  }
}

function kindsOf(paper: PaperView | null): ReadonlyMap<string, KindView> {
  const kinds = (paper?.colourways ?? []).flatMap((way) => way.kinds);
  return new Map(kinds.map((kind) => [kind.name, kind]));
}

export const desk = new Desk();
