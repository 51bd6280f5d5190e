"""The sentences of cloth in pieces: what to buy, how to square pieces up and cut them, how good a plan is."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Fabric, Parcel, Precut, counted, several, stated_sides
from quarterturn.materials import ClothPlan, ParcelLayout, ParcelPlan, ParcelStock, show_bought
from quarterturn.measure import Units
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, named, plural, rectangle
from quarterturn.steps import CutParcels, Product, SquareParcels, Step

PARCELS_EXPLAINED = (
    "A letter with p is a piece of cloth; it is drawn as it lies to be cut, and cut from the top down."
)
PARCELS_COMPARED = (
    "How few pieces of cloth do holds for all plans that cut each piece into strips one way, and the strips across, "
    "with the same strips joined."
)
"""What is said of plans of cloth in pieces rests on it."""


def parcels_of(pattern: Pattern) -> Iterator[Parcel]:
    """Return every piece of cloth that a design states, in the order of its fabrics."""
    for fabric in pattern.design.fabrics:
        yield from fabric.on_hand
        if fabric.bought_as:
            yield fabric.bought_as


def parcel_advice(pattern: Pattern) -> tuple[str, ...]:
    """Return what a pattern takes for granted of cloth in pieces; nothing where it has none."""
    found = tuple(parcels_of(pattern))
    advice = []
    if losses := sorted({each.squaring for each in found if each.squaring}):
        off = listed([length(pattern.design, loss) for loss in losses])
        advice.append(
            f"Pieces of cloth are seldom cut true: up to {off} of the width and of the height of each is allowed for "
            "squaring it up."
        )
    if any(each.pinked for each in found):
        advice.append(
            "Precut squares and strips have pinked edges and differ a little: measure each from point to point before "
            "you cut, and keep one way of measuring."
        )
    return tuple(advice)


def parcel_note(pattern: Pattern, fabric: Fabric, plan: ClothPlan) -> str:
    """Return the note of a fabric that is there in pieces: their sizes, and what of the shelf is used."""
    parcels = plan.parcels
    assert parcels, "the fabric is there in pieces"
    said = []
    if (stock := parcels.to_buy) and stock.used:
        said.append(_sizes(pattern, fabric, stock))
    said += [_taken(stock) for stock in parcels.stocks if stock.on_hand and stock.used]
    return "; ".join(said)


def _sizes(pattern: Pattern, fabric: Fabric, stock: ParcelStock) -> str:
    """Return the size by which a piece is sold, if it has one, and what of it is counted on, short side first."""
    design = pattern.design
    true = rectangle(design, *sorted((stock.width, stock.height)))
    precut = fabric.bought_as.precut if fabric.bought_as else None
    stated = stated_sides(precut, design.units) if precut else None
    sold = (
        f"sold as {rectangle(design, stated[1], stated[0])}{_elsewhere(pattern, precut)}; " if stated else ""
    )
    squared = rectangle(design, *sorted((stock.usable_width, stock.usable_height)))
    if (stock.usable_width, stock.usable_height) == (stock.width, stock.height):
        return f"{sold}{true} each"
    return f"{sold}{true} each without selvage, {squared} squared up"


def _elsewhere(pattern: Pattern, precut: Precut | None) -> str:
    """Return in metric patterns by which size shops call a precut that sell cloth by the yard (trade check 40)."""
    stated = stated_sides(precut, Units.INCH) if precut else None
    if stated is None or pattern.design.units is Units.INCH:
        return ""
    return f" by the metre, {rectangle(pattern.design, stated[1], stated[0])} by the yard"


def _taken(stock: ParcelStock) -> str:
    """Tell how many of the pieces on hand are used."""
    there = stock.there or 0
    share = "" if stock.used == there else f"{stock.used} of "
    return f"{share}{counted(there, stock.name)} on hand {'is' if there == 1 else 'are'} used"


def parcels_used(plan: ClothPlan | None) -> str:
    """Return the pieces of cloth that are cut into, those on hand first; nothing where there are none."""
    used = [stock for stock in (plan.parcels.stocks if plan and plan.parcels else ()) if stock.used]
    return "; ".join(
        f"({stock.used}) {plural(stock.used, stock.name, several(stock.name))}" for stock in used
    )


def parcels_line(pattern: Pattern, plan: ClothPlan) -> str:
    """Return how good the plan of cloth in pieces is."""
    parcels = plan.parcels
    assert parcels, "the fabric is there in pieces"
    if not parcels.to_buy:
        return parcels_taken(plan)
    bought = show_bought(plan, pattern.design.units)
    told = (
        f"{bought[:1].upper()}{bought[1:]}; {parcels_bound(parcels)}." if parcels.bought else NOTHING_BOUGHT
    )
    return " ".join(filter(None, (told, parcels_taken(plan))))


NOTHING_BOUGHT = "Nothing has to be bought."


def parcels_taken(plan: ClothPlan) -> str:
    """Return which pieces of cloth on hand are used."""
    assert plan.parcels, "the fabric is there in pieces"
    used = (_taken(stock) for stock in plan.parcels.stocks if stock.on_hand and stock.used)
    return " ".join(f"{said[:1].upper()}{said[1:]}." for said in used)


def parcels_bound(parcels: ParcelPlan) -> str:
    """Return how near a plan of cloth in pieces is to the fewest."""
    gap = parcels.bought - parcels.bound
    least = f"no plan needs fewer than {parcels.bound}"
    return f"{least}, a gap of {gap}" if gap else least


def layout_line(plan: ClothPlan, layout: ParcelLayout) -> str:
    """Return what stands below a layout: how many pieces of cloth are cut like it."""
    assert plan.parcels, "the fabric is there in pieces"
    name = plan.parcels.stock(layout.stock).name
    turned = "; its strips run along the cloth" if layout.upright else ""
    what = plural(layout.count, name, several(name))
    return f"{layout.label}: cut ({layout.count}) {what} like this{turned}"


def parcel_line(plan: ClothPlan, layout: ParcelLayout, number: int) -> str:
    """Return which of the pieces of cloth that are cut alike this is, where each is shown by itself."""
    assert plan.parcels, "the fabric is there in pieces"
    stock = plan.parcels.stock(layout.stock)
    which = stock.name if layout.count == 1 else f"{stock.name} {number} of {layout.count}"
    whose = " from your shelf" if stock.on_hand else ""
    return f"{layout.label}: {which}{whose}"


def tell_square_parcels(step: Step, action: SquareParcels, pattern: Pattern) -> Wording:
    """Tell the squaring of pieces of cloth."""
    (made,) = step.makes
    parcels = pattern.materials.plan(action.fabric).parcels
    assert parcels, "the step is of a fabric that is there in pieces"
    stock = parcels.stock(action.stock)
    whose = " from your shelf" if stock.on_hand else ""
    taken = f"({made.count}) {plural(made.count, stock.name, several(stock.name))}{whose}"
    size = rectangle(pattern.design, made.width, made.height)
    if not any(action.loss):
        line = f"Press {taken}, {size} – {made.label}"
    else:
        each = "it" if made.count == 1 else "each"
        line = f"Press {taken}, and square {each} up to {size}, the width across the cloth – {made.label}"
    return Wording(named(pattern.design, action.fabric), (), line)


def tell_cut_parcels(step: Step, action: CutParcels, pattern: Pattern) -> Wording:
    """Tell into which strips each piece of cloth is cut."""
    (used,) = step.uses
    strips = listed([_strips(pattern, made, used.count) for made in step.makes])
    way = "along" if action.upright else "across"
    each = f"each {used.label}" if used.count > 1 else used.label
    return Wording(named(pattern.design, action.fabric), (), f"Cut {each} {way} the cloth into {strips}")


def _strips(pattern: Pattern, made: Product, pieces: int) -> str:
    design, count = pattern.design, made.count // pieces
    size = f"{length(design, made.height)} × {length(design, made.width)}"
    return f"({count}) {size} {plural(count, 'strip')} – {made.label}"
