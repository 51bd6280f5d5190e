"""The booklet: its pages as they will print, and the choices of house style with the keys that change them.

What stands before the work is typeset by itself first, so that there is something to see while the rest is made.
"""

from __future__ import annotations

import struct
from dataclasses import replace

from quarterturn.design import Severity
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.model import CutList, Document, Section
from quarterturn.publish.booklet.printing import source_files
from quarterturn.publish.release import PARTS
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.templates import template_sheets
from quarterturn.publish.typesetting import typeset
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.views.model import FindingView, View, finding_view

SMALLEST, LARGEST = 120, 2400
"""Pixels across that a page may be asked for."""
STEP = 120
"""Widths are brought up to whole steps, so that a page is not typeset for each width of a window."""


class ChoiceView(View):
    """A choice of house style: the key that puts it, what it is now, and between what there is to choose, if words."""

    key: str
    value: str | bool
    between: tuple[str, ...]


class PageView(View):
    """A page by its number from 1."""

    number: int


class BookletView(View):
    """The booklet: its paper in millimetres, its pages, its house style, and what makes it a draft.

    `whole` is false where only the pages before the work are told.
    """

    revision: int
    whole: bool
    width: float
    height: float
    pages: tuple[PageView, ...]
    choices: tuple[ChoiceView, ...]
    draft: tuple[FindingView, ...]
    parts: tuple[str, ...]
    """What a publish makes, by the names of its parts."""


class TemplateView(View):
    """A page of templates at its true size, as SVG, and what it shows in words."""

    number: int
    svg: str
    alt: str


class TemplatesView(View):
    """The pages of templates, and their paper in millimetres."""

    revision: int
    width: float
    height: float
    pages: tuple[TemplateView, ...]


def booklet_view(revision: int, made: Made, *, opening: bool = False) -> BookletView:
    """Return the booklet, or only what stands before the work.

    Raises UnmadeError where something stops it, and UnprintableTextError.
    """
    from quarterturn.publish.paper import PAPER_MM

    design = made.design
    pages = booklet_pages(made, STEP * 3, opening=opening)
    width, height = PAPER_MM[design.house.paper]
    stops = tuple(found for found in made.findings if found.severity is Severity.STOPS)
    house = design.house
    return BookletView(
        revision=revision,
        whole=not opening,
        width=width,
        height=height,
        pages=tuple(PageView(number=number) for number in range(1, len(pages) + 1)),
        choices=(
            ChoiceView(key="units", value=design.units.value, between=("inch", "metric")),
            ChoiceView(key="house.paper", value=house.paper.value, between=("letter", "a4")),
            ChoiceView(key="house.sixteenths", value=house.sixteenths, between=()),
            ChoiceView(key="house.currency", value=house.currency, between=()),
            ChoiceView(key="house.skill", value=house.skill, between=()),
            ChoiceView(
                key="making.pressing", value=design.making.pressing.value, between=("opposed", "open")
            ),
            ChoiceView(key="title", value=design.title, between=()),
            ChoiceView(key="maker", value=design.maker, between=()),
            ChoiceView(key="about", value=design.about, between=()),
            ChoiceView(key="number", value=design.number, between=()),
            ChoiceView(key="version", value=design.version, between=()),
            ChoiceView(key="date", value=design.date, between=()),
            ChoiceView(key="contact", value=design.contact, between=()),
        ),
        draft=tuple(map(finding_view, stops)),
        parts=tuple(part.name for part in PARTS),
    )


def templates_view(revision: int, size: OneSize) -> TemplatesView:
    """Return the pages of templates. Raises UnmadeError where something stops it."""
    from quarterturn.publish.paper import PAPER_MM

    paper = size.design.house.paper
    width, height = PAPER_MM[paper]
    pages = size.once("templates", lambda: _templates(size.pattern()))
    return TemplatesView(revision=revision, width=width, height=height, pages=pages)


def _templates(pattern: Pattern) -> tuple[TemplateView, ...]:
    design = pattern.design
    sheets = template_sheets(design, pattern.blocks, pattern.bill, design.house.paper)
    return tuple(
        TemplateView(number=number, svg=sheet_svg(sheet, f"t{number}-"), alt=sheet.alt or "")
        for number, sheet in enumerate(sheets, 1)
    )


def booklet_pages(made: Made, width: int, *, opening: bool = False) -> tuple[bytes, ...]:
    """Return all pages as pictures in PNG of about so many pixels across, at least as many.

    The opening is what stands before the work: the same pages, but that their feet do not say how many there are.

    Nothing is claimed of a rehearsal: that is for the published booklet.
    Raises UnmadeError where something stops it, and UnprintableTextError for text that the fonts lack.
    """
    wide = min(max(-(-width // STEP) * STEP, SMALLEST), LARGEST)
    size = made.size()

    def pages() -> tuple[bytes, ...]:
        whole = _document(made, size)
        document = _opening(whole) if opening else whole
        inputs = {"opening": "true"} if opening else {}
        per_inch = wide / (document.width / 25.4)
        printed = typeset(source_files(document), form="png", inputs=inputs, pixels_per_inch=per_inch)
        return tuple(printed[:-1] if opening else printed)

    return size.once(f"{'opening' if opening else 'pages'} {wide}", pages)


def _document(made: Made, size: OneSize) -> Document:
    others = [each for each in made.sizes if each is not size]

    def document() -> Document:
        patterns = [each.pattern() for each in others]
        return assemble(size.pattern(), size.design.house.paper, others=patterns)

    return size.once("document", document)


def _opening(document: Document) -> Document:
    """Return what stands before the work, whose last page the work goes on to fill."""
    blocks = document.blocks
    first = next((k for k, block in enumerate(blocks) if isinstance(block, CutList)), len(blocks))
    heads = [k for k in range(first) if isinstance(blocks[k], Section)]
    return replace(document, blocks=blocks[: heads[-1]]) if heads else document


def pixels_of(page: bytes) -> tuple[int, int]:
    """Return the width and height of a PNG in pixels (ISO/IEC 15948, 11.2.2: the first chunk)."""
    width, height = struct.unpack(">II", page[16:24])
    return int(width), int(height)
