import { expect, test } from "vitest";
import type { DraftView, ShapeView } from "./drafts";
import { actOf, cutTo, degreesTo, handlesOf, heldAfter, heldText, isMoved, widthTo } from "./handles";

const shape = {
  key: "recipes.h.shapes.0", outline: "heart", width: '4"', at: ['-1 7/8"', '0"'], degrees: 90, middle: [-1.875, 0],
} as unknown as ShapeView;
const draft = { kind: "shapes cut", key: "recipes.h", master: { shapes: [shape], cuts: [[0, -4, 0, 4], [-4, 0, 4, 0]] } } as unknown as DraftView;
const circle = { ...shape, key: "recipes.m.shape", outline: "circle", degrees: 0, middle: [0, 0], at: ['0"', '0"'] } as ShapeView;
const moon = { kind: "circle cut both ways", key: "recipes.m", master: { shapes: [circle], cuts: [] } } as unknown as DraftView;

test("handles turn with their shape", () => {
  const { size, turn } = handlesOf(shape, "inch", 1);
  expect(size[0]).toBeCloseTo(-1.875, 9);
  expect(size[1]).toBeCloseTo(2, 9);
  expect(turn[1]).toBeCloseTo(-3, 9);
});

test("a side that is dragged snaps to the ruler, and never to nothing", () => {
  expect(widthTo(shape, [-1.875, 2.3], 0.125)).toBe(4.625);
  expect(widthTo(circle, [3, 4], 0.5)).toBe(10);
  expect(widthTo(circle, [0, 0], 0.5)).toBe(0.25);
});

test("a shape is turned towards the hand", () => {
  expect(degreesTo(circle, [-1, 0.02], 5)).toBe(0);
  expect(degreesTo(circle, [0, -1], 5)).toBe(90);
  expect(degreesTo(circle, [0, 1], 5)).toBe(270);
});

test("what is held becomes an act of the file's own words", () => {
  expect(actOf({ what: "place", shape: 0, at: [-1.75, 0.5] }, draft, "inch")).toEqual({
    name: "put", at: "recipes.h.shapes.0.at", value: ['-1 3/4"', '1/2"'],
  });
  expect(actOf({ what: "turn", shape: 0, degrees: 135 }, draft, "inch")).toMatchObject({ value: 135 });
  expect(actOf({ what: "turn", shape: 0, degrees: 270 }, moon, "inch")).toMatchObject({ at: "recipes.m.shape.turn", value: 3 });
  expect(actOf({ what: "size", shape: 0, width: 6.5 }, moon, "inch")).toEqual({
    name: "puts",
    values: { "recipes.m.shape.diameter": '6 1/2"', "recipes.m.shape.radius": null, "recipes.m.shape.flow": null },
  });
  const line = cutTo([0, -4, 0, 4], 1, [1.02, 4], 0.125);
  expect(actOf({ what: "cut", cut: 0, end: 1, line }, draft, "inch")).toMatchObject({
    at: "recipes.h.cuts",
    value: [[['0"', '-4"'], ['1"', '4"']], [['-4"', '0"'], ['4"', '0"']]],
  });
});

test("arrows move what is held by a mark of the ruler", () => {
  const held = { what: "place", shape: 0, at: [-1.875, 0] } as const;
  expect(isMoved(held, draft, "inch")).toBe(false);
  const after = heldAfter(held, "ArrowDown", 0.125, draft);
  expect(after).toEqual({ what: "place", shape: 0, at: [-1.875, 0.125] });
  expect(after && isMoved(after, draft, "inch")).toBe(true);
  expect(heldAfter({ what: "size", shape: 0, width: 4 }, "ArrowUp", 0.125, draft)).toMatchObject({ width: 4.125 });
  expect(heldAfter(held, "x", 0.125, draft)).toBeNull();
  expect(heldText(held, "inch")).toBe('-1 7/8" · 0"');
});
