"""Reading lengths, and saying where a text stops being one."""

from __future__ import annotations

import math

import pytest

from quarterturn.measure import INCH, MM, ROOT_TWO, YARD, Length, LengthError, Units, inches, mm, parse_length

NINE_AND_A_HALF = inches(9, 1, 2)


@pytest.mark.parametrize(
    "text",
    [
        '9 1/2"', "9 1/2 in", "9 1/2in.", "9 1/2 inches", "9 1/2", "9-1/2", '9-1/2"', "9 - 1/2", "9 + 1/2",
        '9½"', "9½ in", "9½″", "9½”", "9 ½", "9.5", "9.5 IN", "19/2", "9 1⁄2", "  9½ in  ", "9 2/4 inch", "9¹⁄₂",
    ],
)  # fmt: skip
def test_one_length_in_inches_may_be_written_in_many_ways(text: str) -> None:
    assert parse_length(text, Units.INCH) == NINE_AND_A_HALF


@pytest.mark.parametrize("text", ["24 cm", "240 mm", "0.24 m", "240", "24.0cm", "240MM", "24 Cm"])
def test_one_length_in_millimetres_may_be_written_in_many_ways(text: str) -> None:
    assert parse_length(text, Units.METRIC) == mm(240) == 240 * MM


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("½", inches(0, 1, 2)), (".5", inches(0, 1, 2)), ("0", inches(0)), ("⅞", inches(0, 7, 8)),
        ("1¹⁄₁₆", inches(1, 1, 16)), ("1⅓ yd", 48 * INCH), ("1 yard", YARD), ("3 yards", 3 * YARD),
        ("4'", 48 * INCH), ("2 ft", 24 * INCH), ("0.1", inches("0.1")), ("7.5 mm", mm("7.5")),
        ("3/8 yd", inches("13.5")),
    ],
)  # fmt: skip
def test_a_length_is_read_exactly(text: str, length: Length) -> None:
    assert parse_length(text, Units.INCH) == length


def test_a_unit_outweighs_the_system_of_the_pattern() -> None:
    assert parse_length('2"', Units.METRIC) == 2 * INCH
    assert parse_length("2 mm", Units.INCH) == 2 * MM


def test_an_inch_is_254_tenths_of_a_millimetre() -> None:
    assert mm("25.4") == INCH
    assert inches("0.1") * 10 == INCH


@pytest.mark.parametrize(
    ("text", "position", "reason"),
    [
        ("", 0, "a length was expected"),
        ("   ", 3, "a length was expected"),
        ("wide", 0, "a length starts with a number"),
        ("-9", 0, "a length starts with a number"),
        ("−9½", 0, "a length starts with a number"),
        ("9 parsecs", 2, "'parsecs' is not a unit of length"),
        ("9 ½½", 3, "'½' is not a unit of length"),
        ("1e3", 1, "'e' is not a unit of length"),
        ("9²", 1, "'²' is not a unit of length"),
        ('9" wide', 3, "there is something left over after the length"),
        ("9 1/2 1/2", 6, "there is something left over after the length"),
        ("9 -", 2, "there is something left over after the length"),
        ("9.", 1, "there is something left over after the length"),
        ("24,5 cm", 2, "a decimal is written with a point, not with a comma"),
        ("9.5 1/2", 4, "a decimal cannot be followed by a fraction"),
        ("9 3/2", 2, "a fraction behind a whole number must be below 1"),
        ("9 1/0", 4, "nothing can be divided by 0"),
        ("9 ¹⁄₀", 4, "nothing can be divided by 0"),
        (" 100001 in", 1, "this is longer than any cloth"),
    ],
)
def test_what_is_not_a_length_is_refused_with_place_and_reason(text: str, position: int, reason: str) -> None:
    with pytest.raises(LengthError) as refused:
        parse_length(text, Units.INCH)
    assert (refused.value.position, refused.value.reason) == (position, reason)
    assert refused.value.text == text


def test_the_caret_stands_under_the_place() -> None:
    with pytest.raises(LengthError) as refused:
        parse_length("9 1/2 ells", Units.INCH)
    assert refused.value.caret() == "9 1/2 ells\n      ^"
    assert str(refused.value) == "'ells' is not a unit of length in '9 1/2 ells' at character 7"


def test_the_caret_stands_under_the_place_where_the_text_has_tabs_and_line_ends() -> None:
    with pytest.raises(LengthError) as refused:
        parse_length("\t9\nells", Units.INCH)
    assert refused.value.caret() == " 9 ells\n   ^"


def test_root_two_is_as_near_as_a_float_tells_it() -> None:
    assert float(ROOT_TWO) == math.sqrt(2)
    assert abs(ROOT_TWO**2 - 2) < Length(1, 10**15)
