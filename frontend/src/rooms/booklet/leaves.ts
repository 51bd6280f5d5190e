/** The leaves of the booklet: which pages lie side by side, how sharp their pictures are, and what each file is for. */
import { address, get, post } from "$/api/client";
import type { Schemas } from "$/api/shapes";

export type BookletView = Schemas["BookletView"];
export type TemplatesView = Schemas["TemplatesView"];
export type PublishView = Schemas["PublishView"];
export type PublishOrder = Schemas["PublishOrder"];
export type PartName = NonNullable<PublishOrder["only"]>[number];
export type PublishedFile = Schemas["PublishedFile"];

const of = (id: string): string => `/designs/${encodeURIComponent(id)}`;

export const booklet = {
  view: (id: string) => get<BookletView>(`${of(id)}/booklet`),
  opening: (id: string) => get<BookletView>(`${of(id)}/booklet?opening=true`),
  page: (id: string, view: BookletView, number: number, width: number) =>
    address(`${of(id)}/booklet/${number}.png`, { width, r: view.revision, ...(view.whole ? {} : { opening: "true" }) }),
  templates: (id: string) => get<TemplatesView>(`${of(id)}/templates`),
  publish: (id: string, order: PublishOrder) => post<PublishView>(`${of(id)}/publish`, order),
  published: (id: string) => get<PublishView>(`${of(id)}/publish`),
  cancel: (id: string) => post<PublishView>(`${of(id)}/publish/cancel`),
  files: async (id: string) => (await get<Schemas["FilesView"]>(`${of(id)}/files`)).files,
  file: (id: string, name: string) => address(`${of(id)}/files/${encodeURIComponent(name)}`),
  zip: (id: string) => address(`${of(id)}/files.zip`),
};

/** Pictures are asked for in a few widths, each of which is typeset once. */
export const THUMB = 360;
const WIDTHS = [360, 840, 1320, 2040] as const;

/** Return the width to ask for, for a page that is so wide on the screen. */
export function sharpWidth(shown: number, density: number): number {
  const wanted = shown * density;
  return WIDTHS.find((width) => width >= wanted) ?? 2040;
}

/** Return which pages lie side by side: the first by itself at the right, then pairs. */
export function spreads(count: number): number[][] {
  const found: number[][] = count ? [[1]] : [];
  for (let page = 2; page <= count; page += 2) found.push(page < count ? [page, page + 1] : [page]);
  return found;
}

/** Return the place of the spread in which a page lies. */
export const spreadOf = (page: number): number => Math.floor(page / 2);

/** How far the screen is from showing an inch as an inch, as she measured it; kept for this browser. */
const KEPT = "quarterturn-screen-inch";
export function keptInch(): number {
  try {
    const kept = Number(localStorage.getItem(KEPT));
    return kept >= 0.5 && kept <= 2 ? kept : 1;
  } catch {
    return 1;
  }
}
export function keepInch(share: number): void {
  try {
    localStorage.setItem(KEPT, String(share));
  } catch {
    // Then it holds until the window is closed.
  }
}

const FILES = [
  [/^booklet\.pdf$/, "booklet"],
  [/^templates\.pdf$/, "templates"],
  [/^shape-.*\.svg$/, "shape-svg"],
  [/^shape-.*\.dxf$/, "shape-dxf"],
  [/^picture\.svg$/, "picture-svg"],
  [/^picture\.png$/, "picture-png"],
  [/^cut-list.*\.csv$/, "cut-list"],
  [/^job.*\.json$/, "job"],
  [/^sizes\.csv$/, "sizes"],
  [/^money\.txt$/, "money"],
  [/^costs\.csv$/, "costs"],
  [/^pick-list\.csv$/, "pick-list"],
  [/^cut-tickets\.txt$/, "cut-tickets"],
  [/^kit-label\.txt$/, "kit-label"],
  [/^class\.txt$/, "class"],
  [/^run-sheet\.csv$/, "run-sheet"],
  [/^findings\.txt$/, "findings"],
  [/^contents\.txt$/, "contents"],
] as const;
export type FileKind = (typeof FILES)[number][1];

/** Return what kind of file a name is of; none that is known for what a later program makes. */
export function kindOfFile(name: string): FileKind | null {
  return FILES.find(([pattern]) => pattern.test(name))?.[1] ?? null;
}

const ORDER = FILES.map(([, kind]) => kind);

/** Return files in the order in which one looks for them. */
export function inOrder(files: readonly PublishedFile[]): PublishedFile[] {
  const place = (file: PublishedFile): number => {
    const kind = kindOfFile(file.name);
    return kind === null ? ORDER.length : ORDER.indexOf(kind);
  };
  return [...files].sort((a, b) => place(a) - place(b) || a.name.localeCompare(b.name));
}

/** Return a number of bytes in a unit that suits it. */
export function weight(bytes: number, language: string): string {
  const [unit, by] = bytes < 1e6 ? ["kilobyte", 1e3] : ["megabyte", 1e6];
  const told = new Intl.NumberFormat(language, { style: "unit", unit: unit as string, maximumFractionDigits: by === 1e6 ? 1 : 0 });
  return told.format(Math.max(bytes, 1000) / (by as number));
}
