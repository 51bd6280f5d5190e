/** The panel whose motifs are placed, what they snap to, and the steps by which hand and keys move them. */
import type { MotifName, SectionView } from "$/api/shapes";
import { desk } from "$/desk/desk.svelte";
import { inverse, moved, type Matrix, type Point } from "$/quilt/motion";

class Motifs {
  panel = $state("");
  chosen = $state(0);
  snap = $state(0.25);
}

export const motifs = new Motifs();

/** Return the panels of the design. */
export function panels(): SectionView[] {
  return (desk.paper?.sections ?? []).filter((section) => section.kind === "panel");
}

/** Return where a panel lies in the top: the frame and the size of its first copy. */
export function panelFrame(name: string): { at: Matrix; width: number; height: number } | null {
  const box = desk.quilt?.view.boxes.find((each) => each.kind === "panel" && each.name.split(" ")[0] === name);
  return box ? { at: box.at as Matrix, width: box.width, height: box.height } : null;
}

/** Return a point of the top in a panel's frame, snapped, and kept on the panel. */
export function snapped(point: Point, frame: { at: Matrix; width: number; height: number }, step: number): Point {
  const [x, y] = moved(inverse(frame.at), point);
  const near = (value: number, most: number): number => {
    const lines = [0, most / 2, most];
    const line = lines.find((each) => Math.abs(each - value) < step / 2);
    return Math.min(most, Math.max(0, line ?? Math.round(value / step) * step));
  };
  return [near(x, frame.width), near(y, frame.height)];
}

/** Return a length in inches as the file writes it in its own units. */
export function lengthText(inches: number): string {
  return desk.paper?.units === "metric" ? `${+(inches * 25.4).toFixed(2)} mm` : `${+inches.toFixed(4)} in`;
}

export function moveMotif(section: string, motif: number, [x, y]: Point): void {
  desk.do({ name: "move-motif", section, motif, at: [lengthText(x), lengthText(y)] });
}

export type { MotifName };
