"""Sameness and congruence, decided on the segments, and areas of difference."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    Arc,
    Line,
    Motion,
    Path,
    Region,
    circle,
    congruence,
    difference_area,
    is_same_mirrored,
    is_same_turned,
    merged,
    polygon,
    quarter_turns,
    rectangle,
    same_outline,
    same_region,
    shift,
)
from tests.strategies.outlines import angles, motions, outlines, regions

L_SHAPE = polygon([0j, 3 + 0j, 3 + 1j, 1 + 1j, 1 + 2j, 2j])
"""Without any symmetry."""


def started_at(path: Path, k: int) -> Path:
    return Path((*path.segments[k:], *path.segments[:k]))


def split(path: Path, t: float) -> Path:
    """The same path with each line and arc in two."""
    return Path(tuple(p for s in path.segments for p in (s.part(0, t), s.part(t, 1))))


@given(outlines(), st.integers(0, 6))
def test_an_outline_is_the_same_wherever_it_starts(path: Path, k: int) -> None:
    assert same_outline(path, started_at(path, k % len(path.segments)))


@given(outlines(("line", "arc")), st.floats(0.05, 0.95))
def test_an_outline_is_the_same_however_its_lines_and_arcs_are_split(path: Path, t: float) -> None:
    assert same_outline(path, split(path, t))
    assert merged(split(path, t)).length() == pytest.approx(path.length())


@given(st.floats(0.1, 10), angles, angles)
def test_a_circle_is_the_same_wherever_it_starts(radius: float, one: float, other: float) -> None:
    a, b = (Path((Arc(1j, radius, angle, math.tau),)) for angle in (one, other))
    assert same_outline(a, b)
    assert same_outline(split(a, 0.3), b)
    assert difference_area(Region((a,)), Region((b,))) == 0
    assert len(congruence(a, b)) == 1


@given(outlines())
def test_an_outline_is_not_its_hole_and_not_another_size(path: Path) -> None:
    assert not same_outline(path, path.reversed())
    assert not same_outline(path, shift(1e-3 + 0j).path(path))


@given(outlines(), motions)
def test_congruence_finds_the_motion_that_was_made(path: Path, motion: Motion) -> None:
    moved = motion.path(path)
    found = congruence(path, moved, mirrored=motion.mirrored)
    assert all(same_outline(m.path(path), moved) for m in found)
    assert any(abs(m(c) - motion(c)) < 1e-6 for m in found for c in [merged(path).corners()[0]])
    assert all(m.mirrored == motion.mirrored for m in found)


@given(st.floats(0.1, 10), motions)
def test_a_square_lies_on_another_in_four_turns(side: float, motion: Motion) -> None:
    square = rectangle(0, 0, side, side)
    assert len(congruence(square, motion.path(square))) == 4
    assert len(congruence(square, motion.path(square), mirrored=True)) == 4


def test_the_turns_of_a_square_are_exact_quarter_turns() -> None:
    found = congruence(rectangle(0, 0, 2, 2), rectangle(4, 4, 6, 6))
    assert {m.factor for m in found} == {1, 1j, -1, -1j}


@given(motions)
def test_a_shape_without_symmetry_lies_on_another_in_one_way_and_in_its_own_hand_only(motion: Motion) -> None:
    moved = motion.path(L_SHAPE)
    assert len(congruence(L_SHAPE, moved, mirrored=motion.mirrored)) == 1
    assert congruence(L_SHAPE, moved, mirrored=not motion.mirrored) == ()


def test_shapes_of_another_size_or_kind_are_not_congruent() -> None:
    assert congruence(rectangle(0, 0, 2, 2), rectangle(0, 0, 2, 3)) == ()
    assert congruence(rectangle(0, 0, 2, 2), circle(1)) == ()
    assert congruence(circle(1), circle(1.001)) == ()


def test_a_half_disc_is_congruent_in_one_way_and_mirrored_in_one() -> None:
    half = Path((Arc(0j, 2, 0, math.pi), Line(-2 + 0j, 2 + 0j)))
    turned = quarter_turns(1, 5 + 1j).path(half)
    assert [m.factor for m in congruence(half, turned)] == [1j]
    assert len(congruence(half, turned, mirrored=True)) == 1


def test_edges_of_no_length_and_corners_of_no_angle_are_merged_away() -> None:
    clumsy = polygon([0j, 0j, 1 + 0j, 2 + 0j, 2 + 2j, 2 + 2j, 2j])
    assert same_outline(clumsy, rectangle(0, 0, 2, 2))
    assert len(merged(clumsy).segments) == 4


def test_a_path_of_no_size_is_merged_into_nothing() -> None:
    nothing = merged(polygon([1j, 1j, 1j]))
    assert nothing.segments == ()
    assert congruence(nothing, nothing) == ()


def test_a_spike_is_not_merged_away() -> None:
    spiked = polygon([0j, 3 + 0j, 2 + 0j, 2 + 2j, 2j])
    assert len(merged(spiked).segments) == 5


@given(regions())
def test_regions_are_the_same_in_any_order_of_paths(region: Region) -> None:
    assert same_region(region, Region(tuple(reversed(region.paths))))
    assert difference_area(region, region) == 0
    assert not same_region(region, Region(region.paths[:-1]))


def test_a_shape_that_leans_is_its_own_mirror_image_only_when_it_may_be_turned() -> None:
    square = polygon([1 + 0j, 1j, -1 + 0j, -1j])
    kite = polygon([2 + 0j, 1j, -1 + 0j, -1j])
    leaning = Motion(0.8 + 0.6j).path(kite)
    assert is_same_mirrored(square, upright=True)
    assert is_same_mirrored(leaning)
    assert not is_same_mirrored(leaning, upright=True)
    assert is_same_mirrored(shift(3 + 1j).path(quarter_turns(1).path(kite)), upright=True)
    assert not is_same_mirrored(L_SHAPE)


def test_a_square_is_the_same_after_a_quarter_turn_and_an_oblong_is_not() -> None:
    assert is_same_turned(rectangle(1, 2, 4, 5))
    assert is_same_turned(circle(3, 2 + 1j))
    assert not is_same_turned(rectangle(0, 0, 2, 1))
    assert not is_same_turned(L_SHAPE)
