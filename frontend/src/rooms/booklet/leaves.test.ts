import { describe, expect, it } from "vitest";
import { inOrder, kindOfFile, sharpWidth, spreadOf, spreads, weight } from "./leaves";

describe("spreads", () => {
  it("begin with the cover by itself", () => {
    expect(spreads(5)).toEqual([[1], [2, 3], [4, 5]]);
    expect(spreads(4)).toEqual([[1], [2, 3], [4]]);
    expect(spreads(0)).toEqual([]);
  });
  it("know where a page lies", () => {
    for (const [place, pages] of spreads(9).entries()) for (const page of pages) expect(spreadOf(page)).toBe(place);
  });
});

it("asks for pictures in a few widths", () => {
  expect(sharpWidth(300, 1)).toBe(360);
  expect(sharpWidth(420, 2)).toBe(840);
  expect(sharpWidth(5000, 2)).toBe(2040);
});

it("knows what every published file is for", () => {
  for (const name of ["booklet.pdf", "shape-1-disc.dxf", "cut-list-2-twin.csv", "job.json", "contents.txt"]) {
    expect(kindOfFile(name)).not.toBeNull();
  }
  expect(kindOfFile("other.bin")).toBeNull();
});

it("puts the booklet first", () => {
  const files = ["contents.txt", "x.bin", "booklet.pdf"].map((name) => ({ name, bytes: 1 }));
  expect(inOrder(files).map((file) => file.name)).toEqual(["booklet.pdf", "contents.txt", "x.bin"]);
});

it("weighs files", () => {
  expect(weight(1_240_000, "en")).toBe("1.2 MB");
  expect(weight(900, "en")).toBe("1 kB");
});
