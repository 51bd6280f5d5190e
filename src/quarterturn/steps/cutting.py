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
    StripGroup,
)
from quarterturn.pieces import Bill
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import (
    Chapter,
    CutPanels,
    CutParcels,
    CutRest,
    CutStrips,
    JoinEnds,
    SetAside,
    SquareParcels,
    Straighten,
    Subcut,
)
from quarterturn.steps.things import Pile, Product


def cutting_steps(bill: Bill, materials: Materials) -> Iterator[Draft]:
    """Return the cutting of every fabric, what is there in pieces first, then what the plans give beyond the bill."""
    for plan in materials.cloth:
        yield from _fabric_steps(plan)
    yield from _spare_pieces(bill, materials)


def _fabric_steps(plan: ClothPlan) -> Iterator[Draft]:
    for layout in plan.parcels.layouts if plan.parcels else ():
        yield from _parcel_steps(plan, layout)
    if plan.is_off_the_bolt:
        yield from _bolt_steps(plan)
    for run in plan.runs:
        yield from _run_steps(run)


def _parcel_steps(plan: ClothPlan, layout: ParcelLayout) -> Iterator[Draft]:
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
    yield from (_subcut(group) for group in groups if group.crosscuts)


def _bolt_steps(plan: ClothPlan) -> Iterator[Draft]:
    yield draft(Chapter.CUTTING, Straighten(plan.fabric, plan.squaring))
    for panels in plan.panels:
        yield _panels(plan, panels)
    for group in plan.strips:
        made = Product(group.label, group.strips, plan.usable_width, group.height)
        yield draft(Chapter.CUTTING, CutStrips(plan.fabric, group.height), makes=(made,))
        if group.rest:
            yield from _band(plan, group)
        elif group.crosscuts:
            yield _subcut(group)


def _panels(plan: ClothPlan, panels: PanelGroup) -> Draft:
    made = Product(labels.panel(plan.fabric), panels.panels, plan.usable_width, panels.cut_length)
    return draft(Chapter.CUTTING, CutPanels(plan.fabric, panels.cut_length), makes=(made,))


def _subcut(group: StripGroup) -> Draft:
    made = tuple(_product(c, group.strips) for c in group.crosscuts)
    used = (Pile(group.label, group.strips),)
    return draft(Chapter.CUTTING, Subcut(group.crosscuts), used, made)


def _band(plan: ClothPlan, band: StripGroup) -> Iterator[Draft]:
    """Cut the long pieces off a band, then strips from its rest, then those into pieces."""
    rest = Crosscut(labels.rest(band.label), plan.usable_width - band.used, band.height, 1)
    yield _subcut(replace(band, crosscuts=(*band.crosscuts, rest)))
    made = tuple(Product(group.label, group.strips, rest.along, group.height) for group in band.rest)
    yield draft(Chapter.CUTTING, CutRest(plan.fabric), (Pile(rest.piece, 1),), made)
    yield from map(_subcut, band.rest)


def _run_steps(run: JoinedRun) -> Iterator[Draft]:
    joined = Product(run.label, 1, run.length, run.height)
    strips = (Pile(run.strip, run.strips),)
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
            for crosscut in group.crosscuts:
                made[crosscut.piece] += crosscut.count * group.strips
        for crosscut, strips in plan.parcels.crosscuts if plan.parcels else ():
            made[crosscut.piece] += crosscut.count * strips
        for run in plan.runs:
            made.update({c.piece: c.count for c in run.crosscuts})
    for piece in bill.pieces:
        if made[piece.label] > piece.count:
            over = Pile(piece.label, made[piece.label] - piece.count)
            yield draft(Chapter.CUTTING, SetAside("spare pieces from full strips"), (over,))
