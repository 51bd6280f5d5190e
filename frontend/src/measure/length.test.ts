import { expect, test } from "vitest";
import { readLength, snapped, stepsOf, writeLength } from "./length";

test("a length is read as it is written on paper and in files", () => {
  for (const text of ["4 1/4", '4 1/4"', "4-1/4 in", "4.25", '4¼"', "17/4", "107.95 mm", "10.795 cm"]) {
    expect(readLength(text, "inch")).toBeCloseTo(4.25, 9);
  }
  expect(readLength('-1 7/8"', "inch")).toBe(-1.875);
  expect(readLength("½", "inch")).toBe(0.5);
  expect(readLength("115", "metric")).toBeCloseTo(115 / 25.4, 9);
});

test("what is no length is not read", () => {
  for (const text of ["", "four", "4 1/0", "4 ells", "1/2/3", "--1"]) expect(readLength(text, "inch")).toBeNull();
});

test("what is written reads back as the same, for every sixteenth", () => {
  for (let sixteenths = -40; sixteenths <= 400; sixteenths++) {
    expect(readLength(writeLength(sixteenths / 16, "inch"), "inch")).toBe(sixteenths / 16);
  }
  expect(writeLength(115 / 25.4, "metric")).toBe("115 mm");
  expect(writeLength(-0.001, "inch")).toBe('0"');
});

test("a hand snaps to the marks of the ruler", () => {
  const [finest] = stepsOf("inch");
  expect(snapped(1.03, finest?.inches ?? 1)).toBe(1);
  expect(writeLength(snapped(50 / 25.4 + 0.02, stepsOf("metric")[2]?.inches ?? 1), "metric")).toBe("50 mm");
});
