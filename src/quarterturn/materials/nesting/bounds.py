"""Lengths and numbers of sheets below which no nesting can stay, whatever lies in centres: by area and by size."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.geometry import Path, Region, path_bounds, quarter_turns, region_bounds
from quarterturn.materials.nesting.bodies import Catalogue
from quarterturn.materials.nesting.lines import FINE, inner_polygon, line_bound
from quarterturn.materials.nesting.model import TOUCH, Scrap
from quarterturn.materials.nesting.rows import diameter


@dataclass(frozen=True, slots=True)
class Wanted:
    """Shapes by their number, and how many of each; which of them lie outermost in every nesting."""

    catalogue: Catalogue
    counts: Sequence[int]
    scraps: Sequence[Scrap]

    def outermost(self) -> list[int]:
        """Return the shapes that fit no hollow and no scrap, by their boxes and areas."""
        regions = [region for region, _, _ in self.hollows()]
        wanted = (shape for shape, count in enumerate(self.counts) if count)
        return [shape for shape in wanted if not any(self.may_fit(shape, region) for region in regions)]

    def hollows(self) -> Iterator[tuple[Region, int, float]]:
        """Return all hollows and scraps, how many there are of each, and by how much a grown shape may stick out.

        A hollow is a whole gap away from what it holds, so that this stays in it when grown by half the gap.
        """
        for shape, count in zip(self.catalogue.shapes, self.counts, strict=True):
            if count and not shape.hollow.is_empty():
                yield shape.hollow, count, 0.0
        for scrap in self.scraps:
            if not scrap.region.is_empty():
                yield scrap.region, scrap.count, self.catalogue.gap / 2

    def may_fit(self, shape: int, region: Region) -> bool:
        """Tell whether the box, in some turn, and the area of a shape are no larger than those of a region."""
        box, outline = region_bounds(region), path_bounds(self.catalogue.shapes[shape].outline)
        sides = sorted((outline.width, outline.height)), sorted((box.width, box.height))
        fits = all(one <= other + 1e-6 for one, other in zip(*sides, strict=True))
        return fits and self.catalogue.area(shape) <= region.area() + 1e-6


def grown_area(path: Path, gap: float) -> float:
    """Return an area that the outline grown by half the gap has at least."""
    return path.area() if gap <= 2 * FINE else max(path.area(), float(inner_polygon(path, gap / 2).area))


def area_on_the_roll(wanted: Wanted) -> float:
    """Return the area, grown by half the gap, of what lies outermost at least.

    What may lie in hollows and scraps is no more than all shapes that fit one, nor than these can hold.
    """
    gap = wanted.catalogue.gap
    areas = [grown_area(shape.outline, gap) for shape in wanted.catalogue.shapes]
    must = set(wanted.outermost())
    total = sum(count * area for count, area in zip(wanted.counts, areas, strict=True))
    movable = sum(n * a for k, (n, a) in enumerate(zip(wanted.counts, areas, strict=True)) if k not in must)
    return total - min(movable, _capacity(wanted))


def _capacity(wanted: Wanted) -> float:
    """Return the area, of shapes grown by half the gap, that hollows and scraps hold at most."""
    fitting = [shape for shape, count in enumerate(wanted.counts) if count]
    total, gap = 0.0, wanted.catalogue.gap
    for region, count, spill in wanted.hollows():
        if any(wanted.may_fit(shape, region) for shape in fitting):
            total += count * (
                region.area() + spill * (region.perimeter() + len(region.paths) * math.pi * gap)
            )
    return total


def roll_bound(wanted: Wanted, width: float) -> float:
    """Return a length of a roll of this width that no nesting is shorter than."""
    by_area = area_on_the_roll(wanted) / (width + wanted.catalogue.gap) - wanted.catalogue.gap
    must = wanted.outermost()
    bodies = {shape: wanted.catalogue.bodies(shape) for shape in must}
    tallest = max((min(body.box.height for body in bodies[shape]) for shape in must), default=0.0)
    circles = circle_bound(wanted, must, width)
    by_lines = line_bound(wanted.catalogue, {shape: wanted.counts[shape] for shape in must}, width)
    return max(0.0, by_area, tallest, circles, by_lines)


def circle_bound(wanted: Wanted, must: Sequence[int], width: float) -> float:
    """Return the bound for circles of at least a diameter d, the best over d.

    Their N middles, D apart, lie in a rectangle w × l in units of D, so that N ≤ 2/√3·w·l + w + l + 1 (N. Oler,
    *An inequality in the geometry of numbers*, Acta Mathematica 105, 1961).
    """
    sizes = {shape: diameter(wanted.catalogue.shapes[shape]) for shape in must}
    circles = {shape: size for shape, size in sizes.items() if size is not None}
    best = 0.0
    for least in set(circles.values()):
        count = sum(wanted.counts[shape] for shape, size in circles.items() if size >= least)
        apart = least + wanted.catalogue.gap
        across = max(0.0, width - least) / apart
        along = max(0.0, (count - 1 - across) / (2 / math.sqrt(3) * across + 1))
        best = max(best, least + along * apart)
    return best


def sheet_bound(wanted: Wanted, width: float, height: float) -> int:
    """Return a number of sheets that no nesting is below: by area, and by shapes that all cover the middle of one."""
    gap = wanted.catalogue.gap
    by_area = area_on_the_roll(wanted) / ((width + gap) * (height + gap))
    must = wanted.outermost()
    alone = sum(wanted.counts[shape] for shape in must if _covers_middle(wanted, shape, width, height))
    return max(math.ceil(by_area - 1e-6), alone, 1 if must else 0)


def _covers_middle(wanted: Wanted, shape: int, width: float, height: float) -> bool:
    """Tell whether a shape, grown by half the gap, covers the middle of the sheet wherever it lies on it."""
    import shapely

    for body in wanted.catalogue.bodies(shape):
        outline = quarter_turns(body.turn).path(wanted.catalogue.shapes[shape].outline)
        across = sorted((body.box.right - width / 2, body.box.left + width / 2))
        along = sorted((body.box.bottom - height / 2, body.box.top + height / 2))
        places = shapely.box(across[0], along[0], across[1], along[1])
        fits = body.box.width <= width and body.box.height <= height
        if fits and not inner_polygon(outline, wanted.catalogue.gap / 2).buffer(-TOUCH).covers(places):
            return False
    return True
