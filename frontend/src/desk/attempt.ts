/** An act whose refusal is told where the hand is, beside the field, and not only on the slip. */
import type { Act, Refused } from "$/api/shapes";
import { desk } from "./desk.svelte";

/** Do an act. Returns why it was refused, or null when it is done and the desk shows it. */
export const attempt = (act: Act): Promise<Refused | null> => desk.attempt(act);
