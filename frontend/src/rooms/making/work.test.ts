import { expect, it } from "vitest";
import { counted, firstOpen, placeOf, stands, ticked, type EntryView, type MakingView } from "./work";

function entry(id: string, isTicked: boolean, makes: EntryView["makes"] = []): EntryView {
  return { id, number: 1, title: id, sentences: [], lines: [], figures: [], uses: [], makes, ticked: isTicked };
}
const view: MakingView = {
  revision: 0,
  size: "original",
  chapters: [
    { title: "Cutting", cautions: [], figures: [], entries: [entry("a", true, [{ label: "A1", count: 4 }]), entry("b", false, [{ label: "A1", count: 2 }])] },
    { title: "Assembly", cautions: [], figures: [], entries: [entry("c", false)] },
  ],
  cautions: [],
  entries: 3,
  done: 1,
  ready: [],
};

it("numbers the work through all chapters", () => {
  expect(stands(view).map((stand) => [stand.place, stand.chapter.title])).toEqual([[0, "Cutting"], [1, "Cutting"], [2, "Assembly"]]);
});
it("finds what is open first, and what was in hand", () => {
  expect(firstOpen(stands(view))).toBe(1);
  expect(placeOf(stands(view), "c")).toBe(2);
  expect(placeOf(stands(view), "gone")).toBe(1);
  expect(placeOf(stands(view), null)).toBe(1);
});
it("counts pieces by what is ticked", () => {
  expect(counted(view.chapters[0]!)).toEqual([{ label: "A1", made: 4, all: 6 }]);
});
it("ticks at once", () => {
  const now = ticked(view, "b", true);
  expect(now.done).toBe(2);
  expect(counted(now.chapters[0]!)[0]?.made).toBe(6);
});
