"""Scraps that fall off where the ground is cut away are counted from the rehearsal, and said to hold what they do."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from quarterturn.geometry import disc
from quarterturn.measure import inches
from quarterturn.proof import Pattern, cut_away_sentences, prove, rehearsal_text
from quarterturn.proof.cut_off import Leaving, leavings
from quarterturn.proof.rehearsal import CutOff
from tests.recipe_samples import RIPPLES
from tests.samples import ROUNDS, Changed, pattern_of

LARGE = (
    Changed(ROUNDS)
    .with_("{ flow = true }", "{ diameter = '9\"' }")
    .with_("finished = '2\"'", "finished = '6\"'")
    .text
)


def found(pattern: Pattern, *pieces: CutOff) -> tuple[Leaving, ...]:
    """Return what a rehearsal leaves that cut these pieces off."""
    return leavings(pattern, replace(prove(pattern).rehearsal, cut_off=pieces))


@pytest.mark.parametrize("text", [LARGE, RIPPLES])
def test_every_unit_leaves_what_lay_behind_its_shape(text: str) -> None:
    pattern = pattern_of(text)
    cut_off = prove(pattern).rehearsal.cut_off
    units = sum(master.count for master in pattern.bill.masters) * 4
    assert sum(piece.count for piece in cut_off) >= units
    assert all(piece.region.area() > 0 for piece in cut_off)


def test_a_quarter_of_a_disc_is_cut_off_each_unit() -> None:
    """A quarter of the disc that lies inside the stitching by what is left."""
    pattern = pattern_of(LARGE)
    inside = 4.5 - float(pattern.design.making.cut_away)
    for piece in prove(pattern).rehearsal.cut_off:
        assert piece.region.area() == pytest.approx(math.pi * inside**2 / 4, rel=1e-3)


def test_equal_scraps_are_counted_together() -> None:
    pattern = pattern_of(LARGE)
    counted = {each.fabric: each.count for each in leavings(pattern, prove(pattern).rehearsal)}
    expected = {"A": 0, "B": 0}
    for piece in prove(pattern).rehearsal.cut_off:
        expected[piece.fabric] += piece.count
    assert counted == {fabric: count for fabric, count in expected.items() if count}


def test_small_scraps_are_not_worth_a_word() -> None:
    pattern = pattern_of(LARGE)
    assert found(pattern, CutOff("A", disc(0.7), 40)) == ()


def test_a_scrap_holds_the_pieces_of_its_fabric_that_fit() -> None:
    pattern = pattern_of(LARGE)
    (large,) = found(pattern, CutOff("A", disc(20.0), 3))
    (small,) = found(pattern, CutOff("A", disc(1.0), 3))
    own = {f"piece {piece.label}" for piece in pattern.bill.of_fabric("A")}
    shapes = {f"shape “{shape.name}”" for shape, _ in pattern.blocks.masters[0].templates}
    assert large.holds
    assert set(large.holds) <= own | shapes
    assert small.holds == ()
    assert (small.count, small.width, small.disc <= 2) == (3, inches(2), True)


def test_the_rehearsal_tells_them() -> None:
    pattern = pattern_of(LARGE)
    proof = prove(pattern)
    told = cut_away_sentences(pattern, proof)
    assert told
    text = rehearsal_text(pattern, proof)
    assert "Cut away behind shapes:" in text
    assert all(sentence in text for sentence in told)
    assert "Cut away" not in rehearsal_text(
        pattern, replace(proof, rehearsal=replace(proof.rehearsal, cut_off=()))
    )
