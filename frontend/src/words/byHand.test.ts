import { expect, it } from "vitest";
import { byHand, keyInWords } from "./byHand";

it("calls a key by what it is, and keeps the value", () => {
  expect(byHand('Set making.slack to 3".')).toBe('Set “Slack that is bought” to 3".');
  expect(byHand("Set making.stitch.width to 2 mm or less.")).toBe("Set “Width of the stitch” to 2 mm or less.");
  expect(byHand("Write two or three sentences as `about`.")).toBe("Write two or three sentences as “About the quilt”.");
});
it("says which recipe and which fabric", () => {
  expect(byHand('Set curve = "sewn true" in recipes.pool, or turn it.')).toBe("Set the outline to “sewn true” in the recipe pool, or turn it.");
  expect(byHand("leave out fabrics.A.bought_as and buy")).toBe("leave out what it is bought as of fabric A and buy");
});
it("leaves names of units and words of the language alone", () => {
  for (const sentence of ["Turn `a0`.", "The finished quilt is 40\" wide.", "There is no colourway `q`."]) expect(byHand(sentence)).toBe(sentence);
});
it("tells which value was changed", () => {
  expect(keyInWords("making.slack")).toBe("“Slack that is bought”");
  expect(keyInWords("fabrics.A.colour")).toBe("colour of fabric A");
  expect(keyInWords("recipes.pool.curve")).toBe("the outline of the recipe pool");
  expect(keyInWords("title")).toBe("title");
});

it("what speaks of the file, or of a piece by its code, is told as one who works by hand knows it", () => {
  expect(byHand("Give maker and date at the top of the file.")).toBe("Give maker and date.");
  expect(byHand('Name it in [house], such as currency = "USD".')).toContain("Name it, such as");
  expect(byHand("`a-tl2` is 4\" × 4\".")).toBe('the top left quarter of a is 4" × 4".');
});
