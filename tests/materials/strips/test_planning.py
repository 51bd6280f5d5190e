"""Plans of strips: laws that every plan keeps, and the shortest length found in another way."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.materials.bounds import lower_bound
from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import length_of, shelve
from quarterturn.materials.strips import EFFORT, QUICK, Effort, plan_strips
from quarterturn.measure import inches
from tests.materials.cutting_cases import kind, kinds
from tests.materials.strips.level_model import shortest_length

W = inches(40)
SOME = Effort(rounds=30, patterns=500, nodes=50, widest=20_000)
JOBS = kinds(most=5, count=60)


@given(JOBS)
@settings(max_examples=60)
def test_every_piece_is_in_the_plan_exactly_as_often_as_wanted(wanted: list[Kind]) -> None:
    cut: Counter[str] = Counter()
    for shelf in plan_strips(wanted, W, SOME).shelves:
        cut.update({label: n * shelf.strips for label, n in _held(shelf.crosscuts).items()})
    assert cut == {kind.label: kind.count for kind in wanted}


def _held(crosscuts: tuple[object, ...]) -> Counter[str]:
    held: Counter[str] = Counter()
    for cut in crosscuts:
        held[cut.piece] += cut.count  # type: ignore[attr-defined]
    return held


@given(JOBS)
@settings(max_examples=60)
def test_strips_hold_what_they_have_room_for_and_pieces_lie_as_they_may(wanted: list[Kind]) -> None:
    allowed = {(k.label, p.along, p.across) for k in wanted for p in k.positions}
    for shelf in plan_strips(wanted, W, SOME).shelves:
        assert sum(c.along * c.count for c in shelf.crosscuts) + shelf.room == W
        assert shelf.room >= 0
        assert max(c.across for c in shelf.crosscuts) == shelf.height
        assert {(c.piece, c.along, c.across) for c in shelf.crosscuts} <= allowed


@given(JOBS)
@settings(max_examples=60)
def test_a_plan_is_never_longer_than_the_quick_one_nor_shorter_than_any_bound(wanted: list[Kind]) -> None:
    plan = plan_strips(wanted, W, SOME)
    assert plan.length == length_of(plan.shelves) <= length_of(shelve(wanted, W))
    assert plan.bound <= plan.length
    assert lower_bound(wanted, W) <= plan.length


@given(kinds(most=3, count=3))
@settings(max_examples=25, deadline=None)
def test_the_length_is_that_of_another_model_wherever_it_is_proved(wanted: list[Kind]) -> None:
    plan = plan_strips(wanted, W, EFFORT)
    shortest = shortest_length(wanted, W)
    assert plan.bound <= shortest <= plan.length
    if plan.proved:
        assert plan.length == shortest


@given(JOBS.flatmap(lambda wanted: st.tuples(st.just(wanted), st.permutations(wanted))))
@settings(max_examples=20)
def test_the_order_of_the_pieces_does_not_matter(orders: tuple[list[Kind], list[Kind]]) -> None:
    one, other = orders
    assert plan_strips(one, W, SOME) == plan_strips(other, W, SOME)


def test_no_piece_is_no_strip() -> None:
    plan = plan_strips([], W)
    assert (plan.shelves, plan.length, plan.bound, plan.proved) == ((), 0, 0, True)


def test_strips_that_are_full_are_proved_the_shortest() -> None:
    """Sixteen 10″ squares fill four strips of 40″: no cloth is wasted, so nothing can be shorter."""
    plan = plan_strips([kind("A1", 16, (80, 80))], W)
    assert (plan.length, plan.bound, plan.proved) == (40, 40, True)


def test_lower_pieces_are_trimmed_from_a_higher_strip_where_that_is_shorter() -> None:
    """One strip of 8″ holds four 8″ squares and one 7½″ square; by the hand rule there are two strips."""
    plan = plan_strips([kind("A1", 4, (64, 64)), kind("A2", 1, (60, 60))], W)
    (shelf,) = plan.shelves
    assert (shelf.height, shelf.strips, [c.piece for c in shelf.crosscuts]) == (8, 1, ["A1", "A2"])
    assert plan.proved


def test_a_plan_that_no_greedy_rule_finds() -> None:
    """Strips of 40″ for 12 pieces of 13″ and 12 of 7″, all 5″ high: 13+13+7+7 fills each of six strips."""
    plan = plan_strips([kind("A1", 12, (104, 40)), kind("A2", 12, (56, 40))], W)
    assert (plan.length, plan.proved) == (30, True)


@pytest.mark.parametrize("effort", [QUICK, replace(EFFORT, widest=10)])
def test_without_effort_the_quick_plan_stands(effort: Effort) -> None:
    wanted = [kind("A1", 12, (104, 40)), kind("A2", 12, (56, 40))]
    assert plan_strips(wanted, W, effort).shelves == shelve(wanted, W)
