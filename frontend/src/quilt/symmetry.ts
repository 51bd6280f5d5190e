/**
 * The brush's symmetry: which other cells are painted with one, and how the unit lies in each. The rule is that of
 * `studio/acts/symmetry.py`, whose goldens are the fixtures of the test of this module.
 */
export const BRUSHES = ["none", "mirror across", "mirror down", "mirror both", "turn", "half turn"] as const;
export type Brush = (typeof BRUSHES)[number];

/** What is painted: a word of the map without its turn, and the turn; what is its mirror image, and how that lies. */
export interface Paint {
  unit: string;
  turn: number;
  mirror: string | null;
  mirror_turn: number;
  /** False for what never turns, such as plain cloth. */
  turns: boolean;
}

/** The map that is painted: rows and columns as the file writes them, on point with what lies between them. */
export interface Ground {
  rows: number;
  columns: number;
  on_point: boolean;
}

export interface Laid {
  row: number;
  column: number;
  unit: string;
  turn: number;
}

type Place = readonly [across: number, down: number];
type Image = readonly [place: Place, unit: string, turn: number];

const quarter = (turn: number): number => ((turn % 4) + 4) % 4;

/** Return the middle of a cell, across and down, in half cells. */
function placeOf(ground: Ground, row: number, column: number): Place {
  return ground.on_point ? [2 * column + 1 + (row % 2), row + 1] : [2 * column + 1, 2 * row + 1];
}

function cellOf(ground: Ground, [across, down]: Place): readonly [number, number] | null {
  if (!(across > 0 && across < 2 * ground.columns && down > 0 && down < 2 * ground.rows)) return null;
  if (!ground.on_point) return [(down - 1) >> 1, (across - 1) >> 1];
  const row = down - 1;
  const left = across - 1 - (row % 2);
  return left % 2 === 0 ? [row, left / 2] : null;
}

function imagesOf(ground: Ground, place: Place, paint: Paint, brush: Brush): Image[] {
  const [wide, high] = [2 * ground.columns, 2 * ground.rows];
  const [x, y] = place;
  const { unit, turn } = paint;
  const images: Image[] = [[place, unit, turn]];
  if (brush === "turn" && wide === high) {
    images.push([[wide - y, x], unit, turn + 1], [[wide - x, high - y], unit, turn + 2], [[y, high - x], unit, turn + 3]);
  } else if (brush === "turn" || brush === "half turn") {
    images.push([[wide - x, high - y], unit, turn + 2]);
  }
  if (paint.mirror !== null) {
    const flipped = paint.mirror_turn - turn - (ground.on_point ? 1 : 0);
    if (brush === "mirror across" || brush === "mirror both") images.push([[wide - x, y], paint.mirror, flipped]);
    if (brush === "mirror down" || brush === "mirror both") images.push([[x, high - y], paint.mirror, flipped + 2]);
  }
  if (brush === "mirror both") images.push([[wide - x, high - y], unit, turn + 2]);
  return images;
}

function againAt(ground: Ground, place: Place, every: number): Place[] {
  const places: Place[] = [place];
  if (every <= 0) return places;
  const step = 2 * every;
  for (let y = place[1] % step; y < 2 * ground.rows; y += step) {
    for (let x = place[0] % step; x < 2 * ground.columns; x += step) places.push([x, y]);
  }
  return places;
}

/** Return all that is painted with a cell, the cell itself first; of two for one cell the earlier counts. */
export function strokes(
  ground: Ground,
  row: number,
  column: number,
  paint: Paint,
  brush: Brush,
  every = 0,
): Laid[] {
  const found = new Map<number, Laid>();
  for (const [place, unit, turn] of imagesOf(ground, placeOf(ground, row, column), paint, brush)) {
    for (const again of againAt(ground, place, every)) {
      const cell = cellOf(ground, again);
      if (!cell) continue;
      const key = cell[0] * 100_000 + cell[1];
      if (!found.has(key)) {
        found.set(key, { row: cell[0], column: cell[1], unit, turn: paint.turns ? quarter(turn) : 0 });
      }
    }
  }
  return [...found.values()];
}
