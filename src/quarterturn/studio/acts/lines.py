"""Acts on lines of sections: add, remove and move their parts."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import Design, LineSet, Strip, map_word, section_key, write_length
from quarterturn.studio.acts.maps import setting_of, word_of
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, Turn, written

Number = Annotated[int, Field(ge=0, le=1000)]


class AddPart(Act):
    """Add a section or unit to a line, or a strip of a fabric where a width is given."""

    key: ClassVar[str] = ""
    name: Literal["add-part"] = "add-part"
    section: Name
    place: Number
    part: Name
    turn: Turn = 0
    width: Annotated[str, Field(min_length=1, max_length=40)] | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write the parts with one more."""
        parts = parts_of_line(design, self.section)
        if self.width is None:
            added: object = map_word(word_of(design, self.part, self.turn))
        else:
            added = {"fabric": self.part, "width": self.width}
        parts.insert(min(self.place, len(parts)), added)
        return Change(written_line(text, self.section, parts), {"section": self.section, "part": self.part})


class RemovePart(Act):
    """Take a part out of a line."""

    key: ClassVar[str] = ""
    name: Literal["remove-part"] = "remove-part"
    section: Name
    place: Number

    def change(self, text: str, design: Design) -> Change:
        """Write the parts without it."""
        parts = parts_of_line(design, self.section)
        _check(parts, self.place)
        if len(parts) == 1:
            raise RefusedError("A line of sections needs one part at least.", "Put another in first.")
        key = section_key(self.section, "parts", self.place)
        return Change(written(text, {key: None}), {"section": self.section})


class MovePart(Act):
    """Move a part of a line to another place in it."""

    key: ClassVar[str] = ""
    name: Literal["move-part"] = "move-part"
    section: Name
    place: Number
    to: Number

    def change(self, text: str, design: Design) -> Change:
        """Write the parts in their new order."""
        parts = parts_of_line(design, self.section)
        _check(parts, self.place)
        parts.insert(self.to, parts.pop(self.place))
        return Change(written_line(text, self.section, parts), {"section": self.section})


def parts_of_line(design: Design, section: str) -> list[object]:
    """Return the parts of a line as the file writes them. Raises RefusedError where the section is none."""
    setting = setting_of(design, section)
    if not isinstance(setting, LineSet):
        raise RefusedError(f"The section `{section}` is no line of sections.", "Choose columns or rows.")
    return [
        {"fabric": part.fabric, "width": write_length(part.width, design.units)}
        if isinstance(part, Strip)
        else map_word(part)
        for part in setting.parts
    ]


def _check(parts: list[object], place: int) -> None:
    if place >= len(parts):
        raise RefusedError(f"The line has {len(parts)} parts.", "Choose one of them.")


def written_line(text: str, section: str, parts: list[object]) -> str:
    """Return the text with the parts of a line: each at its place, so that the list keeps its layout."""
    return written(text, {section_key(section, "parts", k): part for k, part in enumerate(parts)})
