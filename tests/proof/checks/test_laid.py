"""Recipes laid out as polygons agree with the closed forms, and with the drafted blocks."""

from __future__ import annotations

import math

import pytest

from quarterturn.design import QUARTERS, Severity
from quarterturn.proof import Pattern, check_pattern, prove
from quarterturn.proof.checks.drafting import draft_of
from quarterturn.proof.checks.laid import laid_out, piece_names, shape_measures
from quarterturn.proof.checks.sides import changes, laid_unit
from quarterturn.setting import Side
from tests.recipe_samples import SAMPLES
from tests.samples import HEARTS, ROUNDS, pattern_of


@pytest.mark.parametrize("curve", ["as drawn", "sewn true"])
def test_a_circle_cut_both_ways_is_that_of_the_closed_form(curve: str) -> None:
    pattern = pattern_of(ROUNDS.replace("as drawn", curve))
    design, recipe = pattern.design, pattern.design.recipes[0]
    draft, laid = draft_of(design, recipe), laid_out(recipe, design.making.seam)
    found = shape_measures(laid.shapes[0])
    assert found.bounds[2] - found.bounds[0] == pytest.approx(draft.shape.width, abs=1e-4)
    assert found.room == pytest.approx(draft.shape.room, abs=1e-3)
    assert laid.shapes[0].edge == pytest.approx(draft.shape.edge, abs=1e-4)
    assert found.same_mirrored
    assert [len(kind) for kind in laid.kinds] == [4]
    assert set(piece_names(recipe, laid)) == set(QUARTERS)
    unit = laid_unit(design, "a")
    places = [change.at for side in changes(unit).values() for change in side]
    assert places == pytest.approx([draft.crossing, draft.crossing], abs=1e-3)


@pytest.mark.parametrize("text", [ROUNDS, HEARTS, *SAMPLES.values()])
def test_pieces_and_kinds_are_those_of_the_drafted_master(text: str) -> None:
    pattern = pattern_of(text)
    for recipe in pattern.design.recipes:
        master = pattern.blocks.master(recipe.name)
        laid = laid_out(recipe, pattern.design.making.seam)
        assert list(piece_names(recipe, laid)) == [part.name for part in master.parts]
        draft = draft_of(pattern.design, recipe)
        assert draft.kinds == {u.quarter: master.per_master(k) for k, u in enumerate(master.units)}


@pytest.mark.parametrize("name", SAMPLES)
def test_what_is_seen_of_a_unit_is_what_its_layers_leave(name: str) -> None:
    pattern = pattern_of(SAMPLES[name])
    for unit_name in pattern.setting.tally:
        unit, laid = pattern.blocks.unit(pattern.design, unit_name), laid_unit(pattern.design, unit_name)
        assert (laid.width, laid.height) == pytest.approx((float(unit.width), float(unit.height)), abs=1e-6)
        shown = sum(area.area for area in laid.seen.values())
        assert shown == pytest.approx(laid.width * laid.height, abs=1e-2)
        assert drafted_changes(pattern, unit_name) == pytest.approx(
            laid_changes(pattern, unit_name), abs=1e-3
        )


def drafted_changes(pattern: Pattern, name: str) -> list[float]:
    from quarterturn.blocks import side_spans

    spans = side_spans(pattern.blocks.unit(pattern.design, name), 0)
    found = []
    for side in ("top", "right", "bottom", "left"):
        pairs = zip(spans[side], spans[side][1:], strict=False)
        found += [b.start for a, b in pairs if a.part != b.part]
    return found


def laid_changes(pattern: Pattern, name: str) -> list[float]:
    found = changes(laid_unit(pattern.design, name))
    return [change.at for side in (Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT) for change in found[side]]


def test_hearts_and_gizzards_finish_as_practice_has_it() -> None:
    """Two 8 3/4" squares halved corner to corner give blocks of 8 3/4 − 1/4·(2 + √2) = 7.8964" (common practice)."""
    pattern = pattern_of(SAMPLES["gizzards"])
    unit = laid_unit(pattern.design, "g")
    assert unit.width == pytest.approx(8.75 - 0.25 * (2 + math.sqrt(2)), abs=1e-6)
    assert round(unit.width, 4) == 7.8964


KITE = """
format = 1
title = "Kites"
units = "inch"
[fabrics.A]
name = "sky"
colour = "#dfe8ef"
[fabrics.B]
name = "plum"
colour = "#4a2545"
[outlines.kite]
path = "M 0 -3 L 2 -1 L 0 3 L -2 -1 Z"
[recipes.kite]
kind = "shapes cut"
start = '8"'
cuts = "CUTS"
curve = "CURVE"
[[recipes.kite.shapes]]
name = "kite"
outline = "kite"
width = '3"'
[colourways.k]
recipe = "kite"
ground = "A"
shapes = { kite = "B" }
[setting]
kind = "straight"
map = "MAP"
[binding]
fabric = "B"
[backing]
fabric = "A"
"""


@pytest.mark.parametrize(
    ("cuts", "curve", "laid"),
    [("none", "as drawn", "k k"), ("down", "as drawn", "k-lh k-rh"), ("down", "sewn true", "k-lh k-rh")],
)
def test_an_outline_of_the_designers_own_is_laid_out_whatever_the_cuts(
    cuts: str, curve: str, laid: str
) -> None:
    pattern = pattern_of(KITE.replace("CUTS", cuts).replace("CURVE", curve).replace("MAP", laid))
    assert not [finding for finding in check_pattern(pattern) if finding.severity is Severity.STOPS]
    assert prove(pattern).findings == ()
