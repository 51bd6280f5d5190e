"""The map of a design as the checks read it: rows of (name of unit, turn), with all repeats laid out."""

from __future__ import annotations

from collections import Counter
from typing import TypeAlias

from quarterturn.design import Design, StraightSet, Symmetry, code_of_unit, dotted

Turned: TypeAlias = tuple[str, int]


def map_of(design: Design) -> list[list[Turned]]:
    """Return the rows of the map."""
    setting = design.setting
    rows, columns = setting.size
    height, width = 2 * len(setting.cells), 2 * len(setting.cells[0])
    # Copies two apart lie alike, so that four of them are worked out, and laid as often as needed.
    four = [[_unit(setting, i, j) for j in range(min(columns, width))] for i in range(min(rows, height))]
    return [(four[i % height] * (columns // width + 1))[:columns] for i in range(rows)]


def _unit(setting: StraightSet, i: int, j: int) -> Turned:
    """Return the unit at a place of the whole map: where the map writes it, and how its copy turns it.

    A mirror exchanges the turns 0 and 1, 2 and 3 where it is upright; 0 and 3, 1 and 2 where it is level.
    """
    height, width = len(setting.cells), len(setting.cells[0])
    (level, r), (place, c) = divmod(i, height), divmod(j, width)
    extra, sign = 0, 1
    if setting.symmetry is Symmetry.MIRROR:
        if place % 2:
            c, extra, sign = width - 1 - c, 1, -1
        if level % 2:
            r, extra, sign = height - 1 - r, 3 - extra, -sign
    elif setting.symmetry is Symmetry.HALF_TURN and (level + place) % 2:
        r, c, extra = height - 1 - r, width - 1 - c, 2
    elif setting.symmetry is Symmetry.TURN:
        extra = ((0, 1), (3, 2))[level % 2][place % 2]
        for _ in range(extra):
            r, c = height - 1 - c, r
    cell = setting.cells[r][c]
    return cell.name, (extra + sign * cell.turn) % 4


def turned_counts(design: Design) -> Counter[Turned]:
    """Count the units of each name in each turn."""
    return Counter(cell for row in map_of(design) for cell in row)


def unit_counts(design: Design) -> dict[str, int]:
    """Count the units of each colourway that the map uses, in the order of the design."""
    found: Counter[str] = Counter()
    for (name, _), count in turned_counts(design).items():
        found[code_of_unit(name)] += count
    return {colourway.code: found[colourway.code] for colourway in design.colourways if found[colourway.code]}


def master_codes(design: Design) -> tuple[str, ...]:
    """Return the colourways of the masters that the map needs, in the order of the design."""
    needed = {code for used in unit_counts(design) for code in design.masters_of(used)}
    return tuple(colourway.code for colourway in design.colourways if colourway.code in needed)


def kind_counts(design: Design) -> Counter[str]:
    """Count the units of each name that the map uses."""
    found: Counter[str] = Counter()
    for (name, _), count in turned_counts(design).items():
        found[name] += count
    return found


def key_of_row(design: Design, row: int) -> str:
    """Return the key of the line that writes a row; that of the map where several lines do."""
    setting = design.setting
    level, r = divmod(row, len(setting.cells))
    if setting.symmetry is Symmetry.MIRROR and level % 2:
        r = len(setting.cells) - 1 - r
    if setting.symmetry in (Symmetry.TURN, Symmetry.HALF_TURN):
        return dotted("setting", "map")
    return dotted("setting", "map", r)


def place_of(row: int, column: int) -> str:
    """Say where a unit lies, counted from 1 as people count."""
    return f"row {row + 1}, unit {column + 1}"
