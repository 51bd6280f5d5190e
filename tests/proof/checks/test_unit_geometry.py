"""Each check of sizes and curves fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import Curve, DrawnDiameter
from quarterturn.measure import Length, inches
from quarterturn.steps import CutApart, Trim, TrimLine
from tests.proof.checks.sound import EIGHTH, Spoil, action, blocks, found, recipe, sound, text, with_recipe

MASTER = sound().blocks.masters[0]


def trims_to(distance: Length) -> tuple[TrimLine, ...]:
    """Return the trims of the first unit at another distance from where it was cut."""
    trim = next(s.action for s in sound().steps.steps if isinstance(s.action, Trim))
    return tuple(replace(line, distance=distance) for line in trim.lines)


FIRES: dict[str, Spoil] = {
    "unit-size": action(Trim, lines=trims_to(inches(4, 5, 8))),
    "master-size": blocks(width=MASTER.width + EIGHTH),
    "curve-near-edge": text(recipe("finished = '4\"'\nshape = { diameter = '8 3/8\"' }")),
    "crossing-wrong": blocks(facts=replace(MASTER.facts, crossing=MASTER.facts.crossing + 0.01)),
    "shape-shrinks": text(recipe("finished = '4\"'\nshape = { diameter = '2\"' }")),
    "curve-too-tight": with_recipe(size=DrawnDiameter(inches(0, 5, 8)), curve=Curve.SEWN_TRUE),
    "units-unequal": blocks(parts=MASTER.parts[:3]),
    "cut-misplaced": action(CutApart, cuts=MASTER.cuts[:1]),
    "cut-off-centre": action(CutApart, cuts=(MASTER.cuts[0].moved_left(0.125), MASTER.cuts[1])),
}
PASSES: dict[str, Spoil] = {
    "curve-near-edge": text(recipe("finished = '4\"'\nshape = { diameter = '8 1/4\"' }")),
    "shape-shrinks": text(recipe("finished = '4\"'\nshape = { diameter = '2 1/2\"' }")),
    "curve-too-tight": text(recipe("finished = '4\"'\nshape = { diameter = '1\"' }\ncurve = \"sewn true\"")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_unit_of_another_size_is_told_with_both_sizes() -> None:
    assert found("unit-size", action(Trim, lines=trims_to(inches(4, 5, 8)))())[0].endswith(
        'trims units to 4⅝", which is the cut size of no unit.'
    )


SMALL_LEAF = """
[recipes.leaf]
kind = "shape cut both ways"
finished = '4"'
shape = { outline = "leaf", width = '1 1/4"' }
"""
LEAF_CUT = (
    SMALL_LEAF
    + """
[colourways.c]
recipe = "leaf"
ground = "A"
shape = "B"
"""
)


def test_what_is_never_cut_apart_loses_nothing_to_seams() -> None:
    assert found("shape-shrinks", text(("[setting]", f"{SMALL_LEAF}\n[setting]"))()) == []


def test_a_shape_higher_than_wide_is_told_with_both() -> None:
    (sentence,) = found("shape-shrinks", text(("[setting]", f"{LEAF_CUT}\n[setting]"))())
    assert ': traced 1¼" wide and 2' in sentence
    assert '" high, it finishes' in sentence
