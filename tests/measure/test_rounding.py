"""The rounding rules, as laws and against published tables.

Table of setting triangles by finished block: the chart at lukas.is-a-geek.org/tani (5" to 16", "rounded up to
1/8"). Of a second published chart (phoebemoon.com, quarter-inch steps) the side squares for 14", 17" and 20"
(21", 25 1/4", 29 1/2") lie below their own rule, and for 14" below what the geometry needs; so that chart is
no oracle, and the last test says by how much it errs.
"""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.measure import (
    CUT_TOLERANCE,
    INCH,
    MM,
    YARD,
    Length,
    Units,
    buy_up,
    cut_step,
    cut_up,
    inches,
    is_on_ruler,
    mm,
    quote,
    round_nearest,
    round_up,
)

LENGTHS = st.fractions(-1000, 1000) | st.floats(-1000, 1000).map(Fraction)
STEPS = st.sampled_from([INCH / 8, INCH / 16, MM, 5 * MM, YARD / 8, 100 * MM])
UNITS = st.sampled_from(Units)

# finished block: side square, corner square, in eighths of an inch
SETTING_TRIANGLES = {
    5: (67, 36), 6: (78, 41), 7: (90, 47), 8: (101, 53), 9: (112, 58), 10: (124, 64),
    11: (135, 70), 12: (146, 75), 13: (158, 81), 14: (169, 87), 15: (180, 92), 16: (191, 98),
}  # fmt: skip


@given(LENGTHS, STEPS)
def test_rounding_up_gives_the_smallest_multiple_not_below(value: Length, step: Length) -> None:
    rounded = round_up(value, step)
    assert rounded % step == 0
    assert value <= rounded < value + step


@given(LENGTHS, STEPS)
def test_rounding_to_the_nearest_errs_by_half_a_step_at_most(value: Length, step: Length) -> None:
    rounded = round_nearest(value, step)
    assert rounded % step == 0
    assert -step / 2 < rounded - value <= step / 2


@given(LENGTHS, UNITS)
def test_a_size_to_cut_is_never_below_its_value_by_more_than_the_tolerance(
    value: Length, units: Units
) -> None:
    cut = cut_up(value, units)
    assert cut % cut_step(units) == 0
    assert value - CUT_TOLERANCE <= cut < value + cut_step(units)


@given(LENGTHS, UNITS)
def test_every_rule_leaves_alone_what_it_has_rounded(value: Length, units: Units) -> None:
    for rule in (cut_up, quote, buy_up):
        assert rule(rule(value, units), units) == rule(value, units)


@given(LENGTHS, LENGTHS, UNITS)
def test_every_rule_keeps_the_order(a: Length, b: Length, units: Units) -> None:
    for rule in (cut_up, quote, buy_up):
        assert rule(min(a, b), units) <= rule(max(a, b), units)


@given(st.integers(0, 10_000), UNITS)
def test_a_mark_on_the_ruler_survives_float_noise(count: int, units: Units) -> None:
    mark = count * cut_step(units)
    noise = math.ulp(float(mark)) * 8
    assert {cut_up(float(mark) + each, units) for each in (-noise, 0.0, noise)} == {mark}
    assert {quote(float(mark) + each, units) for each in (-noise, 0.0, noise)} == {mark}


@pytest.mark.parametrize("block", SETTING_TRIANGLES)
def test_setting_triangles_are_cut_as_the_published_chart_says(block: int) -> None:
    side, corner = SETTING_TRIANGLES[block]
    assert cut_up(block * math.sqrt(2) + 1.25, Units.INCH) == Fraction(side, 8)
    assert cut_up(block / math.sqrt(2) + 0.875, Units.INCH) == Fraction(corner, 8)


def test_a_strict_ceiling_would_break_the_charts_side_square_for_16_inches() -> None:
    exact = 16 * math.sqrt(2) + 1.25
    assert cut_up(exact, Units.INCH) == inches(23, 7, 8)
    assert round_up(exact, INCH / 8) == inches(24)


def test_a_published_pattern_on_point_is_cut_by_the_same_rule() -> None:
    # "In the Garden", a free pattern of August 2023 with 12 3/8" blocks: 18 3/4" and 9 5/8".
    assert cut_up(12.375 * math.sqrt(2) + 1.25, Units.INCH) == inches(18, 3, 4)
    assert cut_up(12.375 / math.sqrt(2) + 0.875, Units.INCH) == inches(9, 5, 8)


def test_a_published_pattern_on_point_with_sashing_is_cut_by_the_same_rule() -> None:
    # "Call Me Square", Quilter's World, May 2019, p. 60: 10" blocks with 1" sashes; 16 7/8" and 9 3/8".
    assert cut_up(11 * math.sqrt(2) + 1.25, Units.INCH) == inches(16, 7, 8)
    assert cut_up(12 / math.sqrt(2) + 0.875, Units.INCH) == inches(9, 3, 8)


@pytest.mark.parametrize(
    ("block", "diagonal"),
    [
        (4, "5 5/8"), (5, "7 1/8"), (6, "8 1/2"), (7, "9 7/8"), (8, "11 3/8"), (9, "12 3/4"), (10, "14 1/8"),
        (12, "17"), (14, "19 3/4"),
    ],
)  # fmt: skip
def test_diagonals_are_quoted_to_the_nearest_eighth(block: int, diagonal: str) -> None:
    # M. Hohn, maths charts page, 17 June 2002, quilterscache.com: all nine published cells.
    assert quote(block * math.sqrt(2), Units.INCH) == sum(map(Fraction, diagonal.split()))


@pytest.mark.parametrize(
    ("yards", "length"),
    [
        ("1/8", "4.5"), ("1/4", "9"), ("1/3", "12"), ("3/8", "13.5"), ("1/2", "18"), ("5/8", "22.5"), ("2/3", "24"),
        ("3/4", "27"), ("7/8", "31.5"),
    ],
)  # fmt: skip
def test_parts_of_a_yard_in_inches(yards: str, length: str) -> None:
    # scissortailquilting.com and catbirdquilts.wordpress.com, the same table.
    assert Fraction(yards) * YARD == inches(length)


@pytest.mark.parametrize(("part", "bought"), [("1/4", "1/4"), ("1/3", "3/8"), ("2/3", "3/4"), ("7/8", "7/8")])
def test_thirds_of_a_yard_are_bought_as_the_next_eighth(part: str, bought: str) -> None:
    assert buy_up(Fraction(part) * YARD, Units.INCH) == Fraction(bought) * YARD


@pytest.mark.parametrize(
    ("yards", "metres"),
    [
        ("1/4", "0.23"), ("1/3", "0.30"), ("3/8", "0.34"), ("1/2", "0.46"), ("5/8", "0.57"), ("5/4", "1.14"),
        ("13/8", "1.49"), ("11/4", "2.51"), ("9/2", "4.11"), ("61/8", "6.97"), ("11/9", "1.12"), ("3", "2.74"),
    ],
)  # fmt: skip
def test_yards_in_metres_to_the_nearest_centimetre(yards: str, metres: str) -> None:
    # The pairs in the free pattern "Countryside Day Quilt"; 44" is 11/9 yard, 108" is 3 yards.
    assert round_nearest(Fraction(yards) * YARD, 10 * MM) == Fraction(metres) * 1000 * MM


def test_inches_in_centimetres_to_the_nearest_tenth_of_a_millimetre() -> None:
    # The same pattern: 88 1/4" is 224.16 cm, 16" is 40.64 cm.
    assert round_nearest(inches(88, 1, 4), MM / 10) == mm("2241.6")
    assert round_nearest(inches(16), MM / 10) == mm("406.4")


def test_cloth_is_bought_in_eighths_of_a_yard_or_in_10_cm() -> None:
    assert buy_up(inches(20), Units.INCH) == YARD * 5 / 8
    assert buy_up(YARD * 5 / 8, Units.INCH) == YARD * 5 / 8
    assert buy_up(mm(901), Units.METRIC) == mm(1000)
    assert buy_up(mm(900), Units.METRIC) == mm(900)


def test_the_ruler_shows_eighths_of_an_inch_and_every_2_and_a_half_mm() -> None:
    assert is_on_ruler(inches(4, 3, 8), Units.INCH)
    assert not is_on_ruler(inches(4, 3, 16), Units.INCH)
    assert is_on_ruler(mm("47.5"), Units.METRIC)
    assert not is_on_ruler(mm(47), Units.METRIC)


@pytest.mark.parametrize(
    ("block", "printed", "short"), [(14, 21, 0.049), (17, 25.25, 0.042), (20, 29.5, 0.034)]
)
def test_three_cells_of_a_second_chart_lie_below_its_own_rule(
    block: int, printed: float, short: float
) -> None:
    rule = block * math.sqrt(2) + 1.25
    assert rule - printed == pytest.approx(short, abs=0.0005)
    assert cut_up(rule, Units.INCH) > printed
