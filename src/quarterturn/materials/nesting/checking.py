"""A nesting checked apart from how it was found: by fine polygons, their distances, and what covers what."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

import numpy as np

from quarterturn.geometry import FLATTENING, Path, Region, flatten_path, path_bounds
from quarterturn.materials.nesting.model import TOUCH, Place, Scrap, Shape

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

SLIVER = TOUCH + 3 * FLATTENING
"""What distances may be short of, once curves are flattened."""


class Checker:
    """Checks places of shapes on a roll, on sheets, in scraps; flattens each outline once."""

    def __init__(self, shapes: Sequence[Shape], gap: float, scraps: Sequence[Scrap] = ()) -> None:
        self._shapes = {shape.name: shape for shape in shapes}
        self._scraps = {scrap.name: scrap for scrap in scraps}
        self._gap = gap
        self._flat: dict[str, BaseGeometry] = {}

    def faults(self, places: Sequence[Place], width: float, height: float) -> tuple[str, ...]:
        """Return what is wrong, in words; nothing where every shape lies as it may, apart, and inside."""
        return (
            *self._turned(places),
            *self._outside(places, width, height),
            *self._not_held(places),
            *self._too_near(places),
        )

    def _turned(self, places: Sequence[Place]) -> Iterator[str]:
        for number, place in enumerate(places):
            turns = {(1, 1j, -1, -1j)[turn % 4] for turn in self._shapes[place.shape].turns}
            if place.motion.mirrored or place.motion.factor not in turns:
                yield f"{place.shape} ({number}) is turned as it may not be"

    def _outside(self, places: Sequence[Place], width: float, height: float) -> Iterator[str]:
        """Name outermost shapes that reach beyond the roll, the sheet, or the scrap."""
        for number, place in enumerate(places):
            if place.scrap is not None:
                if not self._is_within(place, self._scraps[place.scrap].region, 0.0, None):
                    yield f"{place.shape} ({number}) reaches out of {place.scrap}"
                continue
            box = path_bounds(place.motion.path(self._shapes[place.shape].outline))
            if min(box.left, box.top, width - box.right, height - box.bottom) < -TOUCH:
                yield f"{place.shape} ({number}) reaches over the edge"

    def _not_held(self, places: Sequence[Place]) -> Iterator[str]:
        for number, place in enumerate(places):
            if place.within is None:
                continue
            owner = places[place.within]
            same = (owner.scrap, owner.number) == (place.scrap, place.number)
            hollow = self._shapes[owner.shape].hollow
            if not same or not self._is_within(place, hollow, self._gap, owner):
                yield f"{place.shape} ({number}) is not held by {owner.shape} ({place.within})"

    def _is_within(self, place: Place, region: Region, gap: float, owner: Place | None) -> bool:
        """Tell whether a region, moved with its owner, covers a place and is nowhere nearer to it than the gap."""
        import shapely

        around = _polygons(owner.motion.region(region) if owner else region)
        inner = self._outline(place)
        if not inner.difference(around).buffer(-SLIVER / 2).is_empty:
            return False
        edge = around.boundary
        shapely.prepare(edge)
        return gap <= SLIVER or not shapely.dwithin(edge, inner.boundary, gap - SLIVER)

    def _outline(self, place: Place) -> BaseGeometry:
        import shapely

        if place.shape not in self._flat:
            self._flat[place.shape] = _polygon(self._shapes[place.shape].outline)
        way, move = place.motion.factor, place.motion.move
        matrix = np.array([[way.real, way.imag], [-way.imag, way.real]])
        return shapely.transform(self._flat[place.shape], lambda rows: rows @ matrix + (move.real, move.imag))

    def _too_near(self, places: Sequence[Place]) -> Iterator[str]:
        """Name pairs on one sheet, or in one hollow, that overlap or are nearer than the gap."""
        for numbers in _beside(places).values():
            outlines = [self._outline(places[number]) for number in numbers]
            for one, other in _near(outlines, self._gap):
                yield f"{places[numbers[one]].shape} ({numbers[one]}) is too near to ({numbers[other]})"


def _beside(places: Sequence[Place]) -> Mapping[object, list[int]]:
    found: dict[object, list[int]] = defaultdict(list)
    for number, place in enumerate(places):
        found[(place.scrap, place.number, place.within)].append(number)
    return found


def _near(outlines: Sequence[BaseGeometry], gap: float) -> Iterable[tuple[int, int]]:
    import shapely

    bounds = shapely.box(*shapely.bounds(outlines).T)
    tree = shapely.STRtree(bounds)
    for one, other in sorted(zip(*tree.query(bounds, "dwithin", gap), strict=True)):
        if one < other and _is_near(outlines[one], outlines[other], gap):
            yield int(one), int(other)


def _is_near(one: BaseGeometry, other: BaseGeometry, gap: float) -> bool:
    """Tell whether two outlines overlap by more than a sliver, or are nearer than the gap less a sliver."""
    import shapely

    if gap > SLIVER:
        shapely.prepare(one)
        return bool(shapely.dwithin(one, other, gap - SLIVER))
    if not shapely.intersects(one, other):
        return False
    return not one.intersection(other, grid_size=1e-9).buffer(-SLIVER / 2).is_empty


def _polygons(region: Region) -> BaseGeometry:
    import shapely

    whole: BaseGeometry = shapely.Polygon()
    for path in sorted(region.paths, key=lambda p: -abs(p.area())):
        part = _polygon(path)
        whole = whole.union(part) if path.area() > 0 else whole.difference(part)
    return whole


def _polygon(path: Path) -> BaseGeometry:
    import shapely

    return shapely.Polygon([(p.real, p.imag) for p in flatten_path(path, FLATTENING)])
