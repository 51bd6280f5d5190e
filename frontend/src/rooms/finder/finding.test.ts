import { describe, expect, it } from "vitest";
import { columnsOf, firstCodes, laidUnits, otherSide, placeAfter, type FinderView } from "./finding";

describe("a picture", () => {
  const units = { a: { width: 4, height: 4 }, b: { width: 4, height: 4 } };
  it("lays each unit in its place, turned", () => {
    expect(laidUnits([["a0", "b1"]], units)).toEqual([
      { code: "a", transform: "matrix(1 0 0 1 0 0)" },
      { code: "b", transform: "matrix(0 1 -1 0 8 0)" },
    ]);
  });
  it("leaves out what is no unit", () => expect(laidUnits([["A", "zz0"]], units)).toEqual([]));
});

describe("the codes to begin with", () => {
  const fit = (code: string, laid: boolean, why = "", side = '4"'): FinderView["codes"][number] => ({ code, laid, why, side });
  it("are those that lie and fit", () => {
    const codes = [fit("a", true), fit("b", false), fit("h", true, "Its quarters differ.")];
    expect(firstCodes({ revision: 1, codes, most: 4, sections: [] })).toEqual(["a"]);
  });
  it("are of one size; another size is told", () => {
    const view = { revision: 1, codes: [fit("a", true), fit("b", true, "", '2"'), fit("c", true)], most: 4, sections: [] };
    expect(firstCodes(view)).toEqual(["a", "c"]);
    expect(["a", "b", "c"].map((code) => otherSide(view, ["a"], code))).toEqual(["", '4"', ""]);
  });
  it("are any that fit where none lies, up to the most", () => {
    expect(firstCodes({ revision: 1, codes: [fit("a", false), fit("b", false)], most: 1, sections: [] })).toEqual(["a"]);
  });
});

describe("keys", () => {
  it("go by rows and columns, and stay on the sheet", () => {
    expect(placeAfter("ArrowDown", 1, 12, 5)).toBe(6);
    expect(placeAfter("ArrowUp", 1, 12, 5)).toBe(1);
    expect(placeAfter("End", 1, 12, 5)).toBe(11);
    expect(placeAfter("x", 1, 12, 5)).toBeNull();
  });
  it("know the columns by where things lie", () => {
    expect(columnsOf([0, 0, 0, 90, 90].map((offsetTop) => ({ offsetTop })))).toBe(3);
    expect(columnsOf([])).toBe(1);
  });
});
