"""Put the booklet together: all blocks in order, entries numbered through, figures in order of mention."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import count

from quarterturn.design import Paper
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import back, front, making, top
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

MARGIN = 19.0
MAP_ROOM, ASSEMBLY_ROOM, COVER_ROOM, COLOURING_ROOM = 74.0, 62.0, 112.0, 58.0
"""Millimetres of a page's height that are not free for the large drawing on it."""


def assemble(pattern: Pattern, paper: Paper, rehearsed: Sequence[str] = (), draft: str = "") -> Document:
    """Return the booklet of a pattern on a paper; `rehearsed` says what the rehearsal found, if it was run."""
    width, height = PAPER_MM[paper]
    line = width - 2 * MARGIN
    work = list(_work(pattern, line, height))
    printed = [text for block in work for text in _texts(block)]
    blocks: list[Block] = [
        replace(front.cover(pattern, line, height - COVER_ROOM), draft=draft),
        *front.requirements(pattern),
        *front.before_you_begin(pattern, printed),
        *work,
        *sewn_curve(pattern),
        *(FullPage(sheet) for sheet in template_sheets(pattern.design, pattern.blocks, pattern.bill, paper)),
        *back.colouring(pattern, line, height - COLOURING_ROOM),
        *back.colophon(pattern, rehearsed),
    ]
    design = pattern.design
    version = f"version {design.version}" if design.version else ""
    foot = " · ".join(part for part in (design.title, version, "draft" if draft else "") if part)
    return Document(design.title, design.maker, foot, width, height, MARGIN, numbered(blocks))


def _work(pattern: Pattern, line: float, height: float) -> Iterator[Block]:
    """Return the parts that tell the steps, their entries numbered through."""
    parts = (
        lambda first: making.cutting(pattern, line, first),
        lambda first: making.shapes(pattern, first),
        lambda first: making.fusing(pattern, first),
        lambda first: making.units(pattern, first),
        lambda first: top.unit_map(pattern, line, height - MAP_ROOM, first),
        lambda first: top.assembly(pattern, line - 12, height - ASSEMBLY_ROOM, first),
        lambda first: top.borders(pattern, first),
        lambda first: top.finishing(pattern, first),
    )
    first = 1
    for part in parts:
        blocks = tuple(part(first))
        yield from blocks
        first += sum(_entry_count(block) for block in blocks)


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
