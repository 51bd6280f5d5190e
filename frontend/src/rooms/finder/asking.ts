/** What the finder asks of the server. */
import { get, post } from "$/api/client";
import type { Act, QuiltView } from "$/api/shapes";
import type { FinderView, FindQuestion, FindView, FoundView } from "./finding";

const of = (id: string): string => `/designs/${encodeURIComponent(id)}`;

export const finder = {
  choices: (id: string) => get<FinderView>(`${of(id)}/finder`),
  find: (id: string, question: FindQuestion) => post<FindView>(`${of(id)}/find`, question),
  leave: (id: string) => post<unknown>(`${of(id)}/find/cancel`),
  look: (id: string, act: Act) => post<QuiltView>(`${of(id)}/look`, { act }),
};

/** Return the act that takes a setting into the quilt; null where its section is set otherwise. */
export function taking(found: FoundView): Act | null {
  return found.take && ({ name: "take-setting", ...found.take } as Act);
}
