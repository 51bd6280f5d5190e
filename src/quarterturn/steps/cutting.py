"""The cutting steps: each fabric's plan, read off in order."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from quarterturn.materials import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    Materials,
    PanelGroup,
    ParcelLayout,
    Split,
    StripGroup,
)
from quarterturn.measure import Length
from quarterturn.pieces import Bill
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import (
    Chapter,
    CutPanels,
    CutParcels,
    CutRest,
    CutSegments,
    CutStrips,
    JoinEnds,
    SetAside,
    SquareParcels,
    Straighten,
    Subcut,
)
from quarterturn.steps.things import Pile, Product


def cutting_steps(bill: Bill, materials: Materials, layers: int) -> Iterator[Draft]:
    """Return the cutting of every fabric, up to so many layers at once, then what the plans give beyond the bill.

    Of a fabric that is there in pieces these come first.
    """
    for plan in materials.cloth:
        yield from _fabric_steps(plan, layers)
    yield from _spare_pieces(bill, materials)


def _fabric_steps(plan: ClothPlan, layers: int) -> Iterator[Draft]:
    for layout in plan.parcels.layouts if plan.parcels else ():
        yield from _parcel_steps(plan, layout, layers)
    if plan.is_off_the_bolt:
        yield from _bolt_steps(plan, layers)
    for run in plan.runs:
        yield from _run_steps(run)


def _parcel_steps(plan: ClothPlan, layout: ParcelLayout, layers: int) -> Iterator[Draft]:
    """Square up pieces of cloth that are cut alike, cut them into strips, and the strips across into pieces."""
    assert plan.parcels, "a layout is of pieces of cloth"
    stock = plan.parcels.stock(layout.stock)
    squared = Product(layout.label, layout.count, stock.usable_width, stock.usable_height)
    loss = (stock.width - stock.usable_width, stock.height - stock.usable_height)
    yield draft(Chapter.CUTTING, SquareParcels(plan.fabric, stock.label, loss), makes=(squared,))
    groups = [replace(group, strips=group.strips * layout.count) for group in layout.strips]
    made = tuple(Product(group.label, group.strips, layout.length, group.height) for group in groups)
    used = (Pile(layout.label, layout.count),)
    yield draft(Chapter.CUTTING, CutParcels(plan.fabric, layout.upright), used, made)
    for group in groups:
        yield from _cut_up(plan.fabric, group, layout.length, layers)


def _bolt_steps(plan: ClothPlan, layers: int) -> Iterator[Draft]:
    yield draft(Chapter.CUTTING, Straighten(plan.fabric, plan.squaring))
    for panels in plan.panels:
        yield _panels(plan, panels)
    for group in plan.strips:
        made = Product(group.label, group.strips, plan.usable_width, group.height)
        yield draft(Chapter.CUTTING, CutStrips(plan.fabric, group.height), makes=(made,))
        yield from _cut_up(plan.fabric, group, plan.usable_width, layers)


def _panels(plan: ClothPlan, panels: PanelGroup) -> Draft:
    made = Product(labels.panel(plan.fabric), panels.panels, plan.usable_width, panels.cut_length)
    return draft(Chapter.CUTTING, CutPanels(plan.fabric, panels.cut_length), makes=(made,))


def _cut_up(fabric: str, group: StripGroup, width: Length, layers: int) -> Iterator[Draft]:
    """Cut strips of a width across, then their segments, then strips from their rest, and those in their turn."""
    segments = [Crosscut(each.label, each.along, group.height, each.count) for each in group.splits]
    left = Crosscut(labels.rest(group.label), width - group.used, group.height, 1)
    crosscuts = (*group.crosscuts, *segments, *([left] if group.rest else []))
    if not crosscuts:
        return
    made = tuple(_product(cut, group.strips) for cut in crosscuts)
    at_once = layers if group.strips > 1 else 1
    yield draft(Chapter.CUTTING, Subcut(crosscuts, at_once), (Pile(group.label, group.strips),), made)
    for split in group.splits:
        yield _cut_segments(split, group, layers)
    if group.rest:
        strips = tuple(Product(each.label, each.strips, left.along, each.height) for each in group.rest)
        yield draft(Chapter.CUTTING, CutRest(fabric), (Pile(left.piece, group.strips),), strips)
        for each in group.rest:
            yield from _cut_up(fabric, each, left.along, layers)


def _cut_segments(split: Split, group: StripGroup, layers: int) -> Draft:
    count = split.count * group.strips
    made = tuple(_product(cut, count) for cut in split.crosscuts)
    at_once = layers if count > 1 else 1
    action = CutSegments(split.along, group.height, split.crosscuts, at_once)
    return draft(Chapter.CUTTING, action, (Pile(split.label, count),), made)


def _run_steps(run: JoinedRun) -> Iterator[Draft]:
    joined = Product(run.label, 1, run.length, run.height)
    strips = (Pile(run.strip, run.strips), *(Pile(end.label, end.strips) for end in run.ends))
    yield draft(Chapter.CUTTING, JoinEnds(run.method, run.loss), strips, (joined,))
    if run.crosscuts:
        made = tuple(_product(c, 1) for c in run.crosscuts)
        yield draft(Chapter.CUTTING, Subcut(run.crosscuts), (Pile(run.label, 1),), made)


def _product(crosscut: Crosscut, strips: int) -> Product:
    return Product(crosscut.piece, crosscut.count * strips, crosscut.along, crosscut.across)


def _spare_pieces(bill: Bill, materials: Materials) -> Iterator[Draft]:
    made: Counter[str] = Counter()
    for plan in materials.cloth:
        for group, _ in plan.groups:
            for crosscut in group.pieces:
                made[crosscut.piece] += crosscut.count * group.strips
        for crosscut, strips in plan.parcels.crosscuts if plan.parcels else ():
            made[crosscut.piece] += crosscut.count * strips
        for run in plan.runs:
            made.update({c.piece: c.count for c in run.crosscuts})
    for piece in bill.pieces:
        if made[piece.label] > piece.count:
            over = Pile(piece.label, made[piece.label] - piece.count)
            yield draft(Chapter.CUTTING, SetAside("spare pieces from full strips"), (over,))
