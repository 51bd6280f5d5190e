"""No plan is shorter than the bound, and none longer than the hand rule; an exhaustive search is the judge."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.materials.bounds import hand_rule, lower_bound
from quarterturn.materials.kinds import Kind
from quarterturn.materials.prices import price_bound
from quarterturn.materials.shelves import length_of, shelve
from quarterturn.measure import inches
from tests.materials.cutting_cases import kind, kinds
from tests.materials.every_strip import shortest

W = inches(40)


@settings(max_examples=150)
@given(kinds(most=3, count=4))
def test_the_best_plan_lies_between_bound_and_plan(wanted: list[Kind]) -> None:
    usable = inches(23)
    best = shortest(wanted, usable)
    assert lower_bound(wanted, usable) <= best <= length_of(shelve(wanted, usable))


@given(kinds(most=6, count=300))
def test_the_plan_lies_between_bound_and_hand_rule(wanted: list[Kind]) -> None:
    length = length_of(shelve(wanted, W))
    assert lower_bound(wanted, W) <= length <= hand_rule(wanted, W)


@given(kinds(most=6, count=300))
def test_no_bound_is_below_the_area(wanted: list[Kind]) -> None:
    area = sum(kind.count * kind.positions[0].along * kind.positions[0].across for kind in wanted)
    assert lower_bound(wanted, W) >= area / W


@given(kinds(most=5), st.integers(1, 20), st.data())
def test_hand_rule_grows_with_the_pieces(wanted: list[Kind], more: int, data: st.DataObject) -> None:
    which = data.draw(st.integers(0, len(wanted) - 1))
    grown = [
        Kind(one.label, one.count + more * (number == which), one.positions)
        for number, one in enumerate(wanted)
    ]
    assert hand_rule(wanted, W) <= hand_rule(grown, W)


@given(kinds(most=1, count=500))
def test_one_kind_that_may_not_turn_is_proved_best(wanted: list[Kind]) -> None:
    (one,) = wanted
    if len(one.positions) == 1:
        assert lower_bound(wanted, W) == length_of(shelve(wanted, W)) == hand_rule(wanted, W)


def test_pieces_wider_than_half_the_cloth_take_a_strip_each() -> None:
    """Three of 20½″ × 1″ have an area of 1½ strips."""
    assert lower_bound([kind("A1", 3, (164, 8))], W) == 3


def test_a_piece_that_could_stand_is_not_too_cheap() -> None:
    """Two of 24½″ × 2½″ and two of 20½″ × 2½″: lying they take 4 strips, standing one is taller than those."""
    wanted = [kind("A1", 2, (196, 20), (20, 196)), kind("A2", 2, (164, 20), (20, 164))]
    assert lower_bound(wanted, W) == length_of(shelve(wanted, W)) == 10


def test_prices_and_sums_of_heights_prove_a_plan_best() -> None:
    """25 of 9½″ and 7 of 7½″ from 42″: seven strips and one more of 7½″; nothing lies between 66½″ and 74″."""
    wanted = [kind("A1", 25, (76, 76)), kind("A2", 7, (60, 60))]
    assert lower_bound(wanted, inches(42)) == length_of(shelve(wanted, inches(42))) == 74


def test_prices_are_given_up_where_a_strip_can_be_filled_in_too_many_ways() -> None:
    wanted = [Kind(f"A{i}", 9, kind("A", 9, (8, 8)).positions) for i in range(2)]
    odd = [
        Kind(one.label, 9, (type(one.positions[0])(inches(1) + inches(0, 1, 97 + i), inches(1)),))
        for i, one in enumerate(wanted)
    ]
    assert price_bound(odd, inches(150)) == 0
    assert 0 < lower_bound(odd, inches(150)) <= length_of(shelve(odd, inches(150)))


def test_nothing_wanted_is_bounded_by_nothing() -> None:
    assert lower_bound([], W) == hand_rule([], W) == 0
