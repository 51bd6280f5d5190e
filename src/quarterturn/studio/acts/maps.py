"""Maps as they are written: which words stand where, and the text that new words make."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from quarterturn.design import (
    ROOT,
    AnyBorder,
    Cell,
    ClothCell,
    Design,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PiecedBorder,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    border_key,
    map_word,
    section_key,
)
from quarterturn.design.maps import Words, cell_of
from quarterturn.studio.acts.model import CellAt, RefusedError

Address = tuple[str, int, int]
Rows = tuple[tuple[MapCell | None, ...], ...]
"""Words by rows and columns; None where no word stands."""


def address(cell: CellAt) -> Address:
    """Return an address that can be a key."""
    return cell.section, cell.row, cell.column


@dataclass(frozen=True, slots=True)
class Sheet:
    """The words of one section by rows and columns; None where no word stands: a strip of a line."""

    section: str
    rows: Rows


def setting_of(design: Design, section: str) -> SectionSet:
    """Return how a section is laid. Raises RefusedError where there is none of this name."""
    if section == ROOT:
        return design.setting
    for each in design.sections:
        if each.name == section:
            return each.setting
    raise RefusedError(f"There is no section `{section}`.", "Choose one that the design has.")


def borders_of(design: Design, section: str) -> tuple[AnyBorder, ...]:
    """Return the borders round a section."""
    return design.borders if section == ROOT else setting_of(design, section).borders


def sheet_of(design: Design, section: str) -> Sheet:
    """Return the words of a section, or of the corners of a border (`border 1 of centre`)."""
    if section.startswith("border "):
        return Sheet(section, ((_corner(design, section)[1],),))
    setting = setting_of(design, section)
    if isinstance(setting, StraightSet):
        return Sheet(section, setting.cells)
    if isinstance(setting, OnPointSet):
        rows = (row for k, each in enumerate(setting.cells) for row in (each, *setting.between[k : k + 1]))
        return Sheet(section, tuple(rows))
    if isinstance(setting, LineSet):
        parts = tuple(None if isinstance(part, Strip) else part for part in setting.parts)
        return Sheet(section, tuple((part,) for part in parts) if setting.below else (parts,))
    raise RefusedError(f"The section `{section}` is a panel, which has no map.", "Place motifs on it.")


def cell_at(design: Design, at: CellAt) -> MapCell:
    """Return what is written in a cell. Raises RefusedError where there is no such cell."""
    rows = sheet_of(design, at.section).rows
    if at.row < len(rows) and at.column < len(rows[at.row]):
        cell = rows[at.row][at.column]
        if cell is not None:
            return cell
        raise RefusedError(
            "A strip of cloth lies there, which cannot be painted.", "Change the strip itself."
        )
    sentence = f"The map of `{at.section}` has no row {at.row + 1} with a place {at.column + 1}."
    raise RefusedError(sentence, "Choose a place that the map has.")


def painted(design: Design, cells: Mapping[Address, MapCell]) -> dict[str, object]:
    """Return the changes of keys by which these cells are written into their maps."""
    changes: dict[str, object] = {}
    for section in dict.fromkeys(section for section, _, _ in cells):
        sheet = sheet_of(design, section)
        rows = tuple(
            tuple(cells.get((section, r, c), cell) for c, cell in enumerate(row))
            for r, row in enumerate(sheet.rows)
        )
        if rows != sheet.rows:
            changes |= _written(design, section, sheet.rows, rows)
    return changes


def _written(design: Design, section: str, before: Rows, rows: Rows) -> dict[str, object]:
    if section.startswith("border "):
        key, _ = _corner(design, section)
        (((cell,),)) = rows
        assert cell is not None
        return {f"{key}.corners": map_word(cell)}
    setting = setting_of(design, section)
    if isinstance(setting, LineSet):
        flat = [cell for row in rows for cell in row]
        old = [cell for row in before for cell in row]
        return {
            section_key(section, "parts", k): map_word(cell)
            for k, (cell, was) in enumerate(zip(flat, old, strict=True))
            if cell is not None and cell != was
        }
    full = tuple(tuple(cell for cell in row if cell is not None) for row in rows)
    if isinstance(setting, OnPointSet):
        return _on_point(section, setting, full)
    return {section_key(section, "map"): map_text(full)}


def _on_point(section: str, setting: OnPointSet, rows: Map) -> dict[str, object]:
    changes: dict[str, object] = {}
    if rows[::2] != setting.cells:
        changes[section_key(section, "map")] = map_text(rows[::2])
    if rows[1::2] != setting.between:
        changes[section_key(section, "between")] = between_text(rows[1::2])
    return changes


def between_text(rows: Map) -> str:
    """Return what stands between the cells of a map on point as the file writes it: one word where all are alike."""
    words = {map_word(cell) for row in rows for cell in row}
    return words.pop() if len(words) == 1 else map_text(rows)


def map_text(rows: Map) -> str:
    """Return a map as the file writes it: a line for each row, its words in columns."""
    words = [[map_word(cell) for cell in row] for row in rows]
    wide = max(len(word) for row in words for word in row)
    return "\n".join(" ".join(word.ljust(wide) for word in row).rstrip() for row in words) + "\n"


def turned_cell(cell: MapCell, by: int) -> MapCell:
    """Return a cell turned so many quarters further clockwise; plain cloth stays as it is."""
    return cell if isinstance(cell, ClothCell) else replace(cell, turn=(cell.turn + by) % 4)


def word_of(design: Design, word: str, turn: int) -> MapCell:
    """Return the cell that a unit, fabric or section fills by its name, turned. Raises RefusedError."""
    code, _, quarter = word.partition("-")
    if any(way.code == code for way in design.colourways):
        return Cell(code, turn, quarter)
    if any(fabric.letter == word for fabric in design.fabrics):
        return ClothCell(word)
    if any(section.name == word for section in design.sections):
        return SectionCell(word, turn)
    raise RefusedError(
        f"The design has nothing called `{word}`.", "Choose a colourway, fabric or section of it."
    )


def _corner(design: Design, section: str) -> tuple[str, MapCell]:
    """Return the key of a border and what fills its corners."""
    number, _, owner = section.removeprefix("border ").partition(" of ")
    borders = borders_of(design, owner)
    if number.isdecimal() and 1 <= int(number) <= len(borders):
        border = borders[int(number) - 1]
        if isinstance(border, PiecedBorder) and border.corners is not None:
            return border_key(owner, int(number) - 1), border.corners
    raise RefusedError(
        "This border has no corners that can be painted.", "Choose a pieced border with corners."
    )


def cell_of_word(design: Design, word: str) -> MapCell:
    """Return what a word of a map names. Raises RefusedError."""
    words = Words(
        [way.code for way in design.colourways],
        [fabric.letter for fabric in design.fabrics],
        [section.name for section in design.sections],
    )
    cell = cell_of(word, words)
    if cell is None:
        raise RefusedError(
            f"`{word}` names nothing in the design.", "Write a unit such as a2, a fabric or a section."
        )
    return cell
