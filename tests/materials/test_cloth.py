"""The plan of one fabric, against yardage that publishers print.

Published yardage is padded, so a check asks for: computed minimum ≤ published ≤ minimum + margin.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from quarterturn.design import Direction
from quarterturn.materials import ClothPlan, JoinMethod
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import YARD, Length, Units, buy_up, inches
from quarterturn.pieces import Grain, Piece, Purpose
from tests.materials.cutting_cases import MAKING, fabric, piece, plan, size


def border(count: int, length: str | int, width: str | int, label: str = "A1") -> Piece:
    """Return border strips."""
    return piece(count, length, width, Purpose.BORDER, label)


def binding(length: str | int, width: str | int = "2 1/2", label: str = "A9") -> Piece:
    """Return a binding."""
    return piece(1, length, width, Purpose.BINDING, label)


def backing(width: str | int, height: str | int, label: str = "A8") -> Piece:
    """Return a backing sheet."""
    return piece(1, width, height, Purpose.BACKING, label, Grain.LENGTHWISE)


PUBLISHED = [
    pytest.param([piece(32, 5)], 42, 20, "3/4", id="Spin, green"),
    pytest.param([piece(16, 5), binding(180)], 42, "22 1/2", "5/8", id="Spin, aqua"),
    pytest.param([piece(72, "2 1/2")], 42, "12 1/2", "1/2", id="Magic Circles, stripe"),
    pytest.param(
        [border(2, "24 1/2", "2 1/2"), border(2, "28 1/2", "2 1/2", "A2")], 42, 10, "3/8",
        id="Magic Circles, inner border",
    ),
    pytest.param(
        [border(2, "28 1/2", 5), border(2, "37 1/2", 5, "A2"), binding(150)], 42, 30, "1",
        id="Magic Circles, outer border and binding",
    ),
    pytest.param([piece(54, "3 7/8"), piece(36, "3 1/2", label="A2")], 42, "33 3/4", "1 1/8", id="Girly Swirls, grey"),
    pytest.param([piece(6, 12), piece(6, "6 1/2", label="A2")], 42, "30 1/2", "1", id="12 in squares, 6 in circles"),
]  # fmt: skip
"""Pieces, usable width, the length that the cuts take by the source's own arithmetic, which is the hand rule, and the
yards it prints. Spin, Magic Circles, Girly Swirls: allpeoplequilt.com. Circles: QUILTsocial, Fall 2014, p. 15."""


@pytest.mark.parametrize(("pieces", "width", "cut", "published"), PUBLISHED)
def test_published_yardage(pieces: list[Piece], width: int, cut: str | int, published: str) -> None:
    found = plan(*pieces, width=width)
    assert found.hand_rule == size(cut)
    assert found.cut_length <= size(cut) <= size(published) * YARD <= size(cut) + inches(7)


def test_the_brown_of_spin_fits_what_is_published() -> None:
    """Eight border strips of 1½″ and sixteen 10″ squares, 1¾ yd printed (allpeoplequilt.com). With all strips along the
    cloth and squares beside them it would be 52½″; only what is longer than the cloth is wide is laid along it here."""
    borders = [
        border(2, length, "1 1/2", f"A{n}")
        for n, length in enumerate(("36 1/2", "38 1/2", "40 1/2", "42 1/2"), 1)
    ]
    found = plan(*borders, piece(16, 10, label="A9"))
    assert found.cut_length <= size("52 1/2") + 1
    assert found.cut_length + inches(2) <= size("1 3/4") * YARD


def test_small_squares_may_end_a_strip_of_larger_ones() -> None:
    """Girly Swirls again: six strips of 3⅞″ need not be followed by three of 3½″; two do."""
    found = plan(piece(54, "3 7/8"), piece(36, "3 1/2", label="A2"))
    assert found.cut_length == found.lower_bound == size("30 1/4")


def test_sashes_of_call_me_square() -> None:
    """Quilter's World, May 2019, p. 60: 40 sashes of 1½″ × 10½″ from two strips, 12 strips of 1½″, and 8 of binding at
    2¼″ take 21 + 18 + 18 = 57″; the text shows 2 yards. One strip of sashes upright, and 14 sashes in five low strips,
    take 3″ less."""
    sashes = piece(40, "10 1/2", "1 1/2")
    strips = piece(12, 40, "1 1/2", label="A2")
    alone = plan(sashes, width=40)
    assert alone.hand_rule == 21
    assert alone.cut_length == alone.lower_bound == 18
    found = plan(sashes, strips, binding(300, "2 1/4"), width=40)
    assert found.hand_rule == 57 <= 2 * YARD
    assert found.cut_length == found.lower_bound == 54


def whole() -> ClothPlan:
    """Return a plan with strips, runs of borders and binding, and a backing."""
    return plan(
        piece(20, "9 1/2"),
        piece(7, "7 1/2", label="A2"),
        border(2, "71 1/2", "5 1/2", "A3"),
        border(2, 30, 4, "A4"),
        binding(302),
        backing(72, 89),
    )


def test_joined_strips_come_first_then_those_with_long_pieces() -> None:
    found = whole()
    assert [(g.label, g.height, g.strips) for g in found.strips][:2] == [
        ("As1", inches(5, 1, 2), 4),
        ("As2", inches(2, 1, 2), 8),
    ]
    longest = [max(max(c.along, c.across) for c in g.pieces) for g in found.strips if g.pieces]
    assert longest == sorted(longest, reverse=True)
    assert [group.label for group in found.strips] == [f"As{n}" for n in range(1, len(found.strips) + 1)]


def test_runs_name_the_whole_strips_they_are_made_of() -> None:
    found = whole()
    groups = {group.label: group for group in found.strips}
    assert [(run.label, run.strip, run.method) for run in found.runs] == [
        ("Ar1", "As1", JoinMethod.STRAIGHT),
        ("Ar2", "As2", JoinMethod.DIAGONAL),
    ]
    for run in found.runs:
        group = groups[run.strip]
        assert (group.strips, group.height, group.crosscuts, group.used) == (run.strips, run.height, (), 0)


def test_all_cuts_add_up_and_what_is_bought_covers_them_and_the_slack() -> None:
    found = whole()
    strips = sum(group.height * group.strips for group in found.strips)
    panels = sum(group.cut_length * group.panels for group in found.panels)
    assert found.cut_length == strips + panels
    assert found.bought == buy_up(found.cut_length + MAKING.slack, Units.INCH)
    assert found.slack >= MAKING.slack >= found.squaring


def test_borders_that_fit_the_cloth_are_cut_like_other_pieces() -> None:
    cuts = [c.count * g.strips for g in whole().strips for c in g.pieces if c.piece == "A4"]
    assert sum(cuts) == 2


def test_backing_lies_in_the_plan_of_its_fabric() -> None:
    (group,) = whole().panels
    assert (group.piece, group.panels, group.cut_length, group.seam) == ("A8", 2, 89, MAKING.backing_seam)


def test_a_printed_backing_is_not_turned_though_that_is_cheaper() -> None:
    assert not plan(backing(65, 78), width=40).panels[0].runs_down
    assert plan(backing(65, 78), width=40, direction=Direction.ONE_WAY).panels[0].runs_down


def test_pieces_of_a_printed_fabric_are_not_turned() -> None:
    """Thirteen pieces of 21″ × 3″ lie one in a strip of 40″; they would stand side by side in one of 21″."""
    assert plan(piece(13, 21, 3), width=40).cut_length == 21
    assert plan(piece(13, 21, 3), width=40, direction=Direction.TWO_WAY).cut_length == 39


def test_what_fits_nowhere_is_named_and_the_rest_is_planned() -> None:
    found = plan(piece(3, 43), piece(2, 5, label="A2"), piece(2, 60, 45, label="A3"))
    assert found.unplaced == ("A1", "A3")
    assert [c.piece for group in found.strips for c in group.crosscuts] == ["A2"]


def test_a_backing_that_cannot_be_made_is_named() -> None:
    wide_seam = replace(MAKING, backing_seam=inches(2))
    found = plan_cloth(fabric(4), [backing(10, 12)], wide_seam, Units.INCH)
    assert (found.unplaced, found.panels) == (("A8",), ())


def test_squaring_counts_where_it_is_more_than_the_slack() -> None:
    found = plan_cloth(fabric(), [piece(8, 5)], replace(MAKING, squaring=inches(6)), Units.INCH)
    assert (found.cut_length, found.bought) == (5, inches(13, 1, 2))


def test_metric_cloth_is_bought_by_the_tenth_of_a_metre() -> None:
    found = plan_cloth(fabric(), [piece(8, 5)], MAKING, Units.METRIC)
    assert found.bought == buy_up(inches(7), Units.METRIC)
    assert found.bought % inches(0, 500, 127) == 0


SIDES = st.integers(8, 400).map(lambda n: inches(0, n, 8))
PIECES = st.lists(
    st.tuples(st.sampled_from([Purpose.GROUND, Purpose.SHAPE, Purpose.BORDER]), SIDES, SIDES, st.integers(1, 90)),
    min_size=1,
    max_size=5,
).map(lambda rows: [piece(n, a, b, p, f"A{i}") for i, (p, a, b, n) in enumerate(rows, 1)])  # fmt: skip


@given(PIECES, st.sampled_from(Direction))
@example(
    [piece(1, 7, purpose=Purpose.GROUND), piece(1, "42 1/8", "18 1/8", Purpose.BORDER, "A2")], Direction.NONE
)
def test_every_piece_is_cut_as_often_as_wanted_or_named(pieces: list[Piece], direction: Direction) -> None:
    """Of the example's border, cut along the cloth, enough is left beside it for the square."""
    found = plan(*pieces, direction=direction)
    cut: Counter[str] = Counter()
    for group, _ in found.groups:
        for c in group.pieces:
            cut[c.piece] += c.count * group.strips
    for run in found.runs:
        cut.update({c.piece: c.count for c in run.crosscuts})
    assert cut == {p.label: p.count for p in pieces if p.label not in found.unplaced}


@given(PIECES, st.sampled_from(Direction))
def test_no_strip_or_run_is_overfull(pieces: list[Piece], direction: Direction) -> None:
    found = plan(*pieces, direction=direction)
    for group, width in found.groups:
        segments = sum(split.along * split.count for split in group.splits)
        assert sum(c.along * c.count for c in group.crosscuts) + segments == group.used <= width
        assert all(c.across <= group.height for c in group.pieces)
    for run in found.runs:
        assert sum(c.along * c.count for c in run.crosscuts) <= run.length
        assert all(c.across == run.height for c in run.crosscuts)


@given(PIECES, st.sampled_from(Direction))
def test_plans_lie_between_bound_and_hand_rule(pieces: list[Piece], direction: Direction) -> None:
    found = plan(*pieces, binding(200), backing(50, 60), direction=direction)
    assert found.lower_bound <= found.cut_length <= found.hand_rule


@given(PIECES.flatmap(lambda pieces: st.tuples(st.just(pieces), st.permutations(pieces))))
def test_the_order_of_the_pieces_does_not_matter(orders: tuple[list[Piece], list[Piece]]) -> None:
    one, other = (plan(*pieces) for pieces in orders)
    assert (one.strips, one.runs, one.lower_bound) == (other.strips, other.runs, other.lower_bound)
    assert set(one.unplaced) == set(other.unplaced)


@given(SIDES.filter(lambda side: side <= 42), st.integers(1, 300), st.integers(1, 50))
def test_more_pieces_are_never_bought_with_less(side: Length, count: int, more: int) -> None:
    assert plan(piece(count, side)).bought <= plan(piece(count + more, side)).bought
