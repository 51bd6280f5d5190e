/** The work in order: where one is in it, and how many pieces of it are made. */
import type { Schemas } from "$/api/shapes";

export type MakingView = Schemas["MakingView"];
export type ChapterView = Schemas["ChapterView"];
export type EntryView = Schemas["EntryView"];

export interface Stand {
  entry: EntryView;
  chapter: ChapterView;
  /** Its place in all of the work, from 0. */
  place: number;
}

/** Return everything there is to do, in order. */
export function stands(view: MakingView): Stand[] {
  const all = view.chapters.flatMap((chapter) => chapter.entries.map((entry) => ({ entry, chapter })));
  return all.map((each, place) => ({ ...each, place }));
}

/** Return the place of the first thing that is not ticked; the last where all is. */
export function firstOpen(all: readonly Stand[]): number {
  const found = all.findIndex((stand) => !stand.entry.ticked);
  return found < 0 ? Math.max(0, all.length - 1) : found;
}

/** Return the place of what is in hand: by its id, or what is open first where a change of the design took it away. */
export function placeOf(all: readonly Stand[], id: string | null): number {
  const found = id === null ? -1 : all.findIndex((stand) => stand.entry.id === id);
  return found < 0 ? firstOpen(all) : found;
}

export interface Count {
  label: string;
  made: number;
  all: number;
}

/** Return for each label that a chapter makes how many there will be, and how many of them are made. */
export function counted(chapter: ChapterView): Count[] {
  const counts = new Map<string, Count>();
  for (const entry of chapter.entries) {
    for (const { label, count } of entry.makes) {
      const known = counts.get(label) ?? { label, made: 0, all: 0 };
      counts.set(label, { label, made: known.made + (entry.ticked ? count : 0), all: known.all + count });
    }
  }
  return [...counts.values()];
}

export const doneOf = (chapter: ChapterView): number => chapter.entries.filter((entry) => entry.ticked).length;

/** Return the view with an entry ticked or not, to show at once; what lies ready comes with the server's answer. */
export function ticked(view: MakingView, id: string, isDone: boolean): MakingView {
  const chapters = view.chapters.map((chapter) => ({
    ...chapter,
    entries: chapter.entries.map((entry) => (entry.id === id ? { ...entry, ticked: isDone } : entry)),
  }));
  return { ...view, chapters, done: chapters.reduce((sum, chapter) => sum + doneOf(chapter), 0) };
}
