import { expect, test } from "vitest";
import { asRows, fromRows } from "./rows";
import type { ValueView } from "./values.svelte";

const column = (key: string, kind: string): ValueView => ({ key, kind, between: [], stated: null, usual: "", columns: [] });
const notions: ValueView = {
  ...column("notions", "rows"), stated: [{ name: "ruler", price: 3.5 }],
  columns: [column("name", "words"), column("count", "count"), column("price", "number")],
};
const packages: ValueView = { ...column("batting.packages", "packages"), stated: { throw: ['60"', '72"'] } };

test("rows read and written are what was stated", () => {
  expect(fromRows(notions, asRows(notions))).toEqual(notions.stated);
  expect(fromRows(packages, asRows(packages))).toEqual(packages.stated);
});
test("what is left empty is left out, and no rows are no key", () => {
  expect(fromRows(notions, [{ name: "pins", count: "2", price: " " }])).toEqual([{ name: "pins", count: 2 }]);
  expect(fromRows(notions, [])).toBeNull();
});
test("a number that is none goes to the server as it is, which tells why", () => {
  expect(fromRows(notions, [{ name: "pins", count: "two" }])).toEqual([{ name: "pins", count: "two" }]);
});
