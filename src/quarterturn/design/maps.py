"""Read the map: a line for each row, and for each unit its code and its quarter turns."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Mapping

from quarterturn.design.keys import dotted
from quarterturn.design.limits import MOST_ROWS
from quarterturn.design.model import Cell, StraightSet, Symmetry
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.measure import show_count

_CELL = re.compile(r"([a-z]{1,2})(?:-([a-z]+))?([0-9]*)")
_NUMBERED = re.compile(r"p[a-z]")
"""Pieces of cuts that leave neither halves nor quarters: pa, pb …"""
QUARTERS = ("tl", "tr", "br", "bl")
"""The quarters of a master, clockwise from the top left."""
HALVES = ("lh", "rh", "th", "bh")
"""The halves of a master that is cut once: left and right, or top and bottom."""
TRIANGLES = ("tt", "rt", "bt", "lt")
"""The pieces round two slanting cuts, clockwise from the top."""
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
    _even(rows, notes)
    words = Counter(word for row in rows for word in row)
    cells = {word: _cell(word, known) for word in words}
    if None in cells.values():
        _note_words(rows, cells, words, known, notes)
        return ()
    return tuple(tuple(cell for word in row if (cell := cells[word])) for row in rows)


def check_symmetry(setting: StraightSet, notes: Notes) -> None:
    """Note a map that cannot be laid as its symmetry says, or a symmetry that says nothing since it is laid once."""
    rows, columns = len(setting.cells), len(setting.cells[0]) if setting.cells else 0
    if setting.symmetry is Symmetry.MIRROR:
        _check_mirrored(setting, notes)
    if setting.symmetry is Symmetry.TURN:
        if rows != columns:
            notes.add(
                "map-not-square",
                MAP,
                f"The map has {show_count(rows, 'row')} of {show_count(columns, 'unit')}, and is to be turned.",
                "A map that is turned about its corner has as many rows as columns.",
            )
    elif setting.symmetry is not Symmetry.SLIDE and setting.across * setting.down == 1 and setting.cells:
        word = setting.symmetry.value
        notes.add(
            "symmetry-unused",
            "setting.symmetry",
            f"The symmetry is {word}, but the map is laid only once.",
            "Say with across and down how often it is laid.",
        )


def _check_mirrored(setting: StraightSet, notes: Notes) -> None:
    """Note a quarter in a map that is laid mirrored: its mirror image is another kind of unit."""
    for r, row in enumerate(setting.cells):
        named = next((cell.name for cell in row if cell.quarter), None)
        if named:
            notes.add(
                "quarter-mirrored",
                dotted("setting", "map", r),
                f"The copies of the map are mirrored, and the mirror image of `{named}` is another unit.",
                'Write the whole map, or set symmetry to "slide", "turn" or "half turn".',
            )
            return


def _is_piece(name: str | None) -> bool:
    return name in (None, *QUARTERS, *HALVES, *TRIANGLES) or bool(name and _NUMBERED.fullmatch(name))


def _cell(word: str, codes: list[str]) -> Cell | None:
    found = _CELL.fullmatch(word)
    if not found or found[1] not in codes or not _is_piece(found[2]):
        return None
    if found[3] in ("", "0", "1", "2", "3"):
        return Cell(found[1], int(found[3] or 0), found[2] or "")
    return None


def _note_words(
    rows: list[list[str]],
    cells: Mapping[str, Cell | None],
    words: Mapping[str, int],
    codes: list[str],
    notes: Notes,
) -> None:
    """Note each word that is no unit, at its first place and with the number of its places."""
    told: set[str] = set()
    for r, row in enumerate(rows):
        for c, word in enumerate(row):
            if cells[word] is None and word not in told and not notes.is_full():
                told.add(word)
                place = f"row {r + 1}, unit {c + 1}"
                detail = place if words[word] == 1 else f"{place} and {words[word] - 1} more"
                code, sentence, remedy = _fault(word, codes)
                notes.add(code, dotted("setting", "map", r), sentence, remedy, detail)


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


def _fault(word: str, codes: list[str]) -> tuple[str, str, str]:
    found, shown = _CELL.fullmatch(word), quoted(word)
    if not found:
        remedy = "Write the colourway's code and the quarter turns, such as a2, with spaces between units."
        return "bad-cell", f"{shown} is not a unit of the map.", remedy
    if found[1] not in codes:
        return "unknown-code", f"There is no colourway `{found[1]}`.", did_you_mean(found[1], codes)
    if not _is_piece(found[2]):
        remedy = (
            "A quarter is `tl` (top left), `tr`, `br` or `bl`, such as a-tl0; a half is `lh` (left), `rh`, "
            "`th` (top) or `bh`."
        )
        return "unknown-quarter", f"{shown} asks for a piece `{found[2][:8]}`.", remedy
    remedy = "A turn is 0, 1, 2 or 3 quarter turns clockwise."
    return "unknown-turn", f"{shown} asks for a turn of {found[3][:8]}.", remedy
