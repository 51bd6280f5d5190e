"""The values of the file's tables that are no part of the quilt's picture: what is stated, and what stands otherwise.

Which values there are is read off the shape of the file, so that each key has its field in the page.
"""

from __future__ import annotations

import enum
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

from pydantic import JsonValue

from quarterturn.design import (
    BindingKind,
    Design,
    Fold,
    Lesson,
    Minutes,
    default_kits,
    default_making,
    default_money,
    dotted,
    schema,
    write_length,
)
from quarterturn.measure import MM, YARD, Length, Units
from quarterturn.studio.stages import Made
from quarterturn.studio.views.model import View

TABLES = ("binding", "backing", "batting", "making", "money", "notions", "kits", "class")
"""Tables of the file whose keys have their fields by this view; those of the others are in the rooms."""
SHELVED = ("on_hand", "bought_as")
"""Keys of a fabric that have theirs by it too."""
LONG = 100
"""Inches from which a whole number of yards is told in yards, and of metres in metres."""
PERCENT = ("money.share", "kits.spare")
"""Shares that the file writes as percents."""


class ValueView(View):
    """A key, or a column of rows: which kind of value it is, and between which words there is to choose.

    `stated` is what the file says, None where it says nothing; `usual` what stands then, empty where nothing does.
    """

    key: str
    kind: str
    between: tuple[str, ...]
    stated: JsonValue
    usual: str
    columns: tuple[ValueView, ...]
    """Of rows: their columns, each with its name as its key."""


class TableView(View):
    """A table of the file, and whether the file has it; `needed` are keys that it must state."""

    key: str
    stands: bool
    needed: tuple[str, ...]
    values: tuple[ValueView, ...]


class ValuesView(View):
    """All of the tables, in the order of the file; tables in tables stand by themselves."""

    revision: int
    tables: tuple[TableView, ...]


def values_view(revision: int, made: Made) -> ValuesView:
    """Return the values. Raises UnmadeError of a text that is no design."""
    design, raw = made.design, tomllib.loads(made.text)
    shelved = (Shape(dotted("fabrics", fabric.letter), _shelved(), ()) for fabric in design.fabrics)
    tables = tuple(_table(shape, raw, design) for shape in (*shapes(), *shelved))
    return ValuesView(revision=revision, tables=tables)


@dataclass(frozen=True, slots=True)
class Shape:
    """A table of the file's shape: its dotted key, what each of its keys is in the JSON Schema, and which it needs."""

    key: str
    keys: Mapping[str, Mapping[str, Any]]
    needed: tuple[str, ...]


@cache
def shapes() -> tuple[Shape, ...]:
    """Return the tables as the schema has them. What is a list of tables is a table of one key, the list."""
    whole = schema()
    return tuple(
        shape
        for name in TABLES
        for shape in _shapes(name, whole["properties"][name], whole["$defs"], at_top=True)
    )


@cache
def _shelved() -> Mapping[str, Mapping[str, Any]]:
    """Return the keys of a fabric that tell how it comes."""
    whole = schema()
    keys = whole["$defs"]["FabricTable"]["properties"]
    return {name: _resolved(keys[name], whole["$defs"]) for name in SHELVED}


def _shapes(
    key: str, node: Mapping[str, Any], defs: Mapping[str, Any], *, at_top: bool = False
) -> Iterator[Shape]:
    if at_top and node.get("type") == "array":
        yield Shape(key, {"": _resolved(node, defs)}, ())
        return
    table = _resolved(node, defs)
    inner = {name: _resolved(each, defs) for name, each in table["properties"].items()}
    nested = [name for name, each in inner.items() if "properties" in each]
    plain = {name: each for name, each in inner.items() if name not in nested}
    yield Shape(key, plain, tuple(table.get("required", ())))
    for name in nested:
        yield from _shapes(dotted(*key.split("."), name), table["properties"][name], defs)


def _resolved(node: Mapping[str, Any], defs: Mapping[str, Any]) -> Mapping[str, Any]:
    """Return a node with what it refers to in its place, and the table of its rows."""
    if "$ref" in node:
        node = defs[node["$ref"].rpartition("/")[2]]
    if "$ref" in node.get("items", {}):
        return {**node, "items": defs[node["items"]["$ref"].rpartition("/")[2]]}
    return node


def _table(shape: Shape, raw: Mapping[str, Any], design: Design) -> TableView:
    stated: Any = raw
    for part in shape.key.split("."):
        stated = stated.get(part) if isinstance(stated, dict) else None
    usual = _usual(shape.key, design)
    values = []
    for name, node in shape.keys.items():
        key = dotted(*shape.key.split("."), name) if name else shape.key
        said = stated if not name else stated.get(name) if isinstance(stated, dict) else None
        values.append(_value(key, node, said, getattr(usual, name, None) if name else None, design.units))
    return TableView(key=shape.key, stands=stated is not None, needed=shape.needed, values=tuple(values))


def _value(key: str, node: Mapping[str, Any], stated: Any, usual: object, units: Units) -> ValueView:
    kind = kind_of(key, node)
    columns: tuple[ValueView, ...] = ()
    if kind == "rows":
        columns = tuple(
            _value(name, each, None, None, units) for name, each in node["items"]["properties"].items()
        )
        kinds = {column.key: column.kind for column in columns}
        stated = [
            {name: _said(each, kinds[name], units) for name, each in row.items()} for row in stated or ()
        ]
    words = next((each["enum"] for each in (node, *_choices(node)) if "enum" in each), ())
    return ValueView(
        key=key,
        kind=kind,
        between=tuple(words),
        stated=_said(stated, kind, units),
        usual=_written(usual, key, units),
        columns=columns,
    )


def _choices(node: Mapping[str, Any]) -> tuple[Mapping[str, Any], ...]:
    """Return what an item of a list, or one of several shapes, may be."""
    return (node.get("items", {}), *node.get("anyOf", ()), *node.get("oneOf", ()))


def kind_of(key: str, node: Mapping[str, Any]) -> str:
    """Return which kind of value a node of the schema is."""
    types = {each.get("type") for each in node.get("anyOf", ())} or {node.get("type")}
    items = node.get("items", {})
    if key.endswith(".bought_as"):
        return "bought"
    if types == {"string", "integer", "number"}:
        return "length"
    if types == {"integer", "number"}:
        return "number"
    if node.get("type") == "array":
        return "rows" if "properties" in items else "several" if "enum" in items else "pair"
    if "enum" in node:
        return "choice"
    if types == {"string"} and key.rpartition(".")[2] in ("fabric", "size"):
        return key.rpartition(".")[2]
    return {"integer": "count", "boolean": "flag", "string": "words", "object": "packages"}[node["type"]]


def _said(stated: Any, kind: str, units: Units) -> JsonValue:
    """Return what the file says; a length that is a bare number with the mark of its unit."""
    if isinstance(stated, dict):
        return {name: _said(each, kind, units) for name, each in stated.items()}
    if isinstance(stated, list):
        return [_said(each, kind, units) for each in stated]
    is_length = kind in ("length", "pair", "packages", "bought")
    if is_length and isinstance(stated, int | float) and not isinstance(stated, bool):
        return f"{stated:g}{' mm' if units is Units.METRIC else chr(34)}"
    return stated  # type: ignore[no-any-return]


@dataclass(frozen=True, slots=True)
class _Binding:
    """The binding as it comes out."""

    kind: BindingKind
    fold: Fold
    width: Length


def _usual(key: str, design: Design) -> object:
    """Return the record of what stands where a table says nothing; of the binding, what it comes to."""
    making = default_making(design.units)
    return {
        "binding": _Binding(design.binding_kind, design.binding_fold, design.binding_width),
        "making": making,
        "making.stitch": making.stitch,
        "money": default_money(design.units),
        "money.minutes": Minutes(),
        "kits": default_kits(design.units),
        "class": Lesson(1, Fraction(6)),
    }.get(key)


def _written(usual: object, key: str, units: Units) -> str:
    """Return a value as the file would write it; nothing for none, and for 0 where 0 stands for `as it comes`."""
    if isinstance(usual, enum.Enum):
        return str(usual.value)
    if isinstance(usual, bool):
        return "true" if usual else "false"
    if isinstance(usual, int):
        return str(usual) if usual or key.startswith("making") else ""
    if isinstance(usual, Fraction):
        return _number(usual * 100 if key in PERCENT else usual, key, units)
    return usual if isinstance(usual, str) else ""


def _number(usual: Fraction, key: str, units: Units) -> str:
    node = next(
        node
        for shape in shapes()
        for name, node in shape.keys.items()
        if dotted(*shape.key.split("."), name) == key
    )
    return _length(usual, units) if kind_of(key, node) == "length" else f"{float(usual):g}"


def _length(usual: Length, units: Units) -> str:
    unit, word = (1000 * MM, "m") if units is Units.METRIC else (YARD, "yd")
    whole = usual / unit
    return f"{whole} {word}" if usual > LONG and whole.denominator == 1 else write_length(usual, units)
