"""The sums of a master of any shape and cuts: what it starts as, what is trimmed off, what its units finish as."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.defaults import LARGE_MASTER, LARGE_TRIM, SMALL_TRIM, default_trim
from quarterturn.design.limits import Range
from quarterturn.design.notes import Notes
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import RecipeTable

Both = tuple[Length, Length]
"""Across and down."""


@dataclass(frozen=True, slots=True)
class MasterSizes:
    """Width and height of the master as cut, of a unit finished, and what is trimmed off the master in all."""

    start: Both
    finished: Both
    trim: Both


def read_sizes(
    table: RecipeTable, key: str, pieces: tuple[int, int] | None, seam: Length, notes: Notes
) -> MasterSizes | None:
    """Read the sizes of a master and work out what the file leaves out; None where they cannot be, which is noted.

    `pieces` is how many units lie across and down; None where they do not finish alike: then the finished size is
    that of the whole master, as if it were not cut.
    """
    start = read_both(table, key, ("start", "width", "height"), limits.START, notes)
    finished = read_both(
        table, key, ("finished", "finished_width", "finished_height"), limits.FINISHED, notes
    )
    trim = notes.length(table.trim, f"{key}.trim", limits.TRIM)
    names = ("start", "width", "height", "finished", "finished_width", "finished_height", "trim")
    if any(notes.is_spoiled(f"{key}.{name}") for name in names):
        return None
    if pieces is None:
        return _uncounted(key, start, finished, trim, seam, notes)
    if start is None and finished is None:
        notes.add(
            "sums-missing",
            key,
            "The recipe says neither how large a unit is finished nor how large its master starts.",
            "Give finished or start; or width and height of either, where it is not square.",
        )
        return None
    if finished is None:
        assert start is not None
        return _from_start(key, start, trim, pieces, seam, notes)
    return _from_finished(key, finished, start, trim, pieces, seam, notes)


def read_both(
    table: RecipeTable, key: str, names: tuple[str, str, str], within: Range, notes: Notes
) -> Both | None:
    """Read a size that is given by one key where it is square, else by two; None where it is not given."""
    side, width, height = (notes.length(getattr(table, name), f"{key}.{name}", within) for name in names)
    given = [name for name in names if getattr(table, name) is not None]
    if names[0] in given and len(given) > 1:
        sentence = f"The size is given twice: by {names[0]}, and by {' and '.join(given[1:])}."
        remedy = f"Give {names[0]} alone for a square, or {names[1]} and {names[2]}."
        notes.add("sums-disagree", f"{key}.{given[1]}", sentence, remedy)
        return None
    if len(given) == 1 and names[0] not in given:
        other = names[2] if given == [names[1]] else names[1]
        notes.missing(f"{key}.{other}", f"Give {names[1]} and {names[2]}, or {names[0]} alone for a square.")
        return None
    if side is not None:
        return side, side
    return None if width is None or height is None else (width, height)


def _uncounted(
    key: str, start: Both | None, finished: Both | None, trim: Length | None, seam: Length, notes: Notes
) -> MasterSizes | None:
    if finished is not None:
        notes.add(
            "sums-disagree",
            f"{key}.finished",
            "The pieces of slanting cuts, or of lines of your own, have no one finished size.",
            "Leave finished out, and give start, or width and height.",
        )
        return None
    if start is None:
        notes.add(
            "sums-missing",
            key,
            "The recipe does not say how large its master starts.",
            "Give start, or width and height.",
        )
        return None
    return _from_start(key, start, trim or Length(0), (1, 1), seam, notes)


def _from_start(
    key: str, start: Both, trim: Length | None, pieces: tuple[int, int], seam: Length, notes: Notes
) -> MasterSizes | None:
    if trim is None:
        trim = (SMALL_TRIM if max(start) <= LARGE_MASTER[notes.units] else LARGE_TRIM)[notes.units]
    width, height = ((side - trim) / count - 2 * seam for side, count in zip(start, pieces, strict=True))
    if min(width, height) > 0:
        return MasterSizes(start, (width, height), (trim, trim))
    short, count = min(zip(start, pieces, strict=True), key=lambda one: (one[0] - trim) / one[1])
    show, seams = notes.show, 2 * count * seam
    notes.add(
        "start-too-small",
        key,
        f"A master of {show(short)} leaves nothing of its units: the seams take {show(seams)} "
        f"and trimming {show(trim)}.",
        f"Start with more than {show(seams + trim)}.",
    )
    return None


def _from_finished(
    key: str,
    finished: Both,
    start: Both | None,
    trim: Length | None,
    pieces: tuple[int, int],
    seam: Length,
    notes: Notes,
) -> MasterSizes | None:
    bare = [count * (side + 2 * seam) for side, count in zip(finished, pieces, strict=True)]
    if start is None:
        trim = default_trim(max(bare), notes.units) if trim is None else trim
        return MasterSizes((bare[0] + trim, bare[1] + trim), finished, (trim, trim))
    for way, has, needs in zip(("wide", "high"), start, bare, strict=True):
        if not _adds_up(key, way, has, needs, trim, notes):
            return None
    return MasterSizes(start, finished, (start[0] - bare[0], start[1] - bare[1]))


def _adds_up(key: str, way: str, has: Length, needs: Length, trim: Length | None, notes: Notes) -> bool:
    show = notes.show
    if has < needs:
        notes.add(
            "start-too-small",
            key,
            f"The units need a master {show(needs)} {way} before any trimming; it starts {show(has)} {way}.",
            f"Start with {show(needs + (trim or 0))} or more, or give start or finished alone.",
        )
        return False
    if trim is not None and has != needs + trim:
        notes.add(
            "sums-disagree",
            key,
            f"The master starts {show(has)} {way}, but its units and a trim of {show(trim)} make {show(needs + trim)}.",
            f"Give two of finished, start and trim, or start {show(needs + trim)} {way}.",
        )
        return False
    return True
