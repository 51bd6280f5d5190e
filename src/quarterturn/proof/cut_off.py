"""What the rehearsal cut away behind shapes, sorted: how large, how many, and what of the quilt it would hold."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from quarterturn.geometry import Region, rectangle, region_bounds, roomiest_point
from quarterturn.materials import drawn_motion, ruler_step
from quarterturn.measure import Length
from quarterturn.pieces import Purpose
from quarterturn.proof.model import Pattern
from quarterturn.proof.rehearsal import CutOff, Rehearsal

if TYPE_CHECKING:
    from quarterturn.materials.nesting import Shape

LEAST = 1.5
"""Across the largest disc, in inches: a smaller scrap is not worth keeping (no source)."""

LONG = (Purpose.BINDING, Purpose.BIAS, Purpose.BACKING)
"""Totals still to be made up, and sheets: no single pieces."""


@dataclass(frozen=True, slots=True)
class Leaving:
    """Equal scraps of a fabric. Sizes are of the box, and across the largest disc; all are rounded down."""

    fabric: str
    count: int
    width: Length
    height: Length
    disc: Length
    holds: tuple[str, ...]
    """Of this quilt's pieces and fused shapes of that fabric: those that one scrap is large enough for."""


def leavings(pattern: Pattern, rehearsal: Rehearsal) -> tuple[Leaving, ...]:
    """Return the scraps worth keeping, fabric by fabric, the largest first; equal ones together."""
    groups: dict[tuple[str, float, float, float], list[CutOff]] = {}
    for piece in rehearsal.cut_off:
        box = region_bounds(piece.region)
        short, long = sorted((round(box.width, 2), round(box.height, 2)))
        key = (piece.fabric, -round(piece.region.area(), 1), short, long)
        groups.setdefault(key, []).append(piece)
    found = (_leaving(pattern, groups[key]) for key in sorted(groups))
    return tuple(each for each in found if each.disc >= LEAST)


def _leaving(pattern: Pattern, pieces: list[CutOff]) -> Leaving:
    first, step = pieces[0], ruler_step(pattern.design.units)
    box, disc = region_bounds(first.region), 2 * roomiest_point(first.region)[1]
    width, height, across = (
        math.floor(side / float(step) + 1e-2) * step for side in (box.width, box.height, disc)
    )
    holds = _holds(pattern, first.fabric, first.region) if across >= LEAST else ()
    return Leaving(first.fabric, sum(piece.count for piece in pieces), width, height, across, holds)


def _holds(pattern: Pattern, fabric: str, region: Region) -> tuple[str, ...]:
    from quarterturn.materials.nesting import fitting

    wanted = {shape.name: shape for shape in (*_pieces(pattern, fabric), *_shapes(pattern, fabric))}
    return tuple(name for name, _ in fitting(region, tuple(wanted.values()))) if wanted else ()


def _pieces(pattern: Pattern, fabric: str) -> Iterator[Shape]:
    """Return the pieces of a fabric, straight with the grain as the scrap lies."""
    from quarterturn.materials.nesting import Shape

    for piece in pattern.bill.of_fabric(fabric):
        if piece.purpose not in LONG:
            sides = float(piece.length), float(piece.width)
            yield Shape(f"piece {piece.label}", rectangle(0, 0, *sides), turns=(0, 1))


def _shapes(pattern: Pattern, fabric: str) -> Iterator[Shape]:
    """Return the shapes of a fabric with their rings: cloth must lie below all of the web."""
    from quarterturn.materials.nesting import Shape

    for masters in pattern.bill.masters:
        templates = {shape.name: shape for shape, _ in pattern.blocks.master(masters.recipe).templates}
        for blank in masters.blanks:
            if pattern.bill.piece(blank.label).fabric == fabric:
                shape = templates[blank.shape]
                ring = drawn_motion(shape).region(shape.ring_out)
                yield Shape(
                    f"shape “{shape.name}”", max(ring.paths, key=lambda path: path.area()), turns=(0, 1, 2, 3)
                )
