"""The job in whole steps: lengths as integers, so that knapsacks can count and sums are exact."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.kinds import Kind
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Cut:
    """A position of a kind, in steps: `along` the strip, `across` it.

    A segment that is split holds a `stack` of cuts, each with its number, one below the other; it is of no kind.
    """

    kind: int
    along: int
    across: int
    stack: tuple[tuple[Cut, int], ...] = ()

    @property
    def gives(self) -> tuple[tuple[int, int], ...]:
        """Return the kinds of piece that it gives, each with a number."""
        return tuple((cut.kind, count) for cut, count in self.stack) if self.stack else ((self.kind, 1),)


@dataclass(frozen=True, slots=True)
class Job:
    """Pieces to cut from strips `width` steps long. `cuts` stand low to high; every kind has one at least.

    A step along the strip is `along_step` of an inch, a step across it `across_step`.
    """

    width: int
    demand: tuple[int, ...]
    cuts: tuple[Cut, ...]
    along_step: Fraction
    across_step: Fraction

    @property
    def heights(self) -> tuple[int, ...]:
        """Return the heights that strips can have, low to high."""
        return tuple(sorted({cut.across for cut in self.cuts}))

    @property
    def tallest(self) -> int:
        """Return the height that some strip must have: that of the kind which is tallest however it is laid."""
        lowest = [min(c.across for c in self.cuts if c.kind == kind) for kind in range(len(self.demand))]
        return max(lowest, default=0)

    def reduced(self, demand: Sequence[int]) -> Job:
        """Return the job with another demand; kinds of which none is wanted have no cuts."""
        cuts = tuple(cut for cut in self.cuts if demand[cut.kind] > 0)
        return Job(self.width, tuple(demand), cuts, self.along_step, self.across_step)


def job_of(kinds: Sequence[Kind], usable: Length) -> Job:
    """Return a job in the largest steps that measure all its lengths. Every kind must have a position."""
    positions = [(number, position) for number, kind in enumerate(kinds) for position in kind.positions]
    along_step = _measure(position.along for _, position in positions)
    across_step = _measure(position.across for _, position in positions)
    cuts = [Cut(n, int(p.along / along_step), int(p.across / across_step)) for n, p in positions]
    return Job(
        width=int(usable // along_step),
        demand=tuple(kind.count for kind in kinds),
        cuts=tuple(sorted(cuts, key=lambda cut: (cut.across, cut.along, cut.kind))),
        along_step=along_step,
        across_step=across_step,
    )


def _measure(lengths: Iterable[Length]) -> Fraction:
    """Return the greatest length that goes into all of these a whole number of times."""
    found = Fraction(0)
    for length in lengths:
        common = math.lcm(found.denominator, length.denominator)
        found = Fraction(math.gcd(int(found * common), int(length * common)), common)
    return found or Fraction(1)
