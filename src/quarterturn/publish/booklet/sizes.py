"""The pages on which the sizes of a pattern stand side by side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import Block, Cell, Figure, Notes, Plate, Section, SizeTable
from quarterturn.publish.picture import PLAIN, top_sheet
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.wording import by_size, rectangle, size_notes, size_parts

IN_A_ROW = 4
GUTTER = 4.0
TALLEST = 54.0
"""Millimetres between the pictures, and how high the highest may be."""


def side_by_side(pattern: Pattern, others: Sequence[Pattern], line: float) -> Iterator[Block]:
    """Return pictures of all sizes to one scale, and the tables with a column for each; nothing for one size."""
    if not others:
        return
    sizes = by_size((pattern, *others))
    yield Section("Sizes", opens=True)
    yield Notes("", size_notes(pattern, by_size(others)))
    yield Plate(_pictures(sizes, line))
    heads = tuple(each.design.size for each in sizes)
    for part in size_parts(sizes):
        yield SizeTable(part.title, heads, tuple((row.what, *row.cells) for row in part.rows))


def _pictures(sizes: Sequence[Pattern], line: float) -> Figure:
    columns = len(sizes) if len(sizes) <= IN_A_ROW else (len(sizes) + 1) // 2
    room = (line - (columns - 1) * GUTTER) / columns
    widest = max(float(each.setting.width) for each in sizes)
    highest = max(float(each.setting.height) for each in sizes)
    scale = min(room / widest, TALLEST / highest)
    cells = tuple(Cell(_picture(each, scale), _named(each)) for each in sizes)
    return Figure("The sizes, all to one scale", cells, columns)


def _picture(pattern: Pattern, scale: float) -> Sheet:
    width = float(pattern.setting.width) * scale
    return top_sheet(pattern.design, pattern.blocks, pattern.setting, width, PLAIN)


def _named(pattern: Pattern) -> str:
    design, setting = pattern.design, pattern.setting
    return f"{design.size}, {rectangle(design, setting.width, setting.height)}"
