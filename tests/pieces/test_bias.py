"""A sheet on the bias: by area, by whole rows, and within the cloth."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.measure import Length, Units, inches, is_on_ruler, mm
from quarterturn.pieces import Purpose, bias_length, bias_rows, bias_sheet, bias_square
from tests.samples import ROUNDS, Changed, pattern_of

QUARTER = inches(0, 1, 4)
NEEDS = st.integers(400, 6000).map(lambda n: inches(0, n, 8))
STRIPS = st.integers(8, 32).map(lambda n: inches(0, n, 8))
CLOTHS = st.sampled_from([inches(20), inches(40), inches(42), inches(42, 1, 3)])
UNITS = st.sampled_from(Units)


def test_a_square_without_seams_that_rows_fill_gives_what_its_area_says() -> None:
    """Ten rows of 2″ are 20·√2″ of side: 28.3″, cut 28⅜″ with the rest of a row over."""
    side = inches(28, 3, 8)
    assert bias_rows(side, inches(2), inches(0)) == 10
    assert bias_length(side, side, inches(2), inches(0), Units.INCH) == pytest.approx(
        float(side**2 / 2), rel=0.005
    )


@given(NEEDS, STRIPS, CLOTHS, UNITS)
def test_a_sheet_is_enough_lies_on_the_cloth_and_on_the_ruler(
    need: Length, strip: Length, usable: Length, units: Units
) -> None:
    short, along = bias_sheet(need, strip, usable, QUARTER, units)
    assert bias_length(short, along, strip, QUARTER, units) >= need
    assert short <= min(usable, along)
    assert all(is_on_ruler(side, units) for side in (short, along))


@given(NEEDS, STRIPS, UNITS)
def test_a_sheet_gives_no_more_than_its_area_less_both_seams(
    need: Length, strip: Length, units: Units
) -> None:
    short, along = bias_sheet(need, strip, inches(40), QUARTER, units)
    area = (short - 2 * QUARTER) * (along - 2 * QUARTER)
    assert bias_length(short, along, strip, QUARTER, units) * strip <= area


@given(NEEDS, STRIPS)
def test_no_smaller_square_is_enough(need: Length, strip: Length) -> None:
    smaller = bias_square(need, strip, QUARTER, Units.INCH) - Fraction(1, 8)
    assert bias_length(smaller, smaller, strip, QUARTER, Units.INCH) < need


def test_a_square_wider_than_the_cloth_becomes_a_rectangle_across_it() -> None:
    short, along = bias_sheet(inches(700), inches(2, 1, 2), inches(40), QUARTER, Units.INCH)
    assert short == 40 < along < math.sqrt(700 * 2.5) ** 2 / 40 + 6
    assert bias_sheet(mm(3000), mm(65), mm(1000), mm(5), Units.METRIC)[0] < mm(1000)


def test_the_bill_has_the_square_in_place_of_the_run() -> None:
    bill = pattern_of(Changed(ROUNDS).with_("[binding]", '[binding]\nkind = "bias"').text).bill
    [square] = [piece for piece in bill.pieces if piece.purpose is Purpose.BIAS]
    assert (square.name, square.count, square.length) == ("bias square", 1, square.width)
    assert not any(piece.purpose is Purpose.BINDING for piece in bill.pieces)
