import { expect, it } from "vitest";
import { grouped, SEVERITIES, type Found, type Wish } from "./filter";

const found = (severity: string, sentence: string, room = "cloth") =>
  ({ finding: { severity, sentence, remedy: "", key: "", code: "" }, spot: { name: "", room } }) as unknown as Found;
const all: Wish = { severities: new Set(SEVERITIES), words: "", room: "" };
const findings = [found("style", "A long name."), found("stops", "No cloth."), found("costs", "Narrow cloth.", "cutting")];

it("puts the worst first and leaves out what has none", () => {
  expect(grouped(findings, all).map(([severity]) => severity)).toEqual(["stops", "costs", "style"]);
});
it("shows the severities that are wanted", () => {
  expect(grouped(findings, { ...all, severities: new Set(["style"] as const) })).toEqual([["style", [findings[0]]]]);
});
it("finds all the words, in any order and case", () => {
  expect(grouped(findings, { ...all, words: "CLOTH narrow" }).flatMap(([, group]) => group)).toEqual([findings[2]]);
});
it("keeps to a room", () => {
  expect(grouped(findings, { ...all, room: "cutting" }).flatMap(([, group]) => group)).toEqual([findings[2]]);
});
