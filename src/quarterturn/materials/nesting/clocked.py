"""Shapes on a roll by the spyrrow library, which searches as long as it is told: never the same twice for certain."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.geometry import Point
from quarterturn.materials.nesting.bodies import Catalogue, grown_corners
from quarterturn.materials.nesting.rooms import Laid, settled

if TYPE_CHECKING:
    import spyrrow
    from shapely.geometry.base import BaseGeometry

MARGIN = 1e-4
"""The library reckons in single precision: bodies are drawn out by this for it, in inches."""


def search(catalogue: Catalogue, counts: Sequence[int], width: float, seconds: int) -> list[Laid] | None:
    """Return shapes laid on a roll by a search of so many seconds; None where the library cannot be asked.

    It is not asked where a shape, drawn out by the margin, is as wide as the roll, or is in more than one part. What
    it returns is to be checked.
    """
    wanted = {shape: count for shape, count in enumerate(counts) if count}
    outlines = {shape: _drawn_out(catalogue, shape) for shape in wanted}
    height = width + catalogue.gap
    if not all(_is_possible(catalogue, shape, outline, height) for shape, outline in outlines.items()):
        return None
    items = [_item(catalogue, shape, outlines[shape], count) for shape, count in wanted.items()]
    found = _solved(items, height, seconds)
    return None if found is None else _laid(catalogue, found, width)


def _drawn_out(catalogue: Catalogue, shape: int) -> BaseGeometry:
    return grown_corners(catalogue.shapes[shape].outline, catalogue.gap / 2 + MARGIN)


def _is_possible(catalogue: Catalogue, shape: int, outline: BaseGeometry, height: float) -> bool:
    """Tell whether the library takes an outline: it gives up for good on what crosses itself or is too wide."""
    if outline.geom_type != "Polygon" or not outline.is_valid or outline.is_empty:
        return False
    left, top, right, low = outline.bounds
    across = {0: right - left, 1: low - top}
    return all(across[turn % 2] < height for turn in catalogue.shapes[shape].turns)


def _item(catalogue: Catalogue, shape: int, outline: BaseGeometry, count: int) -> spyrrow.Item:
    """Return a shape with its axes swapped, since the library's strip runs along x; so it turns the other way."""
    import spyrrow

    corners = [(y, x) for x, y in outline.exterior.coords[:-1]]
    turns = [float(-90 * turn % 360) for turn in catalogue.shapes[shape].turns]
    return spyrrow.Item(str(shape), corners, demand=count, allowed_orientations=turns)


def _solved(
    items: Sequence[spyrrow.Item], height: float, seconds: int
) -> spyrrow.StripPackingSolution | None:
    """Search; None where the library breaks off, which it does by an exception that is no `Exception`."""
    import spyrrow

    instance = spyrrow.StripPackingInstance("roll", strip_height=height, items=items)
    config = spyrrow.StripPackingConfig(total_computation_time=seconds, seed=1)
    try:
        return instance.solve(config)
    except BaseException as error:
        if type(error).__name__ != "PanicException":
            raise
        return None


def _laid(catalogue: Catalogue, found: spyrrow.StripPackingSolution, width: float) -> list[Laid]:
    """Return what was found with the axes swapped back, the roll from its own edges, and the first shape at 0."""
    placed: list[Laid] = []
    for item in found.placed_items:
        body = catalogue.body(int(item.id), round(-item.rotation / 90) % 4)
        along, across = item.translation
        placed.append((body, complex(across - catalogue.gap / 2, along)))
    first = min(at.imag + body.box.top for body, at in placed)
    return [(body, settled(body, _raised(at, first), width)) for body, at in placed]


def _raised(at: Point, by: float) -> Point:
    return at - 1j * by
