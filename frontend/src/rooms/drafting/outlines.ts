/** Outlines that a shape can have: those of the program, and those of the design. */
import { told } from "$/words/words";

export const OUTLINES = ["circle", "heart", "soft heart", "leaf", "petal", "drop", "rounded square", "scallop"] as const;

export type Choices = readonly (readonly [string, string])[];

export function outlineChoices(own: readonly string[], hasRing: boolean, hasCircle: boolean): Choices {
  const builtin = [...OUTLINES.filter((each) => hasCircle || each !== "circle"), ...(hasRing ? ["ring"] : [])];
  return [...builtin.map((each) => [each, told(`rooms.drafting.outlines.${each}`, {}, each)] as const), ...own.map((each) => [each, each] as const)];
}

export const CUTS = ["none", "down", "across", "both ways", "one diagonal", "both diagonals"] as const;
export const KINDS = ["circle cut both ways", "shape cut both ways", "shapes cut", "halves rejoined"] as const;
export type Kind = (typeof KINDS)[number];
