"""Units as symbols: each colourway is drawn once in a figure, and laid down wherever it is used."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from quarterturn.blocks import GROUND, SHAPE, Layer, Master, Unit
from quarterturn.design import code_of_unit
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Point, Region, rectangle, roomiest_point
from quarterturn.proof import Pattern
from quarterturn.publish.figures.inks import EDGE, caption, cloth, moved_to
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Text, Use
from quarterturn.steps import Placed

UNIT = "unit "


def layer_colour(pattern: Pattern, name: str, part: str) -> str:
    """Return the colour of the ground or the shape of a unit or a colourway."""
    way = pattern.design.colourway(code_of_unit(name))
    return pattern.design.fabric(way.ground if part == GROUND else way.shape).colour


def unit_of(pattern: Pattern, name: str) -> Unit:
    """Return the kind of unit that a name means."""
    return pattern.blocks.unit(pattern.design, name)


def master_of(pattern: Pattern, name: str) -> Master:
    """Return the master from which a unit is cut."""
    return pattern.blocks.master(pattern.design.colourway(code_of_unit(name)).recipe)


def layered(
    pattern: Pattern, code: str, layers: Iterable[Layer], scale: Scale, edge: Ink = EDGE
) -> tuple[Mark, ...]:
    """Return the layers of a unit in the colours of a colourway."""
    return tuple(
        Area(scale.region(layer.region), cloth(layer_colour(pattern, code, layer.part), edge))
        for layer in layers
    )


def sewn_symbols(pattern: Pattern, codes: Iterable[str], cell: float) -> Mapping[str, tuple[Mark, ...]]:
    """Return a symbol for each name of a unit: the sewn unit, `cell` millimetres wide."""
    return {
        code: layered(pattern, code, unit.sewn_layers, Scale(cell / float(unit.side)))
        for code in codes
        for unit in (unit_of(pattern, code),)
    }


def cut_symbols(pattern: Pattern, codes: Iterable[str], cell: float) -> Mapping[str, tuple[Mark, ...]]:
    """Return a symbol for each name of a unit: the unit as trimmed, its whole side `cell` millimetres."""
    symbols = {}
    for code in codes:
        unit = unit_of(pattern, code)
        factor = cell / float(unit.cut_side)
        scale = Scale(factor, complex(float(unit.seam), float(unit.seam)) * factor)
        symbols[code] = layered(pattern, code, unit.cut_layers, scale)
    return symbols


def laid(code: str, turn: int, at: Point, cell: float) -> Use:
    """Return a unit's symbol laid with its top left corner at a place."""
    return Use(code, moved_to(at, turn, cell))


def lettered(pattern: Pattern, code: str, turn: int, at: Point, cell: float, size: float) -> Text:
    """Return the name of a placed unit, set where one fabric gives it most room, in ink that stands out."""
    part, place = roomiest(pattern, code)
    middle = complex(0.5, 0.5)
    spot = middle + (place - middle) * (1, 1j, -1, -1j)[turn % 4]
    ink = text_colour_on(layer_colour(pattern, code, part))
    return caption(at + spot * cell, f"{code}{turn}", size, colour=ink)


def roomiest(pattern: Pattern, code: str) -> tuple[str, Point]:
    """Return the part of a unit with most room, and the middle of that room as shares of its side."""
    if unit_of(pattern, code).quarter:
        part, (place, _) = max(rooms(pattern, code).items(), key=lambda item: item[1][1])
        return part, place
    reach = diagonal_share(pattern, code)
    if reach > 0.5:
        return "shape", complex(reach / 2, reach / 2)
    return GROUND, complex((1 + reach) / 2, (1 + reach) / 2)


def rooms(pattern: Pattern, name: str) -> dict[str, tuple[Point, float]]:
    """Return for each part of a sewn unit the middle and the radius of its largest disc, as shares of the side."""
    unit = unit_of(pattern, name)
    side = float(unit.side)
    shapes = tuple(p for layer in unit.sewn_layers if layer.part == SHAPE for p in layer.region.paths)
    ground = Region((rectangle(0, 0, side, side), *(p.reversed() for p in shapes)))
    found = {}
    for part, region in ((SHAPE, Region(shapes)), (GROUND, ground)):
        middle, radius = roomiest_point(region)
        found[part] = middle / side, radius / side
    return found


def diagonal_share(pattern: Pattern, code: str) -> float:
    """Return how far the shape reaches along the diagonal of the sewn unit, as a share of the diagonal."""
    master = master_of(pattern, code)
    return min(1.0, master.facts.diagonal / (float(unit_of(pattern, code).side) * 2**0.5))


def unit_parts(parts: Sequence[Placed], lines: Mapping[str, Sequence[Placed]]) -> tuple[Placed, ...]:
    """Return the single units, in order, of a line made of pairs and units."""
    return tuple(
        unit for part in parts for unit in ((part,) if part.label.startswith(UNIT) else lines[part.label])
    )


def code_of(part: Placed) -> str:
    """Return the name of a placed unit."""
    return part.label.removeprefix(UNIT)


def outlined(regions: Iterable[Region], scale: Scale, ink: Ink) -> tuple[Mark, ...]:
    """Return regions with one ink."""
    return tuple(Area(scale.region(region), ink) for region in regions)
