"""Cloth in pieces: the rehearsal really takes and cuts each of them, and faults in that are caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from functools import cache

import pytest

from quarterturn.proof import Pattern, prove, supplies_of
from quarterturn.proof.rehearsal import Parcels, rehearse
from quarterturn.steps import CutParcels, SquareParcels, Step, Steps
from tests.proof.checks.sound import SOUND
from tests.samples import pattern_of

BRICK = 'colour = "#9c4a35"'
SAND = 'colour = "#efe6d8"'
SHELF = "on_hand = [{ width = '21\"', height = '9\"' }]\nbought_as = \"fat quarter\""
ENDS = "on_hand = [{ width = '14\"', height = '13\"', count = 3 }]"


@cache
def quilt() -> Pattern:
    """Brick from fat quarters and an odd piece; sand off the bolt and from three ends."""
    return pattern_of(SOUND.replace(BRICK, f"{BRICK}\n{SHELF}").replace(SAND, f"{SAND}\n{ENDS}"))


def first(kind: type) -> Step:
    return next(step for step in quilt().steps.steps if isinstance(step.action, kind))


def failures(kind: type, change: Callable[[Step], Step | None]) -> list[str]:
    """Rehearse with the first step of a kind changed, or left out."""
    changed = (change(step) if step is first(kind) else step for step in quilt().steps.steps)
    done = rehearse(supplies_of(quilt()), Steps(tuple(step for step in changed if step)))
    return [failure.sentence for failure in done.failures]


def with_first(step: Step, **changes: object) -> Step:
    made = replace(step.makes[0], **changes)  # type: ignore[arg-type]
    return replace(step, makes=(made, *step.makes[1:]))


def test_the_quilt_can_be_made_of_the_shelf_and_what_the_list_counts() -> None:
    proof = prove(quilt())
    assert proof.holds
    assert proof.difference == 0
    assert proof.rehearsal.parcels_left["C bought"] == 0


@pytest.mark.parametrize(
    "change",
    [
        lambda step: None,
        lambda step: replace(step, action=replace(step.action, stock="A bought")),
        lambda step: replace(step, action=replace(step.action, fabric="B")),
        lambda step: replace(step, action=replace(step.action, loss=(Fraction(0), Fraction(0)))),
        lambda step: with_first(step, width=step.makes[0].width + 5),
        lambda step: with_first(step, count=step.makes[0].count + 9),
    ],
    ids=["left out", "not there", "of another fabric", "nothing squared off", "too wide", "too many"],
)
def test_a_fault_in_squaring_up_is_caught(change: Callable[[Step], Step | None]) -> None:
    assert len(failures(SquareParcels, change)) == 1


@pytest.mark.parametrize(
    "change",
    [
        lambda step: None,
        lambda step: replace(step, action=CutParcels("B", step.action.upright)),
        lambda step: replace(step, action=replace(step.action, upright=not step.action.upright)),
        lambda step: with_first(step, height=step.makes[0].height + 12),
        lambda step: with_first(step, width=step.makes[0].width - 1),
        lambda step: with_first(step, count=step.makes[0].count + 50),
    ],
    ids=["left out", "of another fabric", "the other way", "too high", "too short", "too many"],
)
def test_a_fault_in_cutting_strips_is_caught(change: Callable[[Step], Step | None]) -> None:
    assert len(failures(CutParcels, change)) == 1


def test_fewer_pieces_than_the_steps_take_are_told() -> None:
    supplies = supplies_of(quilt())
    short = {label: replace(each, count=0) for label, each in supplies.parcels.items()}
    (failure,) = rehearse(replace(supplies, parcels=short), quilt().steps).failures
    assert "are wanted, 0 are left" in failure.sentence


def test_smaller_pieces_than_the_steps_count_on_are_told() -> None:
    supplies = supplies_of(quilt())

    def smaller(each: Parcels) -> Parcels:
        return replace(each, width=each.width - 2, height=each.height - 2)

    small = {label: smaller(each) for label, each in supplies.parcels.items()}
    assert rehearse(replace(supplies, parcels=small), quilt().steps).failures


def test_a_print_that_must_stand_upright_lies_as_the_cloth_does() -> None:
    """Turned against its plan, a print with a top no longer stands upright in the quilt."""
    words = (
        f"{BRICK}\ndirection = \"one-way\"\nupright = true\nbought_as = {{ width = '41\"', height = '41\"' }}"
    )
    pattern = pattern_of(SOUND.replace(BRICK, words))
    assert prove(pattern).holds
    turned = tuple(
        replace(step, action=replace(step.action, upright=True))
        if isinstance(step.action, CutParcels)
        else step
        for step in pattern.steps.steps
    )
    failed = rehearse(supplies_of(pattern), Steps(turned)).failures
    assert [failure.sentence for failure in failed] == [
        "The print of fabric C does not stand upright everywhere."
    ]
