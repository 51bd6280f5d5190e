"""How the copies of a map are laid: slid, mirrored, or turned.

A quarter of a disc is its own mirror image about the diagonal through its corner, so a mirrored unit is the same unit
in another turn. The turn follows from the corner in which the middle of the disc lies. A unit that is not its own
mirror image in this way, which is named by its quarter, cannot be laid mirrored, nor can a section, whose mirror image
is another section: `maps.check_symmetry` refuses both.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias, TypeVar

from quarterturn.design.sections import ClothCell, MapCell, SectionCell, Symmetry

AnyCell = TypeVar("AnyCell", bound=MapCell)
Rows: TypeAlias = tuple[tuple[AnyCell, ...], ...]
Move: TypeAlias = Callable[[complex], complex]

_TOP_LEFT = -1 - 1j
"""The corner of the disc at turn 0, seen from the middle of the unit: x to the right, y down."""


def moved_turn(turn: int, move: Move) -> int:
    """Return the turn of a unit after a rotation or a reflection of the plane about its middle."""
    corners = [_TOP_LEFT * 1j**each for each in range(4)]
    return corners.index(move(corners[turn]))


def turned(block: Rows[AnyCell], times: int = 1) -> Rows[AnyCell]:
    """Return a block turned so many quarters clockwise, its units with it."""
    for _ in range(times % 4):
        columns = zip(*reversed(block), strict=True)
        block = _each(columns, lambda corner: corner * 1j)
    return block


def mirrored(block: Rows[AnyCell]) -> Rows[AnyCell]:
    """Return a block reflected in a vertical line: left becomes right."""
    return _each((tuple(reversed(row)) for row in block), lambda corner: complex(-corner.real, corner.imag))


def upended(block: Rows[AnyCell]) -> Rows[AnyCell]:
    """Return a block reflected in a horizontal line: top becomes bottom."""
    return _each(reversed(block), lambda corner: corner.conjugate())


def laid(block: Rows[AnyCell], symmetry: Symmetry, across: int, down: int) -> Rows[AnyCell]:
    """Return so many copies of a block side by side and one below the other, each laid as the symmetry says.

    Under `TURN` a copy is a round: the block, a square, and three more of it turned about its lower right corner.
    """
    if symmetry is Symmetry.TURN:
        quarters = [turned(block, times) for times in range(4)]
        block = _beside(quarters[0], quarters[1]) + _beside(quarters[3], quarters[2])
    return tuple(row for i in range(down) for row in _beside(*_copies(block, symmetry, i, across)))


@dataclass(frozen=True, slots=True)
class Source:
    """Which cell of a map fills a place once its repeats are laid, and how a turn in the map is seen there."""

    row: int
    column: int
    turn: int
    """How a cell of turn 0 is turned there."""
    is_mirrored: bool = False

    def seen(self, turn: int) -> int:
        """Return the turn seen at the place of a cell that the map writes with a turn; it is its own inverse
        where the copy is mirrored."""
        return (self.turn - turn if self.is_mirrored else self.turn + turn) % 4

    def written(self, turn: int) -> int:
        """Return the turn that the map writes for one that is to be seen at the place."""
        return (self.turn - turn if self.is_mirrored else turn - self.turn) % 4


def sources(
    rows: int, columns: int, symmetry: Symmetry, across: int, down: int
) -> tuple[tuple[Source, ...], ...]:
    """Return, for each place of a map of so many rows and columns with its repeats laid out, where it comes from."""
    upright, turned_once = (
        laid(tuple(tuple(SectionCell(f"{r} {c}", turn) for c in range(columns)) for r in range(rows)),
             symmetry, across, down)
        for turn in (0, 1)
    )  # fmt: skip
    return tuple(
        tuple(_source(cell, once.turn) for cell, once in zip(*both, strict=True))
        for both in zip(upright, turned_once, strict=True)
    )


def _source(cell: SectionCell, once: int) -> Source:
    row, column = map(int, cell.section.split())
    return Source(row, column, cell.turn, is_mirrored=(once - cell.turn) % 4 == 3)


def _copies(block: Rows[AnyCell], symmetry: Symmetry, level: int, across: int) -> list[Rows[AnyCell]]:
    """Return the copies of one level, from left to right."""
    if symmetry is Symmetry.HALF_TURN:
        return [turned(block, 2 * ((level + j) % 2)) for j in range(across)]
    if symmetry is Symmetry.MIRROR:
        here = upended(block) if level % 2 else block
        return [mirrored(here) if j % 2 else here for j in range(across)]
    return [block] * across


def _each(rows: Iterable[tuple[AnyCell, ...]], move: Move) -> Rows[AnyCell]:
    turns = [moved_turn(turn, move) for turn in range(4)]
    return tuple(tuple(_moved(cell, turns) for cell in row) for row in rows)


def _moved(cell: AnyCell, turns: Sequence[int]) -> AnyCell:
    return cell if isinstance(cell, ClothCell) else replace(cell, turn=turns[cell.turn])


def _beside(*blocks: Rows[AnyCell]) -> Rows[AnyCell]:
    return tuple(sum(parts, ()) for parts in zip(*blocks, strict=True))
