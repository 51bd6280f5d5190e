"""One piece of cloth as it lies to be cut: the worthiest way to cut it up, and what fills the room that is left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.patterns import Pattern, length_of, without_excess
from quarterturn.materials.strips.pricing import Priced, price_strips


@dataclass(frozen=True, slots=True)
class Bed:
    """A kind of cloth laid one way: strips `width` steps long, and room for `height` steps of them."""

    stock: int
    upright: bool
    width: int
    height: int


@dataclass(frozen=True, slots=True)
class Column:
    """One piece of cloth cut up."""

    bed: Bed
    strips: tuple[tuple[Pattern, int], ...]

    def yields(self, kinds: int) -> tuple[int, ...]:
        """Return how many pieces of each kind it gives."""
        found = [0] * kinds
        for pattern, strips in self.strips:
            for kind, count in enumerate(pattern.yields(kinds)):
                found[kind] += count * strips
        return tuple(found)


def best_column(job: Job, bed: Bed, prices: Sequence[int]) -> tuple[Column | None, int]:
    """Return the worthiest way to cut one piece of cloth: the best strip of each height, and the best heights."""
    priced = [p for p in price_strips(_lying(job, bed), prices) if p.height <= bed.height]
    worth, chosen = _stacked(priced, bed.height)
    if not chosen:
        return None, 0
    return Column(bed, tuple((pattern, chosen.count(pattern)) for pattern in dict.fromkeys(chosen))), worth


def filled(job: Job, column: Column) -> Column:
    """Return a column without what is cut too much, the room that this leaves filled with what is wanted still."""
    bed, left = column.bed, list(job.demand)
    strips = without_excess(column.strips, left)
    for kind, count in enumerate(Column(bed, tuple(strips)).yields(len(left))):
        left[kind] -= count
    areas = [0] * len(left)
    for cut in job.cuts:
        areas[cut.kind] = cut.along * cut.across
    room = bed.height - length_of(strips)
    while any(left):
        fitting = [p for p in price_strips(_lying(job.reduced(left), bed), areas) if p.height <= room]
        if not fitting:
            break
        pattern = max(fitting, key=lambda one: (Fraction(one.worth, one.height), one.height)).pattern
        ((pattern, _),) = without_excess([(pattern, 1)], list(left))
        given = pattern.yields(len(left))
        times = min(room // pattern.height, *(have // n for have, n in zip(left, given, strict=True) if n))
        strips.append((pattern, times))
        left = [have - times * n for have, n in zip(left, given, strict=True)]
        room -= times * pattern.height
    return Column(bed, tuple(strips))


def _lying(job: Job, bed: Bed) -> Job:
    """Return the job on a bed: where the cloth is turned, only pieces that may be turned too are cut."""
    sides = _sides(job)
    both = {kind for kind, along, across in sides if (kind, across, along) in sides}
    cuts = (
        cut
        for cut in job.cuts
        if cut.across <= bed.height and cut.along <= bed.width and (not bed.upright or cut.kind in both)
    )
    return Job(bed.width, job.demand, tuple(cuts), job.along_step, job.across_step)


def _sides(job: Job) -> set[tuple[int, Fraction, Fraction]]:
    return {(cut.kind, cut.along * job.along_step, cut.across * job.across_step) for cut in job.cuts}


def _stacked(priced: Sequence[Priced], height: int) -> tuple[int, list[Pattern]]:
    """Return the worthiest pile of strips no higher than the cloth: a knapsack over the height."""
    best = [0] * (height + 1)
    last: list[Priced | None] = [None] * (height + 1)
    for room in range(1, height + 1):
        best[room], last[room] = best[room - 1], last[room - 1]
        for strip in priced:
            if strip.height <= room and best[room - strip.height] + strip.worth > best[room]:
                best[room], last[room] = best[room - strip.height] + strip.worth, strip
    piled: list[Pattern] = []
    room = height
    while room > 0 and best[room]:
        while best[room] == best[room - 1]:
            room -= 1
        top = last[room]
        assert top is not None, "what is worth something has a last strip"
        piled.append(top.pattern)
        room -= top.height
    return best[height], piled
