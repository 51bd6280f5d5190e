"""The curve of a recipe, drafted anew from the design alone by closed forms.

s is the seam allowance, u the finished side of a unit. A circle of radius r drawn as it is meets the sewn seam
at a = √(r²−s²) − s from the finished corner and peaks there by 2·asin(s/r). A circle sewn true with finished
radius R is traced as the sweep of its disc over a square of side 2s: it meets the seam at R and does not peak.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from quarterturn.design import Curve, Design, DrawnDiameter, FinishedRadius, Recipe


@dataclass(frozen=True, slots=True)
class Draft:
    """Measures of a traced shape in inches and degrees. `reach` is half its width, `bend` its curve's radius."""

    reach: float
    bend: float
    crossing: float
    peak: float
    edge: float
    area_left: float
    """Sewn area of the shape in a unit over the quarter of what is traced."""


def draft_of(design: Design, recipe: Recipe) -> Draft:
    """Draft the shape of a recipe."""
    seam = float(design.making.seam)
    if recipe.curve is Curve.SEWN_TRUE:
        return _sewn_true(_finished_radius(recipe, seam), seam)
    return _as_drawn(_drawn_radius(recipe, seam), seam)


def drafts_of(design: Design) -> list[tuple[Recipe, Draft]]:
    """Draft the shapes of all recipes."""
    return [(recipe, draft_of(design, recipe)) for recipe in design.recipes]


def _finished_radius(recipe: Recipe, seam: float) -> float:
    if isinstance(recipe.size, DrawnDiameter):
        return float(recipe.size.diameter) / 2 - seam
    return _meeting_place(recipe)


def _drawn_radius(recipe: Recipe, seam: float) -> float:
    if isinstance(recipe.size, DrawnDiameter):
        return float(recipe.size.diameter) / 2
    return math.hypot(_meeting_place(recipe) + seam, seam)


def _meeting_place(recipe: Recipe) -> float:
    if isinstance(recipe.size, FinishedRadius):
        return float(recipe.size.radius)
    return float(recipe.finished) / 2


def _sewn_true(radius: float, seam: float) -> Draft:
    traced = math.pi * radius**2 + 8 * radius * seam + 4 * seam**2
    return Draft(
        reach=radius + seam,
        bend=radius,
        crossing=radius,
        peak=0.0,
        edge=2 * math.pi * radius + 8 * seam,
        area_left=math.pi * radius**2 / traced,
    )


def _as_drawn(radius: float, seam: float) -> Draft:
    end = math.sqrt(radius**2 - seam**2)
    # The quarter disc beyond both seams: the sector between its two crossings, less the two triangles at its corner.
    angle = math.pi / 2 - 2 * math.asin(seam / radius)
    sewn = radius**2 * angle / 2 - seam * (end - seam)
    return Draft(
        reach=radius,
        bend=radius,
        crossing=end - seam,
        peak=math.degrees(2 * math.asin(seam / radius)),
        edge=2 * math.pi * radius,
        area_left=sewn / (math.pi * radius**2 / 4),
    )
