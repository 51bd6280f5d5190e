"""Lengths as the trade prints them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.measure import (
    INCH,
    MM,
    YARD,
    Length,
    Units,
    inches,
    mm,
    parse_length,
    quote,
    show_area,
    show_cloth,
    show_count,
    show_exact,
    show_length,
    show_plain,
    show_rectangle,
    show_square,
)

COUNTS = st.integers(0, 100_000)
LENGTHS = st.fractions(-1000, 1000)
UNITS = st.sampled_from(Units)


@given(COUNTS)
def test_reading_what_was_printed_gives_back_every_eighth(eighths: int) -> None:
    length = eighths * INCH / 8
    assert parse_length(show_length(length, Units.INCH), Units.INCH) == length


@given(COUNTS)
def test_reading_what_was_printed_gives_back_every_sixteenth_where_asked(sixteenths: int) -> None:
    length = sixteenths * INCH / 16
    assert parse_length(show_length(length, Units.INCH, sixteenths=True), Units.INCH) == length


@given(COUNTS, UNITS)
def test_reading_what_was_printed_gives_back_every_millimetre(count: int, otherwise: Units) -> None:
    assert parse_length(show_length(count * MM, Units.METRIC), otherwise) == count * MM


@given(st.integers(0, 199))
def test_reading_what_was_printed_gives_back_every_tenth_of_a_millimetre_below_2_cm(tenths: int) -> None:
    assert parse_length(show_length(tenths * MM / 10, Units.METRIC), Units.METRIC) == tenths * MM / 10


@given(st.integers(0, 1000))
def test_reading_what_was_printed_gives_back_every_eighth_of_a_yard(eighths: int) -> None:
    assert parse_length(show_cloth(eighths * YARD / 8, Units.INCH), Units.INCH) == eighths * YARD / 8


@given(st.integers(0, 1000))
def test_reading_what_was_printed_gives_back_every_10_cm_of_cloth(count: int) -> None:
    length = count * 100 * MM
    assert parse_length(show_cloth(length, Units.METRIC), Units.METRIC) == length


@given(LENGTHS, LENGTHS, st.booleans())
def test_an_inch_pattern_never_shows_a_decimal(width: Length, height: Length, sixteenths: bool) -> None:
    shown = show_length(width, Units.INCH, sixteenths=sixteenths) + show_rectangle(width, height, Units.INCH)
    assert "." not in shown
    assert "." not in show_cloth(width, Units.INCH)


@given(LENGTHS, UNITS)
def test_a_length_is_printed_as_the_one_to_which_it_is_quoted(length: Length, units: Units) -> None:
    if units is Units.INCH or abs(length) >= 20 * MM:
        assert show_length(length, units) == show_length(quote(length, units), units)


@given(st.floats(-1000, 1000), UNITS)
def test_a_float_is_printed_as_the_fraction_that_it_is(length: float, units: Units) -> None:
    assert show_length(length, units) == show_length(Fraction(length), units)


@pytest.mark.parametrize(
    ("length", "shown"),
    [
        (inches(9, 1, 2), '9½"'), (inches(9), '9"'), (inches(0, 1, 8), '⅛"'), (inches(0), '0"'),
        (inches(0, 1, 100), '0"'), (inches(0, -1, 100), '0"'), (inches(-9, -1, 2), '−9½"'),
        (inches(4, 1, 16), '4⅛"'), (inches(3, 3, 8), '3⅜"'), (inches(8, 5, 8), '8⅝"'), (inches(0, 7, 8), '⅞"'),
        (inches(1_000_000), '1000000"'),
    ],
)  # fmt: skip
def test_inches_are_printed_with_the_signs_for_the_eighths(length: Length, shown: str) -> None:
    assert show_length(length, Units.INCH) == shown


@pytest.mark.parametrize(
    ("length", "shown"),
    [
        (inches(0, 1, 16), '¹⁄₁₆"'), (inches(1, 15, 16), '1¹⁵⁄₁₆"'), (inches(2, 2, 16), '2⅛"'),
        (inches(0, -3, 16), '−³⁄₁₆"'),
    ],
)  # fmt: skip
def test_sixteenths_are_printed_where_asked(length: Length, shown: str) -> None:
    assert show_length(length, Units.INCH, sixteenths=True) == shown


@pytest.mark.parametrize(
    ("length", "shown"),
    [
        (mm(240), "24 cm"), (mm(245), "24.5 cm"), (mm(20), "2 cm"), (mm("19.96"), "2 cm"), (mm("7.5"), "7.5 mm"),
        (mm(0), "0 mm"), (mm(-245), "−24.5 cm"), (mm("-7.5"), "−7.5 mm"), (mm("-0.01"), "0 mm"),
        (mm(25_400_000), "2540000 cm"),
    ],
)  # fmt: skip
def test_metric_lengths_are_printed_in_centimetres_and_small_ones_in_millimetres(
    length: Length, shown: str
) -> None:
    assert show_length(length, Units.METRIC) == shown


@pytest.mark.parametrize(
    ("length", "shown"),
    [
        (YARD / 8, "⅛ yard"), (YARD, "1 yard"), (YARD * 5 / 4, "1¼ yards"), (3 * YARD, "3 yards"),
        (0 * YARD, "0 yards"),
    ],
)  # fmt: skip
def test_cloth_is_printed_in_yards_and_up_to_one_of_them_in_the_singular(length: Length, shown: str) -> None:
    assert show_cloth(length, Units.INCH) == shown


def test_metric_cloth_is_printed_in_metres_with_one_figure() -> None:
    assert [show_cloth(mm(each), Units.METRIC) for each in (0, 1200, 3000)] == ["0.0 m", "1.2 m", "3.0 m"]


def test_a_square_needs_one_number_and_a_rectangle_two_each_with_its_unit() -> None:
    assert show_square(inches(4, 3, 4), Units.INCH) == '4¾"'
    assert show_rectangle(inches(2, 1, 2), inches(4, 1, 2), Units.INCH) == '2½" × 4½"'
    assert show_rectangle(mm(65), mm(115), Units.METRIC) == "6.5 cm × 11.5 cm"


def test_counts_areas_and_check_figures() -> None:
    assert [show_count(n, "unit") for n in (0, 1, 1024)] == ["0 units", "1 unit", "1,024 units"]
    assert [show_count(n, "patch", "patches") for n in (1, 2)] == ["1 patch", "2 patches"]
    assert [show_area(1.0, units) for units in Units] == ["1.00 sq in", "6.45 cm²"]
    assert [show_plain(3.24112, units) for units in Units] == ['3.2411"', "82.32 mm"]


@pytest.mark.parametrize(
    ("value", "units", "shown"),
    [
        (Fraction(67, 16), Units.INCH, '4³⁄₁₆"'),
        (Fraction("7.7942"), Units.INCH, 'about 7¹³⁄₁₆" (7.7942")'),
        (Fraction(-1, 8), Units.INCH, '-⅛"'),
        (Fraction("82.315") * MM, Units.METRIC, "82.31 mm"),
        (65 * MM, Units.METRIC, "6.5 cm"),
    ],
)
def test_what_has_not_been_rounded_is_told_on_the_ruler_and_in_figures(
    value: Fraction, units: Units, shown: str
) -> None:
    assert show_exact(value, units) == shown
