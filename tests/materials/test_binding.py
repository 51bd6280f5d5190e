"""Binding against published sums; where sources contradict each other, against the range of all of them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import Fold, finished_width, strip_width
from quarterturn.materials.runs import strips_to_join
from quarterturn.measure import YARD, Length, Units, inches, round_up
from quarterturn.pieces import bias_length, bias_square
from tests.materials.cutting_cases import size

NOTHING = inches(0)
QUARTER = inches(0, 1, 4)

STRIPS = [
    pytest.param(54, 60, 10, 42, 0, 238, 6, id="monicacurryquiltdesign.com 2019: 238/42 = 5.67"),
    pytest.param(102, 112, 10, 40, 0, 438, 11, id="petiterepublic.com: 438/40 = 10.95"),
    pytest.param(40, 50, 0, 40, 0, 180, 5, id="alwaysinstitchesohio.blogspot.com 2009: 180/40 = 4.5"),
    pytest.param(46, 46, 0, 40, 0, 184, 5, id="sylviasquiltdepot.com: 184/40 = 4.6"),
    pytest.param(84, 92, 0, 42, 0, 352, 9, id="vandcdesign.com: a queen's bare perimeter"),
    pytest.param(42, 42, 12, 42, 0, 180, 5, id="allpeoplequilt.com, Spin: 42 1/2 inches with the seams"),
]


@pytest.mark.parametrize(("width", "height", "extra", "usable", "loss", "need", "strips"), STRIPS)
def test_published_strips(
    width: int, height: int, extra: int, usable: int, loss: int, need: int, strips: int
) -> None:
    assert 2 * (width + height) + extra == need
    assert strips_to_join(inches(need), inches(usable), inches(loss)) == strips


def test_a_strip_width_is_lost_in_each_mitred_join() -> None:
    """50″ × 60″: 220/(40 − 2) = 5.79, six strips (castillejacotton.blogspot.com 2013)."""
    assert strips_to_join(inches(220), inches(40), inches(2)) == 6


def test_strips_of_two_published_bindings_take_half_a_yard_at_most() -> None:
    """40″ × 50″ and 46″ × 46″: five strips of 2½″ are 12½″, ½ yd ample (sylviasquiltdepot.com)."""
    assert strips_to_join(inches(184), inches(40), NOTHING) * size("2 1/2") == inches(12, 1, 2)
    assert inches(12, 1, 2) <= YARD / 2


@pytest.mark.parametrize("extra", [8, 10, 12, 15, 20, 24])
def test_the_allowances_of_the_sources_differ_by_one_strip_at_most(extra: int) -> None:
    """8″ to 24″ beyond the perimeter, by source; the commonest is 10″ (also ctpub.com). All of 54″ × 60″."""
    assert strips_to_join(inches(2 * (54 + 60) + extra), inches(42), NOTHING) in (6, 7)


SQUARES = [
    pytest.param(250, "2", 22.36, 23, id="mydecozo.co.uk"),
    pytest.param(100, "3 1/2", 18.71, 19, id="quiltersquestiontime.com 2021"),
    pytest.param(55, "2 1/2", 11.73, 12, id="threadbeargarments.com"),
]


@pytest.mark.parametrize(("need", "strip", "exact", "whole"), SQUARES)
def test_the_square_with_its_seam_lies_within_the_published_margins(
    need: int, strip: str, exact: float, whole: int
) -> None:
    """Sources add nothing, 2″ or 3″ to the side (5minpourcreer.com, vandcdesign.com)."""
    side = bias_square(inches(need), size(strip), QUARTER, Units.INCH)
    assert exact <= side <= whole + 3


@pytest.mark.parametrize(
    ("need", "strip", "inches_of_cloth", "yards"),
    [pytest.param(360, "4 1/2", 38.57, 1.07), pytest.param(220, "3", 15.7, 0.436)],
)
def test_published_rectangle_rule(need: int, strip: str, inches_of_cloth: float, yards: float) -> None:
    """Length × width / 42 (threadbeargarments.com): the area law, for a rectangle as wide as the cloth."""
    cloth = inches(need) * size(strip) / 42
    assert float(cloth) == pytest.approx(inches_of_cloth, abs=0.02)
    assert float(cloth / YARD) == pytest.approx(yards, abs=0.002)
    assert strips_to_join(inches(need), inches(42), NOTHING) * size(strip) >= cloth


@pytest.mark.parametrize(("most", "yards"), [(200, "7/8"), (350, "1 1/8"), (525, "1 1/3")])
def test_published_ready_reckoner_is_never_short(most: int, yards: str) -> None:
    """Up to 200″ ⅞ yd, to 350″ 1⅛ yd, to 525″ 1⅓ yd (cottonpatchfabrics.com; width not stated, 2½″ taken)."""
    assert bias_square(inches(most), inches(2, 1, 2), QUARTER, Units.INCH) <= size(yards) * YARD


def test_a_queen_takes_three_quarters_of_a_yard() -> None:
    """84″ × 92″, 352″ bare, ⅜″ finished double fold, ¾ yd (vandcdesign.com): an eighth more than the rule needs."""
    strip = strip_width(inches(0, 3, 8), Fold.DOUBLE)
    cut = strips_to_join(inches(352), inches(42), NOTHING) * strip
    assert cut <= size("3/4") * YARD
    assert size("3/4") - round_up(cut, YARD / 8) / YARD <= size("1/8")


STITCHED = [
    pytest.param("42 1/2", 5, id="Spin"),
    pytest.param("51 1/2", 6, id="Girly Swirls"),
    pytest.param("37 1/2", 4, id="Magic Circles"),
    pytest.param("22 1/2", 3, id="Spools Fun"),
    pytest.param("38 1/2", 4, id="Garden Blooms"),
]
"""Free square patterns of allpeoplequilt.com, their sides with the outer seams on, and strips of 2½″ × 42″."""


@pytest.mark.parametrize(("side", "strips"), STITCHED)
def test_published_strips_of_free_patterns(side: str, strips: int) -> None:
    assert strips_to_join(4 * size(side) + 10, inches(42), NOTHING) == strips


@pytest.mark.parametrize(("side", "yards"), [("51 1/2", "1/2"), ("22 1/2", "1/3")])
def test_published_binding_yards_of_free_patterns_hold_their_strips(side: str, yards: str) -> None:
    """Girly Swirls ½ yd, Spools Fun ⅓ yd (allpeoplequilt.com)."""
    cut = strips_to_join(4 * size(side) + 10, inches(42), NOTHING) * size("2 1/2")
    assert cut <= size(yards) * YARD <= cut + inches(5)


def test_a_published_yield_is_the_area_and_whole_rows_give_less() -> None:
    """20″ × 20″ at 2″ make 200″ (mydecozo.co.uk): the area. Seams and the last row take of it."""
    side, strip = inches(20), inches(2)
    assert side**2 / strip == 200
    assert 160 < bias_length(side, side, strip, QUARTER, Units.INCH) < 200
    assert 160 < bias_length(side, side, strip, NOTHING, Units.INCH) <= 200


def test_a_published_yield_that_takes_one_seam_off_is_more_than_both_leave() -> None:
    """22″ less one seam, at 3″: 21¾² / 3 = 157.7″ (a copy at victoryautony.com)."""
    side, strip = inches(22), inches(3)
    assert float((side - QUARTER) ** 2 / strip) == pytest.approx(157.7, abs=0.05)
    assert bias_length(side, side, strip, QUARTER, Units.INCH) <= (side - 2 * QUARTER) ** 2 / strip < 158


WIDTHS = [
    pytest.param("1/4", Fold.SINGLE, "1 1/8", "1 1/4", id="quarter inch, single: ctpub.com"),
    pytest.param("1/4", Fold.DOUBLE, "1 5/8", "1 3/4", id="quarter inch, double: ctpub.com"),
    pytest.param("3/8", Fold.DOUBLE, "2 3/8", "2 1/2", id="three eighths, double"),
    pytest.param("1/2", Fold.DOUBLE, "3 1/8", "3 1/4", id="half inch, double"),
]


@pytest.mark.parametrize(("finished", "fold", "low", "high"), WIDTHS)
def test_strip_widths(finished: str, fold: Fold, low: str, high: str) -> None:
    """4·w and 6·w with ⅛″ (ctpub.com) to ¼″ (from memory) for the turning."""
    assert strip_width(size(finished), fold) == size(low)
    assert strip_width(size(finished), fold, QUARTER) == size(high)


def test_the_rule_of_four_is_for_a_single_fold_without_a_turning() -> None:
    """½″ finished from 2″ (vandcdesign.com)."""
    assert strip_width(inches(0, 1, 2), Fold.SINGLE, NOTHING) == 2


@pytest.mark.parametrize("strip", ["2 1/4", "2 1/2"])
def test_strips_sold_as_a_quarter_inch_finish_within_an_eighth_and_a_half(strip: str) -> None:
    """They give about ⅜″: shops and the rule differ by ⅛″, and no test can be finer."""
    assert abs(finished_width(size(strip), Fold.DOUBLE) - QUARTER) <= inches(0, 3, 16)


LENGTHS = st.integers(400, 4000).map(lambda n: inches(0, n, 8))
WIDE = st.integers(8, 32).map(lambda n: inches(0, n, 8))


@given(LENGTHS, WIDE, st.sampled_from([NOTHING, QUARTER]))
def test_the_square_is_enough_and_the_next_smaller_is_not(need: Length, strip: Length, seam: Length) -> None:
    side = bias_square(need, strip, seam, Units.INCH)
    assert bias_length(side, side, strip, seam, Units.INCH) >= need
    smaller = side - Fraction(1, 8)
    assert bias_length(smaller, smaller, strip, seam, Units.INCH) < need


@given(WIDE, st.sampled_from(Fold))
def test_finished_width_undoes_strip_width(finished: Length, fold: Fold) -> None:
    assert finished_width(strip_width(finished, fold), fold) == finished
