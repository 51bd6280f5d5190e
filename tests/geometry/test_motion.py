"""Rigid motions: they keep what is rigid, and they compose."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    STAY,
    Motion,
    Path,
    Point,
    Region,
    mirror_across_vertical,
    quarter_turns,
    rectangle,
    same_outline,
    same_region,
    shift,
    turn_about,
)
from tests.strategies.outlines import motions, outlines, points, regions


@given(regions(), motions)
def test_a_motion_keeps_areas_and_lengths(region: Region, motion: Motion) -> None:
    moved = motion.region(region)
    assert moved.area() == pytest.approx(region.area(), abs=1e-9)
    assert moved.perimeter() == pytest.approx(region.perimeter(), abs=1e-9)


@given(outlines(), motions)
def test_a_motion_keeps_the_sense_of_a_path(path: Path, motion: Motion) -> None:
    assert motion.path(path).area() > 0
    assert motion.path(path).is_closed()


@given(outlines(), motions, st.floats(0, 1))
def test_moving_a_segment_moves_each_of_its_points(path: Path, motion: Motion, t: float) -> None:
    for segment in path.segments:
        assert abs(motion.segment(segment).point(t) - motion(segment.point(t))) < 1e-12


@given(motions, motions, points)
def test_one_motion_then_another_is_a_motion(first: Motion, second: Motion, point: Point) -> None:
    assert abs(first.then(second)(point) - second(first(point))) < 1e-12


@given(motions, points)
def test_a_motion_and_its_inverse_leave_a_point_where_it_was(motion: Motion, point: Point) -> None:
    assert abs(motion.inverse()(motion(point)) - point) < 1e-12
    assert abs(motion.then(motion.inverse())(point) - point) < 1e-12


@given(outlines(), points)
def test_four_quarter_turns_and_two_mirrorings_are_none(path: Path, about: Point) -> None:
    turned = path
    for _ in range(4):
        turned = quarter_turns(1, about).path(turned)
    assert same_outline(turned, path)
    mirror = mirror_across_vertical(about.real)
    assert same_outline(mirror.path(mirror.path(path)), path)


def test_a_quarter_turn_is_clockwise_as_seen_and_exact() -> None:
    assert quarter_turns(1)(3 + 0j) == 3j
    assert [quarter_turns(k, 2 + 2j)(2 + 0j) for k in range(-1, 5)] == [
        2j,
        2 + 0j,
        4 + 2j,
        2 + 4j,
        2j,
        2 + 0j,
    ]


def test_turning_keeps_the_point_about_which_it_turns() -> None:
    assert turn_about(0.6 + 0.8j, 5 + 5j)(5 + 5j) == pytest.approx(5 + 5j)


def test_a_shift_and_a_mirroring() -> None:
    assert shift(1 + 2j)(3 + 3j) == 4 + 5j
    assert mirror_across_vertical(2)(3 + 1j) == 1 + 1j
    assert STAY(1 + 2j) == 1 + 2j
    region = Region((rectangle(0, 0, 1, 2),))
    assert same_region(mirror_across_vertical(0.5).region(region), region)
