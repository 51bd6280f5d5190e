"""Where the cuts of a recipe run, and where its shapes lie: exact outlines about the middle of the master."""

from __future__ import annotations

import cmath
import math
from collections.abc import Sequence

from quarterturn.design.recipes import Curve, Cut, DrawnOutline, Recipe, ShapeOn
from quarterturn.geometry import (
    EPSILON,
    Motion,
    Path,
    Point,
    StraightLine,
    circle,
    line_through,
    outline_path,
    shift,
    spread,
)
from quarterturn.measure import Length

RING = "ring"
"""A disc with a round hole about its middle; not one of `geometry.OUTLINES`, which have no holes."""


def cut_lines(recipe: Recipe) -> tuple[StraightLine, ...]:
    """Return the lines along which a master is cut, in the order of cutting, each through its foot from the middle."""
    return tuple(line_of_cut(cut) for cut in recipe.cuts)


def line_of_cut(cut: Cut) -> StraightLine:
    """Return the line of a cut, whose two points must differ."""
    line = line_through(point_of(cut.start_x, cut.start_y), point_of(cut.end_x, cut.end_y))
    foot = line.at(line.along(0j))
    return StraightLine(0j if abs(foot) < EPSILON else foot, line.direction)


def point_of(x: Length, y: Length) -> Point:
    """Return a point given by lengths."""
    return complex(float(x), float(y))


def degrees_turned(degrees: float) -> Point:
    """Return the factor that turns clockwise by so many degrees; exact for quarters."""
    quarters, rest = divmod(degrees, 90)
    exact = (1 + 0j, 1j, -1 + 0j, -1j)[int(quarters) % 4]
    return exact * cmath.rect(1, math.radians(rest)) if rest else exact


def meant_paths(shape: ShapeOn) -> tuple[Path, Path | None]:
    """Return the outline of a shape of a drawn outline at its place, and its hole, which runs the other way."""
    size = shape.size
    assert isinstance(size, DrawnOutline)
    laid = Motion(degrees_turned(float(shape.degrees))).then(shift(point_of(shape.x, shape.y)))
    if size.outline == RING:
        outer, inner = circle(float(size.width) / 2), circle(float(size.inner) / 2)
        return laid.path(outer), laid.path(inner).reversed()
    return laid.path(outline_path(size.own or size.outline, float(size.width), size.turn, size.lobes)), None


def traced_path(meant: Path, curve: Curve, cuts: Sequence[StraightLine], seam: Length) -> Path:
    """Return what is traced for an outline: itself, or where it is sewn true what is spread along the cuts."""
    return spread(meant, cuts, float(seam)) if curve is Curve.SEWN_TRUE else meant
