import { expect, it } from "vitest";
import type { PaperView, QuiltView } from "$/api/shapes";
import type { QuiltModel } from "$/quilt/model";
import cuttingGolden from "../../../../tests/goldens/studio/views/test_goldens/gates-of-the-orchard-cutting.json";
import quiltGolden from "../../../../tests/goldens/studio/views/test_goldens/gates-of-the-orchard-quilt.json";
import { boundsOf, outlinesOf, outlinesOfPiece, type SpotView } from "./marks";

const view = quiltGolden as unknown as QuiltView;
const model = { view, places: () => [] } as unknown as QuiltModel;
const paper = { colourways: [] } as unknown as PaperView;
const at = (kind: string, name: string): SpotView => ({ kind, name, cells: [], room: "quilt" });

it("finds where every piece of the bill is seen", () => {
  for (const plan of cuttingGolden.plans) {
    for (const piece of plan.pieces) expect(outlinesOfPiece(view, plan.letter, piece.marks).length).toBeGreaterThan(0);
  }
});

it("finds every border by the name that a finding gives it", () => {
  const borders = view.boxes.filter((box) => box.kind === "border");
  expect(borders.length).toBeGreaterThan(0);
  for (const border of borders) {
    expect(border.name).not.toContain("of top");
    expect(outlinesOf(at("border", border.name), model, paper)).not.toEqual([]);
  }
});

it("finds a fabric, a colourway and the whole, and nothing for what lies in the text alone", () => {
  const unit = Object.values(view.units)[0]!;
  expect(outlinesOf(at("fabric", unit.faces[0]!.fabric), model, paper).length).toBeGreaterThan(0);
  expect(outlinesOf(at("colourway", unit.code), model, paper).length).toBeGreaterThan(0);
  expect(outlinesOf(at("section", "centre"), model, paper).length).toBeGreaterThan(0);
  expect(outlinesOf(at("key", "maker"), model, paper)).toEqual([]);
});

it("tells the box round what is marked", () => {
  expect(boundsOf([])).toBeNull();
  const [border] = outlinesOf(at("section", "centre"), model, paper);
  expect(boundsOf([border!])?.length).toBe(4);
});
