"""Find faces that lie over one another in another order in two tops."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.geometry import Region, as_polygon, region_bounds

COARSE = 1e-4
"""Chords are within this of their curve, in inches, while overlaps are looked for."""

OVERLAP = 2e-3
"""Faces that share less than this, in square inches, may do so by the chords alone: they are neighbours."""


def restacked(fabrics: Sequence[str], regions: Sequence[Region], places: Sequence[int]) -> list[int]:
    """Return the faces that lie over another of another fabric in one order here and in the other elsewhere.

    The faces are listed as they lie here, the later on top; `places` tells the place of each in the list of the other
    top.
    """
    import shapely

    found: set[int] = set()
    polygons: dict[int, shapely.Geometry] = {}

    def shape(face: int) -> shapely.Geometry:
        if face not in polygons:
            polygons[face] = as_polygon(regions[face], COARSE)
        return polygons[face]

    for below, above in _inverted(fabrics, regions, places):
        if shapely.intersection(shape(below), shape(above)).area > OVERLAP:
            found |= {below, above}
    return sorted(found)


def _inverted(
    fabrics: Sequence[str], regions: Sequence[Region], places: Sequence[int]
) -> Iterator[tuple[int, int]]:
    """Yield pairs whose boxes overlap and whose order differs; of one fabric it would not show."""
    import shapely

    if not regions:
        return
    sides = [(b.left, b.top, b.right, b.bottom) for b in map(region_bounds, regions)]
    boxes = [shapely.box(*side) for side in sides]
    first, second = shapely.STRtree(boxes).query(boxes, predicate="intersects").tolist()
    for below, above in zip(first, second, strict=True):
        if below < above and places[below] > places[above] and fabrics[below] != fabrics[above]:
            yield below, above
