"""Units as symbols: each colourway is drawn once in a figure, and laid down wherever it is used."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from quarterturn.blocks import GROUND, SHAPE, Layer, Master, Unit, turned_about_centre, turned_size
from quarterturn.design import RecipeKind, code_of_unit
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Point, Region, as_polygon, from_polygons, roomiest_point, without
from quarterturn.proof import Pattern
from quarterturn.publish.figures.inks import EDGE, caption, cloth
from quarterturn.publish.lettering import text_width
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Text, Use
from quarterturn.steps import Placed

UNIT = "unit "
COARSE = 0.01
"""Inches. Lettering is placed on outlines flattened to this."""
LEAST = 0.05
"""Square inches: less cloth bears no lettering."""


def layer_colour(pattern: Pattern, name: str, part: str) -> str:
    """Return the colour of a part of a unit or a colourway."""
    return pattern.design.fabric(pattern.design.cloth(name, part)).colour


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
    """Return a symbol for each name of a unit, as sewn: the longest side of all units is `cell` millimetres."""
    scale = Scale(cell_factor(pattern, cell))
    return {code: layered(pattern, code, unit_of(pattern, code).sewn_layers, scale) for code in codes}


def cell_factor(pattern: Pattern, cell: float) -> float:
    """Return the millimetres to the inch where the longest side of all units is `cell` millimetres."""
    return cell / max(longest_side(pattern, name) for name in pattern.setting.tally)


def longest_side(pattern: Pattern, name: str) -> float:
    """Return the longer side of a unit, finished, in inches."""
    unit = unit_of(pattern, name)
    return float(max(unit.width, unit.height))


def cell_size(pattern: Pattern, code: str, turn: int, cell: float) -> Point:
    """Return width and height of a unit as it is laid, in millimetres."""
    width, height = turned_size(unit_of(pattern, code), turn)
    return complex(float(width), float(height)) * cell_factor(pattern, cell)


def cut_symbols(pattern: Pattern, codes: Iterable[str], cell: float) -> Mapping[str, tuple[Mark, ...]]:
    """Return a symbol for each name of a unit: the unit as trimmed, its whole side `cell` millimetres."""
    symbols = {}
    for code in codes:
        unit = unit_of(pattern, code)
        factor = cell / float(unit.cut_side)
        scale = Scale(factor, complex(float(unit.seam), float(unit.seam)) * factor)
        symbols[code] = layered(pattern, code, unit.cut_layers, scale)
    return symbols


def laid(pattern: Pattern, code: str, turn: int, at: Point, cell: float) -> Use:
    """Return a unit's symbol laid with its top left corner at a place."""
    motion = turned_about_centre(unit_of(pattern, code), turn)
    return Use(code, Scale(cell_factor(pattern, cell), at).motion(motion))


def lettered(pattern: Pattern, code: str, turn: int, at: Point, cell: float, size: float) -> Text:
    """Return the name of a placed unit, set where one fabric gives it most room, in ink that stands out."""
    part, place = roomiest(pattern, code)
    unit = unit_of(pattern, code)
    spot = turned_about_centre(unit, turn)(place * float(unit.width)) * cell_factor(pattern, cell)
    ink, text = text_colour_on(layer_colour(pattern, code, part)), f"{code}{turn}"
    width, room = text_width(text, size), cell_size(pattern, code, turn, cell)
    reach = width / 2 + 0.6
    if not is_quarter_circle(pattern, code) and 2 * reach < room.real:
        spot = complex(min(max(spot.real, reach), room.real - reach), spot.imag)
    return caption(at + spot, text, size, colour=ink)


def roomiest(pattern: Pattern, code: str) -> tuple[str, Point]:
    """Return the part of a unit with most room, and the middle of that room as shares of its side."""
    if not is_quarter_circle(pattern, code):
        part, (place, _) = max(rooms(pattern, code).items(), key=lambda item: item[1][1])
        return part, place
    reach = diagonal_share(pattern, code)
    if reach > 0.5:
        return SHAPE, complex(reach / 2, reach / 2)
    return GROUND, complex((1 + reach) / 2, (1 + reach) / 2)


def is_quarter_circle(pattern: Pattern, name: str) -> bool:
    """Tell whether a unit is one of four equal quarters of a single shape, which lies at its top left corner."""
    way = pattern.design.colourway(code_of_unit(name))
    if way.is_rejoined or unit_of(pattern, name).quarter:
        return False
    return pattern.design.recipe(way.recipe).kind is not RecipeKind.SHAPES


def rooms(pattern: Pattern, name: str) -> dict[str, tuple[Point, float]]:
    """Return for each part seen in a sewn unit middle and radius of its largest disc, as shares of its width."""
    unit = unit_of(pattern, name)
    width = float(unit.width)
    regions = [layer.region for layer in unit.sewn_layers]
    found: dict[str, tuple[Point, float]] = {}
    for number in reversed(range(len(regions))):
        shown = seen_of(regions, number)
        if shown:
            middle, radius = roomiest_point(shown)
            part = unit.sewn_layers[number].part
            if part not in found or radius / width > found[part][1]:
                found[part] = middle / width, radius / width
    return found


def seen_of(regions: Sequence[Region], number: int) -> Region | None:
    """Return what is seen of one of several regions, the later on top, flattened; None where it is next to nothing."""
    shown = as_polygon(regions[number], COARSE)
    for upper in regions[number + 1 :]:
        if not upper.is_empty():
            shown = without(shown, as_polygon(upper, COARSE))
    return from_polygons(shown) if shown.area > LEAST else None


def diagonal_share(pattern: Pattern, code: str) -> float:
    """Return how far the shape reaches along the diagonal of the sewn unit, as a share of the diagonal."""
    master, side = master_of(pattern, code), float(unit_of(pattern, code).width)
    return min(1.0, master.facts.diagonal / (side * 2**0.5))


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
