"""Each check of several shapes, bulk and rejoined halves fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any

import pytest

from quarterturn.measure import inches
from quarterturn.proof import Pattern, cut_away_of, seam_layers
from quarterturn.setting import Side
from tests.proof.checks.sound import Spoil, found
from tests.recipe_samples import GIZZARDS, HALVES, LONE_HEARTS, RIPPLES
from tests.samples import pattern_of


def ripples(*changes: tuple[str, str]) -> Spoil:
    """Return the disc on a disc with words of its text exchanged."""

    def spoilt() -> Pattern:
        words = RIPPLES
        for before, after in changes:
            assert before in words, before
            words = words.replace(before, after, 1)
        return pattern_of(words)

    return spoilt


@cache
def gizzards() -> Pattern:
    return pattern_of(GIZZARDS)


def block(**values: Any) -> Spoil:
    """Return the hearts with their rejoined recipe changed after the other stages have run."""

    def spoilt() -> Pattern:
        design = gizzards().design
        rejoined = tuple(replace(each, **values) for each in design.rejoined)
        return replace(gizzards(), design=replace(design, rejoined=rejoined))

    return spoilt


def two_kinds() -> Pattern:
    """Return the hearts with a second kind of block drafted."""
    blocks = gizzards().blocks
    twice = tuple(replace(each, units=each.units * 2) for each in blocks.rejoined)
    return replace(gizzards(), blocks=replace(blocks, rejoined=twice))


def upside_down() -> Pattern:
    """Return the disc on a disc with its shapes in the other order after the other stages have run."""
    pattern = pattern_of(RIPPLES)
    recipes = tuple(replace(each, shapes=each.shapes[::-1]) for each in pattern.design.recipes)
    return replace(pattern, design=replace(pattern.design, recipes=recipes))


THICK = RIPPLES.replace(
    "[colourways.a]",
    '[[recipes.ripple.shapes]]\nname = "middle"\nwidth = \'2"\'\n\n[colourways.a]',
).replace('inner = "C" }', 'inner = "C", middle = "B" }')
"""Three discs on one another: where the uppermost is stitched, all of them and the ground are left."""

FIRES: dict[str, Spoil] = {
    "part-hidden": upside_down,
    "band-narrow": ripples(("width = '4\"'", "width = '6 3/4\"'")),
    "underlap-small": ripples(("underlap = '1/2\"'", "underlap = '1/16\"'")),
    "seam-bulky": lambda: pattern_of(THICK),
    "rejoined-size": block(finished_width=inches(7)),
    "rejoined-unequal": two_kinds,
}
PASSES: dict[str, Spoil] = {
    "part-hidden": ripples(("width = '4\"'\nunderlap = '1/2\"'", "width = '1 1/4\"'")),
    "band-narrow": ripples(("width = '4\"'", "width = '6 1/2\"'")),
    "underlap-small": ripples(("underlap = '1/2\"'", "underlap = '1/8\"'")),
    "seam-bulky": lambda: pattern_of(RIPPLES),
    "rejoined-size": lambda: pattern_of(LONE_HEARTS),
    "rejoined-unequal": lambda: pattern_of(LONE_HEARTS),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_disc_on_a_disc_has_three_layers_only_where_it_is_stitched() -> None:
    """From the corner: inner; with the outer 1/2" inside its stitching; with the ground 1/4" on either side of that;
    the outer; the ground 1/4" inside the outer's stitching; the ground alone."""
    pattern = pattern_of(RIPPLES)
    layers = seam_layers(pattern, "a", cut_away_of(pattern))
    assert [count for _, _, count in layers.sides[Side.TOP]] == [1, 2, 3, 2, 1, 2, 1]
    assert layers.most == 3


def test_where_nothing_is_cut_away_the_layers_add_up() -> None:
    pattern = pattern_of(RIPPLES)
    layers = seam_layers(pattern, "a", {})
    assert [count for _, _, count in layers.sides[Side.LEFT]] == [3, 2, 1]


def test_both_halves_lie_in_the_seam_that_rejoins_them() -> None:
    layers = seam_layers(gizzards(), "g", cut_away_of(gizzards()))
    assert min(count for _, _, count in layers.inner) == 2
    assert max(count for _, _, count in layers.inner) <= 6


def test_a_shape_that_reaches_no_outer_side_adds_no_layers_there() -> None:
    pattern = pattern_of(HALVES)
    layers = seam_layers(pattern, "a-lh", cut_away_of(pattern))
    assert {count for _, _, count in layers.sides[Side.LEFT]} == {1}
    assert max(count for _, _, count in layers.sides[Side.RIGHT]) == 2
