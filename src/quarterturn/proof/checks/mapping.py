"""A map of cells as the checks read it: its rows with all repeats laid out, and the line that tells of a row."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.design import ClothCell, Map, MapCell, StraightSet, Symmetry, dotted


def map_of(setting: StraightSet) -> Map:
    """Return the rows of a map, each cell with the turn that it has where it is laid."""
    rows, columns = setting.size
    height, width = 2 * len(setting.cells), 2 * len(setting.cells[0])
    # Copies two apart lie alike, so that four of them are worked out, and laid as often as needed.
    four = [tuple(_cell(setting, i, j) for j in range(min(columns, width))) for i in range(min(rows, height))]
    return tuple((four[i % height] * (columns // width + 1))[:columns] for i in range(rows))


def _cell(setting: StraightSet, i: int, j: int) -> MapCell:
    """Return the cell at a place of the whole map: where the map writes it, and how its copy turns it.

    A mirror exchanges the turns 0 and 1, 2 and 3 where it is vertical; 0 and 3, 1 and 2 where it is horizontal.
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
    return cell if isinstance(cell, ClothCell) else replace(cell, turn=(extra + sign * cell.turn) % 4)


def key_of_row(setting: StraightSet, key: str, row: int) -> str:
    """Return the key of the line that writes a row; that of the map where several lines do. `key` is the section's."""
    level, r = divmod(row, len(setting.cells))
    if setting.symmetry is Symmetry.MIRROR and level % 2:
        r = len(setting.cells) - 1 - r
    if setting.symmetry in (Symmetry.TURN, Symmetry.HALF_TURN):
        return f"{key}.map"
    return dotted(*key.split("."), "map", r)
