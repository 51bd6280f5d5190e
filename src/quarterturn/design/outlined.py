"""Does an outline find room in its units, and does it show in each of them?"""

from __future__ import annotations

from quarterturn.design.recipes import Curve, DrawnOutline
from quarterturn.geometry import Path, Region, StraightLine, keep_left, outline_path, path_bounds
from quarterturn.measure import Length


def wanted_outline(size: DrawnOutline, curve: Curve, seam: Length) -> Path:
    """Return the outline that is drawn: as it is traced, or as it finishes where it is to be sewn true.

    What is sewn true is traced two seam allowances wider. Its width must leave something of it.
    """
    width = size.width - 2 * seam if curve is Curve.SEWN_TRUE else size.width
    return outline_path(size.outline, float(width), size.turn, size.lobes)


def outline_reach(size: DrawnOutline, curve: Curve, seam: Length) -> float:
    """Return how far the outline as traced reaches from the middle of its master, upright or level."""
    if curve is Curve.SEWN_TRUE and size.width <= 2 * seam:
        return float(size.width / 2)
    bounds = path_bounds(wanted_outline(size, curve, seam))
    spread = float(seam) if curve is Curve.SEWN_TRUE else 0.0
    return max(bounds.width, bounds.height) / 2 + spread


def shows_in_every_quarter(size: DrawnOutline, curve: Curve, seam: Length) -> bool:
    """Tell whether something of the outline is left in each quarter of the master when its seams are sewn."""
    if curve is Curve.SEWN_TRUE:
        return size.width > 2 * seam
    whole, off = Region((wanted_outline(size, curve, seam),)), float(seam)
    halves = [_beyond(whole, way, off) for way in (1 + 0j, -1 + 0j)]
    return all(not _beyond(half, way, off).is_empty() for half in halves for way in (1j, -1j))


def _beyond(region: Region, way: complex, off: float) -> Region:
    """Return what of a region lies farther than `off` from the origin in a direction."""
    return keep_left(region, StraightLine(way * off, way * -1j))
