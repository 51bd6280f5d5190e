"""The curve of a recipe, drafted anew from the design alone.

s is the seam allowance, u the finished side of a unit. A circle of radius r drawn as it is meets the sewn seam
at a = √(r²−s²) − s from the finished corner and peaks there by 2·asin(s/r). A circle sewn true with finished
radius R is traced as the sweep of its disc over a square of side 2s: it meets the seam at R and does not peak.
Other outlines have no closed forms: `outlined` measures them as polygons.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from quarterturn.design import Curve, Design, DrawnDiameter, DrawnOutline, FinishedRadius, PathsFlow, Recipe
from quarterturn.measure import Length
from quarterturn.proof.checks.outlined import Meets, measured


@dataclass(frozen=True, slots=True)
class Draft:
    """Measures of a traced shape in inches and degrees, about the middle of its master."""

    width: float
    height: float
    bend: float
    """The radius of its tightest curve."""
    room: float
    """The radius of the largest disc in it."""
    crossing: float
    """From the finished corner to where its edge meets a seam, at the farthest."""
    peak: float | None
    """The corner that the rejoined curve makes; None where there is no closed form."""
    edge: float
    area_left: float
    """Sewn area of the shape in the units of a master over what is traced."""
    same_mirrored: bool
    kinds: Mapping[str, int]
    """The names of the kinds of unit, and how many of each a master gives; where there is one it has no name."""
    meets: Meets

    @property
    def reach(self) -> float:
        """Return half the larger side."""
        return max(self.width, self.height) / 2


def draft_of(design: Design, recipe: Recipe) -> Draft:
    """Draft the shape of a recipe."""
    size, seam = recipe.size, float(design.making.seam)
    if isinstance(size, DrawnOutline):
        return _outlined(size, recipe.curve, design.making.seam)
    if recipe.curve is Curve.SEWN_TRUE:
        return _sewn_true(_finished_radius(size, recipe, seam), seam)
    return _as_drawn(_drawn_radius(size, recipe, seam), seam)


def drafts_of(design: Design) -> list[tuple[Recipe, Draft]]:
    """Draft the shapes of all recipes."""
    return [(recipe, draft_of(design, recipe)) for recipe in design.recipes]


@cache
def _outlined(size: DrawnOutline, curve: Curve, seam: Length) -> Draft:
    found = measured(size, curve, seam)
    return Draft(
        width=found.width,
        height=found.height,
        bend=found.bend,
        room=found.room,
        crossing=max((at for places in found.meets.values() for at, _ in places), default=0.0),
        peak=None,
        edge=found.edge,
        area_left=found.area_left,
        same_mirrored=found.same_mirrored,
        kinds=found.kinds,
        meets=found.meets,
    )


Round = DrawnDiameter | FinishedRadius | PathsFlow


def _finished_radius(size: Round, recipe: Recipe, seam: float) -> float:
    if isinstance(size, DrawnDiameter):
        return float(size.diameter) / 2 - seam
    return _meeting_place(size, recipe)


def _drawn_radius(size: Round, recipe: Recipe, seam: float) -> float:
    if isinstance(size, DrawnDiameter):
        return float(size.diameter) / 2
    return math.hypot(_meeting_place(size, recipe) + seam, seam)


def _meeting_place(size: FinishedRadius | PathsFlow, recipe: Recipe) -> float:
    if isinstance(size, FinishedRadius):
        return float(size.radius)
    return float(recipe.finished) / 2


def _sewn_true(radius: float, seam: float) -> Draft:
    traced = math.pi * radius**2 + 8 * radius * seam + 4 * seam**2
    left = math.pi * radius**2 / traced
    edge = 2 * math.pi * radius + 8 * seam
    return _circular(radius + seam, radius, crossing=radius, peak=0.0, edge=edge, area_left=left)


def _as_drawn(radius: float, seam: float) -> Draft:
    end = math.sqrt(radius**2 - seam**2)
    # The quarter disc beyond both seams: the sector between its two crossings, less the two triangles at its corner.
    angle = math.pi / 2 - 2 * math.asin(seam / radius)
    sewn = radius**2 * angle / 2 - seam * (end - seam)
    peak = math.degrees(2 * math.asin(seam / radius))
    left = sewn / (math.pi * radius**2 / 4)
    edge = 2 * math.pi * radius
    return _circular(radius, radius, crossing=end - seam, peak=peak, edge=edge, area_left=left)


def _circular(
    reach: float, bend: float, *, crossing: float, peak: float, edge: float, area_left: float
) -> Draft:
    meets = ((crossing, True),)
    return Draft(
        width=2 * reach,
        height=2 * reach,
        bend=bend,
        room=reach,
        crossing=crossing,
        peak=peak,
        edge=edge,
        area_left=area_left,
        same_mirrored=True,
        kinds={"": 4},
        meets={("", "level"): meets, ("", "upright"): meets},
    )
