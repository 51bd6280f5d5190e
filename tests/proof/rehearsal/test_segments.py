"""Split segments and ends of strips: the rehearsal really cuts and joins them, and faults in them are caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from quarterturn.measure import inches
from quarterturn.proof import Pattern, supplies_of
from quarterturn.proof.rehearsal import rehearse
from quarterturn.steps import CutSegments, JoinEnds, Pile, Step, Steps
from tests.samples import pattern_of

FOXES = Path(__file__).parents[3] / "examples" / "foxes-on-the-heath.toml"


@cache
def foxes() -> Pattern:
    return pattern_of(FOXES.read_text("utf-8"))


def first(kind: type[CutSegments] | type[JoinEnds]) -> Step:
    return next(step for step in foxes().steps.steps if isinstance(step.action, kind))


def failures(of: Step, change: Callable[[Step], Step]) -> list[str]:
    steps = (change(step) if step is of else step for step in foxes().steps.steps)
    done = rehearse(supplies_of(foxes()), Steps(tuple(steps)))
    return [failure.sentence for failure in done.failures]


def segments(step: Step) -> CutSegments:
    assert isinstance(step.action, CutSegments)
    return step.action


def with_cut(step: Step, **changes: object) -> Step:
    """Return the step with its first crosscut changed, and what it makes too."""
    cut = replace(segments(step).crosscuts[0], **changes)  # type: ignore[arg-type]
    return replace(step, action=replace(segments(step), crosscuts=(cut, *segments(step).crosscuts[1:])))


def test_a_split_strip_and_a_run_of_unequal_strips_can_be_made() -> None:
    assert failures(first(CutSegments), lambda step: step) == []
    assert len(first(JoinEnds).uses) == 2


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda s: with_cut(s, count=3), "6.0000 inches high; 9.0000 would be cut from it"),
        (lambda s: with_cut(s, count=1), "are not"),
        (lambda s: with_cut(s, along=inches(31)), "does not fit in a segment"),
        (lambda s: with_cut(s, piece="D9"), "not the pieces promised"),
        (lambda s: replace(s, action=replace(segments(s), across=inches(7))), "is 29.5000 by 6.0000 inches"),
        (lambda s: replace(s, action=replace(segments(s), layers=0)), "where no layer is"),
    ],
    ids=["too many", "too few", "too long", "another piece", "another size", "no layer"],
)
def test_a_fault_in_the_splitting_of_a_strip_is_caught(change: Callable[[Step], Step], said: str) -> None:
    assert said in failures(first(CutSegments), change)[0]


def test_a_run_without_its_ends_is_too_short() -> None:
    assert "should measure" in failures(first(JoinEnds), lambda s: replace(s, uses=s.uses[:1]))[0]


def test_strips_of_unequal_heights_are_not_joined() -> None:
    squares = Pile("B1", 1)
    found = failures(first(JoinEnds), lambda s: replace(s, uses=(s.uses[0], squares)))
    assert found[0] == "Strips of different heights cannot be joined end to end."
