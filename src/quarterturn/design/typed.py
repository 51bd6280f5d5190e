"""Hold what TOML gave against the shape of the file; take out, with a finding, whatever does not fit."""

from __future__ import annotations

import copy
import functools
import math
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from quarterturn.design.keys import dotted
from quarterturn.design.notes import Notes, did_you_mean, listed, quoted

if TYPE_CHECKING:
    from pydantic_core import ErrorDetails

    from quarterturn.design.file import DesignFile

Path = tuple[str | int, ...]

_EXPECTED = {
    "string_type": "text in quotes",
    "int_type": "a whole number",
    "float_type": "a number",
    "finite_number": "a number",
    "bool_type": "true or false",
    "date_type": "a date",
    "date_parsing": "a date",
    "model_type": "a table of keys",
    "model_attributes_type": "a table of keys",
    "dict_type": "a table of keys",
    "list_type": "a list of tables",
}
LABELS = "a list of labels"
SIDES = "['60\"', '72\"']"

_LENGTHS_TO_WRITE = {
    "web_sheet": "['9\"', '12\"']",
    "strip_heights": "['2 1/2\"', '5\"']",
    "mattress": "['60\"', '80\"']",
}
"""Lists of lengths that a remedy shows, where not those that suit most keys."""

_LENGTH = {"text in quotes", "a whole number", "a number"}


def take_shape(data: Mapping[str, Any], notes: Notes) -> DesignFile:
    """Return the data as a `DesignFile`, without what does not fit, which is noted."""
    from pydantic import ValidationError

    from quarterturn.design.file import DesignFile

    try:
        return DesignFile.model_validate(data)
    except ValidationError as error:
        faults = error.errors(include_url=False, include_context=True)
    rest: dict[str, Any] = copy.deepcopy(dict(data))
    for path, group in _by_place(faults, data).items():
        if not notes.is_full():
            _note(path, group, data, notes)
        _remove(rest, path)
    return DesignFile.model_validate(rest)


def _by_place(faults: Sequence[ErrorDetails], data: Mapping[str, Any]) -> dict[Path, list[ErrorDetails]]:
    """Gather the faults by the place in the data; a union tells one for each of its members."""
    places: dict[Path, list[ErrorDetails]] = {}
    for fault in faults:
        places.setdefault(_told_at(_in_data(fault["loc"], data)), []).append(fault)
    return places


def _told_at(path: Path) -> Path:
    """Return the path of a list instead of that of a length or label in it, which cannot be left out alone."""
    in_list = path and isinstance(path[-1], int)
    return path[:-1] if in_list and _list_of(path[:-1]) in ("a list of lengths", LABELS) else path


def _in_data(where: Path, data: Any) -> Path:
    path: list[str | int] = []
    for part in where:
        inside = (isinstance(data, dict) and part in data) or (
            isinstance(data, list) and isinstance(part, int)
        )
        if not inside:
            # A member of a union has a name of its own, which is not in the data.
            continue
        data = data[part]
        path.append(part)
    return tuple(path)


def _at(data: Any, path: Path) -> Any:
    for part in path:
        data = data[part]
    return data


def _note(path: Path, faults: Sequence[ErrorDetails], data: Mapping[str, Any], notes: Notes) -> None:
    key, fault = dotted(*path), faults[0]
    name = f"{path[-2]}.{path[-1]}" if isinstance(path[-1], int) else path[-1]
    if fault["type"] == "extra_forbidden":
        remedy = did_you_mean(str(name), _fields_of_table(path))
        notes.add(
            "unknown-key", key, f"{quoted(str(name))} is not a key of {_table_name(path[:-1])}.", remedy
        )
        return
    value = _at(data, path)
    if fault["type"] == "literal_error" and isinstance(value, str):
        remedy = did_you_mean(value, _words(path) or _choices(path))
        notes.add("unknown-word", key, f"{quoted(value)} is not a word for `{name}`.", remedy)
        return
    if words := _words(path):
        sentence = f"{quoted(str(name))} must be a word or a table, and here it is {_kind(value)}."
        notes.add("wrong-type", key, sentence, f"Choose from {listed(words)}.")
        return
    expected = {_expected(fault, path) for fault in faults}
    if "a number" in expected and expected < _LENGTH:
        expected.discard("a whole number")
    wanted = "a length" if expected >= _LENGTH else " or ".join(sorted(expected))
    here = f"it is {_kind(value)}"
    if wanted == "a whole number" and isinstance(value, float):
        here = "it is no whole number"
    if wanted == "a length" and isinstance(value, list):
        wanted, here = "a list of lengths", "something else is in it"
    if _list_of(path) == LABELS:
        wanted, here = LABELS, "something else is in it" if isinstance(value, list) else here
    if wanted == "a list of tables":
        wanted = _list_of(path)
    sentence = f"{quoted(str(name))} must be {wanted}, and here {here}."
    notes.add("wrong-type", key, sentence, _how_to_write(path, wanted, value))


def _expected(fault: ErrorDetails, path: Path) -> str:
    if fault["type"] == "literal_error":
        return listed(_choices(path))
    return _EXPECTED.get(fault["type"], "a whole number")


def _list_of(path: Path) -> str:
    """Return what a list at a path is a list of."""
    items = model_at(path).get("items", {})
    if "oneOf" in items or "enum" in items:
        return "a list of words"
    if items.get("type") == "string":
        return LABELS
    return "a list of tables" if "$ref" in items else "a list of lengths"


def _how_to_write(path: Path, wanted: str, value: Any) -> str:
    name = f"{path[-2]}.{path[-1]}" if isinstance(path[-1], int) else str(path[-1])
    if name == "shapes" and path[0] == "colourways":
        return 'Write shapes = { petal = "B" }, a fabric for each part.'
    if name == "shape" and isinstance(value, str | int | float):
        return "Write shape = { diameter = '7\"' }, or { radius = … }, or { flow = true }."
    holder = name.rpartition(".")[0]
    if holder and (words := _choices(path)):
        return f"Choose from {listed(words)}."
    if holder and wanted == "text in quotes":
        return 'Put it in quotes, such as "a0".'
    if holder:
        return f"Begin each with a line [[{dotted(*path[:-1])}]], its keys below."
    name = _short(name)
    plain = isinstance(value, int | float) and not isinstance(value, bool)
    if wanted == "text in quotes" and plain:
        return f'Put it in quotes: {name} = "{_short(str(value))}".'
    return {
        "a length": f"Write {name} = '4 1/2\"' or {name} = '110 mm'.",
        "text in quotes": f'Write {name} = "…".',
        "a whole number": f"Write {name} = 2, without quotes.",
        "a number": f"Write {name} = 12.5, without quotes.",
        "true or false": f"Write {name} = true or {name} = false, without quotes.",
        "a list of lengths": f"Write {name} = {_LENGTHS_TO_WRITE.get(name, SIDES)}.",
        LABELS: f'Write {name} = ["A1", "A3"].',
        "a list of words": f'Write {name} = ["a0", "a1"].',
        "a list of tables": f"Begin each with a line [[{_header(path)}]].",
        "a table of keys": f"Begin it with a line [{name}], its keys below.",
    }.get(wanted, f"Give {wanted}.")


def _header(path: Path) -> str:
    return ".".join(_short(part) for part in path)


def _kind(value: Any) -> str:
    kinds = {
        bool: "true or false",
        str: "text",
        int: "a number",
        float: "a number",
        dict: "a table",
        list: "a list",
    }
    if isinstance(value, float) and not math.isfinite(value):
        return "no finite number"
    return kinds.get(type(value), "a date or a time")


def model_at(path: Path) -> Any:
    """Return the schema of the table at a path, as pydantic keeps it."""
    whole = _whole_schema()
    node: Any = whole
    for part in path:
        node = _resolve(node, whole)
        node = node.get("properties", {}).get(part) or node.get("additionalProperties") or node.get("items")
        node = node if isinstance(node, dict) else {}
    return _resolve(node, whole)


@functools.cache
def _whole_schema() -> dict[str, Any]:
    from quarterturn.design.schema import schema

    return schema()


def _resolve(node: Any, whole: Mapping[str, Any]) -> Any:
    while "$ref" in node or "oneOf" in node:
        if "oneOf" in node:
            node = next(each for each in node["oneOf"] if "$ref" in each)
        node = whole["$defs"][node["$ref"].rpartition("/")[2]]
    return node


def _fields_of_table(path: Path) -> list[str]:
    return list(model_at(path[:-1]).get("properties", {}))


def _choices(path: Path) -> list[str]:
    node = model_at(path)
    words = node.get("enum", [node["const"]] if "const" in node else [])
    return ["true" if word is True else str(word) for word in words]


def _words(path: Path) -> list[str]:
    """Return the words that may stand at a path in place of a table; none where no table may."""
    whole = _whole_schema()
    holder = _resolve(model_at(path[:-1]), whole)
    node = holder.get("properties", {}).get(path[-1]) or {}
    members = node.get("oneOf", []) if isinstance(node, dict) else []
    return [str(word) for member in members for word in member.get("enum", ())]


def _table_name(path: Path) -> str:
    return f"[{dotted(*path)}]" if path else "a design"


def _short(word: str | int) -> str:
    text = str(word)
    return text if len(text) <= 40 else text[:39] + "…"


def _remove(data: dict[str, Any], path: Path) -> None:
    """Take the value at a path out; a table of a list leaves an empty one, so that the others keep their places.

    A list of plain values goes whole, with the first of its faults.
    """
    if isinstance(path[-1], int) and "properties" not in model_at(path):
        path = path[:-1]
    holder = _at(data, path[:-1])
    if isinstance(holder, list):
        holder[int(path[-1])] = {}
    elif path[-1] in holder:
        del holder[path[-1]]
