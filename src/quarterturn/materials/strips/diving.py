"""Diving: fix whole strips of the relaxed plan, and plan again for what is left, until nothing is."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import TypeAlias

from quarterturn.materials.strips.generating import Relaxed, relax
from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.patterns import Pattern, length_of
from quarterturn.materials.strips.pricing import Price, price_strips

Plan: TypeAlias = list[tuple[Pattern, int]]

Finish: TypeAlias = Callable[[Job], Plan]
"""A quick way to plan the rest of a job."""

WHOLE = 1e-6
"""A share nearer than this below a whole number is that number."""


def dive(
    job: Job, relaxed: Relaxed, finish: Finish, rounds: int, price: Price = price_strips
) -> tuple[Plan, set[Pattern]]:
    """Return the shortest plan met on the way down, and every pattern seen.

    At each depth whole strips are fixed; where there is none, one strip of the pattern with the largest share, the
    taller first. What is left is also planned by `finish`, so that a plan is there at any depth.
    """
    fixed: Plan = []
    best = finish(job)
    seen = set(relaxed.patterns)
    left = list(job.demand)
    while any(left):
        for pattern, strips in _whole_strips(relaxed, left):
            fixed.append((pattern, strips))
            left = _less(left, pattern, strips)
        rest = job.reduced(left)
        ended = [*fixed, *(finish(rest) if any(left) else [])]
        best = min(best, ended, key=length_of)
        if any(left):
            relaxed = relax(rest, _fitting(relaxed.patterns, rest), rounds, price)
            seen |= set(relaxed.patterns)
    return best, seen


def _whole_strips(relaxed: Relaxed, left: Sequence[int]) -> Plan:
    whole = [
        (pattern, math.floor(share + WHOLE))
        for pattern, share in zip(relaxed.patterns, relaxed.shares, strict=True)
        if share >= 1 - WHOLE
    ]
    if whole:
        return whole
    ranked = zip(relaxed.patterns, relaxed.shares, strict=True)
    pattern, _ = max(ranked, key=lambda one: (round(one[1], 6), one[0].height, one[0].used))
    return [(pattern, 1)]


def _less(left: Sequence[int], pattern: Pattern, strips: int) -> list[int]:
    return [
        max(0, wanted - strips * given) for wanted, given in zip(left, pattern.yields(len(left)), strict=True)
    ]


def _fitting(patterns: Sequence[Pattern], rest: Job) -> list[Pattern]:
    """Return the patterns of which no piece is more than the rest wants."""
    return [
        pattern
        for pattern in patterns
        if all(g <= w for g, w in zip(pattern.yields(len(rest.demand)), rest.demand, strict=True))
    ]
