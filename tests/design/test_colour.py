"""Colour numbers, compared with published tables."""

from __future__ import annotations

import pytest

from quarterturn.design.colour import (
    INK,
    PAPER,
    Lab,
    colour_distance,
    contrast,
    lab,
    lightness,
    text_colour_on,
    value_of,
)

# All 34 pairs of Table 1 of G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1), 2005, 21-30.
PAIRS = (
    ((50.0, 2.6772, -79.7751), (50.0, 0.0, -82.7485), 2.0425),
    ((50.0, 3.1571, -77.2803), (50.0, 0.0, -82.7485), 2.8615),
    ((50.0, 2.8361, -74.02), (50.0, 0.0, -82.7485), 3.4412),
    ((50.0, -1.3802, -84.2814), (50.0, 0.0, -82.7485), 1.0),
    ((50.0, -1.1848, -84.8006), (50.0, 0.0, -82.7485), 1.0),
    ((50.0, -0.9009, -85.5211), (50.0, 0.0, -82.7485), 1.0),
    ((50.0, 0.0, 0.0), (50.0, -1.0, 2.0), 2.3669),
    ((50.0, -1.0, 2.0), (50.0, 0.0, 0.0), 2.3669),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.0009), 7.1792),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.001), 7.1792),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.0011), 7.2195),
    ((50.0, 2.49, -0.001), (50.0, -2.49, 0.0012), 7.2195),
    ((50.0, -0.001, 2.49), (50.0, 0.0009, -2.49), 4.8045),
    ((50.0, -0.001, 2.49), (50.0, 0.001, -2.49), 4.8045),
    ((50.0, -0.001, 2.49), (50.0, 0.0011, -2.49), 4.7461),
    ((50.0, 2.5, 0.0), (50.0, 0.0, -2.5), 4.3065),
    ((50.0, 2.5, 0.0), (73.0, 25.0, -18.0), 27.1492),
    ((50.0, 2.5, 0.0), (61.0, -5.0, 29.0), 22.8977),
    ((50.0, 2.5, 0.0), (56.0, -27.0, -3.0), 31.903),
    ((50.0, 2.5, 0.0), (58.0, 24.0, 15.0), 19.4535),
    ((50.0, 2.5, 0.0), (50.0, 3.1736, 0.5854), 1.0),
    ((50.0, 2.5, 0.0), (50.0, 3.2972, 0.0), 1.0),
    ((50.0, 2.5, 0.0), (50.0, 1.8634, 0.5757), 1.0),
    ((50.0, 2.5, 0.0), (50.0, 3.2592, 0.335), 1.0),
    ((60.2574, -34.0099, 36.2677), (60.4626, -34.1751, 39.4387), 1.2644),
    ((63.0109, -31.0961, -5.8663), (62.8187, -29.7946, -4.0864), 1.263),
    ((61.2901, 3.7196, -5.3901), (61.4292, 2.248, -4.962), 1.8731),
    ((35.0831, -44.1164, 3.7933), (35.0232, -40.0716, 1.5901), 1.8645),
    ((22.7233, 20.0904, -46.694), (23.0331, 14.973, -42.5619), 2.0373),
    ((36.4612, 47.858, 18.3852), (36.2715, 50.5065, 21.2231), 1.4146),
    ((90.8027, -2.0831, 1.441), (91.1528, -1.6435, 0.0447), 1.4441),
    ((90.9257, -0.5406, -0.9208), (88.6381, -0.8985, -0.7239), 1.5381),
    ((6.7747, -0.2908, -2.4247), (5.8714, -0.0985, -2.2286), 0.6377),
    ((2.0776, 0.0795, -1.135), (0.9033, -0.0636, -0.5514), 0.9082),
)  # fmt: skip


@pytest.mark.parametrize(("one", "other", "distance"), PAIRS)
def test_the_distance_is_that_of_the_published_pairs(
    one: tuple[float, float, float], other: tuple[float, float, float], distance: float
) -> None:
    assert colour_distance(Lab(*one), Lab(*other)) == pytest.approx(distance, abs=1e-4)
    assert colour_distance(Lab(*other), Lab(*one)) == pytest.approx(distance, abs=1e-4)


@pytest.mark.parametrize(
    ("colour", "ratio"),
    [
        ("#000000", 21.0),
        ("#767676", 4.542),
        ("#777777", 4.478),
        ("#595959", 7.005),
        ("#888888", 3.545),
        ("#999999", 2.849),
        ("#1e293b", 14.629),
        # These are often misquoted as 3.12, 2.44 and 4.0.
        ("#707070", 4.95),
        ("#949494", 3.03),
        ("#6b7280", 4.83),
    ],
)
def test_the_contrast_with_white_follows_the_definition_of_wcag(colour: str, ratio: float) -> None:
    assert contrast(colour, "#ffffff") == pytest.approx(ratio, abs=0.005)
    assert contrast("#ffffff", colour) == contrast(colour, "#ffffff")


def test_the_contrast_of_two_greys_follows_the_definition_of_wcag() -> None:
    assert contrast("#333333", "#cccccc") == pytest.approx(7.87, abs=0.005)


def test_lightness_has_the_published_value() -> None:
    """The worked example of the CIE 1976 function in the documentation of the package `colour`."""
    assert lightness(12.19722535, 100) == pytest.approx(41.527875844653451, abs=1e-9)


def test_lightness_is_linear_near_black_and_joins_the_curve_there() -> None:
    assert lightness(0.0) == pytest.approx(0)
    assert lightness(216 / 24389) == pytest.approx(8)
    assert lightness(0.004) == pytest.approx(0.004 * 24389 / 27)


def test_pure_red_has_its_lab_coordinates() -> None:
    """A figure found in many conversion tables: (53.24, 80.09, 67.20) under D65."""
    red = lab("#ff0000")
    assert (red.light, red.a, red.b) == pytest.approx((53.24, 80.09, 67.20), abs=0.02)


def test_value_runs_from_black_to_white() -> None:
    assert value_of("#000000") == pytest.approx(0, abs=1e-4)
    assert value_of("#ffffff") == pytest.approx(100, abs=1e-4)
    assert value_of("#22304a") < 50 < value_of("#efe6d8")


@pytest.mark.parametrize(
    "fill", [f"#{red}{green}80" for red in ("00", "80", "ff") for green in ("00", "80", "ff")]
)
def test_lettering_can_be_read_on_any_fill(fill: str) -> None:
    assert contrast(text_colour_on(fill), fill) >= 4.0


def test_lettering_is_dark_on_light_and_light_on_dark() -> None:
    assert text_colour_on("#efe6d8") == INK
    assert text_colour_on("#22304a") == PAPER
