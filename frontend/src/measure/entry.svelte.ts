/** What is written in a field until it is put; the fields of lengths, numbers and words share it. */
import { untrack } from "svelte";
import type { Refused } from "$/api/shapes";

/** What a text means: how it is put, why it cannot be, or null where it is what is given already. */
export type Meaning = ((anyway: boolean) => Promise<Refused | null>) | Refused | null;

export class Entry {
  text = $state("");
  fault = $state.raw<Refused | null>(null);
  #given = "";
  /** The text as the field last wrote or put it: where it differs, something is being typed. */
  #last = "";
  #isUnderWay = false;
  #isWaiting = false;
  /** Whether the next value that is given follows from what was put here. */
  #isOwn = false;
  readonly #meaning: (wanted: string, given: string) => Meaning;

  constructor(meaning: (wanted: string, given: string) => Meaning) {
    this.#meaning = meaning;
  }

  /** Another value writes over what stands in the field, but not over what was typed since its own text was put. */
  give(given: string): void {
    const isTyping = (this.#isUnderWay || this.#isOwn) && untrack(() => this.text) !== this.#last;
    this.#given = given;
    this.#isOwn = false;
    if (!isTyping) this.reset();
  }

  /** Write what is given. */
  reset(): void {
    this.text = this.#last = this.#given;
    this.fault = null;
  }

  get isChanged(): boolean {
    return this.text !== this.#given;
  }

  /** Put the text; what is typed meanwhile is put after it. */
  async put(anyway = false): Promise<void> {
    if (this.#isUnderWay) return void (this.#isWaiting = true);
    const meant = this.#meaning(this.text.trim(), this.#given);
    if (typeof meant !== "function") return meant ? void (this.fault = meant) : this.reset();
    [this.#last, this.#isUnderWay, this.#isOwn] = [this.text, true, true];
    try {
      this.fault = await meant(anyway);
    } finally {
      this.#isUnderWay = false;
    }
    const isNewer = this.#isWaiting && this.text !== this.#last;
    this.#isWaiting = false;
    if (isNewer) return this.put();
    if (this.fault) this.#isOwn = false;
    else if (this.text === this.#last) this.text = this.#last = this.#given;
  }
}
