"""Sameness and congruence, decided on the segments, and areas of difference."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from quarterturn.geometry import (
    Arc,
    Line,
    Motion,
    Path,
    Point,
    Region,
    as_polygon,
    circle,
    congruence,
    difference_area,
    disc,
    flatten_path,
    from_polygons,
    is_inside,
    merged,
    polygon,
    quarter_turns,
    rectangle,
    same_outline,
    same_region,
    shift,
    uncovered_area,
)
from tests.strategies.outlines import angles, cells, motions, outlines, points, regions, squares

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


def winding(point: Point, region: Region) -> float:
    """How often the outlines of a region turn about a point, holes counted backwards."""
    corners = [flatten_path(path, 1e-4) for path in region.paths]
    steps = (step for ring in corners for step in zip(ring, (*ring[1:], ring[0]), strict=True))
    return sum(cmath.phase((b - point) / (a - point)) for a, b in steps) / math.tau


@given(regions(), points)
def test_a_point_is_inside_where_the_outlines_turn_about_it_once(region: Region, point: Point) -> None:
    edge = as_polygon(region).boundary
    assume(edge.distance(as_polygon(disc(1e-3, point))) > 0)
    assert is_inside(point, region) == (round(winding(point, region)) == 1)


def test_an_island_in_a_hole_is_cloth() -> None:
    target = Region((circle(3), circle(2).reversed(), circle(1)))
    assert as_polygon(target).area == pytest.approx(target.area(), abs=1e-3)
    assert [is_inside(complex(x, 0), target) for x in (0.5, 1.5, 2.5, 3.5)] == [True, False, True, False]


@given(regions(), regions())
def test_differences_add_up(a: Region, b: Region) -> None:
    only_a, only_b = uncovered_area(a, [b]), uncovered_area(b, [a])
    assert difference_area(a, b) == pytest.approx(only_a + only_b, abs=1e-6)
    assert only_a - only_b == pytest.approx(a.area() - b.area(), abs=1e-3)


def test_what_two_covers_leave_open() -> None:
    cloth = Region((rectangle(0, 0, 4, 4),))
    covers = [Region((rectangle(0, 0, 4, 1),)), Region((rectangle(0, 0, 1, 4),))]
    assert uncovered_area(cloth, covers) == pytest.approx(9)
    assert uncovered_area(cloth, []) == pytest.approx(16)


@given(cells)
def test_polygons_and_regions_carry_the_same_cloth_both_ways(places: list[tuple[int, int]]) -> None:
    region = from_polygons(as_polygon(squares(places)))
    assert region.area() == pytest.approx(len(places))
    assert as_polygon(region).symmetric_difference(as_polygon(squares(places))).area < 1e-12
