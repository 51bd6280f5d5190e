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


@dataclass(frozen=True, slots=True)
class Neighbour:
    """Across a side of a unit: the other unit, and which side of that one it is, each as its section's map shows it.

    `flipped` tells that the left or top end of the one side is the right or bottom end of the other.
    """

    unit: int
    side: Side
    flipped: bool


@dataclass(frozen=True, slots=True)
class PlacedSide:
    """A side in the top's frame, its ends in the order in which the unit is gone round clockwise."""

    unit: int
    side: Side
    start: Point
    end: Point


Neighbours = Sequence[dict[Side, Neighbour]]
"""For each unit its neighbours, in the order of the sides."""

Size = tuple[float, float]


def find_neighbours(units: Sequence[PlacedUnit], sizes: Sequence[Size]) -> Neighbours:
    """Return the neighbours of all units, whose finished widths and heights at turn 0 are told; in linear time."""
    sides = [side for k, unit in enumerate(units) for side in _sides(k, unit, sizes[k])]
    mesh: dict[tuple[int, int], list[PlacedSide]] = {}
    found: list[dict[Side, Neighbour]] = [{} for _ in units]
    for side in sides:
        middle = (side.start + side.end) / 2
        for key in _meshes(middle):
            for other in mesh.get(key, ()):
                if abs(side.start - other.end) < NEAR and abs(side.end - other.start) < NEAR:
                    flipped = _runs_back(side.side) == _runs_back(other.side)
                    found[side.unit][side.side] = Neighbour(other.unit, other.side, flipped)
                    found[other.unit][other.side] = Neighbour(side.unit, side.side, flipped)
        mesh.setdefault(_mesh(middle), []).append(side)
    return [{side: beside[side] for side in SIDES if side in beside} for beside in found]


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


def _sides(number: int, unit: PlacedUnit, size: Size) -> Iterator[PlacedSide]:
    """Return the four sides of the place of a unit; turning a unit in its place renames none of them."""
    width, height = size
    corners = [unit.motion(at) for at in (0j, complex(width, 0), complex(width, height), complex(0, height))]
    for k, side in enumerate(SIDES):
        first = (k - unit.turn) % 4
        yield PlacedSide(number, side, corners[first], corners[(first + 1) % 4])


def _runs_back(side: Side) -> bool:
    """Tell whether going round clockwise runs along a side from its right or bottom end."""
    return side in (Side.BOTTOM, Side.LEFT)


def _mesh(point: Point) -> tuple[int, int]:
    return math.floor(point.real / _MESH + _OFF), math.floor(point.imag / _MESH + _OFF)


def _meshes(point: Point) -> Iterator[tuple[int, int]]:
    """Return the mesh in which a point lies, and those on whose edge it is."""
    off = 2 * NEAR / _MESH
    x, y = point.real / _MESH + _OFF, point.imag / _MESH + _OFF
    across, down = math.floor(x), math.floor(y)
    yield across, down
    columns = {math.floor(x - off), math.floor(x + off)}
    rows = {math.floor(y - off), math.floor(y + off)}
    if len(columns) > 1 or len(rows) > 1:
        yield from ((c, r) for c in columns for r in rows if (c, r) != (across, down))
