import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
// @ts-expect-error - a script without types
import { typesOf } from "../../scripts/typing.mjs";

const read = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf-8");

test("the types are those of the server's OpenAPI document (npm run types)", async () => {
  expect(read("./types.ts")).toBe(await (typesOf as (text: string) => Promise<string>)(read("./openapi.json")));
});
