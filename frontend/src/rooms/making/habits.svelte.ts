/** How she reads at the sewing table; kept for this browser. And whether the screen is kept from going dark. */
const KEPT = "quarterturn-making";
export const READ_FROM = ["table", "room"] as const;
export type ReadFrom = (typeof READ_FROM)[number];

function kept(): ReadFrom {
  try {
    return localStorage.getItem(KEPT) === "table" ? "table" : "room";
  } catch {
    return "room"; // a browser that keeps nothing
  }
}

class Habits {
  from = $state<ReadFrom>(kept());
  isLit = $state(false);
  readonly canBeLit = typeof navigator !== "undefined" && "wakeLock" in navigator;
  private lock: WakeLockSentinel | null = null;

  read(from: ReadFrom): void {
    this.from = from;
    try {
      localStorage.setItem(KEPT, from);
    } catch {
      // Then it holds until the window is closed.
    }
  }

  /** Keep the screen lit, or let it go dark again. A machine that is low may refuse. */
  async light(isWanted: boolean): Promise<void> {
    this.isLit = isWanted;
    if (!isWanted) {
      await this.lock?.release();
      this.lock = null;
      return;
    }
    try {
      this.lock = await navigator.wakeLock.request("screen");
    } catch {
      this.isLit = false;
    }
  }

  /** Take the lock again when the window is looked at again: it is lost while it is not. */
  seen(): void {
    if (this.isLit && document.visibilityState === "visible") void this.light(true);
  }
}

export const habits = new Habits();
