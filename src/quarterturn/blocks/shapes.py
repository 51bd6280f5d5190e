"""The shape to trace for a recipe, with the lines of its web ring."""

from __future__ import annotations

import math

from quarterturn.blocks.model import FusedShape
from quarterturn.design import Curve, DrawnDiameter, FinishedRadius, Making, Recipe
from quarterturn.geometry import Path, Region, circle, offset_path, path_bounds, spread_circle

SMALLEST_HOLLOW = 0.5
"""A hollow narrower than this across, in inches, is not worth cutting: the ring stays whole (common practice)."""


def traced_path(recipe: Recipe, making: Making) -> Path:
    """Return the outline to trace, about the middle of the master.

    As drawn it is a circle, sewn true the circle slashed along both cuts and spread by two seam allowances.
    """
    seam = float(making.seam)
    if recipe.curve is Curve.SEWN_TRUE:
        return spread_circle(true_radius(recipe, making), seam)
    return circle(drawn_radius(recipe, making))


def drawn_radius(recipe: Recipe, making: Making) -> float:
    """Return the radius of a plain circle: as stated, or such that it meets the sewn seam where wanted.

    A circle of radius r meets the seam a = √(r²−s²) − s from the finished corner, so r = hypot(a + s, s).
    """
    if isinstance(recipe.size, DrawnDiameter):
        return float(recipe.size.diameter / 2)
    seam = float(making.seam)
    return math.hypot(_wanted_crossing(recipe) + seam, seam)


def true_radius(recipe: Recipe, making: Making) -> float:
    """Return the finished radius of a shape sewn true; its traced width is two seam allowances more."""
    if isinstance(recipe.size, DrawnDiameter):
        return float(recipe.size.diameter / 2 - making.seam)
    return _wanted_crossing(recipe)


def _wanted_crossing(recipe: Recipe) -> float:
    if isinstance(recipe.size, FinishedRadius):
        return float(recipe.size.radius)
    return float(recipe.finished / 2)  # paths flow: the middle of the side


def fused_shape(recipe: Recipe, making: Making) -> FusedShape:
    """Return the shape of a recipe with its ring: web from `ring_out` outside the line to `ring_in` inside."""
    traced = traced_path(recipe, making)
    bounds = path_bounds(traced)
    return FusedShape(
        name=recipe.name,
        traced=traced,
        ring_out=offset_path(traced, float(making.ring_out)),
        ring_in=_hollow(traced, float(making.ring_in)),
        edge=traced.length(),
        width=bounds.width,
        height=bounds.height,
    )


def _hollow(traced: Path, ring: float) -> Region:
    bounds = path_bounds(traced)
    if min(bounds.width, bounds.height) - 2 * ring < SMALLEST_HOLLOW:
        return Region(())
    return offset_path(traced, -ring)
