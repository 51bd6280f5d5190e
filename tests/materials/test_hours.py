"""Hours from work and minutes, and the price below which a quilt is not made."""

from __future__ import annotations

import math
from dataclasses import fields, replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import Minutes
from quarterturn.materials.hours import (
    CUTTER,
    IRON,
    Task,
    Work,
    assumptions,
    hours_of,
    minutes_of,
    stage_times,
)

MINUTES = Minutes()
tasks = st.builds(
    Task, st.sampled_from(["cutting", "fusing", "assembly"]), st.sampled_from(Work), st.floats(0, 500)
)


def test_every_kind_of_work_has_its_minutes() -> None:
    assert [work.value for work in Work] == [field.name for field in fields(Minutes)]


def one_square(edge: float) -> float:
    """Return the minutes of the method for one square with a shape of so much edge, cut both ways and trimmed."""
    work = {
        Work.RING: 1.0, Work.SHAPE: 1.0, Work.PLACING: 1.0, Work.STITCHING: edge, Work.APART: 2.0,
        Work.CUT_AWAY: 4.0, Work.TRIM: 4.0,
    }  # fmt: skip
    return sum(minutes_of(Task("units", kind, amount), MINUTES) for kind, amount in work.items())


def test_a_square_takes_as_long_as_the_trade_says() -> None:
    """15 to 18 minutes for a square with a circle of 6″, whose edge is 19″ (common practice, no source)."""
    edge = math.pi * 6
    assert 3 <= minutes_of(Task("stitching", Work.STITCHING, edge), MINUTES) <= 5
    assert 15 <= one_square(edge) <= 18


@given(st.lists(tasks))
def test_stages_hold_all_minutes_in_the_order_in_which_they_begin(found: list[Task]) -> None:
    times = stage_times(found, MINUTES)
    assert [time.stage for time in times] == list(dict.fromkeys(task.stage for task in found))
    assert hours_of(times) * 60 == pytest.approx(sum(minutes_of(task, MINUTES) for task in found))
    assert all(time.iron <= time.minutes and time.cutter <= time.minutes for time in times)


@given(st.lists(tasks))
def test_the_assumptions_tell_the_whole_time(found: list[Task]) -> None:
    told = assumptions(found, MINUTES)
    assert sum(each.each * each.amount for each in told) == pytest.approx(
        hours_of(stage_times(found, MINUTES)) * 60
    )
    assert len({each.work for each in told}) == len(told)


def test_a_designer_who_is_twice_as_quick_takes_half_the_time() -> None:
    quick = replace(MINUTES, seam=MINUTES.seam / 2)
    assert minutes_of(Task("assembly", Work.SEAM, 10), quick) == 5


def test_iron_and_cutter_are_never_in_use_at_once() -> None:
    assert not IRON.keys() & CUTTER.keys()
    assert Fraction(1, 4) in IRON.values()
