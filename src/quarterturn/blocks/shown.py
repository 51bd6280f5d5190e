"""How much of each part shows in a sewn unit."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

from quarterturn.blocks.model import Unit
from quarterturn.geometry import as_polygon, joined, without


def shown_areas(unit: Unit) -> Mapping[str, float]:
    """Return the area in square inches that each part shows inside the seams, the later layers lying on top.

    The ground shows what the shapes leave of the whole, to the last digit where no two of them overlap.
    """
    ground, *shapes = unit.sewn_layers
    areas: dict[str, float] = defaultdict(float)
    if len(shapes) == 1:
        areas[shapes[0].part] = shapes[0].region.area()
        areas[ground.part] = ground.region.area() - shapes[0].region.area()
        return areas
    covered = None
    for layer in reversed(unit.sewn_layers):
        mine = as_polygon(layer.region)
        areas[layer.part] += float((mine if covered is None else without(mine, covered)).area)
        covered = mine if covered is None else joined(covered, mine)
    return areas
