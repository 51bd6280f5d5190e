"""Charts that shops print, cell by cell, and the cells in which they are wrong."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.materials.charts import (
    CENTIMETRE,
    FAT_QUARTER,
    chart,
    fat_eighth,
    fat_quarter,
    in_metres,
    length_for_squares,
    squares_from,
)
from quarterturn.materials.strips.stock import Cloth, plan_stock
from quarterturn.measure import YARD, Length, inches, round_nearest
from tests.materials.cutting_cases import size
from tests.materials.strips.test_stock import CHART, squares

YARD_OF_44 = {
    "1": 1584, "1 1/2": 696, "1 7/8": 437, "2": 396, "2 1/2": 238, "2 7/8": 180, "3": 168, "3 1/2": 120,
    "3 7/8": 99, "4": 99, "4 1/2": 72, "4 7/8": 63, "5": 56, "5 1/2": 48, "5 7/8": 42, "6": 42, "6 1/2": 30,
    "6 7/8": 30, "7 1/2": 20, "8": 20, "8 1/2": 20, "8 7/8": 16, "9": 16, "9 1/2": 12, "10": 12, "11": 12,
    "11 1/2": 9, "12": 9, "12 1/2": 6, "12 7/8": 6,
}  # fmt: skip
"""Squares from a yard of 44″ (quilterscache.com; its heading says 42″). The cell of 7″ is left out, see below."""


@pytest.mark.parametrize(("side", "count"), YARD_OF_44.items())
def test_squares_from_a_yard(side: str, count: int) -> None:
    assert squares_from(inches(44), YARD, size(side)).squares == count


def test_one_cell_of_that_chart_is_wrong() -> None:
    """It has 35 squares of 7″: six across and five down are 30."""
    row = squares_from(inches(44), YARD, inches(7))
    assert (row.per_row, row.rows, row.squares) == (6, 5, 30)


@pytest.mark.parametrize(("side", "count"), CHART.items())
def test_squares_from_a_fat_quarter(side: str, count: int) -> None:
    """quilterscache.com 2002 and piecefulliving.blogspot.com 2011 agree."""
    [row] = chart(*FAT_QUARTER, [size(side)])
    assert row.squares == count


@pytest.mark.parametrize(("side", "wrong"), [("2 1/2", 55), ("5", 15)])
def test_a_published_chart_that_cannot_be(side: str, wrong: int) -> None:
    """quiltersresources.com: fifteen squares of 5″ do not lie in three by four, and 56 of 2½″ do in seven by eight."""
    assert squares_from(*FAT_QUARTER, size(side)).squares != wrong


@pytest.mark.parametrize(("width", "quarter", "eighth"), [(44, (18, 22), (9, 22)), (42, (18, 21), (9, 21))])
def test_fat_quarters_and_eighths(width: int, quarter: tuple[int, int], eighth: tuple[int, int]) -> None:
    """18″ × 22″ (sew4home.com), 18″ × 21″ and 9″ × 21″ of 42″ cloth (allpeoplequilt.com)."""
    assert (fat_quarter(inches(width)), fat_eighth(inches(width))) == (quarter, eighth)


def test_63_squares_of_nine_and_a_half() -> None:
    """Four a width, sixteen widths, 152″, 4.222 yd (quiltingboard.com 6228687)."""
    length = length_for_squares(63, size("9 1/2"), inches(42))
    assert length == 152
    assert float(length / YARD) == pytest.approx(4.222, abs=0.0005)


def test_squares_of_two_sizes() -> None:
    """52 squares of 4″ and 20 of 3″ from 44″: 5 × 4 + 2 × 3 = 26″ (quiltingboard.com t131707)."""
    parts = length_for_squares(52, inches(4), inches(44)), length_for_squares(20, inches(3), inches(44))
    assert parts == (20, 6)


EIGHTHS = {
    "1/8": "4 1/2", "1/4": "9", "1/3": "12", "3/8": "13 1/2", "1/2": "18", "5/8": "22 1/2", "2/3": "24",
    "3/4": "27", "7/8": "31 1/2",
}  # fmt: skip


@pytest.mark.parametrize(("yards", "inch"), EIGHTHS.items())
def test_parts_of_a_yard(yards: str, inch: str) -> None:
    """scissortailquilting.com, catbirdquilts.wordpress.com."""
    assert size(yards) * YARD == size(inch)


METRES = {
    "1/4": "0.23", "1/3": "0.30", "3/8": "0.34", "1/2": "0.46", "5/8": "0.57", "1 1/4": "1.14", "1 5/8": "1.49",
    "2 3/4": "2.51", "4 1/2": "4.11", "7 5/8": "6.97",
}  # fmt: skip


@pytest.mark.parametrize(("yards", "metres"), METRES.items())
def test_yards_in_metres(yards: str, metres: str) -> None:
    """A free pattern, Countryside Day Quilt, to the nearest hundredth."""
    assert in_metres(size(yards) * YARD) == Fraction(metres)


@pytest.mark.parametrize(("inch", "metres"), [(44, "1.12"), (108, "2.74")])
def test_widths_of_cloth_in_metres(inch: int, metres: str) -> None:
    assert in_metres(inches(inch)) == Fraction(metres)


@pytest.mark.parametrize(("inch", "centimetres"), [("88 1/4", "224.16"), ("16", "40.64")])
def test_sizes_in_centimetres(inch: str, centimetres: str) -> None:
    """The same pattern, to the nearest tenth of a millimetre."""
    assert round_nearest(size(inch), CENTIMETRE / 100) / CENTIMETRE == Fraction(centimetres)


def test_a_magazine_rounds_a_yard_and_a_half_too_far_down() -> None:
    """It prints 1.3 m (pandqmagazine.com 13139); 1½ yd is 1.37 m."""
    assert in_metres(size("1 1/2") * YARD) == Fraction("1.37")


@given(st.integers(8, 120), st.integers(1, 60))
def test_the_length_for_squares_gives_them_and_a_row_less_does_not(eighths: int, count: int) -> None:
    side: Length = inches(0, eighths, 8)
    length = length_for_squares(count, side, inches(42))
    assert squares_from(inches(42), length, side).squares >= count
    assert squares_from(inches(42), length - side, side).squares < count


def test_a_chart_of_rows_is_what_the_cutting_of_one_piece_of_cloth_gives() -> None:
    count = squares_from(inches(42), YARD / 2, inches(4)).squares
    cloth = [Cloth("half yard", inches(42), YARD / 2, None, turnable=True)]
    assert plan_stock([squares(inches(4), count)], cloth).used == 1
