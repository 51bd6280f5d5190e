"""The shopping list: what to buy, in which length, and what it costs where the design states a price."""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction

from quarterturn.design import Design, counted
from quarterturn.materials.model import ClothPlan, ShoppingLine, StitchSum, WebPlan
from quarterturn.measure import MM, YARD, Length, Units, show_cloth

METRE: Length = 1000 * MM


def show_money(value: Fraction) -> str:
    """Print an exact amount to the cent, half a cent up: 23.625 is 23.63."""
    cents = math.floor(value * 100 + Fraction(1, 2))
    return f"{cents // 100}.{cents % 100:02d}"


def price_unit(units: Units) -> Length:
    """Return the length that a price is for: a yard, or a metre."""
    return METRE if units is Units.METRIC else YARD


def cost_of(length: Length, price: Fraction | None, units: Units) -> Fraction | None:
    """Return what a length costs at a price for a yard or a metre, not rounded."""
    return None if price is None else price * length / price_unit(units)


def shopping_list(
    design: Design,
    cloth: tuple[ClothPlan, ...],
    web: WebPlan,
    batting: tuple[Length, Length],
    stitching: tuple[StitchSum, ...],
) -> tuple[ShoppingLine, ...]:
    """Return a line for each fabric, the web, the batting, and each colour of thread."""
    return (
        *(_cloth_line(design, plan) for plan in cloth),
        ShoppingLine("web", web.bought, web.web_width, None, sheets=web.sheets),
        ShoppingLine("batting", max(batting), min(batting), None),
        *_thread_lines(design.units, stitching),
    )


def show_bought(plan: ClothPlan, units: Units) -> str:
    """Print what is bought of a fabric: `1¼ yards`, `6 fat quarters`, or nothing."""
    if (parcel := _pieces_to_buy(plan)) and plan.parcels:
        return counted(plan.parcels.bought, parcel) if plan.parcels.bought else "nothing"
    return show_cloth(plan.bought, units) if plan.bought or not plan.parcels else "nothing"


def _pieces_to_buy(plan: ClothPlan) -> str:
    """Return what the pieces are called in which a fabric is bought; nothing where it comes off the bolt."""
    parcel = plan.parcels.to_buy if plan.parcels else None
    return parcel.name if parcel else ""


def _cloth_line(design: Design, plan: ClothPlan) -> ShoppingLine:
    price = design.fabric(plan.fabric).price
    if (piece := _pieces_to_buy(plan)) and plan.parcels:
        count = plan.parcels.bought
        cost = None if price is None else price * count
        return ShoppingLine(plan.fabric, None, None, cost, count=count, piece=piece)
    return ShoppingLine(
        plan.fabric, plan.bought, plan.usable_width, cost_of(plan.bought, price, design.units)
    )


def _thread_lines(units: Units, stitching: tuple[StitchSum, ...]) -> Iterator[ShoppingLine]:
    """Return the thread of each colour up to a whole yard or metre: it is an estimate."""
    step = price_unit(units)
    for line in stitching:
        yield ShoppingLine("thread", math.ceil(line.thread / float(step)) * step, None, None, line.fabric)
