"""Each check of plain cloth fires on its fault, and lets its near miss pass; the squares are the published ones."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from quarterturn.measure import Length, inches
from quarterturn.pieces import Piece, Purpose
from quarterturn.proof import Pattern
from quarterturn.proof.checks.plain import least_squares
from quarterturn.steps import CutTriangles, Steps
from tests.proof.checks.sound import Spoil, found
from tests.samples import design_of, pattern_of
from tests.section_texts import MITRED, NESTED, ON_POINT, SASHED, quilt

BRICK, INK = 'colour = "#9c4a35"', 'colour = "#22304a"'
DIRECTED = (BRICK, f'{BRICK}\ndirection = "two-way"')
INKED = (INK, f'{INK}\ndirection = "two-way"')


def changed(text: str, *changes: tuple[str, str]) -> Spoil:
    """Return the pattern of a text with some words exchanged; each must be there."""
    for before, after in changes:
        assert before in text, before
        text = text.replace(before, after, 1)
    return lambda: pattern_of(text)


def with_pieces(text: str, purpose: Purpose, change: Callable[[Piece], Piece]) -> Spoil:
    """Return the pattern of a text with the listed pieces of a purpose changed."""

    def spoil() -> Pattern:
        pattern = pattern_of(text)
        pieces = tuple(change(p) if p.purpose is purpose else p for p in pattern.bill.pieces)
        return replace(pattern, bill=replace(pattern.bill, pieces=pieces))

    return spoil


def larger(by: Length) -> Callable[[Piece], Piece]:
    """Return what makes a square piece larger (or smaller) each way."""
    return lambda piece: replace(piece, length=piece.length + by, width=piece.width + by)


def shorter(by: Length) -> Callable[[Piece], Piece]:
    """Return what makes a strip shorter."""
    return lambda piece: replace(piece, length=piece.length - by)


def fewer(piece: Piece) -> Piece:
    """Return one piece fewer."""
    return replace(piece, count=piece.count - 1)


def cut_otherwise() -> Pattern:
    """Return a pattern whose side triangles are halves of squares, with the bias on the outer edge."""
    pattern = pattern_of(ON_POINT)
    steps = tuple(
        replace(step, action=CutTriangles(3 - step.action.cuts))
        if isinstance(step.action, CutTriangles)
        else step
        for step in pattern.steps.steps
    )
    return replace(pattern, steps=Steps(steps))


BARE = ON_POINT[: ON_POINT.index("[[borders]]")] + ON_POINT[ON_POINT.index("[binding]") :]
COLUMNS = quilt("""
[sections.vine]
kind = "straight"
map = '''
a0
b1
'''

[setting]
kind = "columns"
parts = ["vine", { fabric = "C", width = '3"' }, "vine2"]
""")
ROWS = quilt("""
[sections.verge]
kind = "straight"
map = "a0 b1"

[setting]
kind = "rows"
parts = ["verge", { fabric = "C", width = '3"' }, "verge2"]
""")
LYING = COLUMNS.replace("[setting]", "[sections.whole]").replace(
    "\n[binding]", '\n[setting]\nkind = "straight"\nmap = "whole1"\n\n[binding]'
)
"""Columns turned a quarter, so that what stood in them lies."""

FIRES: dict[str, Spoil] = {
    "pieces-differ": with_pieces(SASHED, Purpose.SASH, fewer),
    "triangles-miscounted": with_pieces(ON_POINT, Purpose.SIDE_TRIANGLES, fewer),
    "triangles-short": with_pieces(ON_POINT, Purpose.SIDE_TRIANGLES, larger(inches(0, -1, 8))),
    "triangles-waste": with_pieces(ON_POINT, Purpose.CORNER_TRIANGLES, larger(inches(1, 1, 4))),
    "triangle-bias": cut_otherwise,
    "triangle-print-turns": changed(ON_POINT, DIRECTED),
    "strip-print-lies": changed(LYING, DIRECTED),
    "unit-print-slants": changed(ON_POINT, INKED),
    "strip-narrow": changed(SASHED, ("width = '1/2\"'", "width = '3/8\"'")),
    "mitre-short": with_pieces(MITRED, Purpose.BORDER, shorter(inches(3))),
    "points-at-edge": changed(BARE),
}
PASSES: dict[str, Spoil] = {
    "pieces-differ": changed(NESTED),
    "triangles-miscounted": changed(NESTED),
    "triangles-short": changed(SASHED),
    "triangles-waste": with_pieces(ON_POINT, Purpose.CORNER_TRIANGLES, larger(inches(0, 3, 4))),
    "triangle-bias": changed(SASHED),
    "triangle-print-turns": changed(ON_POINT),
    "strip-print-lies": changed(ROWS, DIRECTED),
    "unit-print-slants": changed(COLUMNS, INKED),
    "strip-narrow": changed(SASHED),
    "mitre-short": with_pieces(MITRED, Purpose.BORDER, shorter(inches(0, 3, 4))),
    "points-at-edge": changed(
        BARE, ('triangles = "A"', 'triangles = "A"\nfit = "oversized"\nfloat = \'1/4"\'')
    ),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_upright_strips_of_a_print_are_cut_lengthwise_so_that_it_stands() -> None:
    assert found("strip-print-lies", changed(COLUMNS, DIRECTED)()) == []


BLOCKS = quilt("""
[sections.block]
kind = "straight"
map = "a0"

[[sections.block.borders]]
kind = "coping"
fabric = "A"
to = ['SIDE"', 'SIDE"']

[setting]
kind = "on point"
map = '''
block block block block
block block block block
'''
between = "A"
triangles = "B"
SASHING
""")
SASH = 'sashing = { fabric = "C", width = \'1"\' }'


@pytest.mark.parametrize(
    ("side", "sashing", "square", "corner"),
    [
        ("6", "", 9.7353, 5.1176),
        ("12", "", 18.2206, 9.3603),
        ("16", "", 23.8774, 12.1887),
        ("10", SASH, 16.8063, 9.3603),
    ],
)
def test_squares_are_those_of_the_handbook_less_what_it_rounds_up(
    side: str, sashing: str, square: float, corner: float
) -> None:
    """Published for blocks of 6", 12" and 16", and of 10" with sashing; the exact additions are computed."""
    text = BLOCKS.replace("SIDE", side).replace("SASHING", sashing)
    least = {which: float(size) for _, _, which, _, size in least_squares(design_of(text))}
    assert least["side_square"] == pytest.approx(square - 1.25 + 1.2071, abs=1e-4)
    assert least["corner_square"] == pytest.approx(corner - 0.875 + 0.8536, abs=1e-4)


def test_seven_and_a_quarter_serves_units_of_four_and_a_quarter_and_an_eighth_less_does_not() -> None:
    """Common practice: the exact need is 4¼ · √2 + 1.2071 = 7.2175 inches."""
    text = ON_POINT.replace("finished = '2\"'", "finished = '4 1/4\"'", 1)
    seven = text.replace('triangles = "A"', 'triangles = "A"\nside_square = \'7 1/4"\'')
    assert found("triangles-short", pattern_of(seven)) == []
    short = with_pieces(seven, Purpose.SIDE_TRIANGLES, larger(inches(0, -1, 8)))
    assert found("triangles-short", short()) == [
        'Squares A1 are 7⅛"; the triangles cut from them need squares of 7.2175".'
    ]
