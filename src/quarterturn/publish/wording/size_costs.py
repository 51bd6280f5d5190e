"""What the fabrics of each size cost: for the designer alone, since her prices are no matter of the pattern."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from quarterturn.materials import show_money
from quarterturn.proof import Pattern
from quarterturn.publish.wording.sizes import NONE, SizePart, SizeRow


def cost_part(patterns: Sequence[Pattern]) -> SizePart:
    """Return the cost of each size, where a price is stated; the cells stand in the order of the patterns."""
    whole = all(fabric.price is not None for pattern in patterns for fabric in pattern.design.fabrics)
    what = "Cost of the fabrics" if whole else "Cost of the fabrics with a price"
    cells = tuple(_cost(pattern) for pattern in patterns)
    return SizePart("For yourself", (SizeRow(what, cells),) if set(cells) != {NONE} else ())


def _cost(pattern: Pattern) -> str:
    prices = [line.price for line in pattern.materials.shopping if line.price is not None]
    return (
        f"{show_money(sum(prices, Fraction(0)))} {pattern.design.house.currency}".strip() if prices else NONE
    )
