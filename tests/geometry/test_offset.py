"""Parallel outlines: the area formulas, an outside library, and the cases in which no exact parallel is sound."""

from __future__ import annotations

import cmath
import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    FLATTENING,
    Arc,
    Cubic,
    Line,
    Path,
    Region,
    as_polygon,
    circle,
    flatten_path,
    offset_path,
    offset_region,
    polygon,
    rectangle,
    same_outline,
    same_region,
    shift,
    spread_circle,
)
from tests.strategies.outlines import convex_polygons, outlines

distances = st.floats(-1.5, 1.5) | st.integers(-12, 12).map(lambda eighths: eighths / 8)


@given(outlines(), distances)
def test_an_offset_agrees_with_an_outside_library(path: Path, by: float) -> None:
    expected = as_polygon(Region((path,))).buffer(by, quad_segs=200)
    moved = offset_path(path, by)
    slack = 4 * FLATTENING * (path.length() + moved.perimeter() + math.tau * abs(by))
    assert as_polygon(moved).symmetric_difference(expected).area < slack
    assert moved.area() == pytest.approx(expected.area, abs=slack)


@given(outlines(), distances)
def test_no_offset_crosses_itself(path: Path, by: float) -> None:
    for each in offset_path(path, by).paths:
        assert each.is_closed()
        assert shapely.Polygon([(p.real, p.imag) for p in flatten_path(each, FLATTENING)]).is_valid


@given(convex_polygons(), st.floats(0.01, 3))
def test_a_convex_outline_grows_by_its_length_and_a_disc(path: Path, by: float) -> None:
    moved = offset_path(path, by)
    assert moved.area() == pytest.approx(path.area() + path.length() * by + math.pi * by**2)
    assert moved.perimeter() == pytest.approx(path.length() + math.tau * by)


@given(convex_polygons(), st.floats(0.01, 2))
def test_a_convex_outline_moved_in_and_out_again_lies_within_itself(path: Path, by: float) -> None:
    inner = offset_path(path, -by)
    assert all(each.is_straight() for each in inner.paths)
    for each in inner.paths:
        outside = as_polygon(offset_path(each, by)).difference(as_polygon(Region((path,))))
        assert outside.area < 1e-4


@given(st.floats(0.1, 10), st.floats(0, 0.95))
def test_the_parallel_of_a_circle_is_a_circle(radius: float, share: float) -> None:
    by = share * radius
    assert same_region(offset_path(circle(radius), by), Region((circle(radius + by),)))
    assert same_region(offset_path(circle(radius), -by), Region((circle(radius - by),)))


@pytest.mark.parametrize("by", [-1.0, -1.001, -5.0])
def test_a_circle_moved_in_by_its_radius_or_more_is_gone(by: float) -> None:
    assert offset_path(circle(1), by).is_empty()


@given(st.floats(0.3, 6), st.floats(0.1, 1), st.floats(-0.25, 2))
def test_the_parallel_of_a_spread_circle_is_the_spread_circle_of_the_moved_radius(
    radius: float, seam: float, by: float
) -> None:
    [moved] = offset_path(spread_circle(radius, seam), by).paths
    assert same_outline(moved, spread_circle(radius + by, seam))


def test_a_ring_of_half_an_inch_about_a_circle_of_7_inches_leaves_a_centre_of_6_and_a_half() -> None:
    # Common practice, no published source: the web is kept about 1/4" outside the line and 1/4" inside it.
    [centre] = offset_path(circle(3.5), -0.25).paths
    assert same_outline(centre, circle(3.25))


def test_a_square_moved_in_stays_a_square_until_it_is_gone() -> None:
    assert same_region(offset_path(rectangle(0, 0, 4, 4), -1), Region((rectangle(1, 1, 3, 3),)))
    assert offset_path(rectangle(0, 0, 4, 4), -2.0).is_empty()
    assert offset_path(rectangle(0, 0, 4, 4), -3.0).is_empty()


def test_a_square_moved_out_has_round_corners() -> None:
    [moved] = offset_path(rectangle(0, 0, 4, 4), 0.5).paths
    assert [type(s) for s in moved.segments] == [Line, Arc] * 4


def test_nothing_happens_to_a_path_moved_by_nothing() -> None:
    assert offset_path(rectangle(0, 0, 4, 4), 0) == Region((rectangle(0, 0, 4, 4),))


def test_a_path_with_an_edge_of_no_length_and_a_corner_of_no_angle_is_moved_like_one_without() -> None:
    clumsy = polygon([0j, 2 + 0j, 2 + 0j, 4 + 0j, 4 + 4j, 4j])
    for by in (-1, 1):
        assert same_region(offset_path(clumsy, by), offset_path(rectangle(0, 0, 4, 4), by))


def test_a_dumbbell_moved_in_falls_into_two() -> None:
    hall = polygon(
        [0j, 2 + 0j, 2 + 0.9j, 4 + 0.9j, 4 + 0j, 6 + 0j, 6 + 2j, 4 + 2j, 4 + 1.1j, 2 + 1.1j, 2 + 2j, 2j]
    )
    moved = offset_path(hall, -0.25)
    assert len(moved.paths) == 2
    assert moved.area() == pytest.approx(2 * 1.5**2, abs=0.01)


def test_a_clasp_moved_out_closes_about_a_hole() -> None:
    gap = 0.5
    clasp = Path(
        (
            Arc(0j, 2, gap, math.tau - 2 * gap),
            Arc(cmath.rect(1.5, -gap), 0.5, -gap, math.pi),
            Arc(0j, 1, -gap, 2 * gap - math.tau),
            Arc(cmath.rect(1.5, gap), 0.5, gap + math.pi, math.pi),
        )
    )
    assert clasp.is_closed()
    [open_still] = offset_path(clasp, 0.2).paths
    assert [s.length() for s in open_still.segments] == pytest.approx(
        [2.2 * (math.tau - 1), 0.7 * math.pi, 0.8 * (math.tau - 1), 0.7 * math.pi]
    )
    moved = offset_path(clasp, 0.3)
    assert [path.area() > 0 for path in moved.paths] == [True, False]
    assert as_polygon(moved).is_valid


def test_an_arc_of_less_than_the_distance_is_swallowed() -> None:
    tongue = Path(
        (
            Line(-3 - 0.2j, 0 - 0.2j),
            Arc(0j, 0.2, -math.pi / 2, math.pi),
            Line(0 + 0.2j, -3 + 0.2j),
            Arc(-3 + 0j, 0.2, math.pi / 2, math.pi),
        )
    )
    assert offset_path(tongue, -0.25).is_empty()
    assert offset_path(tongue, -0.1).area() == pytest.approx(3 * 0.2 + math.pi * 0.01)


def test_a_curve_without_an_exact_parallel_is_moved_in_chords() -> None:
    petal = Path((Cubic(-1 + 0j, -1 - 1j, 1 - 1j, 1 + 0j), Line(1 + 0j, -1 + 0j)))
    moved = offset_path(petal, 0.25)
    assert all(path.is_straight() for path in moved.paths)
    assert moved.area() > petal.area() + 0.25 * petal.length()


def ring(outer: float, inner: float, beside: complex = 0j) -> Region:
    """Return a disc with a round hole in it."""
    return Region((circle(outer), shift(beside).path(circle(inner)).reversed()))


@pytest.mark.parametrize("by", [0.25, -0.25])
def test_a_ring_is_widened_or_narrowed_at_both_its_edges(by: float) -> None:
    moved = offset_region(ring(3, 1), by)
    assert same_region(moved, ring(3 + by, 1 - by))


def test_a_ring_narrower_than_twice_the_distance_is_gone() -> None:
    assert offset_region(ring(3, 2.6), -0.25).is_empty()


def test_a_hole_that_is_closed_is_gone() -> None:
    assert same_region(offset_region(ring(3, 0.2), 0.25), Region((circle(3.25),)))


def test_a_ring_that_is_thin_on_one_side_is_opened_there() -> None:
    """Narrowed by 1/4" the outline has radius 2.75, the hole 1.75, and their middles are 1.2 apart."""
    left = as_polygon(offset_region(ring(3, 1.5, 1.2 + 0j), -0.25))
    hole = shapely.Point(1.2, 0).buffer(1.75, quad_segs=500)
    expected = shapely.Point(0, 0).buffer(2.75, quad_segs=500).difference(hole)
    assert left.symmetric_difference(expected).area < 1e-3
