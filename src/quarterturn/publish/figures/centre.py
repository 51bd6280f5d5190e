"""The assembly diagram: the rows of the centre pulled apart, numbered, with their pressing arrows."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import UNIT, code_of, laid, sewn_symbols, unit_parts
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, DARK, QUIET, SMALL, SMALLEST, arrow, caption
from quarterturn.publish.figures.lines import pressing
from quarterturn.publish.figures.maps import MapPart, edges_of
from quarterturn.publish.sheet import Mark, Sheet
from quarterturn.setting import Side
from quarterturn.steps import Placed, SewLine

LEFT, RIGHT = 17.0, 15.0
LARGEST_CELL = 13.0


def centre_figure(
    pattern: Pattern, action: SewLine, lines: Mapping[str, SewLine], width: float, height: float
) -> Sheet:
    """Return the rows from the top down. `lines` holds the sewing of pairs and rows by label."""
    units = {label: made.parts for label, made in lines.items()}
    rows = [unit_parts(_pairs(part, units), units) for part in action.parts]
    columns, count = len(rows[0]), len(rows)
    share = 0.22
    across, down = edges_of(pattern, MapPart(0, 0, count, columns, whole=True))
    cell = min(
        LARGEST_CELL,
        (width - LEFT - RIGHT) / (across[-1] + columns * 0.06),
        height / (down[-1] + count * share),
    )
    gap, apart = cell * share, cell * 0.12
    marks: list[Mark] = []
    for r, (row, part) in enumerate(zip(rows, action.parts, strict=True)):
        top, deep = down[r] * cell + r * gap, (down[r + 1] - down[r]) * cell
        for c, unit in enumerate(row):
            at = complex(LEFT + across[c] * cell + (c // 2) * apart, top)
            marks.append(laid(pattern, code_of(unit), unit.turn, at, cell))
        marks += _row_label(r, part, top + deep / 2, deep)
        end = LEFT + across[-1] * cell + ((columns - 1) // 2) * apart
        press = lines[part.label].press if part.label in lines else None
        if part.label in lines:
            marks += pressing(press, complex(end + 4.5, top + deep / 2), min(2.6, deep * 0.5))
    low = down[-1] * cell + (count - 1) * gap
    marks += _downwards(action, end + 10.5, low)
    symbols = sewn_symbols(pattern, sorted({code_of(u) for row in rows for u in row}), cell)
    alt = _described(action, columns)
    return Drawing(end + 12.5, low, tuple(marks), symbols).sheet("Assembly", alt)


def _pairs(part: Placed, units: Mapping[str, Sequence[Placed]]) -> Sequence[Placed]:
    return (part,) if part.label.startswith(UNIT) else units[part.label]


def _row_label(index: int, part: Placed, middle: float, cell: float) -> list[Mark]:
    size = min(SMALL, cell * 0.62)
    if size < SMALLEST:  # rows too near for each to be numbered
        fifth = index % 5 == 4
        return [caption(complex(LEFT - 1.5, middle), str(index + 1), SMALLEST, "end")] if fifth else []
    number = caption(complex(4.5, middle), str(index + 1), size + 0.2, "end", bold=True, colour=DARK)
    kind = "" if part.label.startswith(UNIT) else part.label
    return [number, caption(complex(LEFT - 1.5, middle), kind, size, "end", colour=QUIET)]


def _downwards(action: SewLine, x: float, height: float) -> tuple[Mark, ...]:
    """Return the arrow that shows how the seams between rows are pressed."""
    if len(action.parts) < 2 or action.press is not Side.BOTTOM:
        return ()
    return arrow(complex(x, height * 0.25), complex(x, height * 0.75), ACCENT, 0.5, 2.4)


def _described(action: SewLine, columns: int) -> str:
    kinds = ", ".join(part.label for part in action.parts)
    press = "down" if action.press is Side.BOTTOM else "open"
    return (
        f"The quilt centre with its {len(action.parts)} rows of {columns} units pulled apart; from the top: {kinds}. "
        f"Seams between rows are pressed {press}."
    )
