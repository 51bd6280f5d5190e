"""List every piece that must exist before sewing."""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TypeAlias

from quarterturn.blocks import Blocks, Master
from quarterturn.design import Design, Direction, unit_name
from quarterturn.measure import Length, cut_up
from quarterturn.pieces.cloths import UPRIGHT_STRIP, cloth_wants, to_cut
from quarterturn.pieces.counting import times_made
from quarterturn.pieces.model import Bill, Grain, MasterCount, MotifCount, Piece, Purpose, UnitCount
from quarterturn.setting import Panel, Setting

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
        *_cloth_wants(design, setting),
        *_master_wants(design, blocks, setting),
        *_motif_wants(design, blocks, setting),
        _binding_want(design, setting),
        _backing_want(design, setting),
    ]
    pieces, labels = _labelled(design, wants)
    masters = tuple(
        replace(_master_count(design, blocks, setting, code), ground=ground, shape=shape)
        for code, (ground, shape) in _labels_of_masters(design, blocks, setting, labels).items()
    )
    return Bill(masters, pieces, tuple(_motif_counts(design, blocks, setting, labels)))


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


def _cloth_wants(design: Design, setting: Setting) -> Iterable[_Want]:
    for want in cloth_wants(setting.top, design.making.seam, design.units):
        piece = want.piece
        size = (piece.length, piece.width)
        yield _Want(piece.fabric, piece.purpose, piece.name, *size, want.count, 0, want.user)


def motifs_made(setting: Setting) -> Counter[tuple[str, str, str]]:
    """Count the motifs of all panels by recipe, fabric and panel."""
    counts: Counter[tuple[str, str, str]] = Counter()
    for node, times in times_made(setting.top).items():
        if isinstance(node, Panel):
            for motif in node.motifs:
                counts[motif.recipe, motif.fabric, node.name] += times
    return counts


def _motif_want(design: Design, blocks: Blocks, motif: tuple[str, str, str], count: int) -> _Want:
    recipe, fabric, panel = motif
    blank = blank_side(blocks.master(recipe), design)
    return _Want(fabric, Purpose.SHAPE, "square for a shape", blank, blank, count, 0, f"motifs of {panel}")


def _motif_wants(design: Design, blocks: Blocks, setting: Setting) -> Iterable[_Want]:
    for motif, count in motifs_made(setting).items():
        yield _motif_want(design, blocks, motif, count)


def _motif_counts(
    design: Design, blocks: Blocks, setting: Setting, labels: dict[_Key, str]
) -> Iterable[MotifCount]:
    counts: Counter[tuple[str, str, str]] = Counter()
    for motif, count in motifs_made(setting).items():
        recipe, fabric, _ = motif
        counts[recipe, fabric, labels[_motif_want(design, blocks, motif, count).key()]] += count
    for (recipe, fabric, label), count in counts.items():
        yield MotifCount(recipe, fabric, label, count)


def _binding_want(design: Design, setting: Setting) -> _Want:
    run = to_cut(2 * (setting.width + setting.height) + design.making.binding_extra, design.units)
    return _Want(
        design.binding_fabric, Purpose.BINDING, "binding", run, design.binding_width, 1, 0, "binding"
    )


def _backing_want(design: Design, setting: Setting) -> _Want:
    over = 2 * design.making.overage
    width, height = (to_cut(side + over, design.units) for side in (setting.width, setting.height))
    fabric = design.backing_fabric
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
    grain = first.grain
    if grain is Grain.ANY and direction is not Direction.NONE:
        grain = Grain.LENGTHWISE if first.name == UPRIGHT_STRIP else Grain.CROSSWISE
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
        used_for=", ".join(dict.fromkeys(w.user for w in group)),
    )


def _labels_of_masters(
    design: Design, blocks: Blocks, setting: Setting, labels: dict[_Key, str]
) -> dict[str, tuple[str, str]]:
    found = {}
    for code in setting.codes:
        ground, shape = _wants_of_colourway(design, blocks, setting, code)
        found[code] = (labels[ground.key()], labels[shape.key()])
    return found
