"""Slash and spread: the outline to trace, so that a wanted outline is left when its cuts have been seamed.

Two planes are used. In the master's plane cuts are where the rotary cutter goes. In the sewn plane their seams are
where the pieces meet again. A piece lies in the master's plane moved off each of its seams: by the seam allowance s,
measured square to the seam. Where two seams cross at a slant the move runs along the other seam, for else the pieces
would no longer meet along one line; so two directions are as many as can be spread. Seams of one direction that lie
side by side each take 2s of the cloth between them: they lie nearer together than their cuts.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from quarterturn.geometry.cut import StraightLine, side_of_segment, split_at
from quarterturn.geometry.motion import shift
from quarterturn.geometry.paths import Path
from quarterturn.geometry.segments import EPSILON, Line, Point, Segment, cross, dot

MOST_DIRECTIONS = 2


@dataclass(frozen=True, slots=True)
class SeamLine:
    """Where the seam of a cut lies in the sewn plane, and how far the cloth on its left lies off in the master's."""

    line: StraightLine
    move: Point


def directions_of(cuts: Sequence[StraightLine]) -> tuple[Point, ...]:
    """Return the directions in which cuts run, each once, whichever way they run along it."""
    found: list[Point] = []
    for cut in cuts:
        if all(abs(cross(cut.direction, each)) > EPSILON for each in found):
            found.append(cut.direction)
    return tuple(found)


def seam_lines(cuts: Sequence[StraightLine], seam: float) -> tuple[SeamLine, ...]:
    """Return the seam of each cut. Raises ValueError where they run in more than MOST_DIRECTIONS."""
    ways = directions_of(cuts)
    if len(ways) > MOST_DIRECTIONS:
        raise ValueError("cuts in more than two directions cannot be rejoined along straight seams")
    return tuple(_seam_line(cut, cuts, ways, seam) for cut in cuts)


def _seam_line(
    cut: StraightLine, cuts: Sequence[StraightLine], ways: Sequence[Point], seam: float
) -> SeamLine:
    off = cut.direction * 1j
    across = next((way for way in ways if abs(cross(way, cut.direction)) > EPSILON), off)
    beside = [
        other for other in cuts if other is not cut and abs(cross(other.direction, cut.direction)) <= EPSILON
    ]
    nearer = sum((_towards(cut, other) for other in beside), 0j) * seam
    return SeamLine(StraightLine(cut.through + nearer, cut.direction), across * (seam / dot(across, off)))


def _towards(cut: StraightLine, other: StraightLine) -> Point:
    """Return the vector of length 1 from a cut square towards one beside it."""
    side = other.side(cut.through)
    return other.direction * (-1j if side > 0 else 1j)


def spread(path: Path, cuts: Sequence[StraightLine], seam: float) -> Path:
    """Slash an outline along each seam, move its parts apart by two seam allowances, and bridge the gaps straight.

    Cut, seamed with the allowance `seam` on either side and rejoined, what is traced so gives the outline again,
    exactly. The outline should not run through the place where two cuts cross. Raises ValueError as `seam_lines`.
    """
    seams = seam_lines(cuts, seam)
    parts: list[Segment] = []
    for piece in _pieces(path, seams):
        moved = shift(sum((each.move * side_of_segment(piece, each.line) for each in seams), 0j)).segment(
            piece
        )
        parts += [*_bridge(parts[-1].end, moved.start), moved] if parts else [moved]
    return Path((*parts, *_bridge(parts[-1].end, parts[0].start)))


def _pieces(path: Path, seams: Sequence[SeamLine]) -> list[Segment]:
    pieces: list[Segment] = list(path.segments)
    for each in seams:
        pieces = [part for piece in pieces for part in split_at(piece, each.line)]
    return pieces


def _bridge(start: Point, end: Point) -> list[Segment]:
    return [Line(start, end)] if abs(end - start) > EPSILON else []
