import { expect, test } from "vitest";
import { ActQueue } from "./queue";

const settle = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

function queue(fails: string[] = [], refused = false) {
  const sent: [number, string][] = [];
  const ends: string[] = [];
  let open = (): void => undefined;
  const acts = new ActQueue<string, { revision: number }>(
    async (revision, task) => {
      sent.push([revision, task]);
      await new Promise<void>((done) => (open = done));
      if (fails.includes(task)) throw new Error(task);
      return { revision: revision + 1 };
    },
    {
      done: (answer, task, left) => ends.push(`${task} ${answer.revision} ${left}`),
      failed: (_, task, dropped) => ends.push(`${task} failed ${dropped.length}`),
    },
    () => refused,
    7,
  );
  return { acts, sent, ends, answer: async () => (open(), settle()) };
}

test("acts are sent in order, each on the revision that the one before left", async () => {
  const { acts, sent, ends, answer } = queue();
  acts.add("turn");
  acts.add("lay");
  expect(sent).toEqual([[7, "turn"]]);
  await answer();
  expect(sent[1]).toEqual([8, "lay"]);
  await answer();
  expect(ends).toEqual(["turn 8 1", "lay 9 0"]);
  expect(acts.length).toBe(0);
});

test("after a refusal nothing has changed, and what waited behind it is done", async () => {
  const { acts, sent, ends, answer } = queue(["turn"], true);
  acts.add("turn");
  acts.add("lay");
  await answer();
  await answer();
  expect(sent).toEqual([[7, "turn"], [7, "lay"]]);
  expect(ends).toEqual(["turn failed 0", "lay 8 0"]);
});

test("no answer drops what waited, and what comes later is sent", async () => {
  const { acts, sent, ends, answer } = queue(["turn"]);
  acts.add("turn");
  acts.add("lay");
  await answer();
  expect(ends).toEqual(["turn failed 1"]);
  acts.add("fill");
  await settle();
  expect(sent.at(-1)).toEqual([7, "fill"]);
});
