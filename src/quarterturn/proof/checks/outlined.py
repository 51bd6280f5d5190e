"""An outline measured as a polygon, its chords within FLATTENING of its curves: another way than the stages take."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.design import QUARTERS, Curve, DrawnOutline, wanted_outline
from quarterturn.geometry import Arc, Cubic, Path, Region, StraightLine, as_polygon, spread
from quarterturn.measure import Length

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

Meets: TypeAlias = Mapping[tuple[str, str], tuple[tuple[float, bool], ...]]
"""For each kind of unit and each of its two seams, `horizontal` and `vertical`, where the shape's edge meets the seam:
how far from the finished corner, and whether the shape lies on the corner's side of it."""

FAR = 1000.0
"""Beyond every master, in inches."""
NOISE = 1e-3
"""Areas below this share of a shape are the noise of chords."""
SHORTEST = 1e-4
"""Shorter stretches along a seam, in inches, are noise too."""


@dataclass(frozen=True, slots=True)
class Measured:
    """What a polygon tells; see `drafting.Draft`."""

    width: float
    height: float
    bend: float
    room: float
    edge: float
    area_left: float
    same_mirrored: bool
    kinds: Mapping[str, int]
    meets: Meets


def measured(size: DrawnOutline, curve: Curve, seam: Length) -> Measured:
    """Measure an outline as it is traced for a master that is cut both ways."""
    import shapely

    s, path = float(seam), wanted_outline(size, curve, seam)
    if curve is Curve.SEWN_TRUE:
        path = spread(path, (StraightLine(0j, 1j), StraightLine(0j, -1 + 0j)), s)
    whole = as_polygon(Region((path,)))
    left, top, right, bottom = whole.bounds
    quarters = {quarter: _beyond(whole, quarter, 0.0) for quarter in QUARTERS}
    kinds = _kinds(quarters)
    seen = kinds if len(kinds) > 1 else {"br": 4}
    return Measured(
        width=right - left,
        height=bottom - top,
        bend=min(bends(path), default=FAR),
        room=float(shapely.maximum_inscribed_circle(whole, 1e-4).length),
        edge=path.length(),
        area_left=sum(_beyond(whole, quarter, s).area for quarter in QUARTERS) / whole.area,
        same_mirrored=_same_mirrored(whole),
        kinds=kinds,
        meets={
            (quarter if len(kinds) > 1 else "", way): tuple(_edges(whole, quarter, way, s))
            for quarter in seen
            for way in ("horizontal", "vertical")
        },
    )


def _ways(quarter: str) -> tuple[int, int]:
    return (1 if quarter[1] == "r" else -1), (1 if quarter[0] == "b" else -1)


def _beyond(whole: BaseGeometry, quarter: str, seam: float) -> BaseGeometry:
    """Return what of a shape lies in a quarter of its master, beyond both seams."""
    import shapely

    x, y = _ways(quarter)
    across, down = sorted((x * seam, x * FAR)), sorted((y * seam, y * FAR))
    return whole.intersection(shapely.box(across[0], down[0], across[1], down[1]))


def _kinds(quarters: Mapping[str, BaseGeometry]) -> dict[str, int]:
    """Turn all quarters to the lower right, and count those that then lie on one another."""
    from shapely.affinity import rotate

    turns = {"tl": 180, "tr": 90, "br": 0, "bl": 270}
    laid = {quarter: rotate(part, turns[quarter], origin=(0, 0)) for quarter, part in quarters.items()}
    kinds: dict[str, int] = {}
    for quarter, part in laid.items():
        first = next((kind for kind in kinds if _same(laid[kind], part)), quarter)
        kinds[first] = kinds.get(first, 0) + 1
    return kinds if len(kinds) > 1 else {"": len(laid)}


def _same(a: BaseGeometry, b: BaseGeometry) -> bool:
    return bool(a.symmetric_difference(b).area < NOISE * max(a.area, b.area))


def _same_mirrored(whole: BaseGeometry) -> bool:
    from shapely.affinity import scale

    return _same(whole, scale(whole, xfact=-1, origin=(0, 0)))


def _edges(whole: BaseGeometry, quarter: str, way: str, seam: float) -> Iterator[tuple[float, bool]]:
    """Return where a shape's edge meets a seam of its quarter: distance from the corner, shape on its near side."""
    import shapely

    x, y = _ways(quarter)
    corner = (x * seam, y * seam)
    end = (x * FAR, y * seam) if way == "horizontal" else (x * seam, y * FAR)
    covered = shapely.LineString([corner, end]).intersection(whole)
    for part in shapely.get_parts(covered):
        if part.length < SHORTEST:
            continue
        start, stop = sorted(max(abs(px - corner[0]), abs(py - corner[1])) for px, py in part.coords)
        if start > SHORTEST:
            yield start, False
        yield stop, True


def bends(path: Path) -> Iterator[float]:
    """Return the radius of each arc, and radii along each cubic, by the circle through three near points."""
    for segment in path.segments:
        if isinstance(segment, Arc):
            yield segment.radius
        elif isinstance(segment, Cubic):
            yield from (_radius(*(segment.point((k + d) / 64) for d in (-0.5, 0, 0.5))) for k in range(1, 64))


def _radius(a: complex, b: complex, c: complex) -> float:
    area = abs(((b - a).conjugate() * (c - a)).imag) / 2
    return abs(b - a) * abs(c - b) * abs(a - c) / (4 * area) if area > 1e-12 else FAR
