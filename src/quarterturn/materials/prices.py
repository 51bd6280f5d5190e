"""Prices for pieces, such that no strip holds more worth of pieces than it is high.

Whatever such prices are, all pieces together are worth no more than the length of any plan: this is the duality of
linear programming, of which only the easy half is needed here. So prices may be found in any way; only that no
strip is worth more than its height must be exact, and is settled by trying all that a strip can hold.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.kinds import Kind
from quarterturn.measure import Length

FINE = 10**6
"""Steps of a price to a step of length."""

ROUNDS = 12
"""How often a price is lowered before all are lowered alike."""

MOST_SUMS = 1000
"""Ways to fill a strip that are looked at; where there are more, no price is set."""


@dataclass(frozen=True, slots=True)
class _Slot:
    """A position of a kind in whole steps."""

    kind: int
    along: int
    across: int


@dataclass(frozen=True, slots=True)
class _Strips:
    """All that can lie in strips: the slots, low to high, and every length that pieces can take of a strip."""

    slots: tuple[_Slot, ...]
    sums: tuple[int, ...]


def price_bound(kinds: Sequence[Kind], usable: Length) -> Length:
    """Return the worth of all pieces at good prices; 0 where a strip can be filled in too many ways.

    A price starts as what a piece costs when its kind is cut alone. While some strip is worth more than its
    height, the lowest pieces in it are made cheaper; at last all prices are, by the same factor.
    """
    grain = math.lcm(usable.denominator, *(_denominator(kind) for kind in kinds))
    strips = _strips(kinds, usable, grain)
    if strips is None:
        return Length(0)
    prices = [_alone(kind, usable, grain) for kind in kinds]
    dear = _first_dear(strips, prices)
    for _ in range(ROUNDS):
        if dear is None:
            break
        prices = _lowered(prices, dear, strips)
        dear = _first_dear(strips, prices)
    worth = sum(kind.count * price for kind, price in zip(kinds, prices, strict=True))
    return Fraction(worth, FINE * grain) * (_least_factor(strips, prices) if dear else 1)


def _denominator(kind: Kind) -> int:
    return math.lcm(*(side.denominator for p in kind.positions for side in (p.along, p.across)))


def _strips(kinds: Sequence[Kind], usable: Length, grain: int) -> _Strips | None:
    slots = sorted(
        (
            _Slot(number, int(p.along * grain), int(p.across * grain))
            for number, kind in enumerate(kinds)
            for p in kind.positions
        ),
        key=lambda slot: (slot.across, slot.along),
    )
    sums = _sums({slot.along for slot in slots}, int(usable * grain))
    return None if sums is None else _Strips(tuple(slots), sums)


def _sums(lengths: set[int], usable: int) -> tuple[int, ...] | None:
    """Return all sums of lengths up to the usable width, or None where there are too many."""
    found, new = {0}, {0}
    while new:
        new = {a + b for a in new for b in lengths if a + b <= usable} - found
        found |= new
        if len(found) > MOST_SUMS:
            return None
    return tuple(sorted(found))


def _alone(kind: Kind, usable: Length, grain: int) -> int:
    return min(int(p.across * grain * FINE / (usable // p.along)) for p in kind.positions)


@dataclass(frozen=True, slots=True)
class _Dear:
    """A strip worth more than its height: by how much, and the kinds in it with their counts."""

    excess: int
    held: Counter[int]


def _first_dear(strips: _Strips, prices: Sequence[int]) -> _Dear | None:
    """Return the dearest filling of the lowest strip that can be worth more than its height."""
    best = dict.fromkeys(strips.sums, 0)
    last: dict[int, _Slot] = {}
    for slot in strips.slots:
        _add(best, last, slot, prices[slot.kind], strips.sums)
        most = max(best, key=lambda total: best[total])
        if (excess := best[most] - slot.across * FINE) > 0:
            return _Dear(excess, _filling(most, best, last, prices))
    return None


def _add(best: dict[int, int], last: dict[int, _Slot], slot: _Slot, price: int, sums: Sequence[int]) -> None:
    """Let one more slot, any number of times, into the most that each length of strip can be worth."""
    for total in sums:
        before = best.get(total - slot.along)
        if before is not None and before + price > best[total]:
            best[total], last[total] = before + price, slot


def _filling(total: int, best: dict[int, int], last: dict[int, _Slot], prices: Sequence[int]) -> Counter[int]:
    held: Counter[int] = Counter()
    while best[total]:
        slot = last[total]
        held[slot.kind] += 1
        total -= slot.along
    return held


def _lowered(prices: list[int], dear: _Dear, strips: _Strips) -> list[int]:
    """Make the lowest kind in a strip cheaper, so that the strip is worth its height if that can be."""
    lowest = next(slot.kind for slot in strips.slots if dear.held[slot.kind])
    cheaper = prices[lowest] + (-dear.excess // dear.held[lowest])
    return [max(0, cheaper) if number == lowest else price for number, price in enumerate(prices)]


def _least_factor(strips: _Strips, prices: Sequence[int]) -> Fraction:
    """Return the least ratio of a strip's height to what it can be worth, or 1 where none is worth more."""
    best = dict.fromkeys(strips.sums, 0)
    factor = Fraction(1)
    for slot in strips.slots:
        _add(best, {}, slot, prices[slot.kind], strips.sums)
        if (most := max(best.values())) > slot.across * FINE:
            factor = min(factor, Fraction(slot.across * FINE, most))
    return factor
