/** What can be chosen from: cloth, what fills a place, sections. */
import type { PaperView } from "$/api/shapes";
import { ROOT } from "$/quilt/spots";
import { t } from "$/words/words";

export type Choices = readonly (readonly [value: string, said: string])[];

export function cloths(paper: PaperView | null): Choices {
  return (paper?.fabrics ?? []).map((fabric) => [fabric.letter, `${fabric.letter} ${fabric.name}`]);
}

/** Return what can fill a place of a map: units, plain cloth, sections but those named. */
export function fillings(paper: PaperView | null, without: readonly string[] = []): Choices {
  const units = (paper?.colourways ?? [])
    .flatMap((way) => way.kinds)
    .filter((kind) => kind.fits_map)
    .map((kind) => [kind.name, `${kind.name}: ${kind.spoken}`] as const);
  return [...units, ...cloths(paper), ...sectionsOf(paper, without)];
}

export function sectionsOf(paper: PaperView | null, without: readonly string[] = []): Choices {
  return (paper?.sections ?? [])
    .filter((section) => section.name !== ROOT && !without.includes(section.name))
    .map((section) => [section.name, section.name]);
}

export function called(section: string): string {
  return section === ROOT ? t("rooms.quilt.sections.root") : section;
}

/** Return a name that no section has yet, three small letters or more. */
export function freeName(taken: readonly string[]): string {
  const stem = t("rooms.quilt.sections.new-name");
  const names = ["", ..."bcdefghijklmnopqrstuvwxyz"].map((letter) => stem + letter);
  return names.find((name) => !taken.includes(name)) ?? stem;
}
