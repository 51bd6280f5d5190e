"""The quarter circle as two pieces that are sewn along the curve, for those who would rather not fuse.

Both are in the unit's frame. The seam is the sewn edge of the fused shape, an arc of radius ρ about its own centre:
the finished corner where the circle is sewn true, the cut corner where it is traced as drawn. A seam allowance s
makes the quarter disc's arc ρ + s and the surround's ρ − s, so that the two cutting arcs differ by 2s, as published
instructions for the quarter circle block have it (a maker's page of 14 October 2020: finished radius + ¼" and − ¼").
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from itertools import pairwise

from quarterturn.blocks.model import SHAPE, Master, Unit
from quarterturn.geometry import Arc, Line, Path, Point, Region, StraightLine, disc, keep_left

LEAST_RADIUS = 2
"""A surround cut with a radius of fewer allowances cannot be eased round the disc (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class PiecedPair:
    """The two pieces of a unit as cut, allowances included, with the seam between them as sewn."""

    seam_arc: Arc
    disc: Path
    surround: Path

    @property
    def disc_radius(self) -> float:
        """Return the radius of the quarter disc's cut edge, in inches."""
        return _arc_of(self.disc).radius

    @property
    def surround_radius(self) -> float:
        """Return the radius of the surround's cut edge, in inches."""
        return _arc_of(self.surround).radius


def pieced_pair(master: Master) -> PiecedPair | None:
    """Return the pieces of a master's unit; None where its edge is no single arc that leaves room for allowances."""
    unit = master.units[0]
    arc, seam = _sewn_arc(unit), float(unit.seam)
    if len(master.units) > 1 or arc is None:
        return None
    inner = arc.radius - seam
    if inner < LEAST_RADIUS * seam or _meets(arc.centre, inner, seam) > float(unit.width) + seam:
        return None
    return PiecedPair(arc, _quarter_disc(arc, seam), _surround(arc, unit))


def _sewn_arc(unit: Unit) -> Arc | None:
    """Return the edge of a unit's shape where it is one arc."""
    shapes = [layer.region for layer in unit.sewn_layers if layer.part == SHAPE]
    arcs = [s for region in shapes for s in region.segments() if not isinstance(s, Line)]
    return arcs[0] if len(arcs) == 1 and isinstance(arcs[0], Arc) else None


def _quarter_disc(arc: Arc, seam: float) -> Path:
    """Return what of a disc one seam allowance larger lies beyond the two cuts."""
    region: Region = disc(arc.radius + seam, arc.centre)
    corner = complex(-seam, -seam)
    for way in (StraightLine(corner, 1 + 0j), StraightLine(corner, -1j)):
        region = keep_left(region, way)
    return region.paths[0]


def _surround(arc: Arc, unit: Unit) -> Path:
    """Return the cut square without a disc one seam allowance smaller."""
    seam, radius, centre = float(unit.seam), arc.radius - float(unit.seam), arc.centre
    far = complex(float(unit.width) + seam, float(unit.height) + seam)
    along = _meets(centre, radius, seam)
    start, end = complex(along, -seam), complex(-seam, along)
    corners = (start, complex(far.real, -seam), far, complex(-seam, far.imag), end)
    sides = tuple(Line(a, b) for a, b in pairwise(corners))
    first = cmath.phase(end - centre)
    return Path((*sides, Arc(centre, radius, first, cmath.phase((start - centre) / (end - centre)))))


def _meets(centre: Point, radius: float, seam: float) -> float:
    """Return where a circle about a point of the diagonal meets the cut edge, from the finished corner."""
    return centre.real + math.sqrt(radius**2 - (centre.imag + seam) ** 2)


def _arc_of(path: Path) -> Arc:
    return next(segment for segment in path.segments if isinstance(segment, Arc))
