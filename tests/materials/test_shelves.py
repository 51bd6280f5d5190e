"""Pieces in strips: laws that every plan keeps, and the published charts of pieces from a length of cloth."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import Shelf, length_of, shelve
from quarterturn.measure import inches
from tests.materials.cutting_cases import kind, kinds, size, squares

W = inches(40)
PLANS = kinds(most=6, count=200)


@given(PLANS)
def test_every_piece_is_in_the_plan_exactly_as_often_as_wanted(wanted: list[Kind]) -> None:
    cut: Counter[str] = Counter()
    for shelf in shelve(wanted, W):
        cut.update({c.piece: c.count * shelf.strips for c in shelf.crosscuts})
    assert cut == {kind.label: kind.count for kind in wanted}


@given(PLANS)
def test_no_strip_holds_more_than_its_length(wanted: list[Kind]) -> None:
    for shelf in shelve(wanted, W):
        assert sum(c.along * c.count for c in shelf.crosscuts) + shelf.room == W
        assert shelf.room >= 0


@given(PLANS)
def test_no_piece_is_higher_than_its_strip_and_each_strip_as_high_as_its_first(wanted: list[Kind]) -> None:
    for shelf in shelve(wanted, W):
        acrosses = [c.across for c in shelf.crosscuts]
        assert acrosses == sorted(acrosses, reverse=True)
        assert acrosses[0] == shelf.height


@given(PLANS)
def test_every_piece_lies_in_one_of_its_positions(wanted: list[Kind]) -> None:
    allowed = {(k.label, p.along, p.across) for k in wanted for p in k.positions}
    lying = {(c.piece, c.along, c.across) for shelf in shelve(wanted, W) for c in shelf.crosscuts}
    assert lying <= allowed


@given(PLANS)
def test_strips_with_long_pieces_come_first_and_no_two_groups_are_alike(wanted: list[Kind]) -> None:
    shelves = shelve(wanted, W)
    longest = [max(max(c.along, c.across) for c in shelf.crosscuts) for shelf in shelves]
    assert longest == sorted(longest, reverse=True)
    assert len({(shelf.height, shelf.crosscuts) for shelf in shelves}) == len(shelves)


@given(PLANS.flatmap(lambda wanted: st.tuples(st.just(wanted), st.permutations(wanted))))
def test_the_order_of_the_pieces_does_not_matter(orders: tuple[list[Kind], list[Kind]]) -> None:
    one, other = orders
    assert shelve(one, W) == shelve(other, W)


@given(kinds(most=1), st.integers(1, 50))
def test_more_pieces_never_take_less_cloth(wanted: list[Kind], more: int) -> None:
    (one,) = wanted
    grown = Kind(one.label, one.count + more, one.positions)
    assert length_of(shelve([one], W)) <= length_of(shelve([grown], W))


def test_pieces_fill_what_is_left_of_taller_strips() -> None:
    wanted = [kind("A1", 5, (76, 76)), kind("A2", 3, (60, 60))]
    assert [(s.height, s.strips, [(c.piece, c.count) for c in s.crosscuts]) for s in shelve(wanted, W)] == [
        (inches(9, 1, 2), 1, [("A1", 4)]),
        (inches(9, 1, 2), 1, [("A1", 1), ("A2", 3)]),
    ]


def test_tall_pieces_are_spread_where_that_leaves_room_for_low_ones() -> None:
    """18 of 20 cm and 18 of 14 cm from 108 cm: five, five, four, four tall ones leave room for four low ones."""
    wanted = [kind("A1", 18, (200, 200)), kind("A2", 18, (140, 140))]
    assert length_of(shelve(wanted, inches(0, 1080, 8))) == inches(0, 4 * 200 + 2 * 140, 8)


def test_strips_with_room_to_spare_are_preferred_to_full_ones() -> None:
    """Eight squares of 8″ from 40¼″: four and four leave 8¼″ of each strip, five and three only ¼″ of one."""
    (shelf,) = shelve([kind("A1", 8, (64, 64))], inches(40, 1, 4))
    assert (shelf.strips, shelf.crosscuts[0].count) == (2, 4)


def test_pieces_turn_where_that_saves_cloth() -> None:
    """A 21″ × 3″ piece fits a 40″ strip once lying, 13 times standing: 13 take 39″ lying, 21″ standing."""
    (shelf,) = shelve([kind("A1", 13, (168, 24), (24, 168))], W)
    assert (shelf.height, shelf.crosscuts[0].along) == (21, 3)


def test_many_kinds_are_turned_all_alike_or_one_by_one() -> None:
    wanted = [kind(f"A{i}", 13, (168 + i, 24), (24, 168 + i)) for i in range(6)]
    shelves = shelve(wanted, W)
    assert length_of(shelves) < 6 * 13 * 3
    assert sum(c.count * s.strips for s in shelves for c in s.crosscuts) == 6 * 13


def test_nothing_wanted_takes_no_cloth() -> None:
    assert shelve([], W) == ()


def test_equal_pieces_are_placed_by_division() -> None:
    (full, last) = shelve([kind("A1", 1_000_003, (72, 72))], W)
    assert (full, last.strips) == (Shelf(inches(9), 250_000, full.crosscuts, inches(4)), 1)


FAT_QUARTER = [
    ("2", 99), ("2 1/2", 56), ("2 7/8", 42), ("3", 42), ("3 1/2", 30), ("3 7/8", 20), ("4", 20), ("4 1/2", 16),
    ("4 7/8", 12), ("5", 12), ("5 1/2", 12), ("5 7/8", 9), ("6", 9), ("6 1/2", 6), ("6 7/8", 6),
]  # fmt: skip
"""Squares from 18″ × 22″: quilterscache.com, 2002, and piecefulliving.blogspot.com, 2011, agree."""

YARD = [
    ("1", 1584), ("1 1/2", 696), ("1 7/8", 437), ("2", 396), ("2 1/2", 238), ("2 7/8", 180), ("3", 168),
    ("3 1/2", 120), ("3 7/8", 99), ("4", 99), ("4 1/2", 72), ("4 7/8", 63), ("5", 56), ("5 1/2", 48), ("5 7/8", 42),
    ("6", 42), ("6 1/2", 30), ("6 7/8", 30), ("7 1/2", 20), ("8", 20), ("8 1/2", 20), ("8 7/8", 16), ("9", 16),
    ("9 1/2", 12), ("10", 12), ("10 1/2", 12), ("11", 12), ("11 1/2", 9), ("12", 9), ("12 1/2", 6), ("12 7/8", 6),
]  # fmt: skip
"""Squares from 36″ of 44″ cloth: quilterscache.com, all cells but the one for 7″."""


@pytest.mark.parametrize(("side", "count"), FAT_QUARTER)
def test_squares_from_a_fat_quarter(side: str, count: int) -> None:
    assert squares((count, side), width=22) <= 18 < squares((count + 1, side), width=22)


@pytest.mark.parametrize(("side", "count"), YARD)
def test_squares_from_a_yard(side: str, count: int) -> None:
    assert squares((count, side), width=44) <= 36 < squares((count + 1, side), width=44)


def test_published_cells_that_no_cloth_can_meet() -> None:
    """quiltersresources.com gives 15 squares of 5″ and 55 of 2½″ from a fat quarter; quilterscache.com 35 of 7″."""
    assert squares((15, 5), width=22) > 18
    assert squares((56, "2 1/2"), width=22) <= 18
    assert squares((35, 7), width=44) > 36
    assert squares((30, 7), width=44) <= 36 < squares((31, 7), width=44)


def test_squares_of_nine_and_a_half_from_42_inch_cloth() -> None:
    """63 take 16 widths, 152″ (quiltingboard.com, thread 6228687)."""
    assert squares((63, "9 1/2")) == 152


def test_two_sizes_of_squares_from_44_inch_cloth() -> None:
    """52 of 4″ and 20 of 3″ take 5 × 4 + 2 × 3 = 26″ (quiltingboard.com, thread 131707)."""
    assert squares((52, 4), (20, 3), width=44) == 26


def test_sizes_are_read_as_written() -> None:
    assert size("3 7/8") == inches(3, 7, 8)
