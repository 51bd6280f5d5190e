"""Compare the top that the steps made with the picture that the booklet shows."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from typing import TYPE_CHECKING, Protocol, TypeAlias

from quarterturn.geometry import Bounds, Region, as_polygon, region_bounds, same_region, united, without
from quarterturn.proof.rehearsal.stacking import restacked

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

Key: TypeAlias = tuple[str, int, int, int, int]


class Shown(Protocol):
    """Cloth that shows: a face of the picture, or a scrap of the sewn top."""

    @property
    def fabric(self) -> str:
        """Return the fabric's letter."""
        ...

    @property
    def region(self) -> Region:
        """Return where it shows."""
        ...


def area_of_difference(sewn: Sequence[Shown], drawn: Sequence[Shown]) -> float:
    """Return the area, in square inches, on which two tops show different fabric.

    Both are painted in their order. Faces with the same outline and fabric cancel, unless they lie over one another
    in another order; where any are left, all that lies round them is painted with polygons and compared. Where one
    top shows the wrong fabric, one fabric is short and another over, and the place counts twice: the figure errs on
    the strict side.
    """
    twins = _twins(sewn, drawn)
    odd = [face for face, twin in zip(sewn, twins, strict=True) if twin is None]
    odd += [face for face, twin in zip(drawn, _twins(drawn, sewn), strict=True) if twin is None]
    odd += _restacked(sewn, twins)
    if not odd:
        return 0.0
    spots = [region_bounds(face.region) for face in odd]
    here, there = _painted(sewn, spots), _painted(drawn, spots)
    return sum(_apart(here.get(fabric), there.get(fabric)) for fabric in here.keys() | there.keys())


def _apart(a: BaseGeometry | None, b: BaseGeometry | None) -> float:
    if a is None or b is None:
        alone = a if b is None else b
        return 0.0 if alone is None else float(alone.area)
    return float(without(a, b).area + without(b, a).area)


def _twins(faces: Sequence[Shown], others: Sequence[Shown]) -> list[int | None]:
    """Return for each face the first place of an equal one among the others."""
    known: dict[Key, list[int]] = defaultdict(list)
    for place, other in enumerate(others):
        known[_key(other)].append(place)
    return [
        next((k for k in known[_key(face)] if same_region(face.region, others[k].region)), None)
        for face in faces
    ]


def _restacked(sewn: Sequence[Shown], twins: Sequence[int | None]) -> list[Shown]:
    """Return faces that the other top has too, but over or under one another in another order."""
    pairs = [(face, twin) for face, twin in zip(sewn, twins, strict=True) if twin is not None]
    order = [face for face, _ in pairs]
    found = restacked([f.fabric for f in order], [f.region for f in order], [twin for _, twin in pairs])
    return [order[k] for k in found]


def _key(face: Shown) -> Key:
    """Return where a face roughly is. Sizes lie on round figures, so the grid's lines are kept off those."""
    box = region_bounds(face.region)
    left, top, right, bottom = (round(v * 1000 + 0.123) for v in (box.left, box.top, box.right, box.bottom))
    return face.fabric, left, top, right, bottom


def _painted(faces: Sequence[Shown], spots: Sequence[Bounds]) -> dict[str, BaseGeometry]:
    """Return what shows of each fabric within the spots."""
    import shapely

    within = shapely.union_all([shapely.box(b.left, b.top, b.right, b.bottom) for b in spots])
    shapely.prepare(within)
    near = [face for face in faces if within.intersects(_box(face))]
    parts = [_cut_to(as_polygon(face.region), within) for face in near]
    tree = shapely.STRtree(parts)
    seen: dict[str, list[BaseGeometry]] = defaultdict(list)
    for place, (face, part) in enumerate(zip(near, parts, strict=True)):
        above = [parts[k] for k in tree.query(part, predicate="intersects") if k > place]
        seen[face.fabric].append(without(part, united(above)) if above else part)
    return {fabric: united(shown) for fabric, shown in seen.items()}


def _box(face: Shown) -> BaseGeometry:
    import shapely

    box = region_bounds(face.region)
    return shapely.box(box.left, box.top, box.right, box.bottom)


def _cut_to(whole: BaseGeometry, within: BaseGeometry) -> BaseGeometry:
    return without(whole, without(whole, within))
