"""Read the borders of a section: plain ones, pieced ones, and coping strips."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.maps import Words, read_word
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.sections import AnyBorder, Border, Coping, Corner, PiecedBorder, SectionCell
from quarterturn.design.settings import check_wanted
from quarterturn.design.words import refer
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import BorderTable

KEYS = {
    "plain": ("fabric", "width", "first", "corners", "cornerstone"),
    "pieced": ("sides", "ends", "corners", "first"),
    "coping": ("fabric", "to", "first"),
}
"""The keys that each kind of border has."""


def read_borders(
    tables: Sequence[BorderTable] | None, key: str, words: Words, notes: Notes
) -> tuple[AnyBorder, ...]:
    """Read borders, the innermost first; `key` is that of their list."""
    numbered = {str(index): table for index, table in enumerate(tables or [])}
    borders = [
        _border(table, f"{key}.{index}", words, notes)
        for index, table in check_count(numbered, key, limits.MOST_BORDERS, notes)
    ]
    return tuple(border for border in borders if border is not None)


def _border(table: BorderTable, key: str, words: Words, notes: Notes) -> AnyBorder | None:
    kind = table.kind or "plain"
    check_wanted(table, key, f"A {kind} border", ("kind", *KEYS[kind]), notes)
    if kind == "pieced":
        return _pieced(table, key, words, notes)
    return _coping(table, key, words, notes) if kind == "coping" else _plain(table, key, words, notes)


def _plain(table: BorderTable, key: str, words: Words, notes: Notes) -> Border | None:
    fabric = refer(table.fabric, f"{key}.fabric", "fabric", list(words.letters), notes)
    width = notes.length(table.width, f"{key}.width", limits.BORDER)
    if table.width is None:
        notes.missing(f"{key}.width", "Give its finished width.")
    corner = _corner(table.corners, f"{key}.corners", notes)
    stone = ""
    if corner is Corner.CORNERSTONES:
        stone = refer(table.cornerstone, f"{key}.cornerstone", "fabric", list(words.letters), notes)
    elif table.cornerstone is not None:
        sentence = "The border has a fabric for cornerstones and no cornerstones."
        remedy = 'Write corners = "cornerstones", or leave cornerstone out.'
        notes.add("unwanted-key", f"{key}.cornerstone", sentence, remedy)
    return None if width is None else Border(fabric, width, table.first != "ends", corner, stone)


def _corner(word: str | None, key: str, notes: Notes) -> Corner:
    choices = [corner.value for corner in Corner]
    if word is None or word in choices:
        return Corner(word or "butted")
    sentence = f"{quoted(word)} is not a word for `corners`."
    notes.add("unknown-word", key, sentence, did_you_mean(word, choices))
    return Corner.BUTTED


def _pieced(table: BorderTable, key: str, words: Words, notes: Notes) -> PiecedBorder | None:
    sides, ends = (
        _section(getattr(table, part), f"{key}.{part}", words, notes) for part in ("sides", "ends")
    )
    corners = table.corners and read_word(table.corners, f"{key}.corners", words, notes)
    if sides is None or ends is None:
        return None
    return PiecedBorder(sides, ends, corners or None, table.first != "ends")


def _section(word: str | None, key: str, words: Words, notes: Notes) -> SectionCell | None:
    if word is None:
        notes.missing(key, "Name the section that is sewn there.")
        return None
    cell = read_word(word, key, words, notes)
    if cell is None or isinstance(cell, SectionCell):
        return cell
    sentence = f"{quoted(word)} is not a section, and a strip of a pieced border is one."
    remedy = "Lay the units in a section of their own, such as [sections.hedge], and name that."
    notes.add("bad-cell", key, sentence, remedy)
    return None


def _coping(table: BorderTable, key: str, words: Words, notes: Notes) -> Coping | None:
    fabric = refer(table.fabric, f"{key}.fabric", "fabric", list(words.letters), notes)
    sizes: list[Length | None] = [
        notes.length(each, f"{key}.to.{n}", limits.COPED) for n, each in enumerate(table.to or ())
    ]
    if table.to is None:
        notes.missing(f"{key}.to", "Give the finished width and height: to = ['60\"', '72\"'].")
    elif len(sizes) != 2:
        sentence = f"`to` has {len(sizes)} lengths, and a size has two: width and height."
        notes.add("wrong-type", f"{key}.to", sentence, "Write to = ['60\"', '72\"'].")
    width, height = (*sizes, None, None)[:2]
    if width is None or height is None:
        return None
    return Coping(fabric, width, height, table.first != "ends")
