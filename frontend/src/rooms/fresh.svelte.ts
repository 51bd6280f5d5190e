/** A view of the design that is loaded again whenever it changes; the last one stays while a newer one comes. */
import { RefusedError } from "$/api/client";
import { coming } from "$/desk/loading";
import { t } from "$/words/words";

export class Fresh<T> {
  value = $state.raw<T | null>(null);
  /** Whether a newer one is on its way. */
  coming = $state(false);
  /** Why there is none: the design does not fit together. */
  reason = $state<string | null>(null);
  private asked = 0;

  constructor(private readonly ask: (id: string) => Promise<T>) {}

  /** Ask for it again; an answer that another question has overtaken is dropped. */
  load(id: string | null): Promise<void> {
    return coming(this.loaded(id));
  }

  private async loaded(id: string | null): Promise<void> {
    const asking = ++this.asked;
    if (id === null) return void (this.value = null);
    this.coming = true;
    try {
      const value = await this.ask(id);
      if (asking !== this.asked) return;
      this.value = value;
      this.reason = null;
    } catch (reason) {
      if (asking !== this.asked) return;
      this.reason = reason instanceof RefusedError ? reason.message : t("shell.no-answer");
    }
    this.coming = false;
  }
}
