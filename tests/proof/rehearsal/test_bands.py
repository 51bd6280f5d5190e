"""Borders cut along the cloth: the rehearsal really cuts the bands and their rests, and faults in them are caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest

from quarterturn.proof import Pattern, supplies_of
from quarterturn.proof.checks.cutting import strip_width, subcut_sizes
from quarterturn.proof.rehearsal import rehearse
from quarterturn.steps import CutRest, Step, Steps
from tests.samples import pattern_of, quay_with_borders


@cache
def quay() -> Pattern:
    return pattern_of(quay_with_borders("lengthwise"))


def rests() -> list[Step]:
    return [step for step in quay().steps.steps if step.action == CutRest("B")]


def failures(change: Callable[[Step], Step | None]) -> list[str]:
    """Rehearse with the first cutting of a rest changed, or left out."""
    first = rests()[0]
    changed = (change(step) if step is first else step for step in quay().steps.steps)
    done = rehearse(supplies_of(quay()), Steps(tuple(step for step in changed if step)))
    return [failure.sentence for failure in done.failures]


def with_first(step: Step, **changes: object) -> Step:
    made = replace(step.makes[0], **changes)  # type: ignore[arg-type]
    return replace(step, makes=(made, *step.makes[1:]))


def test_the_steps_can_be_carried_out_and_use_no_joined_border() -> None:
    assert len(rests()) == 2
    assert failures(lambda step: step) == []
    assert [run.label for plan in quay().materials.cloth for run in plan.runs] == ["Br1"]


@pytest.mark.parametrize(
    "change",
    [
        lambda step: None,
        lambda step: replace(step, action=CutRest("A")),
        lambda step: with_first(step, height=step.makes[0].height + 1),
        lambda step: with_first(step, height=step.makes[0].height - 1),
        lambda step: with_first(step, width=step.makes[0].width + 1),
        lambda step: with_first(step, count=step.makes[0].count - 1),
    ],
    ids=["left out", "of another fabric", "too high", "too low", "too long", "one too few"],
)
def test_a_fault_in_the_cutting_of_a_rest_is_caught(change: Callable[[Step], Step | None]) -> None:
    assert len(failures(change)) == 1


def test_the_checks_of_cutting_look_into_the_rest() -> None:
    pattern = quay()
    assert [*strip_width(pattern), *subcut_sizes(pattern)] == []
    plan = pattern.materials.plan("B")
    inner = replace(plan.strips[0].rest[0], used=plan.usable_width)
    band = replace(plan.strips[0], rest=(inner, *plan.strips[0].rest[1:]))
    plans = tuple(
        replace(each, strips=(band, *each.strips[1:])) if each is plan else each
        for each in pattern.materials.cloth
    )
    spoilt = replace(pattern, materials=replace(pattern.materials, cloth=plans))
    assert [fault.detail for fault in strip_width(spoilt)] == [inner.label]
