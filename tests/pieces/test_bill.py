"""The bill lists every piece once, counted and sized."""

from __future__ import annotations

from quarterturn.blocks import draft_blocks
from quarterturn.measure import inches
from quarterturn.pieces import Bill, Purpose, bill_of_pieces
from quarterturn.setting import arrange
from tests.samples import ROUNDS, Changed, design_of


def bill_of(text: str) -> Bill:
    """Return the bill of the design of a text."""
    design = design_of(text)
    blocks = draft_blocks(design)
    return bill_of_pieces(design, blocks, arrange(design, blocks))


def test_masters_are_units_over_four_rounded_up() -> None:
    a, b = bill_of(ROUNDS).masters
    assert (a.code, a.units_needed, a.needed, a.surplus_units) == ("a", 8, 2, 0)
    assert (b.code, b.units_needed, b.needed, b.surplus_units) == ("b", 7, 2, 1)


def test_spare_masters_are_added_and_stated() -> None:
    a, b = bill_of(ROUNDS + "\n[making]\nspare_masters = 1\n").masters
    assert (a.count, a.spare, a.surplus_units) == (3, 1, 4)
    assert (b.count, b.spare, b.surplus_units) == (3, 1, 5)


def test_published_circle_quilt_counts() -> None:
    """140 units from 70 squares and 70 circles of four quarters: "Circle Fun", 16 March 2012, counts only."""
    text = Changed(ROUNDS).with_(
        "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n'''", "a2 a3\n'''\nacross = 5\ndown = 14"
    )
    (masters,) = bill_of(text.text).masters
    assert (masters.units_needed, masters.count) == (140, 35)


def test_ground_squares_hold_four_units_and_the_trim() -> None:
    bill = bill_of(ROUNDS)
    grounds = [p for p in bill.pieces if p.purpose is Purpose.GROUND]
    assert [(p.fabric, p.length, p.count) for p in grounds] == [
        ("A", inches(5, 1, 2), 2),
        ("B", inches(5, 1, 2), 2),
    ]


def test_blanks_hold_the_whole_ring() -> None:
    """Circle of 2.55" with 1/4" of web outside: 3.05", cut 3 1/8"."""
    blanks = [p for p in bill_of(ROUNDS).pieces if p.purpose is Purpose.SHAPE]
    assert {p.length for p in blanks} == {inches(3, 1, 8)}


def test_borders_include_their_seams() -> None:
    borders = [p for p in bill_of(ROUNDS).pieces if p.purpose is Purpose.BORDER]
    assert [(p.length, p.width, p.count) for p in borders] == [
        (inches(13, 1, 2), inches(2), 2),
        (inches(6, 1, 2), inches(2), 2),
    ]


def test_binding_goes_round_with_twelve_inches_over() -> None:
    """Perimeter and 12": habits range from 8" to 24", 10" and 12" commonest (several published patterns)."""
    binding = next(p for p in bill_of(ROUNDS).pieces if p.purpose is Purpose.BINDING)
    assert binding.length == 2 * (13 + 9) + 12


def test_backing_is_four_inches_larger_all_round() -> None:
    backing = next(p for p in bill_of(ROUNDS).pieces if p.purpose is Purpose.BACKING)
    assert (backing.length, backing.width) == (21, 17)


def test_labels_are_a_fabric_letter_and_a_number_and_unique() -> None:
    labels = [p.label for p in bill_of(ROUNDS).pieces]
    assert labels == ["A1", "A2", "A3", "B1", "B2", "B3", "C1", "C2"]


def test_equal_squares_of_two_colourways_are_one_piece() -> None:
    third = '\n[colourways.c]\nrecipe = "round"\nground = "A"\nshape = "C"\n'
    bill = bill_of(Changed(ROUNDS + third).with_("b0 b1 a0 a2 b1", "c0 c1 a0 a2 c1").text)
    ground = next(p for p in bill.pieces if p.purpose is Purpose.GROUND and p.fabric == "A")
    assert ground.count == 2 + 1
    assert ground.used_for == "colourway a, colourway c"
