/** The cell to which another room sends the needle. */
import type { Cell } from "$/quilt/spots";

class Errand {
  cell = $state.raw<Cell | null>(null);
}

export const errand = new Errand();
