/** Rows of small fields, as texts, and what the file writes for them. */
import type { JsonValue } from "$/api/shapes";
import type { ValueView } from "./values.svelte";

export type Row = Record<string, string>;
type Given = Record<string, JsonValue>;

/** Return what is stated as rows of texts; packages are told by their name and their two sides. */
export function asRows({ kind, stated }: ValueView): Row[] {
  if (kind === "packages") {
    return Object.entries((stated ?? {}) as Given).map(([name, sides]) => {
      const [short = "", long = ""] = Array.isArray(sides) ? sides.map(String) : [];
      return { name, short, long };
    });
  }
  const rows = (Array.isArray(stated) ? stated : []) as Given[];
  return rows.map((row) => Object.fromEntries(Object.entries(row).map(([key, each]) => [key, String(each ?? "")])));
}

/** Return what the file writes for rows; null for none. What is empty is left out, and what reads as a number is one. */
export function fromRows(value: ValueView, rows: readonly Row[]): JsonValue {
  if (!rows.length) return null;
  if (value.kind === "packages") {
    return Object.fromEntries(rows.map(({ name = "", short = "", long = "" }) => [name.trim(), [short.trim(), long.trim()]]));
  }
  const kinds = new Map(value.columns.map((column) => [column.key, column.kind]));
  return rows.map((row) =>
    Object.fromEntries(
      Object.entries(row)
        .filter(([, text]) => text.trim() !== "")
        .map(([key, text]): [string, JsonValue] => [key, isNumber(kinds.get(key)) && isFinite(Number(text)) ? Number(text) : text.trim()]),
    ),
  );
}

const isNumber = (kind: string | undefined): boolean => kind === "number" || kind === "count";
