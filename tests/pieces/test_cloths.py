"""Plain pieces and setting triangles, counted over the whole tree, as published patterns count them."""

from __future__ import annotations

from fractions import Fraction

import pytest

from quarterturn.measure import ROOT_TWO, Length, Units, inches
from quarterturn.pieces import Piece, Purpose, mitre_extra, to_cut
from tests.pieces.test_bill import bill_of
from tests.section_texts import MITRED, NESTED, ON_POINT, PANELS, PIECED, SASHED, plain_on_point


def pieces_for(text: str, purpose: Purpose) -> list[tuple[int, Length, Length]]:
    """Return count, length and width of the pieces for a purpose."""
    return [(p.count, p.length, p.width) for p in bill_of(text).pieces if p.purpose is purpose]


def used_for(text: str, purpose: Purpose) -> list[str]:
    """Return whom the pieces for a purpose serve."""
    return [piece.used_for for piece in bill_of(text).pieces if piece.purpose is purpose]


def test_published_quilt_on_point() -> None:
    """32 squares of 12 3/8", four of 18 3/4" for 14 triangles and two of 9 5/8", 70 1/2 × 88 inches unfinished:
    "In the Garden" (issuu, August 2023)."""
    text = plain_on_point(5, 4, '12 3/8"')
    squares = pieces_for(text, Purpose.SQUARE)
    assert squares == [(31, inches(12, 7, 8), inches(12, 7, 8))]
    assert pieces_for(text, Purpose.SIDE_TRIANGLES) == [(4, inches(18, 3, 4), inches(18, 3, 4))]
    assert pieces_for(text, Purpose.CORNER_TRIANGLES) == [(2, inches(9, 5, 8), inches(9, 5, 8))]
    assert used_for(text, Purpose.SIDE_TRIANGLES) == ["14 side triangles of quilt centre (2 left over)"]


def test_published_sashed_quilt_on_point() -> None:
    """Four squares of 16 7/8" and two of 9 3/8" for 10" blocks with 1" sashing, 32 of them ("Call Me Square",
    Quilter's World, May 2019, p. 60). Its 40 strips between the squares of a row are these; its long strips between
    rows are short ones with cornerstones here, as many as it takes."""
    text = plain_on_point(
        5, 4, '10"', 'sashing = { fabric = "C", width = \'1"\', cornerstone = "A", outer = true }'
    )
    assert pieces_for(text, Purpose.SIDE_TRIANGLES) == [(4, inches(16, 7, 8), inches(16, 7, 8))]
    assert pieces_for(text, Purpose.CORNER_TRIANGLES) == [(2, inches(9, 3, 8), inches(9, 3, 8))]
    assert pieces_for(text, Purpose.SASH) == [(40 + 40, inches(10, 1, 2), inches(1, 1, 2))]


def test_oversized_triangles_take_larger_squares() -> None:
    plain = pieces_for(ON_POINT, Purpose.SIDE_TRIANGLES)
    float_ = ON_POINT.replace('triangles = "A"', 'triangles = "A"\nfit = "oversized"\nfloat = \'1/2"\'')
    assert pieces_for(float_, Purpose.SIDE_TRIANGLES) == [
        (count, side + 1, side + 1) for count, side, _ in plain
    ]


def test_triangles_of_equal_sections_come_from_the_same_squares() -> None:
    """Two vines of four units on end have six side triangles each: three squares for both."""
    counts = {p.used_for: p.count for p in bill_of(NESTED).pieces if p.purpose is Purpose.SIDE_TRIANGLES}
    assert counts["12 side triangles of vine"] == 3


def test_pieces_are_counted_for_every_copy_of_their_section() -> None:
    """A section held four times has four pairs of side strips and sixteen cornerstones."""
    borders = {p.name: p.count for p in bill_of(NESTED).pieces}
    assert borders["border of round, side strip"] == borders["border of round, end strip"] == 8
    assert pieces_for(NESTED, Purpose.CORNERSTONE) == [(16, inches(1, 1, 2), inches(1, 1, 2))]


def test_every_fabric_of_a_plain_place_is_one_piece() -> None:
    assert pieces_for(ON_POINT, Purpose.SQUARE) == [(1, inches(2, 1, 2), inches(2, 1, 2))]
    assert used_for(ON_POINT, Purpose.SQUARE) == ["quilt centre"]


def test_strips_of_sections_are_as_long_as_these() -> None:
    (strip,) = pieces_for(NESTED, Purpose.STRIP)
    assert strip == (2, inches(20, 1, 2), inches(2, 1, 2))


def test_sizes_that_no_ruler_has_are_cut_up_to_its_next_mark() -> None:
    """A top of 2√2 units of 2" is 5.6569" wide: its end borders are cut for that with both borders and seams."""
    lengths = sorted(length for _, length, _ in pieces_for(ON_POINT, Purpose.BORDER))
    width, height = 2 * 2 * ROOT_TWO + 3, 3 * 2 * ROOT_TWO
    assert lengths == [inches(9), inches(9, 1, 4)]
    for exact, cut in zip(sorted((width + Fraction(1, 2), height + Fraction(1, 2))), lengths, strict=True):
        assert 0 <= cut - exact < Fraction(1, 8)


def test_sizes_on_a_ruler_or_off_it_that_are_fractions_stay() -> None:
    assert to_cut(inches(3, 1, 3), Units.INCH) == inches(3, 1, 3)
    assert to_cut(ROOT_TWO, Units.INCH) == inches(1, 1, 2)


def test_mitred_strips_are_longer_than_the_outer_edge() -> None:
    """Two inches, which hold raw corner and mitre seam: 2s(1 + √2) is 1.2071" for s = 1/4"."""
    (sides, ends) = sorted(pieces_for(MITRED, Purpose.BORDER))
    assert [ends[1], sides[1]] == [13 + 2 + inches(0, 1, 2), 9 + 2 + inches(0, 1, 2)]
    assert mitre_extra(inches(1), Units.INCH) == inches(4, 7, 8)
    assert mitre_extra(inches(0, 1, 4), Units.METRIC) == 50 * inches(5) / 127


def test_motifs_add_to_the_blanks_of_their_fabric() -> None:
    bill = bill_of(PANELS)
    counts = {(m.recipe, m.fabric): m.count for m in bill.motifs}
    assert counts == {("leaf", "B"): 2, ("leaf", "C"): 2, ("round", "C"): 2}
    for motif in bill.motifs:
        assert bill.piece(motif.shape).purpose is Purpose.SHAPE
        assert bill.piece(motif.shape).used_for == "motifs of vase"
    assert pieces_for(PANELS, Purpose.PANEL) == [(2, inches(12, 1, 2), inches(8, 1, 2))]


def test_a_pieced_border_takes_no_border_strips() -> None:
    assert pieces_for(PIECED, Purpose.BORDER) == []


def test_sashing_is_counted_once_for_each_edge() -> None:
    """Eleven squares have 44 sides; each of the three between others shares all its four: 44 − 12 strips."""
    (sash,) = pieces_for(SASHED, Purpose.SASH)
    (stones,) = pieces_for(SASHED, Purpose.CORNERSTONE)
    assert (sash[0], stones[0]) == (32, 22)


@pytest.mark.parametrize("text", [ON_POINT, SASHED, NESTED, PANELS, PIECED, MITRED])
def test_pieces_are_no_wider_than_long(text: str) -> None:
    pieces: tuple[Piece, ...] = bill_of(text).pieces
    tops = [p for p in pieces if p.purpose is not Purpose.BACKING]
    assert [p.label for p in tops if p.width > p.length] == []
