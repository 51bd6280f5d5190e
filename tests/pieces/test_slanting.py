"""Slanting rows hold what published layouts on point hold."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest

from quarterturn.design import TriangleFit
from quarterturn.measure import ROOT_TWO
from quarterturn.pieces import Slope, left_of, right_of, sash_rows, side_triangles, slanting_rows
from quarterturn.pieces.slanting import sashing_of
from quarterturn.setting import Child, ClothUse, OneUnit, OnPoint, PlainCloth

SIZES = [(1, 1), (1, 4), (2, 2), (3, 2), (4, 5), (5, 4), (6, 3), (3, 7)]


def section(rows: int, columns: int, sash: int = 0) -> OnPoint:
    """Return a section on point of squares of 3 inches, each with its place as its name."""

    def cells(letter: str, down: int, across: int) -> tuple[tuple[Child, ...], ...]:
        side = Fraction(3)
        return tuple(
            tuple(Child(OneUnit(f"{letter}{r}.{c}", side, side)) for c in range(across)) for r in range(down)
        )

    pitch = (3 + sash) * ROOT_TWO
    return OnPoint(
        name="vine",
        cells=cells("m", rows, columns),
        between=cells("b", rows - 1, columns - 1),
        side=Fraction(3),
        sash=Fraction(sash),
        sash_fabric="A",
        cornerstone_fabric="B",
        side_fabric="A",
        corner_fabric="A",
        fit=TriangleFit.EXACT,
        side_square=Fraction(6),
        corner_square=Fraction(4),
        float=Fraction(0),
        width=columns * pitch + sash * ROOT_TWO,
        height=rows * pitch + sash * ROOT_TWO,
    )


@pytest.mark.parametrize(("rows", "columns"), SIZES)
def test_every_place_is_in_one_row(rows: int, columns: int) -> None:
    node = section(rows, columns)
    held = Counter(square for row in slanting_rows(node) for square in row.squares)
    assert held == Counter(child for line in (*node.cells, *node.between) for child in line)
    assert len(slanting_rows(node)) == rows + columns - 1


@pytest.mark.parametrize(("rows", "columns"), SIZES)
def test_ends_of_rows_take_all_side_triangles(rows: int, columns: int) -> None:
    """2(r + c − 2): 12 for 4 × 4, 14 for 4 × 5 (published layouts agree)."""
    node = section(rows, columns)
    ends = sum(row.left + row.right for row in slanting_rows(node))
    assert ends == side_triangles(node) == 2 * (rows + columns - 2)


def test_published_layouts() -> None:
    """4 × 4 has 16 and 9 squares and 12 side triangles (kristamoser.com); 4 × 5 has 32 and 14 ("In the Garden")."""
    square, oblong = section(4, 4), section(4, 5)
    assert [sum(len(r.squares) for r in slanting_rows(n)) for n in (square, oblong)] == [25, 32]
    assert [side_triangles(n) for n in (square, oblong)] == [12, 14]


def test_published_strips_between_the_squares_of_rows() -> None:
    """40 of them for 32 squares in eight rows: "Call Me Square", Quilter's World, May 2019, p. 60."""
    assert sum(len(row.squares) + 1 for row in slanting_rows(section(5, 4, 1))) == 40


@pytest.mark.parametrize(("rows", "columns"), SIZES)
def test_sashing_has_a_strip_at_every_side_and_a_stone_at_every_corner(rows: int, columns: int) -> None:
    node = section(rows, columns, 1)
    places = {(r + c + 1, r - c) for r in range(rows) for c in range(columns)}
    places |= {(r + c + 2, r - c) for r in range(rows - 1) for c in range(columns - 1)}
    sides = {(2 * u + du, 2 * v + dv) for u, v in places for du, dv in ((1, 0), (-1, 0), (0, 1), (0, -1))}
    corners = {(2 * u + du, 2 * v + dv) for u, v in places for du in (1, -1) for dv in (1, -1)}
    counts = sashing_of(node)
    sash = PlainCloth(ClothUse.SASH, "A", Fraction(1), Fraction(3))
    stone = PlainCloth(ClothUse.CORNERSTONE, "B", Fraction(1), Fraction(1))
    assert (counts[sash], counts[stone]) == (len(sides), len(corners))


def test_rows_of_an_oblong_grow_move_and_shrink() -> None:
    slopes = [row.slope for row in slanting_rows(section(5, 2))]
    assert slopes == [Slope.GROWS] * 2 + [Slope.MOVES] * 2 + [Slope.SHRINKS] * 2
    assert [row.slope for row in slanting_rows(section(2, 2))] == [Slope.GROWS, Slope.LONGEST, Slope.SHRINKS]


def test_sashing_reaches_over_both_rows_beside_it() -> None:
    node = section(4, 2, 1)
    rows, sashes = slanting_rows(node), sash_rows(node)
    assert len(sashes) == len(rows) + 1
    for above, below, sash in zip(rows, rows[1:], sashes[1:], strict=False):
        assert left_of(node, sash.first) == min(left_of(node, above.first), left_of(node, below.first))
        assert right_of(node, sash.last) == max(right_of(node, above.last), right_of(node, below.last))


def test_without_sashing_there_is_none() -> None:
    node = section(3, 3)
    assert sash_rows(node) == ()
    assert not sashing_of(node)
    assert sashing_of(replace(node, sash=Fraction(1)))
