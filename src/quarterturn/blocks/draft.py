"""Draft a recipe: cut the master's exact outlines apart, and sort what comes out into kinds of unit."""

from __future__ import annotations

from quarterturn.blocks.apart import Layers, pieces_of
from quarterturn.blocks.facts import curve_facts
from quarterturn.blocks.kinds import sort_into_kinds
from quarterturn.blocks.model import GROUND, Blocks, FusedShape, Layer, Master
from quarterturn.blocks.rejoin import rejoin
from quarterturn.blocks.shapes import fused_shapes
from quarterturn.design import Design, Making, Recipe, cut_lines
from quarterturn.geometry import Path, Region, rectangle
from quarterturn.measure import Length


def draft_blocks(design: Design) -> Blocks:
    """Draft every recipe of a design."""
    masters = {recipe.name: draft_master(recipe, design.making) for recipe in design.recipes}
    return Blocks(
        tuple(masters.values()), tuple(rejoin(recipe, masters[recipe.of]) for recipe in design.rejoined)
    )


def draft_master(recipe: Recipe, making: Making) -> Master:
    """Draft one recipe: its shapes, its cuts, and the kinds of unit that the cuts leave."""
    cuts = cut_lines(recipe)
    shapes = fused_shapes(recipe, making, cuts)
    trimmed = box_about_middle(recipe.width - recipe.trim_width, recipe.height - recipe.trim_height)
    pieces = pieces_of(_layers(recipe, shapes), cuts, trimmed, float(making.seam))
    kinds = sort_into_kinds(pieces, making.seam, apart=bool(recipe.base))
    return Master(
        recipe=recipe.name,
        width=recipe.width,
        height=recipe.height,
        trim_width=recipe.trim_width,
        trim_height=recipe.trim_height,
        seam=making.seam,
        shapes=shapes,
        cuts=cuts,
        units=kinds.units,
        parts=kinds.parts,
        facts=curve_facts(kinds.units, kinds.parts, shapes, cuts, trimmed),
    )


def box_about_middle(width: Length, height: Length) -> Path:
    """Return the upright rectangle of this size about the middle of the master."""
    across, down = float(width / 2), float(height / 2)
    return rectangle(-across, -down, across, down)


def _layers(recipe: Recipe, shapes: tuple[FusedShape, ...]) -> Layers:
    ground = Layer(GROUND, Region((box_about_middle(recipe.width, recipe.height),)))
    return (ground, *(Layer(shape.part, shape.region, k) for k, shape in enumerate(shapes)))
