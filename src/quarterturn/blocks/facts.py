"""What the seams make of a curve, measured on the sewn unit itself. Tests compare with the closed forms."""

from __future__ import annotations

import cmath
import math

from quarterturn.blocks.model import SHAPE, CurveFacts, Layer, Unit
from quarterturn.geometry import EPSILON, Line, Path, Region, Segment, StraightLine, keep_left, region_bounds


def curve_facts(unit: Unit, traced: Path) -> CurveFacts:
    """Return the facts of a unit whose shape lies at its top left corner.

    `traced` is the whole outline; the unit should have a quarter of it, were it not for the seams.
    """
    sewn, shape = _shape(unit.sewn_layers), _shape(unit.cut_layers)
    return CurveFacts(
        crossing=_crossing(sewn),
        diagonal=_along_diagonal(sewn),
        peak=_peak(sewn),
        clearance=float(unit.side + unit.seam) - _reach(shape),
        shape_area=sewn.area(),
        wanted_area=traced.area() / 4,
    )


def _shape(layers: tuple[Layer, ...]) -> Region:
    return Region(tuple(p for layer in layers if layer.part == SHAPE for p in layer.region.paths))


def _reach(region: Region) -> float:
    bounds = region_bounds(region)
    return max(bounds.right, bounds.bottom)


def _crossing(sewn: Region) -> float:
    """Return where the shape's edge leaves the top seam: the far end of what it covers there."""
    ends = [max(s.start.real, s.end.real) for s in sewn.segments() if _on_top_seam(s)]
    return max(ends, default=0.0)


def _on_top_seam(segment: Segment) -> bool:
    return isinstance(segment, Line) and max(abs(segment.start.imag), abs(segment.end.imag)) < 10 * EPSILON


def _along_diagonal(sewn: Region) -> float:
    """Return how far the shape reaches along the diagonal from the finished corner."""
    diagonal = StraightLine(0j, cmath.rect(1, math.pi / 4))
    half = keep_left(sewn, diagonal)
    ends = [
        diagonal.along(p) for s in half.segments() for p in (s.start, s.end) if abs(diagonal.side(p)) < 1e-7
    ]
    return max(ends, default=0.0)


def _peak(sewn: Region) -> float:
    """Return the turn that the edge makes where it crosses the top seam into its own mirror image, in degrees."""
    at = complex(_crossing(sewn), 0)
    for segment in sewn.segments():
        if _on_top_seam(segment):
            continue
        for t in (0.0, 1.0):
            if abs(segment.point(t) - at) < 1e-7:
                way = segment.tangent(t)
                return 2 * math.degrees(math.atan2(abs(way.real), abs(way.imag)))
    return 0.0
