"""The steps from loose units to a quilt centre that is a plain map of them: pairs, rows, the rows together."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from typing import TypeVar

from quarterturn.design import Design, Pressing
from quarterturn.measure import Length
from quarterturn.setting import Child, Framed, Grid, PlainCloth, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.grids import sewn
from quarterturn.steps.model import Chapter, LayOut
from quarterturn.steps.naming import Names
from quarterturn.steps.things import Pile, Placed

_Part = TypeVar("_Part")

Line = tuple[tuple[Placed, ...], Side | None]
"""What is sewn side by side, and the side to which its seams are pressed."""


def unit_rows_steps(names: Names, grid: Grid) -> Iterator[Draft]:
    """Return laying out a map of units, sewing pairs, rows and the centre.

    Pairs and rows that are alike are made together. Seams of odd and even rows are pressed opposite ways, so
    that they nest wherever four units meet.
    """
    design = names.design
    rows = [tuple(names.placed(child) for child in row) for row in grid.rows]
    press = [_row_press(design, index) for index in range(len(rows))]
    yield draft(Chapter.ASSEMBLY, LayOut(tuple(rows), later=later_piles(names, rows)))

    laid = list(zip(rows, press, grid.rows, strict=True))
    pair_sizes = {
        (pair, way): _size(children)
        for row, way, unit_row in laid
        for pair, children in zip(_pairs(row), _pairs(unit_row), strict=True)
    }
    pairs = _number([(pair, way) for row, way, _ in laid for pair in _pairs(row)], "pair")
    for line, (label, count) in pairs.items():
        yield _sewn(names, line, pair_sizes[line], label, count)

    lines = [(_in_pairs(row, way, pairs), way) for row, way, _ in laid]
    row_sizes = {line: _size(row) for line, row in zip(lines, grid.rows, strict=True)}
    kinds = _number(lines, "row kind")
    for line, (label, count) in kinds.items():
        if len(line[0]) > 1:
            yield _sewn(names, line, row_sizes[line], label, count)

    yield _centre(names, grid, [_row_label(line, kinds) for line in lines])


def later_piles(names: Names, rows: Iterable[Iterable[Placed]]) -> tuple[Pile, ...]:
    """Return what of the things laid out is for the root's borders as well, and stays in its stack till then."""
    laid = {part.label for row in rows for part in row}
    top, counts = names.setting.top, Counter[str]()
    for frame in top.frames if isinstance(top, Framed) else ():
        sections = (child for child in frame.strips if not isinstance(child.node, PlainCloth))
        counts.update(names.placed(child).label for child in (*sections, *frame.corners))
    return tuple(Pile(label, count) for label, count in counts.items() if label in laid)


def _row_press(design: Design, index: int) -> Side | None:
    if design.making.pressing is Pressing.OPEN:
        return None
    return Side.LEFT if index % 2 else Side.RIGHT


def _pairs(row: tuple[_Part, ...]) -> list[tuple[_Part, ...]]:
    return [row[i : i + 2] for i in range(0, len(row) - 1, 2)]


def _size(children: tuple[Child, ...]) -> tuple[Length, Length]:
    """Return width and height of a line of children as it lies."""
    return sum((child.width for child in children), Length(0)), children[0].height


def _number(lines: list[Line], word: str) -> dict[Line, tuple[str, int]]:
    """Name equal lines once, in order of first use, and count them."""
    counts = Counter(lines)
    return {line: (f"{word} {number}", count) for number, (line, count) in enumerate(counts.items(), start=1)}


def _in_pairs(
    row: tuple[Placed, ...], way: Side | None, pairs: dict[Line, tuple[str, int]]
) -> tuple[Placed, ...]:
    """Return a row as its pairs, and the unit left over at its end where its length is odd."""
    joined = tuple(Placed(pairs[pair, way][0], 0) for pair in _pairs(row))
    return joined + row[len(row) // 2 * 2 :]


def _row_label(line: Line, kinds: dict[Line, tuple[str, int]]) -> Placed:
    """Return what a row is called: a row of one pair or one unit needs no sewing and keeps its name."""
    return line[0][0] if len(line[0]) == 1 else Placed(kinds[line][0], 0)


def _sewn(names: Names, line: Line, size: tuple[Length, Length], label: str, count: int) -> Draft:
    """Return the sewing of `count` equal lines of parts, of this size inside their seams."""
    parts, way = line
    return sewn(parts, Side.RIGHT, names, way, names.product(label, count, *size))


def _centre(names: Names, grid: Grid, rows: list[Placed]) -> Draft:
    press = None if names.design.making.pressing is Pressing.OPEN else Side.BOTTOM
    made = names.product(labels.TOP, 1, grid.width, grid.height)
    return sewn(tuple(rows), Side.BOTTOM, names, press, made)
