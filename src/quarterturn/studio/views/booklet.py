"""The booklet: its pages as they will print, and the choices of house style with the keys that change them."""

from __future__ import annotations

import struct

from quarterturn.design import Severity
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.printing import source_files
from quarterturn.publish.release import PARTS
from quarterturn.publish.typesetting import typeset
from quarterturn.studio.stages import Made
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
    """The booklet: its paper in millimetres, its pages, its house style, and what makes it a draft."""

    revision: int
    width: float
    height: float
    pages: tuple[PageView, ...]
    choices: tuple[ChoiceView, ...]
    draft: tuple[FindingView, ...]
    parts: tuple[str, ...]
    """What a publish makes, by the names of its parts."""


def booklet_view(revision: int, made: Made) -> BookletView:
    """Return the booklet. Raises UnmadeError where something stops it, and UnprintableTextError."""
    from quarterturn.publish.paper import PAPER_MM

    design = made.design
    pages = booklet_pages(made, STEP * 3)
    width, height = PAPER_MM[design.house.paper]
    stops = tuple(found for found in made.findings if found.severity is Severity.STOPS)
    house = design.house
    return BookletView(
        revision=revision,
        width=width,
        height=height,
        pages=tuple(PageView(number=number) for number in range(1, len(pages) + 1)),
        choices=(
            ChoiceView(key="house.paper", value=house.paper.value, between=("letter", "a4")),
            ChoiceView(key="house.sixteenths", value=house.sixteenths, between=()),
            ChoiceView(key="house.currency", value=house.currency, between=()),
            ChoiceView(key="house.skill", value=house.skill, between=()),
            ChoiceView(
                key="making.pressing", value=design.making.pressing.value, between=("opposed", "open")
            ),
            ChoiceView(key="about", value=design.about, between=()),
        ),
        draft=tuple(map(finding_view, stops)),
        parts=tuple(part.name for part in PARTS),
    )


def booklet_pages(made: Made, width: int) -> tuple[bytes, ...]:
    """Return all pages as pictures in PNG of about so many pixels across, at least as many.

    Nothing is claimed of a rehearsal: that is for the published booklet.
    Raises UnmadeError where something stops it, and UnprintableTextError for text that the fonts lack.
    """
    wide = min(max(-(-width // STEP) * STEP, SMALLEST), LARGEST)
    size = made.size()
    others = [each for each in made.sizes if each is not size]

    def pages() -> tuple[bytes, ...]:
        patterns = [each.pattern() for each in others]
        document = assemble(size.pattern(), size.design.house.paper, others=patterns)
        per_inch = wide / (document.width / 25.4)
        return tuple(typeset(source_files(document), form="png", pixels_per_inch=per_inch))

    return size.once(f"pages {wide}", pages)


def pixels_of(page: bytes) -> tuple[int, int]:
    """Return the width and height of a PNG in pixels (ISO/IEC 15948, 11.2.2: the first chunk)."""
    width, height = struct.unpack(">II", page[16:24])
    return int(width), int(height)
