"""What is told of units: which outline they have, what lies on what, and what is trimmed."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.proof import Pattern
from quarterturn.publish.wording import cloths_of, tell
from quarterturn.steps import (
    CutApart,
    CutAway,
    CutAwayBehind,
    CutOut,
    FuseToGround,
    FuseToPanel,
    LayOut,
    Step,
    Trim,
)
from tests.recipe_samples import GIZZARDS, LONE_HEARTS, PONDS, RIPPLES
from tests.samples import HEARTS, ROUNDS, pattern_of
from tests.section_texts import TEXTS

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


def test_a_rejoined_unit_names_the_cloths_of_each_half() -> None:
    assert cloths_of(pattern(GIZZARDS), "g") == (
        "Fabric B (ink, circles) on Fabric A (oyster, background) joined to "
        "Fabric A (oyster, background) on Fabric B (ink, circles)"
    )


def test_motifs_that_lie_apart_have_no_order_of_overlap() -> None:
    apart = TEXTS["panels"].replace("at = ['3 1/2\"', '4 1/2\"']", "at = ['8\"', '1 1/2\"']")
    assert "the later lies on top" in told(FuseToPanel, pattern(TEXTS["panels"]))
    assert "leave the lower one whole" in told(CutAwayBehind, pattern(TEXTS["panels"]))
    assert "the later lies on top" not in told(FuseToPanel, pattern(apart))
    assert "leave the lower one whole" not in told(CutAwayBehind, pattern(apart))


def test_the_cross_of_a_hollowed_template_is_kept_by_folds() -> None:
    for text in (HEARTS, PONDS):
        assert "fold each shape through the marks at its edge" in told(CutOut, pattern(text))
    assert "the crossing of its creases on its mark" in told(FuseToGround, pattern(PONDS))
    assert "fold each shape through" not in told(CutOut, pattern(ROUNDS))


def test_on_point_it_is_said_which_corner_comes_to_the_top() -> None:
    point = next(text for text in TEXTS.values() if any(_slants(step) for step in pattern(text).steps.steps))
    assert "its top left one as drawn and named comes to the top" in told(LayOut, pattern(point))
    assert "comes to the top" not in told(LayOut, pattern(ROUNDS))


def _slants(step: Step) -> bool:
    return isinstance(step.action, LayOut) and step.action.slanting
