"""Areas through polygons: what is inside, what is left open, and where an overlay could go wrong."""

from __future__ import annotations

import cmath
import math

import pytest
import shapely
from hypothesis import assume, given

from quarterturn.geometry import (
    FLATTENING,
    Arc,
    Line,
    Path,
    Point,
    Region,
    as_polygon,
    circle,
    difference_area,
    disc,
    flatten_path,
    from_polygons,
    is_inside,
    joined,
    polygon,
    rectangle,
    shared_area,
    shift,
    uncovered_area,
    without,
)
from tests.strategies.outlines import cells, outlines, points, regions, squares


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


@given(outlines())
def test_an_outline_moved_by_float_noise_differs_by_nothing(path: Path) -> None:
    moved = Region((shift(1e-15 + 1e-15j).path(path),))
    assert uncovered_area(Region((path,)), [moved]) < 1e-7
    assert as_polygon(moved).area == pytest.approx(path.area(), abs=FLATTENING * path.length())


def test_a_triangle_less_the_half_plane_that_holds_it_is_nothing() -> None:
    # Without a grid, GEOS 3.14 gives the whole triangle here: an edge lies along the half plane's but for noise.
    corners = [
        3.6541818305704035 - 1.6269465723032006j,
        -0.4999999999999998 + 0.8660254037844387j,
        -2.8315594803123165 - 2.0572483830236554j,
    ]
    way = 100 * (corners[1] - corners[0]) / abs(corners[1] - corners[0])
    half_plane = polygon([corners[0] + way * each for each in (-1, 1, 1 + 1j, -1 + 1j)])
    assert uncovered_area(Region((polygon(corners),)), [Region((half_plane,))]) == 0


def test_a_piece_flatter_than_the_tolerance_has_no_area() -> None:
    cap = Arc(0j, 1, 0, 0.002)
    flat = Region((Path((cap, Line(cap.end, cap.start))),))
    assert as_polygon(flat).is_empty
    assert as_polygon(flat, 1e-9).area == pytest.approx(flat.area(), rel=1e-2)


def test_areas_joined_and_taken_off() -> None:
    a, b = shapely.box(0, 0, 2, 2), shapely.box(1, 0, 3, 2)
    assert (joined(a, b).area, without(a, b).area, without(a, a).area) == (6, 2, 0)


def test_lines_and_points_beside_an_area_are_left_out() -> None:
    mixed = shapely.GeometryCollection([shapely.box(0, 0, 1, 1), shapely.LineString([(0, 3), (3, 3)])])
    assert joined(mixed, shapely.box(1, 0, 2, 1)).area == 2
    assert without(mixed, shapely.Point(5, 5)).geom_type in {"Polygon", "MultiPolygon"}
    assert without(shapely.box(0, 0, 1, 1), mixed).is_empty


def test_two_discs_share_a_lens() -> None:
    """Radius r and middles d apart: 2r²·acos(d/2r) − d/2·√(4r² − d²)."""
    lens = 2 * math.acos(0.5) - 0.5 * math.sqrt(3)
    assert shared_area(disc(1.0), disc(1.0, 1 + 0j)) == pytest.approx(lens, rel=1e-4)


def test_discs_beside_one_another_or_in_a_hole_share_nothing() -> None:
    ring = Region((circle(2.0), circle(1.0).reversed()))
    assert shared_area(disc(1.0), disc(1.0, 2 + 0j)) == 0.0
    assert shared_area(disc(0.9), ring) == pytest.approx(0.0, abs=1e-9)
