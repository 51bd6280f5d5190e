import { expect, test } from "vitest";
import type { ColourwayView } from "$/api/shapes";
import { clothsOf, findingsOf, freeCode, freeName, numberAct, otherFindings, type DraftView, type ProofView } from "./drafts";

const draft = {
  key: "recipes.moon",
  numbers: [
    { key: "recipes.moon.finished", value: '4"', stated: true },
    { key: "recipes.moon.start", value: '9 1/2"', stated: false },
  ],
} as unknown as DraftView;

test("a size that is put takes the place of the one it follows from", () => {
  expect(numberAct(draft, "recipes.moon.start", "10")).toEqual({
    name: "puts",
    values: { "recipes.moon.start": "10", "recipes.moon.finished": null },
  });
  expect(numberAct(draft, "recipes.moon.finished", "5")).toEqual({ name: "put", at: "recipes.moon.finished", value: "5" });
  expect(numberAct(draft, "recipes.moon.trim", "")).toEqual({ name: "put", at: "recipes.moon.trim", value: null });
});

test("findings stand beside their own key, and the rest with the recipe", () => {
  const finding = (key: string) => ({ finding: { key, sentence: key } });
  const proof = { findings: ["recipes.moon.trim", "recipes.moon.shape", "recipes.moons"].map(finding) } as unknown as ProofView;
  expect(findingsOf(proof, "recipes.moon.trim")).toHaveLength(1);
  expect(findingsOf(proof, "recipes.moon", true)).toHaveLength(2);
  expect(otherFindings(proof, "recipes.moon", new Set(["recipes.moon.trim"])).map((each) => each.key)).toEqual(["recipes.moon.shape"]);
});

test("halves rejoined are in the cloth of both colourways", () => {
  const way = (code: string, cloths: Record<string, string>, first = "", second = "") =>
    ({ code, cloths, first, second }) as unknown as ColourwayView;
  const ways = [way("a", { ground: "A", heart: "B" }), way("b", { ground: "B", heart: "A" }), way("g", {}, "a", "b")];
  expect(clothsOf(ways[2], ways)).toEqual({
    "first/ground": "A", "first/heart": "B", "second/ground": "B", "second/heart": "A",
  });
});

test("new names and codes are free ones", () => {
  expect(freeName("moon", new Set(["moon", "moon 2"]))).toBe("moon 3");
  expect(freeCode(new Set(["a", "b"]))).toBe("c");
});
