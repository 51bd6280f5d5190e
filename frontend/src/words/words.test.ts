import { readdirSync, readFileSync } from "node:fs";
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

test("no component says anything that is not in the catalogue", () => {
  const root = new URL("../", import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: "utf-8" }).filter((name) => name.endsWith(".svelte"));
  const loose = files.flatMap((name) => {
    const text = readFileSync(new URL(name, root), "utf-8");
    const markup = text.replace(/<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>|<!--[\s\S]*?-->/g, "");
    const said = markup.replace(/\{(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*\}/g, "").replace(/<[^>]*>/g, " ");
    return [...said.matchAll(/[A-Za-z]{3,}/g)].map((word) => `${name}: ${word[0]}`);
  });
  expect(loose).toEqual([]);
});
