"""Long pieces along the cloth or joined from strips across it: all are cut once, and the cheaper way is taken."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Direction, LongCut
from quarterturn.materials import ClothPlan
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import Length, Units, inches
from quarterturn.pieces import Piece, Purpose
from tests.materials.cutting_cases import MAKING, fabric, piece

LONG = st.integers(41 * 8, 90 * 8).map(lambda n: Fraction(n, 8))
WIDE = st.integers(8, 80).map(lambda n: Fraction(n, 8))


@st.composite
def quilts(draw: st.DrawFn) -> list[Piece]:
    """Return two kinds of long border and a few kinds of patch."""
    sides = [(draw(LONG), draw(WIDE)) for _ in range(2)]
    borders = [border(2, long, wide, f"A{n}") for n, (long, wide) in enumerate(sides, 1)]
    patches = [
        piece(draw(st.integers(1, 20)), draw(WIDE), draw(WIDE), label=f"A{n}")
        for n in range(3, draw(st.integers(3, 5)))
    ]
    return [*borders, *patches]


def border(count: int, long: Length, wide: Length, label: str) -> Piece:
    return piece(count, long, wide, Purpose.BORDER, label)


def plan(pieces: list[Piece], way: LongCut, direction: Direction = Direction.NONE) -> ClothPlan:
    return plan_cloth(fabric(40, direction), pieces, replace(MAKING, borders=way), Units.INCH)


def is_along(found: ClothPlan) -> bool:
    return any(cut.across > found.usable_width for group in found.strips for cut in group.crosscuts)


@settings(max_examples=20)
@given(quilts())
def test_every_piece_is_cut_once_in_its_size_and_nothing_overlaps(pieces: list[Piece]) -> None:
    found = plan(pieces, LongCut.LENGTHWISE)
    cut = Counter[str]()
    for group, width in found.groups:
        for c in group.pieces:
            cut[c.piece] += c.count * group.strips
        segments = sum(split.along * split.count for split in group.splits)
        assert sum(c.along * c.count for c in group.crosscuts) + segments == group.used <= width
        assert all(c.across <= group.height for c in group.pieces)
        assert sum(each.height * each.strips for each in group.rest) <= group.height
    assert cut == {p.label: p.count for p in pieces}
    assert found.runs == ()


@settings(max_examples=20)
@given(quilts())
def test_the_cheaper_way_is_taken_and_the_other_told(pieces: list[Piece]) -> None:
    joined, found = plan(pieces, LongCut.CROSSWISE), plan(pieces, LongCut.CHEAPEST)
    assert not is_along(joined)
    assert found.lower_bound <= found.cut_length
    assert found.other_way is not None
    assert found.bought <= min(joined.bought, found.other_way, plan(pieces, LongCut.LENGTHWISE).bought)
    assert is_along(found) == (found.bought < joined.bought)


def test_four_borders_that_fill_the_width_take_one_band() -> None:
    """4 × 10″ is the width of the cloth: 60″ of it, where 7 strips of 10″ would be joined, 70″."""
    found = plan([border(4, inches(60), inches(10), "A1")], LongCut.CHEAPEST)
    assert (found.cut_length, found.lower_bound, found.hand_rule) == (60, 60, 70)
    assert found.other_way == inches(72)
    assert [(group.height, group.strips, group.rest) for group in found.strips] == [(60, 1, ())]


def test_squares_are_cut_beside_the_borders() -> None:
    """Beside 20″ of borders 20″ × 60″ is left: six rows of two squares of 10″."""
    pieces = [border(4, inches(60), inches(5), "A1"), piece(12, 10, label="A2")]
    found = plan(pieces, LongCut.LENGTHWISE)
    (band,) = found.strips
    assert found.cut_length == 60
    assert [(each.height, each.strips, each.used) for each in band.rest] == [(10, 6, 20)]


@pytest.mark.parametrize("direction", [d for d in Direction if d is not Direction.NONE])
def test_a_print_with_a_direction_is_never_turned(direction: Direction) -> None:
    found = plan([border(4, inches(60), inches(10), "A1")], LongCut.LENGTHWISE, direction)
    assert not is_along(found)
    assert found.other_way is None


def test_a_border_no_longer_than_the_cloth_is_wide_needs_no_band() -> None:
    found = plan([border(4, inches(40), inches(5), "A1")], LongCut.LENGTHWISE)
    assert found.other_way is None
    assert found.cut_length == 20
