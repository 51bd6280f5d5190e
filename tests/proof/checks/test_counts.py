"""Each check of the counts fires on its fault."""

from __future__ import annotations

import pytest

from quarterturn.measure import show_count
from quarterturn.pieces import Purpose
from quarterturn.steps import CutApart, SetAside, StitchEdge, Subcut, Trim
from tests.proof.checks.sound import (
    Spoil,
    found,
    making,
    masters,
    one_fewer,
    one_fewer_used,
    one_more,
    pieces,
    setting,
    step,
    text,
)

FIRES: dict[str, Spoil] = {
    "units-miscounted": step(Trim, one_more),
    "tally-wrong": setting(tally={"a": 7, "b": 8}),
    "squares-miscounted": masters(count=3),
    "squares-lost": step(StitchEdge, one_fewer_used),
    "step-wanting": step(CutApart, one_fewer),
    "step-orphan": step(Trim, one_more),
    "pieces-miscounted": pieces(Purpose.GROUND, count=3),
}
PASSES: dict[str, Spoil] = {
    "squares-miscounted": text(making("spare_masters = 1")),
    "step-orphan": text(("a1 a0 b1 b0\n", "a1 a0 b1 a0\n")),
    "pieces-miscounted": text(making("spare_masters = 2")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_side_and_end_strips_of_one_length_are_not_exchanged() -> None:
    fifth_row = text(("b1 b0 a1 a0\n", "b1 b0 a1 a0\na1 a0 b1 b0\n"))()
    assert found("step-wanting", fifth_row) == found("step-orphan", fifth_row) == []


def test_units_left_over_are_set_aside_and_told() -> None:
    uneven = text(("a1 a0 b1 b0\n", "a1 a0 b1 a0\n"))()
    aside = [each.uses[0] for each in uneven.steps.steps if isinstance(each.action, SetAside)]
    assert [show_count(pile.count, pile.label) for pile in aside] == ["3 unit as", "1 unit b"]
    assert any(isinstance(each.action, Subcut) for each in uneven.steps.steps)
