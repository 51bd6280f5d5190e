import { expect, test } from "vitest";
import { codesByCount, turnedWord, wordOf, written } from "./words";

test.each([
  ["a2", { kind: "unit", name: "a", turn: 2 }],
  ["b", { kind: "unit", name: "b", turn: 0 }],
  ["a-tl3", { kind: "unit", name: "a-tl", turn: 3 }],
  ["AB", { kind: "cloth", name: "AB", turn: 0 }],
  ["wreath1", { kind: "section", name: "wreath", turn: 1 }],
])("%s is read as the file means it", (text, word) => {
  expect(wordOf(text)).toEqual(word);
});

test("a strip of a line is no word", () => {
  expect(wordOf("")).toBeNull();
});

test("four turns are none, and cloth does not turn", () => {
  expect(turnedWord("a-tl3", 1)).toBe("a-tl0");
  expect(turnedWord("a1", -2)).toBe("a3");
  expect(turnedWord("A", 1)).toBe("A");
  expect(written("A", 3)).toBe("A");
});

test("colourways are counted over quarters and turns, cloth and sections left out", () => {
  expect(codesByCount(["b1", "a-tl0", "b-br2", "A", "wreath1", ""])).toEqual(["b", "a"]);
});
