"""Column generation: add the worthiest patterns until no strip is worth more than it is high."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.master import Master
from quarterturn.materials.strips.patterns import Pattern, single_patterns
from quarterturn.materials.strips.pricing import FINE, Price, bound_of, price_strips, whole_prices

WORTH_MORE = FINE >> 10
"""A pattern must be worth so much more than its height to be added: less is the noise of the solver."""


@dataclass(frozen=True, slots=True)
class Relaxed:
    """The master in parts of strips: the patterns found, how often each is cut, whole prices, and a valid bound."""

    patterns: tuple[Pattern, ...]
    shares: tuple[float, ...]
    prices: tuple[int, ...]
    bound: Fraction


def relax(job: Job, patterns: Iterable[Pattern], rounds: int, price: Price = price_strips) -> Relaxed:
    """Generate patterns for so many rounds at most, starting from some that are known."""
    master = Master(job, [*single_patterns(job), *patterns])
    best: tuple[Fraction, tuple[int, ...]] = Fraction(-1), ()
    for _ in range(max(1, rounds)):
        shares, duals, _ = master.solve()
        prices = whole_prices(duals)
        priced = price(job, prices)
        best = max(best, (bound_of(job, prices, priced), prices))
        found = [p.pattern for p in priced if p.worth > p.height * FINE + WORTH_MORE]
        if not [pattern for pattern in found if master.add(pattern)]:
            break
    bound, prices = best
    shares += [0.0] * (len(master.patterns) - len(shares))
    return Relaxed(tuple(master.patterns), tuple(shares), prices, bound)
