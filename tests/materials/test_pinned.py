"""Strips that are decided on: they are cut as they are wanted, and every piece still once."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import PinnedStrips
from quarterturn.materials import ClothPlan
from quarterturn.materials.cloth import plan_bolt
from quarterturn.measure import Length, Units, inches
from quarterturn.pieces import Piece
from tests.materials.cutting_cases import MAKING, fabric, piece

SIDES = st.integers(8, 96).map(lambda n: Fraction(n, 8))
HEIGHTS = st.integers(8, 120).map(lambda n: Fraction(n, 8))


@st.composite
def patches(draw: st.DrawFn) -> list[Piece]:
    return [
        piece(draw(st.integers(1, 30)), draw(SIDES), draw(SIDES), label=f"A{number}")
        for number in range(1, draw(st.integers(2, 5)))
    ]


@st.composite
def pins(draw: st.DrawFn) -> PinnedStrips:
    count = draw(st.none() | st.integers(1, 4))
    pieces = draw(
        st.lists(st.sampled_from(["A1", "A2", "A7"]), min_size=count is None, max_size=2, unique=True)
    )
    return PinnedStrips(draw(HEIGHTS), count, tuple(pieces))


def plan(pieces: list[Piece], *pinned: PinnedStrips, heights: tuple[Length, ...] = ()) -> ClothPlan:
    cloth = replace(fabric(40), strips=pinned, strip_heights=heights)
    return plan_bolt(cloth, pieces, MAKING, Units.INCH)


def cut_of(found: ClothPlan) -> Counter[str]:
    cut = Counter[str]()
    for group, width in found.groups:
        assert group.used <= width
        for each in group.pieces:
            assert each.across <= group.height
            cut[each.piece] += each.count * group.strips
    return cut


@given(patches(), pins(), pins())
@settings(max_examples=60)
def test_every_piece_is_cut_once_in_its_size(
    pieces: list[Piece], one: PinnedStrips, two: PinnedStrips
) -> None:
    found = plan(pieces, one, two)
    sizes = {p.label: {p.length, p.width} for p in pieces}
    assert cut_of(found) == {p.label: p.count for p in pieces}
    for group, _ in found.groups:
        assert all({c.along, c.across} == sizes[c.piece] for c in group.pieces)
    assert found.lower_bound <= found.cut_length


@given(patches(), HEIGHTS)
@settings(max_examples=40)
def test_all_of_a_piece_comes_from_strips_of_its_height_if_it_lies_in_them(
    pieces: list[Piece], height: Length
) -> None:
    found = plan(pieces, PinnedStrips(height, None, ("A1",)))
    homes = {group.height for group, _ in found.groups if any(c.piece == "A1" for c in group.pieces)}
    if min(pieces[0].length, pieces[0].width) <= height:
        assert homes == {height}


@given(patches(), st.lists(HEIGHTS, min_size=1, max_size=3, unique=True))
@settings(max_examples=40)
def test_only_the_heights_that_are_allowed_are_cut_if_they_hold_all_pieces(
    pieces: list[Piece], heights: list[Length]
) -> None:
    found = plan(pieces, heights=tuple(sorted(heights)))
    assert cut_of(found) == {p.label: p.count for p in pieces}
    if max(min(p.length, p.width) for p in pieces) <= max(heights):
        assert {group.height for group in found.strips} <= set(heights)
    assert found.lower_bound <= found.cut_length


def test_so_many_strips_of_a_height_are_cut_for_a_piece_and_the_plan_tells_what_that_costs() -> None:
    pieces = [piece(20, "3 1/2", label="A1"), piece(8, 5, label="A2")]
    found = plan(pieces, PinnedStrips(inches(8), 2, ("A1",)))
    high = [group for group in found.strips if any(c.piece == "A1" for c in group.pieces)]
    assert sum(group.strips for group in high) == 2
    assert {group.height for group in high} == {8}
    assert found.unpinned == plan(pieces).bought
    assert found.bought > found.unpinned


def test_a_plan_that_is_free_tells_of_no_cost() -> None:
    assert plan([piece(20, "3 1/2")]).unpinned is None
