"""Lines, arcs and cubics: what is known of each, against closed forms and against many chords."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import EPSILON, Arc, Cubic, Line, Segment
from quarterturn.geometry.segments import cross, dot, quadratic_roots
from tests.strategies.outlines import angles, points, reaches

straight = st.builds(Line, points, points)
arcs = st.builds(Arc, points, reaches, angles, st.floats(0.01, math.tau) | st.floats(-math.tau, -0.01))
cubics = st.builds(Cubic, points, points, points, points)
segments = straight | arcs | cubics
parameters = st.floats(0, 1)


def chords(segment: Segment, steps: int = 2000) -> list[tuple[complex, complex]]:
    return list(itertools.pairwise(segment.point(k / steps) for k in range(steps + 1)))


@given(segments)
def test_a_segment_runs_from_its_start_to_its_end(segment: Segment) -> None:
    assert abs(segment.point(0) - segment.start) < EPSILON
    assert abs(segment.point(1) - segment.end) < EPSILON


@given(segments, parameters)
def test_a_segment_reversed_runs_through_the_same_points(segment: Segment, t: float) -> None:
    assert abs(segment.reversed().point(t) - segment.point(1 - t)) < 1e-12
    assert segment.reversed().length() == pytest.approx(segment.length())
    assert segment.reversed().area() == pytest.approx(-segment.area(), abs=1e-12)


@given(segments, parameters, parameters, parameters)
def test_a_part_runs_through_the_points_between_its_marks(
    segment: Segment, one: float, other: float, t: float
) -> None:
    low, high = sorted((one, other))
    part = segment.part(low, high)
    assert abs(part.point(t) - segment.point(low + (high - low) * t)) < 1e-11


@given(segments, parameters)
def test_parts_add_up_in_length_and_area(segment: Segment, t: float) -> None:
    parts = segment.part(0, t), segment.part(t, 1)
    assert sum(p.length() for p in parts) == pytest.approx(segment.length(), abs=1e-9)
    assert sum(p.area() for p in parts) == pytest.approx(segment.area(), abs=1e-10)


@given(segments)
def test_many_chords_come_near_the_length_and_the_area(segment: Segment) -> None:
    assert sum(abs(b - a) for a, b in chords(segment)) == pytest.approx(segment.length(), rel=1e-4, abs=1e-5)
    assert sum(cross(a, b) / 2 for a, b in chords(segment)) == pytest.approx(segment.area(), abs=1e-3)


@given(segments, st.floats(0.01, 0.99))
def test_the_tangent_is_the_way_to_the_next_point(segment: Segment, t: float) -> None:
    step = 1e-6
    ahead = segment.point(t + step) - segment.point(t - step)
    if abs(ahead) > 1e-8:
        assert dot(ahead, segment.tangent(t)) > 0
        assert abs(cross(ahead / abs(ahead), segment.tangent(t) / abs(segment.tangent(t)))) < 1e-3


@given(segments, parameters)
def test_no_point_lies_beyond_the_extremes(segment: Segment, t: float) -> None:
    for turned in (1, 1j):  # across, then down
        marks = [(p / turned).real for p in segment.extremes()]
        assert min(marks) - 1e-12 <= (segment.point(t) / turned).real <= max(marks) + 1e-12


@given(arcs, st.floats(0.001, 0.999))
def test_an_arc_knows_at_which_parameter_it_has_an_angle(arc: Arc, t: float) -> None:
    angle = arc.start_angle + t * arc.sweep
    assert arc.parameter_at_angle(angle + math.tau) == pytest.approx(t)


def test_a_cubic_whose_controls_lie_on_its_ends_still_has_tangents() -> None:
    assert Cubic(0j, 0j, 1 + 1j, 2 + 0j).tangent(0) == 1 + 1j
    assert Cubic(0j, 1 + 1j, 2 + 0j, 2 + 0j).tangent(1) == 1 - 1j
    assert [Cubic(0j, 0j, 0j, 3 + 0j).tangent(t) for t in (0, 1)] == [3 + 0j, 3 + 0j]
    assert [Cubic(0j, 3 + 0j, 3 + 0j, 3 + 0j).tangent(t) for t in (0, 1)] == [3 + 0j, 3 + 0j]


def test_a_straight_cubic_is_as_long_as_its_chord() -> None:
    assert Cubic(0j, 1 + 1j, 2 + 2j, 3 + 3j).length() == pytest.approx(3 * math.sqrt(2), rel=1e-12)


@pytest.mark.parametrize("t", [0.1875, 0.5, 0.9375])
def test_a_cubic_that_turns_back_is_as_long_as_both_ways(t: float) -> None:
    there_and_back = Cubic(0j, 0j, -2j, -1j)
    assert there_and_back.length() == pytest.approx(1.56, rel=1e-12)
    assert there_and_back.part(0, t).length() + there_and_back.part(t, 1).length() == pytest.approx(
        1.56, rel=1e-12
    )


def test_the_length_of_a_parabola_as_a_cubic_is_that_of_the_closed_form() -> None:
    # y = x² from 0 to 1: ½√5 + ¼ asinh 2.
    parabola = Cubic(0j, 1 / 3 + 0j, 2 / 3 + 1j / 3, 1 + 1j)
    assert parabola.length() == pytest.approx(math.sqrt(5) / 2 + math.asinh(2) / 4, rel=1e-12)


@given(st.floats(-10, 10), st.floats(-10, 10), st.floats(0.1, 10))
def test_the_roots_of_a_quadratic_are_those_from_which_it_was_made(
    one: float, other: float, scale: float
) -> None:
    roots = sorted(quadratic_roots(scale, -scale * (one + other), scale * one * other))
    if abs(one - other) > 1e-6:
        assert roots == pytest.approx(sorted((one, other)), rel=1e-5, abs=1e-9)


def test_a_quadratic_without_square_or_without_anything() -> None:
    assert quadratic_roots(0, 2, -1) == (0.5,)
    assert quadratic_roots(0, 0, 1) == quadratic_roots(0, 0, 0) == quadratic_roots(1, 0, 1) == ()
