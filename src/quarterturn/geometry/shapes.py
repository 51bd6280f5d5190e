"""Outlines that the trade uses, as exact paths."""

from __future__ import annotations

import math
from collections.abc import Sequence

from quarterturn.geometry.paths import Path, Region
from quarterturn.geometry.segments import Arc, Line, Point


def polygon(corners: Sequence[Point]) -> Path:
    """Return the straight-sided path through the corners, in their order."""
    return Path(tuple(Line(a, b) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)))


def rectangle(left: float, top: float, right: float, bottom: float) -> Path:
    """Return an upright rectangle as a positive path that starts at its top left corner."""
    return polygon((complex(left, top), complex(right, top), complex(right, bottom), complex(left, bottom)))


def circle(radius: float, centre: Point = 0j) -> Path:
    """Return a whole circle as one arc that starts on the right."""
    return Path((Arc(centre, radius, 0.0, math.tau),))


def disc(radius: float, centre: Point = 0j) -> Region:
    """Return the region inside a circle."""
    return Region((circle(radius, centre),))


def spread_circle(radius: float, seam: float) -> Path:
    """Return the sweep of a disc over a square of side 2·seam: four quarter arcs and four flats, about 0.

    This is the shape to draw when a circle of finished `radius` is wanted after the master is cut both ways
    through its centre and seamed with the allowance `seam`: slash it along both cuts, spread the parts by
    2·seam, bridge the gaps straight. Cut, seamed and rejoined it gives the circle exactly.
    """
    parts: list[Arc | Line] = []
    for quarter, (sx, sy) in enumerate(((1, 1), (-1, 1), (-1, -1), (1, -1))):
        arc = Arc(complex(sx * seam, sy * seam), radius, quarter * math.pi / 2, math.pi / 2)
        if parts:
            parts.append(Line(parts[-1].end, arc.start))
        parts.append(arc)
    return Path((*parts, Line(parts[-1].end, parts[0].start)))
