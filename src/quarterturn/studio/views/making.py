"""Making: the entries of the booklet one by one, large, to be ticked off beside the sewing machine.

An entry is known by what it says, so that ticks stay with entries that a change of the design leaves as they were.
"""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Collection, Iterable, Iterator

from quarterturn.proof import Pattern
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.model import Block, CutLine, CutList, Entry, Figure, Plate, Section
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.wording import cautions, cautions_of
from quarterturn.steps import Chapter, Step
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View


class DrawingView(View):
    """A drawing of a figure as SVG, what it shows in words, and the line under it."""

    svg: str
    alt: str
    text: str


class FigureView(View):
    """A figure of the booklet."""

    number: int
    caption: str
    drawings: tuple[DrawingView, ...]


class PileView(View):
    """So many pieces of a label."""

    label: str
    count: int


class EntryView(View):
    """Something to do: its words, its figures, and which pieces go in and come out."""

    id: str
    number: int
    title: str
    sentences: tuple[str, ...]
    lines: tuple[str, ...]
    figures: tuple[FigureView, ...]
    uses: tuple[PileView, ...]
    makes: tuple[PileView, ...]
    ticked: bool


class ChapterView(View):
    """A part of the work, the figures that belong to all of it, and what to take care of with its tools."""

    title: str
    cautions: tuple[str, ...]
    entries: tuple[EntryView, ...]
    figures: tuple[FigureView, ...]


class MakingView(View):
    """The work in order, how much of it is ticked, and the piles that lie ready when all that is ticked is done."""

    revision: int
    size: str
    chapters: tuple[ChapterView, ...]
    cautions: tuple[str, ...]
    entries: int
    done: int
    ready: tuple[PileView, ...]


def making_view(revision: int, size: OneSize, ticked: Collection[str] = ()) -> MakingView:
    """Return the work of a size, ticked by the ids of its entries. Raises UnmadeError where something stops it."""
    pattern = size.pattern()
    chapters = size.once("making", lambda: tuple(_chapters(pattern)))
    chapters = tuple(_ticked(chapter, ticked) for chapter in chapters)
    entries = [entry for chapter in chapters for entry in chapter.entries]
    return MakingView(
        revision=revision,
        size=size.design.size,
        chapters=chapters,
        cautions=cautions(pattern),
        entries=len(entries),
        done=sum(entry.ticked for entry in entries),
        ready=_ready(entries),
    )


def _ticked(chapter: ChapterView, ticked: Collection[str]) -> ChapterView:
    entries = (entry.model_copy(update={"ticked": entry.id in ticked}) for entry in chapter.entries)
    return chapter.model_copy(update={"entries": tuple(entries)})


def _ready(entries: Iterable[EntryView]) -> tuple[PileView, ...]:
    """Return what lies on the table when the ticked entries are done: what they make, less what they use."""
    piles = Counter[str]()
    for entry in entries:
        if entry.ticked:
            piles.update({pile.label: pile.count for pile in entry.makes})
            piles.subtract({pile.label: pile.count for pile in entry.uses})
    return tuple(PileView(label=label, count=count) for label, count in piles.items() if count > 0)


def _chapters(pattern: Pattern) -> Iterator[ChapterView]:
    document = assemble(pattern, pattern.design.house.paper)
    steps = {step.number: step for step in pattern.steps.steps}
    known = Counter[str]()
    for title, blocks in _parts(document.blocks):
        entries = tuple(entry for block in blocks for entry in _entries(block, steps, known))
        if entries:
            figures = tuple(_figure(block.figure) for block in blocks if isinstance(block, Plate))
            told = cautions_of(_work(blocks, steps))
            yield ChapterView(title=title, cautions=told, entries=entries, figures=figures)


def _parts(blocks: Iterable[Block]) -> Iterator[tuple[str, list[Block]]]:
    """Return the parts of the booklet by their headings."""
    title, part = "", list[Block]()
    for block in blocks:
        if isinstance(block, Section):
            yield title, part
            title, part = block.title, []
        else:
            part.append(block)
    yield title, part


def _work(blocks: Iterable[Block], steps: dict[int, Step]) -> Iterator[Chapter]:
    """Return of which kinds the work in some blocks is, in the order of the work."""
    for block in blocks:
        numbered = block.lines if isinstance(block, CutList) else (block,)
        for each in numbered:
            if isinstance(each, CutLine | Entry):
                yield from (step.chapter for step in _of(each.steps, steps))


def _entries(block: Block, steps: dict[int, Step], known: Counter[str]) -> Iterator[EntryView]:
    if isinstance(block, CutList):
        for k, line in enumerate(block.lines):
            figures = (block.figure,) if k == 0 else ()
            yield _entry(line.number, block.title, (line.text,), (), figures, _of(line.steps, steps), known)
    elif isinstance(block, Entry):
        own = _of(block.steps, steps)
        yield _entry(block.number, block.title, block.sentences, block.lines, block.figures, own, known)


def _of(numbers: Iterable[int], steps: dict[int, Step]) -> list[Step]:
    return [steps[number] for number in numbers]


def _entry(
    number: int,
    title: str,
    sentences: tuple[str, ...],
    lines: tuple[str, ...],
    figures: Iterable[Figure],
    steps: list[Step],
    known: Counter[str],
) -> EntryView:
    words = "\n".join((title, *sentences, *lines))
    known[words] += 1
    uses, makes = _piles(steps)
    return EntryView(
        id=hashlib.sha256(f"{words}\n{known[words]}".encode()).hexdigest()[:16],
        number=number,
        title=title,
        sentences=sentences,
        lines=lines,
        figures=tuple(_figure(figure) for figure in figures),
        uses=uses,
        makes=makes,
        ticked=False,
    )


def _piles(steps: Iterable[Step]) -> tuple[tuple[PileView, ...], tuple[PileView, ...]]:
    """Return what some steps together take from the table and leave on it."""
    change = Counter[str]()
    for step in steps:
        change.subtract({pile.label: 0 for pile in step.uses})
        for pile in step.uses:
            change[pile.label] -= pile.count
        for product in step.makes:
            change[product.label] += product.count
    uses = tuple(PileView(label=label, count=-count) for label, count in change.items() if count < 0)
    makes = tuple(PileView(label=label, count=count) for label, count in change.items() if count > 0)
    return uses, makes


def _figure(figure: Figure) -> FigureView:
    return FigureView(
        number=figure.number,
        caption=figure.caption,
        drawings=tuple(
            DrawingView(
                svg=sheet_svg(cell.sheet, f"f{figure.number}-{k}-"), alt=cell.sheet.alt or "", text=cell.text
            )
            for k, cell in enumerate(figure.cells)
        ),
    )
