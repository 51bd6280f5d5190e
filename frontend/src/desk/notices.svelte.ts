/** What just happened, said on the slip and to those who hear the page. */
export interface Notice {
  id: number;
  text: string;
  kind: "done" | "refused";
  /** What the hand may do about it: the same act all the same. */
  then?: () => void;
}

class Notices {
  list = $state<Notice[]>([]);
  /** For hearers alone: what the needle stands on. */
  spoken = $state("");
  private count = 0;

  say(text: string, kind: Notice["kind"] = "done", then?: () => void): void {
    if (!text) return;
    const notice: Notice = { id: ++this.count, text, kind, ...(then ? { then } : {}) };
    this.list = [notice, ...this.list].slice(0, 6);
  }

  /** Begin anew, with another design. */
  clear(): void {
    this.list = [];
  }

  drop(id: number): void {
    this.list = this.list.filter((each) => each.id !== id);
  }

  /** Speak at once; the same words twice are made different, or nothing would be heard. */
  speak(text: string): void {
    this.spoken = this.spoken === text ? `${text}\u00a0` : text;
  }
}

export const notices = new Notices();
