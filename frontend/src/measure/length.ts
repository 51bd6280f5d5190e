/**
 * Lengths as the design file writes them: `4 1/4"`, `7.5 mm`. The server reads them for good; here they are only read to
 * draw with, and written where a hand has dragged something to a mark of the ruler.
 */
export type Units = "inch" | "metric";

const MM = 1 / 25.4;
const SIGNS: Record<string, number> = {
  "": 0, "½": 1 / 2, "⅓": 1 / 3, "⅔": 2 / 3, "¼": 1 / 4, "¾": 3 / 4, "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8,
};
const WORDS: Record<string, number> = {
  '"': 1, "″": 1, in: 1, inch: 1, inches: 1, mm: MM, cm: 10 * MM, m: 1000 * MM, ft: 12, yd: 36,
};
const LENGTH = /^([-−])?\s*(?:(\d+)\s*[/⁄]\s*(\d+)|(\d*\.?\d+)(?:[\s\-+]*(\d+)\s*[/⁄]\s*(\d+)|\s*([½⅓⅔¼¾⅛⅜⅝⅞]))?|([½⅓⅔¼¾⅛⅜⅝⅞]))\s*("|″|[a-z]+)?$/i;

export function unitsOf(name: string | undefined): Units {
  return name === "metric" ? "metric" : "inch";
}

/** Return the inches that a text tells, or null where it tells none. A bare number is in the units of the file. */
export function readLength(text: string, units: Units): number | null {
  const found = LENGTH.exec(text.trim());
  if (!found) return null;
  const [, minus, over, under, whole = "0", partOver, partUnder, sign, lone, word] = found;
  const scale = word === undefined ? (units === "metric" ? MM : 1) : WORDS[word.toLowerCase()];
  if (scale === undefined) return null;
  const fraction = over ? Number(over) / Number(under) : partOver ? Number(partOver) / Number(partUnder) : 0;
  const value = Number(over || lone ? 0 : whole) + fraction + (SIGNS[sign ?? lone ?? ""] ?? 0);
  return Number.isFinite(value) ? (minus ? -value : value) * scale : null;
}

function mixed(count: number, of: number): string {
  const whole = Math.floor(count / of);
  let [over, under] = [count % of, of];
  if (over === 0) return String(whole);
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return whole ? `${whole} ${over}/${under}` : `${over}/${under}`;
}

/** Return a length as the file writes it, to 1/64 inch or a tenth of a millimetre. */
export function writeLength(inches: number, units: Units): string {
  const size = Math.abs(inches);
  const text = units === "metric" ? `${+(size / MM).toFixed(1)} mm` : `${mixed(Math.round(size * 64), 64)}"`;
  return inches < 0 && !/^0\D/.test(text) ? `-${text}` : text;
}

export interface RulerStep {
  name: string;
  inches: number;
}

const STEPS: Record<Units, readonly RulerStep[]> = {
  inch: [16, 8, 4, 2].map((part) => ({ name: `1/${part}"`, inches: 1 / part })),
  metric: [1, 2, 5, 10].map((mm) => ({ name: `${mm} mm`, inches: mm * MM })),
};

/** Return the marks of a ruler to which a hand can snap, the finest first. */
export const stepsOf = (units: Units): readonly RulerStep[] => STEPS[units];

/** Return the nearest mark. */
export function snapped(inches: number, step: number): number {
  return Math.round(inches / step) * step;
}
