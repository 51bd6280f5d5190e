/** Whether dark or light writing is read better on a colour (WCAG 2.2, relative luminance and contrast). */
const DARK = "#1d1a16";
const LIGHT = "#ffffff";

function luminance(colour: string): number {
  const parts = [1, 3, 5].map((k) => parseInt(colour.slice(k, k + 2), 16) / 255);
  const [r, g, b] = parts.map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

/** Return the contrast of two colours written as #rrggbb, from 1 to 21. */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one) + 0.05, luminance(other) + 0.05];
  return Math.max(a, b) / Math.min(a, b);
}

export function inkOn(colour: string): string {
  return contrast(DARK, colour) >= contrast(LIGHT, colour) ? DARK : LIGHT;
}
