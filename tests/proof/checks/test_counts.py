"""Each check of the counts fires on its fault."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.measure import show_count
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.proof.checks.counts import kinds_taken_alike
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
from tests.samples import HEARTS, Changed, pattern_of

LOPSIDED = Changed(HEARTS).with_(
    "a-tl0 a-tr0 c-tl0 c-tr0 a-tl0\na-bl0 a-br0 c-tr2 c-tl2 a-tl1",
    "a-tl0 a-tl0 c-tl0 c-tr0 a-tl0\na-tl1 a-tl2 c-tr2 c-tl2 a-tl1",
)
"""Six left lobes of a heart and no other quarter of it."""


def units_of(**counts: int) -> Spoil:
    """Return the hearts with other counts needed of the kinds of their first colourway."""

    def spoilt() -> Pattern:
        pattern = pattern_of(HEARTS)
        first, *rest = pattern.bill.masters
        units = tuple(replace(unit, needed=counts[unit.name.partition("-")[2]]) for unit in first.units)
        masters = (replace(first, units=units, needed=max(counts.values())), *rest)
        return replace(pattern, bill=replace(pattern.bill, masters=masters))

    return spoilt


FIRES: dict[str, Spoil] = {
    "kinds-uneven": units_of(tl=4, tr=2, bl=2, br=2),
    "units-miscounted": step(Trim, one_more),
    "tally-wrong": setting(tally={"a": 7, "b": 8}),
    "squares-miscounted": masters(count=3),
    "squares-lost": step(StitchEdge, one_fewer_used),
    "step-wanting": step(CutApart, one_fewer),
    "step-orphan": step(Trim, one_more),
    "pieces-miscounted": pieces(Purpose.GROUND, count=3),
}
PASSES: dict[str, Spoil] = {
    "kinds-uneven": units_of(tl=4, tr=3, bl=3, br=3),
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


def test_units_left_over_by_kinds_laid_unlike_are_told_with_the_squares_that_would_do() -> None:
    (fault,) = kinds_taken_alike(pattern_of(LOPSIDED.text))
    assert "18 of 24 units are left over" in fault.sentence
    assert fault.remedy == "Lay as many of each kind as a square gives: then 2 squares do instead of 6."
    assert fault.key == "colourways.a"
