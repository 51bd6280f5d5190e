"""A place is free where bodies do not overlap, and nowhere else."""

from __future__ import annotations

import math

import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.geometry import Path, Region, as_polygon, disc, polygon, quarter_turns, shift
from quarterturn.materials.nesting import Checker, Place, Shape
from quarterturn.materials.nesting.bodies import Catalogue, shrunk_region
from quarterturn.materials.nesting.placing import Placer, orders
from quarterturn.materials.nesting.rooms import NoFit, Room, bottom, inside_area, inside_box, middle
from quarterturn.materials.nesting.telling import motion
from tests.materials.nesting.nesting_cases import corners, gaps, shapes

spots = st.builds(
    complex, st.integers(-60, 60).map(lambda n: n / 10), st.integers(-60, 60).map(lambda n: n / 10)
)


@given(corners(), corners(), spots, st.integers(0, 3), st.integers(0, 3))
@settings(max_examples=500, deadline=None)
def test_the_no_fit_area_is_where_two_outlines_overlap(
    one: Path, other: Path, at: complex, turn: int, other_turn: int
) -> None:
    catalogue = Catalogue([Shape("a", one), Shape("b", other)], 0)
    forbidden = NoFit(catalogue)(catalogue.body(0, turn), catalogue.body(1, other_turn), 0j)
    fixed = as_polygon(Region((quarter_turns(turn).path(one),)))
    moved = as_polygon(Region((quarter_turns(other_turn).then(shift(at)).path(other),)))
    point = shapely.Point(at.real, at.imag)
    if fixed.intersection(moved).area > 1e-3:
        assert forbidden.contains(point)
    if fixed.distance(moved) > 1e-3:
        assert not forbidden.intersects(point)


@given(corners(), corners(), spots)
@settings(max_examples=300, deadline=None)
def test_places_inside_an_area_are_where_it_covers_the_outline(
    area: Path, outline: Path, at: complex
) -> None:
    body = Catalogue([Shape("a", outline)], 0).body(0, 0)
    free = inside_area(shrunk_region(Region((area,)), 0))(body)
    around = as_polygon(Region((area,)))
    moved, point = as_polygon(Region((shift(at).path(outline),))), shapely.Point(at.real, at.imag)
    if around.buffer(-1e-3).covers(moved):
        assert free.intersects(point)
    if moved.difference(around).area > 1e-3:
        assert not free.intersects(point)


def test_a_shape_fits_a_hole_of_its_own_size() -> None:
    square = polygon([0, 2 + 0j, 2 + 2j, 2j])
    catalogue = Catalogue([Shape("a", square)], 0)
    room = Room(inside_area(shrunk_region(Region((shift(5 + 5j).path(square),)), 0)), NoFit(catalogue))
    found = room.lowest(catalogue.bodies(0))
    assert found is not None
    assert abs(found[1] - (5 + 5j)) < 1e-5


def test_nothing_fits_a_region_that_is_too_small_or_shrunk_away() -> None:
    body = Catalogue([Shape("a", polygon([0, 2 + 0j, 2 + 2j, 2j]))], 0).body(0, 0)
    assert inside_area(shrunk_region(disc(1.2), 0))(body).is_empty
    assert inside_area(shrunk_region(disc(1.2), 2))(body).is_empty
    assert inside_box(1.9, 5)(body).is_empty


@given(shapes(most=3, count=3), gaps, st.sampled_from([bottom, middle]))
@settings(max_examples=80, deadline=None)
def test_what_the_placer_lays_is_sound_before_any_check(
    wanted: list[Shape], gap: float, rule: object
) -> None:
    catalogue = Catalogue(wanted, gap)
    placer = Placer(catalogue, NoFit(catalogue), 17)
    for order in orders(catalogue, [shape.count for shape in wanted]):
        laid = placer.roll(order, rule, math.inf)  # type: ignore[arg-type]
        assert laid is not None
        places = [Place(wanted[body.shape].name, motion(body.turn, at)) for body, at in laid]
        assert Checker(wanted, gap).faults(places, 17, math.inf) == ()
