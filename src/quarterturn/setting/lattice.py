"""Where everything lies in a setting on point, in the frame of its finished rectangle.

Cells and those between them stand on one square lattice, turned by an eighth, of pitch side + sash.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator

from quarterturn.geometry import Motion, Path, Point, Region, polygon, rectangle
from quarterturn.measure import ROOT_TWO
from quarterturn.setting.tree import Child, ClothUse, OnPoint

EIGHTH = cmath.rect(1.0, math.pi / 4)
"""The turn by an eighth clockwise that stands a square on its corner."""


def places_on_point(node: OnPoint) -> Iterator[tuple[int, int, Child, Motion]]:
    """Return every child with its row and its place in that row, both as seen, and the motion of its upright square.

    Rows are told from the top: cells have even rows, and those between them odd ones.
    """
    side, pitch, first = float(node.side), _pitch(node), _first(node)
    up = complex(0, -side * math.sqrt(0.5))
    for row in range(2 * len(node.cells) - 1):
        children = (node.between if row % 2 else node.cells)[row // 2]
        for column, child in enumerate(children):
            centre = first + pitch * complex(column + row % 2 / 2, row / 2)
            yield row, column, child, Motion(EIGHTH, centre + up)


def sashes(node: OnPoint) -> Iterator[tuple[ClothUse, str, Region]]:
    """Return every strip of sashing with its fabric, and then every cornerstone."""
    if not node.sash:
        return
    side, sash = float(node.side), float(node.sash)
    places = [
        (row // 2 + column + row % 2, (row + 1) // 2 - column - row % 2)
        for row in range(2 * len(node.cells) - 1)
        for column in range(len((node.between if row % 2 else node.cells)[row // 2]))
    ]
    beside = {(2 * i + k, 2 * j) for i, j in places for k in (-1, 1)}
    below = {(2 * i, 2 * j + k) for i, j in places for k in (-1, 1)}
    stones = {(2 * i + k, 2 * j + m) for i, j in places for k in (-1, 1) for m in (-1, 1)}
    for spots, width, height in ((beside, sash, side), (below, side, sash)):
        for spot in sorted(spots):
            yield ClothUse.SASH, node.sash_fabric, _on_lattice(node, spot, width, height)
    for spot in sorted(stones):
        yield ClothUse.CORNERSTONE, node.cornerstone_fabric, _on_lattice(node, spot, sash, sash)


def _on_lattice(node: OnPoint, spot: tuple[int, int], width: float, height: float) -> Region:
    """Return a rectangle about a point of the lattice, counted in halves of its pitch from the first cell."""
    half = (float(node.side) + float(node.sash)) / 2
    lying = rectangle(-width / 2, -height / 2, width / 2, height / 2)
    centre = _first(node) + half * complex(*spot) * EIGHTH
    return Region((Motion(EIGHTH, centre).path(lying),))


def side_triangles(node: OnPoint) -> Iterator[Region]:
    """Return the side triangles: along the top, the left edge, the bottom and the right edge.

    Where they stand out beyond the corners of the cells they end at the seams between slanting rows, which run on to
    the edge, and at those of the corner triangles, which are sewn last.
    """
    half_turn = Motion(-1 + 0j, complex(float(node.width), float(node.height)))
    sides = [*_along_top(node), *_along_left(node)]
    yield from (Region((path,)) for path in sides)
    yield from (Region((half_turn.path(path),)) for path in sides)


def _along_top(node: OnPoint) -> Iterator[Path]:
    over, pitch, first = float(node.float), _pitch(node), _first(node).real
    for column in range(len(node.cells[0]) - 1):
        left = first + pitch * column
        start = left + over if column == 0 else left - over
        yield _polygon(
            complex(left + pitch / 2, over + pitch / 2),
            complex(left, over),
            complex(start, 0),
            complex(left + pitch - over, 0),
            complex(left + pitch, over),
        )


def _along_left(node: OnPoint) -> Iterator[Path]:
    over, pitch, first = float(node.float), _pitch(node), _first(node).imag
    for row in range(len(node.cells) - 1):
        top = first + pitch * row
        start = top + over if row == 0 else top - over
        yield _polygon(
            complex(over + pitch / 2, top + pitch / 2),
            complex(over, top + pitch),
            complex(0, top + pitch - over),
            complex(0, start),
            complex(over, top),
        )


def corner_triangles(node: OnPoint) -> Iterator[Region]:
    """Return the corner triangles: top left, top right, bottom right, bottom left.

    The first and the third are sewn to the ends of slanting rows before the other two.
    """
    width, height, over = float(node.width), float(node.height), float(node.float)
    reach = _first(node).real
    across = reach - over if len(node.cells[0]) == 1 else reach + over
    down = reach - over if len(node.cells) == 1 else reach + over
    first = _polygon(0j, complex(across, 0), complex(reach, over), complex(over, reach), complex(0, down))
    second = polygon((complex(width, 0), complex(width, reach + over), complex(width - reach - over, 0)))
    half_turn = Motion(-1 + 0j, complex(width, height))
    for path in (first, second, half_turn.path(first), half_turn.path(second)):
        yield Region((path,))


def _polygon(*points: Point) -> Path:
    """Return the path through points, of which some may be one."""
    kept = [p for p, before in zip(points, (points[-1], *points[:-1]), strict=True) if abs(p - before) > 1e-9]
    return polygon(kept)


def _pitch(node: OnPoint) -> float:
    return float((node.side + node.sash) * ROOT_TWO)


def _first(node: OnPoint) -> Point:
    """Return the middle of the first cell."""
    off = float(node.float + (node.side + 2 * node.sash) * ROOT_TWO / 2)
    return complex(off, off)
