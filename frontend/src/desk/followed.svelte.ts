/** What a room shows, asked again whenever the design changes; what was shown stays until the new is there. */
import { desk } from "./desk.svelte";
import { coming } from "./loading";

export interface Followed<T> {
  readonly value: T | null;
  /** Why it cannot be shown now. */
  readonly reason: string;
}

/** Follow a view for as long as the component lives that asks for it. */
export function followed<T>(load: (id: string) => Promise<T>): Followed<T> {
  let value = $state.raw<T | null>(null);
  let reason = $state("");
  $effect(() => {
    const { id, revision } = desk;
    if (id === null || revision < 0) return;
    let isPast = false;
    const loading = load(id).then(
      (loaded) => {
        if (!isPast) [value, reason] = [loaded, ""];
      },
      (fault: unknown) => {
        if (!isPast) reason = fault instanceof Error ? fault.message : String(fault);
      },
    );
    void coming(loading);
    return () => (isPast = true);
  });
  return {
    get value() {
      return value;
    },
    get reason() {
      return reason;
    },
  };
}
