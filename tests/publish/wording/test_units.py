"""What is told of units: which outline they have, what lies on what, and what is trimmed."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.proof import Pattern
from quarterturn.publish.wording import tell
from quarterturn.steps import CutApart, CutAway, Trim
from tests.recipe_samples import GIZZARDS, LONE_HEARTS, PONDS, RIPPLES
from tests.samples import pattern_of

EIGHTS = GIZZARDS.replace("start = '8 3/4\"'", "start = '8 7/8\"'").replace(
    'of = "pair"', 'of = "pair"\nfinished = \'8"\''
)
"""Blocks that are joined a hair larger than they finish."""

pattern = cache(pattern_of)


def told(kind: type, made: Pattern) -> str:
    words = (tell(step, made) for step in made.steps.steps if isinstance(step.action, kind))
    return " ".join(" ".join((each.title, *each.sentences, each.line)) for each in words)


def test_what_a_cut_from_corner_to_corner_leaves_is_a_triangle() -> None:
    assert 'unit a, triangles with short edges of 8¾" as cut.' in told(CutApart, pattern(GIZZARDS))


def test_what_cuts_both_ways_leave_is_a_square() -> None:
    assert '" square as cut.' in told(CutApart, pattern(RIPPLES))


@pytest.mark.parametrize(("text", "overlaps"), [(GIZZARDS, False), (PONDS, True), (RIPPLES, True)])
def test_only_of_shapes_that_overlap_is_said_which_comes_first(text: str, overlaps: bool) -> None:
    words = told(CutAway, pattern(text))
    assert ("the shape that lies lowest" in words) is overlaps
    assert ("Where a higher shape" in words) is overlaps


def test_a_joined_block_that_has_its_size_is_squared_up_only_where_needed() -> None:
    words = told(Trim, pattern(EIGHTS))
    assert "Square up the blocks where needed" in words
    assert "Trim those edges only" not in words


def test_a_joined_block_that_is_larger_is_trimmed() -> None:
    words = told(Trim, pattern(LONE_HEARTS))
    assert "Square up the blocks where needed" not in words
    assert "Trim those edges only" in words
