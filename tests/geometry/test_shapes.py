"""The shapes of the trade, and the law of the shape that is slashed and spread.

The seam check values are computed from the geometry of a circle cut both ways through its middle; no published
source states them.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    Arc,
    Line,
    Path,
    Region,
    StraightLine,
    circle,
    cut,
    difference_area,
    disc,
    keep_left,
    path_bounds,
    quarter_turns,
    same_outline,
    shift,
    spread_circle,
)

DOWN, ACROSS = StraightLine(0j, -1j), StraightLine(0j, 1 + 0j)

radii = st.integers(4, 40).map(lambda quarters: quarters / 4) | st.floats(0.8, 10)
seams = st.sampled_from([0.25, 0.5, 7.5 / 25.4]) | st.floats(0.01, 0.5)


def quarters(outline: Path) -> list[Region]:
    """Cut both ways through 0: the parts to the lower right, and on clockwise."""
    right, left = cut(Region((outline,)), DOWN)
    return [
        keep_left(right, ACROSS),
        keep_left(left, ACROSS),
        keep_left(left, ACROSS.reversed()),
        keep_left(right, ACROSS.reversed()),
    ]


def sewn(quarter: Region, seam: float) -> Region:
    """The lower right quarter as it shows when both cut edges have been seamed, its corner brought to 0."""
    shown = keep_left(keep_left(quarter, DOWN.moved_left(seam)), ACROSS.moved_left(seam))
    return shift(complex(-seam, -seam)).region(shown)


def sewn_quarters(outline: Path, seam: float) -> list[Region]:
    turned = (quarter_turns(-k).region(q) for k, q in enumerate(quarters(outline)))
    return [quarter_turns(k).region(sewn(q, seam)) for k, q in enumerate(turned)]


@given(radii, seams)
def test_a_spread_circle_cut_seamed_and_rejoined_is_the_circle(radius: float, seam: float) -> None:
    for part, true in zip(
        sewn_quarters(spread_circle(radius, seam), seam), quarters(circle(radius)), strict=True
    ):
        assert difference_area(part, true) == 0
        [outline], [expected] = part.paths, true.paths
        assert same_outline(outline, expected)


@given(radii, seams)
def test_a_spread_circle_has_the_area_and_the_length_of_a_disc_swept_over_a_square(
    radius: float, seam: float
) -> None:
    outline = spread_circle(radius, seam)
    assert outline.is_closed()
    assert outline.area() == pytest.approx(math.pi * radius**2 + 8 * seam * radius + 4 * seam**2)
    assert outline.length() == pytest.approx(math.tau * radius + 8 * seam)
    assert path_bounds(outline).width == pytest.approx(2 * (radius + seam))


@given(radii, seams)
def test_a_spread_circle_is_its_own_quarter_turn(radius: float, seam: float) -> None:
    outline = spread_circle(radius, seam)
    assert same_outline(quarter_turns(1).path(outline), outline)
    assert [type(s) for s in outline.segments] == [Arc, Line] * 4


@given(radii, seams)
def test_a_plain_circle_cut_and_seamed_is_not_a_circle(radius: float, seam: float) -> None:
    parts = sewn_quarters(circle(radius), seam)
    expected = math.sqrt(radius**2 - seam**2) - seam
    assert path_bounds(parts[0].paths[0]).right == pytest.approx(expected)
    assert difference_area(parts[0], quarters(circle(expected))[0]) > 0


def seam_figures(diameter: float, seam: float) -> tuple[float, float, float]:
    """Width across the seams and on the diagonal, and the peak in degrees, measured on the cut outline."""
    [outline] = sewn_quarters(circle(diameter / 2), seam)[0].paths
    [arc] = [s for s in outline.segments if isinstance(s, Arc)]
    off_square = math.degrees(abs(math.atan2(arc.tangent(0).real, arc.tangent(0).imag)))
    return 2 * abs(arc.start), 2 * abs(arc.point(0.5)), 2 * off_square


@pytest.mark.parametrize(
    ("diameter", "across", "diagonal", "peak"),
    [
        (2, 1.44, 1.29, 29), (2.5, 1.95, 1.79, 23), (3, 2.46, 2.29, 19), (4, 3.47, 3.29, 14), (6, 5.48, 5.29, 9.6),
        (8, 7.48, 7.29, 7.2), (10, 9.49, 9.29, 5.7),
    ],
)  # fmt: skip
def test_what_a_quarter_inch_seam_leaves_of_a_circle(
    diameter: float, across: float, diagonal: float, peak: float
) -> None:
    found = seam_figures(diameter, 0.25)
    assert found[:2] == pytest.approx((across, diagonal), abs=0.0051)
    assert found[2] == pytest.approx(peak, abs=0.5 if peak > 10 else 0.051)


@pytest.mark.parametrize(
    ("diameter", "seam", "across", "diagonal", "peak"),
    [(8, 0.5, 6.94, 6.59, 14), (15, 0.75, 13.42, 12.88, 11.5)],
)
def test_what_a_wool_seam_and_a_metric_seam_leave_of_a_circle(
    diameter: float, seam: float, across: float, diagonal: float, peak: float
) -> None:
    assert seam_figures(diameter, seam) == pytest.approx((across, diagonal, peak), abs=0.4)
    assert seam_figures(diameter, seam)[:2] == pytest.approx((across, diagonal), abs=0.0051)


def test_a_circle_of_7_inches_crosses_the_seam_at_32411() -> None:
    across, diagonal, peak = seam_figures(7, 0.25)
    assert across / 2 == pytest.approx(3.2411, abs=5e-5)
    assert diagonal / 2 == pytest.approx(3.1464, abs=6e-5)
    assert peak == pytest.approx(8.19, abs=0.005)


@pytest.mark.parametrize(("radius", "crossing"), [(3, 2.7396), (2.875, 2.6141)])
def test_where_a_quarter_circle_meets_a_quarter_inch_seam(radius: float, crossing: float) -> None:
    assert seam_figures(2 * radius, 0.25)[0] / 2 == pytest.approx(crossing, abs=5e-5)


@pytest.mark.parametrize(
    ("unit", "diameter"), [(2, 2.55), (2.5, 3.04), (3, 3.54), (3.5, 4.03), (4, 4.53), (5, 5.52), (6, 6.52)]
)
def test_a_circle_whose_paths_flow_crosses_in_the_middle_of_the_side(unit: float, diameter: float) -> None:
    exact = 2 * math.hypot(unit / 2 + 0.25, 0.25)
    assert exact == pytest.approx(diameter, abs=0.0051)
    assert seam_figures(exact, 0.25)[0] == pytest.approx(unit)


def test_a_disc_is_the_region_of_its_circle() -> None:
    assert disc(2, 1j).paths == (circle(2, 1j),)
