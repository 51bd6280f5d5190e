"""Proof: every pattern that a shorter plan could use is listed, and no choice of them will do."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from quarterturn.materials.strips.job import Cut, Job
from quarterturn.materials.strips.patterns import Pattern, pattern_of
from quarterturn.materials.strips.pricing import FINE

STEPS_TO_A_PATTERN = 50
"""Places looked at, for each pattern that may be listed, before the search is given up."""


class TooManyError(Exception):
    """More patterns than may be listed, or a search for them that is too long."""


def useful_patterns(
    job: Job, prices: Sequence[int], at_most: Fraction | int, bound: Fraction, most: int
) -> list[Pattern]:
    """Return every full pattern that some plan no longer than `at_most` may use.

    At prices that prove `bound`, a plan that uses a pattern higher than its worth by more than `at_most` − `bound` is
    longer than `at_most` (reduced cost fixing). Full means that no piece fits beside the others any more: fuller strips
    do whatever less full ones do. Raises TooManyError beyond `most` patterns.
    """
    return _Search(job, prices, int((at_most - bound) * FINE), most).run()


class _Search:
    """A depth-first search through the cuts from high to low."""

    def __init__(self, job: Job, prices: Sequence[int], spare: int, most: int) -> None:
        self.job, self.prices, self.spare, self.most = job, prices, spare, most
        self.steps_left = most * STEPS_TO_A_PATTERN
        self.best = _best_worths(job, prices)

    def run(self) -> list[Pattern]:
        """List the patterns by their highest cut."""
        found: dict[Pattern, None] = {}
        for top in range(len(self.job.cuts)):
            need = self.job.cuts[top].across * FINE - self.spare
            for pattern in self._filled(top, self.job.width, need, list(self.job.demand), []):
                if pattern.height == self.job.cuts[top].across:
                    found[pattern] = None
                if len(found) > self.most:
                    raise TooManyError
        return list(found)

    def _filled(
        self, number: int, room: int, need: int, wanted: list[int], held: list[tuple[Cut, int]]
    ) -> Iterator[Pattern]:
        """Fill what room is left with the cuts up to a number, if that can be worth what is still needed."""
        self.steps_left -= 1
        if self.steps_left < 0:
            raise TooManyError
        if number < 0:
            if held and need <= 0 and self._is_full(room, wanted, held):
                yield pattern_of(held)
            return
        if self.best[number + 1][room] < need:
            return
        cut = self.job.cuts[number]
        least = 0 if held else 1
        for count in range(min(room // cut.along, wanted[cut.kind]), least - 1, -1):
            wanted[cut.kind] -= count
            taken = [*held, (cut, count)] if count else held
            worth = count * self.prices[cut.kind]
            yield from self._filled(number - 1, room - count * cut.along, need - worth, wanted, taken)
            wanted[cut.kind] += count

    def _is_full(self, room: int, wanted: Sequence[int], held: Sequence[tuple[Cut, int]]) -> bool:
        height = max(cut.across for cut, _ in held)
        return not any(c.across <= height and c.along <= room and wanted[c.kind] > 0 for c in self.job.cuts)


def _best_worths(job: Job, prices: Sequence[int]) -> list[list[int]]:
    """Return the most that each length is worth with the first n cuts, each any number of times: never too low."""
    rows = [[0] * (job.width + 1)]
    for cut in job.cuts:
        row, price = list(rows[-1]), prices[cut.kind]
        for room in range(cut.along, job.width + 1):
            row[room] = max(row[room], row[room - cut.along] + price)
        rows.append(row)
    return rows
