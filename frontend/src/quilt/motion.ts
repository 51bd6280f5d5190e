/** SVG matrices [a b c d e f]: x' = a x + c y + e, y' = b x + d y + f; y runs down. */
export type Matrix = readonly [number, number, number, number, number, number];
export type Point = readonly [number, number];

export const STILL: Matrix = [1, 0, 0, 1, 0, 0];

/** Return the motion that does `first` and then `second`. (A module that exports `then` could not be awaited.) */
export function inTurn(first: Matrix, second: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [p, q, r, s, u, v] = second;
  return [
    p * a + r * b,
    q * a + s * b,
    p * c + r * d,
    q * c + s * d,
    p * e + r * f + u,
    q * e + s * f + v,
  ];
}

export function inverse([a, b, c, d, e, f]: Matrix): Matrix {
  const size = a * d - b * c;
  return [d / size, -b / size, -c / size, a / size, (c * f - d * e) / size, (b * e - a * f) / size];
}

export function moved([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

const COS = [1, 0, -1, 0] as const;
const SIN = [0, 1, 0, -1] as const;

/** Return the quarter turns clockwise that leave the top left corner of a rectangle at the origin. */
export function turnedInPlace(width: number, height: number, turn: number): Matrix {
  const times = ((turn % 4) + 4) % 4;
  const cos = COS[times] ?? 1;
  const sin = SIN[times] ?? 0;
  const shift = ([[0, 0], [height, 0], [width, height], [0, width]] as const)[times] ?? [0, 0];
  return [cos, sin, -sin || 0, cos, shift[0], shift[1]];
}

/** Return a matrix as the attribute of an SVG element. */
export function attribute(matrix: Matrix): string {
  return `matrix(${matrix.map((number) => +number.toFixed(6)).join(" ")})`;
}

/** Return the box [left, top, right, bottom] round a rectangle of this size that has been moved. */
export function boxOf(at: Matrix, width: number, height: number): readonly [number, number, number, number] {
  const corners = ([[0, 0], [width, 0], [width, height], [0, height]] as const).map((corner) => moved(at, corner));
  const xs = corners.map((corner) => corner[0]);
  const ys = corners.map((corner) => corner[1]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
