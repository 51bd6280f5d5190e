"""Strips whose segments are split: a third stage, pieces one below the other in the height of a strip.

The class of plans: strips across the cloth, none higher than some piece can lie; each is cut across into segments, and
a segment across the strip's height into pieces that are no longer along the strip than the segment is. A plan without
splits is one of the class, as each piece is a segment. The bound holds for the whole class, and so may be lower than
that of plans without splits.

Pricing is a knapsack in two levels (Gilmore and Gomory, *Multistage cutting stock problems of two and more dimensions*,
1965): the worthiest stack of each height with pieces up to each length, and from those the worthiest strip.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from functools import partial
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.materials.kinds import Kind
from quarterturn.materials.strips.diving import Plan, dive
from quarterturn.materials.strips.easing import eased
from quarterturn.materials.strips.generating import Relaxed, relax
from quarterturn.materials.strips.job import Cut, Job, job_of
from quarterturn.materials.strips.master import whole_plan
from quarterturn.materials.strips.patterns import Pattern, length_of, pattern_of, stacked, without_excess
from quarterturn.materials.strips.planning import (
    Effort,
    StripPlan,
    as_plan,
    as_shelves,
    finisher,
    least_sum,
    pattern_order,
)
from quarterturn.materials.strips.pricing import FINE, Priced, lots_of
from quarterturn.measure import Length

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Worths: TypeAlias = NDArray[np.int64]
    Marks: TypeAlias = NDArray[np.bool_]

MOST_CELLS = 60_000
"""Heights that a strip can have times steps of its length: with more, no strip is split."""

MOST_REFILLED = 3
"""Heights for which a strip that holds too many of a kind is filled again."""

ROUNDS, DEEPER = 12, 1
"""Of generating patterns, at most: at first, and at each depth of the dive."""


def split_strips(
    kinds: Sequence[Kind],
    usable: Length,
    effort: Effort,
    plan: StripPlan,
    bought: Callable[[Length], Length],
) -> StripPlan:
    """Return a plan with splits if less is bought for its length than for that of a plan without; else that one."""
    wanted = bought(plan.length)
    if not _can_stack(kinds) or bought(_area(kinds) / usable) >= wanted:
        return plan
    ordered = sorted(kinds, key=lambda kind: (kind.positions, kind.label))
    job = job_of(ordered, usable)
    if len(_stack_heights(job, job.heights[-1])) * job.width > MOST_CELLS:
        return plan
    first = as_plan(plan.shelves, ordered, job)
    relaxed = relax(job, [pattern for pattern, _ in first], min(ROUNDS, effort.rounds), price_split)
    bound = least_sum(job, relaxed.bound)
    if bought(bound * job.across_step) >= wanted:
        return plan
    found, seen = _shortest(job, first, relaxed, finisher(ordered, usable, job), effort)
    if bought(length_of(found) * job.across_step) >= wanted:
        return plan
    found = eased(job, found, sorted(seen, key=pattern_order), effort.nodes)
    shelves = as_shelves(found, ordered, job, usable)
    return StripPlan(shelves, length_of(found) * job.across_step, bound * job.across_step)


def _shortest(
    job: Job, first: Plan, relaxed: Relaxed, finish: Callable[[Job], Plan], effort: Effort
) -> tuple[Plan, set[Pattern]]:
    plan, seen = dive(job, relaxed, finish, min(DEEPER, effort.rounds), price_split)
    plan = min(first, without_excess(plan, job.demand), key=length_of)
    whole, _ = whole_plan(job, sorted(seen, key=pattern_order), length_of(plan) - 1, effort.nodes)
    return (without_excess(whole, job.demand) if whole else plan), seen


def _can_stack(kinds: Sequence[Kind]) -> bool:
    """Tell whether two pieces can lie one below the other in a strip as high as some piece."""
    heights = sorted(p.across for kind in kinds for p in kind.positions)
    return len(heights) > 1 and 2 * heights[0] <= heights[-1]


def _area(kinds: Sequence[Kind]) -> Length:
    areas = (kind.count * kind.positions[0].along * kind.positions[0].across for kind in kinds)
    return sum(areas, Length(0))


def _stack_heights(job: Job, highest: int) -> list[int]:
    """Return the heights that stacks can have, up to the highest allowed, low to high."""
    reached = {0}
    for cut in job.cuts:
        for lot in lots_of(job, cut, highest // cut.across):
            more = {height + lot.count * cut.across for height in reached}
            reached |= {height for height in more if height <= highest}
    return sorted(reached - {0})


@dataclass(frozen=True, slots=True)
class _Taken:
    """So many of something taken together, and where that is worth more than what was there before."""

    number: int
    count: int
    more: Marks


@dataclass(slots=True)
class _Stacks:
    """The worthiest stack of each height with the cuts up to a length, as far as cuts have been added."""

    worth: Worths
    cuts: list[Cut] = field(default_factory=list)
    taken: list[_Taken] = field(default_factory=list)

    def held(self, height: int, stages: int) -> Cut:
        """Return the worthiest stack up to a height, with what was added in so many first stages."""
        counts = dict.fromkeys(self.cuts, 0)
        for each in reversed(self.taken[:stages]):
            if each.more[height]:
                counts[self.cuts[each.number]] += each.count
                height -= each.count * self.cuts[each.number].across
        return stacked(counts.items())


def price_split(job: Job, prices: Sequence[int]) -> list[Priced]:
    """Return for each height the worthiest strip with splits, low to high, where it is worth more than any lower one.

    A kind is bounded in each stack, and segments of a length by the pieces of just that length: so a worth may be too
    high, never too low, and a bound from it holds. Where the strip holds more of a kind than is wanted, others that do
    not follow it, for those heights that promise most.
    """
    found = _worthiest(job, prices, job.heights[-1])
    promising = sorted(found, key=lambda one: Fraction(-one.worth, one.height))[:MOST_REFILLED]
    return [*found, *(each for one in promising for each in _as_wanted(job, prices, one))]


def _worthiest(job: Job, prices: Sequence[int], highest: int) -> list[Priced]:
    import numpy as np

    heights = np.array(_stack_heights(job, highest), dtype=np.int64)
    worth = np.zeros((len(heights), job.width + 1), dtype=np.int64)
    stacks = _Stacks(np.zeros(highest + 1, dtype=np.int64))
    segments: list[tuple[int, int]] = []
    taken: list[_Taken] = []
    for along, wanted in _lengths(job, prices):
        _add_cuts(stacks, job, prices, along)
        segments.append((along, len(stacks.taken)))
        for count in _doubling(min(job.width // along, wanted)):
            gain = count * stacks.worth[heights][:, None]
            after = worth.copy()
            room = count * along
            np.maximum(worth[:, room:], worth[:, : job.width + 1 - room] + gain, out=after[:, room:])
            taken.append(_Taken(len(segments) - 1, count, after > worth))
            worth = after
    return list(_best(job, heights, worth, partial(_filled, job, heights, stacks, segments, taken)))


def _as_wanted(job: Job, prices: Sequence[int], priced: Priced) -> Iterator[Priced]:
    """Yield a strip that holds no more of a kind than is wanted, and others in the room that leaves, if it does not."""
    given = priced.pattern.yields(len(job.demand))
    if priced.worth <= priced.height * FINE or all(g <= w for g, w in zip(given, job.demand, strict=True)):
        return
    ((kept, _),) = without_excess([(priced.pattern, 1)], job.demand)
    left = [want - have for want, have in zip(job.demand, kept.yields(len(given)), strict=True)]
    room = job.width - kept.used
    cuts = tuple(c for c in job.cuts if left[c.kind] and c.along <= room and c.across <= priced.height)
    rest = Job(room, tuple(left), cuts, job.along_step, job.across_step)
    best = _worthiest(rest, prices, priced.height) if cuts else []
    more = without_excess([(best[-1].pattern, 1)], left) if best else []
    held = [*kept.cuts, *(cut for pattern, _ in more for cut in pattern.cuts)]
    yield Priced(priced.height, priced.worth, pattern_of(held))


def _lengths(job: Job, prices: Sequence[int]) -> Iterator[tuple[int, int]]:
    """Yield the lengths of cuts that are worth something, short to long, each with how many pieces have it."""
    for along in sorted({cut.along for cut in job.cuts if prices[cut.kind]}):
        kinds = {cut.kind for cut in job.cuts if cut.along == along and prices[cut.kind]}
        yield along, sum(job.demand[kind] for kind in kinds)


def _add_cuts(stacks: _Stacks, job: Job, prices: Sequence[int], along: int) -> None:
    """Let stacks hold the cuts of a length too."""
    import numpy as np

    for cut in job.cuts:
        if cut.along != along or not prices[cut.kind]:
            continue
        stacks.cuts.append(cut)
        for lot in lots_of(job, cut, (len(stacks.worth) - 1) // cut.across):
            room, gain = lot.count * cut.across, lot.count * prices[cut.kind]
            after = stacks.worth.copy()
            np.maximum(stacks.worth[room:], stacks.worth[: len(stacks.worth) - room] + gain, out=after[room:])
            stacks.taken.append(_Taken(len(stacks.cuts) - 1, lot.count, after > stacks.worth))
            stacks.worth = after


def _doubling(most: int) -> Iterator[int]:
    size = 1
    while most:
        count = min(size, most)
        yield count
        most, size = most - count, 2 * size


def _filled(
    job: Job,
    heights: Worths,
    stacks: _Stacks,
    segments: Sequence[tuple[int, int]],
    taken: Sequence[_Taken],
    row: int,
) -> Pattern:
    room, held = job.width, list[tuple[Cut, int]]()
    for each in reversed(taken):
        if each.more[row, room]:
            along, stages = segments[each.number]
            held.append((stacks.held(int(heights[row]), stages), each.count))
            room -= each.count * along
    return pattern_of(held)


def _best(job: Job, heights: Worths, worth: Worths, filled: Callable[[int], Pattern]) -> Iterator[Priced]:
    best = 0
    for row, height in enumerate(heights):
        if (most := int(worth[row, job.width])) > best:
            best = most
            yield Priced(int(height), most, filled(row))
