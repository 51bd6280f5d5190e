import { expect, test } from "vitest";
import { boxOf, inverse, moved, STILL, inTurn, turnedInPlace } from "./motion";

test("turning in place leaves the top left corner of the box at the origin", () => {
  for (const turn of [0, 1, 2, 3]) {
    const box = boxOf(turnedInPlace(3, 2, turn), 3, 2);
    expect(box.map((n) => n + 0)).toEqual(turn % 2 ? [0, 0, 2, 3] : [0, 0, 3, 2]);
  }
});

test("a turn is clockwise as seen: the top left corner goes to the top right", () => {
  expect(moved(turnedInPlace(2, 2, 1), [0, 0])).toEqual([2, 0]);
});

test("a motion and its inverse are no motion", () => {
  const at = [0, 1, -1, 0, 5, 7] as const;
  expect(inTurn(at, inverse(at)).map((n) => n + 0)).toEqual([...STILL]);
});
