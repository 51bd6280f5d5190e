"""How copies of a map are laid: every symmetry leaves its own movement unseen, and counts multiply."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import (
    Cell,
    ClothCell,
    SectionCell,
    StraightSet,
    Symmetry,
    format_design,
    laid,
    mirrored,
    turned,
    upended,
)
from tests.design.broken_cases import GOOD
from tests.samples import design_of, straight, units_in

Rows = tuple[tuple[Cell, ...], ...]

cells = st.builds(Cell, st.sampled_from("ab"), st.integers(0, 3))
copies = st.integers(1, 3)


@st.composite
def blocks(draw: st.DrawFn, square: bool = False) -> Rows:
    """A block of up to four rows and columns."""
    columns = draw(st.integers(1, 4))
    rows = columns if square else draw(st.integers(1, 4))
    return tuple(tuple(draw(cells) for _ in range(columns)) for _ in range(rows))


def shifted(rows: Rows, down: int, across: int) -> Rows:
    """The rows moved round a torus."""
    moved = rows[-down % len(rows) :] + rows[: -down % len(rows)]
    return tuple(row[-across % len(row) :] + row[: -across % len(row)] for row in moved)


def rows_of(text: str) -> Rows:
    return tuple(tuple(Cell(word[0], int(word[1])) for word in line.split()) for line in text.split("/"))


def test_a_mirrored_map_reads_from_right_to_left() -> None:
    assert mirrored(rows_of("a0 a1 b2/a3 b0 a2")) == rows_of("b3 a0 a1/a3 b1 a2")


def test_an_upended_map_reads_from_bottom_to_top() -> None:
    assert upended(rows_of("a0 a1/a2 a3")) == rows_of("a1 a0/a3 a2")


def test_a_turned_map_has_its_first_column_at_the_top() -> None:
    assert turned(rows_of("a0 b1/a2 b3/a0 b0")) == rows_of("a1 a3 a1/b1 b0 b2")


def test_one_unit_makes_a_round_with_each_symmetry_that_can() -> None:
    whole_circle = rows_of("a2 a3/a1 a0")
    assert laid(rows_of("a2"), Symmetry.TURN, 1, 1) == whole_circle
    assert laid(rows_of("a2"), Symmetry.MIRROR, 2, 2) == whole_circle


@given(blocks())
def test_two_movements_that_undo_each_other_leave_a_block_as_it_was(block: Rows) -> None:
    assert mirrored(mirrored(block)) == upended(upended(block)) == turned(block, 4) == block
    assert turned(block, 2) == mirrored(upended(block))


@given(blocks(), st.integers(1, 2), st.integers(1, 2))
def test_a_mirrored_map_is_its_own_mirror_image(block: Rows, across: int, down: int) -> None:
    rows = laid(block, Symmetry.MIRROR, 2 * across, 2 * down)
    assert mirrored(rows) == upended(rows) == rows


@given(blocks(square=True), copies)
def test_a_turned_map_looks_alike_from_all_four_sides(block: Rows, times: int) -> None:
    rows = laid(block, Symmetry.TURN, times, times)
    assert turned(rows) == rows


@given(blocks(), st.integers(1, 2), st.integers(1, 2))
def test_a_half_turned_map_looks_alike_upside_down_one_copy_on(block: Rows, across: int, down: int) -> None:
    rows = laid(block, Symmetry.HALF_TURN, 2 * across, 2 * down)
    assert turned(rows, 2) == shifted(rows, 0, len(block[0])) == shifted(rows, len(block), 0)


@given(blocks(), copies, copies)
def test_a_slid_map_is_the_block_wherever_one_looks(block: Rows, across: int, down: int) -> None:
    rows = laid(block, Symmetry.SLIDE, across, down)
    assert shifted(rows, len(block), 0) == shifted(rows, 0, len(block[0])) == rows


@given(blocks(square=True), st.sampled_from(Symmetry), copies, copies)
def test_sizes_and_counts_multiply(block: Rows, symmetry: Symmetry, across: int, down: int) -> None:
    setting = StraightSet(block, across, down, symmetry)
    rows = setting.rows()
    assert setting.size == (len(rows), len(rows[0]))
    times = across * down * (4 if symmetry is Symmetry.TURN else 1)
    codes = Counter(cell.code for row in block for cell in row)
    assert Counter(cell.code for row in units_in(rows) for cell in row) == {
        c: n * times for c, n in codes.items()
    }


@pytest.mark.parametrize("symmetry", Symmetry)
def test_a_symmetry_is_written_as_it_is_read(symmetry: Symmetry) -> None:
    text = GOOD.replace("a2 a3 a2\na1 a0 a1", "a2 a3\na1 a0").replace(
        "across = 2", f'across = 2\nsymmetry = "{symmetry.value}"'
    )
    design = design_of(text)
    assert straight(design).symmetry is symmetry
    assert design_of(format_design(design)) == design


def test_plain_cloth_and_sections_are_laid_with_the_units() -> None:
    """A section is turned like a unit; plain cloth looks alike from all sides."""
    wreath, cloth = SectionCell("wreath", 3), ClothCell("A")
    block = ((Cell("a", 0), wreath), (cloth, Cell("b", 2)))
    first, second = laid(block, Symmetry.HALF_TURN, 2, 1)
    assert first == (Cell("a", 0), wreath, Cell("b", 0), cloth)
    assert second == (cloth, Cell("b", 2), SectionCell("wreath", 1), Cell("a", 2))
    assert turned(block) == ((cloth, Cell("a", 1)), (Cell("b", 3), SectionCell("wreath", 0)))
    assert laid(block, Symmetry.SLIDE, 1, 1) == block
