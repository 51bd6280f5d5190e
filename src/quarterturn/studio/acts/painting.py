"""Acts that paint maps: turn, lay, fill, stamp, swap colourways."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import ROOT, Cell, Design, LineSet, MapCell, PanelSet, PiecedBorder
from quarterturn.studio.acts.maps import (
    Address,
    address,
    cell_at,
    cell_of_word,
    painted,
    setting_of,
    sheet_of,
    turned_cell,
    word_of,
)
from quarterturn.studio.acts.model import Act, CellAt, Change, Name, RefusedError, Turn, written

Cells = Annotated[tuple[CellAt, ...], Field(min_length=1, max_length=40_000)]
Word = Annotated[str, Field(max_length=30)]


class TurnCells(Act):
    """Turn what fills some cells so many quarters clockwise."""

    key: ClassVar[str] = "r"
    name: Literal["turn"] = "turn"
    cells: Cells
    by: Annotated[int, Field(ge=-3, le=3)] = 1

    def change(self, text: str, design: Design) -> Change:
        """Write the words with their new turns."""
        cells = {address(at): turned_cell(cell_at(design, at), self.by) for at in self.cells}
        return Change(written(text, painted(design, cells)), {"cells": len(cells), "by": self.by % 4})


class LayCells(Act):
    """Lay a unit, a fabric or a section into some cells, all with one turn, or each with its own.

    Where a brush with symmetry lays mirror images, `units` names the unit of each cell.
    """

    key: ClassVar[str] = "Enter"
    name: Literal["lay"] = "lay"
    cells: Cells
    unit: Name
    turn: Turn = 0
    turns: tuple[Turn, ...] = ()
    units: tuple[Name, ...] = ()

    def change(self, text: str, design: Design) -> Change:
        """Write the words."""
        count = len(self.cells)
        turns, units = self.turns or (self.turn,) * count, self.units or (self.unit,) * count
        if len(turns) != count or len(units) != count:
            raise RefusedError("Not every cell has its unit and turn.", "Name as many as there are cells.")
        cells: dict[Address, MapCell] = {}
        for at, unit, turn in zip(self.cells, units, turns, strict=True):
            cell_at(design, at)
            cells[address(at)] = word_of(design, unit, turn)
        return Change(written(text, painted(design, cells)), {"cells": len(cells), "unit": self.unit})


class FillSection(Act):
    """Lay a unit, a fabric or a section into every cell of a section."""

    key: ClassVar[str] = "f"
    name: Literal["fill"] = "fill"
    section: Name
    unit: Name
    turn: Turn = 0

    def change(self, text: str, design: Design) -> Change:
        """Write every word of the map."""
        word = word_of(design, self.unit, self.turn)
        sheet = sheet_of(design, self.section)
        cells = {
            (self.section, r, c): word
            for r, row in enumerate(sheet.rows)
            for c, cell in enumerate(row)
            if cell is not None
        }
        return Change(written(text, painted(design, cells)), {"cells": len(cells), "unit": self.unit})


class StampWords(Act):
    """Lay a block of words with its top left one in a cell; an empty word leaves what is there.

    What reaches past the edge of the map is left out.
    """

    key: ClassVar[str] = "s"
    name: Literal["stamp"] = "stamp"
    section: Name
    row: Annotated[int, Field(ge=0, le=1000)]
    column: Annotated[int, Field(ge=0, le=1000)]
    words: Annotated[tuple[tuple[Word, ...], ...], Field(min_length=1, max_length=400)]

    def change(self, text: str, design: Design) -> Change:
        """Write the words that fall into the map."""
        rows = sheet_of(design, self.section).rows
        cells: dict[Address, MapCell] = {}
        for r, words in enumerate(self.words, self.row):
            for c, word in enumerate(words, self.column):
                if word and r < len(rows) and c < len(rows[r]) and rows[r][c] is not None:
                    cells[self.section, r, c] = cell_of_word(design, word)
        if not cells:
            raise RefusedError("Nothing of the block falls into the map.", "Stamp it nearer to the top left.")
        return Change(written(text, painted(design, cells)), {"cells": len(cells)})


class SwapColourways(Act):
    """Exchange two colourways in the maps: in some cells, in one section, or in all."""

    key: ClassVar[str] = "x"
    name: Literal["swap-colourways"] = "swap-colourways"
    a: Name
    b: Name
    section: Name | None = None
    cells: Cells | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write each unit of one as the other's."""
        codes = {way.code for way in design.colourways}
        for code in (self.a, self.b):
            if code not in codes:
                raise RefusedError(f"There is no colourway `{code}`.", "Choose two that the design has.")
        other = {self.a: self.b, self.b: self.a}
        sections = painted_sections(design) if self.section is None else (self.section,)
        wanted = None if self.cells is None else {(at.section, at.row, at.column) for at in self.cells}
        cells: dict[Address, MapCell] = {
            (section, r, c): replace(cell, code=other[cell.code])
            for section in sections
            for r, row in enumerate(sheet_of(design, section).rows)
            for c, cell in enumerate(row)
            if isinstance(cell, Cell) and cell.code in other and (wanted is None or (section, r, c) in wanted)
        }
        if design.colourway(self.a).recipe != design.colourway(self.b).recipe and any(
            map(_is_quarter, cells.values())
        ):
            sentence = (
                f"{self.a} and {self.b} are cut into different pieces, so that they cannot change places."
            )
            raise RefusedError(sentence, "Lay units of the other where you want them.")
        return Change(written(text, painted(design, cells)), {"cells": len(cells), "a": self.a, "b": self.b})


def _is_quarter(cell: MapCell) -> bool:
    return isinstance(cell, Cell) and bool(cell.quarter)


def painted_sections(design: Design) -> Iterator[str]:
    """Yield the name of everything that has words: sections but panels, and borders with corners."""
    for name in (ROOT, *(section.name for section in design.sections)):
        setting = setting_of(design, name)
        if not isinstance(setting, PanelSet) and not (isinstance(setting, LineSet) and not setting.parts):
            yield name
        borders = design.borders if name == ROOT else setting.borders
        for k, border in enumerate(borders, 1):
            if isinstance(border, PiecedBorder) and border.corners is not None:
                yield f"border {k} of {name}"
