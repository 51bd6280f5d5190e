"""Do the units of a straight setting fit: all of a row of one height, all of a column of one width?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import limits
from quarterturn.design.cuts import pieces_of
from quarterturn.design.maps import MAP
from quarterturn.design.model import Cell, Design
from quarterturn.design.notes import Notes, exact_length
from quarterturn.measure import Length, Units

Size: TypeAlias = tuple[Length, Length]
"""Width and height."""


@dataclass(frozen=True, slots=True)
class Misfit:
    """A row (or else a column), counted from 0, whose units differ in height (or width): measure by name of unit."""

    is_row: bool
    index: int
    measures: Mapping[str, Length]

    @property
    def line(self) -> str:
        """Return the line in words: `row 2`."""
        return f"{'row' if self.is_row else 'column'} {self.index + 1}"


def misfit(names: Sequence[Sequence[str]], sizes: Sequence[Sequence[Size | None]]) -> Misfit | None:
    """Return the first row or column of a map whose units do not fit; sizes that are not known are passed over."""
    for is_row, lines in ((True, sizes), (False, tuple(zip(*sizes, strict=True)))):
        named = names if is_row else tuple(zip(*names, strict=True))
        for index, line in enumerate(lines):
            measures: dict[str, Length] = {}
            for name, size in zip(named[index], line, strict=True):
                if size is not None:
                    measures.setdefault(name, size[1] if is_row else size[0])
            if len(set(measures.values())) > 1:
                return Misfit(is_row, index, measures)
    return None


def check_sizes(design: Design, notes: Notes) -> None:
    """Note a map whose units do not fit one another, or that makes too large a quilt, as far as sizes are known."""
    by_code = {colourway.code: _size(design, colourway.recipe) for colourway in design.colourways}
    rows = design.setting.rows()
    sizes = [[_turned(by_code[cell.code], cell) for cell in row] for row in rows]
    used = dict.fromkeys(cell.code for row in design.setting.cells for cell in row)
    used_sizes = {code: size for code in used if (size := by_code[code])}
    squares = {code: width for code, (width, height) in used_sizes.items() if width == height}
    if len(squares) == len(used_sizes) and len(set(squares.values())) > 1:
        _note_squares(squares, notes)
    elif found := misfit([[cell.code + str(cell.turn) for cell in row] for row in rows], sizes):
        notes.add("units-differ", MAP, *told_misfit(found, notes.units))
    else:
        _check_whole_size(design, sizes, notes)


def _size(design: Design, name: str) -> Size | None:
    """Return what a unit of a recipe finishes as; None where that depends on the piece."""
    for rejoined in design.rejoined:
        if rejoined.name == name:
            return rejoined.finished_width, rejoined.finished_height
    recipe = design.recipe(name)
    if pieces_of(recipe.cuts) is None:
        return None
    return recipe.finished_width, recipe.finished_height


def _turned(size: Size | None, cell: Cell) -> Size | None:
    return (size[1], size[0]) if size and cell.turn % 2 else size


def told_misfit(found: Misfit, units: Units) -> tuple[str, str]:
    """Return a sentence and a remedy for a misfit."""
    way = "high" if found.is_row else "wide"
    first: dict[Length, str] = {}
    for name, measure in found.measures.items():
        first.setdefault(measure, name)
    told = ", ".join(
        f"{name} finishes {exact_length(measure, units)} {way}" for measure, name in first.items()
    )
    sentence = f"The units of {found.line} of the map do not fit: {told}."
    remedy = (
        "In a straight setting a row has one height, a column one width: turn units, or change their sizes."
    )
    return sentence, remedy


def _note_squares(sides: Mapping[str, Length], notes: Notes) -> None:
    first: dict[Length, str] = {}
    for code, side in sides.items():
        first.setdefault(side, code)
    told = ", ".join(f"{code} finishes {notes.show(side)}" for side, code in first.items())
    notes.add(
        "units-differ",
        MAP,
        f"The units of the map differ in size: {told}.",
        "In a straight setting all units finish alike; change finished in their recipes.",
    )


def _check_whole_size(design: Design, sizes: Sequence[Sequence[Size | None]], notes: Notes) -> None:
    borders = 2 * sum((border.width for border in design.borders), Length(0))
    width = sum((_first(line, 0) for line in zip(*sizes, strict=True)), Length(0))
    height = sum((_first(line, 1) for line in sizes), Length(0))
    longest = max(width, height) + borders
    if longest > limits.LARGEST_QUILT:
        notes.add(
            "quilt-too-large",
            "setting",
            f"The quilt measures {notes.show(longest)} along its longer side.",
            "Use fewer or smaller units.",
        )


def _first(line: Sequence[Size | None], which: int) -> Length:
    return next((size[which] for size in line if size), Length(0))
