"""What can be cut away behind the shapes of a unit."""

from __future__ import annotations

from quarterturn.blocks import Master
from quarterturn.geometry import (
    Path,
    Region,
    as_polygon,
    from_polygons,
    keep_left,
    line_through,
    offset_region,
    shared_area,
    without,
)
from quarterturn.steps.ground import OVERLAP, lie_on
from quarterturn.steps.making import Behind

ON_GROUND = -1
"""The number of the ground among the layers of a master."""


def behind_shapes(master: Master, kind: int) -> tuple[Behind, ...]:
    """Return what lies behind each shape of a kind of unit and can be cut away, from the lowest shape up.

    Where nothing lies farther inside the stitching of a shape than its underlap, it has no layers to cut away; nor has
    a shape too small to be hollowed out, whose web holds them everywhere.
    """
    piece = next(part for part in master.parts if part.unit == kind).outline
    shown = (
        number for number, shape in enumerate(master.shapes) if not clipped(shape.region, piece).is_empty()
    )
    return tuple(_behind(master, number, piece) for number in shown)


def _behind(master: Master, number: int, piece: Path) -> Behind:
    shape, below = master.shapes[number], master.shapes[:number]
    hollow = clipped(offset_region(shape.region, -float(shape.underlap)), piece)
    for upper in master.shapes[number + 1 :]:
        if not hollow.is_empty() and lie_on(shape, upper):
            hollow = _beside(hollow, offset_region(upper.region, float(shape.underlap)))
    if shape.ring_in.is_empty() or hollow.is_empty() or hollow.area() < OVERLAP:
        return Behind(number, shape.part, shape.underlap, ())
    lower = (k for k, other in enumerate(below) if shared_area(hollow, other.region) > OVERLAP)
    return Behind(number, shape.part, shape.underlap, (ON_GROUND, *lower))


def _beside(hollow: Region, held: Region) -> Region:
    """Return what of a hollow is not held by the stitching of a higher shape, or hidden by that shape."""
    return from_polygons(without(as_polygon(hollow), as_polygon(held)))


def clipped(region: Region, outline: Path) -> Region:
    """Return what of a region lies inside a straight-sided convex outline."""
    for side in outline.segments:
        region = keep_left(region, line_through(side.start, side.end))
    return region
