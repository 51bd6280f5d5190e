import { expect, it } from "vitest";
import type { PlanView } from "./changes";
import { cornerOf, fitting, GUTTER, layoutOf, RULER, widest } from "./parcels";

const parcel = (y: number) => ({ said: "Ap1: fat quarter", upright: false, y, width: 20, height: 17, whole_width: 21, whole_height: 18 });
const plan = (bought: number, parcels: readonly object[]) =>
  ({ bought: { inches: bought }, width: { inches: 40 }, parcels }) as unknown as PlanView;
const strip = (number: number | null) => ({ parcel: number }) as unknown as PlanView["strips"][number];

it("lays pieces of cloth side by side as far as the window goes", () => {
  const { parcels, width, height } = layoutOf(plan(0, [parcel(0), parcel(17), parcel(34)]), 10, 620);
  expect(parcels.map(({ x }) => x - GUTTER)).toEqual([0, parcels[1]!.x - GUTTER, 0]);
  expect(parcels[1]!.x).toBeGreaterThanOrEqual(parcels[0]!.x + 210 + GUTTER);
  expect(parcels[2]!.y).toBeGreaterThan(parcels[0]!.y + 180);
  expect(width).toBeLessThanOrEqual(620);
  expect(height).toBeGreaterThanOrEqual(parcels[2]!.y + 180);
});

it("lays them below what comes off the bolt", () => {
  const { parcels } = layoutOf(plan(36, [parcel(30)]), 10, 620);
  expect(parcels[0]!.y).toBeGreaterThan(RULER + 360);
});

it("finds the corner that a strip's inches count from", () => {
  const layout = layoutOf(plan(36, [parcel(30)]), 10, 620);
  expect(cornerOf(strip(null), layout, 10)).toEqual([GUTTER, RULER]);
  const [x, y] = cornerOf(strip(0), layout, 10);
  expect([x, y + 30 * 10]).toEqual([layout.parcels[0]!.x, layout.parcels[0]!.y]);
});

it("fits the widest cloth in", () => {
  expect(widest(plan(0, [parcel(0)]))).toBe(21);
  expect(widest(plan(9, [parcel(0)]))).toBe(40);
  expect(fitting(plan(0, [parcel(0)]), 500) * 21 + GUTTER).toBeLessThan(500);
});
