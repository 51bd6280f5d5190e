"""How short a cutting plan could be at best, and how long the plain hand rule makes it."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from fractions import Fraction

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.shelves import strips_alone
from quarterturn.measure import Length


def hand_rule(kinds: Iterable[Kind], usable: Length) -> Length:
    """Return the length when each kind is cut from strips of its own, lying as it is listed."""
    lengths = (
        strips_alone(kind.count, kind.positions[0], usable) * kind.positions[0].across for kind in kinds
    )
    return sum(lengths, Length(0))


def lower_bound(kinds: Sequence[Kind], usable: Length) -> Length:
    """Return a length that no plan of strips can beat.

    A plan of strips: strips across the whole usable width W, each cut across into pieces that lie side by side,
    each piece whole in one strip, in one of its positions, and no longer across than the strip is high.

    Proof. Let u be a function on [0, 1] such that Σ u(x) ≤ 1 whenever Σ x ≤ 1. So in each strip the sum of
    u(along / W) over its pieces is at most 1. Hence, for any choice of u:

    * Weight each piece with across · u(along / W). Each strip's pieces weigh at most its height, so all pieces
      weigh at most the length of the plan. Where a piece has two positions, its lesser weight counts. With
      u(x) = x this is area / W; with u_1 below, pieces wider than W/2 take a strip each.
    * Strips at least t high hold all pieces whose across is at least t in every position. So there are at
      least N(t) = ⌈Σ u(along / W)⌉ of them, over these pieces, the lesser u counting where there are two
      positions. The length of a plan is the integral over t of the number of its strips at least t high,
      which is thus at least the integral of N.

    Any plan stays a plan, and grows no longer, when each strip is made only as high as its tallest piece. Then its
    length is a sum of pieces' acrosses, and so a multiple of their greatest common divisor, up to which the
    greatest of the bounds is rounded. The functions are u(x) = x and u_k(x) = x where (k + 1)x is whole, else
    ⌊(k + 1)x⌋ / k (Fekete and Schepers, *New classes of fast lower bounds for bin packing problems*, 2001), for
    each k at which so many pieces of some kind fit in a strip.
    """
    if not kinds:
        return Length(0)
    bounds = [
        bound
        for weigh in _weighings(kinds, usable)
        for bound in (_weight(kinds, weigh), _layers(kinds, weigh))
    ]
    return _up_to_grid(max(bounds), kinds)


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


def _layers(kinds: Sequence[Kind], weigh: Weigh) -> Length:
    """Integrate the least number of strips at least t high over t."""
    heights = sorted({min(p.across for p in kind.positions) for kind in kinds})
    total, below = Length(0), Length(0)
    for height in heights:
        tall = (kind for kind in kinds if min(p.across for p in kind.positions) >= height)
        strips = math.ceil(sum(kind.count * min(map(weigh, kind.positions)) for kind in tall))
        total += strips * (height - below)
        below = height
    return total


def _up_to_grid(bound: Length, kinds: Iterable[Kind]) -> Length:
    heights = [p.across for kind in kinds for p in kind.positions]
    grain = math.lcm(*(height.denominator for height in heights))
    step = Length(math.gcd(*(int(height * grain) for height in heights)), grain)
    return math.ceil(bound / step) * step
