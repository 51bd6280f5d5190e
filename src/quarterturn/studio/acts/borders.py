"""Acts on borders: add, remove, move. Their widths and fabrics are put like any value."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import ROOT, Design
from quarterturn.design.text import quote_text
from quarterturn.studio.acts.maps import borders_of
from quarterturn.studio.acts.model import Act, Change, Facts, Name, RefusedError, written
from quarterturn.studio.acts.tables import items_of, with_items, with_tables

LengthText = Annotated[str, Field(min_length=1, max_length=40)]
Number = Annotated[int, Field(ge=0, le=20)]


class AddBorder(Act):
    """Add a border round a section, or round all (`centre`), at a place counted from the inside.

    Plain: a fabric and a width. Pieced: two sections, and what fills the corners. Coping: a fabric and a size.
    """

    key: ClassVar[str] = "b"
    name: Literal["add-border"] = "add-border"
    section: Name = ROOT
    place: Number | None = None
    kind: Literal["plain", "pieced", "coping"] = "plain"
    fabric: Name | None = None
    width: LengthText | None = None
    corners: Name | None = None
    cornerstone: Name | None = None
    sides: Name | None = None
    ends: Name | None = None
    to: tuple[LengthText, LengthText] | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write its table among the others."""
        count = len(borders_of(design, self.section))
        place = count if self.place is None else min(self.place, count)
        added = f"[[{_header(self.section)}]]\n{self._lines()}"
        parts = _parts(self.section)
        if items_of(text, parts) != count:
            raise RefusedError("The borders are written as one list.", "Give each a table of its own first.")
        if count:
            changed = with_items(text, parts, lambda items: [*items[:place], added, *items[place:]])
        elif self.section == ROOT:
            changed = with_tables(text, "borders", added)
        else:
            changed = _behind(text, parts[:-1], added)
        return Change(changed, {"section": self.section, "border": place + 1, "kind": self.kind})

    def _lines(self) -> str:
        pairs = [("kind", None if self.kind == "plain" else self.kind)]
        pairs += [
            (name, getattr(self, name))
            for name in ("fabric", "width", "corners", "cornerstone", "sides", "ends")
        ]
        lines = [f"{name} = {quote_text(value)}" for name, value in pairs if value is not None]
        if self.to is not None:
            lines.append(f"to = [{', '.join(map(quote_text, self.to))}]")
        return "\n".join(lines) + "\n"


class RemoveBorder(Act):
    """Take a border away, counted from the inside from 0."""

    key: ClassVar[str] = ""
    name: Literal["remove-border"] = "remove-border"
    section: Name = ROOT
    place: Number

    def change(self, text: str, design: Design) -> Change:
        """Take its table out."""
        _check(design, self.section, self.place)
        parts = _parts(self.section)
        facts: Facts = {"section": self.section, "border": self.place + 1}
        if not items_of(text, parts):
            return Change(written(text, {f"{_header(self.section)}.{self.place}": None}), facts)
        changed = with_items(text, parts, lambda items: items[: self.place] + items[self.place + 1 :])
        return Change(changed, facts)


class MoveBorder(Act):
    """Move a border inwards or outwards, to another place among the borders of its section."""

    key: ClassVar[str] = ""
    name: Literal["move-border"] = "move-border"
    section: Name = ROOT
    place: Number
    to: Number

    def change(self, text: str, design: Design) -> Change:
        """Move its table, its notes with it."""
        _check(design, self.section, self.place)
        parts = _parts(self.section)
        if not items_of(text, parts):
            raise RefusedError("The borders are written as one list.", "Give each a table of its own first.")

        def moved(items: list[str]) -> list[str]:
            rest = items[: self.place] + items[self.place + 1 :]
            return [*rest[: self.to], items[self.place], *rest[self.to :]]

        return Change(with_items(text, parts, moved), {"section": self.section, "border": self.to + 1})


def _check(design: Design, section: str, place: int) -> None:
    count = len(borders_of(design, section))
    if place >= count:
        raise RefusedError(f"There is no border {place + 1}; there are {count}.", "Choose one of them.")


def _parts(section: str) -> tuple[str, ...]:
    return ("borders",) if section == ROOT else ("sections", section, "borders")


def _header(section: str) -> str:
    return ".".join(_parts(section))


def _behind(text: str, parts: tuple[str, ...], added: str) -> str:
    """Return the text with a table right behind those of another."""
    from quarterturn.studio.acts.tables import Table, joined, tables_of

    pieces = tables_of(text)
    places = [k for k, piece in enumerate(pieces) if piece.parts[: len(parts)] == parts]
    if not places:
        raise RefusedError(
            "The section is written inside another table.", "Give it a table of its own first."
        )
    last = places[-1] + 1
    pieces.insert(last, Table(parts, listed=True, text=f"{added.rstrip()}\n\n"))
    before = pieces[last - 1]
    pieces[last - 1] = Table(before.parts, before.listed, before.text.rstrip("\n") + "\n\n")
    return joined(pieces).rstrip("\n") + "\n"
