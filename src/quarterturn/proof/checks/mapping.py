"""The map of a design as the checks read it: rows of (name of unit, turn), with all repeats laid out."""

from __future__ import annotations

from collections import Counter
from typing import TypeAlias

from quarterturn.design import Design, code_of_unit, dotted

Turned: TypeAlias = tuple[str, int]


def map_of(design: Design) -> list[list[Turned]]:
    """Return the rows of the map."""
    setting = design.setting
    rows = [[(cell.name, cell.turn) for cell in row] * setting.across for row in setting.cells]
    return rows * setting.down


def turned_counts(design: Design) -> Counter[Turned]:
    """Count the units of each name in each turn."""
    return Counter(cell for row in map_of(design) for cell in row)


def unit_counts(design: Design) -> dict[str, int]:
    """Count the units of each colourway that the map uses, in the order of the design."""
    found: Counter[str] = Counter()
    for (name, _), count in turned_counts(design).items():
        found[code_of_unit(name)] += count
    return {colourway.code: found[colourway.code] for colourway in design.colourways if found[colourway.code]}


def kind_counts(design: Design) -> Counter[str]:
    """Count the units of each name that the map uses."""
    found: Counter[str] = Counter()
    for (name, _), count in turned_counts(design).items():
        found[name] += count
    return found


def key_of_row(design: Design, row: int) -> str:
    """Return the key of the line that writes a row, which with repeats writes others too."""
    return dotted("setting", "map", row % len(design.setting.cells))


def place_of(row: int, column: int) -> str:
    """Say where a unit lies, counted from 1 as people count."""
    return f"row {row + 1}, unit {column + 1}"
