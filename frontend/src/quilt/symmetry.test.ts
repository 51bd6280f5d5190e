import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { strokes, type Brush } from "./symmetry";

interface Case {
  ground: { rows: number; columns: number; onPoint: boolean };
  at: [number, number];
  paint: { unit: string; turn: number; mirror: string | null; mirrorTurn: number; turns: boolean };
  brush: Brush;
  every: number;
  laid: [number, number, string, number][];
}

const golden = new URL("../../../tests/goldens/studio/acts/test_symmetry/symmetry.json", import.meta.url);
const cases = JSON.parse(readFileSync(golden, "utf-8")) as Case[];

function paintedBy({ ground, at, paint, brush, every }: Case): Case["laid"] {
  const laid = strokes(
    { rows: ground.rows, columns: ground.columns, on_point: ground.onPoint },
    ...at,
    { unit: paint.unit, turn: paint.turn, mirror: paint.mirror, mirror_turn: paint.mirrorTurn, turns: paint.turns },
    brush,
    every,
  );
  return laid.map((each) => [each.row, each.column, each.unit, each.turn]);
}

describe("the brush paints what the server's rule paints", () => {
  test("there are cases of every brush", () => {
    expect(new Set(cases.map((each) => each.brush)).size).toBe(6);
  });
  test.each(cases.map((each, k) => [k, each.brush, each] as const))("case %i, %s", (_, __, each) => {
    expect(paintedBy(each)).toEqual(each.laid);
  });
  test("the comparison can fail", () => {
    const first = cases.find((each) => each.brush === "mirror across" && each.laid.length > 1);
    expect(first && paintedBy({ ...first, brush: "none" })).not.toEqual(first?.laid);
  });
});
