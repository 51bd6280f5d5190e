/** How things are laid on the table side by side, all to one scale. */
import type { Schemas } from "$/api/shapes";

export type Good = Schemas["GoodView"];

export interface Laid {
  good: Good;
  width: number;
  height: number;
}

/** Return pixels an inch at which the largest of some things is no wider and no higher than this. */
export function scaleFor(goods: readonly Good[], wide: number, high: number, most = 60): number {
  return goods.reduce((scale, { box }) => Math.min(scale, wide / Math.max(box[2], 0.01), high / Math.max(box[3], 0.01)), most);
}

/** Return a round length whose bar is as near as can be to so many pixels, and its text. */
export function scaleBar(scale: number, units: string, pixels = 90): { inches: number; label: string } {
  const unit = units === "metric" ? 1 / 2.54 : 1;
  const steps = [0.5, 1, 2, 3, 5, 6, 10, 12, 20, 24, 50, 100];
  const best = steps.reduce((one, other) =>
    Math.abs(other * unit * scale - pixels) < Math.abs(one * unit * scale - pixels) ? other : one,
  );
  return { inches: best * unit, label: units === "metric" ? `${best} cm` : `${best}"` };
}

const sideOf = ({ box }: Good): number => Math.max(box[2], box[3]);

/** Return small things and large ones apart: beside a backing or a long strip the rest could not be seen. */
export function bySize(goods: readonly Good[]): Good[][] {
  const sides = goods.map(sideOf).sort((a, b) => a - b);
  const most = 4 * (sides[(sides.length - 1) >> 1] ?? 0);
  const small = goods.filter((good) => sideOf(good) <= most);
  return [small, goods.filter((good) => !small.includes(good))].filter((group) => group.length > 0);
}

/** Return what lies on the table and is neither taken up nor laid down. */
export function others(table: readonly Good[], used: readonly Good[]): Good[] {
  const labels = new Set(used.map((good) => good.label));
  return table.filter((good) => !labels.has(good.label));
}
