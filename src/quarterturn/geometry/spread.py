"""Slash and spread: the outline to trace, so that a wanted outline is left when its cuts have been seamed."""

from __future__ import annotations

from collections.abc import Sequence

from quarterturn.geometry.cut import StraightLine, side_of_segment, split_at
from quarterturn.geometry.motion import shift
from quarterturn.geometry.paths import Path
from quarterturn.geometry.segments import EPSILON, Line, Point, Segment


def spread(path: Path, cuts: Sequence[StraightLine], seam: float) -> Path:
    """Slash an outline along each cut, move its parts apart by two seam allowances, and bridge the gaps straight.

    Cut along the same lines, seamed with the allowance `seam` on either side and rejoined, what is traced so
    gives the outline again, exactly. The outline should not run through the place where two cuts cross.
    """
    parts: list[Segment] = []
    for piece in _pieces(path, cuts):
        moved = shift(sum((_away(piece, cut, seam) for cut in cuts), 0j)).segment(piece)
        parts += [*_bridge(parts[-1].end, moved.start), moved] if parts else [moved]
    return Path((*parts, *_bridge(parts[-1].end, parts[0].start)))


def _pieces(path: Path, cuts: Sequence[StraightLine]) -> list[Segment]:
    pieces: list[Segment] = list(path.segments)
    for cut in cuts:
        pieces = [part for piece in pieces for part in split_at(piece, cut)]
    return pieces


def _away(piece: Segment, cut: StraightLine, seam: float) -> Point:
    """Return how far a piece moves off a cut: towards its own side."""
    return cut.direction * 1j * seam * side_of_segment(piece, cut)


def _bridge(start: Point, end: Point) -> list[Segment]:
    return [Line(start, end)] if abs(end - start) > EPSILON else []
