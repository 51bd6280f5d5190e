"""The steps that turn stitched masters into counted stacks of units."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator

from quarterturn.blocks import Blocks, Half, Master, Rejoining
from quarterturn.design import Design, Pressing, unit_name
from quarterturn.geometry import Path, Point, StraightLine, path_bounds
from quarterturn.pieces import Bill, Join, MasterCount, RejoinCount, UnitCount
from quarterturn.steps import labels
from quarterturn.steps.behind import behind_shapes
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.making import CutApart, CutAway, Rejoin, Trim
from quarterturn.steps.model import Chapter, LabelStacks, Pile, Product, SetAside
from quarterturn.steps.shapes import as_length
from quarterturn.steps.trimming import (
    is_trimmed_whole,
    laid,
    trim_of_rejoined,
    trim_of_unit,
    trim_of_whole,
    trimmed_whole,
)

SURPLUS = "units beyond the quilt's need"


def unit_steps(master: Master, masters: MasterCount) -> Iterator[Draft]:
    """Return cutting a colourway's masters apart, then each kind of unit by itself up to its stack.

    A master that is cut on a slant is trimmed first, from its creases; else the units are trimmed, from the edges
    where they were cut. A master that is not cut is a unit as it is.
    """
    code, whole = masters.code, labels.master(masters.code, 1, 1, 1)
    if is_trimmed_whole(master):
        made = _sized(labels.trimmed(code), masters.count, trimmed_whole(master))
        action = Trim(code, master.recipe, trim_of_whole(master))
        yield draft(Chapter.UNITS, action, (Pile(whole, masters.count),), (made,))
        whole = made.label
    if master.cuts:
        yield _cut_apart(master, masters, whole)
    for kind, unit in enumerate(masters.units):
        lying = _label_as_cut(master, kind, unit) if master.cuts else whole
        yield from _kind_steps(master, masters, kind, unit, lying)


def _cut_apart(master: Master, masters: MasterCount, whole: str) -> Draft:
    names = [_label_as_cut(master, kind, unit) for kind, unit in enumerate(masters.units)]
    parts = tuple((names[part.unit], part.motion) for part in master.parts)
    made = tuple(
        _sized(name, unit.made, _as_cut(master, kind))
        for kind, (name, unit) in enumerate(zip(names, masters.units, strict=True))
    )
    action = CutApart(masters.code, master.recipe, master.cuts, parts)
    return draft(Chapter.UNITS, action, (Pile(whole, masters.count),), made)


def _as_cut(master: Master, kind: int) -> Path:
    """Return the outline of a kind of unit as the cuts leave it, in its own frame."""
    if is_trimmed_whole(master):
        return master.units[kind].cut_outline
    first = next(part for part in master.parts if part.unit == kind)
    return first.motion.path(first.outline)


def _label_as_cut(master: Master, kind: int, unit: UnitCount) -> str:
    """Return the name of a unit as the cuts leave it: its own where nothing is left to do to it."""
    return labels.unit(unit.name) if _is_done(master, kind) else labels.cut_unit(unit.name)


def _is_done(master: Master, kind: int) -> bool:
    """Tell whether nothing of a unit that has been cut is cut away or trimmed."""
    left = not is_trimmed_whole(master) and trim_of_unit(master, kind, _as_cut(master, kind))
    return not left and not any(shape.layers for shape in behind_shapes(master, kind))


def _kind_steps(
    master: Master, masters: MasterCount, kind: int, unit: UnitCount, lying: str
) -> Iterator[Draft]:
    if not unit.needed:
        yield draft(Chapter.UNITS, SetAside(SURPLUS), (Pile(lying, unit.surplus),))
        return
    code, recipe, size = masters.code, master.recipe, _as_cut(master, kind)
    shapes = behind_shapes(master, kind)
    behind = tuple(shape for shape in shapes if shape.layers)
    trim = () if is_trimmed_whole(master) else trim_of_unit(master, kind, size)
    if behind:
        label = labels.open_unit(unit.name) if trim else labels.unit(unit.name)
        made = _sized(label, unit.made, size)
        narrow = tuple(shape for shape in shapes if not shape.layers)
        action = CutAway(code, recipe, behind, narrow)
        yield draft(Chapter.UNITS, action, (Pile(lying, unit.made),), (made,))
        lying = label
    if trim:
        made = _sized(labels.unit(unit.name), unit.made, master.units[kind].cut_outline)
        yield draft(Chapter.UNITS, Trim(code, recipe, trim), (Pile(lying, unit.made),), (made,))
    if unit.surplus:
        yield draft(Chapter.UNITS, SetAside(SURPLUS), (Pile(labels.unit(unit.name), unit.surplus),))


def is_done_when_stitched(master: Master) -> bool:
    """Tell whether nothing is left to do to a master when its shapes are stitched: it is a unit then."""
    return not master.cuts and _is_done(master, 0)


def _sized(label: str, count: int, outline: Path) -> Product:
    box = path_bounds(outline)
    return Product(label, count, as_length(box.width), as_length(box.height))


def rejoin_steps(design: Design, blocks: Blocks, rejoined: RejoinCount) -> Iterator[Draft]:
    """Return joining halves of two colourways along their cuts, and trimming the blocks."""
    rejoining = blocks.rejoining(rejoined.recipe)
    master = blocks.master(rejoining.of)
    for join in rejoined.joins:
        unit = blocks.unit(design, join.unit)
        action, seam = _rejoin(design, master, rejoining, rejoined, join)
        trim = trim_of_rejoined(rejoining, unit, seam)
        label = labels.rejoined(join.unit) if trim else labels.unit(join.unit)
        made = _sized(label, join.count, rejoining.raw_outline)
        used = tuple(Pile(half, join.count) for half, _ in action.halves)
        yield draft(Chapter.UNITS, action, used, (made,))
        if trim:
            made = _sized(labels.unit(join.unit), join.count, unit.cut_outline)
            trimming = Trim(rejoined.code, rejoined.recipe, trim)
            yield draft(Chapter.UNITS, trimming, (Pile(label, join.count),), (made,))


def _rejoin(
    design: Design, master: Master, rejoining: Rejoining, rejoined: RejoinCount, join: Join
) -> tuple[Rejoin, StraightLine]:
    """Return the joining of two halves, and the seam through its middle, in the block."""
    unit = next(unit for unit in rejoining.units if unit_name(rejoined.code, unit.quarter) == join.unit)
    first, second = (half.motion.path(master.units[half.unit].cut_outline) for half in unit.halves)
    way = _across(_cut_in(master, rejoining, unit.halves[0]), first)
    lying = [(labels.unit(name), half.motion) for name, half in zip(join.halves, unit.halves, strict=True)]
    action = Rejoin(
        code=rejoined.code,
        recipe=rejoined.recipe,
        halves=(lying[0], lying[1]),
        way=way,
        seam=unit.seam,
        press_to=None if design.making.pressing is Pressing.OPEN else 0,
        ears=_ears(first, second, way),
    )
    return action, _seam(first, way, float(unit.seam))


def _cut_in(master: Master, rejoining: Rejoining, half: Half) -> StraightLine:
    """Return the cut edge of a half as it lies in the rejoined unit."""
    part = next(part for part in master.parts if part.unit == half.unit)
    return laid(rejoining.cut, part.motion.then(half.motion))


def _across(cut: StraightLine, half: Path) -> Point:
    """Return the direction over the cut from the side on which a half lies."""
    over, corners = cut.direction * 1j, half.corners()
    return over if sum(map(cut.side, corners)) < 0 else -over


def _edge_towards(half: Path, out: Point) -> int:
    """Return which edge of a half faces a direction."""
    ways = (side.tangent(0) for side in half.segments)
    return next(k for k, way in enumerate(ways) if abs(-1j * way / abs(way) - out) < 1e-7)


def _seam(first: Path, way: Point, seam: float) -> StraightLine:
    """Return the seam through its middle, beside the edge of the first half that faces the second."""
    edge = first.segments[_edge_towards(first, way)]
    return StraightLine((edge.start + edge.end) / 2 - way * seam, way * 1j)


def _ears(first: Path, second: Path, way: Point) -> int:
    """Count the ends of the seam at which a half runs out in an angle below a right one."""
    ends = zip(_sharp_ends(first, way), reversed(_sharp_ends(second, -way)), strict=True)
    return sum(any(end) for end in ends)


def _sharp_ends(half: Path, out: Point) -> list[bool]:
    """Tell for start and end of the edge that faces a direction whether its corner is below a right angle."""
    sides, index = half.segments, _edge_towards(half, out)
    before, edge, after = sides[index - 1], sides[index], sides[(index + 1) % len(sides)]
    turns = (cmath.phase(b.tangent(0) / a.tangent(1)) for a, b in ((before, edge), (edge, after)))
    return [turn > math.pi / 2 + 1e-7 for turn in turns]


def stacks(bill: Bill) -> Draft:
    """Return stacking and labelling what the map takes."""
    placed = [
        Pile(labels.unit(unit.name), unit.placed)
        for masters in bill.masters
        for unit in masters.units
        if unit.placed
    ]
    joined = [Pile(labels.unit(join.unit), join.count) for each in bill.rejoined for join in each.joins]
    return draft(Chapter.UNITS, LabelStacks((*placed, *joined)))
