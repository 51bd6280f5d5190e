"""Acts that paint maps: turn, lay."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import Design, MapCell
from quarterturn.studio.acts.maps import Address, address, cell_at, painted, turned_cell, word_of
from quarterturn.studio.acts.model import Act, CellAt, Change, Name, Turn, written

Cells = Annotated[tuple[CellAt, ...], Field(min_length=1, max_length=40_000)]


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
    """Lay a unit, a fabric or a section into some cells, each with the turn given or its own."""

    key: ClassVar[str] = "Enter"
    name: Literal["lay"] = "lay"
    cells: Cells
    unit: Name
    turn: Turn = 0
    turns: tuple[Turn, ...] = ()
    """A turn for each cell, where a brush with symmetry lays several; none: `turn` for all."""

    def change(self, text: str, design: Design) -> Change:
        """Write the words."""
        turns = self.turns or (self.turn,) * len(self.cells)
        cells: dict[Address, MapCell] = {}
        for at, turn in zip(self.cells, turns, strict=False):
            cell_at(design, at)
            cells[address(at)] = word_of(design, self.unit, turn)
        return Change(written(text, painted(design, cells)), {"cells": len(cells), "unit": self.unit})
