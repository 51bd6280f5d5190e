/** Rulers and lines of the mat: which marks stand where, so that they can be read at any zoom. */
export interface Marks {
  /** Inches between two marks with a number, and between two small ones. */
  labelled: number;
  small: number;
  /** Inches that a mark counts as one. */
  unit: number;
}

const CENTIMETRE = 1 / 2.54;
const INCHES = { unit: 1, labelled: [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48], small: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 3, 6, 12] };
const CENTIMETRES = { unit: CENTIMETRE, labelled: [0.5, 1, 2, 5, 10, 20, 50, 100], small: [0.1, 0.5, 1, 5, 10, 50] };

/** Return the marks for a scale in pixels an inch: numbers at least 44 px apart, small marks at least 6 px. */
export function marksFor(scale: number, units: string): Marks {
  const steps = units === "metric" ? CENTIMETRES : INCHES;
  const pick = (from: readonly number[], apart: number): number =>
    from.find((step) => step * steps.unit * scale >= apart) ?? from[from.length - 1] ?? 1;
  const labelled = pick(steps.labelled, 44);
  const small = steps.small.filter((step) => step <= labelled && Number.isInteger(+(labelled / step).toFixed(6)));
  return { labelled: labelled * steps.unit, small: pick(small, 6) * steps.unit, unit: steps.unit };
}

/** Return the inches at which marks stand between two places, counted in steps. */
export function marksBetween(from: number, to: number, step: number): number[] {
  const found: number[] = [];
  for (let k = Math.ceil(from / step - 1e-9); k * step <= to + 1e-9; k++) found.push(k * step);
  return found;
}

/** Return the number that stands at a mark. */
export function label(inches: number, marks: Marks): string {
  return String(+(inches / marks.unit).toFixed(2));
}

export interface Look {
  /** Pixels an inch, and where the quilt's corner lies in the window. */
  scale: number;
  x: number;
  y: number;
}

/** Return how a quilt is seen whole in a window of this size, clear of the rulers. */
export function fitted(
  [width, height]: readonly [number, number],
  [wide, high]: readonly [number, number],
  ruler: number,
  margin: number,
): Look {
  const room = [Math.max(wide - ruler - 2 * margin, 40), Math.max(high - ruler - 2 * margin, 40)] as const;
  const scale = Math.min(room[0] / width, room[1] / height);
  return {
    scale,
    x: ruler + margin + (room[0] - width * scale) / 2,
    y: ruler + margin + (room[1] - height * scale) / 2,
  };
}

/** Return the look after zooming about a point of the window; between 2 and 400 px an inch. */
export function zoomed(look: Look, factor: number, x: number, y: number): Look {
  const scale = Math.min(400, Math.max(2, look.scale * factor));
  const by = scale / look.scale;
  return { scale, x: x - (x - look.x) * by, y: y - (y - look.y) * by };
}
