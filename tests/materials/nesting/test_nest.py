"""Nestings: laws that every one keeps, known cases, and densities beside the published best."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.geometry import Region, circle, disc, polygon, rectangle
from quarterturn.materials.nesting import (
    QUICK,
    STEP,
    Checker,
    Effort,
    Nesting,
    Scrap,
    Shape,
    nest_roll,
    nest_sheets,
)
from tests.materials.nesting.nesting_cases import (
    best_known,
    corners,
    density,
    frame,
    gaps,
    heart,
    heart_ring,
    instance,
    ring,
    shapes,
    widths,
)

SOME = Effort(placings=30)


def is_sound(
    wanted: list[Shape], gap: float, nesting: Nesting, width: float, height: float = math.inf
) -> bool:
    return not Checker(wanted, gap).faults(nesting.places, width, height)


def all_counts(wanted: list[Shape], nesting: Nesting) -> Counter[str]:
    return nesting.counts + Counter(dict(nesting.unplaced))


@given(shapes(), gaps, widths)
@settings(max_examples=150, deadline=None)
def test_a_roll_holds_every_shape_apart_and_inside(wanted: list[Shape], gap: float, width: float) -> None:
    nesting = nest_roll(wanted, gap, width, effort=QUICK)
    assert is_sound(wanted, gap, nesting, width)
    assert all_counts(wanted, nesting) == Counter({shape.name: shape.count for shape in wanted})


@given(shapes(), gaps, widths)
@settings(max_examples=100, deadline=None)
def test_a_nesting_is_never_longer_than_rows_nor_shorter_than_the_bound(
    wanted: list[Shape], gap: float, width: float
) -> None:
    nesting = nest_roll(wanted, gap, width, effort=SOME)
    assert nesting.bound <= nesting.length <= nesting.rows_length
    assert nesting.saved >= 0


@given(shapes(most=3, count=3), gaps)
@settings(max_examples=80, deadline=None)
def test_sheets_hold_every_shape_on_no_more_sheets_than_rows(wanted: list[Shape], gap: float) -> None:
    nesting = nest_sheets(wanted, gap, 9, 12, effort=SOME)
    assert is_sound(wanted, gap, nesting, 9, 12)
    assert all_counts(wanted, nesting) == Counter({shape.name: shape.count for shape in wanted})
    assert nesting.bound <= nesting.length <= nesting.rows_length


@given(shapes(most=3, count=3), gaps)
@settings(max_examples=40, deadline=None)
def test_the_same_input_gives_the_same_nesting(wanted: list[Shape], gap: float) -> None:
    assert nest_roll(wanted, gap, 9, effort=SOME) == nest_roll(wanted, gap, 9, effort=SOME)


@given(corners(), st.integers(1, 8), gaps)
@settings(max_examples=150, deadline=None)
def test_shapes_never_lie_flipped_nor_in_a_turn_that_is_not_allowed(
    outline: object, count: int, gap: float
) -> None:
    wanted = [Shape("a", outline, count=count, turns=(0,))]  # type: ignore[arg-type]
    places = nest_roll(wanted, gap, 9, effort=QUICK).places
    assert {(place.motion.factor, place.motion.mirrored) for place in places} == {(1, False)}


def test_two_circles_in_a_narrow_roll_touch_both_edges_and_each_other() -> None:
    """Middles are 1 apart across and √3 along: 2 + √3 in all."""
    nesting = nest_roll([Shape("a", circle(1), count=2)], 0, 3)
    assert float(nesting.length) == pytest.approx(2 + math.sqrt(3), abs=1e-4)


def test_circles_as_wide_as_the_roll_lie_in_one_column_and_that_is_proved() -> None:
    nesting = nest_roll([Shape("a", circle(3), count=4)], 0.5, 6)
    assert (nesting.length, nesting.proved) == (4 * 6 + 3 * 0.5, True)


@pytest.mark.parametrize(("width", "size", "count"), [(12, 3.5, 40), (17, 4, 60), (17, 2.5, 31)])
def test_equal_circles_are_staggered_and_never_denser_than_six_round_one(
    width: float, size: float, count: int
) -> None:
    wanted = [Shape("a", circle(size / 2), count=count)]
    nesting = nest_roll(wanted, 0, width)
    assert nesting.length < nesting.rows_length
    assert density(wanted, width, nesting) < 100 * math.pi / math.sqrt(12)


def test_squares_that_fill_the_roll_are_proved_the_shortest() -> None:
    nesting = nest_roll([Shape("a", rectangle(0, 0, 3, 3), count=9)], 0, 9)
    assert (nesting.length, nesting.bound, nesting.proved) == (9, 9, True)


def test_shapes_wider_than_half_the_roll_bound_the_length_better_than_their_area() -> None:
    """No two lie side by side, so that a line in the middle is cut by all."""
    nesting = nest_roll([Shape("a", rectangle(0, 0, 5, 2), count=6, turns=(0, 2))], 0, 9)
    assert (nesting.length, nesting.bound) == (12, 12)


def test_two_triangles_share_a_square_when_one_is_turned() -> None:
    half = polygon([0, 4 + 0j, 4j])
    assert nest_roll([Shape("a", half, count=2)], 0, 4).length == 4
    assert nest_roll([replace(Shape("a", half, count=2), turns=(0,))], 0, 4).length == 8


def test_rings_lie_in_each_other_as_deep_as_they_fit() -> None:
    nesting = nest_roll([ring("a", 6, 0.5, 1), ring("b", 4, 0.5, 1), ring("c", 2, 0.5, 1)], 0.25, 17)
    assert [(place.shape, place.within) for place in nesting.places] == [("a", None), ("b", 0), ("c", 1)]
    assert nesting.length == 6


def test_a_centre_holds_several_small_rings() -> None:
    nesting = nest_roll([ring("a", 8, 0.5, 1), ring("b", 2, 0.25, 5)], 0.125, 8)
    assert [place.within for place in nesting.places] == [None, 0, 0, 0, 0, 0]
    assert (nesting.length, nesting.rows_length) == (8, 8 + 0.125 + 2 + 0.125 + 2)


def test_the_gap_decides_whether_a_ring_fits_a_centre() -> None:
    wanted = [frame("a", 6, 6, 1, 1), Shape("b", rectangle(0, 0, 3, 3))]
    assert nest_roll(wanted, 0.5, 6).length == 6
    assert nest_roll(wanted, 0.75, 6).length == 6 + 0.75 + 3


def test_a_shape_takes_the_tightest_centre() -> None:
    nesting = nest_roll([ring("a", 8, 0.5, 1), ring("b", 6, 0.5, 1), ring("c", 4.5, 0.5, 1)], 0, 8)
    owners = {place.shape: place.within for place in nesting.places}
    assert owners == {"a": None, "b": 0, "c": 1}


def test_centres_that_remain_say_what_would_fit() -> None:
    further = [Shape("mug rug", circle(1)), Shape("coaster", circle(2.6))]
    nesting = nest_roll([ring("a", 6, 0.5, 3), ring("b", 3, 0.25, 1)], 0.125, 17, further=further)
    told = [(centre.owner, centre.count, centre.holds) for centre in nesting.centres]
    assert told == [("a", 2, ()), ("a", 1, ("b",)), ("b", 1, ())]
    whole = nesting.centres[0]
    assert (whole.width, whole.height) == (5, 5)
    assert whole.disc == pytest.approx(5, abs=0.03)
    assert dict(whole.fits)["mug rug"] >= 2
    assert "coaster" not in dict(whole.fits)


def test_a_turned_owner_never_turns_what_it_holds_to_where_it_may_not_lie() -> None:
    one_way = Shape("b", heart(1.5), count=6, turns=(0,))
    wanted = [heart_ring("a", 5, 4), one_way]
    nesting = nest_roll(wanted, 0.125, 9)
    assert is_sound(wanted, 0.125, nesting, 9)
    assert {p.motion.factor for p in nesting.places if p.shape == "b"} == {1}


def test_shapes_are_cut_from_scraps_before_the_roll() -> None:
    grounds, wanted = [Scrap("ground", disc(3), 2)], [ring("a", 5, 0.5, 3)]
    nesting = nest_roll(wanted, 0.25, 17, scraps=grounds)
    assert [(place.scrap, place.number) for place in nesting.places] == [
        ("ground", 0),
        ("ground", 1),
        (None, 0),
    ]
    assert not Checker(wanted, 0.25, grounds).faults(nesting.places, 17, math.inf)
    assert (nesting.length, nesting.rows_length) == (5, 5)
    assert [(c.owner, c.count, c.holds) for c in nesting.centres] == [("a", 3, ()), ("ground", 2, ("a",))]


def test_what_lies_in_a_scrap_lies_there_with_all_that_it_holds() -> None:
    grounds, wanted = [Scrap("ground", disc(3))], [ring("a", 6, 0.5, 1), ring("b", 4.5, 0.5, 1)]
    nesting = nest_roll(wanted, 0.125, 17, scraps=grounds)
    assert not Checker(wanted, 0.125, grounds).faults(nesting.places, 17, math.inf)
    assert nesting.counts == Counter("ab")


def test_what_does_not_fit_the_roll_is_said_to_be_unplaced() -> None:
    nesting = nest_roll([Shape("a", circle(5), count=2), Shape("b", circle(1))], 0, 9)
    assert (nesting.unplaced, nesting.counts) == ((("a", 2),), Counter("b"))


def test_nothing_is_no_length() -> None:
    nesting = nest_roll([], 0.5, 17)
    assert (nesting.places, nesting.length, nesting.bound, nesting.proved) == ((), 0, 0, True)


@pytest.mark.parametrize(
    "wrong",
    [
        Shape("a", polygon([0, 2 + 2j, 2 + 0j, 2j])),
        Shape("a", circle(1), count=-1),
        Shape("a", circle(1), turns=()),
        Shape("a", circle(1), disc(2)),
        Shape("a", circle(2), disc(1, 3 + 0j)),
        Shape("a", circle(1).reversed(), Region(())),
    ],
)
def test_what_is_no_shape_is_refused(wrong: Shape) -> None:
    with pytest.raises(ValueError, match="a "):
        nest_roll([wrong], 0, 17)


@pytest.mark.parametrize(
    ("name", "least"), [("fu", 0.82), ("jakobs1", 0.88), ("blaz1", 0.86), ("shapes0", 0.82)]
)
def test_published_instances_are_laid_nearly_as_densely_as_is_known(name: str, least: float) -> None:
    wanted, width = instance(name)
    nesting = nest_roll(wanted, 0, width, effort=Effort(placings=200))
    assert is_sound(wanted, 0, nesting, width)
    assert least * best_known(name) <= density(wanted, width, nesting) <= best_known(name)


@pytest.mark.parametrize("name", ["fu", "shapes0"])
def test_a_search_by_the_clock_is_sound_and_no_longer_than_without_it(name: str) -> None:
    wanted, width = instance(name)
    plain = nest_roll(wanted, 0, width, effort=QUICK)
    nesting = nest_roll(wanted, 0, width, effort=QUICK, seconds=1)
    assert is_sound(wanted, 0, nesting, width)
    assert nesting.bound <= nesting.length <= plain.length


def test_a_search_by_the_clock_keeps_the_gap() -> None:
    wanted = [Shape("a", heart(3), count=8), Shape("b", heart(2), count=6, turns=(0, 1))]
    nesting = nest_roll(wanted, 0.25, 9, effort=QUICK, seconds=1)
    assert is_sound(wanted, 0.25, nesting, 9)
    assert nesting.length - nesting.bound > STEP


def test_what_the_check_does_not_find_held_is_held_by_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    shapes = (ring("large", 8.0, 0.5, 2), ring("small", 3.0, 0.5, 2))
    assert any(place.within is not None for place in nest_roll(shapes, 0.25, 17.0).places)
    monkeypatch.setattr(Checker, "_is_within", lambda *_: False)
    for nesting in (nest_roll(shapes, 0.25, 17.0), nest_sheets(shapes, 0.25, 9.0, 12.0)):
        assert len(nesting.places) == 4
        assert [place.within for place in nesting.places] == [None] * 4
