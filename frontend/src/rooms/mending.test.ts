import { expect, test } from "vitest";
import { beginnings } from "./mending";

test("a field is looked for first, then the item that it belongs to", () => {
  expect(beginnings("fabrics.A.width")).toEqual(["fabrics.A.width", "fabrics.A"]);
  expect(beginnings("borders.0.width")).toEqual(["borders.0.width", "borders.0"]);
  expect(beginnings("title")).toEqual(["title"]);
});

test("the whole setting is an item, and a name in quotes is one word", () => {
  expect(beginnings("setting.repeat.across")).toEqual(["setting.repeat.across", "setting.repeat", "setting"]);
  expect(beginnings('recipes."a.b".trim')).toEqual(['recipes."a.b".trim', 'recipes."a.b"']);
});

test("a finding without a key asks for no field", () => {
  expect(beginnings("")).toEqual([]);
});
