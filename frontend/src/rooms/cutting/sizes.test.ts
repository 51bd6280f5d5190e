import { expect, test } from "vitest";
import { bedValues, calledPlace, readValue, sizeKey, writeValue } from "./sizes";

test("a bed takes the place of a mattress, and no bed leaves neither a drop nor a tuck", () => {
  expect(bedValues("sizes.queen", {}, "queen")).toEqual({ "sizes.queen.bed": "queen", "sizes.queen.mattress": null });
  expect(bedValues("sizes.lap", {}, ["1 m", "2 m"])).toEqual({ "sizes.lap.bed": null, "sizes.lap.mattress": ["1 m", "2 m"] });
  expect(bedValues("sizes.lap", { drop: "5 cm" }, "")).toEqual({ "sizes.lap.bed": null, "sizes.lap.mattress": null, "sizes.lap.drop": null });
});

test("a value is read as it was written, be it a number, a length, a list or nothing at all", () => {
  for (const value of [3, true, '4 1/4"', ["1 m", "2 m"], {}]) expect(readValue(writeValue(value))).toEqual(value);
});

test("a name of several words is quoted in a key", () => {
  expect(sizeKey("big bed")).toBe('sizes."big bed"');
});

test("places that differ often are called by what they are, and others by their key", () => {
  expect(calledPlace("borders.0.width")).toBe("Width of border 1");
  expect(calledPlace("sections.wreath.borders.1")).toBe("Border 2 of wreath");
  expect(calledPlace("sections.wreath.down")).toBe("Times laid down of wreath");
  expect(calledPlace("recipes.moon.finished")).toBe("Finished side of moon");
  expect(calledPlace("making.seam")).toBe("making.seam");
});
