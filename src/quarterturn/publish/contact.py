"""The contact sheet of a search: each setting laid three times each way, as it is sewn, with its number and score."""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence

from quarterturn.blocks import GROUND, SHAPE, Blocks
from quarterturn.design import Design, laid
from quarterturn.geometry import Motion, Point
from quarterturn.publish.lettering import broken, shortened
from quarterturn.publish.paper import MARGIN, NOTE, PAPER_MM, PLAIN, SMALLEST, TITLE
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet, Text, Use
from quarterturn.setting.finder import Found, Selection, looked_at, measures

COPIES = 3
"""How often a setting is laid, across and down."""
COLUMNS = 3
_GAP = 6.0
_WORDS = 13.0
"""Room below each picture for its number and score."""
_CLOSING = {GROUND: 0.06, SHAPE: 0.12}
"""Each cloth is outlined this thinly in its own colour, lest what lies below show at the seams on a screen."""
_LEADING = 4.4
_PAGE = 26.0
"""Room for the number of the page, right of the title."""


def contact_sheet(design: Design, blocks: Blocks, selection: Selection) -> Sheet:
    """Return all settings of a search on one sheet, as wide as the paper of the design and as tall as it must be."""
    rows = -(-len(selection.best) // COLUMNS)
    [sheet] = _sheets(design, blocks, selection, max(1, rows), None)
    return sheet


def contact_pages(design: Design, blocks: Blocks, selection: Selection) -> tuple[Sheet, ...]:
    """Return the settings of a search on pages of the paper of the design."""
    width, height = PAPER_MM[design.house.paper]
    room = height - MARGIN - _top(selection, width)
    rows = int((room + _GAP) // (_side(width) + _WORDS + _GAP))
    return tuple(_sheets(design, blocks, selection, rows, height))


def _sheets(
    design: Design, blocks: Blocks, selection: Selection, rows: int, height: float | None
) -> Iterator[Sheet]:
    width, _ = PAPER_MM[design.house.paper]
    top, side = _top(selection, width), _side(width)
    step, cell = side + _WORDS + _GAP, side / (COPIES * selection.repeat)
    symbols = _symbols(design, blocks, selection.codes, cell)
    starts = range(0, max(1, len(selection.best)), rows * COLUMNS)
    for number, first in enumerate(starts, start=1):
        marks = list(_head(design, selection, width))
        if len(starts) > 1:
            page = f"page {number} of {len(starts)}"
            marks.append(Text(complex(width - MARGIN, MARGIN + TITLE), page, PLAIN, "end"))
        for index, found in enumerate(selection.best[first : first + rows * COLUMNS]):
            down, across = divmod(index, COLUMNS)
            corner = complex(MARGIN + across * (side + _GAP), top + down * step)
            marks += _picture(selection, found, corner, cell, symbols)
            marks += _words(first + index + 1, found, corner + complex(0, side))
        yield Sheet(
            width=width,
            height=height or top + rows * step - _GAP + MARGIN,
            marks=tuple(marks),
            title=_title(design, selection),
            alt=f"{len(selection.best)} settings, each laid {COPIES} × {COPIES} times. {looked_at(selection)[0]}",
            symbols=symbols,
        )


def _side(width: float) -> float:
    return (width - 2 * MARGIN - (COLUMNS - 1) * _GAP) / COLUMNS


def _title(design: Design, selection: Selection) -> str:
    return f"Settings of {selection.size} × {selection.size} units for {design.title}"


def _lines(selection: Selection, width: float) -> list[str]:
    return [line for said in looked_at(selection) for line in broken(said, width - 2 * MARGIN, PLAIN)]


def _top(selection: Selection, width: float) -> float:
    return MARGIN + TITLE + _LEADING * (1 + len(_lines(selection, width)))


def _head(design: Design, selection: Selection, width: float) -> Iterator[Mark]:
    title = shortened(_title(design, selection), width - 2 * MARGIN - _PAGE, TITLE, bold=True)
    yield Text(complex(MARGIN, MARGIN + TITLE), title, TITLE, bold=True)
    for number, line in enumerate(_lines(selection, width), start=1):
        yield Text(complex(MARGIN, MARGIN + TITLE + number * _LEADING + 1), line, PLAIN)


def _picture(
    selection: Selection, found: Found, corner: Point, cell: float, symbols: Container[str]
) -> Iterator[Use]:
    rows = laid(found.cells, selection.symmetry, COPIES, COPIES)
    level = 0
    while any(_symbol(unit.code, level) in symbols for row in rows for unit in row):
        for r, row in enumerate(rows):
            for c, unit in enumerate(row):
                middle = corner + complex(c + 0.5, r + 0.5) * cell
                if (symbol := _symbol(unit.code, level)) in symbols:
                    yield Use(symbol, Motion(1j**unit.turn, middle))
        level += 1


def _words(number: int, found: Found, below: Point) -> Iterator[Text]:
    total, flow, rounds, cloth, balance = measures(found.score)
    yield Text(below + 4j, f"{number}", PLAIN, bold=True)
    yield Text(below + complex(7, 4), f"score {total}", NOTE)
    yield Text(below + 8j, f"flow {flow}, rounds {rounds}, cloth {cloth}, balance {balance}", SMALLEST)


def _symbols(
    design: Design, blocks: Blocks, codes: Sequence[str], cell: float
) -> dict[str, tuple[Mark, ...]]:
    """Return each layer of each unit, about its middle at turn 0."""
    symbols: dict[str, tuple[Mark, ...]] = {}
    for code in codes:
        unit = blocks.unit(design, code)
        scale = Scale(cell / float(unit.side), complex(-cell, -cell) / 2)
        for level, layer in enumerate(unit.sewn_layers):
            colour = design.fabric(design.cloth(code, layer.part)).colour
            ink = Ink(colour, colour, _CLOSING[SHAPE if level else GROUND])
            symbols[_symbol(code, level)] = (Area(scale.region(layer.region), ink),)
    return symbols


def _symbol(code: str, level: int) -> str:
    """Return what a layer of a unit is called, counted from the ground."""
    return f"{code}-{level}" if level else f"{code}-{GROUND}"
