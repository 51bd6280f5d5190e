"""The check finds every kind of fault, and none where there is none."""

from __future__ import annotations

from quarterturn.geometry import Motion, disc, rectangle, shift
from quarterturn.materials.nesting import Checker, Place, Scrap, Shape
from tests.materials.nesting.nesting_cases import frame

SQUARE = Shape("a", rectangle(0, 0, 2, 2), count=2)
FRAME = frame("f", 6, 6, 1, 1)
CHECKER = Checker([SQUARE, FRAME], 0.5, [Scrap("s", disc(2))])


def at(x: float, y: float, name: str = "a", within: int | None = None, scrap: str | None = None) -> Place:
    return Place(name, shift(complex(x, y)), within, scrap)


def faults(*places: Place) -> int:
    return len(CHECKER.faults(places, 9, 12))


def test_shapes_a_gap_apart_and_inside_are_sound() -> None:
    assert faults(at(0, 0), at(2.5, 0), at(7, 10)) == 0


def test_shapes_nearer_than_the_gap_are_found() -> None:
    assert faults(at(0, 0), at(2.499, 0)) == 1
    assert faults(at(0, 0), at(1, 1)) == 1


def test_shapes_that_overlap_are_found_where_no_gap_is_asked_for() -> None:
    checker = Checker([SQUARE], 0)
    assert checker.faults([at(0, 0), at(2, 0)], 9, 12) == ()
    assert len(checker.faults([at(0, 0), at(1.999, 0)], 9, 12)) == 1


def test_a_shape_in_the_place_of_another_is_found() -> None:
    assert len(Checker([SQUARE], 0).faults([at(0, 0), at(0, 0)], 9, 12)) == 1


def test_shapes_over_an_edge_are_found() -> None:
    assert [faults(at(x, y)) for x, y in ((-0.001, 0), (7.001, 0), (0, -0.001), (0, 10.001))] == [1, 1, 1, 1]


def test_shapes_on_two_sheets_are_not_near() -> None:
    assert faults(at(0, 0), Place("a", shift(0j), number=1)) == 0


def test_a_shape_is_held_by_a_hollow_a_gap_away_only() -> None:
    assert faults(at(0, 0, "f"), at(1.5, 2.5, within=0)) == 0
    assert faults(at(0, 0, "f"), at(1.4, 2.5, within=0)) == 1
    assert faults(at(0, 0, "f"), at(0.5, 2.5, within=0)) == 1
    assert faults(at(0, 0, "f"), at(6.5, 2.5, within=0)) == 1


def test_a_shape_in_a_hollow_that_is_not_said_to_be_there_is_too_near() -> None:
    assert faults(at(0, 0, "f"), at(2, 2)) == 1


def test_a_shape_reaches_out_of_a_scrap() -> None:
    assert faults(at(-1, -1, scrap="s")) == 0
    assert faults(at(-0.2, -1, scrap="s")) == 1


def test_flipped_and_wrongly_turned_shapes_are_found() -> None:
    assert faults(Place("a", Motion(-1 + 0j, 2 + 0j, mirrored=True))) == 1
    assert faults(Place("a", Motion(1j, 2 + 0j))) == 1
    assert faults(Place("a", Motion(-1 + 0j, 2 + 2j))) == 0
