"""What the materials of a quilt cost, and the least that one made on commission may be sold for."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design import Design, Money
from quarterturn.materials.model import Materials, ShoppingLine
from quarterturn.materials.shopping import price_unit


@dataclass(frozen=True, slots=True)
class CostLine:
    """Something that is bought, how much of it (yards, metres, sheets, pieces), what one costs and all of it."""

    key: str
    """Fabric letter, or a word: web, batting, thread, or the name of a notion."""
    amount: Fraction
    each: Fraction | None
    """None where the design states no price; then the line is in no sum."""
    matches: str = ""
    """Letter of the fabric that a thread matches."""

    @property
    def cost(self) -> Fraction | None:
        """Return what the line costs, not rounded."""
        return None if self.each is None else self.each * self.amount


@dataclass(frozen=True, slots=True)
class Costs:
    """All that is bought for a quilt."""

    lines: tuple[CostLine, ...]

    @property
    def total(self) -> Fraction:
        """Return the sum of all lines that have a price."""
        return sum((line.cost for line in self.lines if line.cost is not None), Fraction(0))

    @property
    def unpriced(self) -> tuple[CostLine, ...]:
        """Return the lines that no price is stated for."""
        return tuple(line for line in self.lines if line.each is None)


@dataclass(frozen=True, slots=True)
class Floor:
    """The least price of a quilt on commission: (materials + hours · rate) · (1 + share)."""

    materials: Fraction
    hours: Fraction
    rate: Fraction
    share: Fraction

    @property
    def work(self) -> Fraction:
        """Return what the hours are worth."""
        return self.hours * self.rate

    @property
    def added(self) -> Fraction:
        """Return what is added by the share."""
        return (self.materials + self.work) * self.share

    @property
    def price(self) -> Fraction:
        """Return the whole."""
        return self.materials + self.work + self.added


def spools(thread: float, spool: Fraction) -> int:
    """Return how many spools hold so many inches of thread."""
    return math.ceil(thread / float(spool) - 1e-9)


def costs_of(design: Design, materials: Materials) -> Costs:
    """Return the cost of everything on the shopping list, then of the notions; thread by whole spools."""
    notions = (CostLine(n.name, Fraction(n.count), n.price) for n in design.selling.notions)
    return Costs((*(_line(design, line) for line in materials.shopping), *notions))


def _line(design: Design, line: ShoppingLine) -> CostLine:
    money, unit = design.selling.money, price_unit(design.units)
    bought = line.length or Fraction(0)
    match line.key:
        case "batting":
            return CostLine(line.key, Fraction(1), money.batting)
        case "web":
            return CostLine(line.key, Fraction(line.sheets) or bought / unit, money.web)
        case "thread":
            return CostLine(
                line.key, Fraction(spools(float(bought), money.spool)), money.thread, line.matches
            )
    amount = bought / unit if line.count is None else Fraction(line.count)
    return CostLine(line.key, amount, design.fabric(line.key).price)


def price_floor(costs: Costs, hours: float, money: Money) -> Floor | None:
    """Return the least price; None where no rate is stated. Hours are taken to the tenth."""
    if money.rate is None:
        return None
    return Floor(costs.total, Fraction(round(hours * 10), 10), money.rate, money.share)
