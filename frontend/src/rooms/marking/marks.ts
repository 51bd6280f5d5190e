/** Where in the quilt something is: outlines in inches, for what a finding names and for what a piece becomes. */
import type { PaperView, QuiltView, Schemas } from "$/api/shapes";
import type { QuiltModel } from "$/quilt/model";
import { boxOf, type Matrix } from "$/quilt/motion";
import { rectangle } from "./paths";

export type SpotView = Schemas["SpotView"];
export type MarksView = Schemas["MarksView"];

/** An outline in its own frame, and where that lies in the top. */
export interface Outline {
  path: string;
  at: Matrix;
  /** The size of its frame, for what must be brought into sight. */
  width: number;
  height: number;
}

const STILL: Matrix = [1, 0, 0, 1, 0, 0];

function whole(view: QuiltView): Outline {
  return { path: rectangle(view.width, view.height), at: STILL, width: view.width, height: view.height };
}

function ring(view: QuiltView): Outline {
  const { depth } = view.binding;
  const [wide, high] = [view.width + depth, view.height + depth];
  const outer = `M ${-depth} ${-depth} L ${wide} ${-depth} L ${wide} ${high} L ${-depth} ${high} Z`;
  return { ...whole(view), path: `${outer} ${rectangle(view.width, view.height)}` };
}

/** Return the cloth of a fabric in the units of some colourways, or of all. */
function faces(view: QuiltView, letter: string, codes: ReadonlySet<string> | null): Outline[] {
  return view.placed.flatMap((placed) => {
    const unit = view.units[placed.unit];
    if (!unit || (codes && !codes.has(unit.code))) return [];
    const path = unit.faces.filter((face) => face.fabric === letter).map((face) => face.path).join(" ");
    return path ? [{ path, at: placed.at as Matrix, width: unit.width, height: unit.height }] : [];
  });
}

function units(view: QuiltView, codes: ReadonlySet<string>): Outline[] {
  return view.placed.flatMap((placed) => {
    const unit = view.units[placed.unit];
    if (!unit || !codes.has(unit.code)) return [];
    return [{ path: rectangle(unit.width, unit.height), at: placed.at as Matrix, width: unit.width, height: unit.height }];
  });
}

function cloths(view: QuiltView, numbers: readonly number[]): Outline[] {
  return numbers.flatMap((number) => {
    const cloth = view.cloths[number];
    return cloth ? [{ ...whole(view), path: cloth.path }] : [];
  });
}

/** Return where a piece that is cut from a fabric is seen in the quilt. */
export function outlinesOfPiece(view: QuiltView, letter: string, marks: MarksView): Outline[] {
  return [
    ...(marks.colourways.length ? faces(view, letter, new Set(marks.colourways)) : []),
    ...cloths(view, marks.cloths),
    ...(marks.binding ? [ring(view)] : []),
    ...(marks.backing ? [whole(view)] : []),
  ];
}

function boxes(view: QuiltView, kinds: readonly string[], name: string): Outline[] {
  return view.boxes
    .filter((box) => kinds.includes(box.kind) && box.name === name)
    .map(({ width, height, inset: [side, end], at }) => {
      const inner = `M ${side} ${end} L ${width - side} ${end} L ${width - side} ${height - end} L ${side} ${height - end} Z`;
      const path = rectangle(width, height) + (side || end ? ` ${inner}` : "");
      return { path, at: at as Matrix, width, height };
    });
}

function fabricOutlines(view: QuiltView, letter: string): Outline[] {
  const numbers = view.cloths.flatMap((cloth, k) => (cloth.fabric === letter ? [k] : []));
  const bound = view.binding.fabric === letter ? [ring(view)] : [];
  return [...faces(view, letter, null), ...cloths(view, numbers), ...bound];
}

function motif(view: QuiltView, name: string): Outline[] {
  const [section, number] = name.split(" ");
  const owner = section ?? "";
  const numbers = view.cloths.flatMap((cloth, k) => (cloth.what === "motif" && cloth.section === owner ? [k] : []));
  const found = numbers[Number(number)];
  return found === undefined ? [] : cloths(view, [found]);
}

/** Return where a finding lies; nothing where it lies in the text alone. */
export function outlinesOf(spot: SpotView, model: QuiltModel, paper: PaperView): Outline[] {
  const { view } = model;
  if (spot.kind === "cells") {
    return spot.cells.flatMap((cell) =>
      model.places(cell).map((place) => ({
        path: rectangle(place.width, place.height), at: place.frame, width: place.width, height: place.height,
      })),
    );
  }
  if (spot.kind === "section") {
    const found = boxes(view, ["section", "section with borders", "panel"], spot.name);
    return found.length || spot.name !== "centre" ? found : [whole(view)];
  }
  if (spot.kind === "border") return boxes(view, ["border"], spot.name);
  if (spot.kind === "fabric") return fabricOutlines(view, spot.name);
  if (spot.kind === "colourway") return units(view, new Set([spot.name]));
  if (spot.kind === "recipe") {
    const codes = paper.colourways.filter((way) => way.recipe === spot.name).map((way) => way.code);
    return units(view, new Set(codes));
  }
  return spot.kind === "motif" ? motif(view, spot.name) : [];
}

/** Return the box [left, top, right, bottom] round outlines; null where there are none. */
export function boundsOf(outlines: readonly Outline[]): readonly [number, number, number, number] | null {
  if (!outlines.length) return null;
  const all = outlines.map((each) => boxOf(each.at, each.width, each.height));
  const side = (k: 0 | 1 | 2 | 3, of: (...n: number[]) => number): number => all.reduce((n, box) => of(n, box[k]), all[0]?.[k] ?? 0);
  return [side(0, Math.min), side(1, Math.min), side(2, Math.max), side(3, Math.max)];
}
