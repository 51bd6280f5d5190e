"""Print the other sizes of a design: for each a table of what differs in it, found by comparing whole files."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

from quarterturn.design.keys import dotted
from quarterturn.design.model import Bed, Design
from quarterturn.design.sizes import ORIGINAL
from quarterturn.design.text import quote_length, quote_lines, quote_text
from quarterturn.measure import Units

Write = Callable[[Design], str]
"""Prints a design of one size as a complete file."""


def size_name(design: Design) -> str:
    """Return the name of the file's own size as the file says it; nothing where it need not be said."""
    return "" if design.size == ORIGINAL else design.size


def size_tables(design: Design, write: Write) -> list[str]:
    """Return a table for the bed of the file's own size, if it has one, and one for each other size."""
    own = [_table(design, {})] if design.bed else []
    if not design.sizes:
        return own
    base = _parsed(design, write)
    return [*own, *(_table(size, dict(changes_between(base, _parsed(size, write)))) for size in design.sizes)]


def _parsed(design: Design, write: Write) -> dict[str, Any]:
    return tomllib.loads(write(replace(design, size=ORIGINAL, bed=None, sizes=())))


def changes_between(base: Any, other: Any, parts: tuple[str, ...] = ()) -> Iterator[tuple[str, Any]]:
    """Return the dotted keys, each with its new value, by which one parsed file becomes another.

    A key that is lost is changed to an empty table. A table within a table that loses a key is changed as a whole,
    as is a list that gets shorter.
    """
    if base == other:
        return
    if _is_opened(base, other, len(parts)):
        for key in [*other, *(key for key in base if key not in other)]:
            new = (*parts, key)
            if key in base or (not parts and isinstance(other[key], dict)):
                yield from changes_between(base.get(key, {}), other.get(key, {}), new)
            else:
                yield dotted(*new), other[key]
    elif isinstance(base, list) and isinstance(other, list) and len(base) <= len(other):
        for index, item in enumerate(other):
            if index < len(base):
                yield from changes_between(base[index], item, (*parts, str(index)))
            else:
                yield dotted(*parts, index), item
    else:
        yield dotted(*parts), other


def _is_opened(base: Any, other: Any, depth: int) -> bool:
    """Tell whether two values are tables of which single keys are to be changed."""
    both = isinstance(base, dict) and isinstance(other, dict)
    return both and bool(other) and (depth < 2 or base.keys() <= other.keys())


def _table(design: Design, changes: dict[str, Any]) -> str:
    lines = [
        f"[{dotted('sizes', design.size)}]",
        *(_bed_lines(design.bed, design.units) if design.bed else ()),
    ]
    if changes:
        lines.append(f"[{dotted('sizes', design.size, 'changes')}]")
        lines += [f"{quote_text(key)} = {value_text(value)}" for key, value in changes.items()]
    return "\n".join(lines)


def _bed_lines(bed: Bed, units: Units) -> Iterator[str]:
    if bed.name:
        yield f"bed = {quote_text(bed.name)}"
    else:
        sides = ", ".join(quote_length(side, units) for side in (bed.width, bed.length))
        yield f"mattress = [{sides}]"
    for key in ("drop", "tuck", "within"):
        yield f"{key} = {quote_length(getattr(bed, key), units)}"


def value_text(value: Any) -> str:
    """Return a value of a parsed file as TOML, tables within a line."""
    if isinstance(value, dict):
        inner = ", ".join(f"{dotted(key)} = {value_text(item)}" for key, item in value.items())
        return f"{{ {inner} }}" if inner else "{}"
    if isinstance(value, list):
        return f"[{', '.join(value_text(item) for item in value)}]"
    if isinstance(value, str):
        return quote_lines(value.removesuffix("\n")) if "\n" in value else quote_text(value)
    return ("true" if value else "false") if isinstance(value, bool) else repr(value)
