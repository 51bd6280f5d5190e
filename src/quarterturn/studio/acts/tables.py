"""The tables of a design file as pieces of its text, so that whole ones can be put in, taken out and moved.

A piece begins with its header, or with the notes right above it, and ends before the next. All pieces joined are the
text again, to the last character.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from quarterturn.design import dotted, parts_of
from quarterturn.studio.acts.model import written

_TOKEN = re.compile(
    r'"""(?:\\.|(?!""").)*"{3,5}|\'\'\'.*?\'{3,5}|"(?:\\.|[^"\\\n])*"|\'[^\'\n]*\'|#[^\n]*|[\[\]{}]|\n',
    re.DOTALL,
)
_HEADER = re.compile(r"[ \t]*\[\[?[^\n]*")

FAMILIES = (
    "fabrics", "outlines", "recipes", "colourways", "sections", "setting", "borders", "binding", "backing",
    "batting", "making", "house", "money", "notions", "kits", "class", "sizes",
)  # fmt: skip
"""In which order the tables of a file stand, where nothing else tells."""


@dataclass(frozen=True, slots=True)
class Table:
    """A piece of the text: the parts of its header (none: what stands before the first), and all its lines."""

    parts: tuple[str, ...]
    listed: bool
    text: str


def tables_of(text: str) -> list[Table]:
    """Return the pieces of the text of a design."""
    starts = list(_headers(text))
    found = [Table((), listed=False, text=text[: starts[0][0]] if starts else text)]
    ends = [start for start, _ in starts[1:]] + [len(text)]
    for (start, header), end in zip(starts, ends, strict=True):
        parts, listed = _named(header)
        found.append(Table(parts, listed, text[start:end]))
    return found


def _headers(text: str) -> Iterator[tuple[int, str]]:
    """Yield each header, and where its piece begins."""
    depth, line_start, notes = 0, 0, None
    position = 0
    while position <= len(text):
        if depth == 0 and position == line_start:
            line = text[position : text.find("\n", position) if "\n" in text[position:] else len(text)]
            if _HEADER.fullmatch(line):
                yield (position if notes is None else notes), line.strip()
                notes, position = None, position + len(line)
            elif line.lstrip().startswith("#"):
                notes = position if notes is None else notes
                position += len(line)
            else:
                notes = None
        token = _TOKEN.search(text, position)
        if token is None:
            return
        position = token.end()
        depth += (token[0] in "[{") - (token[0] in "]}")
        if token[0] == "\n":
            line_start = position


def _named(header: str) -> tuple[tuple[str, ...], bool]:
    inner: object = tomllib.loads(header)
    parts: list[str] = []
    while isinstance(inner, dict) and inner:
        ((part, inner),) = inner.items()
        parts.append(part)
    return tuple(parts), isinstance(inner, list)


def joined(tables: list[Table]) -> str:
    """Return the text of pieces."""
    return "".join(table.text for table in tables)


def has_table(text: str, parts: tuple[str, ...]) -> bool:
    """Tell whether a table has a header of its own."""
    return any(table.parts == parts for table in tables_of(text))


def with_tables(text: str, family: str, tables: str) -> str:
    """Return the text with new tables behind the last of their family, or where that would stand."""
    pieces = tables_of(text)
    places = [k for k, piece in enumerate(pieces) if piece.parts[:1] == (family,)]
    later = FAMILIES[FAMILIES.index(family) + 1 :]
    place = places[-1] + 1 if places else _first_of(pieces, later)
    before = pieces[place - 1]
    pieces[place - 1] = replace(before, text=before.text.rstrip("\n") + "\n\n" if before.text.strip() else "")
    end = "\n\n" if place < len(pieces) else "\n"
    pieces.insert(place, Table((family,), listed=False, text=tables.strip("\n") + end))
    return joined(pieces)


def _first_of(pieces: list[Table], families: tuple[str, ...]) -> int:
    return next(
        (k for k, piece in enumerate(pieces) if piece.parts[:1] and piece.parts[0] in families), len(pieces)
    )


def without_table(text: str, parts: tuple[str, ...]) -> str:
    """Return the text without a table and all tables inside it."""
    pieces = tables_of(text)
    kept = [piece for piece in pieces if piece.parts[: len(parts)] != parts]
    if len(kept) == len(pieces):
        return written(text, {dotted(*parts): None})
    return joined(kept)


def renamed_table(text: str, parts: tuple[str, ...], *names: str) -> str:
    """Return the text with another last part, or parts, in the headers of a table and of all inside it."""

    def renamed(piece: Table) -> Table:
        if piece.parts[: len(parts)] != parts:
            return piece
        named = (*parts[:-1], *names, *piece.parts[len(parts) :])
        header = dotted(*named)
        whole = f"[[{header}]]" if piece.listed else f"[{header}]"
        return replace(piece, parts=named, text=_with_header(piece.text, whole))

    return joined([renamed(piece) for piece in tables_of(text)])


def _with_header(text: str, header: str) -> str:
    (start, old), *_ = _headers(text)
    at = text.index(old, start)
    body = re.match(r"\[\[?(?:\"(?:\\.|[^\"])*\"|'[^']*'|[^\]\"'])*\]\]?", old)
    assert body, "a header ends in a bracket"
    return text[:at] + header + text[at + body.end() :]


def items_of(text: str, parts: tuple[str, ...]) -> int:
    """Return how many tables of a list have headers of their own: `[[borders]]`."""
    return sum(piece.listed and piece.parts == parts for piece in tables_of(text))


def with_items(text: str, parts: tuple[str, ...], change: Callable[[list[str]], list[str]]) -> str:
    """Return the text with the tables of a list in the order, and as many, as a change of their texts leaves.

    Each goes with the tables inside it. They stand where the first of them stood.
    """
    pieces, items, rest = tables_of(text), list[str](), list[Table]()
    place = None
    for piece in pieces:
        if piece.parts == parts and piece.listed:
            place = len(rest) if place is None else place
            items.append(piece.text)
        elif items and piece.parts[: len(parts)] == parts:
            items[-1] += piece.text
        else:
            rest.append(piece)
    assert place is not None, "the list has a table"
    changed = [each.rstrip("\n") + "\n\n" for each in change(items)]
    if place == len(rest) and changed:
        changed[-1] = changed[-1].rstrip("\n") + "\n"
    return joined(rest[:place]) + "".join(changed) + joined(rest[place:])


Renaming = Callable[[tuple[str, ...], object], tuple[tuple[str, ...], object]]
"""A dotted key in parts and its value, to those that they become."""


def with_sizes_renamed(text: str, renaming: Renaming) -> str:
    """Return the text with the changes of its sizes told by other keys and values, where something was renamed."""
    sizes = tomllib.loads(text.removeprefix("\ufeff")).get("sizes", {})
    changes: dict[str, object] = {}
    for name, table in sizes.items() if isinstance(sizes, dict) else ():
        inner = table.get("changes") if isinstance(table, dict) else None
        if isinstance(inner, dict) and (renamed := _renamed(inner, (), renaming)) != inner:
            changes[dotted("sizes", name, "changes")] = renamed
    return written(text, changes)


def _renamed(table: Mapping[str, object], above: tuple[str, ...], renaming: Renaming) -> dict[str, object]:
    """Return a table of changes, whose keys are parts or, in quotes, dotted keys as a whole."""
    found: dict[str, object] = {}
    for key, value in table.items():
        quoted = "." in key
        parts = (*above, *(parts_of(key) if quoted else (key,)))
        inner: object = value
        if isinstance(value, dict) and not quoted:
            inner = _renamed(value, parts, renaming)
            parts, _ = renaming(parts, None)
        else:
            parts, inner = renaming(parts, value)
        found[dotted(*parts[len(above) :]) if quoted else parts[-1]] = inner
    return found
