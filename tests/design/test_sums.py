"""The sums of a recipe."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import Curve, Cut, DrawnDiameter, FinishedRadius, PathsFlow
from quarterturn.design.cuts import pieces_of
from quarterturn.design.notes import Notes
from quarterturn.design.sums import Sizes, check_shape, complete, extents, least_diameter
from quarterturn.measure import Length, Units, inches, mm

SEAM = inches(0, 1, 4)
eighths = st.integers(1, 200).map(lambda n: Fraction(n, 8))


def sizes(
    finished: Length | None = None, start: Length | None = None, trim: Length | None = None
) -> Sizes | None:
    return complete("recipes.r", finished, start, trim, SEAM, Notes())


@given(finished=eighths, trim=eighths)
def test_any_two_of_finished_start_and_trim_give_the_third(finished: Length, trim: Length) -> None:
    start = 2 * (finished + 2 * SEAM) + trim
    whole = Sizes(finished, start, trim)
    assert sizes(finished, trim=trim) == whole
    assert sizes(finished, start) == whole
    assert sizes(start=start, trim=trim) == whole
    assert sizes(finished, start, trim) == whole


@given(eighths)
def test_whatever_is_given_the_sum_holds_exactly(size: Length) -> None:
    for found in (sizes(size), sizes(start=size + 4)):
        assert found is not None
        assert found.start == 2 * (found.finished + 2 * SEAM) + found.trim


def test_a_master_given_by_its_start_alone_is_trimmed_as_its_size_asks() -> None:
    assert sizes(start=inches(8)) == Sizes(inches(3, 1, 4), inches(8), inches(0, 1, 2))
    assert sizes(start=inches(10)) == Sizes(inches(4, 1, 8), inches(10), inches(0, 3, 4))


def test_a_metric_master_is_summed_in_millimetres() -> None:
    found = complete("recipes.r", mm(80), None, None, mm("7.5"), Notes(Units.METRIC))
    assert found == Sizes(mm(80), mm(200), mm(10))


def test_the_remedy_for_sums_that_disagree_names_the_sum() -> None:
    notes = Notes()
    assert complete("recipes.r", inches(4), inches(10), inches(0, 1, 2), SEAM, notes) is None
    assert notes.findings[0].remedy == 'Give two of finished, start and trim, or set start to 9½".'


def test_a_circle_as_drawn_meets_the_seam_where_the_right_angle_says() -> None:
    # a = √(r² − s²) − s: a 7" circle meets ¼" seams 3.2411" from the finished corner.
    reach, meets = extents(DrawnDiameter(inches(7)), Curve.AS_DRAWN, inches(4, 1, 4), SEAM)
    assert reach == Fraction(7, 2)
    assert float(meets) == pytest.approx(math.sqrt(3.5**2 - 0.25**2) - 0.25, abs=1e-9)


def test_a_spread_circle_loses_just_the_seam() -> None:
    assert extents(DrawnDiameter(inches(7)), Curve.SEWN_TRUE, inches(4), SEAM) == (
        Fraction(7, 2),
        Fraction(13, 4),
    )


@pytest.mark.parametrize("curve", Curve)
@pytest.mark.parametrize("size", [FinishedRadius(inches(2)), PathsFlow()])
def test_a_shape_sized_by_its_seam_meets_it_there(size: FinishedRadius | PathsFlow, curve: Curve) -> None:
    reach, meets = extents(size, curve, inches(4), SEAM)
    assert meets == 2
    again = extents(DrawnDiameter(2 * reach), curve, inches(4), SEAM)
    assert float(again[1]) == pytest.approx(2, abs=1e-8)


def codes(diameter: Length, curve: Curve) -> list[str]:
    notes = Notes()
    check_shape("recipes.r", DrawnDiameter(diameter), curve, inches(4), SEAM, notes)
    return [finding.code for finding in notes.findings]


@pytest.mark.parametrize("curve", Curve)
def test_a_shape_may_touch_the_outer_seams_and_no_more(curve: Curve) -> None:
    assert codes(inches(8, 1, 2), curve) == []
    assert codes(inches(8, 5, 8), curve) == ["shape-too-large"]


@pytest.mark.parametrize("curve", Curve)
def test_a_shape_vanishes_just_below_its_least_diameter(curve: Curve) -> None:
    least = least_diameter(curve, SEAM)
    assert codes(least - Fraction(1, 10**6), curve) == ["shape-vanishes"]
    assert codes(least + Fraction(1, 10**6), curve) == []


@pytest.mark.parametrize(
    ("cuts", "pieces"),
    [
        ((), (1, 1)),
        (((0, -4, 0, 4),), (2, 1)),
        (((0, 1, 0, 2), (3, 0, -3, 0)), (2, 2)),
        (((1, -4, 1, 4),), None),
        (((-4, -4, 4, 4),), None),
    ],
)
def test_lines_through_the_middle_leave_units_of_one_size_however_they_are_written(
    cuts: tuple[tuple[int, int, int, int], ...], pieces: tuple[int, int] | None
) -> None:
    assert pieces_of(tuple(Cut(*map(inches, cut)) for cut in cuts)) == pieces
