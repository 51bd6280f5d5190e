/**
 * An act whose refusal is told where the hand is, beside the field, and not only on the slip. It waits for what is under
 * way, so that it is done to the design as it then is.
 */
import { designs, RefusedError } from "$/api/client";
import type { Act, Refused } from "$/api/shapes";
import { t, told } from "$/words/words";
import { desk } from "./desk.svelte";
import { notices } from "./notices.svelte";

const PAUSE = 20;
let last: Promise<unknown> = Promise.resolve();

/** Do an act. Returns why it was refused, or null when it is done and the desk shows it. */
export function attempt(act: Act): Promise<Refused | null> {
  const done = last.then(() => tried(act));
  last = done.catch(() => null);
  return done;
}

async function tried(act: Act): Promise<Refused | null> {
  while (desk.waiting > 0) await new Promise((then) => setTimeout(then, PAUSE));
  if (!desk.id) return null;
  try {
    const answer = await designs.act(desk.id, desk.revision, act);
    if (answer.changed) {
      await desk.reload();
      const name = told(`acts.${answer.act}`, {}, answer.act);
      notices.say(told(`acts-done.${answer.act}`, { ...answer.facts, n: answer.facts["cells"] ?? 1 }, name));
    }
    return null;
  } catch (reason) {
    if (!(reason instanceof RefusedError)) throw reason;
    if (reason.status === 409) {
      notices.say(t("shell.stale"), "refused");
      await desk.reload();
    }
    return reason.fault;
  }
}
