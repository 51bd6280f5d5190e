import { expect, test } from "vitest";
import type { ColourwayView } from "$/api/shapes";
import { clothsOf, findingsOf, formAct, freeCode, freeName, numberAct, otherFindings, partAct, type DraftView, type ProofView, type ShapeView } from "./drafts";

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

test("of halves rejoined what is trimmed off takes the place of the finished side", () => {
  const halves = { key: "recipes.gizzard", of: "hearts", numbers: [{ key: "recipes.gizzard.finished", value: '7"', stated: true }] } as unknown as DraftView;
  expect(numberAct(halves, "recipes.gizzard.trim", "1/4")).toEqual({
    name: "puts", values: { "recipes.gizzard.trim": "1/4", "recipes.gizzard.finished": null },
  });
});

test("a master begins as a rectangle with the side that it has as a square", () => {
  expect(formAct(draft, false)).toMatchObject({
    values: { "recipes.moon.width": '9 1/2"', "recipes.moon.height": '9 1/2"', "recipes.moon.start": null, "recipes.moon.finished": null },
  });
});

test("a shape that becomes another part takes its cloth along, and leaves it to those of its old part", () => {
  const shape = (k: number, part: string) => ({ key: `recipes.moon.shapes.${k}`, part }) as unknown as ShapeView;
  const ways = [{ code: "a", recipe: "moon", cloths: { ground: "A", disc: "B" } }] as unknown as ColourwayView[];
  const values = (parts: string[]) => {
    const shapes = parts.map((part, k) => shape(k, part));
    const moon = { ...draft, name: "moon", master: { shapes } } as unknown as DraftView;
    return (partAct(moon, shape(0, "disc"), "rim", ways) as { values: object }).values;
  };
  expect(values(["disc", "disc"])).toEqual({ "recipes.moon.shapes.0.name": "rim", "colourways.a.shapes.rim": "B" });
  expect(values(["disc"])).toEqual({
    "recipes.moon.shapes.0.name": "rim", "colourways.a.shapes.rim": "B", "colourways.a.shapes.disc": null,
  });
});
