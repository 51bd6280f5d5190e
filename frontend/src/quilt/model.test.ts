import { describe, expect, test } from "vitest";
import type { PlacedView, QuiltView, SectionView } from "$/api/shapes";
import { QuiltModel } from "./model";
import { turnedInPlace } from "./motion";
import { drawnAt, nextSpot, seen, unseen } from "./spots";

/** A map of 2 × 2 units of side 1, whose second copy lies at the right, mirrored. */
function quilt(): QuiltModel {
  const placed: PlacedView[] = [];
  for (const [row, column, copied] of [[0, 0, 0], [0, 1, 0], [1, 0, 0], [1, 1, 0], [0, 0, 1], [0, 1, 1], [1, 0, 1], [1, 1, 1]] as const) {
    const lie = copied ? 5 : 0;
    const across = copied ? 3 - column : column;
    const turn = seen(lie, 0);
    const [a, b, c, d, e, f] = turnedInPlace(1, 1, turn);
    placed.push({
      unit: "a", section: "centre", copy_number: 1, row, column: across, cell: [row, column], written: "centre", lie, turn,
      at: [a, b, c, d, e + across, f + row],
    });
  }
  const unit = { code: "a", quarter: "", width: 1, height: 1, faces: [], spoken: "a" };
  const view = { units: { a: unit, b: { ...unit, code: "b" } }, placed, boxes: [], cloths: [] } as unknown as QuiltView;
  const words = [["a0", "a0"], ["a0", "a0"]];
  return new QuiltModel(view, [{ name: "centre", words } as unknown as SectionView]);
}

describe("painting", () => {
  test("all places that show a cell change together, each as it is seen there", () => {
    const model = quilt();
    const changed = model.paint([{ section: "centre", row: 0, column: 1, word: "b3" }]);
    expect(changed.map((spot) => [spot.middle[0], spot.unit, spot.turn])).toEqual([
      [1.5, "b", 3],
      [2.5, "b", 2],
    ]);
    expect(model.word({ section: "centre", row: 0, column: 1 })).toBe("b3");
  });

  test("what is written there already changes nothing", () => {
    expect(quilt().paint([{ section: "centre", row: 0, column: 0, word: "a0" }])).toEqual([]);
  });

  test("a turn as seen, written and seen again is the same, mirrored or not", () => {
    for (let lie = 0; lie < 8; lie++) for (let turn = 0; turn < 4; turn++) expect(seen(lie, unseen(lie, turn))).toBe(turn);
  });
});

describe("places", () => {
  test("a point finds the place that it lies in", () => {
    expect(quilt().at(3.2, 1.7, null)).toMatchObject({ row: 1, column: 0, middle: [3.5, 1.5] });
    expect(quilt().at(4.2, 0.5, null)).toBeNull();
    expect(quilt().at(0.5, 0.5, "wreath")).toBeNull();
  });

  test("a unit is drawn where its frame is, whatever its turn", () => {
    const spot = quilt().spots[6];
    if (!spot) throw new Error("no place");
    expect(drawnAt(spot, 1, 1, spot.turn).map((n) => Math.round(n * 1e6) / 1e6 + 0)).toEqual(
      [...(quilt().view.placed[6]?.at ?? [])].map((n) => n + 0),
    );
  });

  test("the needle goes to the neighbour, and stays at the edge", () => {
    const { spots } = quilt();
    const first = spots[0];
    if (!first) throw new Error("no place");
    expect(nextSpot(spots, first, "right", 0.5)?.middle).toEqual([1.5, 0.5]);
    expect(nextSpot(spots, first, "down", 0.5)?.middle).toEqual([0.5, 1.5]);
    expect(nextSpot(spots, first, "up", 0.5)).toBeNull();
  });

  test("a block is copied by rows", () => {
    expect(quilt().block("centre", 0, 1, 1, 1)).toEqual([["a0"], ["a0"]]);
  });
});
