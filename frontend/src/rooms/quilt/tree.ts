/** The tree of sections as maps and borders call them, each where it is called first; what nothing calls comes last. */
import type { SectionView } from "$/api/shapes";
import { ROOT } from "$/quilt/spots";
import { wordOf } from "$/quilt/words";

export interface Branch {
  section: SectionView;
  depth: number;
  /** How many words of all maps call it. */
  calls: number;
}

export function branches(sections: readonly SectionView[]): Branch[] {
  const byName = new Map(sections.map((section) => [section.name, section]));
  const calls = new Map<string, number>();
  for (const name of sections.flatMap(callsOf)) calls.set(name, (calls.get(name) ?? 0) + 1);
  const found = new Map<string, Branch>();
  const walk = (name: string, depth: number): void => {
    const section = byName.get(name);
    if (!section || found.has(name)) return;
    found.set(name, { section, depth, calls: calls.get(name) ?? 0 });
    for (const inner of new Set(callsOf(section))) walk(inner, depth + 1);
  };
  walk(ROOT, 0);
  for (const section of sections) walk(section.name, 0);
  return [...found.values()];
}

/** Return the sections that a section's map and borders call, as often as they do. */
function callsOf(section: SectionView): string[] {
  const words = [...section.words.flat(), ...section.borders.flatMap((each) => [each.sides, each.ends, each.corners])];
  return words.flatMap((text) => {
    const word = wordOf(text);
    return word?.kind === "section" && !["butted", "mitred", "cornerstones"].includes(text) ? [word.name] : [];
  });
}
