"""The unit map: which unit lies where, and how it is turned.

A map is split into parts when its cells would become too small to be lettered legibly; a setting that repeats
is shown once large, with an overview of how the repeat is laid.
"""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass

from quarterturn.geometry import Region, rectangle
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import code_of, laid, lettered, sewn_symbols
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, LABEL, QUIET, SMALLEST, caption
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.steps import LayOut, Placed

SMALLEST_CELL = 4.0
"""Millimetres: a name of three letters in the smallest lettering fits."""
LARGEST_CELL = 17.0
SHORT_NAME = 3
"""Letters of a name that is never longer than its cell."""
ROOM = 6.0
"""For the numbers of rows and columns."""


@dataclass(frozen=True, slots=True)
class MapPart:
    """A rectangle of cells, counted from 0; `whole` where it is the whole top."""

    top: int
    left: int
    rows: int
    columns: int
    whole: bool

    @property
    def title(self) -> str:
        """Return which rows and columns it shows."""
        return f"rows {self.top + 1} to {self.top + self.rows}, columns {self.left + 1} to {self.left + self.columns}"


def map_parts(
    rows: int, columns: int, width: float, height: float, letters: int = SHORT_NAME
) -> tuple[MapPart, ...]:
    """Return the parts, nearly equal, whose cells can take names of so many letters in a room of width × height."""
    least = SMALLEST_CELL * max(1.0, letters / SHORT_NAME)
    most_columns = max(1, int((width - ROOM) / least))
    most_rows = max(1, int((height - ROOM) / least))
    down, across = _runs(rows, most_rows), _runs(columns, most_columns)
    whole = len(down) == len(across) == 1
    return tuple(MapPart(top, left, r, c, whole) for top, r in down for left, c in across)


def _runs(count: int, most: int) -> list[tuple[int, int]]:
    """Cut a count into the fewest runs of at most `most`, as equal as can be: start and length of each."""
    runs = math.ceil(count / most)
    edges = [round(k * count / runs) for k in range(runs + 1)]
    return [(a, b - a) for a, b in itertools.pairwise(edges)]


def map_figure(pattern: Pattern, layout: LayOut, part: MapPart, width: float, height: float) -> Sheet:
    """Return the map of a part, as large as the room allows."""
    cell = min(LARGEST_CELL, (width - ROOM - 2) / part.columns, (height - ROOM - 2) / part.rows)
    size = max(SMALLEST, min(4.2, cell * 0.36 * min(1.0, SHORT_NAME / name_letters(layout))))
    marks: list[Mark] = [*_numbers(part, cell)]
    named: list[Mark] = []
    shown = [
        row[part.left : part.left + part.columns] for row in layout.rows[part.top : part.top + part.rows]
    ]
    for r, row in enumerate(shown):
        for c, unit in enumerate(row):
            at = complex(ROOM + c * cell, ROOM + r * cell)
            marks.append(laid(code_of(unit), unit.turn, at, cell))
            named.append(lettered(pattern, code_of(unit), unit.turn, at, cell, size))
    symbols = sewn_symbols(pattern, sorted({code_of(u) for row in shown for u in row}), cell)
    title = "Unit map" if part.whole else f"Unit map, {part.title}"
    drawing = Drawing(ROOM + cell * part.columns, ROOM + cell * part.rows, (*marks, *named), symbols)
    return drawing.sheet(title, f"{title}. {_read_out(shown, part)}")


def name_letters(layout: LayOut) -> int:
    """Return the letters of the longest name of a unit with its turn."""
    return 1 + max(len(code_of(unit)) for row in layout.rows for unit in row)


def _numbers(part: MapPart, cell: float) -> list[Mark]:
    step = 1 if cell >= SMALLEST_CELL else 5
    size = max(SMALLEST, min(3.2, cell * 0.36))
    rows = [
        caption(
            complex(ROOM - 1.2, ROOM + (k + 0.5) * cell), str(part.top + k + 1), size, "end", colour=QUIET
        )
        for k in range(0, part.rows, step)
    ]
    columns = [
        caption(complex(ROOM + (k + 0.5) * cell, ROOM - 2), str(part.left + k + 1), size, colour=QUIET)
        for k in range(0, part.columns, step)
    ]
    return [*rows, *columns]


def _read_out(rows: list[tuple[Placed, ...]], part: MapPart) -> str:
    """Return the map row by row in words."""
    said = (
        f"Row {part.top + r + 1}: {' '.join(f'{code_of(u)}{u.turn}' for u in row)}."
        for r, row in enumerate(rows)
    )
    return " ".join(said)


def overview_figure(pattern: Pattern, layout: LayOut, parts: tuple[MapPart, ...], width: float) -> Sheet:
    """Return the whole centre small, with the parts outlined and numbered."""
    rows, columns = len(layout.rows), len(layout.rows[0])
    cell = width / columns
    marks: list[Mark] = [
        laid(code_of(unit), unit.turn, complex(c * cell, r * cell), cell)
        for r, row in enumerate(layout.rows)
        for c, unit in enumerate(row)
    ]
    for number, part in enumerate(parts, start=1):
        marks += _outlined_part(part, number, cell)
    symbols = sewn_symbols(pattern, pattern.setting.tally, cell)
    said = "; ".join(f"{n}, {part.title}" for n, part in enumerate(parts, start=1))
    alt = f"The quilt centre, with the {len(parts)} parts of the unit map outlined: {said}."
    return Drawing(width, cell * rows, tuple(marks), symbols).sheet("Overview of the unit map", alt)


def _outlined_part(part: MapPart, number: int, cell: float) -> tuple[Mark, ...]:
    left, top = part.left * cell, part.top * cell
    right, bottom = left + part.columns * cell, top + part.rows * cell
    at = complex((left + right) / 2, (top + bottom) / 2)
    plate = rectangle(at.real - 3, at.imag - 3, at.real + 3, at.imag + 3)
    return (
        Area(Region((rectangle(left, top, right, bottom),)), Ink(stroke=ACCENT, width=0.6)),
        Area(Region((plate,)), Ink(fill="#ffffff", stroke=ACCENT, width=0.3)),
        caption(at, str(number), LABEL + 0.6, bold=True),
    )
