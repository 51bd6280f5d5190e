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
            for kind, many in cut.gives:
                found[kind] += count * many
        return tuple(found)


def pattern_of(cuts: Iterable[tuple[Cut, int]]) -> Pattern:
    """Return the pattern of some cuts: just as high as the highest of them."""
    merged: dict[Cut, int] = {}
    for cut, count in cuts:
        if count:
            merged[cut] = merged.get(cut, 0) + count
    held = sorted(merged.items(), key=lambda one: (-one[0].across, -one[0].along, one[0].kind, one[0].gives))
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
            held: list[tuple[Cut, int]] = []
            for cut, count in pattern.cuts:
                if cut.stack:
                    held += _stacks_left(cut, count, left)
                    continue
                taken = min(count, left[cut.kind])
                left[cut.kind] -= taken
                held.append((cut, taken))
            if any(count for _, count in held):
                exact.append(pattern_of(held))
    return [(pattern, exact.count(pattern)) for pattern in dict.fromkeys(exact)]


def stacked(cuts: Iterable[tuple[Cut, int]]) -> Cut:
    """Return the segment that holds some cuts one below the other; a single one is a cut like any other."""
    held = tuple(
        sorted(((c, n) for c, n in cuts if n), key=lambda one: (-one[0].across, -one[0].along, one[0].kind))
    )
    if len(held) == 1 and held[0][1] == 1:
        return held[0][0]
    return Cut(-1, max(c.along for c, _ in held), sum(c.across * n for c, n in held), held)


def _stacks_left(segment: Cut, count: int, left: list[int]) -> list[tuple[Cut, int]]:
    """Return so many segments with what is still wanted of their pieces, and take that from what is left."""
    found: list[Cut] = []
    for _ in range(count):
        kept = []
        for cut, many in segment.stack:
            taken = min(many, left[cut.kind])
            left[cut.kind] -= taken
            kept.append((cut, taken))
        if any(many for _, many in kept):
            found.append(stacked(kept))
    return [(cut, found.count(cut)) for cut in dict.fromkeys(found)]


def length_of(plan: Iterable[tuple[Pattern, int]]) -> int:
    """Return the length of cloth that a plan takes, in steps across the strips."""
    return sum(pattern.height * strips for pattern, strips in plan)
