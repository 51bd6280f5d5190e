"""Put the booklet together: all blocks in order, entries numbered through, figures in order of mention."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import count
from typing import TypeAlias

from quarterturn.design import Paper
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import back, front, making, sections, sizes, top
from quarterturn.publish.booklet.curve import sewn_curve
from quarterturn.publish.booklet.model import (
    Block,
    CutList,
    Document,
    Entry,
    Figure,
    FullPage,
    Plate,
)
from quarterturn.publish.paper import PAPER_MM
from quarterturn.publish.templates import template_sheets
from quarterturn.publish.wording import size_named, unit_grid

Part: TypeAlias = Callable[[int], Iterable[Block]]
"""Makes a part of the booklet whose entries are numbered from a first one on."""

MARGIN = 19.0
MAP_ROOM, ASSEMBLY_ROOM, COVER_ROOM, COLOURING_ROOM = 74.0, 62.0, 112.0, 58.0
"""Millimetres of a page's height that are not free for the large drawing on it."""


def assemble(
    pattern: Pattern,
    paper: Paper,
    rehearsed: Sequence[str] = (),
    draft: str = "",
    others: Sequence[Pattern] = (),
    cut_away: Sequence[str] = (),
) -> Document:
    """Return the booklet of a pattern on a paper; `rehearsed` says what the rehearsal found, if it was run.

    `others` are the pattern in its other sizes, each of which gets a column. `cut_away` says which scraps fall off
    behind shapes.
    """
    width, height = PAPER_MM[paper]
    line = width - 2 * MARGIN
    work = list(_work(pattern, line, height))
    printed = [text for block in work for text in _texts(block)]
    blocks: list[Block] = [
        replace(front.cover(pattern, line, height - COVER_ROOM), draft=draft),
        *sizes.side_by_side(pattern, others, line),
        *front.requirements(pattern),
        *front.before_you_begin(pattern, printed),
        *work,
        *sewn_curve(pattern),
        *(FullPage(sheet) for sheet in template_sheets(pattern.design, pattern.blocks, pattern.bill, paper)),
        *back.colouring(pattern, line, height - COLOURING_ROOM),
        *back.colophon(pattern, rehearsed, cut_away),
    ]
    design = pattern.design
    version = f"version {design.version}" if design.version else ""
    size = size_named(pattern)
    foot = " · ".join(part for part in (design.title, size, version, "draft" if draft else "") if part)
    return Document(design.title, design.maker, foot, width, height, MARGIN, numbered(blocks))


def _work(pattern: Pattern, line: float, height: float) -> Iterator[Block]:
    """Return the parts that tell the steps, their entries numbered through."""
    parts: tuple[Part, ...] = (
        lambda first: making.cutting(pattern, line, first),
        lambda first: making.shapes(pattern, first),
        lambda first: making.fusing(pattern, first),
        lambda first: making.units(pattern, first),
        lambda first: sections.panels(pattern, line - 12, first),
        *_assembly(pattern, line, height),
        lambda first: sections.borders(pattern, first),
        lambda first: top.finishing(pattern, line - 12, first),
    )
    first = 1
    for part in parts:
        blocks = tuple(part(first))
        yield from blocks
        first += sum(_entry_count(block) for block in blocks)


def _assembly(pattern: Pattern, line: float, height: float) -> tuple[Part, ...]:
    """Return the parts that put the quilt centre together: a map of units, or a layout of sections."""
    map_room, room = height - MAP_ROOM, height - ASSEMBLY_ROOM

    def inner(first: int) -> Iterable[Block]:
        return sections.sections(pattern, line - 12, room, first)

    if unit_grid(pattern.setting.centre):
        return (
            lambda first: top.unit_map(pattern, line, map_room, first),
            inner,
            lambda first: top.assembly(pattern, line - 12, room, first),
        )
    return (
        lambda _: sections.layout(pattern, line, map_room),
        inner,
        lambda first: sections.assembly(pattern, line - 12, room, first),
    )


def _entry_count(block: Block) -> int:
    if isinstance(block, CutList):
        return len(block.lines)
    return int(isinstance(block, Entry))


def _texts(block: Block) -> Iterator[str]:
    """Return the sentences of a part of the work, in which abbreviations are looked for."""
    match block:
        case CutList():
            yield from (line.text for line in block.lines)
        case Entry():
            yield from (*block.sentences, *block.lines)
        case _:
            return


def numbered(blocks: Iterable[Block]) -> tuple[Block, ...]:
    """Return the blocks with their figures numbered in order."""
    numbers = count(1)

    def number(figure: Figure) -> Figure:
        return replace(figure, number=next(numbers))

    def all_numbered(block: Block) -> Block:
        match block:
            case CutList() | Plate():
                return replace(block, figure=number(block.figure))
            case Entry():
                return replace(block, figures=tuple(number(f) for f in block.figures))
            case _:
                return block

    return tuple(all_numbered(block) for block in blocks)
