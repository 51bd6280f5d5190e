import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { DEEDS, deedOf, pressed } from "./deeds";

const key = (name: string, held: Partial<Record<"ctrlKey" | "metaKey" | "altKey" | "shiftKey", boolean>> = {}) => ({
  key: name, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held,
});

test("keys are written as the list has them", () => {
  expect(pressed(key("Z", { ctrlKey: true, shiftKey: true }))).toBe("Ctrl+Shift+z");
  expect(pressed(key("z", { metaKey: true }))).toBe("Ctrl+z");
  expect(pressed(key("?", { shiftKey: true }))).toBe("?");
  expect(pressed(key("ArrowUp", { shiftKey: true }))).toBe("Shift+ArrowUp");
});

test("a key does its deed where it is heard, and nothing elsewhere", () => {
  expect(deedOf(key("r"), "quilt")).toBe("turn");
  expect(deedOf(key("r"), "everywhere")).toBeNull();
});

test("no key does two things in one place, and everywhere's keys are free on the quilt", () => {
  const on = (where: string): string[] => DEEDS.filter((deed) => deed.where === where).flatMap((deed) => [...deed.keys]);
  const everywhere = on("everywhere");
  for (const here of [["quilt", "mat"], ["drafting", "mat"], ["cutting"], ["booklet"], ["making"]]) {
    const all = [...here.flatMap(on), ...everywhere];
    expect(new Set(all).size).toBe(all.length);
  }
});

test("every deed has a name in the catalogue", () => {
  const words = JSON.parse(readFileSync(new URL("../words/en.json", import.meta.url), "utf-8")) as { deeds: object };
  expect(Object.keys(words.deeds).sort()).toEqual(DEEDS.map((deed) => deed.id).sort());
});
