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
from quarterturn.publish.figures.cells import code_of, laid, lettered, longest_side, sewn_symbols
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, LABEL, QUIET, SMALLEST, caption
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.publish.wording import unit_grid
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
    across, down = edges_of(pattern, part)
    cell = min(LARGEST_CELL, (width - ROOM - 2) / across[-1], (height - ROOM - 2) / down[-1])
    xs, ys = [ROOM + x * cell for x in across], [ROOM + y * cell for y in down]
    least = min(b - a for edges in (xs, ys) for a, b in itertools.pairwise(edges))
    size = max(SMALLEST, min(4.2, least * 0.36 * min(1.0, SHORT_NAME / name_letters(layout))))
    marks: list[Mark] = [*_numbers(part, xs, ys)]
    named: list[Mark] = []
    shown = [
        row[part.left : part.left + part.columns] for row in layout.rows[part.top : part.top + part.rows]
    ]
    for r, row in enumerate(shown):
        for c, unit in enumerate(row):
            at = complex(xs[c], ys[r])
            marks.append(laid(pattern, code_of(unit), unit.turn, at, cell))
            named.append(lettered(pattern, code_of(unit), unit.turn, at, cell, size))
    symbols = sewn_symbols(pattern, sorted({code_of(u) for row in shown for u in row}), cell)
    title = "Unit map" if part.whole else f"Unit map, {part.title}"
    drawing = Drawing(xs[-1], ys[-1], (*marks, *named), symbols)
    return drawing.sheet(title, f"{title}. {_read_out(shown, part)}")


def edges_of(pattern: Pattern, part: MapPart) -> tuple[list[float], list[float]]:
    """Return where columns and rows of a part begin and end, in sides of the longest unit."""
    grid = unit_grid(pattern.setting.centre)
    assert grid is not None
    longest = max(longest_side(pattern, name) for name in pattern.setting.tally)
    widths = [child.width for child in grid.rows[0]][part.left : part.left + part.columns]
    heights = [row[0].height for row in grid.rows][part.top : part.top + part.rows]
    across, down = ([float(side) / longest for side in sides] for sides in (widths, heights))
    return [*itertools.accumulate(across, initial=0.0)], [*itertools.accumulate(down, initial=0.0)]


def name_letters(layout: LayOut) -> int:
    """Return the letters of the longest name of a unit with its turn."""
    return 1 + max(len(code_of(unit)) for row in layout.rows for unit in row)


def _numbers(part: MapPart, xs: list[float], ys: list[float]) -> list[Mark]:
    cell = min(b - a for edges in (xs, ys) for a, b in itertools.pairwise(edges))
    step = 1 if cell >= SMALLEST_CELL else 5
    size = max(SMALLEST, min(3.2, cell * 0.36))
    rows = [
        caption(
            complex(ROOM - 1.2, (ys[k] + ys[k + 1]) / 2), str(part.top + k + 1), size, "end", colour=QUIET
        )
        for k in range(0, part.rows, step)
    ]
    columns = [
        caption(complex((xs[k] + xs[k + 1]) / 2, ROOM - 2), str(part.left + k + 1), size, colour=QUIET)
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
    across, down = edges_of(pattern, MapPart(0, 0, len(layout.rows), len(layout.rows[0]), whole=True))
    cell = width / across[-1]
    xs, ys = [x * cell for x in across], [y * cell for y in down]
    marks: list[Mark] = [
        laid(pattern, code_of(unit), unit.turn, complex(xs[c], ys[r]), cell)
        for r, row in enumerate(layout.rows)
        for c, unit in enumerate(row)
    ]
    for number, part in enumerate(parts, start=1):
        marks += _outlined_part(part, number, xs, ys)
    symbols = sewn_symbols(pattern, pattern.setting.tally, cell)
    said = "; ".join(f"{n}, {part.title}" for n, part in enumerate(parts, start=1))
    alt = f"The quilt centre, with the {len(parts)} parts of the unit map outlined: {said}."
    return Drawing(width, ys[-1], tuple(marks), symbols).sheet("Overview of the unit map", alt)


def _outlined_part(part: MapPart, number: int, xs: list[float], ys: list[float]) -> tuple[Mark, ...]:
    left, top = xs[part.left], ys[part.top]
    right, bottom = xs[part.left + part.columns], ys[part.top + part.rows]
    at = complex((left + right) / 2, (top + bottom) / 2)
    plate = rectangle(at.real - 3, at.imag - 3, at.real + 3, at.imag + 3)
    return (
        Area(Region((rectangle(left, top, right, bottom),)), Ink(stroke=ACCENT, width=0.6)),
        Area(Region((plate,)), Ink(fill="#ffffff", stroke=ACCENT, width=0.3)),
        caption(at, str(number), LABEL + 0.6, bold=True),
    )
