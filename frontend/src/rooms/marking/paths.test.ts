import { describe, expect, it } from "vitest";
import { dataOf, linesOf, movedData, movedLines, rectangle, strung } from "./paths";

const QUARTER = "M 0 4 A 4 4 0 0 0 4 0";

describe("path data", () => {
  it("is written again as it was read", () => {
    for (const data of [QUARTER, "M 0 0 L 2 0 C 2 1 1 2 0 2 Z", `${QUARTER} M 9 9 L 8 8`]) {
      expect(dataOf(linesOf(data))).toBe(data);
    }
  });

  it("keeps which way an arc goes when it is turned, and changes it when it is mirrored", () => {
    expect(movedData(QUARTER, [0, 1, -1, 0, 4, 0])).toBe("M 0 0 A 4 4 0 0 0 4 4");
    expect(movedData(QUARTER, [-1, 0, 0, 1, 4, 0])).toBe("M 4 4 A 4 4 0 0 1 0 0");
  });

  it("runs on from piece to piece, whichever way each was drawn", () => {
    const pieces = ["M 1 0 L 0 0", "M 2 0 L 1 0", "M 2 0 L 3 1"].flatMap(linesOf);
    expect(dataOf(strung(pieces), 0.1)).toBe("M 0 0 L 1 0 L 1 0 L 2 0 L 2 0 L 3 1");
  });

  it("turns a curve round with its two points", () => {
    const pieces = ["M 0 0 L 1 0", "M 5 5 C 4 4 2 1 1 0"].flatMap(linesOf);
    expect(dataOf(strung(pieces), 0.1)).toBe("M 0 0 L 1 0 L 1 0 C 2 1 4 4 5 5");
  });

  it("leaves a gap where pieces do not meet", () => {
    const pieces = ["M 0 0 L 1 0", "M 3 0 L 4 0"].flatMap(linesOf);
    expect(dataOf(strung(pieces), 0.1)).toBe("M 0 0 L 1 0 M 3 0 L 4 0");
  });

  it("moves a rectangle as it is", () => {
    expect(movedData(rectangle(2, 1), [0, 1, -1, 0, 1, 0])).toBe("M 1 0 L 1 2 L 0 2 L 0 0 Z");
    expect(movedLines(linesOf(rectangle(2, 1)), [1, 0, 0, 1, 0, 0])).toEqual(linesOf(rectangle(2, 1)));
  });
});
