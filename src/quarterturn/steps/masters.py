"""The steps that turn squares, cloth blanks and web into units."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from quarterturn.blocks import Blocks, Master
from quarterturn.design import Design
from quarterturn.geometry import (
    Point,
    StraightLine,
    congruence,
    mirror_across_vertical,
    path_crossings,
)
from quarterturn.materials import Materials, WebRows
from quarterturn.measure import Length
from quarterturn.pieces import Bill, MasterCount, UnitCount
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import (
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    FuseRings,
    FuseToGround,
    LabelStacks,
    SetAside,
    StitchEdge,
    TraceRings,
    Trim,
)
from quarterturn.steps.things import Pile, Product

SURPLUS = "units beyond the quilt's need"

FLIP = mirror_across_vertical()
"""Web is drawn on the paper side and goes on the wrong side of the cloth: what is drawn comes out mirrored."""


def shape_steps(design: Design, blocks: Blocks, bill: Bill, materials: Materials) -> Iterator[Draft]:
    """Return tracing, hollowing, fusing to the cloth blanks and cutting out."""
    for rows in materials.web.rows:
        yield _trace(blocks.master(rows.shape), rows)
    blanks = _blank_counts(design, bill)
    for (label, recipe), count in blanks.items():
        yield _fuse_rings(bill, label, recipe, count)
    for (label, recipe), count in blanks.items():
        yield _cut_out(bill, blocks.master(recipe), label, count)


def _trace(master: Master, rows: WebRows) -> Draft:
    shape = master.shape
    action = TraceRings(
        recipe=master.recipe,
        traced=FLIP.path(shape.traced),
        ring_out=FLIP.region(shape.ring_out),
        ring_in=FLIP.region(shape.ring_in),
        same_mirrored=bool(congruence(shape.traced, shape.traced, mirrored=True)),
        room_width=rows.width,
        room_height=rows.height,
        gap=rows.gap,
        per_row=rows.per_row,
    )
    made = Product(labels.ring(master.recipe), rows.count, rows.width, rows.height)
    return draft(Chapter.SHAPES, action, makes=(made,))


def _blank_counts(design: Design, bill: Bill) -> dict[tuple[str, str], int]:
    """Count the cloth blanks by label and recipe, in the order of the colourways."""
    counts: Counter[tuple[str, str]] = Counter()
    for masters in bill.masters:
        counts[masters.shape, masters.recipe] += masters.count
    for motifs in bill.motifs:
        counts[motifs.shape, motifs.recipe] += motifs.count
    return dict(counts)


def _fuse_rings(bill: Bill, label: str, recipe: str, count: int) -> Draft:
    piece = bill.piece(label)
    used = (Pile(labels.ring(recipe), count), Pile(label, count))
    made = Product(labels.backed(piece.fabric, recipe), count, piece.length, piece.width)
    return draft(Chapter.SHAPES, FuseRings(recipe), used, (made,))


def _cut_out(bill: Bill, master: Master, label: str, count: int) -> Draft:
    fabric, recipe, shape = bill.piece(label).fabric, master.recipe, master.shape
    made = Product(labels.shape(fabric, recipe), count, _as_length(shape.width), _as_length(shape.height))
    used = (Pile(labels.backed(fabric, recipe), count),)
    return draft(Chapter.SHAPES, CutOut(recipe, FLIP.path(shape.traced)), used, (made,))


def _as_length(value: float) -> Length:
    """Return a curve's measure as a length: it is known to float precision only."""
    return Fraction(value).limit_denominator(10**9)


def master_steps(design: Design, blocks: Blocks, bill: Bill) -> Iterator[Draft]:
    """Return creasing, fusing, stitching and everything up to trimmed, counted units."""
    yield from _crease_steps(blocks, bill)
    for masters in bill.masters:
        yield _fuse(design, blocks.master(masters.recipe), masters)
    for masters in bill.masters:
        yield _stitch(design, blocks.master(masters.recipe), masters)
    for masters in bill.masters:
        yield from _unit_steps(design, blocks.master(masters.recipe), masters)
    stacks = tuple(
        Pile(labels.unit(unit.name), unit.needed)
        for masters in bill.masters
        for unit in masters.units
        if unit.needed
    )
    if stacks:
        yield draft(Chapter.UNITS, LabelStacks(stacks))


def _crease_steps(blocks: Blocks, bill: Bill) -> Iterator[Draft]:
    counts: Counter[tuple[str, str]] = Counter()
    for masters in bill.masters:
        counts[masters.ground, masters.recipe] += masters.count
    for (ground, recipe), count in counts.items():
        master = blocks.master(recipe)
        made = Product(labels.creased(ground), count, master.side, master.side)
        yield draft(Chapter.FUSING, Crease(master.cuts), (Pile(ground, count),), (made,))


def _fuse(design: Design, master: Master, masters: MasterCount) -> Draft:
    shape = labels.shape(design.colourway(masters.code).shape, masters.recipe)
    used = (Pile(labels.creased(masters.ground), masters.count), Pile(shape, masters.count))
    made = Product(labels.fused(masters.code), masters.count, master.side, master.side)
    return draft(Chapter.FUSING, FuseToGround(masters.code, masters.recipe), used, (made,))


def _stitch(design: Design, master: Master, masters: MasterCount) -> Draft:
    thread = design.colourway(masters.code).shape
    made = Product(labels.stitched(masters.code), masters.count, master.side, master.side)
    shape = master.shape
    action = StitchEdge(design.making.stitch, shape.edge, _between_cuts(master), thread)
    return draft(Chapter.STITCHING, action, (Pile(labels.fused(masters.code), masters.count),), (made,))


def _between_cuts(master: Master) -> Point:
    """Return the point of the shape's edge midway between the first two cuts, or else as far from both as can be."""
    first, second = master.cuts[:2]
    traced = master.shape.traced
    halving = [
        _through_middle(w) for w in (first.direction - second.direction, first.direction + second.direction)
    ]
    found = [
        p for line in halving for p in sorted(path_crossings(traced, line), key=line.along, reverse=True)
    ]
    marks = [segment.point(k / 16) for segment in traced.segments for k in range(1, 16)]

    def off(point: Point) -> float:
        return round(min(abs(cut.side(point)) for cut in (first, second)), 9)

    return max((*found, *marks), key=off)


def _through_middle(way: Point) -> StraightLine:
    return StraightLine(0j, way / abs(way))


def _unit_steps(design: Design, master: Master, masters: MasterCount) -> Iterator[Draft]:
    """Return cutting a colourway's masters apart, then each kind of unit by itself up to its stack."""
    code, as_cut = masters.code, master.side / 2
    names = [unit.name for unit in masters.units]
    yield draft(
        Chapter.UNITS,
        CutApart(
            code,
            masters.recipe,
            master.cuts,
            tuple((labels.cut_unit(names[part.unit]), part.motion) for part in master.parts),
        ),
        (Pile(labels.stitched(code), masters.count),),
        tuple(Product(labels.cut_unit(unit.name), unit.made, as_cut, as_cut) for unit in masters.units),
    )
    for unit in masters.units:
        yield from _kind_steps(design, master, unit)


def _kind_steps(design: Design, master: Master, unit: UnitCount) -> Iterator[Draft]:
    name, as_cut, trimmed = unit.name, master.side / 2, master.units[0].cut_side
    if not unit.needed:
        over = (Pile(labels.cut_unit(name), unit.surplus),)
        yield draft(Chapter.UNITS, SetAside(SURPLUS), over)
        return
    opened = labels.open_unit(name) if master.trim else labels.unit(name)
    yield draft(
        Chapter.UNITS,
        CutAway(design.making.cut_away),
        (Pile(labels.cut_unit(name), unit.made),),
        (Product(opened, unit.made, as_cut, as_cut),),
    )
    if master.trim:
        made = Product(labels.unit(name), unit.made, trimmed, trimmed)
        yield draft(Chapter.UNITS, Trim(trimmed), (Pile(opened, unit.made),), (made,))
    if unit.surplus:
        over = (Pile(labels.unit(name), unit.surplus),)
        yield draft(Chapter.UNITS, SetAside(SURPLUS), over)
