"""Read the words of maps: units with their quarter turns, plain cloth, and sections."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from quarterturn.design.keys import dotted
from quarterturn.design.limits import MOST_ROWS
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.sections import Cell, ClothCell, Map, MapCell, SectionCell, StraightSet, Symmetry
from quarterturn.measure import show_count

_CELL = re.compile(r"([a-z]{1,2})(?:-([a-z]+))?([0-9]*)")
_CLOTH = re.compile(r"[A-Z]{1,2}")
_SECTION = re.compile(r"([a-z]{3,20})([0-9]*)")
_NUMBERED = re.compile(r"p[a-z]")
"""Pieces of cuts that leave neither halves nor quarters: pa, pb …"""
QUARTERS = ("tl", "tr", "br", "bl")
"""The quarters of a master, clockwise from the top left."""
HALVES = ("lh", "rh", "th", "bh")
"""The halves of a master that is cut once: left and right, or top and bottom."""
TRIANGLES = ("tt", "rt", "bt", "lt")
"""The pieces round two slanting cuts, clockwise from the top."""
_TURNS = ("", "0", "1", "2", "3")


@dataclass(frozen=True, slots=True)
class Words:
    """What maps of a file may name: the codes of colourways, the letters of fabrics, the names of sections."""

    codes: Sequence[str]
    letters: Sequence[str]
    sections: Sequence[str]


def read_map(text: str, key: str, words: Words, notes: Notes) -> Map:
    """Return the rows of a map; empty where it cannot be laid, which is noted at ``<key>.<row>``."""
    rows = [line.split() for line in text.splitlines() if line.strip()]
    if not rows:
        notes.add("empty-map", key, "The map has no unit.", "Write a line for each row, such as a2 a3 a2 a3.")
        return ()
    if len(rows) > MOST_ROWS or max(map(len, rows)) > MOST_ROWS:
        notes.add("map-too-large", key, *_too_large(len(rows), max(map(len, rows))))
        return ()
    _even(rows, key, notes)
    counts = Counter(word for row in rows for word in row)
    cells = {word: cell_of(word, words) for word in counts}
    if None in cells.values():
        _note_words(rows, key, cells, counts, words, notes)
        return ()
    return tuple(tuple(cell for word in row if (cell := cells[word])) for row in rows)


def read_word(word: str, key: str, words: Words, notes: Notes) -> MapCell | None:
    """Return what one word names; None where it names nothing, which is noted."""
    cell = cell_of(word.strip(), words)
    if cell is None:
        code, sentence, remedy = _fault(word.strip(), words)
        notes.add(code, key, sentence, remedy)
    return cell


def check_symmetry(setting: StraightSet, key: str, notes: Notes) -> None:
    """Note a map that cannot be laid as its symmetry says, or a symmetry that says nothing since it is laid once.

    `key` is that of the table of the setting.
    """
    rows, columns = len(setting.cells), len(setting.cells[0]) if setting.cells else 0
    if setting.symmetry is Symmetry.MIRROR:
        _check_mirrored(setting, key, notes)
    if setting.symmetry is Symmetry.TURN:
        if rows != columns:
            notes.add(
                "map-not-square",
                f"{key}.map",
                f"The map has {show_count(rows, 'row')} of {show_count(columns, 'unit')}, and is to be turned.",
                "A map that is turned about its corner has as many rows as columns.",
            )
    elif setting.symmetry is not Symmetry.SLIDE and setting.across * setting.down == 1 and setting.cells:
        word = setting.symmetry.value
        notes.add(
            "symmetry-unused",
            f"{key}.symmetry",
            f"The symmetry is {word}, but the map is laid only once.",
            "Say with across and down how often it is laid.",
        )


def _check_mirrored(setting: StraightSet, key: str, notes: Notes) -> None:
    """Note what has no mirror image in a map that is laid mirrored: a quarter, or a section."""
    for r, row in enumerate(setting.cells):
        for cell in row:
            if isinstance(cell, Cell) and cell.quarter:
                code, name, other = "quarter-mirrored", cell.name, "unit"
            elif isinstance(cell, SectionCell):
                code, name, other = "section-mirrored", cell.section, "section"
            else:
                continue
            notes.add(
                code,
                f"{key}.{dotted('map', r)}",
                f"The copies of the map are mirrored, and the mirror image of `{name}` is another {other}.",
                'Write the whole map, or set symmetry to "slide", "turn" or "half turn".',
            )
            return


def _is_piece(name: str | None) -> bool:
    return name in (None, *QUARTERS, *HALVES, *TRIANGLES) or bool(name and _NUMBERED.fullmatch(name))


def cell_of(word: str, words: Words) -> MapCell | None:
    """Return what a word names; None where it names nothing."""
    if _CLOTH.fullmatch(word):
        return ClothCell(word) if word in words.letters else None
    if found := _SECTION.fullmatch(word):
        known = found[1] in words.sections and found[2] in _TURNS
        return SectionCell(found[1], int(found[2] or 0)) if known else None
    found = _CELL.fullmatch(word)
    if not found or found[1] not in words.codes or not _is_piece(found[2]):
        return None
    if found[3] in _TURNS:
        return Cell(found[1], int(found[3] or 0), found[2] or "")
    return None


def _note_words(
    rows: list[list[str]],
    key: str,
    cells: Mapping[str, MapCell | None],
    counts: Mapping[str, int],
    words: Words,
    notes: Notes,
) -> None:
    """Note each word that names nothing, at its first place and with the number of its places."""
    told: set[str] = set()
    for r, row in enumerate(rows):
        for c, word in enumerate(row):
            if cells[word] is None and word not in told and not notes.is_full():
                told.add(word)
                place = f"row {r + 1}, unit {c + 1}"
                detail = place if counts[word] == 1 else f"{place} and {counts[word] - 1} more"
                code, sentence, remedy = _fault(word, words)
                notes.add(code, f"{key}.{r}", sentence, remedy, detail)


def _too_large(down: int, across: int) -> tuple[str, str]:
    return (
        f"The map has {down} rows, and up to {across} units in a row.",
        f"Keep to {MOST_ROWS} each way; across and down repeat a map.",
    )


def _even(rows: list[list[str]], key: str, notes: Notes) -> None:
    """Note each row that is longer or shorter than most rows are."""
    wanted = Counter(map(len, rows)).most_common(1)[0][0]
    for index, row in enumerate(rows):
        if len(row) != wanted:
            notes.add(
                "ragged-map",
                f"{key}.{index}",
                f"Row {index + 1} of the map has {len(row)} units; most rows have {wanted}.",
                f"Give every row {show_count(wanted, 'unit')}, with a space between units.",
                f"row {index + 1}",
            )


def _fault(word: str, words: Words) -> tuple[str, str, str]:
    shown = quoted(word)
    if _CLOTH.fullmatch(word):
        return "unknown-fabric", f"There is no fabric `{word}`.", did_you_mean(word, words.letters)
    if found := _SECTION.fullmatch(word):
        if found[1] not in words.sections:
            return "unknown-section", f"There is no section {quoted(found[1])}.", _instead(found[1], words)
        return "unknown-turn", f"{shown} asks for a turn of {found[2][:8]}.", _TURN
    found = _CELL.fullmatch(word)
    if not found:
        remedy = "Write the colourway's code and the quarter turns, such as a2, with spaces between units."
        return "bad-cell", f"{shown} is not a unit of the map.", remedy
    if found[1] not in words.codes:
        return "unknown-code", f"There is no colourway `{found[1]}`.", did_you_mean(found[1], words.codes)
    if not _is_piece(found[2]):
        remedy = (
            "A quarter is `tl` (top left), `tr`, `br` or `bl`, such as a-tl0; a half is `lh` (left), `rh`, "
            "`th` (top) or `bh`."
        )
        return "unknown-quarter", f"{shown} asks for a piece `{found[2][:8]}`.", remedy
    return "unknown-turn", f"{shown} asks for a turn of {found[3][:8]}.", _TURN


_TURN = "A turn is 0, 1, 2 or 3 quarter turns clockwise."


def _instead(name: str, words: Words) -> str:
    """Return what a word of three letters or more may have meant: a section, or else a unit."""
    if words.sections:
        return did_you_mean(name, words.sections)
    return f"Add a table [sections.{name}], or write units such as a2, with spaces between them."
