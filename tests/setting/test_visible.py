"""Edges that can be seen: not under another shape, and on across a seam inside the unit."""

from __future__ import annotations

import math

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.setting import Stop, arrange
from quarterturn.setting.curves import curve_pieces
from quarterturn.setting.visible import inner_seam
from tests.recipe_samples import GIZZARDS, HALVES, RIPPLES, quilt_of
from tests.samples import Changed, design_of

DISCS = """
[recipes.discs]
kind = "shapes cut"
start = 9
finished = 8.5
trim = 0
cuts = "none"
[[recipes.discs.shapes]]
name = "far"
width = 4
at = [-1, 0]
[[recipes.discs.shapes]]
name = "near"
width = 4
at = [1, 0]

[colourways.a]
recipe = "discs"
ground = "A"
shapes = { far = "B", near = "C" }
"""


def test_what_lies_under_another_shape_is_not_followed() -> None:
    """Two circles of 2" about points 2" apart: the later hides a third of the other's edge."""
    design = design_of(quilt_of(DISCS, "a0 a0"))
    hidden, whole = curve_pieces(draft_blocks(design).masters[0].units[0])
    assert hidden.length == pytest.approx(4 * math.pi * 2 / 3, abs=1e-3)
    assert len(hidden.ends) == 2
    assert whole.length == pytest.approx(4 * math.pi)
    assert whole.ends == ()


def test_a_curve_that_goes_under_another_shape_stops_there() -> None:
    design = design_of(quilt_of(DISCS, "a0 a0"))
    flow = arrange(design, draft_blocks(design)).flow
    assert len(flow.rounds) == 2
    assert [trail.stops for trail in flow.paths] == [(Stop.UNDER, Stop.UNDER)] * 2


def test_both_edges_of_ripples_run_on() -> None:
    design = design_of(Changed(RIPPLES).with_("a0 a1 a2\na2 a3 a0", "a2 a3\na1 a0").text)
    flow = arrange(design, draft_blocks(design)).flow
    assert (len(flow.rounds), flow.circles, len(flow.paths)) == (2, 2, 0)


def test_hearts_close_over_the_seam_of_their_halves() -> None:
    """A block shows two hearts, each of a half of either master, and its seam is no curve."""
    design = design_of(GIZZARDS)
    blocks = draft_blocks(design)
    (block,) = blocks.rejoined[0].units
    pieces = curve_pieces(block)
    assert [piece.ends for piece in pieces] == [(), ()]
    assert len(arrange(design, blocks).flow.rounds) == 12
    seam = inner_seam(block)
    assert seam is not None
    assert abs(seam.side(0j)) < 1e-6


def test_a_unit_of_one_master_has_no_inner_seam() -> None:
    assert inner_seam(draft_blocks(design_of(HALVES)).masters[0].units[0]) is None
