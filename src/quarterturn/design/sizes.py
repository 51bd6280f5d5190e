"""The design in several sizes: each is the file with some of its values changed, read like a file of its own.

The changes are made in the data as it was parsed, before anything is made of it, so that whatever a file can say
can differ from size to size. What is wrong in a size is told at the change that made it so.
"""

from __future__ import annotations

import copy
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from quarterturn.design import limits
from quarterturn.design.beds import BEDS, DROP, WITHIN
from quarterturn.design.conversion import convert
from quarterturn.design.findings import Finding, Place
from quarterturn.design.keys import dotted, parts_of
from quarterturn.design.model import Bed, Design
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.typed import model_at, take_shape
from quarterturn.design.words import read_name
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import DesignFile, SizeTable

ORIGINAL = "original"
"""What the file's own size is called where it has no name."""
LONGEST_NAME = 20
_BORDER = re.compile(r"(?:.*\.)?borders\.(?P<number>\d+)(?=\.|$)")
ALIKE = ("format", "units", "size", "sizes")
"""What no size can change."""
CHOOSING = (("kits", "size"), ("class", "size"))
"""Keys that choose a size, so that no size can change them."""


@dataclass(frozen=True, slots=True)
class Change:
    """A value that differs in a size: where it stands in the file, what it is, and the key of the change itself."""

    parts: tuple[str, ...]
    value: Any
    key: str


def with_sizes(design: Design, file: DesignFile, data: Mapping[str, Any], notes: Notes) -> Design | None:
    """Return the design with its other sizes, or None where one of them cannot be made, which is noted.

    `data` is what was parsed. A table of the file's own size states its bed and changes nothing.
    """
    tables = file.sizes or {}
    own = _name(ORIGINAL if file.size is None else file.size, "size", notes)
    others = [name for name in tables if name != own]
    if len(others) >= limits.MOST_SIZES:
        notes.add("too-many", "sizes", f"There are {len(others) + 1} sizes.", f"Keep to {limits.MOST_SIZES}.")
        return None
    base = replace(design, size=own, bed=_bed_of(tables[own], own, notes) if own in tables else None)
    if own in tables and tables[own].changes:
        notes.add(
            "change-forbidden",
            dotted("sizes", own, "changes"),
            f"The size {quoted(own)} is that of the file itself.",
            "Change the values in the file, or name the size of the file otherwise with `size`.",
        )
    _check_chosen(design, (own, *others), notes)
    base = replace(base, selling=design.selling.for_sizes(own))
    sizes = [size for name in others if (size := _sized(name, tables[name], data, notes))]
    sold = (replace(size, selling=size.selling.for_sizes(own)) for size in sizes)
    return None if notes.stops() else replace(base, sizes=tuple(sold))


def _check_chosen(design: Design, names: Sequence[str], notes: Notes) -> None:
    """Note sizes for which kits are packed or a class is held, and that the file does not have."""
    kits, lesson = design.selling.kits, design.selling.lesson
    for key, chosen in (("kits.size", kits and kits.size), ("class.size", lesson and lesson.size)):
        if chosen and chosen not in names:
            notes.add("unknown-size", key, f"There is no size {quoted(chosen)}.", did_you_mean(chosen, names))


def _name(name: str, key: str, notes: Notes) -> str:
    read = read_name(name, key, "Name it by a word, such as queen.", notes)
    if len(read) > LONGEST_NAME:
        notes.add(
            "bad-text", key, f"{quoted(read)} is too long for the head of a column.", "Use a word or two."
        )
    return read


def _sized(name: str, table: SizeTable, data: Mapping[str, Any], notes: Notes) -> Design | None:
    """Return the design in one other size."""
    _name(name, dotted("sizes", name), notes)
    bed = _bed_of(table, name, notes)
    changed: dict[str, Any] = copy.deepcopy({key: value for key, value in data.items() if key != "sizes"})
    changes = sorted(_changes(name, table.changes or {}, notes), key=_order)
    made = [_make(changed, change, notes) for change in changes]
    if not all(made):
        return None
    mine = Notes(notes.units)
    design = convert(take_shape(changed, mine), changed, mine)
    for finding in told_of_size(name, mine.findings, notes.findings):
        key = _nearest_change(finding.place.detail, changes) or finding.place.key
        notes.add(finding.code, key, finding.sentence, finding.remedy, finding.place.detail)
    return design and replace(design, size=name, bed=bed)


def _changes(name: str, changes: Mapping[str, Any], notes: Notes) -> Iterator[Change]:
    """Return the changes of a size. A key without a full stop whose value is a table is opened: setting.across = 5."""
    for key, value in changes.items():
        place = dotted("sizes", name, "changes", key)
        try:
            parts = parts_of(key)
        except ValueError:
            _no_place(
                place, f"{quoted(key)} is not a dotted key.", "Write a key such as setting.across.", notes
            )
            continue
        if parts[0] in ALIKE:
            sentence = f"{quoted(parts[0])} is alike in all sizes."
            notes.add("change-forbidden", place, sentence, "Take the change out.")
            continue
        for change in changes_written(name, {key: value}):
            if change.parts in CHOOSING:
                sentence = f"{quoted(dotted(*change.parts))} chooses a size and is alike in all of them."
                notes.add("change-forbidden", change.key, sentence, "Take the change out.")
            else:
                yield change


def changes_written(name: str, changes: Mapping[str, Any]) -> Iterator[Change]:
    """Return the changes of a size that can be made, one for each value that differs."""
    for key, value in changes.items():
        parts, place = parts_of(key), dotted("sizes", name, "changes", key)
        yield from _opened(parts, value, place) if len(parts) == 1 else (Change(parts, value, place),)


def _opened(parts: tuple[str, ...], value: Any, place: str) -> Iterator[Change]:
    if not isinstance(value, dict) or not value:
        yield Change(parts, value, place)
        return
    for name, inner in value.items():
        yield from _opened((*parts, name), inner, f"{place}.{dotted(name)}")


def _order(change: Change) -> tuple[bool, tuple[int, ...]]:
    """Let what is taken away go last, and from the last item of a list to the first, so that the numbers stay true."""
    away = change.value == {}
    return away, tuple(-int(part) for part in change.parts if part.isdecimal()) if away else ()


def _make(data: dict[str, Any], change: Change, notes: Notes) -> bool:
    """Make a change in data; return whether its key names a place."""
    holder: Any = data
    for depth, part in enumerate(change.parts):
        known = list(holder) if isinstance(holder, dict) else [str(i) for i in range(len(holder))]
        last = depth == len(change.parts) - 1
        if last and change.value == {} and part in known:
            del holder[part if isinstance(holder, dict) else int(part)]
            return True
        if isinstance(holder, list) and part == str(len(holder)) and change.value != {}:
            holder.append({})
        elif part not in known and not (last and change.value != {} and isinstance(holder, dict)):
            empty = _table_to_add(change.parts[: depth + 1]) if isinstance(holder, dict) else None
            if empty is None:
                sentence = f"The file has no {quoted(dotted(*change.parts[: depth + 1]))} to change."
                return _no_place(change.key, sentence, did_you_mean(part, known), notes)
            holder[part] = empty
        name: Any = int(part) if isinstance(holder, list) else part
        if last:
            holder[name] = copy.deepcopy(change.value)
        elif isinstance(holder[name], dict | list):
            holder = holder[name]
        else:
            sentence = f"{quoted(dotted(*change.parts[: depth + 1]))} is a value and has no keys."
            return _no_place(change.key, sentence, "Change the value as a whole.", notes)
    return True


def _no_place(key: str, sentence: str, remedy: str, notes: Notes) -> bool:
    notes.add("unknown-place", key, sentence, remedy)
    return False


def _table_to_add(parts: tuple[str, ...]) -> dict[str, Any] | list[Any] | None:
    """Return an empty table or list for a place where any design may have one: [making], [sections]; else None."""
    if parts[-1] not in model_at(parts[:-1]).get("properties", {}):
        return None
    inner = model_at(parts)
    if inner.get("type") == "array":
        return []
    return {} if inner.get("properties") or inner.get("additionalProperties") else None


def told_of_size(name: str, findings: Iterable[Finding], known: Iterable[Finding]) -> Iterator[Finding]:
    """Return the findings of another size as they are told of the file: with the size's name, at its table.

    One that stands for the file itself, and so is among those `known`, is not told again. The detail of each is
    the key at which it was found.
    """
    told = {_gist(finding) for finding in known}
    for finding in findings:
        if _gist(finding) not in told:
            place = Place(dotted("sizes", name), finding.place.key or finding.place.detail)
            sentence = f"In {name} size{_of_border(place.detail)}: {finding.sentence}"
            yield replace(finding, place=place, sentence=sentence)


def _of_border(key: str) -> str:
    """Return which border a finding is about, as it is counted and as it stands in the file; nothing for others."""
    inside = _BORDER.match(key)
    return f", border {int(inside['number']) + 1} ({inside[0]})" if inside else ""


def _gist(finding: Finding) -> tuple[str, str, str]:
    return finding.code, finding.place.key, finding.sentence


def _nearest_change(key: str, changes: Iterable[Change]) -> str | None:
    """Return the key of the change that has most to do with a key of the file, or None where none has."""
    try:
        parts = parts_of(key)
    except ValueError:
        return None
    shared = {change.key: _shared(parts, change.parts) for change in changes}
    best = max(shared, key=lambda each: shared[each], default=None)
    return best if best and shared[best] else None


def _shared(one: tuple[str, ...], other: tuple[str, ...]) -> int:
    """Return how many parts two keys have in common at their beginning."""
    return next(
        (i for i, (a, b) in enumerate(zip(one, other, strict=False)) if a != b), min(len(one), len(other))
    )


def _bed_of(table: SizeTable, name: str, notes: Notes) -> Bed | None:
    """Return the bed that a size is meant for, if it states one."""
    key = dotted("sizes", name)
    sides = _mattress(table, key, notes)
    drop, tuck, within = (
        notes.length(getattr(table, each), f"{key}.{each}", limit)
        for each, limit in (("drop", limits.DROP), ("tuck", limits.TUCK), ("within", limits.WITHIN))
    )
    if sides is None:
        if any(value is not None for value in (drop, tuck, within)) and not notes.is_spoiled(f"{key}.bed"):
            notes.add(
                "bed-unclear",
                key,
                "A drop, a tuck or a tolerance is stated, and no bed.",
                "Add bed = or mattress =.",
            )
        return None
    units = notes.units
    return Bed(
        name=table.bed or "",
        width=sides[0],
        length=sides[1],
        drop=DROP[units] if drop is None else drop,
        tuck=tuck or Length(0),
        within=WITHIN[units] if within is None else within,
    )


def _mattress(table: SizeTable, key: str, notes: Notes) -> tuple[Length, Length] | None:
    if table.bed and table.mattress is not None:
        notes.add(
            "bed-unclear", f"{key}.mattress", "A bed is stated, and a mattress as well.", "Keep one of them."
        )
    if table.bed:
        return BEDS[table.bed]
    if table.mattress is None:
        return None
    if len(table.mattress) != 2:
        sentence = f"A mattress has a width and a length, and here it has {len(table.mattress)} sizes."
        notes.add("bed-unclear", f"{key}.mattress", sentence, "Write mattress = ['60\"', '80\"'].")
        return None
    width, length = (
        notes.length(side, f"{key}.mattress.{number}", limits.MATTRESS)
        for number, side in enumerate(table.mattress)
    )
    return None if width is None or length is None else (width, length)
