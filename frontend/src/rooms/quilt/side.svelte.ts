/** Which sheet lies at the side of the quilt. */
export type SideName = "sections" | "borders" | "motifs";

class Side {
  shown = $state<SideName | null>(null);
}

export const side = new Side();
