"""The movements: each symmetry's are a group, and each leaves the quilt the same quilt."""

from __future__ import annotations

import itertools
import random

import pytest

from quarterturn.design import Cell, Symmetry, laid, mirrored, turned
from quarterturn.setting.finder import Block, Move, canonical, moves_of
from quarterturn.setting.finder.moves import identity, quarter_turn, reflection

KINDS = list(itertools.product(Symmetry, (1, 2, 3), (1, 2)))


def rows_of(block: Block, size: int) -> tuple[tuple[Cell, ...], ...]:
    cells = [Cell("ab"[state // 4], state % 4) for state in block]
    return tuple(tuple(cells[r * size : (r + 1) * size]) for r in range(size))


def states_of(rows: tuple[tuple[Cell, ...], ...]) -> Block:
    return tuple("ab".index(cell.code) * 4 + cell.turn for row in rows for cell in row)


def some_blocks(size: int, codes: int, count: int = 12) -> list[Block]:
    lot = random.Random(7)
    return [tuple(lot.randrange(4 * codes) for _ in range(size * size)) for _ in range(count)]


@pytest.mark.parametrize(("symmetry", "size", "codes"), KINDS)
def test_the_movements_are_a_group(symmetry: Symmetry, size: int, codes: int) -> None:
    moves = moves_of(symmetry, size, codes)
    known = set(moves)
    assert len(moves) == len(known)
    assert identity(size, codes) in known
    few = random.Random(3).sample(moves, min(len(moves), 24))
    assert {first.then(second) for first in few for second in few} <= known


@pytest.mark.parametrize("codes", [1, 2])
def test_their_number_is_that_of_shifts_turns_mirrors_and_exchanges(codes: int) -> None:
    counts = {symmetry: len(moves_of(symmetry, 3, codes)) for symmetry in Symmetry}
    assert counts == {
        Symmetry.SLIDE: 72 * codes,
        Symmetry.MIRROR: 8 * codes,
        Symmetry.HALF_TURN: 8 * codes,
        Symmetry.TURN: 4 * codes,
    }


def test_turns_and_reflections_are_those_of_maps() -> None:
    for block in some_blocks(3, 2):
        rows = rows_of(block, 3)
        assert quarter_turn(3, 2)(block) == states_of(turned(rows))
        assert reflection(3, 2)(block) == states_of(mirrored(rows))


def test_one_movement_after_another_is_a_movement() -> None:
    first, second = quarter_turn(3, 2), Move((*range(1, 9), 0), (4, 5, 6, 7, 0, 1, 2, 3))
    for block in some_blocks(3, 2):
        assert first.then(second)(block) == second(first(block))


@pytest.mark.parametrize("symmetry", Symmetry)
def test_a_block_that_was_moved_lays_the_same_quilt(symmetry: Symmetry) -> None:
    """The same quilt: the whole of it can be moved, or its colourways exchanged, to give the other."""

    def quilt(block: Block) -> Block:
        copies = 1 if symmetry in (Symmetry.SLIDE, Symmetry.TURN) else 2
        rows = laid(rows_of(block, 2), symmetry, copies, copies)
        return canonical(states_of(rows), moves_of(Symmetry.SLIDE, len(rows), 2))

    moves = moves_of(symmetry, 2, 2)
    for block in some_blocks(2, 2, 4):
        assert {quilt(move(block)) for move in moves} == {quilt(block)}
