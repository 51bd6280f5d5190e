"""The steps that turn stitched masters into counted stacks of units."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.blocks import Blocks, Half, Master, Rejoining
from quarterturn.design import Design, Pressing, unit_name
from quarterturn.geometry import Path, Point, StraightLine, path_bounds
from quarterturn.pieces import Bill, Join, MasterCount, RejoinCount, UnitCount
from quarterturn.steps import labels
from quarterturn.steps.behind import behind_shapes
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.making import Behind, CutApart, CutAway, Rejoin, Trim, TrimLine
from quarterturn.steps.model import Chapter, LabelStacks, SetAside
from quarterturn.steps.shapes import as_length
from quarterturn.steps.things import Pile, Product
from quarterturn.steps.trimming import (
    is_trimmed_whole,
    laid,
    trim_of_rejoined,
    trim_of_unit,
    trim_of_whole,
    trimmed_whole,
)

SURPLUS = "units beyond the quilt's need"


@dataclass(frozen=True, slots=True)
class _Rest:
    """What is left to do to a kind of unit when its master has been cut: its outline then, in its own frame."""

    outline: Path
    shapes: tuple[Behind, ...]
    trim: tuple[TrimLine, ...]

    @property
    def behind(self) -> tuple[Behind, ...]:
        """Return the shapes behind which there is something to cut away."""
        return tuple(shape for shape in self.shapes if shape.layers)

    def label(self, unit: str) -> str:
        """Return the name of a unit as the cuts leave it: its own where nothing is left to do to it."""
        return labels.cut_unit(unit) if self.behind or self.trim else labels.unit(unit)


def _rest(master: Master, kind: int) -> _Rest:
    shapes = behind_shapes(master, kind)
    if is_trimmed_whole(master):
        return _Rest(master.units[kind].cut_outline, shapes, ())
    first = next(part for part in master.parts if part.unit == kind)
    outline = first.motion.path(first.outline)
    return _Rest(outline, shapes, trim_of_unit(master, kind, outline))


def is_done_when_stitched(master: Master) -> bool:
    """Tell whether nothing is left to do to a master when its shapes are stitched: it is a unit then."""
    if master.cuts:
        return False
    rest = _rest(master, 0)
    return not rest.behind and not rest.trim


def unit_steps(master: Master, masters: MasterCount) -> Iterator[Draft]:
    """Return cutting a colourway's masters apart, then each kind of unit by itself up to its stack.

    A master that is cut on a slant is trimmed first, from its creases; else the units are trimmed, from the edges
    where they were cut. A master that is not cut is a unit as it is.
    """
    code, whole = masters.code, labels.all_stitched(masters.code)
    rests = [_rest(master, kind) for kind in range(len(master.units))]
    if is_trimmed_whole(master):
        made = _sized(labels.trimmed(code), masters.count, trimmed_whole(master))
        action = Trim(code, master.recipe, trim_of_whole(master))
        yield draft(Chapter.UNITS, action, (Pile(whole, masters.count),), (made,))
        whole = made.label
    if master.cuts:
        yield _cut_apart(master, masters, rests, whole)
    for kind, (unit, rest) in enumerate(zip(masters.units, rests, strict=True)):
        lying = rest.label(unit.name) if master.cuts else whole
        yield from _kind_steps(master, masters.code, kind, unit, rest, lying)


def _cut_apart(master: Master, masters: MasterCount, rests: Sequence[_Rest], whole: str) -> Draft:
    cut = list(zip(masters.units, rests, strict=True))
    names = [rest.label(unit.name) for unit, rest in cut]
    parts = tuple((names[part.unit], part.motion) for part in master.parts)
    made = tuple(_sized(rest.label(unit.name), unit.made, rest.outline) for unit, rest in cut)
    action = CutApart(masters.code, master.recipe, master.cuts, parts)
    return draft(Chapter.UNITS, action, (Pile(whole, masters.count),), made)


def _kind_steps(
    master: Master, code: str, kind: int, unit: UnitCount, rest: _Rest, lying: str
) -> Iterator[Draft]:
    if not unit.needed:
        yield draft(Chapter.UNITS, SetAside(SURPLUS), (Pile(lying, unit.surplus),))
        return
    finished = labels.unit(unit.name)
    if rest.behind:
        label = labels.open_unit(unit.name) if rest.trim else finished
        narrow = tuple(shape for shape in rest.shapes if not shape.layers)
        away = CutAway(code, master.recipe, rest.behind, narrow)
        made = _sized(label, unit.made, rest.outline)
        yield draft(Chapter.UNITS, away, (Pile(lying, unit.made),), (made,))
        lying = label
    if rest.trim:
        made = _sized(finished, unit.made, master.units[kind].cut_outline)
        trim = Trim(code, master.recipe, rest.trim)
        yield draft(Chapter.UNITS, trim, (Pile(lying, unit.made),), (made,))
    if unit.surplus:
        yield draft(Chapter.UNITS, SetAside(SURPLUS), (Pile(finished, unit.surplus),))


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


def stacks(bill: Bill) -> Iterator[Draft]:
    """Return stacking and labelling what the maps take, if they take any unit."""
    placed = [
        Pile(labels.unit(unit.name), unit.placed)
        for masters in bill.masters
        for unit in masters.units
        if unit.placed
    ]
    joined = [Pile(labels.unit(join.unit), join.count) for each in bill.rejoined for join in each.joins]
    if piles := (*placed, *joined):
        yield draft(Chapter.UNITS, LabelStacks(piles))
