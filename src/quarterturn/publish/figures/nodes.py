"""Any node of the tree, drawn as it is sewn: its units as symbols, its cloth as areas, to one scale."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable, Iterator, Mapping
from itertools import accumulate

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Motion, Path, Point, Region, polygon, region_bounds, roomiest_point, shift
from quarterturn.measure import Length
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import layered, unit_of
from quarterturn.publish.figures.inks import ACCENT, DARK, EDGE, LABEL, SMALLEST, caption, cloth
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Text, Use
from quarterturn.setting import (
    Child,
    Framed,
    Grid,
    Node,
    OnPoint,
    PlacedCloth,
    PlacedUnit,
    corner_places,
    place_all,
    places_on_point,
    strip_places,
    turned_in_place,
)

PLATE = Ink(fill="#ffffff", stroke=ACCENT, width=0.2)

Symbols = Mapping[str, tuple[Mark, ...]]


def node_marks(pattern: Pattern, node: Node, factor: float, at: Point = 0j) -> tuple[Mark, ...]:
    """Return a node as sewn, its top left corner at a place; its units are symbols of `node_symbols`."""
    units, cloths = place_all(node)
    scale = Scale(factor, at)
    return (
        *(laid_unit(unit, scale) for unit in units),
        *(laid_cloth(pattern, each, scale) for each in cloths),
    )


def laid_unit(unit: PlacedUnit, scale: Scale) -> Use:
    """Return the symbol of a placed unit."""
    return Use(unit.name, Motion(unit.motion.factor, scale.point(unit.motion.move)))


def laid_cloth(pattern: Pattern, placed: PlacedCloth, scale: Scale, edge: Ink = EDGE) -> Area:
    """Return a placed piece of cloth in its colour."""
    return Area(scale.region(placed.region), cloth(pattern.design.fabric(placed.fabric).colour, edge))


def node_symbols(pattern: Pattern, names: Iterable[str], factor: float) -> Symbols:
    """Return a symbol for each name of a unit, drawn at so many millimetres to the inch."""
    scale = Scale(factor)
    return {name: layered(pattern, name, unit_of(pattern, name).sewn_layers, scale) for name in names}


def names_in(nodes: Iterable[Node]) -> list[str]:
    """Return the names of all units that some nodes hold."""
    return sorted({unit.name for node in nodes for unit in place_all(node)[0]})


def held_at(node: Node) -> Iterator[tuple[Child, Motion]]:
    """Return what a node holds, each with the motion of its frame into the node's; triangles and sashing aside."""
    if isinstance(node, Grid):
        tops = accumulate((row[0].height for row in node.rows), initial=Length(0))
        for row, top in zip(node.rows, tops, strict=False):
            lefts = accumulate((child.width for child in row), initial=Length(0))
            for child, left in zip(row, lefts, strict=False):
                yield child, _turned(child).then(shift(complex(float(left), float(top))))
    elif isinstance(node, OnPoint):
        for _, _, child, motion in places_on_point(node):
            yield child, _turned(child).then(motion)
    elif isinstance(node, Framed):
        yield from _framed(node)


def _framed(node: Framed) -> Iterator[tuple[Child, Motion]]:
    left = sum((frame.side_depth for frame in node.frames), Length(0))
    top = sum((frame.end_depth for frame in node.frames), Length(0))
    yield node.centre, shift(complex(float(left), float(top)))
    width, height = node.centre.width, node.centre.height
    for frame in node.frames:
        left, top = left - frame.side_depth, top - frame.end_depth
        width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
        corner = complex(float(left), float(top))
        for _, child, place in strip_places(frame, float(width), float(height)):
            yield child, _turned(child).then(shift(place + corner))
        for child, place in corner_places(frame, float(width), float(height)):
            yield child, _turned(child).then(shift(place + corner))


def _turned(child: Child) -> Motion:
    return turned_in_place(float(child.node.width), float(child.node.height), child.turn)


def lettering(region: Region, text: str, colour: str, most: float) -> tuple[Mark, ...]:
    """Return a text set where a region of one colour, in millimetres, has most room; nothing where it has none."""
    middle, radius = roomiest_point(region)
    bounds = region_bounds(region)
    across = min(bounds.width, 2 * radius * 1.25)
    size = min(most, across / (0.66 * max(1, len(text))), 1.5 * radius)
    if size < SMALLEST:
        return ()
    return (caption(middle, text, size, colour=text_colour_on(colour)),)


def name_plate(text: str, outline: Path) -> tuple[Mark, ...]:
    """Return a name on a white plate in the middle of an outline, as large as it has room; nothing where none is.

    In a narrow outline that stands upright it runs upwards.
    """
    bounds = region_bounds(Region((outline,)))
    across, down = bounds.right - bounds.left, bounds.bottom - bounds.top
    middle = complex(bounds.left + bounds.right, bounds.top + bounds.bottom) / 2
    size, upwards = _plate_size(text, across, down), _plate_size(text, down, across)
    turn = -90.0 if size < LABEL and upwards > size else 0.0
    size = max(size, upwards) if turn else size
    if size < SMALLEST:
        return ()
    way = cmath.rect(1, math.radians(turn))
    half = complex(0.31 * size * len(text) + 0.7, size * 0.75)
    corners = (-half, half.conjugate(), half, -half.conjugate())
    plate = polygon(tuple(middle + corner * way for corner in corners))
    return Area(Region((plate,)), PLATE), Text(
        middle + 0.35j * size * way, text, size, "middle", turn, False, DARK
    )


def _plate_size(text: str, along: float, deep: float) -> float:
    """Return the size of letters at which a name has room on its plate."""
    return min(LABEL, along * 0.9 / (0.6 * len(text) + 0.6), deep * 0.7)
