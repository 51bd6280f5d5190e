"""A setting on point pulled apart: its slanting rows with their triangles, numbered in their order of sewing."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.geometry import Motion, Point, Region, polygon, region_bounds, shift
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, DARK, EDGE, LABEL, SMALL, SMALLEST, arrow, caption, cloth
from quarterturn.publish.figures.nodes import laid_cloth, laid_unit, lettering, names_in, node_symbols
from quarterturn.publish.sheet import Area, Mark, Scale, Sheet
from quarterturn.setting import (
    EIGHTH,
    Child,
    OnPoint,
    PlainCloth,
    corner_triangles,
    place_all,
    places_on_point,
    sashes,
    side_triangles,
    turned_in_place,
)

DOWN = EIGHTH * 1j
"""The way from one slanting row to the next: to the lower left."""
GAP = 0.24
"""Between two rows, as a share of the pitch of the cells."""
LARGEST_PITCH = 26.0
"""Millimetres from row to row."""
ROOM = 7.0
"""For the numbers, on every side."""


@dataclass(frozen=True, slots=True)
class Loose:
    """A part pulled apart from its neighbours: what it is, and by how much it has moved, in inches."""

    part: Child | str
    fabric: str
    region: Region
    motion: Motion
    moved: Point


def row_of(node: OnPoint, row: int, column: int) -> int:
    """Return the slanting row, from 0 at the upper right, of a place told by its row and column as seen."""
    return row // 2 - column + len(node.cells[0]) - 1


def slanting_rows(node: OnPoint) -> int:
    """Return how many slanting rows there are, sashing and corner triangles aside."""
    return len(node.cells) + len(node.cells[0]) - 1


def slanting_figure(pattern: Pattern, node: OnPoint, width: float, height: float) -> Sheet:
    """Return the rows pulled apart, as large as the room allows."""
    loose = list(_loose(node))
    bounds = [region_bounds(shift(each.moved).region(each.region)) for each in loose]
    left, top = min(b.left for b in bounds), min(b.top for b in bounds)
    across, down = max(b.right for b in bounds) - left, max(b.bottom for b in bounds) - top
    most = LARGEST_PITCH / float(node.side + node.sash)
    factor = min(most, (width - 2 * ROOM - 2) / across, (height - 2 * ROOM - 2) / down)
    origin = complex(ROOM, ROOM) - complex(left, top) * factor
    marks: list[Mark] = []
    named: list[Mark] = []
    for each in loose:
        scale = Scale(factor, origin + each.moved * factor)
        marks += _drawn(pattern, each, scale)
        named += _named(pattern, each, scale)
    marks += named
    marks += _numbers(node, Scale(factor, origin))
    children = {each.part.node for each in loose if isinstance(each.part, Child)}
    symbols = node_symbols(pattern, names_in(children), factor)
    size = complex(across, down) * factor + complex(2 * ROOM, 2 * ROOM)
    return Drawing(size.real, size.imag, tuple(marks), symbols).sheet("Slanting rows", _described(node))


def _loose(node: OnPoint) -> Iterator[Loose]:
    gap = GAP * float(node.side + node.sash)
    columns, half = len(node.cells[0]), float(node.side) / 2
    for row, column, child, motion in places_on_point(node):
        moved = row_of(node, row, column) * gap * DOWN
        turned = turned_in_place(float(node.side), float(node.side), child.turn).then(motion)
        square = polygon(
            tuple(complex(x, y) for x, y in ((0, 0), (2 * half, 0), (2 * half, 2 * half), (0, 2 * half)))
        )
        yield Loose(child, "", motion.region(Region((square,))), turned, moved)
    first = _first_middle(node)
    for use, fabric, region in sashes(node):
        box = region_bounds(region)
        middle = complex(box.left + box.right, box.top + box.bottom) / 2
        down = ((middle - first) / EIGHTH).imag / float(node.side + node.sash) + columns - 1
        yield Loose(use.value, fabric, region, Motion(), round(2 * down) / 2 * gap * DOWN)
    for number, region in enumerate(side_triangles(node)):
        yield Loose("side triangle", node.side_fabric, region, Motion(), _end_moved(node, number) * gap)
    last = slanting_rows(node) - 1
    ways = (
        (columns - 1) * DOWN - EIGHTH,
        -DOWN,
        (len(node.cells) - 1) * DOWN + EIGHTH,
        (last + 1) * DOWN,
    )
    for region, way in zip(corner_triangles(node), ways, strict=True):
        yield Loose("corner triangle", node.corner_fabric, region, Motion(), way * gap)


def _end_moved(node: OnPoint, number: int) -> Point:
    """Return the way of a side triangle, in gaps: with the row that it ends, and away from it."""
    rows, columns = len(node.cells), len(node.cells[0])
    half = rows + columns - 2
    k = number % half
    row = columns - 2 - k if k < columns - 1 else k + 1
    if number < half:
        return row * DOWN - EIGHTH
    return (rows + columns - 2 - row) * DOWN + EIGHTH


def _drawn(pattern: Pattern, each: Loose, scale: Scale) -> tuple[Mark, ...]:
    if isinstance(each.part, str):
        return (Area(scale.region(each.region), cloth(pattern.design.fabric(each.fabric).colour, EDGE)),)
    units, cloths = place_all(each.part.node)
    motion = scale.motion(each.motion)
    inner = Scale(scale.factor)
    marks: list[Mark] = [_turned_area(laid_cloth(pattern, placed, inner), motion) for placed in cloths]
    for unit in units:
        use = laid_unit(unit, inner)
        marks.append(type(use)(use.symbol, use.motion.then(motion)))
    return tuple(marks)


def _turned_area(area: Area, motion: Motion) -> Area:
    return Area(motion.region(area.region), area.ink)


def _named(pattern: Pattern, each: Loose, scale: Scale) -> tuple[Mark, ...]:
    """Return the name of a cell with its turn, the letter of plain cloth; nothing where there is no room."""
    region = scale.region(each.region)
    if isinstance(each.part, str):
        colour = pattern.design.fabric(each.fabric).colour
        return lettering(region, each.fabric, colour, SMALL) if "triangle" in each.part else ()
    node = each.part.node
    if isinstance(node, PlainCloth):
        return lettering(region, node.fabric, pattern.design.fabric(node.fabric).colour, SMALL)
    box = region_bounds(region)
    middle = complex(box.left + box.right, box.top + box.bottom) / 2
    text = f"{getattr(node, 'name', '')}{each.part.turn}"
    size = min(SMALL, (box.right - box.left) * 0.55 / (0.62 * len(text)))
    if size < SMALLEST:
        return ()
    half = complex(0.33 * size * len(text) + 0.5, size * 0.72)
    plate = polygon((middle - half, middle + half.conjugate(), middle + half, middle - half.conjugate()))
    return Area(Region((plate,)), _PLATE), caption(middle, text, size, colour=DARK)


_PLATE = cloth("#ffffff")


def _numbers(node: OnPoint, scale: Scale) -> Iterator[Mark]:
    """Return the number of each row beyond its upper left end, and an arrow for the way of reading it."""
    gap, pitch, sash = GAP * float(node.side + node.sash), float(node.side + node.sash), float(node.sash)
    reach = pitch + sash + float(node.float) * math.sqrt(2) + gap
    first = _first_middle(node)
    for row in range(slanting_rows(node)):
        j = row - len(node.cells[0]) + 1
        start = first + abs(j) * pitch * EIGHTH + (j * pitch + row * gap) * DOWN
        end = scale.point(start - EIGHTH * reach)
        yield caption(end - EIGHTH * 4.6, str(row + 1), LABEL, bold=True, colour=ACCENT)
        yield from arrow(end - EIGHTH * 3.0, end - EIGHTH * 0.4, ACCENT, 0.3, 1.3)


def _first_middle(node: OnPoint) -> Point:
    """Return the middle of the first square of the map."""
    over = float(node.float) + float(node.side + 2 * node.sash) / math.sqrt(2)
    return complex(over, over)


def _described(node: OnPoint) -> str:
    rows, columns = len(node.cells), len(node.cells[0])
    return (
        f"{slanting_rows(node)} slanting rows, pulled apart and numbered from the upper right; "
        f"{2 * (rows + columns - 2)} side triangles end them, and four corner triangles fill the corners."
    )
