"""Halves of two masters, and the block that they make when they are joined along their cuts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterturn.blocks import Half, Unit
from quarterturn.design import FIRST, code_of_unit, unit_name
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import (
    Motion,
    Path,
    Point,
    Region,
    StraightLine,
    keep_left,
    path_bounds,
    roomiest_point,
    shift,
)
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import layer_colour, layered, seen_of, unit_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    ACCENT,
    DARK,
    EDGE,
    LABEL,
    OUTLINE,
    SMALL,
    arrow,
    caption,
    line,
    measured,
    outline,
)
from quarterturn.publish.figures.plans import TOP, clipped
from quarterturn.publish.figures.trims import trimmed_block_figure
from quarterturn.publish.sheet import Ink, Mark, Scale, Sheet
from quarterturn.publish.wording import length
from quarterturn.publish.wording.places import NEAR
from quarterturn.steps import Rejoin, Step

APART = 7.0
"""Millimetres between the two halves before they are joined."""
LARGEST = 34.0
SEAM = Ink(stroke=DARK, width=0.35, dash=(1.0, 0.7))


def rejoin_figure(pattern: Pattern, step: Step, trim: Step | None) -> Sheet:
    """Return the two halves apart, the joined block with its seam, and where it is trimmed if it is."""
    assert isinstance(step.action, Rejoin)
    name = step.makes[0].label.removeprefix("unit ").removesuffix(", rejoined")
    unit = unit_of(pattern, name)
    drawings = [_apart(pattern, name, unit, step.action), _joined(pattern, name, unit, step)]
    if trim:
        drawings.append(trimmed_block_figure(pattern, name, trim, LARGEST))
    halves = " and ".join(_half_name(pattern, name, half) for half in unit.halves)
    alt = (
        f"Left, the halves {halves}, their cut edges side by side. Right, unit {name}, the two joined along a seam of "
        f"{length(pattern.design, step.action.seam)}; the dashed line is the seam."
    )
    return beside(drawings, 10).sheet(f"Join halves: unit {name}", alt)


def _half_name(pattern: Pattern, name: str, half: Half) -> str:
    way = pattern.design.colourway(code_of_unit(name))
    code = way.first if half.part == FIRST else way.second
    master = pattern.blocks.master(pattern.design.colourway(code).recipe)
    return unit_name(code, master.units[half.unit].quarter)


def _half_unit(pattern: Pattern, name: str, half: Half) -> tuple[str, Unit]:
    half_name = _half_name(pattern, name, half)
    return half_name, unit_of(pattern, half_name)


def _apart(pattern: Pattern, name: str, unit: Unit, action: Rejoin) -> Drawing:
    """Return the halves as they will lie in the block, drawn apart square to their seam."""
    laid = [(half, *_half_unit(pattern, name, half)) for half in unit.halves]
    factor = _factor(pattern, action)
    moved: list[tuple[str, Unit, Motion]] = []
    for (half, half_name, half_unit), way in zip(laid, (-action.way, action.way), strict=True):
        moved.append((half_name, half_unit, half.motion.then(shift(way * APART / 2 / factor))))
    boxes = [path_bounds(motion.path(half_unit.cut_outline)) for _, half_unit, motion in moved]
    left, top = min(b.left for b in boxes), min(b.top for b in boxes)
    right, bottom = max(b.right for b in boxes), max(b.bottom for b in boxes)
    scale = Scale(factor, -complex(left, top) * factor + TOP * 1j)
    marks: list[Mark] = []
    for half_name, half_unit, motion in moved:
        layers = [replace(layer, region=motion.region(layer.region)) for layer in half_unit.cut_layers]
        marks += layered(pattern, half_name, layers, scale, OUTLINE)
        marks += _name(pattern, half_name, [layer.region for layer in layers], scale, half_unit)
    width, height = (right - left) * factor, (bottom - top) * factor
    marks.append(caption(complex(width / 2, TOP + height + 3), "cut edge to cut edge", SMALL))
    return Drawing(max(width, 30.0), TOP + height + 6, tuple(marks))


def _name(pattern: Pattern, name: str, regions: list[Region], scale: Scale, unit: Unit) -> Iterator[Mark]:
    """Write the name of a half where one of its parts has most room."""
    rooms = [
        (*roomiest_point(shown), unit.cut_layers[k].part)
        for k in range(len(regions))
        if (shown := seen_of(regions, k))
    ]
    place, _, part = max(rooms, key=lambda room: room[1])
    yield caption(
        scale.point(place), name, LABEL, colour=text_colour_on(layer_colour(pattern, name, part)), bold=True
    )


def _joined(pattern: Pattern, name: str, unit: Unit, step: Step) -> Drawing:
    """Return the block as joined, with its seam, its size, and the arrow of pressing."""
    assert isinstance(step.action, Rejoin)
    action = step.action
    factor, raw = _factor(pattern, action), pattern.blocks.rejoining(action.recipe).raw_outline
    box = path_bounds(raw)
    scale = Scale(factor, -complex(box.left, box.top) * factor + TOP * 1j)
    width, height = box.width * factor, box.height * factor
    seam = _seam(pattern, unit, action)
    marks: list[Mark] = []
    for half in unit.halves:
        marks += _in_place(pattern, name, half, seam, scale)
    marks.append(outline(scale.path(raw), OUTLINE))
    ends = _ends(raw, seam)
    marks.append(line(scale.point(ends[0]), scale.point(ends[1]), SEAM))
    if action.press_to is not None:
        middle = scale.point((ends[0] + ends[1]) / 2)
        way = -action.way if action.press_to == 0 else action.way
        marks += arrow(middle - way * 1.5, middle + way * 4.5, ACCENT, 0.4, 1.8)
    size = length(pattern.design, step.makes[0].width)
    marks += measured(TOP * 1j, complex(width, TOP), size, -1.6j)
    marks.append(caption(complex(width / 2, TOP + height + 3), f"unit {name}, as joined", SMALL))
    return Drawing(max(width, 30.0), TOP + height + 6, tuple(marks))


def _factor(pattern: Pattern, action: Rejoin) -> float:
    """Return the millimetres to the inch at which a block is drawn apart, joined and trimmed."""
    box = path_bounds(pattern.blocks.rejoining(action.recipe).raw_outline)
    return LARGEST / max(box.width, box.height)


def _in_place(pattern: Pattern, name: str, half: Half, seam: StraightLine, scale: Scale) -> Iterator[Mark]:
    """Return what is seen of a half in the block as joined: its cloth up to the seam, ears trimmed off."""
    raw = pattern.blocks.rejoining(pattern.design.colourway(code_of_unit(name)).recipe).raw_outline
    half_name, half_unit = _half_unit(pattern, name, half)
    farthest = max(half.motion.path(half_unit.cut_outline).corners(), key=lambda p: abs(seam.side(p)))
    mine = seam if seam.side(farthest) > 0 else StraightLine(seam.through, -seam.direction)
    for layer in half_unit.cut_layers:
        seen = clipped(keep_left(half.motion.region(layer.region), mine), raw)
        yield from layered(pattern, half_name, [replace(layer, region=seen)], scale, EDGE)


def _seam(pattern: Pattern, unit: Unit, action: Rejoin) -> StraightLine:
    """Return the line of the seam of a block: one allowance back from the cut edge of its first half."""
    rejoining, half = pattern.blocks.rejoining(action.recipe), unit.halves[0]
    master = pattern.blocks.master(rejoining.of)
    part = next(part for part in master.parts if part.unit == half.unit)
    laid = part.motion.then(half.motion)
    through = laid(rejoining.cut.through) - action.way * float(unit.seam)
    return StraightLine(through, laid.factor * rejoining.cut.direction)


def _ends(outline: Path, seam: StraightLine) -> tuple[Point, Point]:
    """Return where a seam runs over an outline."""
    region = keep_left(Region((outline,)), seam)
    on = [p for s in region.segments() for p in (s.start, s.end) if abs(seam.side(p)) < NEAR]
    return min(on, key=seam.along), max(on, key=seam.along)
