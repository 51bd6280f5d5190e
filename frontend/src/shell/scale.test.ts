import { expect, test } from "vitest";
import { fitted, label, marksBetween, marksFor, zoomed } from "./scale";

test.each([[4, 12], [10, 6], [40, 2], [80, 1], [400, 0.25]])("at %i px an inch a number stands every %f inches", (scale, inches) => {
  expect(marksFor(scale, "inch").labelled).toBe(inches);
});

test("metric mats are ruled in centimetres", () => {
  const marks = marksFor(20, "metric");
  expect(marks.labelled).toBeCloseTo(10 / 2.54);
  expect(label(marks.labelled * 3, marks)).toBe("30");
});

test("marks stand at whole steps between two places", () => {
  expect(marksBetween(-1.2, 2, 1)).toEqual([-1, 0, 1, 2].map((n) => n + 0));
});

test("a quilt is fitted whole between the rulers", () => {
  const look = fitted([60, 80], [1000, 700], 26, 16);
  expect(look.y).toBeGreaterThanOrEqual(26 + 16);
  expect(look.y + 80 * look.scale).toBeLessThanOrEqual(700 - 16 + 1e-9);
});

test("zooming keeps the point under the pointer where it is", () => {
  const before = { scale: 10, x: 50, y: 60 };
  const after = zoomed(before, 2, 250, 160);
  expect((250 - after.x) / after.scale).toBeCloseTo((250 - before.x) / before.scale);
});
