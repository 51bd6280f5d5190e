"""Acts that put values: a dotted key of the file, several of them, or the whole text."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field, JsonValue

from quarterturn.design import Design
from quarterturn.studio.acts.model import Act, Change, RefusedError, written

DottedKey = Annotated[str, Field(min_length=1, max_length=300)]


def _checked(changes: dict[str, JsonValue]) -> dict[str, JsonValue]:
    from quarterturn.design import parts_of

    for key in changes:
        try:
            head = parts_of(key)[0]
        except ValueError as error:
            raise RefusedError(f"{key!r} is no key of a design.", "Name one such as `title`.") from error
        if head == "format":
            raise RefusedError("The format of a file is the program's to write.", "Leave it as it is.")
    return changes


class Put(Act):
    """Put a value at a dotted key; no value takes the key away."""

    key: ClassVar[str] = ""
    name: Literal["put"] = "put"
    at: DottedKey
    value: JsonValue = None

    def change(self, text: str, design: Design) -> Change:
        """Write the value where it stands."""
        return Change(written(text, _checked({self.at: self.value})), {"at": self.at})


class Puts(Act):
    """Put several values at once."""

    key: ClassVar[str] = ""
    name: Literal["puts"] = "puts"
    values: Annotated[dict[DottedKey, JsonValue], Field(min_length=1, max_length=400)]

    def change(self, text: str, design: Design) -> Change:
        """Write all of them."""
        return Change(written(text, _checked(dict(self.values))), {"values": len(self.values)})


class Write(Act):
    """Write the whole text: by hand in the page, or as it came from elsewhere. It may be no design."""

    key: ClassVar[str] = ""
    may_break: ClassVar[bool] = True
    name: Literal["write"] = "write"
    text: Annotated[str, Field(max_length=1_000_000)]

    def change(self, text: str, design: Design | None) -> Change:
        """Take the text as it is."""
        return Change(self.text, {"lines": self.text.count("\n")})
