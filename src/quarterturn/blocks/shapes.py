"""The shape to trace for a recipe, with the lines of its web ring."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TypeAlias

from quarterturn.blocks.model import FusedShape
from quarterturn.design import (
    Curve,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    Making,
    PathsFlow,
    Recipe,
    wanted_outline,
)
from quarterturn.geometry import Path, Region, StraightLine, circle, offset_path, path_bounds, spread

SMALLEST_HOLLOW = 0.5
"""A hollow narrower than this across, in inches, is not worth cutting: the ring stays whole (common practice)."""


def wanted_path(recipe: Recipe, making: Making) -> Path:
    """Return the outline that the designer means, about the middle of the master.

    As drawn it is traced; sewn true it is what is left when the seams are sewn.
    """
    size = recipe.size
    if isinstance(size, DrawnOutline):
        return wanted_outline(size, recipe.curve, making.seam)
    radius = true_radius if recipe.curve is Curve.SEWN_TRUE else drawn_radius
    return circle(radius(size, recipe, making))


Round: TypeAlias = DrawnDiameter | FinishedRadius | PathsFlow


def drawn_radius(size: Round, recipe: Recipe, making: Making) -> float:
    """Return the radius of a plain circle: as stated, or such that it meets the sewn seam where wanted.

    A circle of radius r meets the seam a = √(r²−s²) − s from the finished corner, so r = hypot(a + s, s).
    """
    if isinstance(size, DrawnDiameter):
        return float(size.diameter / 2)
    seam = float(making.seam)
    return math.hypot(_wanted_crossing(size, recipe) + seam, seam)


def true_radius(size: Round, recipe: Recipe, making: Making) -> float:
    """Return the finished radius of a shape sewn true; its traced width is two seam allowances more."""
    if isinstance(size, DrawnDiameter):
        return float(size.diameter / 2 - making.seam)
    return _wanted_crossing(size, recipe)


def _wanted_crossing(size: FinishedRadius | PathsFlow, recipe: Recipe) -> float:
    if isinstance(size, FinishedRadius):
        return float(size.radius)
    return float(recipe.finished / 2)  # paths flow: the middle of the side


def fused_shape(recipe: Recipe, making: Making, cuts: Sequence[StraightLine]) -> FusedShape:
    """Return the shape of a recipe with its ring: web from `ring_out` outside the line to `ring_in` inside.

    What is sewn true is slashed along the cuts and spread by two seam allowances.
    """
    wanted = wanted_path(recipe, making)
    sewn_true = recipe.curve is Curve.SEWN_TRUE
    traced = spread(wanted, cuts, float(making.seam)) if sewn_true else wanted
    bounds = path_bounds(traced)
    return FusedShape(
        name=recipe.name,
        wanted=wanted,
        traced=traced,
        ring_out=offset_path(traced, float(making.ring_out)),
        ring_in=_hollow(traced, float(making.ring_in)),
        edge=traced.length(),
        width=bounds.width,
        height=bounds.height,
        underlap=making.cut_away,
    )


def _hollow(traced: Path, ring: float) -> Region:
    bounds = path_bounds(traced)
    if min(bounds.width, bounds.height) - 2 * ring < SMALLEST_HOLLOW:
        return Region(())
    return offset_path(traced, -ring)
