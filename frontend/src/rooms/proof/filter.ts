/** The findings as the list shows them: those that are wanted, by how much they weigh. */
import type { Schemas } from "$/api/shapes";
import { byHand } from "$/words/byHand";

export type Found = Schemas["FoundFinding"];
export const SEVERITIES = ["stops", "costs", "confuses", "style"] as const;
export type Severity = (typeof SEVERITIES)[number];

export interface Wish {
  /** Severities that are shown. */
  severities: ReadonlySet<Severity>;
  /** Words that must all stand in it; none for all. */
  words: string;
  /** The room in which it is mended; empty for all. */
  room: string;
}

function holds(found: Found, wish: Wish): boolean {
  const { finding, spot } = found;
  if (!wish.severities.has(finding.severity as Severity)) return false;
  if (wish.room && spot.room !== wish.room) return false;
  const text = [byHand(finding.sentence), byHand(finding.remedy), finding.key, finding.code, spot.name].join(" ").toLowerCase();
  return wish.words.toLowerCase().split(/\s+/).every((word) => text.includes(word));
}

/** Return the findings that are wanted, in groups, the worst first; groups without any are left out. */
export function grouped(findings: readonly Found[], wish: Wish): [Severity, Found[]][] {
  return SEVERITIES.map((severity): [Severity, Found[]] => [
    severity,
    findings.filter((found) => found.finding.severity === severity && holds(found, wish)),
  ]).filter(([, group]) => group.length > 0);
}
