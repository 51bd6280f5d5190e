"""Read the map: a line for each row, and for each unit its code and its quarter turns."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable

from quarterturn.design.keys import dotted
from quarterturn.design.limits import MOST_ROWS
from quarterturn.design.model import Cell
from quarterturn.design.notes import Notes, did_you_mean

_CELL = re.compile(r"([a-z]{1,2})([0-9]*)")
MAP = "setting.map"


def read_map(text: str, codes: Iterable[str], notes: Notes) -> tuple[tuple[Cell, ...], ...]:
    """Return the rows of the map; empty where it cannot be laid, which is noted at ``setting.map.<row>``."""
    rows = [line.split() for line in text.splitlines() if line.strip()]
    if not rows:
        notes.add("empty-map", MAP, "The map has no unit.", "Write a line for each row, such as a2 a3 a2 a3.")
        return ()
    if len(rows) > MOST_ROWS or max(map(len, rows)) > MOST_ROWS:
        notes.add("map-too-large", MAP, *_too_large(len(rows), max(map(len, rows))))
        return ()
    known = list(codes)
    cells = [
        [_read_cell(word, r, c, known, notes) for c, word in enumerate(row)] for r, row in enumerate(rows)
    ]
    _even(rows, notes)
    return tuple(tuple(cell for cell in row if cell) for row in cells)


def _too_large(down: int, across: int) -> tuple[str, str]:
    return (
        f"The map has {down} rows, and up to {across} units in a row.",
        f"Keep to {MOST_ROWS} each way; across and down repeat a map.",
    )


def _even(rows: list[list[str]], notes: Notes) -> None:
    """Note each row that is longer or shorter than most rows are."""
    wanted = Counter(map(len, rows)).most_common(1)[0][0]
    for index, row in enumerate(rows):
        if len(row) != wanted:
            notes.add(
                "ragged-map",
                dotted("setting", "map", index),
                f"Row {index + 1} of the map has {len(row)} units; most rows have {wanted}.",
                f"Give every row {wanted} units, with a space between units.",
                f"row {index + 1}",
            )


def _read_cell(word: str, row: int, column: int, codes: list[str], notes: Notes) -> Cell | None:
    found = _CELL.fullmatch(word)
    if found and found[1] in codes and found[2] in ("", "0", "1", "2", "3"):
        return Cell(found[1], int(found[2] or 0))
    shown = word if len(word) <= 20 else word[:19] + "…"
    shown = "".join(c if c.isprintable() else "�" for c in shown)
    code, sentence, remedy = _fault(shown, found, codes)
    notes.add(code, dotted("setting", "map", row), sentence, remedy, f"row {row + 1}, unit {column + 1}")
    return None


def _fault(word: str, found: re.Match[str] | None, codes: list[str]) -> tuple[str, str, str]:
    if not found:
        return (
            "bad-cell",
            f"`{word}` is not a unit of the map.",
            "Write the colourway's code and the quarter turns, such as a2.",
        )
    if found[1] not in codes:
        return "unknown-code", f"There is no colourway `{found[1]}`.", did_you_mean(found[1], codes)
    return (
        "unknown-turn",
        f"`{word}` asks for {found[2]} quarter turns.",
        "A turn is 0, 1, 2 or 3 quarter turns clockwise.",
    )
