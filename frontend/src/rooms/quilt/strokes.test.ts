import { expect, test } from "vitest";
import { actOf, pointsBetween, Stroke } from "./strokes";

const at = (row: number, column: number, word: string) => ({ section: "centre", row, column, word });

test("a stroke touches a cell once", () => {
  const stroke = new Stroke();
  expect(stroke.touch([at(0, 0, "a1")], 1)).toHaveLength(1);
  expect(stroke.touch([at(0, 0, "a2"), at(0, 1, "a1")], 1)).toHaveLength(1);
  expect(stroke.act()).toEqual({
    name: "turn",
    cells: [{ section: "centre", row: 0, column: 0 }, { section: "centre", row: 0, column: 1 }],
    by: 1,
  });
});

test("what is laid keeps the turn of each cell, and mirror images their names", () => {
  expect(actOf([at(0, 0, "h-lh2"), at(0, 3, "h-rh2")], null)).toEqual({
    name: "lay",
    cells: [{ section: "centre", row: 0, column: 0 }, { section: "centre", row: 0, column: 3 }],
    unit: "h-lh",
    turns: [2, 2],
    units: ["h-lh", "h-rh"],
  });
});

test("nothing touched is no act", () => {
  expect(new Stroke().act()).toBeNull();
});

test("points on the way leave no gap", () => {
  expect(pointsBetween([0, 0], [0, 3], 1).map(([, y]) => y)).toEqual([1, 2, 3]);
});
