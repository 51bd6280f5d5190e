"""A new recipe begins with units as large as those that the quilt has."""

from __future__ import annotations

from fractions import Fraction

import pytest

from quarterturn.design import Recipe, read_design
from quarterturn.studio.acts import do
from quarterturn.studio.acts.recipes import AddRecipe
from quarterturn.studio.stages import Stages
from tests.samples import ROUNDS


def added(act: AddRecipe, side: str) -> Recipe:
    """Return the recipe that is added to a quilt of units of a side."""
    text = do(act, ROUNDS.replace("finished = '2\"'", f"finished = '{side}'"), Stages()).made.text
    design = read_design(text).design
    assert design
    return design.recipe(act.recipe)


@pytest.mark.parametrize("side", ['2"', '3 1/2"', '6"'])
@pytest.mark.parametrize(
    "act",
    [
        AddRecipe(recipe="newest", kind="circle cut both ways"),
        AddRecipe(recipe="newest", kind="shape cut both ways"),
        AddRecipe(recipe="newest", kind="shapes cut"),
        AddRecipe(recipe="newest", kind="shapes cut", cuts="none"),
    ],
)
def test_its_units_lie_beside_the_others(act: AddRecipe, side: str) -> None:
    recipe, [other] = added(act, side), [added(AddRecipe(recipe="o", kind="circle cut both ways"), side)]
    assert recipe.finished_width == recipe.finished_height == other.finished_width


def test_a_square_cut_once_across_makes_halves_of_two_units_with_what_the_handbook_takes() -> None:
    """Check value 14.4: 8 3/4" squares for blocks of two 4" units (common practice, no source)."""
    recipe = added(AddRecipe(recipe="newest", kind="shapes cut", cuts="one diagonal"), '4"')
    assert recipe.width == Fraction(35, 4)
    assert len(recipe.shapes) == 2
