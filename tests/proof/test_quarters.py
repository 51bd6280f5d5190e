"""Faults planted in the quarters of a heart are seen by the checks, by the rehearsal, or by both."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.proof import Pattern, check_pattern, prove
from quarterturn.steps import CutApart, LayOut, Step, Steps
from tests.samples import HEARTS, pattern_of

LEFT, RIGHT = "unit a-tl, as cut", "unit a-tr, as cut"


def codes(pattern: Pattern) -> set[str]:
    return {finding.code for finding in check_pattern(pattern)}


def spoiled(change: type[CutApart] | type[LayOut]) -> Pattern:
    """Return the hearts with left and right exchanged in one kind of step."""
    pattern = pattern_of(HEARTS)
    return replace(pattern, steps=Steps(tuple(_exchanged(step, change) for step in pattern.steps.steps)))


def _exchanged(step: Step, change: type) -> Step:
    action = step.action
    if isinstance(action, CutApart) and change is CutApart and action.code == "a":
        other = {LEFT: RIGHT, RIGHT: LEFT}
        parts = tuple((other.get(label, label), motion) for label, motion in action.parts)
        return replace(step, action=replace(action, parts=parts))
    if isinstance(action, LayOut) and change is LayOut:
        first, *rest = action.rows
        return replace(step, action=LayOut(((first[1], first[0], *first[2:]), *rest)))
    return step


def test_the_hearts_are_sound() -> None:
    pattern = pattern_of(HEARTS)
    assert not {"layout-differs", "centre-differs", "units-miscounted", "squares-miscounted"} & codes(pattern)
    assert prove(pattern).findings == ()


def test_left_and_right_exchanged_where_masters_are_cut_apart_makes_another_top() -> None:
    pattern = spoiled(CutApart)
    assert "layout-differs" in codes(pattern)
    assert prove(pattern).findings


def test_left_and_right_exchanged_in_the_layout_is_seen() -> None:
    assert "layout-differs" in codes(spoiled(LayOut))


@pytest.mark.parametrize(("number", "code"), [(0, "squares-miscounted"), (1, "tally-wrong")])
def test_a_miscount_of_one_quarter_is_seen(number: int, code: str) -> None:
    pattern = pattern_of(HEARTS)
    if number:
        tally = {**pattern.setting.tally, "a-tl": 2}
        pattern = replace(pattern, setting=replace(pattern.setting, tally=tally))
    else:
        first, *rest = pattern.bill.masters
        fewer = replace(first, count=first.count - 1)
        pattern = replace(pattern, bill=replace(pattern.bill, masters=(fewer, *rest)))
    assert code in codes(pattern)
