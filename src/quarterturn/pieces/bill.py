"""List every piece that must exist before sewing."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TypeAlias

from quarterturn.blocks import Blocks, Master
from quarterturn.design import Design, Direction, unit_name
from quarterturn.measure import Length, cut_up
from quarterturn.pieces.model import Bill, Grain, MasterCount, Piece, Purpose, UnitCount
from quarterturn.setting import BorderStrip, Setting, Side

_Key: TypeAlias = tuple[str, Purpose, str, Length, Length, Grain]


@dataclass(frozen=True, slots=True)
class _Want:
    """A wish for equal pieces, before equal wishes of one fabric are made one and labelled."""

    fabric: str
    purpose: Purpose
    name: str
    length: Length
    width: Length
    count: int
    spare: int
    user: str
    grain: Grain = Grain.ANY

    def key(self) -> _Key:
        return (self.fabric, self.purpose, self.name, self.length, self.width, self.grain)


def bill_of_pieces(design: Design, blocks: Blocks, setting: Setting) -> Bill:
    """Return masters and pieces of a quilt top, its binding and its backing."""
    wants = [
        *_border_wants(design, setting),
        *_master_wants(design, blocks, setting),
        _binding_want(design, setting),
        _backing_want(design, setting),
    ]
    pieces, labels = _labelled(design, wants)
    masters = tuple(
        replace(_master_count(design, blocks, setting, code), ground=ground, shape=shape)
        for code, (ground, shape) in _labels_of_masters(design, blocks, setting, labels).items()
    )
    return Bill(masters, pieces)


def blank_side(master: Master, design: Design) -> Length:
    """Return the side of the square of cloth for one shape: the whole ring lies on it, cut size rounded up."""
    return cut_up(max(master.shape.width, master.shape.height) + 2 * design.making.ring_out, design.units)


def _master_count(design: Design, blocks: Blocks, setting: Setting, code: str) -> MasterCount:
    """Count the masters for the kind that needs most; the other kinds leave a surplus (trade check 17)."""
    recipe, spare = design.colourway(code).recipe, design.making.spare_masters
    master = blocks.master(recipe)
    kinds = [
        (name, setting.tally.get(name, 0), master.per_master(number))
        for number, unit in enumerate(master.units)
        for name in (unit_name(code, unit.quarter),)
    ]
    needed = max(math.ceil(units / each) for _, units, each in kinds)
    count = needed + spare
    counts = (UnitCount(name, units, each, count * each - units) for name, units, each in kinds)
    return MasterCount(code, recipe, "", "", tuple(counts), needed, spare, count)


def _master_wants(design: Design, blocks: Blocks, setting: Setting) -> Iterable[_Want]:
    for code in setting.codes:
        ground, shape = _wants_of_colourway(design, blocks, setting, code)
        yield ground
        yield shape


def _wants_of_colourway(design: Design, blocks: Blocks, setting: Setting, code: str) -> tuple[_Want, _Want]:
    colourway, masters = design.colourway(code), _master_count(design, blocks, setting, code)
    master, user = blocks.master(colourway.recipe), f"colourway {code}"
    side, blank = master.side, blank_side(master, design)
    count, spare = masters.count, masters.spare
    return (
        _Want(colourway.ground, Purpose.GROUND, "ground square", side, side, count, spare, user),
        _Want(colourway.shape, Purpose.SHAPE, "square for a shape", blank, blank, count, spare, user),
    )


def _border_wants(design: Design, setting: Setting) -> Iterable[_Want]:
    for strip in setting.borders:
        if strip.side in (Side.LEFT, Side.TOP):
            yield _border_want(design, strip)


def _border_want(design: Design, strip: BorderStrip) -> _Want:
    """Return the wish for a pair of border strips; the opposite one is its twin."""
    seam, pair = design.making.seam, "side" if strip.side is Side.LEFT else "end"
    length, width = strip.length + 2 * seam, strip.depth + 2 * seam
    which = f"border {strip.ring + 1}" if len(design.borders) > 1 else "border"
    return _Want(strip.fabric, Purpose.BORDER, f"{which}, {pair} strip", length, width, 2, 0, which)


def _binding_want(design: Design, setting: Setting) -> _Want:
    run = 2 * (setting.width + setting.height) + design.making.binding_extra
    return _Want(
        design.binding_fabric, Purpose.BINDING, "binding", run, design.binding_width, 1, 0, "binding"
    )


def _backing_want(design: Design, setting: Setting) -> _Want:
    over = 2 * design.making.overage
    fabric, width, height = design.backing_fabric, setting.width + over, setting.height + over
    return _Want(fabric, Purpose.BACKING, "backing", width, height, 1, 0, "backing", Grain.LENGTHWISE)


def _labelled(design: Design, wants: list[_Want]) -> tuple[tuple[Piece, ...], dict[_Key, str]]:
    """Make equal wishes one, order them as a pattern lists them, and give each its letter and number."""
    groups: dict[_Key, list[_Want]] = defaultdict(list)
    for want in wants:
        groups[want.key()].append(want)
    pieces: list[Piece] = []
    labels: dict[_Key, str] = {}
    for fabric in design.fabrics:
        mine = [group for group in groups.values() if group[0].fabric == fabric.letter]
        for number, group in enumerate(sorted(mine, key=_listing_order), start=1):
            label = f"{fabric.letter}{number}"
            labels[group[0].key()] = label
            pieces.append(_piece(label, group, fabric.direction))
    return tuple(pieces), labels


def _listing_order(group: list[_Want]) -> tuple[int, Length, Length]:
    first = group[0]
    return list(Purpose).index(first.purpose), -first.length, -first.width


def _piece(label: str, group: list[_Want], direction: Direction) -> Piece:
    first = group[0]
    grain = Grain.CROSSWISE if first.grain is Grain.ANY and direction is not Direction.NONE else first.grain
    return Piece(
        label=label,
        name=first.name,
        fabric=first.fabric,
        purpose=first.purpose,
        length=first.length,
        width=first.width,
        count=sum(w.count for w in group),
        spare=sum(w.spare for w in group),
        grain=grain,
        used_for=", ".join(w.user for w in group),
    )


def _labels_of_masters(
    design: Design, blocks: Blocks, setting: Setting, labels: dict[_Key, str]
) -> dict[str, tuple[str, str]]:
    found = {}
    for code in setting.codes:
        ground, shape = _wants_of_colourway(design, blocks, setting, code)
        found[code] = (labels[ground.key()], labels[shape.key()])
    return found
