"""Patterns: what one strip is cut into."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from quarterturn.materials.strips.job import Cut, Job


@dataclass(frozen=True, slots=True)
class Pattern:
    """A strip of a height and the cuts in it, each with its number, the highest first."""

    height: int
    cuts: tuple[tuple[Cut, int], ...]

    @property
    def used(self) -> int:
        """Return how much of the strip's length is cut up."""
        return sum(cut.along * count for cut, count in self.cuts)

    def yields(self, kinds: int) -> tuple[int, ...]:
        """Return how many pieces of each kind one strip gives."""
        found = [0] * kinds
        for cut, count in self.cuts:
            found[cut.kind] += count
        return tuple(found)


def pattern_of(cuts: Iterable[tuple[Cut, int]]) -> Pattern:
    """Return the pattern of some cuts: just as high as the highest of them."""
    held = sorted(
        ((c, n) for c, n in cuts if n), key=lambda one: (-one[0].across, -one[0].along, one[0].kind)
    )
    return Pattern(held[0][0].across, tuple(held))


def single_patterns(job: Job) -> list[Pattern]:
    """Return for each cut the strip that holds as many of it as fit and are wanted."""
    most = ((cut, min(job.width // cut.along, job.demand[cut.kind])) for cut in job.cuts)
    return [pattern_of([(cut, count)]) for cut, count in most]


def without_excess(plan: Sequence[tuple[Pattern, int]], demand: Sequence[int]) -> list[tuple[Pattern, int]]:
    """Return a plan that gives each piece exactly as often as it is wanted: what is too much stays uncut.

    Pieces are left out from the end of the plan, so that full strips come first; a strip that is left with nothing is
    not cut at all, and one that is left lower than it was becomes so.
    """
    left, exact = list(demand), []
    for pattern, strips in plan:
        for _ in range(strips):
            held = []
            for cut, count in pattern.cuts:
                taken = min(count, left[cut.kind])
                left[cut.kind] -= taken
                held.append((cut, taken))
            if any(count for _, count in held):
                exact.append(pattern_of(held))
    return [(pattern, exact.count(pattern)) for pattern in dict.fromkeys(exact)]


def length_of(plan: Iterable[tuple[Pattern, int]]) -> int:
    """Return the length of cloth that a plan takes, in steps across the strips."""
    return sum(pattern.height * strips for pattern, strips in plan)
