/**
 * Acts on their way to the server: one after another, each on the revision that the one before it left. Nothing is lost
 * while one is under way. A stale revision drops those behind it, since they were done to what is not so; so does no answer.
 * After a refusal nothing has changed, and those behind it are done.
 */
export interface Answer {
  revision: number;
}

export type Send<T, A extends Answer> = (revision: number, task: T) => Promise<A>;

export interface Ends<T, A extends Answer> {
  /** An act was taken; `left` more are waiting. */
  done(answer: A, task: T, left: number): void;
  /** An act was refused, or another window was first: what waited behind it is dropped. */
  failed(reason: unknown, task: T, dropped: readonly T[]): void;
}

export class ActQueue<T, A extends Answer> {
  private waiting: T[] = [];
  private busy = false;

  constructor(
    private readonly send: Send<T, A>,
    private readonly ends: Ends<T, A>,
    /** Whether a reason for failing leaves the acts behind it as good as they were. */
    private readonly isRefusal: (reason: unknown) => boolean = () => false,
    public revision = 0,
  ) {}

  get length(): number {
    return this.waiting.length + (this.busy ? 1 : 0);
  }

  add(task: T): void {
    this.waiting.push(task);
    void this.run();
  }

  private async run(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    for (let task = this.waiting.shift(); task !== undefined; task = this.waiting.shift()) {
      await this.one(task);
    }
    this.busy = false;
  }

  private async one(task: T): Promise<void> {
    try {
      const answer = await this.send(this.revision, task);
      this.revision = answer.revision;
      this.ends.done(answer, task, this.waiting.length);
    } catch (reason) {
      const dropped = this.isRefusal(reason) ? [] : this.waiting;
      if (dropped.length) this.waiting = [];
      this.ends.failed(reason, task, dropped);
    }
  }
}
