/** The room that sewn pieces take, about the middle of their master. */
import { boxOf, type Matrix } from "$/quilt/motion";
import type { SewnView } from "./drafts";

export interface Extent {
  left: number;
  top: number;
  width: number;
  height: number;
}

export function extentOf(sewn: SewnView): Extent {
  const unit = sewn.units[0];
  if (sewn.pieces.length === 0) {
    const [width, height] = [unit?.width ?? 1, unit?.height ?? 1];
    return { left: -width / 2, top: -height / 2, width, height };
  }
  const boxes = sewn.pieces.map((piece) => {
    const kind = sewn.units[piece.unit];
    return boxOf(piece.sewn_at as unknown as Matrix, kind?.width ?? 0, kind?.height ?? 0);
  });
  const left = Math.min(...boxes.map((box) => box[0]));
  const top = Math.min(...boxes.map((box) => box[1]));
  return {
    left,
    top,
    width: Math.max(...boxes.map((box) => box[2])) - left,
    height: Math.max(...boxes.map((box) => box[3])) - top,
  };
}

/** Degrees from which a peak is seen. */
export const SEEN = 1;

/** Return where a peak stands that can be seen. */
export function peaksOf(sewn: SewnView): SewnView["meetings"] {
  return sewn.meetings.filter((meeting) => meeting.peak >= SEEN);
}
