"""Areas that only polygons give: overlaid by shapely, after flattening to FLATTENING.

Overlays of edges that all but coincide can come out plainly wrong (seen with GEOS 3.14: a triangle less the
half plane that holds it was the whole triangle), so all are made on a fixed grid, where they are sound.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.geometry.compare import same_region
from quarterturn.geometry.flatten import flatten_path
from quarterturn.geometry.paths import Path, Region, region_bounds
from quarterturn.geometry.segments import Point
from quarterturn.geometry.shapes import polygon

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

FLATTENING = 1e-5
"""Chords are within this of their curve, in inches, whenever a library needs a polygon."""

GRID = 1e-9
"""The grid of overlays, in inches."""


def as_polygon(region: Region, tolerance: float = FLATTENING) -> BaseGeometry:
    """Return a region as a shapely geometry, flattened; the larger first, outlines joined, holes taken out."""
    import shapely

    whole: BaseGeometry = shapely.Polygon()
    for path in sorted(region.paths, key=lambda p: abs(p.area()), reverse=True):
        corners = flatten_path(path, tolerance)
        if len(corners) < 3:
            continue  # flatter than the tolerance
        part = shapely.Polygon([(p.real, p.imag) for p in corners]).buffer(0)
        whole = joined(whole, part) if path.area() > 0 else without(whole, part)
    return whole


def from_polygons(geometry: BaseGeometry) -> Region:
    """Return a shapely area as a region of straight-sided paths."""
    import shapely

    paths = []
    for part in shapely.get_parts(geometry):
        if part.geom_type != "Polygon" or part.is_empty:
            continue
        paths.append(_ring(part.exterior.coords, positive=True))
        paths.extend(_ring(hole.coords, positive=False) for hole in part.interiors)
    return Region(tuple(paths))


def _ring(coordinates: Sequence[Sequence[float]], *, positive: bool) -> Path:
    path = polygon([complex(c[0], c[1]) for c in coordinates[:-1]])
    return path if (path.area() > 0) == positive else path.reversed()


def without(a: BaseGeometry, b: BaseGeometry) -> BaseGeometry:
    """Return what of one shapely area does not lie in another."""
    return _areas(_areas(a).difference(_areas(b), grid_size=GRID))


def joined(a: BaseGeometry, b: BaseGeometry) -> BaseGeometry:
    """Return what lies in one shapely area or in the other."""
    return _areas(_areas(a).union(_areas(b), grid_size=GRID))


def united(areas: Sequence[BaseGeometry]) -> BaseGeometry:
    """Return what lies in any of some shapely areas."""
    import shapely

    return _areas(shapely.union_all([_areas(area) for area in areas], grid_size=GRID))


def _areas(geometry: BaseGeometry) -> BaseGeometry:
    """Return a geometry without the lines and points to which slivers collapse; an overlay would refuse them."""
    import shapely

    if geometry.geom_type != "GeometryCollection":
        return geometry if geometry.area else shapely.Polygon()
    return shapely.MultiPolygon([part for part in shapely.get_parts(geometry) if part.geom_type == "Polygon"])


def difference_area(a: Region, b: Region) -> float:
    """Return the area covered by one of two regions but not by both; 0 where their outlines are the same."""
    if same_region(a, b):
        return 0.0
    one, other = as_polygon(a), as_polygon(b)
    return float(without(one, other).area + without(other, one).area)


def uncovered_area(region: Region, covers: Sequence[Region]) -> float:
    """Return the area of a region that none of the covers lies on."""
    rest = as_polygon(region)
    for cover in covers:
        rest = without(rest, as_polygon(cover))
    return float(rest.area)


def shared_area(a: Region, b: Region) -> float:
    """Return the area on which two regions both lie."""
    one, other = region_bounds(a), region_bounds(b)
    beside = one.right <= other.left or other.right <= one.left
    if beside or one.bottom <= other.top or other.bottom <= one.top:
        return 0.0
    whole = as_polygon(a)
    return float(whole.area - without(whole, as_polygon(b)).area)


def roomiest_point(region: Region) -> tuple[Point, float]:
    """Return the middle and the radius of the largest disc in a region that is not empty, to a hundredth inch."""
    import shapely

    largest = max(shapely.get_parts(as_polygon(region, 0.01)), key=lambda part: part.area)
    (x, y), (px, py) = shapely.maximum_inscribed_circle(largest, 0.01).coords
    return complex(x, y), abs(complex(px - x, py - y))


def is_inside(point: Point, region: Region) -> bool:
    """Tell whether a point lies in a region (flattened to FLATTENING; on the edge either answer is right)."""
    import shapely

    return bool(as_polygon(region).contains(shapely.Point(point.real, point.imag)))
