"""What geometry is tried on: numbers that often fall on a grid, lines, motions, outlines, regions with holes.

The outlines are star-shaped about their middle, so that they never cross themselves: each segment keeps to the
sector between its ends, and every ray from the middle meets it once.
"""

from __future__ import annotations

import cmath
import itertools
import math
from collections.abc import Callable

from hypothesis import strategies as st

from quarterturn.geometry import (
    Arc,
    Cubic,
    Line,
    Motion,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    rectangle,
    shift,
)

Draw = Callable[[st.SearchStrategy[float]], float]

NARROWEST, WIDEST = 1.0, 5.0
"""The reach of an outline's corners from its middle, in inches."""

coordinates = st.integers(-24, 24).map(lambda quarters: quarters / 4) | st.floats(-6, 6)
points = st.builds(complex, coordinates, coordinates)
angles = st.integers(0, 23).map(lambda step: step * math.pi / 12) | st.floats(0, math.tau)
directions = st.sampled_from([1 + 0j, 1j, -1 + 0j, -1j, 0.6 + 0.8j, -0.8 + 0.6j]) | angles.map(
    lambda angle: cmath.rect(1, angle)
)
lines = st.builds(StraightLine, points, directions)
motions = st.builds(Motion, directions, points, st.booleans())
reaches = st.integers(4, 20).map(lambda quarters: quarters / 4) | st.floats(NARROWEST, WIDEST)


def _straight(draw: Draw, start: Point, end: Point) -> Segment:
    return Line(start, end)


def _round(draw: Draw, start: Point, end: Point) -> Segment:
    """Return an arc, or the chord where the arc's end tangents meet outside the sector."""
    sweep = draw(st.floats(0.05, 2.5) | st.floats(-2.5, -0.05))
    apex = (start + end) / 2 - 1j * (end - start) / 2 * math.tan(sweep / 2)
    if not 0 < cmath.phase(apex / start) < cmath.phase(end / start):
        return Line(start, end)
    centre = (start + end) / 2 + 1j * (end - start) / 2 / math.tan(sweep / 2)
    return Arc(centre, abs(start - centre), cmath.phase(start - centre), sweep)


def _flowing(draw: Draw, start: Point, end: Point) -> Segment:
    third = cmath.phase(end / start) / 3
    way = start / abs(start)
    first, second = (way * cmath.rect(draw(reaches), third * k) for k in (1, 2))
    return Cubic(start, first, second, end)


KINDS = {"line": _straight, "arc": _round, "cubic": _flowing}


@st.composite
def outlines(draw: st.DrawFn, kinds: tuple[str, ...] = ("line", "arc", "cubic")) -> Path:
    """Draw a positive path of three to seven corners about 0, of the named kinds of segment."""
    count = draw(st.integers(3, 7))
    sector = math.tau / count
    corners = [
        cmath.rect(draw(reaches), sector * (k + draw(st.sampled_from([0.0, -0.2, 0.15]))))
        for k in range(count)
    ]
    sides = itertools.pairwise((*corners, corners[0]))
    return Path(tuple(KINDS[draw(st.sampled_from(kinds))](draw, a, b) for a, b in sides))


@st.composite
def convex_polygons(draw: st.DrawFn) -> Path:
    """Draw a polygon whose corners lie on a circle."""
    count = draw(st.integers(3, 8))
    radius = draw(reaches)
    turned = sorted(draw(st.lists(st.integers(0, 47), min_size=count, max_size=count, unique=True)))
    corners = [cmath.rect(radius, step * math.tau / 48) for step in turned]
    return Path(tuple(Line(a, b) for a, b in itertools.pairwise((*corners, corners[0]))))


def inscribed(inner: Path, outer: Path) -> Path:
    """Return an outline shrunk so that it lies within another."""
    room = 0.8 * min(map(abs, _marks(outer)))
    factor = room / max(map(abs, _marks(inner)))
    return Path(tuple(_scaled(segment, min(1.0, factor)) for segment in inner.segments))


def _marks(path: Path) -> list[Point]:
    return [segment.point(k / 64) for segment in path.segments for k in range(64)]


def _scaled(segment: Segment, factor: float) -> Segment:
    match segment:
        case Line(start, end):
            return Line(start * factor, end * factor)
        case Arc(centre, radius, start_angle, sweep):
            return Arc(centre * factor, radius * factor, start_angle, sweep)
        case Cubic(start, control1, control2, end):
            return Cubic(start * factor, control1 * factor, control2 * factor, end * factor)


@st.composite
def regions(draw: st.DrawFn, kinds: tuple[str, ...] = ("line", "arc", "cubic")) -> Region:
    """Draw an outline that may have a hole, an island in the hole, and a second outline beside it."""
    outer = draw(outlines(kinds))
    paths = [outer]
    if draw(st.booleans()):
        hole = inscribed(draw(outlines(kinds)), outer)
        paths.append(hole.reversed())
        if draw(st.booleans()):
            paths.append(inscribed(draw(outlines(kinds)), hole))
    if draw(st.booleans()):
        paths.append(shift(complex(2.5 * WIDEST, draw(coordinates))).path(draw(outlines(kinds))))
    return Region(tuple(draw(st.permutations(paths))))


cells = st.sets(st.tuples(st.integers(0, 3), st.integers(0, 3)), min_size=1, max_size=10).map(sorted)
"""Places in a grid of 4 × 4 unit squares."""

grid_lines = st.builds(
    StraightLine,
    st.builds(complex, st.integers(0, 4), st.integers(0, 4)),
    st.sampled_from([1 + 0j, -1 + 0j, 1j, -1j, (1 + 1j) / 2**0.5, (1 - 1j) / 2**0.5, (2 + 1j) / 5**0.5]),
)
"""Lines through the corners of such a grid, most of them along edges or across corners."""


def squares(places: list[tuple[int, int]]) -> Region:
    """Return a unit square for each place; neighbours touch along edges, others in corners."""
    return Region(tuple(rectangle(x, y, x + 1, y + 1) for x, y in places))
