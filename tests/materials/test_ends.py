"""Runs of unequal strips: ends of other strips take the place of whole ones, if less is bought for it."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import LongCut
from quarterturn.materials import ClothPlan
from quarterturn.materials.cloth import plan_bolt
from quarterturn.materials.ends import SHORTEST
from quarterturn.measure import Length, Units
from quarterturn.pieces import Piece, Purpose
from tests.materials.cutting_cases import MAKING, fabric, piece

SIDES = st.integers(8, 160).map(lambda n: Fraction(n, 8))


def binding(length: int, width: str = "2 1/2") -> Piece:
    return piece(1, length, width, Purpose.BINDING, "A9")


@st.composite
def quilts(draw: st.DrawFn) -> list[Piece]:
    """Return a binding, two kinds of long border, and patches."""
    pieces = [binding(draw(st.integers(50, 400)))]
    for number in range(1, draw(st.integers(1, 3))):
        long = Fraction(draw(st.integers(41 * 8, 80 * 8)), 8)
        pieces.append(piece(2, long, draw(SIDES), Purpose.BORDER, f"A{number}"))
    for number in range(3, draw(st.integers(3, 6))):
        pieces.append(piece(draw(st.integers(1, 12)), draw(SIDES), draw(SIDES), label=f"A{number}"))
    return pieces


def plan(pieces: list[Piece], *, plain: bool = False, way: LongCut = LongCut.CHEAPEST) -> ClothPlan:
    return plan_bolt(fabric(40), pieces, replace(MAKING, borders=way), Units.INCH, plain=plain)


@given(quilts(), st.sampled_from(LongCut))
@settings(max_examples=40)
def test_a_run_is_as_long_as_its_strips_less_what_the_joins_take(pieces: list[Piece], way: LongCut) -> None:
    found = plan(pieces, way=way)
    widths = {group.label: (group.strips, width) for group, width in found.groups if not group.pieces}
    sewn = Counter[str]()
    for run in found.runs:
        strips = [(run.strip, run.strips, found.usable_width)]
        strips += [(end.label, end.strips, end.length) for end in run.ends]
        for label, count, width in strips:
            sewn[label] += count
            assert widths[label][1] == width
        assert run.length == sum(n * width for _, n, width in strips) - run.joins * run.loss
        assert run.length >= (sum(c.along * c.count for c in run.crosscuts) or pieces[0].length)
        assert all(end.length >= SHORTEST for end in run.ends)
    assert sewn == {label: strips for label, (strips, _) in widths.items()}


@given(quilts())
@settings(max_examples=40)
def test_what_is_cut_from_a_rest_fits_in_it(pieces: list[Piece]) -> None:
    found = plan(pieces)
    for group in found.strips:
        assert sum(each.height * each.strips for each in group.rest) <= group.height * group.strips
        assert all(each.strips % group.strips == 0 for each in group.rest)
    assert found.cut_length == sum((group.height * group.strips for group in found.strips), Length(0))
    assert found.lower_bound <= found.cut_length


@given(quilts())
@settings(max_examples=30)
def test_ends_and_splits_never_buy_more(pieces: list[Piece]) -> None:
    assert plan(pieces).bought <= plan(pieces, plain=True).bought


def test_the_end_of_a_strip_saves_a_strip_of_the_binding() -> None:
    pieces = [binding(140), piece(2, 12, "6 1/2", label="A1")]
    whole, found = plan(pieces, plain=True), plan(pieces)
    assert [(run.strips, run.ends) for run in whole.runs] == [(4, ())]
    (run,) = found.runs
    assert (run.strips, [(end.strips, end.length) for end in run.ends]) == (3, [(2, 16)]) or run.strips < 4
    assert found.bought < whole.bought


def test_no_end_is_taken_where_as_much_is_bought_without() -> None:
    found = plan([binding(70), piece(2, 12, "6 1/2", label="A1")])
    assert [run.ends for run in found.runs] == [()]
