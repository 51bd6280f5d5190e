import { expect, test } from "vitest";
import { paintOf, turnedBack, uprightOf } from "./prints";

const plain = { letter: "A", colour: "#ffffff", photo: null };
const photographed = { letter: "B", colour: "#112233", upright: true, photo: { inches: 8 } };

test("a fabric is shown by its photo where its scale is known, else by its colour", () => {
  expect(paintOf(plain)).toBe("#ffffff");
  expect(paintOf(photographed)).toBe("url(#print-B-0)");
  expect(paintOf({ ...photographed, photo: { inches: null } })).toBe("#112233");
});

test("an upright print is turned back by as much as its unit is turned", () => {
  const letters = uprightOf([plain, photographed]);
  expect(letters).toEqual(["B/print"]);
  expect(paintOf({ ...photographed, showsWay: true })).toBe("url(#way-B-0)");
  expect(turnedBack(letters, [1, 0, 0, 1, 5, 5])).toBe("");
  expect(turnedBack(letters, [0, 1, -1, 0, 0, 0])).toBe("--cloth-B:url(#print-B-90)");
  expect(turnedBack(letters, [0, -1, 1, 0, 0, 0])).toBe("--cloth-B:url(#print-B-270)");
});
