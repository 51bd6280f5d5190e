import { readdirSync, readFileSync } from "node:fs";
import { parse } from "svelte/compiler";
import { expect, test } from "vitest";
import { t, told } from "./words";

test("blanks are filled, and numbers choose their form", () => {
  expect(t("shell.undone", { act: "turning" })).toBe("Undone: turning.");
  expect(t("acts-done.turn", { n: 1 })).toBe("Turned 1 unit.");
  expect(t("acts-done.turn", { n: 4 })).toBe("Turned 4 units.");
});

test("a text that there is not is told by what was given instead", () => {
  expect(told("acts.no-such-act", {}, "no-such-act")).toBe("no-such-act");
});

test("every act of the server has a name", () => {
  const document = JSON.parse(readFileSync(new URL("../api/openapi.json", import.meta.url), "utf-8")) as {
    components: { schemas: { ActOrder: { properties: { act: { discriminator: { mapping: Record<string, string> } } } } } };
  };
  const acts = Object.keys(document.components.schemas.ActOrder.properties.act.discriminator.mapping);
  expect(acts.filter((act) => !told(`acts.${act}`))).toEqual([]);
});

/** Attributes whose text is read or heard by a person. */
const SAID = new Set(["aria-label", "aria-description", "alt", "title", "placeholder", "label"]);

/** Return the words that stand in the markup of a component itself. */
function looseWords(node: unknown, attribute = ""): string[] {
  if (Array.isArray(node)) return node.flatMap((each) => looseWords(each, attribute));
  if (typeof node !== "object" || node === null) return [];
  const { type, name, data, ...rest } = node as { type?: string; name?: string; data?: string };
  if (type === "Text") return !attribute || SAID.has(attribute) ? (data?.match(/[A-Za-z]{3,}/g) ?? []) : [];
  if (type === "Comment" || type?.endsWith("Expression")) return [];
  const inside = type === "Attribute" ? (name ?? "other") : type === "StyleDirective" ? "style" : attribute;
  return Object.values(rest).flatMap((each) => looseWords(each, inside));
}

test("no component says anything that is not in the catalogue", () => {
  const root = new URL("../", import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: "utf-8" }).filter((name) => name.endsWith(".svelte"));
  const loose = files.flatMap((name) => {
    const { fragment } = parse(readFileSync(new URL(name, root), "utf-8"), { modern: true });
    return looseWords(fragment).map((word) => `${name}: ${word}`);
  });
  expect(loose).toEqual([]);
});

test("words in the markup of a component are found", () => {
  const found = (text: string): string[] => looseWords(parse(text, { modern: true }).fragment);
  expect(found('<p class="soft">Hello {name}</p>{#if a}<b title="Now">{t("x.y")}</b>{/if}')).toEqual(["Hello", "Now"]);
});
