"""What can be nested: names of their own, outlines that bound an area, hollows within them."""

from __future__ import annotations

import math
from collections.abc import Sequence

from quarterturn.geometry import Path, flatten_path
from quarterturn.materials.nesting.model import Scrap, Shape

FLAT = 1e-3
"""Chords are within this of their curve when an outline is looked at, in inches."""


def validate(shapes: Sequence[Shape], scraps: Sequence[Scrap], gap: float, size: tuple[float, float]) -> None:
    """Raise ValueError unless shapes have names of their own, sound outlines, turns, and counts of 0 or more."""
    names = [[one.name for one in things] for things in (shapes, scraps)]
    if any(len(set(each)) < len(each) for each in names):
        raise ValueError("two shapes, or two scraps, have one name")
    if not (gap >= 0 and math.isfinite(gap) and min(size) > 0 and math.isfinite(size[0])):
        raise ValueError("a gap is 0 or more, and a roll or a sheet has a width and a height above 0")
    for shape in shapes:
        if shape.count < 0 or not shape.turns:
            raise ValueError(f"{shape.name} has a count below 0, or may lie in no turn")
        if not _is_outline(shape.outline) or not all(_is_outline(p) for p in shape.hollow.paths):
            raise ValueError(f"{shape.name} is no outline that bounds an area")
        if shape.outline.area() <= shape.hollow.area() or not _covers(shape):
            raise ValueError(f"the hollow of {shape.name} reaches out of its outline")
    for scrap in scraps:
        if scrap.count < 0 or not all(_is_outline(path) for path in scrap.region.paths):
            raise ValueError(f"{scrap.name} has a count below 0, or is no area")


def _is_outline(path: Path) -> bool:
    """Tell whether a path is closed and crosses itself nowhere."""
    import shapely

    corners = [(p.real, p.imag) for p in flatten_path(path, FLAT)] if path.segments else []
    return len(corners) > 2 and path.is_closed() and shapely.Polygon(corners).is_valid


def _covers(shape: Shape) -> bool:
    """Tell whether the hollow lies within the outline."""
    import shapely

    outer = shapely.Polygon([(p.real, p.imag) for p in flatten_path(shape.outline, FLAT)]).buffer(2 * FLAT)
    return all(
        outer.covers(shapely.Polygon([(p.real, p.imag) for p in flatten_path(path, FLAT)]))
        for path in shape.hollow.paths
    )
