/** What the room of cloth asks of the server, and how fabrics, parts and photos are reckoned with on the page. */
import { address, ask, get } from "$/api/client";
import type { Act, ColourwayView, FabricView, Schemas } from "$/api/shapes";
import { t } from "$/words/words";

export type ClothRoom = Schemas["ClothRoom"];
export type ClothFabric = Schemas["ClothFabric"];
export type PaletteView = Schemas["PaletteView"];
export type TakenPhoto = Schemas["TakenPhoto"];

const of = (id: string): string => `/designs/${encodeURIComponent(id)}`;

export const loadCloth = (id: string): Promise<ClothRoom> => get(`${of(id)}/cloth`);
export const takePhoto = (id: string, photo: Blob): Promise<TakenPhoto> => ask("POST", `${of(id)}/photo`, photo);
export const paletteOf = (id: string, photo: Blob, [left, top, width, height]: Crop = WHOLE): Promise<PaletteView> =>
  ask("POST", `${of(id)}/palette?left=${left}&top=${top}&width=${width}&height=${height}`, photo);

/** Return what a colour of a photo is called: `dark green`. */
export const colourWords = (each: PaletteView["colours"][number]): string =>
  t("rooms.cloth.colour-words", { depth: t(`rooms.cloth.depths.${each.depth}`), hue: t(`rooms.cloth.hues.${each.hue}`) }).trim();
export const photoAddress = (id: string, file: string): string => address(`${of(id)}/photo/${encodeURIComponent(file)}`);

/** Return a name as a part of a dotted key. */
export function quoted(part: string): string {
  return /^[\w-]+$/.test(part) ? part : JSON.stringify(part);
}

/** Return the act that gives a part of a colourway a cloth; of halves rejoined, a half another colourway. */
export function partAct(way: ColourwayView, kind: string, part: string, value: string): Act {
  const table = `colourways.${quoted(way.code)}`;
  const plain = part === "ground" || part === "first" || part === "second";
  const key = plain ? part : kind === "shapes cut" ? `shapes.${quoted(part)}` : "shape";
  return { name: "put", at: `${table}.${key}`, value };
}

/** Return the parts of a colourway with what they are given: letters of cloth, or codes of halves. */
export function partsOf(way: ColourwayView): [part: string, value: string][] {
  if (way.first) return [["first", way.first], ["second", way.second]];
  return Object.entries(way.cloths as Record<string, string>);
}

/** Return fabrics in grey, and without their photos: what is light and what is dark in the quilt. */
export function inGrey(fabrics: readonly FabricView[], cloth: ClothRoom | null): FabricView[] {
  const greys = new Map(cloth?.fabrics.map((each) => [each.letter, each.grey]) ?? []);
  return fabrics.map((fabric) => ({ ...fabric, colour: greys.get(fabric.letter) ?? fabric.colour, photo: null }));
}

/** Return fabrics with the way in which their prints run, where they have one. */
export function byWay(fabrics: readonly FabricView[]): (FabricView & { showsWay: boolean })[] {
  return fabrics.map((fabric) => ({ ...fabric, photo: null, showsWay: fabric.direction !== "none" }));
}

/** Return a colour as the file writes it, of what was typed: with or without #, three digits or six. */
export function readColour(text: string): string | null {
  const digits = text.trim().replace(/^#/, "").toLowerCase();
  if (/^[0-9a-f]{6}$/.test(digits)) return `#${digits}`;
  return /^[0-9a-f]{3}$/.test(digits) ? `#${[...digits].map((digit) => digit + digit).join("")}` : null;
}

// Photos: a crop is left, top, width and height as shares of the photo; a mark is a point in the same shares.
export type Crop = readonly [left: number, top: number, width: number, height: number];
export type Mark = readonly [x: number, y: number];
export const WHOLE: Crop = [0, 0, 1, 1];
export const LEAST_CROP = 0.05;

const held = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);
const round = (value: number): number => Math.round(value * 10_000) / 10_000;

/** Return a crop that was moved, kept inside the photo. */
export function movedCrop([left, top, width, height]: Crop, dx: number, dy: number): Crop {
  return [round(held(left + dx, 0, 1 - width)), round(held(top + dy, 0, 1 - height)), width, height];
}

/** Return a crop with one of its corners (0 top left, then clockwise) moved, kept inside the photo. */
export function stretchedCrop([left, top, width, height]: Crop, corner: number, dx: number, dy: number): Crop {
  const isLeft = corner === 0 || corner === 3;
  const isTop = corner < 2;
  const [right, bottom] = [left + width, top + height];
  const x = isLeft ? held(left + dx, 0, right - LEAST_CROP) : held(right + dx, left + LEAST_CROP, 1);
  const y = isTop ? held(top + dy, 0, bottom - LEAST_CROP) : held(bottom + dy, top + LEAST_CROP, 1);
  const [l, r] = isLeft ? [x, right] : [left, x];
  const [t, b] = isTop ? [y, bottom] : [top, y];
  return [round(l), round(t), round(r - l), round(b - t)];
}

export const movedMark = ([x, y]: Mark, dx: number, dy: number): Mark => [round(held(x + dx, 0, 1)), round(held(y + dy, 0, 1))];

/** Return what a photo truly shows across in its crop, where what lies between two marks measures so much. */
export function trueWidth(crop: Crop, from: Mark, to: Mark, long: number, wide: number, high: number): number {
  const apart = Math.hypot((to[0] - from[0]) * wide, (to[1] - from[1]) * high);
  return apart > 0 ? (long * crop[2] * wide) / apart : 0;
}

/** Where a photo lies in the tile that is repeated over the quilt, in inches. */
export interface Print {
  width: number;
  height: number;
  image: { x: number; y: number; width: number; height: number };
}

export function printOf(crop: Crop, inches: number, wide: number, high: number): Print {
  const width = inches / crop[2];
  const height = (width * high) / wide;
  return { width: inches, height: height * crop[3], image: { x: -crop[0] * width, y: -crop[1] * height, width, height } };
}
