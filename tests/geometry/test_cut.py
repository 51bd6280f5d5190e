"""The straight cut: laws on drawn regions, and the places where a careless cut goes wrong."""

from __future__ import annotations

import cmath
import math

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from quarterturn.geometry import (
    EPSILON,
    FLATTENING,
    Arc,
    Cubic,
    Line,
    Motion,
    Path,
    Region,
    Segment,
    StraightLine,
    as_polygon,
    circle,
    cut,
    difference_area,
    disc,
    keep_left,
    line_through,
    path_crossings,
    polygon,
    rectangle,
    same_region,
    shift,
)
from tests.strategies.outlines import angles, cells, grid_lines, lines, motions, outlines, regions, squares

ACROSS = StraightLine(0j, 1 + 0j)
"""Along the x axis; its positive side is y > 0."""


def half_plane(line: StraightLine) -> shapely.Polygon:
    far = 100 * line.direction
    corners = (
        line.through - far,
        line.through + far,
        line.through + far * (1 + 1j),
        line.through + far * (-1 + 1j),
    )
    return shapely.Polygon([(p.real, p.imag) for p in corners])


def on_line(region: Region, line: StraightLine) -> float:
    """The length of a region's edges that lie on a line."""
    return sum(
        s.length()
        for s in region.segments()
        if isinstance(s, Line) and max(abs(line.side(s.start)), abs(line.side(s.end))) < 2 * EPSILON
    )


@given(regions(), lines)
def test_the_areas_of_the_parts_add_up_to_the_whole(region: Region, line: StraightLine) -> None:
    left, right = cut(region, line)
    assert left.area() + right.area() == pytest.approx(region.area(), abs=1e-8)
    assert min(left.area(), right.area()) > -1e-8


@given(regions(), lines)
def test_each_part_lies_on_its_side(region: Region, line: StraightLine) -> None:
    left, right = cut(region, line)
    marks = [k / 8 for k in range(9)]
    assert all(line.side(s.point(t)) > -2 * EPSILON for s in left.segments() for t in marks)
    assert all(line.side(s.point(t)) < 2 * EPSILON for s in right.segments() for t in marks)


@given(regions(), lines)
def test_every_part_is_bounded_by_closed_paths(region: Region, line: StraightLine) -> None:
    assert all(path.is_closed() for part in cut(region, line) for path in part.paths)


@given(regions(), lines)
def test_the_edges_off_the_line_add_up_to_those_of_the_whole(region: Region, line: StraightLine) -> None:
    parts = cut(region, line)
    off = [each.perimeter() - on_line(each, line) for each in (region, *parts)]
    assert off[1] + off[2] == pytest.approx(off[0], abs=1e-7)


@given(regions(), lines)
def test_both_parts_get_the_chord_as_an_outside_library_measures_it(
    region: Region, line: StraightLine
) -> None:
    assume(on_line(region, line) == 0)
    left, right = cut(region, line)
    far = 100 * line.direction
    ends = (line.through - far, line.through + far)
    chord = shapely.LineString([(p.real, p.imag) for p in ends]).intersection(as_polygon(region)).length
    assert on_line(left, line) == pytest.approx(on_line(right, line), abs=1e-7)
    # A line that grazes a curve is where flattening counts most: the chord grows with the root of the depth.
    assert on_line(left, line) == pytest.approx(chord, abs=40 * math.sqrt(FLATTENING))


@given(regions(), lines)
def test_a_cut_agrees_with_an_outside_library(region: Region, line: StraightLine) -> None:
    expected = as_polygon(region).intersection(half_plane(line))
    kept = as_polygon(keep_left(region, line))
    assert kept.symmetric_difference(expected).area < 2 * FLATTENING * region.perimeter()


@given(regions(("line",)), lines)
def test_parts_of_straight_edges_join_back_to_the_whole(region: Region, line: StraightLine) -> None:
    left, right = cut(region, line)
    joined = as_polygon(left).union(as_polygon(right))
    assert joined.symmetric_difference(as_polygon(region)).area < 1e-7


@given(cells, grid_lines)
def test_squares_that_touch_are_cut_along_edges_and_through_corners(
    places: list[tuple[int, int]], line: StraightLine
) -> None:
    region = squares(places)
    expected = as_polygon(region).intersection(half_plane(line))
    left = keep_left(region, line)
    assert left.area() == pytest.approx(expected.area, abs=1e-9)
    assert as_polygon(left).symmetric_difference(expected).area < 1e-9


@given(cells, grid_lines, grid_lines)
def test_outlines_that_pinch_themselves_are_cut_twice(
    places: list[tuple[int, int]], first: StraightLine, second: StraightLine
) -> None:
    left = keep_left(keep_left(squares(places), first), second)
    expected = as_polygon(squares(places)).intersection(half_plane(first)).intersection(half_plane(second))
    assert left.area() == pytest.approx(expected.area, abs=1e-9)
    assert as_polygon(left).symmetric_difference(expected).area < 1e-9


@given(regions(), lines, motions)
def test_cutting_and_moving_can_change_places(region: Region, line: StraightLine, motion: Motion) -> None:
    moved = line_through(motion(line.through), motion(line.at(1.0)))
    parts = cut(region, line)
    expected = reversed(parts) if motion.mirrored else parts
    for part, other in zip(cut(motion.region(region), moved), expected, strict=True):
        assert part.area() == pytest.approx(other.area(), abs=1e-7)
        assert part.perimeter() == pytest.approx(other.perimeter(), abs=1e-3)


@given(regions(), lines)
def test_cutting_again_along_the_line_takes_nothing_off(region: Region, line: StraightLine) -> None:
    left, right = cut(region, line)
    assert same_region(keep_left(left, line), left)
    assert keep_left(right, line).is_empty()


@given(outlines(), st.data())
def test_a_cut_from_corner_to_corner_keeps_the_area(path: Path, data: st.DataObject) -> None:
    first, second = data.draw(st.permutations(path.corners()))[:2]
    left, right = cut(Region((path,)), line_through(first, second))
    assert left.area() + right.area() == pytest.approx(path.area(), abs=1e-9)


@given(regions(), st.data())
def test_a_cut_that_all_but_touches_keeps_the_area_and_the_sides(region: Region, data: st.DataObject) -> None:
    line = data.draw(grazing_lines(list(region.segments())))
    left, right = cut(region, line)
    assert left.area() + right.area() == pytest.approx(region.area(), abs=2e-7)
    for part, side in ((left, 1), (right, -1)):
        assert all(path.is_closed() for path in part.paths)
        assert all(side * line.side(s.point(t)) > -3 * EPSILON for s in part.segments() for t in (0, 0.5, 1))
        assert as_polygon(part).area == pytest.approx(part.area(), abs=FLATTENING * region.perimeter())


@st.composite
def grazing_lines(draw: st.DrawFn, segments: list[Segment]) -> StraightLine:
    """Draw a line that is, but for very little, a tangent or a chord of a region's edge or runs through a corner."""
    segment = draw(st.sampled_from(segments))
    ways = [
        segment.tangent(draw(st.sampled_from([0.0, 0.25, 0.5, 0.75, 1.0]))),
        segment.end - segment.start,
        1j,
    ]
    way = draw(st.sampled_from(ways))
    little = draw(st.sampled_from([0, 1e-16, 4e-10, 9.9e-10, 1.01e-9, 1.5e-9, 3e-9, 1e-8, 1e-6, 1e-4]))
    point = segment.point(draw(st.sampled_from([0.0, 0.25, 0.5, 0.75])))
    return StraightLine(point, way / abs(way)).moved_left(draw(st.sampled_from([little, -little])))


@given(st.floats(0.1, 10), angles, angles)
def test_a_tangent_leaves_all_or_nothing(radius: float, way: float, start: float) -> None:
    whole = Region((Path((Arc(2 + 1j, radius, start, math.tau),)),))
    direction = cmath.rect(1, way)
    touching = StraightLine(2 + 1j - 1j * direction * radius, direction)
    assert keep_left(whole, touching) == whole
    assert keep_left(whole, touching.reversed()).is_empty()


@given(st.floats(0.1, 10), angles, angles, st.floats(-0.999, 0.999))
def test_a_circle_loses_a_segment_by_the_formula_wherever_it_starts(
    radius: float, way: float, start: float, share: float
) -> None:
    whole = Region((Path((Arc(2 + 1j, radius, start, math.tau),)),))
    line = StraightLine(2 + 1j, cmath.rect(1, way)).moved_left(share * radius)
    expected = radius**2 * (math.acos(share) - share * math.sqrt(1 - share**2))
    assert keep_left(whole, line).area() == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize("offset", [0.0, 1e-15, -1e-15, 1e-10, -1e-10, 9e-10, 1.1e-9, -1.1e-9, 1e-8])
@given(angles)
def test_a_cut_within_float_noise_of_an_edge_leaves_no_sliver(offset: float, way: float) -> None:
    turned = Motion(cmath.rect(1, way))
    square = turned.region(Region((rectangle(-2, -2, 2, 2),)))
    line = StraightLine(turned(-2j), turned(1 + 0j)).moved_left(offset)
    left, right = cut(square, line)
    assert left.area() == pytest.approx(16 - max(offset, 0) * 4, abs=1e-8)
    assert right.area() == pytest.approx(max(offset, 0) * 4, abs=1e-8)
    if abs(offset) < EPSILON / 2:
        assert (left, right) == (square, Region(()))


def test_a_region_on_one_side_comes_back_as_it_is() -> None:
    region = Region((rectangle(1, 1, 3, 2), circle(1, 9 + 3j)))
    assert keep_left(region, ACROSS) is region
    assert cut(region, ACROSS.reversed()) == (Region(()), region)


def test_a_sliver_is_kept_with_its_area() -> None:
    left, right = cut(Region((rectangle(0, -1, 4, 1e-6),)), ACROSS)
    assert left.area() == pytest.approx(4e-6, rel=1e-6)
    assert right.area() == pytest.approx(4, rel=1e-12)


@pytest.mark.parametrize("depth", [1e-10, 9e-10, 1.01e-9, 3e-9, 1e-8, 1e-6])
def test_a_sharp_tip_cut_off_is_a_piece_or_nothing(depth: float) -> None:
    needle = Region((polygon([5 + 7j, 4.9 + 9j, 5.1 + 9j]),))
    tip = keep_left(needle, StraightLine(complex(0, 7 + depth), -1 + 0j))
    assert as_polygon(tip).area == pytest.approx(0.05 * depth**2, abs=1e-12)
    assert all(len(path.segments) >= 3 for path in tip.paths)


def test_a_hole_opens_where_the_cut_runs_through_it() -> None:
    ring = Region((circle(3), circle(1).reversed()))
    left, right = cut(ring, ACROSS)
    assert len(left.paths) == len(right.paths) == 1
    assert left.area() == pytest.approx(4 * math.pi)
    assert left.perimeter() == pytest.approx(4 * math.pi + 4)


def test_a_hole_stays_whole_beside_the_cut() -> None:
    ring = Region((rectangle(-3, -3, 3, 3), circle(1, 1.5j).reversed()))
    left, right = cut(ring, ACROSS)
    assert [len(part.paths) for part in (left, right)] == [2, 1]
    assert left.area() == pytest.approx(18 - math.pi)


def test_a_hole_whose_edge_lies_on_the_cut_becomes_a_notch() -> None:
    region = Region((rectangle(0, -2, 6, 2), rectangle(2, 0, 4, 1).reversed()))
    left, right = cut(region, ACROSS)
    assert [len(part.paths) for part in (left, right)] == [1, 1]
    assert (left.area(), left.perimeter()) == (10, 18)
    assert same_region(right, Region((rectangle(0, -2, 6, 0),)))


def test_a_cut_through_the_point_where_two_outlines_touch_parts_them() -> None:
    touching = Region((circle(1, 1j), circle(1, -1j)))
    left, right = cut(touching, ACROSS)
    assert (left.paths, right.paths) == ((touching.paths[0],), (touching.paths[1],))


def test_a_cut_across_two_outlines_that_touch_in_a_point_of_it_leaves_two_pieces() -> None:
    left, right = cut(Region((circle(1, -1 + 0j), circle(1, 1 + 0j))), ACROSS)
    assert len(left.paths) == len(right.paths) == 2
    assert all(p.area() == pytest.approx(math.pi / 2) for p in (*left.paths, *right.paths))


def test_an_outline_pinched_on_the_cut_falls_into_its_two_wings() -> None:
    bow = polygon([0j, 2 - 1j, 2 + 1j, 0j, -2 + 1j, -2 - 1j])
    left, right = cut(Region((bow,)), StraightLine(0j, -1j))
    assert (left.area(), right.area()) == (2, 2)
    assert same_region(left, Region((polygon([0j, 2 - 1j, 2 + 1j]),)))


def test_a_comb_falls_into_its_teeth() -> None:
    teeth = [
        complex(x, y) for k in range(4) for x, y in ((2 * k, 3), (2 * k, 0), (2 * k + 1, 0), (2 * k + 1, 3))
    ]
    comb = polygon([*teeth, 7 + 4j, 0 + 4j])
    comb = comb if comb.area() > 0 else comb.reversed()
    above = keep_left(Region((comb,)), StraightLine(2j, -1 + 0j))
    assert sorted(path.area() for path in above.paths) == [2, 2, 2, 2]


def test_a_curve_that_crosses_the_line_while_touching_it_is_cut_there() -> None:
    # The height of this curve is (2t − 1)³, so that at its middle it lies along the line.
    wave = Cubic(-1 - 1j, -1 / 3 + 1j, 1 / 3 - 1j, 1 + 1j)
    region = Region((Path((wave, Line(1 + 1j, -1 + 1j), Line(-1 + 1j, -1 - 1j))),))
    left, right = cut(region, ACROSS)
    assert left.area() == pytest.approx(1.75)
    assert right.area() == pytest.approx(0.25)
    assert region.area() == pytest.approx(2)


def test_a_curve_that_crosses_the_line_three_times_is_cut_three_times() -> None:
    wave = Cubic(-2 - 1j, -1 + 4j, 1 - 4j, 2 + 1j)
    region = Region((Path((wave, Line(2 + 1j, 2 + 3j), Line(2 + 3j, -2 + 3j), Line(-2 + 3j, -2 - 1j))),))
    left, right = cut(region, ACROSS)
    assert len(left.paths) == 1
    assert len(right.paths) == 2
    assert left.area() + right.area() == pytest.approx(region.area())


def test_a_loop_is_cut_at_the_point_where_it_crosses_itself() -> None:
    loop = Cubic(-1 + 0j, 2 + 3j, -2 + 3j, 1 + 0j)
    knot = next(loop.point(t / 10_000) for t in range(1, 5_000) if loop.point(t / 10_000).real > 0)
    region = Region((Path((loop, Line(1 + 0j, 0 - 1j), Line(0 - 1j, -1 + 0j))),))
    middle = StraightLine(complex(0, knot.imag), 1j)
    left, right = cut(region, middle)
    assert left.area() + right.area() == pytest.approx(region.area())
    assert left.area() == pytest.approx(right.area(), abs=1e-6)


def test_a_disc_cut_both_ways_gives_four_quarters_that_are_one_another_turned() -> None:
    quarters = [q for half in cut(disc(3.5), ACROSS) for q in cut(half, StraightLine(0j, 1j))]
    assert [q.area() for q in quarters] == pytest.approx([math.pi * 3.5**2 / 4] * 4)
    assert difference_area(shift(1j).region(quarters[0]), quarters[0]) > 1


@given(outlines(), lines)
def test_a_path_crosses_a_line_where_it_changes_sides(path: Path, line: StraightLine) -> None:
    crossings = path_crossings(path, line)
    assert all(abs(line.side(point)) < EPSILON for point in crossings)
    if all(abs(line.side(corner)) > EPSILON for corner in path.corners()):
        assert len(crossings) == 2 * sum(
            _chords(each, line) for each in keep_left(Region((path,)), line).paths
        )


def _chords(path: Path, line: StraightLine) -> int:
    return sum(on_line(Region((Path((segment,)),)), line) > 0 for segment in path.segments)


def test_a_circle_is_crossed_in_the_order_of_travel_but_not_where_it_starts() -> None:
    assert path_crossings(circle(2), StraightLine(0j, 1j)) == pytest.approx((2j, -2j))
    assert path_crossings(circle(2), ACROSS) == pytest.approx((-2 + 0j,))
