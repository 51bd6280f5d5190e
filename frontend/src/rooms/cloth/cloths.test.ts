import { expect, test } from "vitest";
import type { ColourwayView } from "$/api/shapes";
import { movedCrop, movedMark, partAct, partsOf, printOf, readColour, stretchedCrop, trueWidth, WHOLE } from "./cloths";

const way = { code: "a", cloths: { ground: "A", "big dot": "B" }, first: "", second: "" } as unknown as ColourwayView;

test("a part is put where the file has it", () => {
  expect(partAct(way, "shapes cut", "big dot", "C")).toEqual({ name: "put", at: 'colourways.a.shapes."big dot"', value: "C" });
  expect(partAct(way, "circle cut both ways", "shape", "C")).toMatchObject({ at: "colourways.a.shape" });
  expect(partAct(way, "shapes cut", "ground", "C")).toMatchObject({ at: "colourways.a.ground" });
  expect(partsOf(way)).toEqual([["ground", "A"], ["big dot", "B"]]);
  expect(partsOf({ ...way, first: "a", second: "b" })).toEqual([["first", "a"], ["second", "b"]]);
});

test("a colour is read as it is typed", () => {
  expect(readColour("#A1B2C3")).toBe("#a1b2c3");
  expect(readColour("abc")).toBe("#aabbcc");
  expect(readColour("blue")).toBeNull();
});

test("a crop stays inside its photo, and does not vanish", () => {
  expect(movedCrop([0.2, 0.2, 0.5, 0.5], 0.9, -0.9)).toEqual([0.5, 0, 0.5, 0.5]);
  expect(stretchedCrop(WHOLE, 0, 0.25, 0.1)).toEqual([0.25, 0.1, 0.75, 0.9]);
  expect(stretchedCrop(WHOLE, 2, -2, -2)).toEqual([0, 0, 0.05, 0.05]);
  expect(stretchedCrop([0.2, 0.2, 0.5, 0.5], 1, 0.1, 0.1)).toEqual([0.2, 0.3, 0.6, 0.4]);
  expect(movedMark([0.9, 0.5], 0.3, 0)).toEqual([1, 0.5]);
});

test("a known length gives the true width of what is shown", () => {
  // 4 inches are a quarter of a photo 2000 points across: the half that is cut out shows 8 inches.
  expect(trueWidth([0, 0, 0.5, 1], [0.1, 0.5], [0.35, 0.5], 4, 2000, 1000)).toBeCloseTo(8, 9);
  expect(trueWidth(WHOLE, [0.5, 0], [0.5, 0.5], 5, 2000, 1000)).toBeCloseTo(20, 9);
});

test("a print repeats with its crop", () => {
  const print = printOf([0.25, 0.5, 0.5, 0.5], 6, 2000, 1000);
  expect(print).toEqual({ width: 6, height: 3, image: { x: -3, y: -3, width: 12, height: 6 } });
});
