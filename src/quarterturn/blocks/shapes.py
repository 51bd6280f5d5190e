"""The shapes to trace for a recipe, each with the lines of its web ring."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
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
    RecipeKind,
    ShapeOn,
    meant_paths,
    traced_path,
    wanted_outline,
)
from quarterturn.geometry import (
    STAY,
    Motion,
    Path,
    Region,
    StraightLine,
    circle,
    congruence,
    offset_path,
    path_bounds,
    same_region,
)

SMALLEST_HOLLOW = 0.5
"""A hollow narrower than this across, in inches, is not worth cutting: the ring stays whole (common practice)."""


def fused_shapes(recipe: Recipe, making: Making, cuts: Sequence[StraightLine]) -> tuple[FusedShape, ...]:
    """Return the shapes of a recipe in the order of fusing, equal ones under one name."""
    shapes = [_fused(recipe, shape, making, cuts) for shape in recipe.shapes]
    return tuple(_named(recipe, shapes))


def wanted_paths(recipe: Recipe, shape: ShapeOn, making: Making) -> tuple[Path, Path | None]:
    """Return the outline that the designer means, about the middle of the master, and its hole if it has one.

    As drawn it is traced; sewn true it is what is left when the seams are sewn.
    """
    size = shape.size
    if recipe.kind is RecipeKind.SHAPES:
        return meant_paths(shape)
    if isinstance(size, DrawnOutline):
        return wanted_outline(size, recipe.curve, making.seam), None
    radius = true_radius if recipe.curve is Curve.SEWN_TRUE else drawn_radius
    return circle(radius(size, recipe, making)), None


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


def _fused(recipe: Recipe, shape: ShapeOn, making: Making, cuts: Sequence[StraightLine]) -> FusedShape:
    """Return a shape with its ring: web from `ring_out` outside the line to `ring_in` inside."""
    wanted, wanted_hole = wanted_paths(recipe, shape, making)
    traced = traced_path(wanted, recipe.curve, cuts, making.seam)
    hole = traced_path(wanted_hole, recipe.curve, cuts, making.seam) if wanted_hole else None
    bounds = path_bounds(traced)
    return FusedShape(
        name=recipe.base or recipe.name,
        wanted=wanted,
        traced=traced,
        ring_out=_web(traced, hole, float(making.ring_out)),
        ring_in=_hollow(traced, hole, float(making.ring_in)),
        edge=traced.length() + (hole.length() if hole else 0.0),
        width=bounds.width,
        height=bounds.height,
        part=shape.part,
        hole=hole,
        wanted_hole=wanted_hole,
        underlap=making.cut_away if shape.underlap is None else shape.underlap,
    )


def _web(traced: Path, hole: Path | None, ring: float) -> Region:
    """Return the web that is cut out round a shape: beyond its line by the ring, on either side where it has a hole."""
    outer = offset_path(traced, ring)
    if hole is None:
        return outer
    return Region((*outer.paths, *_as_holes(offset_path(hole.reversed(), -ring))))


def _hollow(traced: Path, hole: Path | None, ring: float) -> Region:
    """Return the web that is taken out inside the line; none where too little would be left to be worth it."""
    bounds = path_bounds(traced)
    across = min(bounds.width, bounds.height)
    if hole is not None:
        inside = path_bounds(hole)
        across = (across - max(inside.width, inside.height)) / 2
    if across - 2 * ring < SMALLEST_HOLLOW:
        return Region(())
    hollow = offset_path(traced, -ring)
    if hole is None:
        return hollow
    return Region((*hollow.paths, *_as_holes(offset_path(hole.reversed(), ring))))


def _as_holes(region: Region) -> tuple[Path, ...]:
    return tuple(path.reversed() for path in region.paths)


def _named(recipe: Recipe, shapes: Sequence[FusedShape]) -> list[FusedShape]:
    """Call each shape by its recipe and part; outlines of one part that differ are numbered, equal ones share a name.

    The only shape of a recipe is called as its recipe. Where pieces are kept apart, since a print must stand upright,
    a shape that is turned is not equal: its print would be turned too. What is equal there is called as in the recipe
    of the file, whose templates serve both.
    """
    if len(shapes) == 1:
        return list(shapes)
    firsts: list[FusedShape] = []
    named = [_called(recipe, shape, firsts) for shape in shapes]
    if not recipe.origin:
        return named
    return [
        shape if shape.motion.factor == 1 else _called(recipe, shape, firsts, turned=False) for shape in named
    ]


def _called(
    recipe: Recipe, shape: FusedShape, firsts: list[FusedShape], *, turned: bool = True
) -> FusedShape:
    """Return a shape with the name of the first that is equal, or as the first of another name."""
    alike = ((first, _laying(first, shape)) for first in firsts if first.part == shape.part)
    laid = next(((first.name, way) for first, way in alike if way and (turned or way.factor == 1)), None)
    if laid:
        return replace(shape, name=laid[0], motion=laid[1])
    count = 1 + sum(first.part == shape.part for first in firsts)
    number = f" {count}" if count > 1 else ""
    first = replace(shape, name=f"{recipe.base or recipe.name} {shape.part}{number}", motion=STAY)
    firsts.append(first)
    return first


def _laying(first: FusedShape, shape: FusedShape) -> Motion | None:
    """Return the turn and shift that lay an outline on another, holes and all, if there is one."""
    if (first.hole is None) != (shape.hole is None) or first.underlap != shape.underlap:
        return None
    for motion in (STAY, *congruence(first.traced, shape.traced)):
        if _covers(first, shape, motion):
            return motion
    return None


def _covers(first: FusedShape, shape: FusedShape, motion: Motion) -> bool:
    return same_region(motion.region(first.region), shape.region)
