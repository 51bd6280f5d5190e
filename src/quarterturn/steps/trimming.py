"""Where pieces are trimmed, and what each trim is measured from."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from quarterturn.blocks import Master, Rejoining, Unit
from quarterturn.geometry import EPSILON, Motion, Path, Point, StraightLine, line_through, rectangle
from quarterturn.steps.ground import IN_HALF, same_line
from quarterturn.steps.making import Reference, TrimLine
from quarterturn.steps.shapes import as_length

NEAR = 1e-7
"""Cloth that lies no farther than this beyond a line, in inches, is on it."""


def is_trimmed_whole(master: Master) -> bool:
    """Tell whether a master is trimmed before it is cut: where a cut runs neither down nor across.

    The pieces have no edge then that every trim could be measured from (common practice: squared up first).
    """
    slanted = any(abs(cut.direction.real) > EPSILON < abs(cut.direction.imag) for cut in master.cuts)
    return slanted and (master.trim_width > 0 or master.trim_height > 0)


def trimmed_whole(master: Master) -> Path:
    """Return the outline of a master when it is trimmed by half on each side."""
    across = float((master.width - master.trim_width) / 2)
    down = float((master.height - master.trim_height) / 2)
    return rectangle(-across, -down, across, down)


def trim_of_whole(master: Master) -> tuple[TrimLine, ...]:
    """Return the trims of a whole master, each measured from a crease."""
    across, down = float(master.width / 2), float(master.height / 2)
    before = rectangle(-across, -down, across, down)
    return tuple(_from_creases(line, IN_HALF) for line in new_edges(before, trimmed_whole(master)))


def trim_of_unit(master: Master, kind: int, as_cut: Path) -> tuple[TrimLine, ...]:
    """Return the trims of a kind of unit, measured from its cut edges, or from a crease where it has none that way.

    `as_cut` is its outline as the cuts leave it; all is in the unit's frame, but for a master that is not cut.
    """
    if not master.cuts:
        return trim_of_whole(master)
    motion = next(part for part in master.parts if part.unit == kind).motion
    cuts, creases = (tuple(laid(line, motion) for line in lines) for lines in (master.cuts, IN_HALF))
    edges = [line_through(side.start, side.end) for side in as_cut.segments]
    cut_edges = [edge for edge in edges if any(same_line(edge, cut) for cut in cuts)]
    return tuple(
        _from_cuts(line, cut_edges) or _from_creases(line, creases)
        for line in new_edges(as_cut, master.units[kind].cut_outline)
    )


def trim_of_rejoined(rejoining: Rejoining, unit: Unit, seam: StraightLine) -> tuple[TrimLine, ...]:
    """Return the trims of a rejoined block, each measured from the middle of its seam, through which `seam` runs."""
    middle = seam.through
    return tuple(
        TrimLine(line, seam, Reference.SEAM, as_length(line.side(middle)))
        for line in new_edges(rejoining.raw_outline, unit.cut_outline)
    )


def laid(line: StraightLine, motion: Motion) -> StraightLine:
    """Return a line laid elsewhere by a motion that does not mirror."""
    return StraightLine(motion(line.through), motion.factor * line.direction)


def new_edges(before: Path, after: Path) -> Iterator[StraightLine]:
    """Return the edges of an outline that are to be cut: those beyond which cloth of another outline lies."""
    for side in after.segments:
        line = line_through(side.start, side.end)
        if min(map(line.side, before.corners())) < -NEAR:
            yield line


def _from_cuts(line: StraightLine, edges: Iterable[StraightLine]) -> TrimLine | None:
    found = next((edge for edge in edges if _is_parallel(line, edge)), None)
    return TrimLine(line, found, Reference.CUT, as_length(line.side(found.through))) if found else None


def _from_creases(line: StraightLine, creases: Iterable[StraightLine]) -> TrimLine:
    crease = next(crease for crease in creases if _is_parallel(line, crease))
    return TrimLine(line, crease, Reference.CREASE, as_length(line.side(crease.through)))


def _is_parallel(a: StraightLine, b: StraightLine) -> bool:
    return _slant(a.direction, b.direction) < NEAR


def _slant(a: Point, b: Point) -> float:
    return abs((a.conjugate() * b).imag)
