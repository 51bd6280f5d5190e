"""A class: what fits, what goes home, and where students wait."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import Lesson
from quarterturn.materials.classes import CUTTERS, IRONS, OWN_PACE, ClassPlan, plan_class
from quarterturn.materials.hours import StageTime

METHOD = ("shapes", "fusing", "units")
QUILT = (
    StageTime("cutting", 60, 0, 30),
    StageTime("shapes", 40, 0, 0),
    StageTime("fusing", 40, 10, 0),
    StageTime("units", 30, 0, 15),
    StageTime("assembly", 50, 12, 0),
    StageTime("finishing", 300, 0, 0),
)
SIX_HOURS = Lesson(8, Fraction(6))


def planned(lesson: Lesson, masters: int = 10) -> ClassPlan:
    return plan_class(QUILT, lesson, METHOD, masters)


def test_the_end_and_the_cutting_are_homework_first() -> None:
    plan = planned(SIX_HOURS)
    assert [stage for stage, _ in plan.before] == ["cutting"]
    assert [slot.stage for slot in plan.slots] == ["shapes", "fusing", "units", "assembly"]
    assert [stage for stage, _ in plan.after] == ["finishing"]
    assert plan.fits


def test_homework_and_class_hold_every_stage_once() -> None:
    """Homework list and class steps are all steps (a trade editor's check)."""
    for hours in (1, 3, 6, 20):
        plan = planned(replace(SIX_HOURS, hours=Fraction(hours)))
        held = (
            [stage for stage, _ in plan.before] + [s.stage for s in plan.slots] + [s for s, _ in plan.after]
        )
        assert held == [time.stage for time in QUILT]


def test_a_student_takes_twice_as_long() -> None:
    shapes = planned(SIX_HOURS).slots[0]
    assert (shapes.showing, shapes.work, shapes.waits_for) == (10, 80, OWN_PACE)


def test_one_iron_for_eight_makes_a_queue_and_one_for_four_does_not() -> None:
    """One iron to three or four (common practice, no source)."""
    fusing = {irons: planned(replace(SIX_HOURS, irons=irons)).slots[1] for irons in (1, 2)}
    assert (fusing[1].waits_for, fusing[1].work) == (IRONS, 160)
    assert (fusing[2].waits_for, fusing[2].work) == (OWN_PACE, 80)


def test_the_least_of_irons_and_cutters_is_taken() -> None:
    plan = planned(SIX_HOURS)
    assert (plan.irons, plan.cutters, plan.heads) == (2, 4, (4, 2))
    assert planned(replace(SIX_HOURS, students=9)).irons == 3
    assert planned(replace(SIX_HOURS, cutters=1)).slots[2].waits_for == CUTTERS


def test_fewer_masters_take_less_time_in_class() -> None:
    """The method is as much shorter; what else is done in class is not."""
    few, all_of_them = planned(replace(SIX_HOURS, masters=5)), planned(SIX_HOURS)
    assert few.slots[0].work == all_of_them.slots[0].work / 2


def test_masters_that_the_class_does_not_make_are_homework() -> None:
    """At home and in class together every stage is done for all masters."""
    for homework in (None, ("shapes", "finishing"), ()):
        plan = planned(replace(SIX_HOURS, masters=3, homework=homework))
        spent = dict.fromkeys((time.stage for time in QUILT), 0.0)
        for slot in plan.slots:
            spent[slot.stage] += slot.work
        for stage, minutes in (*plan.before, *plan.rest, *plan.after):
            spent[stage] += minutes
        assert spent == pytest.approx({time.stage: 2 * time.minutes for time in QUILT})
        assert plan.others == 7
    assert planned(SIX_HOURS).rest == ()
    assert planned(replace(SIX_HOURS, masters=10)).rest == ()


def test_what_does_not_fit_even_so_is_told() -> None:
    plan = planned(replace(SIX_HOURS, hours=Fraction(2)))
    assert [slot.stage for slot in plan.slots] == list(METHOD)
    assert not plan.fits
    assert plan.done == pytest.approx((120 - 30) / 220)


def test_the_designer_says_what_is_homework() -> None:
    plan = planned(replace(SIX_HOURS, homework=("shapes",)))
    assert plan.slots[0].stage == "cutting"
    assert [stage for stage, _ in plan.after] == ["shapes"]
    assert not plan.fits


def test_a_class_that_sends_all_home_has_nothing_to_run() -> None:
    plan = planned(replace(SIX_HOURS, homework=tuple(time.stage for time in QUILT)))
    assert (plan.slots, plan.needed, plan.fits, plan.done) == ((), 0, True, 1)


@given(st.integers(1, 40), st.integers(1, 60), st.integers(0, 10), st.integers(0, 10))
def test_the_run_has_no_gaps_and_nobody_is_hurried(
    students: int, hours: int, irons: int, cutters: int
) -> None:
    plan = planned(Lesson(students, Fraction(hours, 4), irons=irons, cutters=cutters))
    for before, after in zip(plan.slots, plan.slots[1:], strict=False):
        assert after.start == before.end
    own = {time.stage: time.minutes * 2 for time in QUILT}
    assert all(slot.work >= own[slot.stage] for slot in plan.slots)
    assert plan.fits == (plan.needed <= hours * 15)
    assert 0 <= plan.done <= 1
