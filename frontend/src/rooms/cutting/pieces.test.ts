import { expect, it } from "vitest";
import type { PlanView } from "./changes";
import { next, piecesOf, spotsOf } from "./pieces";

const rect = (label: string, x: number, width: number, y = 0) => ({ label, x, y, width, height: 2 });
const plan = {
  strips: [
    { pieces: [rect("A1", 0, 10), rect("A2", 10, 4), rect("", 14, 6)] },
    { pieces: [rect("As2", 0, 20, 2)] },
    { pieces: [rect("A3", 0, 5, 4), rect("A3", 5, 5, 4), rect("A3", 10, 5, 4)] },
  ],
  pieces: [{ label: "A1" }, { label: "A2" }, { label: "A3" }, { label: "A4" }],
  runs: [{ label: "Ar1", strip: "As2", pieces: [{ label: "A4" }] }],
} as unknown as PlanView;
const spots = spotsOf(plan);
const at = (strip: number, place: number) => spots[strip]![place]!;

it("leaves out what is left over", () => expect(spots.map((strip) => strip.length)).toEqual([2, 1, 3]));

it("goes along a strip and stops at its ends", () => {
  expect(next(spots, at(0, 0), "ArrowRight")).toBe(at(0, 1));
  expect(next(spots, at(0, 1), "ArrowRight")).toBeNull();
  expect(next(spots, at(2, 2), "Home")).toBe(at(2, 0));
  expect(next(spots, at(2, 0), "End")).toBe(at(2, 2));
});

it("goes to what lies nearest on the next strip", () => {
  expect(next(spots, at(0, 1), "ArrowDown")).toBe(at(1, 0));
  expect(next(spots, at(1, 0), "ArrowDown")).toBe(at(2, 1));
  expect(next(spots, at(0, 0), "ArrowUp")).toBeNull();
  expect(next(spots, at(0, 0), "x")).toBeNull();
});

it("knows what is cut from a strip that is joined first", () => {
  expect(piecesOf(plan, "A1")).toEqual(["A1"]);
  expect(piecesOf(plan, "As2")).toEqual(["A4"]);
});
