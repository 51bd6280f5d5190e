"""Pricing: the most that a strip of each height can be worth at given prices of the pieces."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.materials.strips.job import Cut, Job
from quarterturn.materials.strips.patterns import Pattern, pattern_of

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Worths: TypeAlias = NDArray[np.int64]

FINE = 1 << 24
"""Steps of a price to a step of height: prices are whole numbers, so that a bound made of them is exact."""


@dataclass(frozen=True, slots=True)
class Priced:
    """The worthiest pattern up to a height, and its worth in prices."""

    height: int
    worth: int
    pattern: Pattern


def whole_prices(prices: Sequence[float]) -> tuple[int, ...]:
    """Return prices in whole steps, rounded down."""
    return tuple(max(0, int(price * FINE)) for price in prices)


Price: TypeAlias = Callable[[Job, Sequence[int]], list[Priced]]
"""Returns for each height the worthiest strip of some class, low to high, where it is worth more than any lower one."""


def price_strips(job: Job, prices: Sequence[int]) -> list[Priced]:
    """Return for each height the worthiest strip, low to high, where it is worth more than any lower one.

    One bounded knapsack over the width takes the cuts from low to high. A kind that may lie in two ways is bounded in
    each, not in both together: so a worth may be too high, never too low, and a bound from it holds.
    """
    return list(_priced(job, prices))


@dataclass(frozen=True, slots=True)
class Lot:
    """So many of a cut taken or left together."""

    cut: Cut
    count: int


def lots_of(job: Job, cut: Cut, fitting: int) -> Iterator[Lot]:
    """Split as many of a cut as fit and are wanted into lots of which any number can be made up."""
    left, size = min(fitting, job.demand[cut.kind]), 1
    while left:
        count = min(size, left)
        yield Lot(cut, count)
        left, size = left - count, 2 * size


def _priced(job: Job, prices: Sequence[int]) -> Iterator[Priced]:
    import numpy as np

    worth = np.zeros(job.width + 1, dtype=np.int64)
    taken: list[tuple[Lot, NDArray[np.bool_]]] = []
    best = 0
    for number, cut in enumerate(job.cuts):
        for lot in lots_of(job, cut, job.width // cut.along) if prices[cut.kind] else ():
            worth, more = _with_lot(worth, lot, prices)
            taken.append((lot, more))
        highest = number + 1 == len(job.cuts) or job.cuts[number + 1].across > cut.across
        if highest and (most := int(worth[job.width])) > best:
            best = most
            yield Priced(cut.across, most, _filling(job, taken))


def _with_lot(worth: Worths, lot: Lot, prices: Sequence[int]) -> tuple[Worths, NDArray[np.bool_]]:
    import numpy as np

    room, gain = lot.count * lot.cut.along, lot.count * prices[lot.cut.kind]
    after = worth.copy()
    np.maximum(worth[room:], worth[: len(worth) - room] + gain, out=after[room:])
    return after, after > worth


def _filling(job: Job, taken: Sequence[tuple[Lot, NDArray[np.bool_]]]) -> Pattern:
    room, held = job.width, dict.fromkeys(job.cuts, 0)
    for lot, more in reversed(taken):
        if more[room]:
            held[lot.cut] += lot.count
            room -= lot.count * lot.cut.along
    return pattern_of(held.items())


def bound_of(job: Job, prices: Sequence[int], priced: Sequence[Priced]) -> Fraction:
    """Return a length, in steps, below which no plan can stay, by the easy half of linear duality.

    At these prices all pieces are worth `demand · prices`; a strip is worth at most `worth`. So that no strip is worth
    more than its height, prices are divided by the largest ratio of the two, if that is more than one.
    """
    total = sum(count * price for count, price in zip(job.demand, prices, strict=True))
    dearest = max((Fraction(p.worth, p.height * FINE) for p in priced), default=Fraction(1))
    return Fraction(total, FINE) / max(dearest, Fraction(1))
