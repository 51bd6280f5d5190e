/** Saving: at once where the design has a file, else the sheet that asks where is shown. */
import { desk } from "$/desk/desk.svelte";

class Saving {
  /** Whether the sheet that asks for a path is shown, and what for. */
  asks = $state<"save" | "duplicate" | null>(null);

  save(): void {
    if (desk.paper?.path) void desk.save();
    else this.asks = "save";
  }

  duplicate(): void {
    this.asks = "duplicate";
  }
}

export const saving = new Saving();
