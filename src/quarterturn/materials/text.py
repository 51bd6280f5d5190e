"""The text form of the materials: every plan with how good it is, and what to buy."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from functools import partial

from quarterturn.design import counted
from quarterturn.materials.model import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    JoinMethod,
    Materials,
    PanelGroup,
    ParcelLayout,
    ParcelPlan,
    ParcelStock,
    ShoppingLine,
    Split,
    StripGroup,
)
from quarterturn.materials.shopping import show_bought, show_money
from quarterturn.materials.web_text import web_text
from quarterturn.measure import Length, Units, aligned, show_cloth, show_count, show_plain

_CLOTH_HEAD = ("fabric", "bought", "cut", "slack", "lower bound", "gap", "hand rule", "width")
_STRIP_HEAD = ("strips", "label", "height", "used", "cut into")
_STOCK_HEAD = ("pieces of cloth", "what", "size", "squared up", "used", "there")
_LAYOUT_HEAD = ("pieces", "label", "strips", "each", "label", "height", "used", "cut into")
_SHOPPING_HEAD = ("buy", "length", "width", "price")


def materials_text(materials: Materials, units: Units) -> str:
    """Return all plans; lengths are exact to 1/10000" or 1/100 mm, yardage as a shop cuts it."""
    sizes = f"{show_plain(materials.batting_width, units)} × {show_plain(materials.batting_height, units)}"
    package = f", from a {materials.batting_package} package" if materials.batting_package else ""
    lines = (
        "cloth",
        *aligned([_CLOTH_HEAD, *(_cloth(plan, units) for plan in materials.cloth)], right=range(1, 8)),
        *(line for plan in materials.cloth for line in _plan(plan, units)),
        *web_text(materials.web, units),
        f"batting {sizes}{package}",
        f"binding {show_plain(materials.binding_run, units)}",
        "thread, an estimate",
        *aligned([("fabric", "edge", "thread"), *_stitching(materials, units)], right=(1, 2)),
        "shopping",
        *aligned([_SHOPPING_HEAD, *(_shopping(line, units) for line in materials.shopping)], right=(1, 2, 3)),
    )
    return "\n".join((*lines, ""))


def gap_percent(plan: ClothPlan) -> float:
    """Return by how much a plan's cuts may exceed the best plan's, in percent of the lower bound."""
    return float((plan.cut_length / plan.lower_bound - 1) * 100) if plan.lower_bound else 0.0


def _cloth(plan: ClothPlan, units: Units) -> tuple[str, ...]:
    return (
        plan.fabric,
        show_bought(plan, units),
        show_plain(plan.cut_length, units),
        show_plain(plan.slack, units),
        show_plain(plan.lower_bound, units),
        f"{gap_percent(plan):.1f} %",
        show_plain(plan.hand_rule, units),
        show_plain(plan.usable_width, units),
    )


def _plan(plan: ClothPlan, units: Units) -> Iterator[str]:
    yield f"fabric {plan.fabric}"
    rows = [
        *(_panels(group, plan, units) for group in plan.panels),
        *(_strips(group, units, width, plan) for group, width in plan.groups),
        *(_run(run, units) for run in plan.runs),
    ]
    if rows:
        yield from aligned([_STRIP_HEAD, *rows], right=(0, 2, 3))
    if plan.parcels:
        yield from _parcels(plan.parcels, units)
    for what, bought in _otherwise(plan):
        yield f"  {what}: {show_cloth(bought, units)} would be bought"
    if plan.unplaced:
        yield f"  does not fit: {', '.join(plan.unplaced)}"


def _parcels(parcels: ParcelPlan, units: Units) -> Iterator[str]:
    """Return the pieces of cloth, how good their plan is, and each layout with its strips."""
    stocks = (_stock(stock, units) for stock in parcels.stocks)
    yield from aligned([_STOCK_HEAD, *stocks], right=(2, 3, 4, 5))
    if parcels.to_buy:
        yield f"  no plan buys fewer than {parcels.bound}"
    rows = [row for layout in parcels.layouts for row in _layout(layout, units)]
    if rows:
        yield from aligned([_LAYOUT_HEAD, *rows], right=(0, 3, 5, 6))


def _stock(stock: ParcelStock, units: Units) -> tuple[str, ...]:
    true, usable = (
        f"{show_plain(width, units)} × {show_plain(height, units)}"
        for width, height in ((stock.width, stock.height), (stock.usable_width, stock.usable_height))
    )
    there = "" if stock.there is None else str(stock.there)
    return stock.label, stock.name, true, usable, str(stock.used), there


def _layout(layout: ParcelLayout, units: Units) -> Iterator[tuple[str, ...]]:
    way = "along" if layout.upright else "across"
    first = (str(layout.count), layout.label, f"{way}, {show_plain(layout.length, units)} long")
    for group in layout.strips:
        cuts = _crosscuts(group.crosscuts, units) or "left whole"
        height, used = show_plain(group.height, units), show_plain(group.used, units)
        yield (*first, str(group.strips), group.label, height, used, cuts)
        first = ("", "", "")


def _otherwise(plan: ClothPlan) -> Iterator[tuple[str, Length]]:
    """Return the choices that were made, each with what would be bought otherwise."""
    if plan.other_join is not None:
        straight = any(run.crosscuts and run.method is JoinMethod.STRAIGHT for run in plan.runs)
        yield f"joined {'on the diagonal' if straight else 'straight'}", plan.other_join
    if plan.unpinned is not None:
        yield "with no strips decided on", plan.unpinned


def _panels(group: PanelGroup, plan: ClothPlan, units: Units) -> tuple[str, ...]:
    way = "down" if group.runs_down else "across"
    made = f"sewn side by side, {way} the quilt, {show_plain(group.seam, units)} seam"
    return (
        str(group.panels),
        group.piece,
        show_plain(group.cut_length, units),
        show_plain(plan.usable_width, units),
        made,
    )


def _strips(group: StripGroup, units: Units, width: Length, plan: ClothPlan) -> tuple[str, ...]:
    height, used = show_plain(group.height, units), show_plain(group.used, units)
    segments = (_segments(split, units) for split in group.splits)
    cuts = ", ".join(filter(None, (_crosscuts(group.crosscuts, units), *segments))) or "left whole"
    if width < plan.usable_width:
        cuts = f"from the rest {show_plain(width, units)} wide: {cuts}"
    return str(group.strips), group.label, height, used, cuts


def _segments(split: Split, units: Units) -> str:
    size = f"{show_plain(split.along, units)} × {show_plain(split.across, units)}"
    pieces = _crosscuts(split.crosscuts, units)
    return f"{show_count(split.count, 'segment')} of {size}, split into {pieces}"


def _run(run: JoinedRun, units: Units) -> tuple[str, ...]:
    plain = partial(show_plain, units=units)
    ends = "".join(f" and {end.strips} × {end.label} of {plain(end.length)}" for end in run.ends)
    made = f"{run.strips} × {run.strip}{ends} joined, {run.method.value}, {plain(run.loss)} a join"
    cuts = _crosscuts(run.crosscuts, units)
    return "1", run.label, plain(run.height), plain(run.length), f"{made}: {cuts}" if cuts else made


def _crosscuts(cuts: Iterable[Crosscut], units: Units) -> str:
    return ", ".join(
        f"{cut.count} {cut.piece} {show_plain(cut.along, units)} × {show_plain(cut.across, units)}"
        for cut in cuts
    )


def _stitching(materials: Materials, units: Units) -> Iterator[tuple[str, ...]]:
    for line in materials.stitching:
        yield line.fabric, show_plain(line.edge, units), show_plain(line.thread, units)


def _shopping(line: ShoppingLine, units: Units) -> tuple[str, ...]:
    name = f"{line.key} to match {line.matches}" if line.matches else line.key
    return name, _bought(line, units), _shown(line.width, units), _price(line.price)


def _bought(line: ShoppingLine, units: Units) -> str:
    """Print a length in yards or metres, but for batting, which is bought by its size, and what is counted."""
    if line.sheets:
        return show_count(line.sheets, "sheet")
    if line.count is not None:
        return counted(line.count, line.piece)
    if line.length is None or line.key == "batting":
        return _shown(line.length, units)
    return show_cloth(line.length, units)


def _shown(value: Length | None, units: Units) -> str:
    return "" if value is None else show_plain(value, units)


def _price(price: Fraction | None) -> str:
    return "" if price is None else show_money(price)
