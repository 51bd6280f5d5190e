"""Lengths, transforms and pages of SVG: the values and examples of the standards."""

from __future__ import annotations

import math

import pytest

from quarterturn.design.drawings.sizes import BadValueError, page, transform, user_units
from quarterturn.geometry import Affine


@pytest.mark.parametrize(
    ("text", "pixels"),
    [
        ("1in", 96),
        ("2.54cm", 96),
        ("25.4mm", 96),
        ("101.6Q", 96),
        ("72pt", 96),
        ("6pc", 96),
        ("96px", 96),
        (" 96 ", 96),
        ("1e1mm", 960 / 25.4),
        ("-.5in", -48),
    ],
)
def test_an_inch_has_96_units_in_every_unit(text: str, pixels: float) -> None:
    """CSS Values and Units, section 6.2."""
    assert user_units(text, "x") == pytest.approx(pixels)


@pytest.mark.parametrize("text", ["", "wide", "5em", "5 %", "5%", "1in 2in", "nan", "inf", "1e999", "--1"])
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(BadValueError):
        user_units(text, "x")


def image(to: Affine, place: complex) -> complex:
    return complex(round(to(place).real, 6), round(to(place).imag, 6))


@pytest.mark.parametrize(
    ("value", "place", "wanted"),
    [
        ("translate(3)", 1 + 1j, 4 + 1j),
        ("translate(3, -4)", 1 + 1j, 4 - 3j),
        ("scale(2)", 1 + 1j, 2 + 2j),
        ("scale(2 -1)", 1 + 1j, 2 - 1j),
        ("rotate(90)", 1 + 0j, 1j),
        ("rotate(90 1 1)", 2 + 1j, 1 + 2j),
        ("rotate(-450)", 1 + 0j, -1j),
        ("skewX(45)", 1 + 1j, 2 + 1j),
        ("skewY(45)", 1 + 1j, 1 + 2j),
        ("matrix(1 2 3 4 5 6)", 1 + 1j, 9 + 12j),
        ("translate(50,30)rotate(30)", 1 + 0j, 50.866025 + 30.5j),
        ("translate(10) scale(2) , translate(1)", 0j, 12 + 0j),
        ("none", 1 + 1j, 1 + 1j),
        ("", 1 + 1j, 1 + 1j),
    ],
)
def test_a_transform_moves_a_place(value: str, place: complex, wanted: complex) -> None:
    """SVG 1.1 section 7.6; the first function named is done last, section 7.5."""
    assert image(transform(value), place) == pytest.approx(wanted)


def test_the_nested_transforms_of_the_standard() -> None:
    """The example of SVG 1.1 section 7.5, whose figures were reckoned with 0.707 for the root of a half."""
    whole = (
        transform("translate(50,90)").after(transform("rotate(-45)")).after(transform("translate(130,160)"))
    )
    wanted = (0.707, -0.707, 0.707, 0.707, 255.03, 111.21)
    assert (whole.a, whole.b, whole.c, whole.d, whole.e, whole.f) == pytest.approx(wanted, abs=0.04)


@pytest.mark.parametrize(
    "value",
    [
        "turn(90)",
        "rotate(90",
        "rotate(1 2)",
        "matrix(1 2 3)",
        "translate(x)",
        "scale()",
        "rotate(90deg)",
        "matrix(9e6 0 0 9e6 0 0) " * 60,
        "translate(1))",
    ],
)
def test_a_transform_that_cannot_be_read_is_refused(value: str) -> None:
    with pytest.raises(BadValueError):
        transform(value)


@pytest.mark.parametrize(
    ("attributes", "across", "down"),
    [
        ({}, 1 / 96, 1 / 96),
        ({"width": "4in", "height": "2in"}, 1 / 96, 1 / 96),
        ({"width": "4in", "height": "2in", "viewBox": "0 0 40 20"}, 0.1, 0.1),
        ({"width": "254mm", "height": "254mm", "viewBox": "-5 -5 10 10"}, 1, 1),
        ({"width": "4in", "viewBox": "0 0 40 20"}, 0.1, 0.1),
        ({"height": "4in", "viewBox": "0 0 40 20"}, 0.2, 0.2),
        ({"width": "100%", "height": "100%", "viewBox": "0 0 40 20"}, 1 / 96, 1 / 96),
        ({"width": "4in", "height": "4in", "viewBox": "0 0 40 20"}, 0.1, 0.1),
        (
            {"width": "4in", "height": "4in", "viewBox": "0 0 40 20", "preserveAspectRatio": "none"},
            0.1,
            0.2,
        ),
        (
            {
                "width": "4in",
                "height": "4in",
                "viewBox": "0 0 40 20",
                "preserveAspectRatio": "xMidYMid slice",
            },
            0.2,
            0.2,
        ),
    ],
)
def test_a_page_says_how_many_inches_a_unit_is(
    attributes: dict[str, str], across: float, down: float
) -> None:
    """SVG 1.1 sections 7.7 and 7.8; a file that states no size has 96 units to the inch."""
    to, states = page(attributes)
    assert (to.a, to.d) == pytest.approx((across, down))
    assert (to.b, to.c) == (0, 0)
    assert states == any(value.endswith(("in", "mm")) for value in attributes.values())


@pytest.mark.parametrize(
    "attributes",
    [
        {"width": "0"},
        {"width": "-3in"},
        {"width": "4em"},
        {"viewBox": "0 0 40"},
        {"viewBox": "0 0 0 40"},
        {"viewBox": "0 0 -1 40"},
        {"viewBox": "a b c d"},
    ],
)
def test_a_page_on_which_nothing_can_be_drawn_is_refused(attributes: dict[str, str]) -> None:
    with pytest.raises(BadValueError):
        page(attributes)


def test_quarter_turns_are_exact() -> None:
    assert transform("rotate(90)") == Affine(0, 1, -1, 0)
    assert transform("rotate(180)")(1 + 2j) == -1 - 2j
    assert math.isclose(transform("rotate(30)").a, math.cos(math.pi / 6))
