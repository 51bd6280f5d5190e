"""The brush's symmetry: which other cells are painted with one, and how the unit lies in each.

The page follows the same rule, so that paint shows at once; the goldens of this module's test hold both to it.
Places are reckoned by the middles of cells, in half cells from the top left of the map: on point cells stand on a
corner, and those between lie half a cell lower and further right.
"""

from __future__ import annotations

import enum
from collections.abc import Iterator
from dataclasses import dataclass


class Brush(enum.Enum):
    """How what is painted is repeated about the middle of the map."""

    NONE = "none"
    ACROSS = "mirror across"
    """Left and right."""
    DOWN = "mirror down"
    """Top and bottom."""
    BOTH = "mirror both"
    TURN = "turn"
    """By quarters; by a half alone where the map is not square."""
    HALF_TURN = "half turn"


@dataclass(frozen=True, slots=True)
class Paint:
    """What is painted: a word of the map without its turn, and the turn.

    `mirror` names what is its mirror image, left for right, when that is turned by `mirror_turn` less the own turn;
    None where nothing is. What never turns, such as plain cloth, is painted with turn 0 everywhere.
    """

    unit: str
    turn: int
    mirror: str | None = None
    mirror_turn: int = 0
    turns: bool = True


@dataclass(frozen=True, slots=True)
class Ground:
    """The map that is painted: so many rows and columns, on point with what lies between them."""

    rows: int
    columns: int
    on_point: bool = False

    def place(self, row: int, column: int) -> tuple[int, int]:
        """Return the middle of a cell, across and down, in half cells."""
        if self.on_point:
            return 2 * column + 1 + row % 2, row + 1
        return 2 * column + 1, 2 * row + 1

    def cell(self, across: int, down: int) -> tuple[int, int] | None:
        """Return the row and column of the cell with this middle, if there is one."""
        if not (0 < across < 2 * self.columns and 0 < down < 2 * self.rows):
            return None
        if self.on_point:
            row = down - 1
            return (row, (across - 1 - row % 2) // 2) if (across - 1 - row % 2) % 2 == 0 else None
        return (down - 1) // 2, (across - 1) // 2


Laid = tuple[int, int, str, int]
"""Row, column, unit and turn."""


def strokes(
    ground: Ground, row: int, column: int, paint: Paint, brush: Brush, every: int = 0
) -> tuple[Laid, ...]:
    """Return all that is painted with a cell, the cell itself first; of two for one cell the earlier counts.

    With `every` above 0 all of it is painted again so many rows and columns further, over the whole map.
    """
    found: dict[tuple[int, int], tuple[str, int]] = {}
    for (across, down), unit, turn in _images(ground, ground.place(row, column), paint, brush):
        for place in _again(ground, across, down, every):
            if cell := ground.cell(*place):
                found.setdefault(cell, (unit, turn if paint.turns else 0))
    return tuple((r, c, unit, turn) for (r, c), (unit, turn) in found.items())


Image = tuple[tuple[int, int], str, int]


def _images(ground: Ground, at: tuple[int, int], paint: Paint, brush: Brush) -> Iterator[Image]:
    wide, high = 2 * ground.columns, 2 * ground.rows
    (x, y), unit, turn = at, paint.unit, paint.turn
    yield (x, y), unit, turn
    if brush is Brush.TURN and wide == high:
        yield (wide - y, x), unit, (turn + 1) % 4
        yield (wide - x, high - y), unit, (turn + 2) % 4
        yield (y, high - x), unit, (turn + 3) % 4
    elif brush in (Brush.TURN, Brush.HALF_TURN):
        yield (wide - x, high - y), unit, (turn + 2) % 4
    if paint.mirror is not None:
        flipped = (paint.mirror_turn - turn - ground.on_point) % 4
        if brush in (Brush.ACROSS, Brush.BOTH):
            yield (wide - x, y), paint.mirror, flipped
        if brush in (Brush.DOWN, Brush.BOTH):
            yield (x, high - y), paint.mirror, (flipped + 2) % 4
    if brush is Brush.BOTH:
        yield (wide - x, high - y), unit, (turn + 2) % 4


def _again(ground: Ground, across: int, down: int, every: int) -> Iterator[tuple[int, int]]:
    yield across, down
    if every > 0:
        step = 2 * every
        for y in range(down % step, 2 * ground.rows, step):
            for x in range(across % step, 2 * ground.columns, step):
                yield x, y
