"""Flattening keeps within the tolerance that it states."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import Arc, Cubic, Line, Path, Point, Segment, circle, flatten_path, flatten_segment
from quarterturn.geometry.segments import cross, dot
from tests.strategies.outlines import outlines

tolerances = st.sampled_from([1e-5, 1e-4, 1e-3, 0.01, 0.1, 1.0])


def distance_to_chord(point: Point, start: Point, end: Point) -> float:
    way = end - start
    if abs(way) == 0:
        return abs(point - start)
    share = min(1.0, max(0.0, dot(way, point - start) / abs(way) ** 2))
    return abs(point - start - way * share)


def worst(segment: Segment, tolerance: float) -> float:
    """The largest distance, at marks within each step, of the curve from its chord."""
    corners = [*flatten_segment(segment, tolerance), segment.end]
    steps = len(corners) - 1
    return max(
        distance_to_chord(segment.point((k + part) / steps), corners[k], corners[k + 1])
        for k in range(steps)
        for part in (0.25, 0.5, 0.75)
    )


@given(outlines(), tolerances)
def test_no_chord_is_farther_from_its_curve_than_the_tolerance(path: Path, tolerance: float) -> None:
    assert all(worst(segment, tolerance) <= tolerance * (1 + 1e-6) for segment in path.segments)


@given(st.floats(1e-6, 10), st.floats(0.01, math.tau), tolerances)
def test_small_and_whole_arcs_keep_within_the_tolerance(
    radius: float, sweep: float, tolerance: float
) -> None:
    assert worst(Arc(0j, radius, 1, sweep), tolerance) <= tolerance * (1 + 1e-6)


@given(outlines(("line",)), tolerances)
def test_straight_paths_are_left_as_they_are(path: Path, tolerance: float) -> None:
    assert tuple(flatten_path(path, tolerance)) == path.corners()


@given(st.floats(1e-3, 10), tolerances)
def test_a_whole_circle_becomes_a_polygon_with_an_inside(radius: float, tolerance: float) -> None:
    corners = flatten_path(circle(radius), tolerance)
    area = sum(cross(a, b) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)) / 2
    assert len(corners) >= 3
    assert 0 < area < math.pi * radius**2


def test_a_straight_cubic_needs_one_chord() -> None:
    assert flatten_segment(Cubic(0j, 1 + 0j, 2 + 0j, 3 + 0j), 1e-5) == [0j]
    assert flatten_segment(Line(0j, 3 + 0j), 1e-5) == [0j]


def test_a_circle_of_7_inches_takes_some_thousand_chords_for_a_hundred_thousandth_of_an_inch() -> None:
    assert len(flatten_path(circle(3.5), 1e-5)) == pytest.approx(math.pi / math.acos(1 - 1e-5 / 3.5), abs=1)
