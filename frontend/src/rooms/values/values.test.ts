import { expect, test } from "vitest";
import { open, pairOf, slug } from "./values.svelte";

test("two lengths are read from one text, and one alone is none", () => {
  expect(pairOf('9" × 12 1/2"')).toEqual(['9"', '12 1/2"']);
  expect(pairOf("220 x 300 mm")).toEqual(["220", "300 mm"]);
  expect(pairOf('9"')).toBeNull();
});

test("a key opens the sheet and the innermost table that it stands in", () => {
  open.at("making.stitch.width");
  expect([open.shown, open.table]).toEqual(["allowances", "making.stitch"]);
  open.at("class.hours");
  expect([open.shown, open.table]).toEqual(["selling", "class"]);
  open.at("title");
  expect(open.table).toBe("class");
});

test("a key of a fabric is called alike for all of them", () => {
  expect(slug("fabrics.AB.on_hand")).toBe("fabrics-on-hand");
  expect(slug("making.ring_in")).toBe("making-ring-in");
});
