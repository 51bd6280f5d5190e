import { describe, expect, it } from "vitest";
import type { QuiltView } from "$/api/shapes";
import { linesOf } from "$/rooms/marking/paths";
import quiltGolden from "../../../../tests/goldens/studio/views/test_goldens/pocket-of-moons-quilt.json";
import seamsGolden from "../../../../tests/goldens/studio/views/test_goldens/pocket-of-moons-seams.json";
import { countOf, joinSigns, MEETINGS, pressSigns, strands, thicknesses, type SeamsView } from "./overlays";

const seams = seamsGolden as unknown as SeamsView;
const quilt = quiltGolden as unknown as QuiltView;
const look = { scale: 10, x: 100, y: 50 };

describe("the overlays", () => {
  it("give every join a sign, of another shape for each way of meeting", () => {
    const join = { at: [2, 1, 2, 1], distance: 0, first: 0, second: 1 };
    const signs = joinSigns(MEETINGS.map((meeting) => ({ ...join, meeting })) as unknown as SeamsView["joins"], look);
    expect(new Set(Object.values(signs)).size).toBe(3);
    expect(signs.match).toContain("a");
    expect(signs.end).toContain("h");
    const all = joinSigns(seams.joins, look);
    for (const meeting of MEETINGS) {
      expect(all[meeting].split("M").length - 1).toBe(countOf(seams.joins, meeting) * (meeting === "step" ? 2 : 1));
    }
  });

  it("point an arrow where a seam is pressed to, and none where it is opened", () => {
    const at = [0, 0, 0, 2];
    const { arrows, open } = pressSigns([{ at, towards: [1, 0] }] as unknown as SeamsView["pressing"], { scale: 10, x: 0, y: 0 });
    expect(arrows).toBe("M-3.15 10L9 10M9 10L2.7 14.5M9 10L2.7 5.5");
    expect(open).toBe("");
    expect(pressSigns([{ at, towards: null }] as unknown as SeamsView["pressing"], look).open).not.toBe("");
  });

  it("repeat the sign along a seam that is long on the screen", () => {
    const pressing = [{ at: [0, 0, 0, 20], towards: [1, 0] }] as unknown as SeamsView["pressing"];
    const heads = (scale: number): number => pressSigns(pressing, { scale, x: 0, y: 0 }).arrows.split("L").length - 1;
    expect(heads(3)).toBe(3);
    expect(heads(72)).toBe(60);
  });

  it("draw layers along the sides of every unit that has them, the thickest last", () => {
    const found = thicknesses(seams.layers, quilt);
    const counts = found.map((each) => each.layers);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    const all = quilt.placed.reduce((sum, placed) => sum + (seams.layers[placed.unit]?.filter((each) => each.layers > 1).length ?? 0), 0);
    expect(found.reduce((sum, each) => sum + each.middles.length, 0)).toBe(all);
  });

  it("string the pieces of a curve into one line, with a tint of its own", () => {
    const found = strands(seams, quilt);
    expect(found.length).toBe(seams.trails.length);
    expect(new Set(found.map((each) => each.tint)).size).toBe(found.length);
    for (const { path, trail } of found) {
      expect(linesOf(path).length).toBe(1);
      expect(linesOf(path)[0]?.stretches.length).toBeGreaterThanOrEqual(trail.units.length);
    }
  });
});
