"""Where a body can lie: the places, as an area, that no body already there forbids.

A body B at x and a body A at 0 overlap where x is inside the sum of A and −B (Minkowski), their no-fit area; for convex
parts it is the hull of the differences of corners. What is left of a room for B is a polygon whose corners are the
places in which B touches its surroundings twice.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from quarterturn.geometry import Point
from quarterturn.materials.nesting.bodies import NARROW, Body, Catalogue, Corners

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

Rows = npt.NDArray[np.float64]

GRID = 1e-7
"""The grid of overlays, in inches: finer than NARROW, and overlays on a grid are sound."""

Rule = Callable[[Body], float]
"""Where in a body its height is taken: of all places, the one with the least height is chosen."""

Laid = tuple[Body, Point]


def bottom(body: Body) -> float:
    """Judge a place by how far the body reaches along the roll."""
    return body.box.bottom


def middle(body: Body) -> float:
    """Judge a place by the middle of the body."""
    return (body.box.top + body.box.bottom) / 2


def sums(fixed: Iterable[Corners], moving: Sequence[Corners]) -> BaseGeometry:
    """Return where bodies with the moving parts would overlap the fixed ones: all differences of their points."""
    import shapely

    rings = [convex_difference(a, b) for a in fixed for b in moving]
    if not rings:
        return shapely.Polygon()
    points = np.round(np.concatenate(rings), 7)
    owner = np.repeat(np.arange(len(rings)), [len(ring) for ring in rings])
    # Rounding may bend a straight side inwards; hulls are sound.
    areas = shapely.convex_hull(
        shapely.multipoints(np.column_stack([points.real, points.imag]), indices=owner)
    )
    return areas[0] if len(rings) == 1 else shapely.union_all(areas)


def convex_difference(one: Corners, other: Corners) -> Corners:
    """Return the corners of all differences of points of two convex outlines, or of lines: their edges by direction."""
    first, first_angles = _from_lowest(one)
    second, second_angles = _from_lowest(-other)
    ways = np.concatenate([np.roll(first, -1) - first, np.roll(second, -1) - second])
    order = np.argsort(np.concatenate([first_angles, second_angles]), kind="stable")
    found: Corners = first[0] + second[0] + np.concatenate([[0j], np.cumsum(ways[order])[:-1]])
    return found


def _from_lowest(ring: Corners) -> tuple[Corners, npt.NDArray[np.float64]]:
    """Return a ring from its lowest corner on, and the directions of its edges, which only grow from about 0."""
    ring = np.roll(ring, -int(np.lexsort((ring.real, ring.imag))[0]))
    ways = np.roll(ring, -1) - ring
    turns = np.angle(ways[1:] / ways[:-1])
    turns[turns < -3] += math.tau  # straight back, as along a line and home
    return ring, np.angle(ways[0]) + np.concatenate([[0.0], np.cumsum(turns)])


class NoFit:
    """No-fit areas of pairs of bodies, kept."""

    def __init__(self, catalogue: Catalogue) -> None:
        self._catalogue = catalogue
        self._kept: dict[tuple[int, int, int], BaseGeometry] = {}

    def __call__(self, fixed: Body, moving: Body, at: Point) -> BaseGeometry:
        """Return where the moving body may not lie when the fixed one is `at` its place."""
        import shapely

        turn = (moving.turn - fixed.turn) % 4
        key = (fixed.shape, moving.shape, turn)
        if key not in self._kept:
            one, other = self._catalogue.body(fixed.shape, 0), self._catalogue.body(moving.shape, turn)
            self._kept[key] = sums(one.grown, other.grown)
        return shapely.transform(self._kept[key], _moving(fixed.turn, at))


def _moving(turn: int, by: Point) -> Callable[[Rows], Rows]:
    """Return the turn by quarters, then the shift, of rows of coordinates, on the grid."""
    cosine, sine = ((1, 0), (0, 1), (-1, 0), (0, -1))[turn]
    matrix = np.array([[cosine, sine], [-sine, cosine]], dtype=float)
    return lambda rows: np.round(rows @ matrix + (by.real, by.imag), 7)


def areas_of(geometry: BaseGeometry) -> BaseGeometry:
    """Return the areas of a geometry, without the lines and points to which slivers collapse."""
    import shapely

    if geometry.geom_type != "GeometryCollection":
        return geometry if geometry.area else shapely.Polygon()
    return shapely.MultiPolygon([part for part in shapely.get_parts(geometry) if part.geom_type == "Polygon"])


class Room:
    """A part of the roll, a sheet, a hollow or a scrap, with what lies in it."""

    def __init__(self, whole: Callable[[Body], BaseGeometry], nofit: NoFit) -> None:
        self._whole, self._nofit = whole, nofit
        self.laid: list[Laid] = []
        self._free: dict[tuple[int, int], tuple[BaseGeometry, int]] = {}

    def copy(self) -> Room:
        """Return a room with the same in it, to be filled on its own."""
        other = Room(self._whole, self._nofit)
        other.laid, other._free = list(self.laid), dict(self._free)
        return other

    def free(self, body: Body) -> BaseGeometry:
        """Return all places for a body."""
        free, seen = self._free.get(body.key) or (self._whole(body), 0)
        if seen < len(self.laid) and not free.is_empty:
            free = self._without(free, body, self.laid[seen:])
        self._free[body.key] = free, len(self.laid)
        return free

    def _without(self, free: BaseGeometry, body: Body, laid: Sequence[Laid]) -> BaseGeometry:
        import shapely

        left, top, right, low = free.bounds
        areas = np.array([self._nofit(other, body, at) for other, at in laid])
        boxes = shapely.bounds(areas)
        near = (boxes[:, 0] < right) & (boxes[:, 2] > left) & (boxes[:, 1] < low) & (boxes[:, 3] > top)
        if not near.any():
            return free
        # Rounded alike, edges that coincide do so exactly, and the union is sound without a grid, and faster.
        return areas_of(shapely.difference(free, shapely.union_all(areas[near]), grid_size=GRID))

    def lowest(self, bodies: Sequence[Body], rule: Rule = bottom) -> Laid | None:
        """Return the least high place of any of these bodies, the leftmost of several; None where none fits."""
        import shapely

        best: tuple[tuple[float, float], Laid] | None = None
        for body in bodies:
            places = shapely.get_coordinates(self.free(body))
            if not len(places):
                continue
            heights = np.round(places[:, 1] + rule(body), 5)
            lefts = np.where(heights == heights.min(), places[:, 0], np.inf)
            x, y = places[int(lefts.argmin())]
            score = (float(heights.min()), round(float(x) + body.box.left, 5))
            if best is None or score < best[0]:
                best = score, (body, complex(float(x), float(y)))
        return best[1] if best else None

    def put(self, body: Body, at: Point) -> None:
        """Lay a body."""
        self.laid.append((body, at))

    def close_above(self, bodies: Sequence[Body], height: float, rule: Rule) -> None:
        """Forget the places of these bodies that are less high: where the lowest is taken, none is left there."""
        import shapely

        for body in bodies:
            free, seen = self._free[body.key]
            if not free.is_empty:
                left, _, right, low = free.bounds
                free = shapely.clip_by_rect(free, left - 1, height - rule(body) - 1e-4, right + 1, low + 1)
                self._free[body.key] = areas_of(free), seen


def inside_box(width: float, height: float) -> Callable[[Body], BaseGeometry]:
    """Return where bodies lie on a sheet: by the exact box of the shape, so that one as wide as the sheet fits."""
    import shapely

    def whole(body: Body) -> BaseGeometry:
        spare = width - body.box.width, height - body.box.height
        if min(spare) < -1e-9:
            return shapely.Polygon()
        left, top = -body.box.left, -body.box.top
        right, low = left + max(0.0, spare[0]), top + max(0.0, spare[1])
        return shapely.box(left - NARROW, top - NARROW, right + NARROW, low + NARROW)

    return whole


def inside_area(area: BaseGeometry) -> Callable[[Body], BaseGeometry]:
    """Return where bodies lie inside polygons: a point of the body inside, and its edges across no edge."""
    import shapely

    edges = _edges(area)

    def whole(body: Body) -> BaseGeometry:
        left, top, right, low = area.bounds if not area.is_empty else (0.0, 0.0, 0.0, 0.0)
        if body.box.width > right - left + 1e-4 or body.box.height > low - top + 1e-4:
            return shapely.Polygon()
        point = complex(body.bare[0][0])
        around = shapely.transform(area, lambda rows: rows - (point.real, point.imag))
        return areas_of(shapely.difference(around, sums(edges, body.bare), grid_size=GRID))

    return whole


def _edges(area: BaseGeometry) -> list[Corners]:
    import shapely

    found: list[Corners] = []
    for ring in shapely.get_rings(shapely.get_parts(area)):
        corners = shapely.get_coordinates(ring)
        points = corners[:, 0] + 1j * corners[:, 1]
        found.extend(np.array([a, b]) for a, b in itertools.pairwise(points))
    return found


def settled(body: Body, at: Point, width: float) -> Point:
    """Return a place on a grid of 1/100,000 inch, and exactly within the edges of the roll or sheet.

    It is rounded to the nearest across, but down the roll, so that what is rounded never adds up to a shorter roll.
    """
    x, y = round(at.real, 5), math.ceil((at.imag + 0.5 * NARROW) * 1e5) / 1e5
    x = max(min(x, width - body.box.right), -body.box.left)
    return complex(x, max(y, -body.box.top))
