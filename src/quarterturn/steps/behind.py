"""What can be cut away behind the shapes of a unit."""

from __future__ import annotations

from quarterturn.blocks import FusedShape, Master
from quarterturn.geometry import Path, Region, keep_left, line_through, offset_region, shared_area
from quarterturn.geometry import uncovered_area as uncovered
from quarterturn.steps.ground import OVERLAP, lie_on
from quarterturn.steps.making import Behind

ON_GROUND = -1
"""The number of the ground among the layers of a master."""


def behind_shapes(master: Master, kind: int) -> tuple[Behind, ...]:
    """Return what is cut away behind each shape of a kind of unit, from the lowest shape up.

    Where nothing lies farther inside its stitching than its underlap, there is nothing to cut away.
    """
    piece = next(part for part in master.parts if part.unit == kind).outline
    found = []
    for number, shape in enumerate(master.shapes):
        hollow = clipped(offset_region(shape.region, -float(shape.underlap)), piece)
        uppers = [other for other in master.shapes[number + 1 :] if lie_on(shape, other)]
        if hollow.is_empty() or (uppers and _is_held(hollow, shape, uppers)):
            continue
        lower = (k for k in range(number) if shared_area(hollow, master.shapes[k].region) > OVERLAP)
        found.append(Behind(number, shape.part, shape.underlap, (ON_GROUND, *lower)))
    return tuple(found)


def _is_held(hollow: Region, shape: FusedShape, uppers: list[FusedShape]) -> bool:
    """Tell whether the stitching of higher shapes leaves nothing of a hollow to cut away."""
    covers = [offset_region(upper.region, float(shape.underlap)) for upper in uppers]
    return uncovered(hollow, covers) < OVERLAP


def clipped(region: Region, outline: Path) -> Region:
    """Return what of a region lies inside a straight-sided convex outline."""
    for side in outline.segments:
        region = keep_left(region, line_through(side.start, side.end))
    return region
