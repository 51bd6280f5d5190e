"""Paths and regions: areas, lengths and boxes against an outside library and against closed forms."""

from __future__ import annotations

import math

import pytest
from hypothesis import given

from quarterturn.geometry import (
    FLATTENING,
    Bounds,
    Path,
    Region,
    as_polygon,
    circle,
    disc,
    flatten_path,
    path_bounds,
    rectangle,
    region_bounds,
)
from tests.strategies.outlines import outlines, regions


@given(regions())
def test_area_length_and_box_agree_with_an_outside_library(region: Region) -> None:
    flat = as_polygon(region)
    assert region.area() == pytest.approx(flat.area, abs=FLATTENING * region.perimeter())
    assert region.perimeter() == pytest.approx(flat.length, rel=1e-4)
    bounds = region_bounds(region)
    assert (bounds.left, bounds.top, bounds.right, bounds.bottom) == pytest.approx(
        flat.bounds, abs=FLATTENING
    )


@given(outlines())
def test_the_box_holds_every_point_and_touches_some(path: Path) -> None:
    bounds = path_bounds(path).grown(1e-12)
    corners = flatten_path(path, 1e-3)
    assert all(
        bounds.left <= p.real <= bounds.right and bounds.top <= p.imag <= bounds.bottom for p in corners
    )
    assert max(p.real for p in corners) > bounds.right - 1e-3


@given(outlines())
def test_drawn_outlines_are_positive_and_closed(path: Path) -> None:
    assert path.area() > 0
    assert path.is_closed()


@given(outlines())
def test_a_path_reversed_is_a_hole_of_the_same_size(path: Path) -> None:
    assert path.reversed().area() == pytest.approx(-path.area())
    assert path.reversed().length() == pytest.approx(path.length())
    assert path.reversed().is_closed()


def test_a_rectangle() -> None:
    box = rectangle(1, 2, 4, 7)
    assert (box.area(), box.length(), box.is_straight()) == (15, 16, True)
    assert box.corners() == (1 + 2j, 4 + 2j, 4 + 7j, 1 + 7j)
    assert path_bounds(box) == Bounds(1, 2, 4, 7)


def test_a_circle() -> None:
    assert circle(3.5).area() == pytest.approx(math.pi * 3.5**2)
    assert circle(3.5).length() == pytest.approx(math.pi * 7)
    bounds = path_bounds(circle(3.5, 1 + 2j))
    assert (bounds.width, bounds.height, bounds.centre) == pytest.approx((7, 7, 1 + 2j))
    assert not circle(3.5).is_straight()


def test_a_hole_is_taken_off_the_area_and_added_to_the_edge() -> None:
    ring = Region((circle(3), circle(2).reversed()))
    assert ring.area() == pytest.approx(5 * math.pi)
    assert ring.perimeter() == pytest.approx(10 * math.pi)


def test_no_paths_are_no_cloth() -> None:
    assert Region(()).is_empty()
    assert (Region(()).area(), Region(()).perimeter()) == (0, 0)
    assert not disc(1).is_empty()


def test_a_path_with_a_gap_is_not_closed() -> None:
    assert not Path(rectangle(0, 0, 1, 1).segments[:3]).is_closed()
