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
  #isUnderWay = false;
  #isWaiting = false;
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

  /** Put the text; what is typed meanwhile is put after it. */
  async put(anyway = false): Promise<void> {
    if (this.#isUnderWay) return void (this.#isWaiting = true);
    const meant = this.#meaning(this.text.trim(), this.#put ?? this.#given);
    if (typeof meant !== "function") return meant ? void (this.fault = meant) : this.settle();
    await this.send(meant, anyway);
    const isNewer = this.#isWaiting && this.text !== this.#last;
    this.#isWaiting = false;
    return isNewer ? this.put() : this.show();
  }

  private async send(meant: (anyway: boolean) => Promise<Refused | null>, anyway: boolean): Promise<void> {
    const before = this.#put;
    this.#last = this.text;
    this.#put = this.text.trim();
    this.#puts += 1;
    this.#isUnderWay = true;
    try {
      this.fault = await meant(anyway);
    } finally {
      this.#isUnderWay = false;
    }
    if (this.fault) this.#put = before ?? this.#given;
  }

  /** Write what is given once that follows from what was put; what is typed by then, or was refused, stays. */
  private async show(): Promise<void> {
    const puts = this.#puts;
    await this.#shown();
    if (puts !== this.#puts) return;
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
