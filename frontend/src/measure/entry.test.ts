import { expect, test } from "vitest";
import type { Refused } from "$/api/shapes";
import { Entry } from "./entry.svelte";

const NO: Refused = { detail: "This is no length.", remedy: "", can_anyway: false, findings: [] };

/** A field that keeps what it puts, and answers when it is told to. */
function fieldOf(given: string): { entry: Entry; sent: string[]; answer: (refused?: Refused | null) => Promise<void> } {
  const sent: string[] = [];
  let answered: (refused: Refused | null) => void = () => undefined;
  const entry = new Entry((wanted, stands) => {
    if (wanted === stands) return null;
    if (wanted === "four") return NO;
    return () => {
      sent.push(wanted);
      return new Promise((resolve) => (answered = resolve));
    };
  });
  entry.give(given);
  const answer = async (refused: Refused | null = null): Promise<void> => {
    answered(refused);
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { entry, sent, answer };
}

test("what is typed while the last is under way is put after it, though the last is given meanwhile", async () => {
  const { entry, sent, answer } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  entry.text = "4";
  void entry.put();
  entry.give("3");
  expect(entry.text).toBe("4");
  await answer();
  expect(sent).toEqual(["3", "4"]);
});

test("what is typed before a put value is shown is not written over by it", async () => {
  const { entry, sent, answer } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  await answer();
  entry.text = "";
  entry.give("3");
  expect(entry.text).toBe("");
  void entry.put();
  await answer();
  expect(sent).toEqual(["3", ""]);
  entry.give("2");
  expect(entry.text).toBe("2");
});

test("a value from elsewhere writes over a text that was refused, and takes its fault away", async () => {
  const { entry, answer } = fieldOf("2");
  entry.text = "9";
  void entry.put();
  await answer(NO);
  expect([entry.text, entry.fault]).toEqual(["9", NO]);
  entry.give("5");
  expect([entry.text, entry.fault]).toEqual(["5", null]);
});

test("a text without a meaning is told, and what is given already is not put again", async () => {
  const { entry, sent } = fieldOf("2");
  entry.text = "four";
  await entry.put();
  expect(entry.fault).toBe(NO);
  entry.text = " 2 ";
  await entry.put();
  expect([entry.text, entry.fault, sent]).toEqual(["2", null, []]);
});

test("a text that means what is given is written as it is given", async () => {
  const { entry, sent, answer } = fieldOf("2");
  entry.text = "2.0";
  void entry.put();
  await answer();
  expect([entry.text, sent]).toEqual(["2", ["2.0"]]);
});
