"""Shapes as bodies: in each turn a box, and convex parts that cover the outline grown by half the gap.

Bodies that do not overlap are shapes that keep their gap. A curve's chords are moved outwards, so that the body covers
the curve; corners are mitred up to the reach of the gap.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from quarterturn.geometry import (
    Bounds,
    Path,
    Region,
    flatten_path,
    path_bounds,
    quarter_turns,
    same_outline,
    shift,
)
from quarterturn.materials.nesting.model import Shape

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

Corners = npt.NDArray[np.complex128]

NARROW = 1e-6
"""Bodies are drawn in by this, so that a place which fits exactly is more than a single point."""

ROUNDING = 2e-5
"""Curved bodies are drawn out by this, so that places can be rounded and the gap is still kept."""

COARSE = 1e-3
"""Bodies are within this share of the diameter from their curve."""

COARSER = 4e-3
"""The same for hollows and what is laid against their edges, which is more work."""

OFF = 0.01
"""Bodies are never further from their curve than this, in inches."""

FEW = 40
"""Straight outlines of so many corners are taken as they are: of more, they stand for curves."""


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """A shape in one of its turns. `grown` parts hold half the gap, `bare` parts none."""

    shape: int
    turn: int
    box: Bounds
    grown: tuple[Corners, ...]
    bare: tuple[Corners, ...]

    @property
    def key(self) -> tuple[int, int]:
        """Return the number of the shape and its turn."""
        return self.shape, self.turn


class Catalogue:
    """The shapes of a job, with their bodies and hollows, worked out when they are first asked for."""

    def __init__(self, shapes: Sequence[Shape], gap: float) -> None:
        self.shapes = tuple(shapes)
        self.gap = gap
        self._bodies: dict[tuple[int, int], Body] = {}
        self._turns: dict[tuple[int, tuple[int, ...]], tuple[int, ...]] = {}
        self._areas: dict[int, float] = {}

    def body(self, shape: int, turn: int) -> Body:
        """Return a shape in a turn."""
        key = (shape, turn % 4)
        if key not in self._bodies:
            self._bodies[key] = self._made(shape, turn % 4)
        return self._bodies[key]

    def bodies(self, shape: int, turns: tuple[int, ...] | None = None) -> tuple[Body, ...]:
        """Return a shape in all of these turns, or of those it allows, in which its outline differs."""
        key = (shape, self.shapes[shape].turns if turns is None else turns)
        if key not in self._turns:
            self._turns[key] = differing(self.shapes[shape].outline, key[1])
        return tuple(self.body(shape, turn) for turn in self._turns[key])

    def area(self, shape: int) -> float:
        """Return the area inside the outline of a shape."""
        if shape not in self._areas:
            self._areas[shape] = self.shapes[shape].outline.area()
        return self._areas[shape]

    def _made(self, shape: int, turn: int) -> Body:
        outline = self.shapes[shape].outline
        if not turn:
            grown, bare = grown_corners(outline, self.gap / 2), grown_corners(outline, 0.0, COARSER)
            return Body(shape, 0, path_bounds(outline), convex_parts(grown), convex_parts(bare))
        plain, way = self.body(shape, 0), quarter_turns(turn)
        box = path_bounds(way.path(outline))
        turned = [tuple(part * way.factor for part in parts) for parts in (plain.grown, plain.bare)]
        return Body(shape, turn, box, turned[0], turned[1])


@lru_cache(maxsize=256)
def differing(outline: Path, turns: tuple[int, ...]) -> tuple[int, ...]:
    """Return those of the turns that give different outlines, in their order."""
    found: list[tuple[int, Path]] = []
    for turn in dict.fromkeys(turn % 4 for turn in turns):
        path = _at_origin(quarter_turns(turn).path(outline))
        if not any(same_outline(path, other) for _, other in found):
            found.append((turn, path))
    return tuple(turn for turn, _ in found)


def _at_origin(path: Path) -> Path:
    box = path_bounds(path)
    return shift(-complex(box.left, box.top)).path(path)


def simplified(path: Path, coarse: float) -> tuple[BaseGeometry, float]:
    """Return a polygon of few corners near a path, and how far the path may be from it: 0 where it is that path.

    `coarse` is the share of the diameter that it may be off by.
    """
    import shapely

    box = path_bounds(path)
    chord = min(OFF, coarse * max(box.width, box.height))
    corners = flatten_path(path, chord / 2)
    polygon = shapely.Polygon([(p.real, p.imag) for p in corners])
    if path.is_straight() and len(corners) <= FEW:
        return polygon, 0.0
    return polygon.simplify(chord / 2), chord


def grown_corners(path: Path, by: float, coarse: float = COARSE) -> BaseGeometry:
    """Return a polygon that covers a path moved outwards by `by`, but for NARROW."""
    polygon, off = simplified(path, coarse)
    return _moved(polygon, by + (off + ROUNDING if off else 0.0) - NARROW)


def shrunk_region(region: Region, by: float) -> BaseGeometry:
    """Return polygons that a region moved inwards by `by` covers, but for NARROW."""
    import shapely

    whole: BaseGeometry = shapely.Polygon()
    furthest = 0.0
    for path in sorted(region.paths, key=lambda p: -abs(p.area())):
        part, off = simplified(path, COARSER)
        furthest = max(furthest, off)
        whole = whole.union(part) if path.area() > 0 else whole.difference(part)
    return _moved(whole, NARROW - by - (furthest + ROUNDING if furthest else 0.0))


def _moved(area: BaseGeometry, by: float) -> BaseGeometry:
    return area.buffer(by, join_style="mitre", mitre_limit=1.0)


def convex_parts(area: BaseGeometry) -> tuple[Corners, ...]:
    """Part polygons into convex ones: triangles, joined wherever what they make stays convex.

    After Hertel and Mehlhorn, *Fast triangulation of simple polygons*, 1983; holes are filled first.
    """
    import shapely

    found: list[Corners] = []
    for piece in shapely.get_parts(area):
        filled = shapely.Polygon(piece.exterior)
        hull = filled.convex_hull
        if hull.area - filled.area <= 1e-9 * hull.area:
            found.append(_ring(hull))
        else:
            triangles = shapely.get_parts(shapely.constrained_delaunay_triangles(filled))
            found.extend(_Joining([[complex(c) for c in _ring(t)] for t in triangles]).joined)
    return tuple(found)


def _ring(polygon: BaseGeometry) -> Corners:
    """Return the corners of a polygon, positive in the sense of areas."""
    import shapely

    corners = shapely.get_coordinates(polygon.exterior)[:-1]
    ring: Corners = corners[:, 0] + 1j * corners[:, 1]
    return ring if np.sum(np.imag(np.conj(ring) * np.roll(ring, -1))) > 0 else ring[::-1]


class _Joining:
    """Joins triangles edge by edge."""

    def __init__(self, rings: list[list[complex]]) -> None:
        self._rings: dict[int, list[complex]] = dict(enumerate(rings))
        self._at = {edge: number for number, ring in self._rings.items() for edge in _edges(ring)}

    @cached_property
    def joined(self) -> list[Corners]:
        """Return what remains when no two parts can be joined any more."""
        for start, end in sorted(self._at, key=lambda e: (-abs(e[1] - e[0]), e[0].real, e[0].imag)):
            self._join(start, end)
        return [np.array(ring) for ring in self._rings.values()]

    def _join(self, start: complex, end: complex) -> None:
        one, other = self._at.get((start, end)), self._at.get((end, start))
        if one is None or other is None or one == other:
            return
        first, second = _from(self._rings[one], end), _from(self._rings[other], start)
        ring = first + second[1:-1]
        if not _is_convex(ring):
            return
        del self._rings[other], self._at[(start, end)], self._at[(end, start)]
        self._rings[one] = ring
        self._at.update(dict.fromkeys((edge for edge in _edges(ring)), one))


def _edges(ring: list[complex]) -> list[tuple[complex, complex]]:
    return list(zip(ring, [*ring[1:], ring[0]], strict=True))


def _from(ring: list[complex], corner: complex) -> list[complex]:
    at = ring.index(corner)
    return ring[at:] + ring[:at]


def _is_convex(ring: list[complex]) -> bool:
    corners = np.array(ring)
    ways = np.roll(corners, -1) - corners
    return bool(np.all(np.imag(np.conj(ways) * np.roll(ways, -1)) >= -1e-12))
