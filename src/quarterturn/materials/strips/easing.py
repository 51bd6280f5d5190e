"""Among plans that are as short, the one that is easiest to cut: few heights, few kinds of strip, few strips."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from itertools import combinations
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.materials.shelves import TIGHT
from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.master import in_whole, solver_with_options
from quarterturn.materials.strips.patterns import Pattern, length_of, without_excess

if TYPE_CHECKING:
    import highspy

Plan: TypeAlias = list[tuple[Pattern, int]]

NEAR = Fraction(1, 4)
"""Strips whose heights differ by less, in inches, are easily mistaken for one another (our choice)."""

A_HEIGHT, A_NEAR_PAIR, A_TIGHT_KIND, A_SPLIT, A_KIND, A_STRIP = 100.0, 60.0, 30.0, 20.0, 10.0, 0.01
"""By how much each makes a plan more troublesome: a height is another setting of the ruler, a kind another stack.

A strip that is filled to its end is one that cloth a little narrower does not give.
"""

MOST_PATTERNS = 400
"""Where there are more to choose from, the first ones stand for all."""


def burden(plan: Iterable[tuple[Pattern, int]], job: Job) -> float:
    """Return how troublesome a plan is to cut."""
    groups = list(plan)
    heights = sorted({pattern.height for pattern, _ in groups})
    strips = sum(count for _, count in groups)
    trouble = A_HEIGHT * len(heights) + A_NEAR_PAIR * len(_near_pairs(heights, job))
    return trouble + sum(_of_kind(pattern, job) for pattern, _ in groups) + A_STRIP * strips


def _of_kind(pattern: Pattern, job: Job) -> float:
    tight = (job.width - pattern.used) * job.along_step < TIGHT
    splits = sum(bool(cut.stack) for cut, _ in pattern.cuts)
    return A_KIND + A_SPLIT * splits + (A_TIGHT_KIND if tight else 0.0)


def _near_pairs(heights: Sequence[int], job: Job) -> list[tuple[int, int]]:
    return [(a, b) for a, b in combinations(heights, 2) if (b - a) * job.across_step < NEAR]


def eased(job: Job, plan: Plan, patterns: Sequence[Pattern], nodes: int) -> Plan:
    """Return a plan of these patterns that is no longer than another, and no more troublesome."""
    choice = list(dict.fromkeys([*(pattern for pattern, _ in plan), *patterns]))[:MOST_PATTERNS]
    solver = _model(job, choice, length_of(plan))
    solver.setOptionValue("mip_max_nodes", nodes)
    solver.setOptionValue("objective_bound", burden(plan, job))
    solver.run()
    values = solver.getSolution().col_value
    found = [(pattern, round(value)) for pattern, value in zip(choice, values, strict=False) if round(value)]
    if not _covers(found, job):
        return plan
    other = without_excess(found, job.demand)
    return min(plan, other, key=lambda one: (length_of(one), burden(one, job)))


def _covers(plan: Plan, job: Job) -> bool:
    given = [0] * len(job.demand)
    for pattern, strips in plan:
        for kind, count in enumerate(pattern.yields(len(given))):
            given[kind] += count * strips
    return all(have >= wanted for have, wanted in zip(given, job.demand, strict=True))


def _model(job: Job, patterns: Sequence[Pattern], longest: int) -> highspy.Highs:
    """Return the model: strips of each pattern, whether it is cut at all, whether its height is, and near pairs."""
    solver = solver_with_options()
    heights = sorted({pattern.height for pattern in patterns})
    pairs = _near_pairs(heights, job)
    many = len(patterns)
    kinds = [_of_kind(pattern, job) for pattern in patterns]
    costs = [*[A_STRIP] * many, *kinds, *[A_HEIGHT] * len(heights), *[A_NEAR_PAIR] * len(pairs)]
    for number, cost in enumerate(costs):
        solver.addCol(cost, 0.0, solver.inf if number < many else 1.0, 0, [], [])
    for kind, wanted in enumerate(job.demand):
        given = [(number, p.yields(len(job.demand))[kind]) for number, p in enumerate(patterns)]
        holding = [(number, float(count)) for number, count in given if count]
        solver.addRow(
            float(wanted), solver.inf, len(holding), [n for n, _ in holding], [c for _, c in holding]
        )
    lengths = [float(pattern.height) for pattern in patterns]
    solver.addRow(-solver.inf, float(longest), many, list(range(many)), lengths)
    for number, pattern in enumerate(patterns):
        most, height = float(longest // pattern.height), 2 * many + heights.index(pattern.height)
        solver.addRow(-solver.inf, 0.0, 2, [number, many + number], [1.0, -most])
        solver.addRow(-solver.inf, 0.0, 2, [many + number, height], [1.0, -1.0])
    for number, (low, high) in enumerate(pairs):
        ends = [2 * many + heights.index(low), 2 * many + heights.index(high)]
        solver.addRow(-solver.inf, 1.0, 3, [*ends, 2 * many + len(heights) + number], [1.0, 1.0, -1.0])
    in_whole(solver, 2 * many + len(heights))
    return solver
