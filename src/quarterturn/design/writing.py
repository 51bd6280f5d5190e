"""Change values of a design file where they stand, keeping the designer's comments and layout."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from quarterturn.design.keys import dotted, parts_of
from quarterturn.design.text import quote_lines, quote_text

if TYPE_CHECKING:
    from tomlkit.items import Item


_MARK = "\ufeff"
"""The mark of Unicode with which some editors begin a file; it is no part of the design."""


class WriteError(ValueError):
    """A change that cannot be made: the file does not follow TOML, or the key leads nowhere."""


def write_design(text: str, changes: Mapping[str, object]) -> str:
    """Return the text with the values of some dotted keys changed; a value of None takes the key away.

    Tables that are missing are added at the end; ``borders.<n>`` with n the number of borders adds one. The text is
    changed whether or not the result is a good design, which reading it tells. Raises WriteError.
    """
    if not changes:
        return text
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    try:
        plain = text.removeprefix(_MARK)
        document = tomlkit.parse(plain)
        added: list[Any] = []
        for key, value in changes.items():
            _change(document, parts_of(key), value, added)
        for table in added:
            table.add(tomlkit.nl())
        return text[: len(text) - len(plain)] + tomlkit.dumps(document)
    except (TOMLKitError, ValueError, TypeError) as error:
        raise error if isinstance(error, WriteError) else WriteError(str(error)) from error


def _change(document: Any, parts: tuple[str, ...], value: object, added: list[Any]) -> None:
    holder = document
    for depth, part in enumerate(parts[:-1]):
        listed = _is_list(parts[: depth + 1])
        holder = _inside(holder, part, None if value is None else added, listed=listed)
        if holder is None:
            return
    name: Any = parts[-1]
    if isinstance(holder, list):
        name = _index(holder, name)
    if value is None:
        _take_away(holder, name)
    elif isinstance(holder, list) and name == len(holder):
        holder.append(_item(value, inline=_is_inline(holder)))
    else:
        from tomlkit.items import InlineTable

        old = holder.get(name) if isinstance(holder, dict) else holder[name]
        item = _item(value, old, inline=_is_inline(holder) or isinstance(old, InlineTable))
        if (
            isinstance(holder, dict)
            and name not in holder
            and (last := _last_before_notes(holder)) is not None
        ):
            _container(holder)._insert_after(last, name, item)  # tomlkit itself would put it behind the notes
        else:
            holder[name] = item


def _last_before_notes(holder: Any) -> Any:
    """Return the last key of a table behind which, after an empty line, only notes stand: those of the next table."""
    from tomlkit import TOMLDocument
    from tomlkit.items import AoT, Comment, Table, Whitespace

    if not isinstance(holder, Table | TOMLDocument):
        return None
    body = _container(holder).body
    if isinstance(holder, TOMLDocument):
        tables = (k for k, (_, item) in enumerate(body) if isinstance(item, Table | AoT))
        body = body[: next(tables, len(body))]
    last = max((k for k, (key, _) in enumerate(body) if key is not None), default=None)
    if last is None or (isinstance(body[last][1], dict | list) and not _is_inline(body[last][1])):
        return None
    behind = [item for _, item in body[last + 1 :]]
    has_notes = any(isinstance(item, Comment) for item in behind)
    return body[last][0] if has_notes and isinstance(behind[0], Whitespace) else None


def _container(holder: Any) -> Any:
    """Return what holds the keys of a table, or of the whole file above its first table."""
    from tomlkit import TOMLDocument

    return holder if isinstance(holder, TOMLDocument) else holder.value


def _take_away(holder: Any, name: Any) -> None:
    if isinstance(holder, list):
        if name < len(holder):
            holder.pop(name)
    elif name in holder:
        del holder[name]


_LISTS_INSIDE = {
    ("fabrics", "strips"),
    ("recipes", "shapes"),
    ("sections", "borders"),
    ("sections", "motifs"),
}


def _is_list(parts: tuple[str, ...]) -> bool:
    """Tell whether what has this key is a list of tables: borders, motifs, strips, or the shapes of a recipe."""
    if parts in (("borders",), ("notions",), ("setting", "motifs")):
        return True
    return len(parts) == 3 and (parts[0], parts[2]) in _LISTS_INSIDE


def _inside(holder: Any, part: str, added: list[Any] | None, *, listed: bool) -> Any:
    """Return the table or list in a table or list; where there is none, a new one if they can be added, or None."""
    import tomlkit

    if isinstance(holder, list):
        index = _index(holder, part)
        if index == len(holder):
            if added is None:
                return None
            holder.append(tomlkit.table())
            added.append(holder[index])
        inner = holder[index]
    else:
        if part not in holder:
            if added is None:
                return None
            holder[part] = tomlkit.aot() if listed else tomlkit.table()
        inner = holder[part]
    if not isinstance(inner, dict | list):
        raise WriteError(f"{part!r} is a value and has no keys")
    return inner


def _index(holder: list[Any], part: str) -> int:
    if not part.isdecimal() or int(part) > len(holder):
        raise WriteError(f"{part!r} is not the number of an item; there are {len(holder)}")
    return int(part)


def _is_inline(holder: Any) -> bool:
    """Tell whether what is put into a holder stands on its line, between brackets or braces."""
    from tomlkit.items import Array, InlineTable

    return isinstance(holder, Array | InlineTable)


def _item(value: object, old: object = None, *, inline: bool = False) -> Item:
    """Return a value as TOML, text in the kind of quotes that suits it; tables in a list stand on one line each."""
    import tomlkit

    if isinstance(value, Fraction):
        value = int(value) if value.denominator == 1 else float(value)
    if isinstance(value, dict) and inline:
        pairs = (
            f"{dotted(str(key))} = {_item(each, inline=True).as_string()}" for key, each in value.items()
        )
        return tomlkit.value(f"{{ {', '.join(pairs)} }}" if value else "{}")
    if isinstance(value, list | tuple) and value:
        return tomlkit.value(_listed([_item(each, inline=True) for each in value]))
    if not isinstance(value, str):
        return tomlkit.item(value)
    if "\n" in value or (isinstance(old, str) and "\n" in old):
        return tomlkit.value(quote_lines(value.removesuffix("\n")))
    return tomlkit.value(quote_text(value))


def _listed(items: list[Item]) -> str:
    """Return a list on one line, or with a line for each table."""
    from tomlkit.items import InlineTable

    texts = [item.as_string() for item in items]
    if any(isinstance(item, InlineTable) for item in items):
        return "[\n" + "".join(f"  {text},\n" for text in texts) + "]"
    return f"[{', '.join(texts)}]"
