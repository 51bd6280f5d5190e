"""Kits cut together and apart, and a ticket for each bolt."""

from __future__ import annotations

from fractions import Fraction
from functools import partial

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Kits
from quarterturn.materials.kits import (
    UNSPARED,
    KitCloth,
    TicketLine,
    cut_tickets,
    kit_cloth,
    kit_tickets,
    kits_cloth,
    length_lines,
    pick_list,
    pooled_lines,
    with_spares,
)
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import YARD, Length, Units, inches
from quarterturn.pieces import Piece, Purpose
from quarterturn.pipeline import make_pattern
from tests.materials.cutting_cases import MAKING, fabric, piece, size
from tests.samples import ROUNDS, design_of

PLAN = partial(plan_cloth, fabric(40), making=MAKING, units=Units.INCH)
NO_SPARE = Fraction(0)


def kits_of(*pieces: Piece, kits: int = 12, spare: Fraction = NO_SPARE) -> KitCloth:
    return kit_cloth(pieces, kits, spare, inches(2), Fraction(0), Units.INCH, PLAN)


def test_pieces_that_leave_room_in_a_strip_are_cut_together() -> None:
    """Five squares of 5″ take a strip with room for eight: 60 for twelve kits are eight strips, not twelve."""
    cloth = kits_of(piece(5, 5))
    assert cloth.pooled_cut == 8 * 5
    assert cloth.apart == 12 * cloth.each
    assert cloth.saved > 0


def test_a_binding_goes_whole_into_each_kit() -> None:
    cloth = kits_of(piece(1, 180, "2 1/2", Purpose.BINDING), piece(8, 5, label="A2"))
    [whole] = cloth.whole
    assert (whole.count, whole.height, whole.used_for) == (5, size("2 1/2"), ())
    assert cloth.pooled_cut == 12 * 5 * size("2 1/2") + 12 * 5


def test_a_fabric_of_nothing_but_backing_has_no_pieces_cut_to_size() -> None:
    cloth = kits_of(piece(1, 60, 50, Purpose.BACKING))
    assert (cloth.pieces, cloth.plan) == ((), None)
    assert cloth.whole[0].used_for == ("A1",)


@pytest.mark.parametrize(
    ("count", "share", "spared"), [(5, "0.05", 6), (40, "0.05", 42), (41, "0.05", 44), (5, "0", 5)]
)
def test_spares_are_a_share_and_one_at_least(count: int, share: str, spared: int) -> None:
    found = with_spares(piece(count, 5), Fraction(share))
    assert (found.count, found.spare) == (spared, spared - count)


@pytest.mark.parametrize("purpose", UNSPARED)
def test_long_pieces_have_no_spare(purpose: Purpose) -> None:
    assert with_spares(piece(2, 50, 2, purpose), Fraction(1, 10)).count == 2


SIDES = st.integers(16, 80).map(lambda n: inches(0, n, 8))


@given(st.lists(st.tuples(SIDES, SIDES, st.integers(1, 12)), min_size=1, max_size=2), st.integers(1, 6))
@settings(max_examples=15, deadline=None)
def test_the_pool_gives_every_kit_its_pieces(sizes: list[tuple[Length, Length, int]], kits: int) -> None:
    pieces = [piece(n, a, b, label=f"A{i}") for i, (a, b, n) in enumerate(sizes, 1)]
    cloth = kits_of(*pieces, kits=kits, spare=Fraction(1, 20))
    assert cloth.plan is not None
    made = {each.label: 0 for each in pieces}
    for group in cloth.plan.strips:
        for cut in group.crosscuts:
            made[cut.piece] += cut.count * group.strips
    picked = {line.label: line.total for line in pick_list(cloth, ready_cut=True)}
    assert picked == {each.label: each.count * kits for each in cloth.pieces}
    assert all(made[label] >= count for label, count in picked.items())
    assert cloth.pooled >= cloth.pooled_cut


def test_each_kit_of_cloth_gets_one_length() -> None:
    [line] = pick_list(kits_of(piece(5, 5)), ready_cut=False)
    assert (line.count, line.total, line.length) == (1, 12, kits_of(piece(5, 5)).each)


def test_the_ticket_of_a_bolt_is_filled_before_the_next_is_opened() -> None:
    """A bolt of 36″ has room for three strips of 10″ when an inch is lost in straightening it."""
    found = cut_tickets("A", [TicketLine("As1", inches(10), 7, ())], YARD, inches(1))
    assert [ticket.lines[0].count for ticket in found.tickets] == [3, 3, 1]
    assert [ticket.left for ticket in found.tickets] == [5, 5, 25]
    assert found.too_long == ()


def test_bolt_ends_are_used_before_a_bolt_is_opened() -> None:
    found = cut_tickets("A", [TicketLine("As1", inches(10), 3, ())], YARD, inches(1), [inches(12), inches(5)])
    assert [(ticket.bolt, ticket.lines[0].count) for ticket in found.tickets] == [(12, 1), (36, 2)]


def test_a_cut_longer_than_every_bolt_is_told() -> None:
    """An end that is longer than a bolt serves once."""
    lines = [TicketLine("A1", inches(90), 2, ())]
    found = cut_tickets("A", lines, 2 * YARD, inches(1), [inches(100)])
    assert [ticket.bolt for ticket in found.tickets] == [100]
    assert [(line.label, line.count) for line in found.too_long] == [("A1", 1)]


LINES = st.lists(
    st.builds(
        TicketLine,
        st.sampled_from(["As1", "As2"]),
        st.integers(1, 40).map(inches),
        st.integers(1, 9),
        st.just(()),
    ),
    max_size=5,
    unique_by=lambda line: (line.label, line.height),
)


@given(LINES, st.integers(45, 300))
def test_every_cut_is_on_one_ticket_and_no_bolt_runs_out(lines: list[TicketLine], bolt: int) -> None:
    found = cut_tickets("A", lines, inches(bolt), inches(1))
    assert found.too_long == ()
    assert all(ticket.left >= 0 for ticket in found.tickets)
    told: dict[tuple[str, Length], int] = {}
    for ticket in found.tickets:
        for line in ticket.lines:
            told[line.label, line.height] = told.get((line.label, line.height), 0) + line.count
    assert told == {(line.label, line.height): line.count for line in lines}


def test_tickets_and_kits_count_alike() -> None:
    """The counts of a kit's label are those of the tickets, divided by the kits (a trade editor's check)."""
    cloth = kits_of(piece(8, 5), piece(1, 180, "2 1/2", Purpose.BINDING, label="A2"), kits=10)
    found = cut_tickets("A", pooled_lines(cloth), 15 * YARD, inches(1))
    pieces = sum(cut.count * line.count for t in found.tickets for line in t.lines for cut in line.crosscuts)
    whole = sum(line.count for t in found.tickets for line in t.lines if not line.crosscuts)
    assert (pieces, whole) == (8 * 10, 5 * 10)


def test_kits_of_cloth_are_cut_in_equal_lengths() -> None:
    cloth = kits_of(piece(5, 5))
    [line] = length_lines(cloth)
    assert (line.height, line.count) == (cloth.each, 12)


def test_a_fabric_of_which_nothing_can_be_cut_has_no_cuts_on_tickets() -> None:
    text = ROUNDS.replace(
        'role = "circles"', "role = \"circles\"\nbought_as = { width = '3\"', height = '3\"' }"
    )
    design = design_of(text)
    kits = Kits(12)
    for cloth in kits_cloth(design, make_pattern(design).bill, kits):
        tickets = kit_tickets(cloth, kits, design.making.squaring)
        assert bool(tickets.tickets) == (cloth.fabric != "B")
