"""Plan a job: a quick plan, a better one by diving, the best of all patterns seen, and a proof if there is one."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.kinds import Kind
from quarterturn.materials.model import Crosscut
from quarterturn.materials.shelves import Segment, Shelf, cutting_order, shelve
from quarterturn.materials.strips.diving import Finish, Plan, dive
from quarterturn.materials.strips.easing import burden, eased
from quarterturn.materials.strips.generating import Relaxed, relax
from quarterturn.materials.strips.job import Cut, Job, job_of
from quarterturn.materials.strips.master import whole_plan
from quarterturn.materials.strips.patterns import Pattern, length_of, pattern_of, without_excess
from quarterturn.materials.strips.proving import TooManyError, useful_patterns
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Effort:
    """How hard to try, counted in work so that equal jobs get equal plans on every machine."""

    rounds: int
    """Of column generation, at each depth of the dive."""
    patterns: int
    """Listed for a proof, at most; 0 tries none."""
    nodes: int
    """Of the solver's search for whole strips."""
    widest: int
    """Steps of the width: beyond, the quick plan stands."""


QUICK = Effort(rounds=0, patterns=0, nodes=0, widest=0)
"""The quick plan alone."""

EFFORT = Effort(rounds=60, patterns=3000, nodes=100, widest=20_000)
"""Under about a second for most quilts (see the timings)."""


@dataclass(frozen=True, slots=True)
class StripPlan:
    """Strips that hold all pieces. `bound` is proved: no plan of strips is shorter."""

    shelves: tuple[Shelf, ...]
    length: Length
    bound: Length

    @property
    def proved(self) -> bool:
        """Return whether no plan of strips is shorter than this one."""
        return self.length == self.bound


def plan_strips(kinds: Sequence[Kind], usable: Length, effort: Effort = EFFORT) -> StripPlan:
    """Plan the strips for kinds that all have a position."""
    if not kinds:
        return StripPlan((), Length(0), Length(0))
    quick = shelve(kinds, usable)
    ordered = sorted(kinds, key=lambda kind: (kind.positions, kind.label))
    job = job_of(ordered, usable)
    first = as_plan(quick, ordered, job)
    if job.width > effort.widest:
        return StripPlan(quick, length_of(first) * job.across_step, Length(0))
    plan, bound, patterns = _planned(job, first, finisher(ordered, usable, job), effort)
    plan = eased(job, plan, patterns, effort.nodes)
    easier = (length_of(plan), burden(plan, job)) < (length_of(first), burden(first, job))
    shelves = as_shelves(plan, ordered, job, usable) if easier else quick
    return StripPlan(shelves, length_of(plan) * job.across_step, bound * job.across_step)


def _planned(job: Job, first: Plan, finish: Finish, effort: Effort) -> tuple[Plan, int, Sequence[Pattern]]:
    """Return the shortest plan found, the bound, and the patterns that plans as short can be made of."""
    relaxed = relax(job, [pattern for pattern, _ in first], effort.rounds)
    bound = least_sum(job, relaxed.bound)
    plan, seen = dive(job, relaxed, finish, effort.rounds)
    plan = min(first, without_excess(plan, job.demand), key=length_of)
    patterns = sorted(seen, key=pattern_order)
    if length_of(plan) > bound:
        plan = _best_of(job, plan, patterns, bound, effort)
    if length_of(plan) > bound:
        plan, bound = _proved(job, plan, relaxed, bound, effort)
    return plan, bound, patterns


def _best_of(job: Job, plan: Plan, seen: Sequence[Pattern], bound: int, effort: Effort) -> Plan:
    found, _ = whole_plan(job, seen, length_of(plan) - 1, effort.nodes)
    return without_excess(found, job.demand) if found else plan


def _proved(job: Job, plan: Plan, relaxed: Relaxed, bound: int, effort: Effort) -> tuple[Plan, int]:
    """Look for a shorter plan among all patterns that one could use; where there is none, the plan is proved."""
    while length_of(plan) > bound:
        shorter = length_of(plan) - 1
        try:
            useful = useful_patterns(job, relaxed.prices, shorter, relaxed.bound, effort.patterns)
        except TooManyError:
            return plan, bound
        found, done = whole_plan(job, useful, shorter, effort.nodes) if useful else (None, True)
        if found:
            plan = without_excess(found, job.demand)
        if done:
            return plan, length_of(plan)
        if not found:
            return plan, bound
    return plan, bound


def least_sum(job: Job, bound: Fraction) -> int:
    """Return the least length at or above a bound that strips can come to: a strip is as high as its highest piece.

    Heights have no common measure but the step, since job_of measures them by it; the tallest kind needs a strip.
    """
    return max(math.ceil(bound), job.tallest)


def pattern_order(pattern: Pattern) -> tuple[int, int, tuple[tuple[object, ...], ...]]:
    """Put high patterns first, and full ones before others."""
    return (
        -pattern.height,
        -pattern.used,
        tuple((cut.kind, cut.along, cut.across, cut.gives, count) for cut, count in pattern.cuts),
    )


def as_plan(shelves: Sequence[Shelf], kinds: Sequence[Kind], job: Job) -> Plan:
    """Return strips in lengths, none of them split, as patterns of a job of these kinds."""
    number = {kind.label: index for index, kind in enumerate(kinds)}
    return [
        (
            pattern_of(
                (
                    Cut(number[c.piece], int(c.along / job.along_step), int(c.across / job.across_step)),
                    c.count,
                )
                for c in shelf.crosscuts
            ),
            shelf.strips,
        )
        for shelf in shelves
    ]


def finisher(kinds: Sequence[Kind], usable: Length, job: Job) -> Finish:
    """Return the quick way to plan the rest of a job of these kinds."""

    def finish(rest: Job) -> Plan:
        left = [
            Kind(kind.label, count, kind.positions)
            for kind, count in zip(kinds, rest.demand, strict=True)
            if count
        ]
        return as_plan(shelve(left, usable), kinds, job)

    return finish


def as_shelves(plan: Plan, kinds: Sequence[Kind], job: Job, usable: Length) -> tuple[Shelf, ...]:
    """Return a plan in lengths, in cutting order."""
    shelves = [shelf_of(pattern, strips, kinds, job, usable) for pattern, strips in plan]
    return tuple(sorted(shelves, key=cutting_order))


def shelf_of(pattern: Pattern, strips: int, kinds: Sequence[Kind], job: Job, usable: Length) -> Shelf:
    """Return so many strips of a pattern in lengths, the kinds by their labels; `usable` is how long the strips are."""

    def crosscut(cut: Cut, count: int) -> Crosscut:
        along, across = cut.along * job.along_step, cut.across * job.across_step
        return Crosscut(kinds[cut.kind].label, along, across, count)

    return Shelf(
        pattern.height * job.across_step,
        strips,
        tuple(crosscut(cut, count) for cut, count in pattern.cuts if not cut.stack),
        usable - pattern.used * job.along_step,
        tuple(
            Segment(
                cut.along * job.along_step,
                cut.across * job.across_step,
                count,
                tuple(crosscut(each, many) for each, many in cut.stack),
            )
            for cut, count in pattern.cuts
            if cut.stack
        ),
    )
