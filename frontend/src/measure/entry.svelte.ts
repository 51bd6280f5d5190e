/** What is written in a field until it is put; the fields of lengths, numbers and words share it. */
import type { Refused } from "$/api/shapes";
import { settled } from "$/desk/loading";

/** What a text means: how it is put, why it cannot be, or null where it is what is given already. */
export type Meaning = ((anyway: boolean) => Promise<Refused | null>) | Refused | null;

export class Entry {
  text = $state("");
  fault = $state.raw<Refused | null>(null);
  #given = "";
  /** The text as the field last wrote or put it: where it differs, something is being typed. */
  #last = "";
  /** What was put last, until it is shown: what is given till then may no longer be so. */
  #put: string | null = null;
  #puts = 0;
  readonly #meaning: (wanted: string, stands: string) => Meaning;
  readonly #shown: () => Promise<void>;

  /** `shown` waits until what was put and taken is given. */
  constructor(meaning: (wanted: string, stands: string) => Meaning, shown = settled) {
    this.#meaning = meaning;
    this.#shown = shown;
  }

  /** Another value writes over what stands in the field, but not over what was typed since its own text was put. */
  give(given: string): void {
    this.#given = given;
    if (this.#put === null) this.reset();
  }

  /** Write what is given. */
  reset(): void {
    this.text = this.#last = this.#given;
    this.fault = null;
  }

  get isChanged(): boolean {
    return this.text !== this.#given;
  }

  /** Put the text at once, as what the field stands for says now: it may be gone before the last one is answered. */
  async put(anyway = false): Promise<void> {
    const before = this.#put;
    const meant = this.#meaning(this.text.trim(), before ?? this.#given);
    if (typeof meant !== "function") return meant ? void (this.fault = meant) : this.settle();
    this.#last = this.text;
    this.#put = this.text.trim();
    const number = (this.#puts += 1);
    const fault = await meant(anyway);
    if (number !== this.#puts) return;
    this.fault = fault;
    if (fault) this.#put = before ?? this.#given;
    await this.show(number);
  }

  /** Write what is given once that follows from what was put; what is typed by then, or was refused, stays. */
  private async show(number: number): Promise<void> {
    await this.#shown();
    if (number !== this.#puts) return;
    this.#put = null;
    if (this.text === this.#last && !this.fault) this.reset();
  }

  /** Nothing is to be put: write what is given, unless what was put has yet to be given. */
  private settle(): void {
    if (this.#put === null) return this.reset();
    this.#last = this.text;
    this.fault = null;
  }
}
