"""How short a cutting plan could be at best, and how long the plain hand rule makes it."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.prices import price_bound
from quarterturn.materials.shelves import strips_alone
from quarterturn.measure import Length

MOST_STEPS = 4000
"""Beyond this many steps between N and the weights, the sum is rounded up to a common measure instead."""


def hand_rule(kinds: Iterable[Kind], usable: Length) -> Length:
    """Return the length when each kind is cut from strips of its own, lying as it is listed."""
    lengths = (
        strips_alone(kind.count, kind.positions[0], usable) * kind.positions[0].across for kind in kinds
    )
    return sum(lengths, Length(0))


def lower_bound(kinds: Sequence[Kind], usable: Length) -> Length:
    """Return a length that no plan of strips can beat.

    A plan of strips: strips across the whole usable width W, each cut across into pieces that lie side by side,
    each piece whole in one strip, in one of its positions, and no longer across than the strip is high. A plan
    stays one, and grows no longer, when each strip is made only as high as its tallest piece: so let it be.

    Proof. The tallest strip of a plan is as high as some position is across. Given that height, the plan uses no
    higher position, and is at least that long. So the least over all such heights of what is proved for the
    positions up to it, or of the height itself if that is more, bounds every plan.

    Let u be a function on [0, 1] such that Σ u(x) ≤ 1 whenever Σ x ≤ 1. So in each strip the sum of
    u(along / W) over its pieces is at most 1.

    * Weight each piece with across · u(along / W). Each strip's pieces weigh at most its height, so all pieces
      weigh at most the length of the plan. Where a piece has two positions, its lesser weight counts. With
      u(x) = x this is area / W; with u_1 below, pieces wider than W/2 take a strip each. `prices` finds
      further weights with which no strip weighs more than its height.
    * Strips at least t high hold all pieces whose across is at least t in every position. So there are at
      least N(t) = ⌈Σ u(along / W)⌉ of them, over these pieces, the lesser u counting where there are two
      positions. The length of a plan is the integral over t of the number of its strips at least t high,
      which is thus at least the integral of N.
    * Then strips of a plan, from the tallest on, are at least as high as those of which N is the count. So its
      length is the integral of N, plus steps from a height to a greater one, plus heights of further strips. The
      least such sum that reaches the weights bounds the plan too.

    The functions are u(x) = x and u_k(x) = x where (k + 1)x is whole, else ⌊(k + 1)x⌋ / k (Fekete and Schepers,
    *New classes of fast lower bounds for bin packing problems*, 2001), for each k at which so many pieces of some
    kind fit in a strip.
    """
    tallest = max((min(p.across for p in kind.positions) for kind in kinds), default=Length(0))
    heights = sorted({p.across for kind in kinds for p in kind.positions if p.across >= tallest})
    least: Length | None = None
    for height in heights:
        if least is not None and height >= least:
            break
        bound = max(height, _bound_up_to(height, kinds, usable))
        least = bound if least is None else min(least, bound)
    return least or Length(0)


def _bound_up_to(height: Length, kinds: Sequence[Kind], usable: Length) -> Length:
    """Return the bound for plans without a strip higher than this."""
    low = [
        Kind(kind.label, kind.count, tuple(p for p in kind.positions if p.across <= height)) for kind in kinds
    ]
    weighings = _weighings(low, usable)
    weight = max(price_bound(low, usable), *(_weight(low, weigh) for weigh in weighings))
    steps = _steps(low, weighings)
    base = sum((step.rise * step.strips for step in steps), Length(0))
    heights = {p.across for kind in low for p in kind.positions}
    return base + _least_sum(weight - base, _growths(heights, steps))


Weigh = Callable[[Position], Fraction]


def _weighings(kinds: Iterable[Kind], usable: Length) -> list[Weigh]:
    """Return the functions u, each taking a position."""
    fitting = {int(usable // p.along) for kind in kinds for p in kind.positions}
    return [lambda p: p.along / usable, *(_stepped(k, usable) for k in sorted(fitting | {1}))]


def _stepped(k: int, usable: Length) -> Weigh:
    def weigh(position: Position) -> Fraction:
        share = (k + 1) * position.along / usable
        return position.along / usable if share.denominator == 1 else Fraction(math.floor(share), k)

    return weigh


def _weight(kinds: Iterable[Kind], weigh: Weigh) -> Length:
    return sum((kind.count * min(p.across * weigh(p) for p in kind.positions) for kind in kinds), Length(0))


@dataclass(frozen=True, slots=True)
class _Step:
    """N(t) where t lies up to `rise` below `height`."""

    height: Length
    rise: Length
    strips: int


def _steps(kinds: Sequence[Kind], weighings: Sequence[Weigh]) -> list[_Step]:
    """Return the least number of strips at least t high, low to high."""
    steps: list[_Step] = []
    below = Length(0)
    for height in sorted({min(p.across for p in kind.positions) for kind in kinds}):
        tall = [kind for kind in kinds if min(p.across for p in kind.positions) >= height]
        strips = max(
            math.ceil(sum(kind.count * min(map(weigh, kind.positions)) for kind in tall))
            for weigh in weighings
        )
        steps.append(_Step(height, height - below, strips))
        below = height
    return steps


def _growths(heights: set[Length], steps: Sequence[_Step]) -> set[Length]:
    """Return by how much a plan can be longer than N: a strip more, or a strip higher than N asks."""
    counts = [step.strips for step in steps[1:]] + [0]
    asked = [step.height for step, above in zip(steps, counts, strict=True) if step.strips > above]
    return heights | {height - least for height in heights for least in asked if height > least}


def _least_sum(wanted: Length, growths: set[Length]) -> Length:
    """Return the least sum of growths, each any number of times, that is not below what is wanted."""
    if wanted <= 0:
        return Length(0)
    grain = math.lcm(*(growth.denominator for growth in growths))
    sizes, goal = [int(growth * grain) for growth in growths], math.ceil(wanted * grain)
    step = math.gcd(*sizes)
    if goal // step > MOST_STEPS:
        return Length(-(-goal // step) * step, grain)
    reached = {0}
    for total in range(0, goal, step):
        if total in reached:
            reached |= {total + size for size in sizes}
    return Length(min(total for total in reached if total >= goal), grain)
