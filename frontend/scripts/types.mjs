// Writes the types of the server's records: from its OpenAPI to src/api/openapi.json, and from that to src/api/types.ts.
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { typesOf } from "./typing.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const python = process.env.PYTHON ?? here("../../.venv/bin/python");
const told = execFileSync(python, ["-m", "quarterturn.studio.openapi"], {
  env: { ...process.env, PYTHONPATH: here("../../src") },
  encoding: "utf-8",
});
writeFileSync(here("../src/api/openapi.json"), told);
writeFileSync(here("../src/api/types.ts"), await typesOf(told));
