/** What an edit changed in the plans: the figures as they were before it, where they are others now. */
import type { Schemas } from "$/api/shapes";

export type CuttingView = Schemas["CuttingView"];
export type PlanView = Schemas["PlanView"];
export type FiguresView = Schemas["FiguresView"];

export interface Changes {
  /** Figures of fabrics as they were, by letter and figure: `A/bought`. */
  fabrics: ReadonlyMap<string, string>;
  /** How many there were of a piece, by its label. */
  pieces: ReadonlyMap<string, number>;
  /** Fabrics that are new, and those that were cut from and are not any more. */
  added: readonly string[];
  gone: readonly string[];
}

export const NOTHING: Changes = { fabrics: new Map(), pieces: new Map(), added: [], gone: [] };
export const FIGURES = ["bought", "cut", "slack", "bound", "hand_rule", "price"] as const;
export type Figure = (typeof FIGURES)[number];

/** Return a figure of a plan as text; of cloth that comes in pieces alone there are no lengths to tell. */
export function figureOf(plan: PlanView, figure: Figure): string {
  if (plan.bought.inches === 0 && figure !== "bought" && figure !== "price") return "";
  const found = plan[figure];
  return typeof found === "string" || found === null ? (found ?? "") : found.text;
}

function pieceKey(plan: PlanView, piece: PlanView["pieces"][number]): string {
  return [plan.letter, piece.name, piece.size, piece.used_for].join("/");
}

/** Return what is different in the newer of two views. Labels may have moved on: pieces are known by what they are. */
export function changesOf(before: CuttingView | null, now: CuttingView): Changes {
  if (!before || before.size !== now.size) return NOTHING;
  const old = new Map(before.plans.map((plan) => [plan.letter, plan]));
  const letters = new Set(now.plans.map((plan) => plan.letter));
  const fabrics = new Map<string, string>();
  for (const plan of now.plans) {
    const was = old.get(plan.letter);
    if (!was) continue;
    for (const figure of FIGURES) {
      if (figureOf(was, figure) !== figureOf(plan, figure)) fabrics.set(`${plan.letter}/${figure}`, figureOf(was, figure));
    }
  }
  return {
    fabrics,
    pieces: new Map(now.plans.flatMap((plan) => countsThatDiffer(old.get(plan.letter), plan))),
    added: before.plans.length ? [...letters].filter((letter) => !old.has(letter)) : [],
    gone: [...old.keys()].filter((letter) => !letters.has(letter)),
  };
}

function countsThatDiffer(was: PlanView | undefined, plan: PlanView): [string, number][] {
  if (!was) return [];
  const counts = new Map(was.pieces.map((piece) => [pieceKey(was, piece), piece.count]));
  return plan.pieces.flatMap((piece): [string, number][] => {
    const count = counts.get(pieceKey(plan, piece)) ?? 0;
    return count === piece.count ? [] : [[piece.label, count]];
  });
}

/** Keeps the view of the revision before the one that is shown, to compare with. */
export class Memory {
  private before: CuttingView | null = null;
  private now: CuttingView | null = null;

  /** Take in a newer view, and return what is different since the last edit. */
  take(view: CuttingView): Changes {
    if (this.now && this.now.revision !== view.revision) this.before = this.now;
    this.now = view;
    return changesOf(this.before, view);
  }
}
