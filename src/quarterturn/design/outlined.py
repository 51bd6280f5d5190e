"""Does an outline find room in its units, and does it show in each of them?"""

from __future__ import annotations

from quarterturn.design.recipes import Curve, DrawnOutline
from quarterturn.geometry import (
    FLATTENING,
    Path,
    Region,
    StraightLine,
    flatten_path,
    keep_left,
    outline_path,
    path_bounds,
)
from quarterturn.measure import Length

JUST = 1e-3
"""An edge that comes nearer to a corner than this, in inches, runs through it: no needle tells them apart."""


def wanted_outline(size: DrawnOutline, curve: Curve, seam: Length) -> Path:
    """Return the outline that is drawn: as it is traced, or as it finishes where it is to be sewn true.

    What is sewn true is traced two seam allowances wider. Its width must leave something of it.
    """
    width = size.width - 2 * seam if curve is Curve.SEWN_TRUE else size.width
    return outline_path(size.own or size.outline, float(width), size.turn, size.lobes)


def outline_reach(size: DrawnOutline, curve: Curve, seam: Length) -> float:
    """Return how far the outline as traced reaches from the middle of its master, vertical or horizontal."""
    if curve is Curve.SEWN_TRUE and size.width <= 2 * seam:
        return float(size.width / 2)
    bounds = path_bounds(wanted_outline(size, curve, seam))
    spread = float(seam) if curve is Curve.SEWN_TRUE else 0.0
    return max(bounds.width, bounds.height) / 2 + spread


def shows_in_every_quarter(size: DrawnOutline, curve: Curve, seam: Length) -> bool:
    """Tell whether something of the outline is left in each quarter of the master when its seams are sewn."""
    if curve is Curve.SEWN_TRUE and size.width <= 2 * seam:
        return False
    whole = Region((wanted_outline(size, curve, seam),))
    off = 0.0 if curve is Curve.SEWN_TRUE else float(seam)
    halves = [_beyond(whole, way, off) for way in (1 + 0j, -1 + 0j)]
    return all(not _beyond(half, way, off).is_empty() for half in halves for way in (1j, -1j))


def runs_through_corner(size: DrawnOutline, curve: Curve, seam: Length) -> bool:
    """Tell whether the edge of an outline runs just through the place where the seams of its master cross.

    There it cannot be told to which seam the edge runs. Only outlines of the designer's own ever do.
    """
    import shapely

    off = 0.0 if curve is Curve.SEWN_TRUE else float(seam)
    corners = flatten_path(wanted_outline(size, curve, seam), FLATTENING)
    edge = shapely.LinearRing([(p.real, p.imag) for p in corners])
    places = [(x * off, y * off) for x in (1, -1) for y in (1, -1)]
    return any(edge.distance(shapely.Point(place)) < JUST for place in places)


def _beyond(region: Region, way: complex, off: float) -> Region:
    """Return what of a region lies farther than `off` from the origin in a direction."""
    return keep_left(region, StraightLine(way * off, way * -1j))
