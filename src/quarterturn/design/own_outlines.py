"""Read the outlines of the designer's own, which stand in the file as path data."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.keys import dotted
from quarterturn.design.notes import Notes, quoted
from quarterturn.design.placing import RING
from quarterturn.design.recipes import OwnOutline
from quarterturn.design.soundness import UnsoundError, fitted_and_width, sound_path
from quarterturn.design.words import read_name
from quarterturn.geometry import OUTLINES, Path, PathDataError, read_path_data
from quarterturn.measure import MM, Length, Units

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import OutlineTable

_FINENESS = 10**6
"""A width that follows from a path is kept to a millionth of an inch or millimetre."""
_SEEN = 24
"""Characters that are shown on either side of a fault in path data."""


def read_outlines(
    tables: Mapping[str, OutlineTable] | None, written: Iterable[str], notes: Notes
) -> Mapping[str, OwnOutline | None]:
    """Read the outlines; None for each that stands in the file, under its name as `written`, with a fault."""
    found: dict[str, OwnOutline | None] = dict.fromkeys(written)
    for name, table in check_count(tables, "outlines", limits.MOST_OUTLINES, notes):
        found[name] = _outline(name, table, notes)
    return found


def _outline(name: str, table: OutlineTable, notes: Notes) -> OwnOutline | None:
    key = dotted("outlines", name)
    read_name(name, key, "Name it by a word, such as [outlines.fox].", notes)
    if name in (*OUTLINES, RING):
        sentence = f"The program has an outline {quoted(name)} of its own."
        notes.add("outline-taken", key, sentence, "Give yours another name, also where shapes call it.")
    width = notes.length(table.width, f"{key}.width", limits.DIAMETER)
    if table.path is None:
        notes.missing(f"{key}.path", 'Write path = "M … Z", the data of a path in an SVG file.')
        return None
    data = " ".join(table.path.split())
    path = _path(data, f"{key}.path", notes)
    if path is None or (table.width is not None and width is None):
        return None
    unit, across = fitted_and_width(path)
    width = _true_width(across, key, notes) if width is None else width
    return OwnOutline(name, data, width, unit) if width else None


def _path(data: str, key: str, notes: Notes) -> Path | None:
    if len(data) > limits.LONGEST_PATH:
        sentence = f"The path has {len(data)} characters."
        notes.add("bad-path", key, sentence, f"Simplify it; {limits.LONGEST_PATH} are the most.")
        return None
    try:
        return sound_path(read_path_data(data))
    except PathDataError as error:
        sentence = f"This is not path data: {error.reason}."
        remedy = "Copy the whole d of a path from an SVG file, or let `quarterturn outline` write it."
        notes.add("bad-path", key, sentence, remedy, caret(data, error.offset))
    except UnsoundError as error:
        sentence = f"The outline {error}."
        notes.add("outline-unsound", key, sentence, "Mend it where it was drawn, and put its path here anew.")
    return None


def caret(text: str, offset: int) -> str:
    """Return what stands about a place in a text of one line, and a caret below the place."""
    start = max(0, offset - _SEEN)
    shown = "".join(c if c.isprintable() else "�" for c in text[start : offset + _SEEN])
    before, after = "…" * (start > 0), "…" * (offset + _SEEN < len(text))
    return f"{before}{shown}{after}\n{' ' * (offset - start + len(before))}^"


def _true_width(across: float, key: str, notes: Notes) -> Length | None:
    """Return the width that the numbers of a path say, in the file's units; None where it is noted."""
    unit = MM if notes.units is Units.METRIC else Length(1)
    width = Length(round(across * _FINENESS), _FINENESS) * unit
    if limits.DIAMETER.holds(width):
        return width
    low, high = (notes.show(end) for end in (limits.DIAMETER.low, limits.DIAMETER.high))
    sentence = f"By its numbers the outline is {across:.6g} {_word(notes.units)} wide."
    notes.add("size-out-of-range", f"{key}.path", sentence, f"State its width, from {low} to {high}.")
    return None


def _word(units: Units) -> str:
    return "millimetres" if units is Units.METRIC else "inches"
