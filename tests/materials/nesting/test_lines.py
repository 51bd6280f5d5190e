"""The bound by weighted lines holds however shapes lie, and is better than that by area where it should be."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings

from quarterturn.geometry import Path, Region, as_polygon, circle, path_bounds, rectangle, shift
from quarterturn.materials.nesting import Shape
from quarterturn.materials.nesting.bodies import Catalogue
from quarterturn.materials.nesting.bounds import Wanted, circle_bound, roll_bound, sheet_bound
from quarterturn.materials.nesting.lines import inner_polygon, least_chords, line_bound
from tests.materials.nesting.nesting_cases import corners, ring

WIDTH = 9.0


@given(corners())
@settings(max_examples=100, deadline=None)
def test_no_line_cuts_out_less_than_is_said_wherever_the_shape_lies(outline: Path) -> None:
    box = path_bounds(outline)
    body = Catalogue([Shape("a", outline)], 0).body(0, 0)
    lines = (np.arange(12) + 0.5) * WIDTH / 12
    least = least_chords(inner_polygon(outline, 0), body, lines, WIDTH)
    ends = np.linspace(-box.left, WIDTH - box.right, len(least) + 1)
    for part in range(0, len(least), 7):
        moved = as_polygon(Region((shift(complex((ends[part] + ends[part + 1]) / 2, 0)).path(outline),)))
        for line, length in zip(lines, least[part], strict=True):
            assert length <= moved.intersection(shapely.LineString([(line, -9), (line, 9)])).length + 1e-7


def test_discs_wider_than_half_the_roll_are_bounded_by_the_line_in_the_middle() -> None:
    catalogue = Catalogue([Shape("a", circle(2.5))], 0)
    by_area = 10 * np.pi * 2.5**2 / 6
    assert by_area < line_bound(catalogue, {0: 10}, 6) <= 50


def test_the_gap_counts_between_shapes_and_not_at_the_ends() -> None:
    catalogue = Catalogue([Shape("a", rectangle(0, 0, 5, 2))], 0.5)
    assert line_bound(catalogue, {0: 3}, 6) == pytest.approx(7, abs=1e-3)


def test_circles_are_bounded_by_how_many_points_lie_apart_in_a_rectangle() -> None:
    """Nine middles of circles 1 across, in a roll of 3: (9 − 1 − 2)/(2·2/√3 + 1) more than 1."""
    wanted = Wanted(Catalogue([Shape("a", circle(0.5))], 0), [9], ())
    assert circle_bound(wanted, [0], 3) == pytest.approx(1 + 6 / (4 / 3**0.5 + 1))


def test_what_may_lie_in_a_centre_does_not_count_for_the_length() -> None:
    shapes = [ring("a", 6, 0.5, 1), ring("b", 4, 0.5, 1)]
    catalogue = Catalogue(shapes, 0)
    assert roll_bound(Wanted(catalogue, [1, 1], ()), 6) == pytest.approx(6, abs=1e-3)
    assert roll_bound(Wanted(catalogue, [2, 0], ()), 6) == pytest.approx(12, abs=1e-3)


def test_shapes_that_cover_the_middle_of_a_sheet_need_one_each() -> None:
    wanted = Wanted(Catalogue([Shape("a", circle(2.7))], 0), [3], ())
    assert sheet_bound(wanted, 9, 9) == 3
    assert sheet_bound(wanted, 12, 12) == 1
