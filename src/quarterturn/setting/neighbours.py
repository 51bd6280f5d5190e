"""Which units share a whole side, found by where they lie in the top, whatever section each stands in."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.geometry import Point
from quarterturn.setting.model import PlacedUnit, Side

NEAR = 1e-6
"""Corners nearer to one another than this, in inches, are one."""

SIDES = (Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT)
"""Clockwise."""

_MESH = 1 / 64
_OFF = 0.0037
"""So that hardly any middle of a side lies on the edge of a mesh."""
_CLOSE = 2 * NEAR / _MESH

_RUNS_BACK = (False, False, True, True)
"""Whether going round clockwise runs along a side of `SIDES` from its right or bottom end."""


@dataclass(frozen=True, slots=True)
class Neighbour:
    """Across a side of a unit: the other unit, and which side of that one it is, each as its section's map shows it.

    `flipped` tells that the left or top end of the one side is the right or bottom end of the other.
    """

    unit: int
    side: Side
    flipped: bool


Neighbours = Sequence[dict[Side, Neighbour]]
"""For each unit its neighbours, in the order of the sides."""

Size = tuple[float, float]


def find_neighbours(units: Sequence[PlacedUnit], sizes: Sequence[Size]) -> Neighbours:
    """Return the neighbours of all units, whose finished widths and heights at turn 0 are told; in linear time."""
    mesh: dict[tuple[int, int], list[tuple[int, int, Point, Point]]] = {}
    found: list[list[Neighbour | None]] = [[None] * 4 for _ in units]
    for unit, placed in enumerate(units):
        corners = _corners(placed, sizes[unit])
        for side in range(4):
            start, end = corners[side], corners[side + 1]
            home, *others = _meshes((start + end) / 2)
            for key in (home, *others):
                for other, facing, first, last in mesh.get(key, ()):
                    if abs(start - last) < NEAR and abs(end - first) < NEAR:
                        flipped = _RUNS_BACK[side] == _RUNS_BACK[facing]
                        found[unit][side] = Neighbour(other, SIDES[facing], flipped)
                        found[other][facing] = Neighbour(unit, SIDES[side], flipped)
            mesh.setdefault(home, []).append((unit, side, start, end))
    return [
        {side: other for side, other in zip(SIDES, beside, strict=True) if other is not None}
        for beside in found
    ]


def grid_neighbours(count: int, columns: int) -> Neighbours:
    """Return the neighbours of units in rows of so many, upright, all alike in size."""
    return [dict(_in_grid(unit, count, columns)) for unit in range(count)]


def _in_grid(unit: int, count: int, columns: int) -> Iterator[tuple[Side, Neighbour]]:
    if unit >= columns:
        yield Side.TOP, Neighbour(unit - columns, Side.BOTTOM, False)
    if (unit + 1) % columns:
        yield Side.RIGHT, Neighbour(unit + 1, Side.LEFT, False)
    if unit + columns < count:
        yield Side.BOTTOM, Neighbour(unit + columns, Side.TOP, False)
    if unit % columns:
        yield Side.LEFT, Neighbour(unit - 1, Side.RIGHT, False)


def _corners(unit: PlacedUnit, size: Size) -> list[Point]:
    """Return the corners of the place of a unit clockwise, the one at the start of its top side first and last.

    A side is told as its section's map shows it: turning a unit in its place renames none.
    """
    width, height = size
    own = [unit.motion(at) for at in (0j, complex(width, 0), complex(width, height), complex(0, height))]
    return [own[(side - unit.turn) % 4] for side in (0, 1, 2, 3, 0)]


def _meshes(point: Point) -> list[tuple[int, int]]:
    """Return the mesh in which a point lies, and then those on whose edge it is."""
    x, y = point.real / _MESH + _OFF, point.imag / _MESH + _OFF
    home = math.floor(x), math.floor(y)
    if _CLOSE < x - home[0] < 1 - _CLOSE and _CLOSE < y - home[1] < 1 - _CLOSE:
        return [home]
    columns = {math.floor(x - _CLOSE), math.floor(x + _CLOSE)}
    rows = {math.floor(y - _CLOSE), math.floor(y + _CLOSE)}
    return [home, *((c, r) for c in sorted(columns) for r in sorted(rows) if (c, r) != home)]
