"""Checks of the shopping list: it says what the plans say, and its sums are right (groups D and E)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Severity, dotted
from quarterturn.measure import MM, YARD, Length, Units, show_cloth
from quarterturn.proof.checks.fault import REBUILD, Fault, check
from quarterturn.proof.model import Pattern


def lengths_agree(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the list buys what the plans of cloth and web say."""
    units = pattern.design.units
    planned = {plan.fabric: plan.bought for plan in pattern.materials.cloth} | {
        "web": pattern.materials.web.bought
    }
    yield from _counts(pattern)
    for line in pattern.materials.shopping:
        want = planned.get(line.key)
        if want is not None and line.count is None and line.length != want:
            listed = show_cloth(line.length, units) if line.length else "nothing"
            sentence = f"The plan buys {show_cloth(want, units)} of {line.key}, the shopping list {listed}."
            yield Fault("" if line.key == "web" else dotted("fabrics", line.key), sentence, REBUILD)


def _counts(pattern: Pattern) -> Iterator[Fault]:
    """Hold the pieces that the list counts against all that the layouts cut into and that is not on hand."""
    for line in pattern.materials.shopping:
        if line.count is None:
            continue
        parcels = pattern.materials.plan(line.key).parcels
        layouts = parcels.layouts if parcels else ()
        want = sum(layout.count for layout in layouts if "on hand" not in layout.stock)
        if want != line.count:
            sentence = (
                f"The layouts of fabric {line.key} cut into {want} bought pieces, the list has {line.count}."
            )
            yield Fault(dotted("fabrics", line.key), sentence, REBUILD)


def prices_agree(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate what each fabric costs: its length or its pieces, times the price of each of them."""
    each = 1000 * MM if pattern.design.units is Units.METRIC else YARD
    fabrics = {fabric.letter: fabric for fabric in pattern.design.fabrics}
    for line in pattern.materials.shopping:
        fabric = fabrics.get(line.key)
        if fabric is None:
            continue
        amount = line.count if line.count is not None else (line.length or Length(0)) / each
        want = None if fabric.price is None else fabric.price * amount
        if line.price != want:
            told = [f"{float(cost):.2f}" if cost is not None else "nothing" for cost in (want, line.price)]
            sentence = f"Fabric {line.key} costs {told[0]}, and the shopping list says {told[1]}."
            yield Fault(dotted("fabrics", line.key, "price"), sentence, REBUILD)


SHOPPING = (
    check("shopping-differs", Severity.STOPS, (43, 57), "The list buys what the plans need.", lengths_agree),
    check("price-wrong", Severity.COSTS, (56,), "Prices are length times price.", prices_agree),
)
