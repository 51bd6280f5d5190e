"""Pieces from fat quarters and the like: a published chart, laws, and the least number found in another way."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

import pytest
from hypothesis import given, settings

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.strips.stock import Cloth, StockPlan, plan_stock
from quarterturn.measure import Length, inches
from tests.materials.cutting_cases import kind, kinds, size

FAT_QUARTER = Cloth("fat quarter", inches(22), inches(18), None, turnable=True)

HALF_YARD = Cloth("half yard", inches(40), inches(20), None, turnable=True)

CHART = {
    "2": 99, "2 1/2": 56, "2 7/8": 42, "3": 42, "3 1/2": 30, "3 7/8": 20, "4": 20, "4 1/2": 16, "4 7/8": 12,
    "5": 12, "5 1/2": 12, "5 7/8": 9, "6": 9, "6 1/2": 6, "6 7/8": 6,
}  # fmt: skip
"""Squares from a fat quarter of 18″ × 22″ (quilterscache.com 2002 and piecefulliving.blogspot.com 2011 agree)."""


def squares(side: Length, count: int) -> Kind:
    """Return so many squares."""
    return Kind("A1", count, (Position(side, side),))


@pytest.mark.parametrize(("side", "count"), CHART.items())
def test_a_fat_quarter_gives_the_squares_of_the_published_chart_and_no_more(side: str, count: int) -> None:
    one, more = (plan_stock([squares(size(side), n)], [FAT_QUARTER]) for n in (count, count + 1))
    assert (one.used, one.bound) == (1, 1)
    assert (more.used, more.bound) == (2, 2)


def cut_of(plan: StockPlan) -> Counter[int]:
    """Return how many pieces of each kind are cut."""
    found: Counter[int] = Counter()
    for cloth in plan.cut:
        for pattern, strips in cloth.strips:
            for cut, n in pattern.cuts:  # a kind may lie both ways in one strip
                found[cut.kind] += n * strips * cloth.count
    return found


@given(kinds(most=4, count=30))
@settings(max_examples=40, deadline=None)
def test_every_piece_is_cut_once_and_every_cloth_holds_its_strips(wanted: list[Kind]) -> None:
    plan = plan_stock(wanted, [HALF_YARD])
    assert cut_of(plan) == {number: kind.count for number, kind in enumerate(wanted)}
    assert plan.bound <= plan.used
    for cloth in plan.cut:
        across, along = (40, 20) if cloth.upright else (20, 40)
        assert sum(p.height * n for p, n in cloth.strips) * plan.job.across_step <= across
        assert all(p.used * plan.job.along_step <= along for p, _ in cloth.strips)


@given(kinds(most=3, count=20))
@settings(max_examples=30, deadline=None)
def test_more_kinds_of_cloth_never_need_more_pieces_of_it(wanted: list[Kind]) -> None:
    small = Cloth("ten inch square", inches(10), inches(10), None, turnable=True)
    assert plan_stock(wanted, [HALF_YARD, small]).bound <= plan_stock(wanted, [HALF_YARD]).used


def test_what_the_shelf_does_not_hold_is_told() -> None:
    """One odd piece of 12″ × 7″ gives three 4″ squares; the other two have to be bought."""
    plan = plan_stock([squares(inches(4), 5)], [Cloth("blue end", inches(12), inches(7), 1, turnable=False)])
    assert (plan.used, plan.unplaced) == (1, (2,))


def test_a_print_with_a_direction_is_cut_across_only() -> None:
    """Strips 20″ long lie along 21″ of cloth, not along 18″: two of 8″ and no third one turned."""
    wanted = [kind("A1", 3, (160, 64))]
    plan = plan_stock(wanted, [Cloth("fat quarter", inches(21), inches(18), None, turnable=False)])
    assert plan.used == 2
    assert not any(cloth.upright for cloth in plan.cut)


def test_of_two_cloths_that_do_the_smaller_is_taken() -> None:
    large, small = (
        Cloth(name, inches(w), inches(18), None, True) for name, w in (("large", 36), ("small", 22))
    )
    (cut,) = plan_stock([squares(inches(5), 12)], [large, small]).cut
    assert cut.cloth == "small"


def test_pieces_too_large_for_every_cloth_stay_uncut() -> None:
    plan = plan_stock([squares(Fraction(19), 2)], [FAT_QUARTER])
    assert (plan.cut, plan.unplaced) == ((), (2,))


def test_what_is_on_hand_is_used_before_anything_is_bought() -> None:
    """A fat quarter gives twelve 5" squares, an odd piece of 10" four: twenty take one fat quarter and both ends."""
    end = Cloth("end", inches(10), inches(10), 2, turnable=True, on_hand=True)
    plan = plan_stock([squares(inches(5), 20)], [end, FAT_QUARTER])
    assert {cut.cloth: cut.count for cut in plan.cut} == {"end": 2, "fat quarter": 1}
    assert (plan.bound, plan.unplaced) == (1, (0,))


def test_what_is_on_hand_and_saves_nothing_is_left_on_the_shelf() -> None:
    end = Cloth("end", inches(10), inches(10), 2, turnable=True, on_hand=True)
    plan = plan_stock([squares(inches(5), 12)], [end, FAT_QUARTER])
    assert {cut.cloth: cut.count for cut in plan.cut} == {"fat quarter": 1}


def test_the_bound_counts_what_must_be_bought_beyond_what_is_on_hand() -> None:
    """A fat quarter gives 30 squares of 3 1/2", an end of 7" four: 64 squares take two to buy, 65 take three."""
    end = Cloth("end", inches(7), inches(7), 1, turnable=True, on_hand=True)
    few, more = (plan_stock([squares(size("3 1/2"), n)], [end, FAT_QUARTER]) for n in (64, 65))
    assert (few.bound, few.used) == (2, 3)
    assert (more.bound, more.used) == (3, 3)


def test_what_the_shelf_cannot_hold_all_of_it_holds_by_area() -> None:
    """One end of 8" holds one 8" square or four of 4": the same area, but never a 4" square alone."""
    wanted = [squares(inches(4), 3), Kind("A2", 1, (Position(inches(8), inches(8)),))]
    plan = plan_stock(wanted, [Cloth("end", inches(8), inches(8), 1, turnable=True, on_hand=True)])
    assert plan.unplaced == (3, 0)


@given(kinds(most=3, count=20))
@settings(max_examples=30, deadline=None)
def test_cloth_on_hand_never_makes_more_be_bought(wanted: list[Kind]) -> None:
    end = Cloth("end", inches(20), inches(10), 2, turnable=True, on_hand=True)
    plan = plan_stock(wanted, [end, HALF_YARD])
    bought = sum(cut.count for cut in plan.cut if cut.cloth == "half yard")
    assert not any(plan.unplaced)
    assert plan.bound <= bought <= plan_stock(wanted, [HALF_YARD]).used
