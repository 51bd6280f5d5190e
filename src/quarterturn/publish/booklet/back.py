"""The last pages: templates, the colouring page and the colophon."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from quarterturn.proof import Pattern
from quarterturn.publish.booklet.front import LONGEST_ON_COVER
from quarterturn.publish.booklet.model import Block, Cell, Figure, Notes, Pairs, Plate, Section, Table
from quarterturn.publish.figures import colourway_figure
from quarterturn.publish.picture import LINES, top_sheet
from quarterturn.publish.wording import PLAN_HEADS, defaults, estimates, imprint, plan_rows, plans_compared

MOST_IN_COLOUR, MOST_IN_ROW = 12, 6
"""So many units stand under the colouring page, in rows; of more, the first show how one is coloured."""

ROW_ROOM, CAPTION_ROOM = 34.0, 8.0
"""Room for a row of them and for their caption, in millimetres."""


LATE = (
    "They fall off when all pieces are cut: keep them for what you make later, such as spares, or for another quilt. "
    "Mind the grain."
)


def colouring(pattern: Pattern, width: float, height: float) -> Iterator[Block]:
    """Return the line drawing of the top, to be coloured, over a row of its units in their colours."""
    yield Section("Colouring page", opens=True)
    setting = pattern.setting
    codes = tuple(setting.tally)[:MOST_IN_COLOUR]
    rows = math.ceil(len(codes) / MOST_IN_ROW)
    columns = math.ceil(len(codes) / rows) if rows else 1
    units_room = rows * ROW_ROOM + CAPTION_ROOM
    broad = min(width, (height - units_room) * float(setting.width) / float(setting.height))
    sheet = top_sheet(pattern.design, pattern.blocks, setting, broad, LINES)
    yield Plate(Figure("The setting in outline; copy it and try your own colours", (Cell(sheet),), least=0.9))
    cells = tuple(Cell(colourway_figure(pattern, code), f"unit {code}") for code in codes)
    yield Plate(Figure("Units in the colours of this quilt, enlarged", cells, columns=columns))


def colophon(pattern: Pattern, rehearsed: Sequence[str], cut_away: Sequence[str] = ()) -> Iterator[Block]:
    """Return every default, the estimates, what the rehearsal found and cut away if it was run, and the imprint."""
    yield Section("About this pattern", opens=True)
    if len(pattern.design.about) > LONGEST_ON_COVER:
        yield Notes("The quilt", tuple(pattern.design.about.splitlines()))
    yield Pairs("Imprint", imprint(pattern))
    yield Pairs("Made by these measures", defaults(pattern), columns=2)
    yield Notes("Estimates", estimates(pattern))
    yield Table(PLAN_HEADS, tuple(plan_rows(pattern)), (1.1, 1.7, 4.2, 2.1), "How good the plans are")
    yield Notes("What is said of the plans", plans_compared(pattern))
    if rehearsed:
        yield Notes("Rehearsed on paper", tuple(rehearsed))
    if cut_away:
        yield Notes("Scraps that fall off where the ground is cut away", (*cut_away, LATE))
