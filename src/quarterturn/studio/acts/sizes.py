"""Acts on sizes: add one for a bed or with changes of one's own, and remove it."""

from __future__ import annotations

import tomllib
from typing import Annotated, ClassVar, Literal

from pydantic import Field, JsonValue

from quarterturn.design import Design, dotted
from quarterturn.design.text import quote_text
from quarterturn.studio.acts.model import Act, Change, RefusedError, written
from quarterturn.studio.acts.tables import has_table, renamed_table, with_tables, without_table

SizeName = Annotated[str, Field(min_length=1, max_length=20)]
LengthText = Annotated[str, Field(min_length=1, max_length=40)]


class AddSize(Act):
    """Add a size: for a known bed with the repeats that fit it, or with what differs in it."""

    key: ClassVar[str] = ""
    name: Literal["add-size"] = "add-size"
    size: SizeName
    bed: Annotated[str, Field(max_length=40)] | None = None
    drop: LengthText | None = None
    changes: Annotated[dict[str, JsonValue], Field(max_length=100)] = Field(default_factory=dict)

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other sizes."""
        if self.size in (design.size, *(each.size for each in design.sizes)):
            raise RefusedError(f"There is a size {self.size!r} already.", "Choose another name.")
        lines = [f"[{dotted('sizes', self.size)}]"]
        if self.bed:
            lines.append(f"bed = {quote_text(self.bed)}")
        if self.drop:
            lines.append(f"drop = {quote_text(self.drop)}")
        if self.changes:
            pairs = (f"{quote_text(key)} = {_toml(value)}" for key, value in self.changes.items())
            lines.append(f"changes = {{ {', '.join(pairs)} }}")
        changed = with_tables(text, "sizes", "\n".join(lines) + "\n")
        return Change(changed, {"size": self.size, "changes": len(self.changes)})


def _toml(value: JsonValue) -> str:
    """Return a value of JSON as TOML writes it on one line. Raises RefusedError for nothing, which TOML has not."""
    if isinstance(value, str):
        return quote_text(value)
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return f"[{', '.join(map(_toml, value))}]"
    if isinstance(value, dict):
        pairs = ", ".join(f"{quote_text(key)} = {_toml(each)}" for key, each in value.items())
        return f"{{ {pairs} }}" if pairs else "{}"
    if value is None:
        raise RefusedError(
            "A change of a size needs a value.", "Write an empty table to take something away."
        )
    return repr(value)


class RemoveSize(Act):
    """Take a size away."""

    key: ClassVar[str] = ""
    name: Literal["remove-size"] = "remove-size"
    size: SizeName

    def change(self, text: str, design: Design) -> Change:
        """Take its table out."""
        if all(each.size != self.size for each in design.sizes):
            raise RefusedError(
                f"There is no size {self.size!r} to take away.", "Choose another than the file's own."
            )
        return Change(without_table(text, ("sizes", self.size)), {"size": self.size})


class RenameSize(Act):
    """Give a size another name, the file's own or another, wherever it is called."""

    key: ClassVar[str] = ""
    name: Literal["rename-size"] = "rename-size"
    size: Annotated[str, Field(max_length=20)]
    """Empty where the file's own has no name yet."""
    to: SizeName

    def change(self, text: str, design: Design) -> Change:
        """Write the name in its header, for the file's own size at the top, and in kits and class."""
        names = [design.size, *(each.size for each in design.sizes)]
        if self.size not in names:
            raise RefusedError(f"There is no size {self.size!r}.", f"Choose one of {', '.join(names)}.")
        if self.to in names:
            raise RefusedError(f"There is a size {self.to!r} already.", "Choose another name.")
        stated = tomllib.loads(text.removeprefix("\ufeff"))
        keys = [
            f"{table}.size" for table in ("kits", "class") if stated.get(table, {}).get("size") == self.size
        ]
        changes: dict[str, object] = dict.fromkeys(
            ["size", *keys] if self.size == design.size else keys, self.to
        )
        old = stated.get("sizes", {}).get(self.size)
        if has_table(text, ("sizes", self.size)):
            text = renamed_table(text, ("sizes", self.size), self.to)
        elif old is not None:
            changes |= {dotted("sizes", self.size): None, dotted("sizes", self.to): old}
        return Change(written(text, changes), {"size": self.size, "to": self.to})
