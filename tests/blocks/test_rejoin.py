"""Halves of two masters, rejoined along the cut."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import Rejoining, draft_master
from quarterturn.blocks.rejoin import rejoin
from quarterturn.design import FIRST, SECOND, Curve, DrawnOutline, Recipe, Rejoined, ShapeOn, default_making
from quarterturn.design.cut_recipes import rejoined_size
from quarterturn.geometry import Region, rectangle, uncovered_area
from quarterturn.measure import Length, Units, inches
from tests.blocks.test_any_recipe import ANY, NOTHING, heart
from tests.strategies.recipes import SEAM, recipe_of, recipes

MAKING = default_making(Units.INCH)


SIDE = inches(8, 3, 4)


def hearts(side: Length = SIDE, curve: Curve = Curve.AS_DRAWN) -> Recipe:
    """A square with two hearts on one diagonal, their tips toward its corners, cut corner to corner through both."""
    off = inches(1, 7, 8)
    pair = (heart(inches(4), -off, -off, 135), heart(inches(4), off, off, -45))
    return recipe_of(side, side, NOTHING, "one diagonal", pair, curve)


def rejoined(recipe: Recipe, trim: Length = NOTHING) -> Rejoining:
    width, height = rejoined_size(recipe, SEAM)
    named = Rejoined("blocks", recipe.name, width - trim, height - trim, trim, trim)
    return rejoin(named, draft_master(recipe, MAKING))


@pytest.mark.parametrize("curve", Curve)
def test_two_squares_of_hearts_in_opposite_colours_make_two_identical_blocks(curve: Curve) -> None:
    """Check value 14.4 (common practice, no source): 8 3/4" squares make 8 3/4" − 1/4"·(2 + √2) = 7.8964" finished,
    and the two blocks that a pair of masters gives are one kind; no seam is curved."""
    made = rejoined(hearts(curve=curve))
    assert made.blocks == (0, 0)
    assert made.per_pair() == 2
    (block,) = made.units
    assert float(block.width) == pytest.approx(7.8964, abs=5e-5)
    assert float(block.width) == pytest.approx(8.75 - 0.25 * (2 + math.sqrt(2)), abs=1e-9)
    assert block.is_rectangle
    assert [half.part for half in block.halves] == [FIRST, SECOND]


def test_a_published_block_of_hearts_and_gizzards() -> None:
    """Hearts and Gizzards of 15" finished has four quadrants of 7 1/2", from 8 3/8" squares cut once into triangles
    (allpeoplequilt.com, hearts-and-gizzards block, 2014): 7 1/2" and the 7/8" of the handbook; here 7.5214" exactly."""
    (block,) = rejoined(hearts(inches(8, 3, 8))).units
    assert float(block.width) == pytest.approx(7.5, abs=0.03)
    assert block.width > inches(7, 1, 2)


def test_the_block_can_be_trimmed_to_a_ruler_size() -> None:
    recipe = hearts()
    whole = rejoined_size(recipe, SEAM)[0]
    (block,) = rejoined(recipe, whole - inches(7, 7, 8)).units
    assert (block.width, block.height) == (inches(7, 7, 8), inches(7, 7, 8))


@given(recipes(), st.sampled_from(["down", "across", "one diagonal"]))
@ANY
def test_a_block_is_filled_by_its_two_halves(recipe: Recipe, cuts: str) -> None:
    """Whatever the master: the halves cover the trimmed block without a gap and without lying over one another."""
    master = recipe_of(recipe.width, recipe.height, recipe.trim_width, cuts, recipe.shapes, recipe.curve)
    for block in rejoined(master).units:
        grounds = [layer.region for layer in block.cut_layers if layer.part.endswith("/ground")]
        whole = Region((block.cut_outline,))
        assert sum(map(Region.area, grounds)) == pytest.approx(whole.area(), abs=1e-6)
        assert uncovered_area(whole, grounds) < 1e-6
        assert block.width == rejoined_size(master, SEAM)[0]


def test_halves_that_are_no_turn_of_one_another_make_two_kinds_of_block() -> None:
    spot = (ShapeOn("moon", DrawnOutline("circle", inches(2), 0, 0), inches(-2), inches(1)),)
    made = rejoined(recipe_of(inches(8), inches(8), NOTHING, "down", spot, Curve.AS_DRAWN))
    assert [unit.quarter for unit in made.units] == ["lh", "rh"]
    assert sorted(made.blocks) == [0, 1]
    left = made.units[0]
    parts = [layer.part for layer in left.sewn_layers]
    assert parts == ["first/ground", "first/moon", "second/ground"]
    assert (left.width, left.height) == (inches(7), inches(7, 1, 2))


def test_halves_lie_where_their_motions_say() -> None:
    """Each half, moved from its own frame, shows the same cloth as the block does of it."""
    recipe = hearts()
    master, made = draft_master(recipe, MAKING), rejoined(recipe)
    (block,) = made.units
    inside = rectangle(0, 0, float(block.width), float(block.height))
    for half in block.halves:
        shown = [layer.region for layer in block.sewn_layers if layer.part == f"{half.part}/heart"]
        moved = [
            half.motion.region(layer.region)
            for layer in master.units[half.unit].sewn_layers
            if layer.part == "heart"
        ]
        assert sum(map(Region.area, moved)) == pytest.approx(sum(map(Region.area, shown)), abs=1e-9)
        assert all(uncovered_area(region, shown) < 1e-4 for region in moved)
        assert all(uncovered_area(region, [Region((inside,))]) < 1e-6 for region in moved)


def test_the_heart_is_whole_in_the_block_when_it_is_sewn_true() -> None:
    """A half of the ground's and a half of the shape's cloth make one heart of the size that was meant."""
    recipe = hearts(curve=Curve.SEWN_TRUE)
    (block,) = rejoined(recipe).units
    meant = draft_master(recipe, MAKING).shapes[0].wanted.area()
    sewn = sum(layer.region.area() for layer in block.sewn_layers if layer.part.endswith("/heart"))
    assert sewn == pytest.approx(2 * meant, abs=1e-9)
    drawn = rejoined(replace(recipe, curve=Curve.AS_DRAWN)).units[0]
    eaten = sum(layer.region.area() for layer in drawn.sewn_layers if layer.part.endswith("/heart"))
    assert eaten < sewn
