import { expect, test } from "vitest";
import type { Refused } from "$/api/shapes";
import { Entry } from "./entry.svelte";

const NO: Refused = { detail: "This is no length.", remedy: "", can_anyway: false, findings: [] };

interface Field {
  entry: Entry;
  sent: string[];
  /** Answer what was put last. */
  answer: (refused?: Refused | null) => Promise<void>;
  /** What was put is given. */
  show: (given: string) => Promise<void>;
}

const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** A field that keeps what it puts, and answers and shows when it is told to. */
function fieldOf(given: string): Field {
  const sent: string[] = [];
  let answered: (refused: Refused | null) => void = () => undefined;
  let shown: (() => void)[] = [];
  const entry = new Entry(
    (wanted, stands) => {
      if (wanted === stands) return null;
      if (wanted === "four") return NO;
      return () => {
        sent.push(wanted);
        return new Promise((resolve) => (answered = resolve));
      };
    },
    () => new Promise((resolve) => shown.push(resolve)),
  );
  entry.give(given);
  const answer = (refused: Refused | null = null): Promise<void> => {
    answered(refused);
    return soon();
  };
  const show = (now: string): Promise<void> => {
    entry.give(now);
    for (const each of shown) each();
    shown = [];
    return soon();
  };
  return { entry, sent, answer, show };
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

test("what is put is put at once, whatever is under way, for the field may soon be gone", () => {
  const { entry, sent } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  entry.text = "4";
  void entry.put();
  expect(sent).toEqual(["3", "4"]);
});

test("a refusal of what was put before the last is not told of the last", async () => {
  const answers: ((refused: Refused | null) => void)[] = [];
  const entry = new Entry(() => () => new Promise((resolve) => answers.push(resolve)), () => Promise.resolve());
  entry.give("2");
  entry.text = "9";
  void entry.put();
  entry.text = "4";
  void entry.put();
  answers[0]?.(NO);
  await soon();
  expect([entry.text, entry.fault]).toEqual(["4", null]);
  answers[1]?.(null);
  await soon();
  expect(entry.fault).toBeNull();
});

test("what is typed before a put value is shown is not written over by it", async () => {
  const { entry, sent, answer, show } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  await answer();
  entry.text = "";
  await show("3");
  expect(entry.text).toBe("");
  void entry.put();
  await answer();
  expect(sent).toEqual(["3", ""]);
  await show("2");
  expect(entry.text).toBe("2");
});

test("what was put stays as it was typed until it is given, and is then written as it is given", async () => {
  const { entry, answer, show } = fieldOf("2");
  entry.text = "3.0";
  void entry.put();
  entry.give("2");
  expect(entry.text).toBe("3.0");
  await answer();
  expect(entry.text).toBe("3.0");
  await show("3");
  expect(entry.text).toBe("3");
  entry.give("5");
  expect(entry.text).toBe("5");
});

test("what stood before is put again, though it is still given when it is typed", async () => {
  const { entry, sent, answer, show } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  await answer();
  entry.text = "2";
  void entry.put();
  entry.give("3");
  await answer();
  expect(sent).toEqual(["3", "2"]);
  await show("2");
  expect(entry.text).toBe("2");
});

test("what stood before is put again, though it was given while the last was under way", async () => {
  const { entry, sent, answer } = fieldOf("1");
  entry.text = "2";
  void entry.put();
  await answer();
  entry.text = "3";
  void entry.put();
  entry.give("2");
  await answer();
  entry.text = "2";
  void entry.put();
  await answer();
  expect(sent).toEqual(["2", "3", "2"]);
});

test("what is put is not put again when the field is left before it is given", async () => {
  const { entry, sent, answer } = fieldOf("2");
  entry.text = "3";
  void entry.put();
  await answer();
  await entry.put();
  expect([entry.text, sent]).toEqual(["3", ["3"]]);
});

test("a value from elsewhere writes over a text that was refused, and takes its fault away", async () => {
  const { entry, answer, show } = fieldOf("2");
  entry.text = "9";
  void entry.put();
  await answer(NO);
  await show("2");
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
