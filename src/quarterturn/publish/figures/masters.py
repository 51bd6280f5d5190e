"""Masters: creased and fused, stitched, and cut apart under the ruler."""

from __future__ import annotations

import math

from quarterturn.blocks import GROUND, SHAPE, Master
from quarterturn.design import unit_name
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Point, Region, StraightLine
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import layer_colour, rooms, unit_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    CREASE,
    CUT,
    DARK,
    EDGE,
    LABEL,
    OUTLINE,
    QUIET,
    SMALL,
    STITCH,
    box,
    caption,
    cloth,
    line,
    measured,
    outline,
    seen_arrow,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet
from quarterturn.publish.wording import length, named
from quarterturn.steps import CutApart, Step, StitchEdge

RULER = Ink(stroke=QUIET, width=0.3)


def _master(pattern: Pattern, code: str) -> Master:
    return pattern.blocks.master(pattern.design.colourway(code).recipe)


def _square(pattern: Pattern, code: str, side: float, top: float = 0.0) -> tuple[Scale, tuple[Mark, ...]]:
    """Return the scale about the middle of a master drawn `side` wide, and its ground."""
    scale = Scale(side / float(_master(pattern, code).side), complex(side / 2, side / 2 + top))
    return scale, (box(0, top, side, side, cloth(layer_colour(pattern, code, GROUND), OUTLINE)),)


def _shape(pattern: Pattern, code: str, scale: Scale) -> tuple[Mark, ...]:
    traced = Region((_master(pattern, code).shape.traced,))
    return (Area(scale.region(traced), cloth(layer_colour(pattern, code, SHAPE), OUTLINE)),)


def _across(cut: StraightLine, scale: Scale, half: float) -> tuple[Point, Point]:
    """Return the ends of a cut on a drawn square."""
    middle = scale.point(0j)
    return middle - cut.direction * half, middle + cut.direction * half


def fusing_figure(pattern: Pattern, code: str, side: float = 34.0) -> Sheet:
    """Return the creased square, and the square with its shape fused on."""
    master = _master(pattern, code)
    scale, ground = _square(pattern, code, side, 5.0)
    creases = tuple(line(*_across(cut, scale, side / 2), CREASE) for cut in master.cuts)
    size = measured(5j, complex(side, 5), length(pattern.design, master.side), -1.6j)
    notes = ("crease both ways", "fold on crease, then fuse")
    first = Drawing(
        side, side + 10, (*ground, *creases, *size, caption(complex(side / 2, side + 8), notes[0], SMALL))
    )
    folds = tuple(
        line(*_across(cut, scale, side / 2), Ink(stroke=DARK, width=0.2, dash=CREASE.dash))
        for cut in master.cuts
    )
    shape = _shape(pattern, code, scale)
    second = Drawing(
        side, side + 10, (*ground, *folds, *shape, *_folds(pattern, code, scale, master), *size,
                          caption(complex(side / 2, side + 8), notes[1], SMALL)),
    )  # fmt: skip
    way = pattern.design.colourway(code)
    alt = (
        f"Left, a square of {named(pattern.design, way.ground)} creased both ways through its middle. Right, the "
        f"shape of {named(pattern.design, way.shape)} lying on it, its folds on the creases."
    )
    return beside((first, second), 8).sheet("Crease and fuse", alt)


def _folds(pattern: Pattern, code: str, scale: Scale, master: Master) -> tuple[Mark, ...]:
    ink = Ink(stroke=text_colour_on(layer_colour(pattern, code, SHAPE)), width=0.18, dash=CREASE.dash)
    reach = master.shape.width / 2 * scale.factor
    return tuple(line(*_across(cut, scale, reach), ink) for cut in master.cuts)


def stitching_figure(pattern: Pattern, step: Step, side: float = 42.0) -> Sheet:
    """Return the fused square with its line of stitches, and where the stitching starts."""
    assert isinstance(step.action, StitchEdge)
    code = step.action.code
    master = _master(pattern, code)
    scale, ground = _square(pattern, code, side)
    creases = tuple(line(*_across(cut, scale, side / 2), CREASE) for cut in master.cuts)
    start, ink = step.action.starts[0], text_colour_on(layer_colour(pattern, code, GROUND))
    # The arrow comes from inside, where there is room whatever the square leaves round the shape.
    inner = text_colour_on(layer_colour(pattern, code, SHAPE))
    foot = scale.point(start) - start / abs(start) * 6
    marks = (
        *ground,
        *creases,
        *_shape(pattern, code, scale),
        *_folds(pattern, code, scale, master),
        outline(scale.path(master.shape.traced), Ink(stroke=ink, width=STITCH.width, dash=STITCH.dash)),
        *seen_arrow(foot, scale.point(start)),
        caption(foot - 1.6j * math.copysign(1, start.imag), "start", SMALL, colour=inner),
    )
    alt = (
        "A square with its shape stitched all round; the stitching starts midway between two creases, away from "
        "both cuts to come."
    )
    return Drawing(side, side, marks).sheet("Stitch round the edge", alt)


def apart_figure(pattern: Pattern, step: Step, side: float = 38.0) -> Sheet:
    """Return the two cuts under the ruler, and the units that they leave."""
    assert isinstance(step.action, CutApart)
    action, code = step.action, step.action.code
    first, second = action.cuts
    half = length(pattern.design, step.makes[0].width)
    drawings = (
        _under_ruler(pattern, code, first, (), side, half, "first cut: along one crease"),
        _under_ruler(pattern, code, second, (first,), side, half, "second cut: do not move the parts"),
        _parted(pattern, code, side),
    )
    alt = (
        f"Left, the ruler on one crease of the master with {half} on each side, and the first cut. Middle, the ruler "
        f"on the other crease, the parts not moved. Right, the {len(action.parts)} units."
    )
    return beside(drawings, 12).sheet("Cut apart", alt)


def _under_ruler(
    pattern: Pattern,
    code: str,
    cut: StraightLine,
    done: tuple[StraightLine, ...],
    side: float,
    half: str,
    note: str,
) -> Drawing:
    scale, ground = _square(pattern, code, side, 5.0)
    ends = _across(cut, scale, side / 2 + 2.5)
    made = tuple(line(*_across(c, scale, side / 2), OUTLINE) for c in done)
    upright = abs(cut.direction.imag) > 0.5
    marks = (
        *ground,
        *_shape(pattern, code, scale),
        *made,
        *_ruler(scale.point(0j), side, upright=upright),
        line(*ends, CUT),
        *_halves(side, half, upright=upright),
        caption(complex(side / 2, side + 10.5), note, SMALL),
    )
    return Drawing(side + (0 if upright else 7), side + 12.5, marks)


def _ruler(middle: Point, side: float, *, upright: bool) -> tuple[Mark, ...]:
    """Return a ruler beside a cut: on its left, or above it."""
    deep, reach = side * 0.3, side / 2 + 2
    along, across = (1j, -1 + 0j) if upright else (1 + 0j, -1j)
    corners = [middle - along * reach, middle - along * reach + across * deep]
    corners += [middle + along * reach + across * deep, middle + along * reach]
    sides = tuple(line(a, b, RULER) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True))
    ticks = tuple(
        line(middle + along * t, middle + along * t + across * (2.2 if k % 2 else 1.2), RULER)
        for k, t in enumerate(x * reach / 6 for x in range(-5, 6))
    )
    return (*sides, *ticks)


def _halves(side: float, half: str, *, upright: bool) -> tuple[Mark, ...]:
    if upright:
        top = 5j
        return (
            *measured(top, top + side / 2, half, -2.4j),
            *measured(top + side / 2, top + side, half, -2.4j),
        )
    right = complex(side, 5)
    return (
        *measured(right, right + side / 2 * 1j, half, 2.4),
        *measured(right + side / 2 * 1j, right + side * 1j, half, 2.4),
    )


def _parted(pattern: Pattern, code: str, side: float) -> Drawing:
    """Return the units as the cuts leave them, drawn a little apart."""
    master, away = _master(pattern, code), 1.6
    middle = complex(side / 2 + away, side / 2 + 5)
    ground = cloth(layer_colour(pattern, code, GROUND), OUTLINE)
    shape = cloth(layer_colour(pattern, code, SHAPE), EDGE)
    reach = 0.5 * master.facts.diagonal / 2**0.5 * side / float(master.side) + away
    marks: list[Mark] = []
    for part in master.parts:
        back, unit = part.motion.inverse(), master.units[part.unit]
        centre = back(complex(float(unit.side) / 2, float(unit.side) / 2))
        way = complex(math.copysign(1, centre.real), math.copysign(1, centre.imag))
        scale = Scale(side / float(master.side), middle + way * away)
        left, top = (
            (scale.origin + (way - 1 - 1j) * side / 4).real,
            (scale.origin + (way - 1 - 1j) * side / 4).imag,
        )
        marks.append(box(left, top, side / 2, side / 2, ground))
        layers = (layer for layer in unit.cut_layers if layer.part == SHAPE)
        marks += [Area(scale.region(back.region(layer.region)), shape) for layer in layers]
        name = unit_name(code, unit.quarter)
        part_named, spot = _label_place(pattern, name) if unit.quarter else (SHAPE, 0j)
        place = scale.point(back(spot)) if unit.quarter else middle + way * reach
        ink = text_colour_on(layer_colour(pattern, code, part_named))
        marks.append(caption(place, name, LABEL, colour=ink))
    note = (
        f"({len(master.parts)}) unit {code}"
        if len(master.units) == 1
        else f"({len(master.parts)}) units of {code}"
    )
    marks.append(caption(complex(middle.real, side + 10.5), note, SMALL))
    return Drawing(side + 2 * away, side + 12.5, tuple(marks))


def _label_place(pattern: Pattern, name: str) -> tuple[str, Point]:
    """Return where in a unit's frame its shape has most room; its ground, where the seams hide the shape."""
    found = rooms(pattern, name)
    part = SHAPE if SHAPE in found else GROUND
    return part, found[part][0] * float(unit_of(pattern, name).width)
