"""Strips that are decided on in the studio are in the plan, cost what is told, and are the plan's again when let go."""

from __future__ import annotations

import pytest

from quarterturn.design import Design, read_design
from quarterturn.studio.acts import Act, RefusedError, do
from quarterturn.studio.acts.strips import DecideStrips, FreeStrips
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.cutting import PlanView, cutting_view
from tests.studio.drafts import TEXT as DRAFT

STAGES = Stages()


def after(act: Act, text: str = DRAFT) -> str:
    return do(act, text, STAGES).made.text


def design_of(text: str) -> Design:
    design = read_design(text).design
    assert design is not None
    return design


def plan_of(text: str, letter: str = "A") -> PlanView:
    made = STAGES.at(text)
    return next(plan for plan in cutting_view(1, made, made.sizes[0]).plans if plan.letter == letter)


def test_strips_that_are_kept_as_they_are_cost_nothing_and_are_shown_as_decided() -> None:
    before = plan_of(DRAFT)
    kind = before.kinds[0]
    text = after(DecideStrips(fabric="A", height=kind.written, count=kind.count, pieces=kind.pieces))
    kept = plan_of(text)
    assert [(one.height, one.count, one.pieces) for one in kept.decisions] == [
        (kind.height, kind.count, kind.pieces)
    ]
    assert any(one.decided and one.written == kind.written for one in kept.kinds)
    assert kept.undecided is not None
    assert kept.undecided.inches == before.bought.inches == kept.bought.inches


def test_strips_higher_than_they_need_be_cost_what_is_told() -> None:
    before = plan_of(DRAFT)
    label = before.kinds[0].pieces[0]
    text = after(DecideStrips(fabric="A", height='30"', pieces=(label,)))
    kept = plan_of(text)
    assert kept.undecided is not None
    assert kept.undecided.inches == before.bought.inches < kept.bought.inches


def test_strips_that_are_left_to_the_plan_leave_the_file_as_it_was() -> None:
    decided = after(DecideStrips(fabric="A", height='9"', count=1))
    twice = after(DecideStrips(fabric="A", height='10"', count=1), decided)
    (first, second) = design_of(twice).fabric("A").strips
    assert (first.height, second.height) == (9, 10)
    (left,) = design_of(after(FreeStrips(fabric="A", place=0), twice)).fabric("A").strips
    assert left.height == 10
    for text in (after(FreeStrips(fabric="A"), twice), after(FreeStrips(fabric="A", place=0), decided)):
        assert design_of(text) == design_of(DRAFT)
        assert "strips" not in text


@pytest.mark.parametrize(
    "act",
    [
        DecideStrips(fabric="Z", height='9"', count=1),
        FreeStrips(fabric="A"),
        FreeStrips(fabric="A", place=3),
        DecideStrips(fabric="A", height="nine", count=1),
        DecideStrips(fabric="A", height='9"'),
    ],
)
def test_what_cannot_be_decided_is_refused_and_changes_nothing(act: DecideStrips | FreeStrips) -> None:
    with pytest.raises(RefusedError):
        after(act)


def test_cloth_that_is_bought_in_pieces_is_not_decided_on() -> None:
    text = DRAFT.replace("[fabrics.A]", '[fabrics.A]\nbought_as = "fat quarter"', 1)
    assert text != DRAFT
    with pytest.raises(RefusedError, match="bought in pieces"):
        after(DecideStrips(fabric="A", height='9"', count=1), text)
