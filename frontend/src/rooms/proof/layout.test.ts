import { expect, it } from "vitest";
import { bySize, others, scaleBar, scaleFor, type Good } from "./layout";

const good = (label: string, width: number, height: number) => ({ label, count: 1, box: [0, 0, width, height] }) as unknown as Good;

it("scales all things so that the largest fits", () => {
  expect(scaleFor([good("a", 10, 5), good("b", 2, 40)], 200, 200)).toBe(5);
  expect(scaleFor([good("a", 1, 1)], 200, 200)).toBe(60);
});
it("has a bar of a round length", () => {
  expect(scaleBar(15, "inch").label).toBe('6"');
  const bar = scaleBar(2.54 * 9, "metric");
  expect(bar.label).toBe("10 cm");
  expect(bar.inches).toBeCloseTo(10 / 2.54);
});
it("keeps what is large apart, so that the rest can be seen", () => {
  const [panel, unit, pair] = [good("panel", 50, 60), good("unit", 4, 4), good("pair", 8, 4)];
  expect(bySize([panel, unit, pair])).toEqual([[unit, pair], [panel]]);
  expect(bySize([unit, pair])).toEqual([[unit, pair]]);
  expect(bySize([])).toEqual([]);
});
it("leaves out what is taken up", () => {
  expect(others([good("a", 1, 1), good("b", 1, 1)], [good("b", 1, 1)]).map((each) => each.label)).toEqual(["a"]);
});
