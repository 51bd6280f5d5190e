"""Acts on sections: add, remove, rename, resize, lay otherwise, write out their repeats."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import (
    ROOT,
    Design,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    Section,
    SectionCell,
    SectionSet,
    StraightSet,
    Symmetry,
    TriangleFit,
    border_key,
    map_word,
    section_key,
)
from quarterturn.design.section_tables import section_tables
from quarterturn.measure import INCH, MM, Length, LengthError, Units, parse_length
from quarterturn.studio.acts.beside import Side, text_beside
from quarterturn.studio.acts.maps import between_text, map_text, painted, setting_of, sheet_of, word_of
from quarterturn.studio.acts.model import Act, Change, Facts, Name, RefusedError, written
from quarterturn.studio.acts.painting import painted_sections
from quarterturn.studio.acts.tables import renamed_table, with_sizes_renamed, with_tables, without_table

SectionName = Annotated[str, Field(pattern=r"^[a-z]{3,20}$")]
Count = Annotated[int, Field(ge=1, le=200)]
LengthText = Annotated[str, Field(min_length=1, max_length=40)]
Kind = Literal["straight", "on point", "columns", "rows", "panel"]


class AddSection(Act):
    """Add a section of a kind, of so many rows and columns (or parts) of a unit, or a panel of a size."""

    key: ClassVar[str] = "Shift+N"
    name: Literal["add-section"] = "add-section"
    section: SectionName
    kind: Kind = "straight"
    unit: Name
    fabric: Name
    rows: Count = 2
    columns: Count = 2
    width: LengthText | None = None
    height: LengthText | None = None
    beside: Side | None = None
    """Where it is laid beside the whole quilt; where not given it is laid nowhere yet."""

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other sections."""
        if any(section.name == self.section for section in design.sections):
            raise RefusedError(f"There is a section `{self.section}` already.", "Choose another name.")
        made = Section(self.section, self._setting(design))
        tables = "\n\n".join(section_tables(made, design.units))
        laid = text_beside(text, design, self.section, self.beside) if self.beside else text
        return Change(with_tables(laid, "sections", tables), {"section": self.section, "kind": self.kind})

    def _setting(self, design: Design) -> SectionSet:
        if self.kind == "panel":
            side = Length(12) * INCH if design.units is Units.INCH else 300 * MM
            sizes = [length_of(each, design.units) if each else side for each in (self.width, self.height)]
            return PanelSet(self.fabric, sizes[0], sizes[1], ())
        word = word_of(design, self.unit, 0)
        if self.kind in ("columns", "rows"):
            return LineSet((word,) * self.columns, below=self.kind == "rows")
        cells: Map = ((word,) * self.columns,) * self.rows
        if self.kind == "straight":
            return StraightSet(cells, 1, 1)
        between: Map = ((word,) * (self.columns - 1),) * (self.rows - 1)
        return OnPointSet(cells, between, self.fabric, self.fabric, TriangleFit.HANDBOOK, Length(0))


class RemoveSection(Act):
    """Take a section away, its borders with it; where it lies, something else is laid instead."""

    key: ClassVar[str] = ""
    name: Literal["remove-section"] = "remove-section"
    section: SectionName
    instead: Name | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write other words where it lies, and take its table out."""
        setting_of(design, self.section)
        places = {
            address: cell
            for address, cell in _words(design).items()
            if isinstance(cell, SectionCell) and cell.section == self.section and address[0] != self.section
        }
        if places and self.instead is None:
            sentence = f"The section `{self.section}` lies in the quilt."
            raise RefusedError(sentence, "Say what is to lie there instead.")
        _refuse_in_borders(design, self.section)
        word = word_of(design, self.instead, 0) if self.instead else None
        changes = painted(design, {address: word for address in places if word})
        rest = without_table(written(text, changes), ("sections", self.section))
        return Change(rest, {"section": self.section, "cells": len(places)})


class RenameSection(Act):
    """Give a section another name, wherever it is called."""

    key: ClassVar[str] = ""
    name: Literal["rename-section"] = "rename-section"
    section: SectionName
    to: SectionName

    def change(self, text: str, design: Design) -> Change:
        """Write the name in its headers, and in every map, line and border."""
        setting_of(design, self.section)
        if any(section.name == self.to for section in design.sections):
            raise RefusedError(f"There is a section `{self.to}` already.", "Choose another name.")
        cells = {
            address: replace(cell, section=self.to)
            for address, cell in _words(design).items()
            if isinstance(cell, SectionCell) and cell.section == self.section
        }
        changes = painted(design, cells) | _in_borders(design, self.section, self.to)
        changed = renamed_table(written(text, changes), ("sections", self.section), self.to)
        return Change(with_sizes_renamed(changed, self._renamed), {"section": self.section, "to": self.to})

    def _renamed(self, parts: tuple[str, ...], value: object) -> tuple[tuple[str, ...], object]:
        if parts[:2] == ("sections", self.section):
            parts = ("sections", self.to, *parts[2:])
        whole = re.compile(rf"(?<![A-Za-z-]){self.section}(?=[0-3]?(?:\s|$))")
        if isinstance(value, str) and {"map", "between", "parts", "sides", "ends", "corners"} & set(parts):
            value = whole.sub(self.to, value)
        return parts, value


class ResizeMap(Act):
    """Add rows and columns at the edges of a map, or take them away (below 0).

    New places go on as the map repeats, or are filled with a word.
    """

    key: ClassVar[str] = ""
    name: Literal["resize-map"] = "resize-map"
    section: Name
    top: Annotated[int, Field(ge=-200, le=200)] = 0
    right: Annotated[int, Field(ge=-200, le=200)] = 0
    bottom: Annotated[int, Field(ge=-200, le=200)] = 0
    left: Annotated[int, Field(ge=-200, le=200)] = 0
    fill: Name | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write the larger or smaller map."""
        setting = setting_of(design, self.section)
        if not isinstance(setting, StraightSet | OnPointSet):
            raise RefusedError("Only maps have rows and columns.", "Add and remove parts, or size the panel.")
        word = word_of(design, self.fill, 0) if self.fill else None
        cells = self._grown(setting.cells, word, setting.cells)
        changes: dict[str, object] = {section_key(self.section, "map"): map_text(cells)}
        if isinstance(setting, OnPointSet):
            key = section_key(self.section, "between")
            rows, columns = len(cells) - 1, len(cells[0]) - 1
            between = self._grown(setting.between, word, setting.cells) if rows and columns else ()
            changes[key] = between_text(between) if between and between[0] else None
        facts: Facts = {"section": self.section, "rows": len(cells), "columns": len(cells[0])}
        return Change(written(text, changes), facts)

    def _grown(self, rows: Map, word: MapCell | None, pattern: Map) -> Map:
        """Return a map with its edges moved; where it has nothing to repeat, `pattern` is repeated."""
        source = rows if rows and rows[0] else pattern
        down, across = len(rows), len(rows[0]) if rows else max(len(pattern[0]) - 1, 0)
        if down + self.top + self.bottom < 1 or across + self.left + self.right < 1:
            raise RefusedError("Nothing of the map would be left.", "Keep one row and one column at least.")

        def at(r: int, c: int) -> MapCell:
            inside = 0 <= r < down and 0 <= c < across and rows is source
            return source[r % len(source)][c % len(source[0])] if inside or word is None else word

        columns = range(-self.left, across + self.right)
        return tuple(tuple(at(r, c) for c in columns) for r in range(-self.top, down + self.bottom))


class WriteOut(Act):
    """Write a map out with its repeats, so that each place can be painted by itself."""

    key: ClassVar[str] = ""
    name: Literal["write-out"] = "write-out"
    section: Name

    def change(self, text: str, design: Design) -> Change:
        """Write the whole map, laid once."""
        setting = setting_of(design, self.section)
        if not isinstance(setting, StraightSet):
            raise RefusedError("Only a straight map repeats.", "Paint it as it is.")
        rows, columns = setting.size
        return Change(written(text, _out(self.section, setting)), {"rows": rows, "columns": columns})


class LayOtherwise(Act):
    """Set a section another way: straight or on point, side by side or one below another."""

    key: ClassVar[str] = ""
    name: Literal["lay-otherwise"] = "lay-otherwise"
    section: Name
    kind: Literal["straight", "on point", "columns", "rows"]
    fabric: Name | None = None
    """Of the triangles and what lies between, where a map is put on point."""

    def change(self, text: str, design: Design) -> Change:
        """Write the keys that the other kind has, and take out those that it has not."""
        setting = setting_of(design, self.section)
        key = section_key(self.section)
        facts = {"section": self.section, "kind": self.kind}
        if isinstance(setting, LineSet) and self.kind in ("columns", "rows"):
            return Change(written(text, {f"{key}.kind": self.kind}), facts)
        if isinstance(setting, StraightSet) and self.kind == "on point":
            cloth = self.fabric or design.fabrics[0].letter
            changes = {**_out(self.section, setting), f"{key}.kind": "on point", f"{key}.triangles": cloth}
            gone: dict[str, object] = {f"{key}.{name}": None for name in ("symmetry", "across", "down")}
            rows, columns = setting.size
            between = {f"{key}.between": cloth} if rows > 1 and columns > 1 else {}
            return Change(written(text, {**changes, **gone, **between}), facts)
        if isinstance(setting, OnPointSet) and self.kind == "straight":
            names = ("between", "triangles", "corners", "fit", "float", "side_square", "corner_square")
            gone = {f"{key}.{name}": None for name in names}
            return Change(written(text, {**gone, f"{key}.kind": "straight"}), facts)
        if self.kind == ("straight" if isinstance(setting, StraightSet) else "on point"):
            return Change(text, facts)
        raise RefusedError(f"This section cannot be laid {self.kind}.", "Add a section of that kind instead.")


def length_of(text: str, units: Units) -> Length:
    """Return a length as written. Raises RefusedError."""
    try:
        return parse_length(text, units)
    except LengthError as error:
        raise RefusedError(f"{text!r} is not a length.", "Write one such as 4 1/4 in, or 11 cm.") from error


def _out(section: str, setting: StraightSet) -> dict[str, object]:
    key = section_key(section)
    changes: dict[str, object] = (
        {f"{key}.map": map_text(setting.rows())} if setting.rows() != setting.cells else {}
    )
    if setting.symmetry is not Symmetry.SLIDE:
        changes[f"{key}.symmetry"] = None
    repeats = {f"{key}.{name}": None for name in ("across", "down") if getattr(setting, name) > 1}
    return {**changes, **repeats}


def _words(design: Design) -> Mapping[tuple[str, int, int], MapCell]:
    return {
        (section, r, c): cell
        for section in painted_sections(design)
        for r, row in enumerate(sheet_of(design, section).rows)
        for c, cell in enumerate(row)
        if cell is not None
    }


def _strips(design: Design) -> Mapping[str, SectionCell]:
    """Return the sections that are strips of borders, by their keys."""
    return {
        f"{border_key(name, k)}.{side}": getattr(border, side)
        for name in (ROOT, *(section.name for section in design.sections))
        for k, border in enumerate(design.borders if name == ROOT else setting_of(design, name).borders)
        if isinstance(border, PiecedBorder)
        for side in ("sides", "ends")
    }


def _in_borders(design: Design, section: str, to: str) -> dict[str, object]:
    return {
        key: map_word(replace(cell, section=to))
        for key, cell in _strips(design).items()
        if cell.section == section
    }


def _refuse_in_borders(design: Design, section: str) -> None:
    if any(cell.section == section for cell in _strips(design).values()):
        sentence = f"The section `{section}` is a strip of a pieced border."
        raise RefusedError(sentence, "Take the border away first, or give it another strip.")
