"""Sewing rows, and the rows together: sections of straight rows, sashed ones and lines of sections."""

from __future__ import annotations

from collections import Counter
from collections.abc import Generator, Iterable, Iterator
from itertools import pairwise

from quarterturn.design import Pressing
from quarterturn.setting import Child, ClothUse, Grid, PlainCloth, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import Chapter, SewLine
from quarterturn.steps.naming import Names
from quarterturn.steps.things import Pile, Placed, Press, Product, Towards

Line = tuple[tuple[Placed, ...], Press]
"""What is sewn side by side, and where its seams are pressed to."""


def piles(parts: Iterable[Placed], count: int) -> tuple[Pile, ...]:
    """Return what `count` lines of such parts take."""
    return tuple(Pile(label, n * count) for label, n in Counter(part.label for part in parts).items())


def sewn(parts: tuple[Placed, ...], way: Side, names: Names, press: Press, made: Product) -> Draft:
    """Return the sewing of equal lines of parts."""
    action = SewLine(parts, way, names.seam, press)
    return draft(Chapter.ASSEMBLY, action, piles(parts, made.count), (made,))


def grid_steps(names: Names, grid: Grid, label: str = "") -> Iterator[Draft]:
    """Sew a section in rows, equal rows together, and the rows to one another; `label` is given to the root.

    A section of a single part needs no sewing and keeps the part's name.
    """
    times = names.made[grid]
    if not label and len(grid.rows) == len(grid.rows[0]) == 1:
        names.put(grid, names.placed(grid.rows[0][0]))
        return
    name = label or names.name(labels.node(grid.name))
    lines = [_line(names, grid, index) for index in range(len(grid.rows))]
    if len(lines) == 1 and len(grid.rows[0]) > 1:
        parts, press = lines[0]
        yield sewn(parts, Side.RIGHT, names, press, names.product(name, times, grid.width, grid.height))
    else:
        kinds = yield from _rows(names, grid, lines)
        rows = tuple(kinds[line] for line in lines)
        press = _press(names, [row[0] for row in grid.rows], Side.BOTTOM)
        made = names.product(name, times, grid.width, grid.height)
        yield sewn(rows, Side.BOTTOM, names, press, made)
    names.put(grid, Placed(name, 0))


def _rows(names: Names, grid: Grid, lines: list[Line]) -> Generator[Draft, None, dict[Line, Placed]]:
    """Sew each kind of row once; return what each is called. A row of one part is that part."""
    counts, times = Counter(lines), names.made[grid]
    kinds: dict[Line, Placed] = {}
    for index, line in enumerate(lines):
        if line in kinds:
            continue
        parts, press = line
        if len(parts) == 1:
            kinds[line] = parts[0]
            continue
        name = names.name(labels.row(grid.name, index + 1))
        kinds[line] = Placed(name, 0)
        made = names.product(name, counts[line] * times, grid.width, grid.rows[index][0].height)
        yield sewn(parts, Side.RIGHT, names, press, made)
    return kinds


def _line(names: Names, grid: Grid, index: int) -> Line:
    row = grid.rows[index]
    parts = tuple(names.placed(child) for child in row)
    return parts, _press(names, row, Side.LEFT if index % 2 else Side.RIGHT) if len(row) > 1 else None


def _press(names: Names, children: Iterable[Child], side: Side) -> Press:
    """Return where seams are pressed to: sashing and strips take them, where every seam has one; else to the side."""
    if names.design.making.pressing is Pressing.OPEN:
        return None
    uses = [child.node.use if isinstance(child.node, PlainCloth) else None for child in children]
    sashing = {ClothUse.SASH, ClothUse.CORNERSTONE}
    if all(a in sashing or b in sashing for a, b in pairwise(uses)) and sashing & set(uses):
        return Towards.SASHING
    if len(uses) > 1 and all((a is ClothUse.STRIP) != (b is ClothUse.STRIP) for a, b in pairwise(uses)):
        return Towards.STRIPS
    return side
