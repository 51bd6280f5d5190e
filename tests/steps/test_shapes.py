"""Tracing: what the web is drawn with, so that the shape lies on the cloth as it is meant."""

from __future__ import annotations

import pytest

from quarterturn.steps import TraceRings
from tests.samples import pattern_of

HEART = """
format = 1
title = "A heart"
units = "inch"
[fabrics.A]
name = "cream"
colour = "#f4ecd8"
[fabrics.B]
name = "brick"
colour = "#8a2f26"
[recipes.heart]
kind = "shapes cut"
start = '8"'
cuts = "none"
[[recipes.heart.shapes]]
name = "heart"
outline = "heart"
width = '4"'
turn = TURN
[colourways.h]
recipe = "heart"
ground = "A"
shapes = { heart = "B" }
[setting]
kind = "straight"
map = "h h"
[binding]
fabric = "B"
[backing]
fabric = "A"
"""


@pytest.mark.parametrize(("turn", "either_way"), [(0, True), (45, False), (90, False), (180, True)])
def test_a_heart_that_leans_is_traced_mirrored(turn: int, either_way: bool) -> None:
    """It is its own mirror image only when turned; laid by the template's upright line it would lean the wrong way."""
    steps = pattern_of(HEART.replace("TURN", str(turn))).steps.steps
    (tracing,) = (step.action for step in steps if isinstance(step.action, TraceRings))
    assert tracing.same_mirrored is either_way
