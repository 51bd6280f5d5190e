import { describe, expect, it } from "vitest";
import { changesOf, Memory, type CuttingView, type PlanView } from "./changes";
import golden from "../../../../tests/goldens/studio/views/test_goldens/gates-of-the-orchard-cutting.json";

const view = golden as unknown as CuttingView;
const first = view.plans[0] as PlanView;

function edited(change: (plan: PlanView) => PlanView, revision = 2): CuttingView {
  return { ...view, revision, plans: view.plans.map((plan, k) => (k === 0 ? change(plan) : plan)) };
}

describe("what an edit changed", () => {
  it("is nothing where the plans are the same", () => {
    const same = changesOf(view, { ...view, revision: 2 });
    expect([same.fabrics.size, same.pieces.size, same.added, same.gone]).toEqual([0, 0, [], []]);
  });

  it("tells a figure as it was", () => {
    const now = edited((plan) => ({ ...plan, bought: { inches: 99, text: "2 3/4 yards" } }));
    expect([...changesOf(view, now).fabrics]).toEqual([[`${first.letter}/bought`, first.bought.text]]);
  });

  it("tells how many of a piece there were, also where its label is another now", () => {
    const now = edited((plan) => ({
      ...plan,
      pieces: plan.pieces.map((piece, k) => (k === 0 ? { ...piece, label: "A99", count: piece.count + 4 } : piece)),
    }));
    expect([...changesOf(view, now).pieces]).toEqual([["A99", first.pieces[0]?.count]]);
  });

  it("tells which fabrics came and went", () => {
    const fewer = { ...view, revision: 2, plans: view.plans.slice(1) };
    expect(changesOf(view, fewer).gone).toEqual([first.letter]);
    expect(changesOf(fewer, view).added).toEqual([first.letter]);
  });

  it("is held against the last revision, not against first figures of the same one", () => {
    const memory = new Memory();
    expect(memory.take(view).fabrics.size).toBe(0);
    const quick = edited((plan) => ({ ...plan, bought: { inches: 99, text: "2 3/4 yards" } }));
    const better = edited((plan) => ({ ...plan, bought: { inches: 90, text: "2 1/2 yards" } }));
    expect(memory.take(quick).fabrics.get(`${first.letter}/bought`)).toBe(first.bought.text);
    expect(memory.take(better).fabrics.get(`${first.letter}/bought`)).toBe(first.bought.text);
  });
});
