"""Fill one piece of cloth with the worthiest choice of pieces: strips across it, then cuts across the strips.

Cut from scraps and fat quarters, not everything may fit; so each piece has a worth: its area, when what does not fit
has to come from other cloth. This is the constrained two-stage knapsack problem with trimming.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.master import in_whole, solver_with_options
from quarterturn.materials.strips.patterns import Pattern, length_of, single_patterns, without_excess
from quarterturn.materials.strips.pricing import FINE, Priced, price_strips
from quarterturn.materials.strips.proving import TooManyError, useful_patterns

if TYPE_CHECKING:
    import highspy

ROUNDS = 200
"""Of column generation, at most: far more than any piece of cloth takes."""


@dataclass(frozen=True, slots=True)
class Filling:
    """Strips cut from one piece of cloth, what they are worth, and a worth that no filling exceeds."""

    strips: tuple[tuple[Pattern, int], ...]
    worth: int
    bound: int

    @property
    def proved(self) -> bool:
        """Return whether no filling is worth more."""
        return self.worth == self.bound


@dataclass(frozen=True, slots=True)
class _Relaxed:
    """Patterns found, and the prices and the worth of a step of height that prove a bound."""

    patterns: tuple[Pattern, ...]
    prices: tuple[int, ...]
    step: Fraction
    bound: Fraction


def fill(job: Job, height: int, worths: Sequence[int], most: int = 6000, nodes: int = 20_000) -> Filling:
    """Return the worthiest filling of a piece of cloth `job.width` × `height`, both in the job's steps.

    No kind is cut more often than the job wants it. At most so many patterns are listed for the proof, and so many
    nodes of the solver's search looked at.
    """
    job = _fitting(job, height)
    if not job.cuts:
        return Filling((), 0, 0)
    relaxed = _relax(job, height, worths)
    best = _chosen(job, relaxed.patterns, height, worths, nodes)[0]
    return _proved(job, height, worths, relaxed, best, most, nodes)


def fill_quickly(job: Job, height: int, worths: Sequence[int]) -> tuple[tuple[Pattern, int], ...]:
    """Return a filling that is found strip by strip, each worth the most for its height, without the solver."""
    left, strips, prices = list(job.demand), list[Pattern](), [worth * FINE for worth in worths]
    while True:
        rest = _fitting(job.reduced(left), height)
        priced = price_strips(rest, prices) if rest.cuts else []
        if not priced:
            return tuple((pattern, strips.count(pattern)) for pattern in dict.fromkeys(strips))
        best = max(priced, key=lambda one: (Fraction(one.worth, one.height), one.height)).pattern
        ((pattern, _),) = without_excess([(best, 1)], left)
        strips.append(pattern)
        height -= pattern.height
        left = [have - given for have, given in zip(left, pattern.yields(len(left)), strict=True)]


def _fitting(job: Job, height: int) -> Job:
    cuts = tuple(cut for cut in job.cuts if cut.across <= height and cut.along <= job.width)
    return Job(job.width, job.demand, cuts, job.along_step, job.across_step)


def _relax(job: Job, height: int, worths: Sequence[int]) -> _Relaxed:
    """Generate patterns until none would be worth more in parts of strips; keep the least bound met."""
    patterns = dict.fromkeys(single_patterns(job))
    best: tuple[Fraction, tuple[int, ...], Fraction] | None = None
    for _ in range(ROUNDS):
        prices, step = _duals(job, tuple(patterns), height, worths)
        priced = price_strips(job, prices)
        found = _bound(job, height, worths, prices, priced)
        best = min(best, found) if best else found
        new = [
            p.pattern
            for p in priced
            if p.worth > (step + 1e-6) * p.height * FINE and p.pattern not in patterns
        ]
        if not new:
            break
        patterns.update(dict.fromkeys(new))
    assert best is not None, "there is a round at least"
    bound, prices, ratio = best
    return _Relaxed(tuple(patterns), prices, ratio, bound)


def _duals(
    job: Job, patterns: Sequence[Pattern], height: int, worths: Sequence[int]
) -> tuple[tuple[int, ...], float]:
    """Return the price of each kind in whole steps, rounded up, and the price of a step of height."""
    kinds = len(job.demand)
    solver = _model(job, patterns, height, worths)
    solver.run()
    duals = [abs(value) for value in solver.getSolution().row_dual]
    return tuple(math.ceil(value * FINE) for value in duals[:kinds]), duals[kinds]


def _bound(
    job: Job, height: int, worths: Sequence[int], prices: Sequence[int], priced: Sequence[Priced]
) -> tuple[Fraction, tuple[int, ...], Fraction]:
    """Return a worth that no filling exceeds, with what proves it.

    A piece is worth its price and what its worth is above that; all strips together are worth at most the dearest step
    of height times the height (the easy half of linear duality).
    """
    step = max((Fraction(p.worth, p.height) for p in priced), default=Fraction(0))
    above = sum(
        wanted * max(0, worth * FINE - price)
        for wanted, worth, price in zip(job.demand, worths, prices, strict=True)
    )
    return Fraction(above + step * height) / FINE, tuple(prices), step


def _model(job: Job, patterns: Sequence[Pattern], height: int, worths: Sequence[int]) -> highspy.Highs:
    """Return the model: of each kind at most as many count as are wanted and as the strips give."""
    kinds = len(job.demand)
    solver = solver_with_options()
    for _ in range(kinds):
        solver.addRow(-solver.inf, 0.0, 0, [], [])
    solver.addRow(-solver.inf, float(height), 0, [], [])
    for kind, (wanted, worth) in enumerate(zip(job.demand, worths, strict=True)):
        solver.addCol(-float(worth), 0.0, float(wanted), 1, [kind], [1.0])
    for pattern in patterns:
        given = [(kind, count) for kind, count in enumerate(pattern.yields(kinds)) if count]
        rows, counts = (
            [kind for kind, _ in given] + [kinds],
            [-float(n) for _, n in given] + [float(pattern.height)],
        )
        solver.addCol(0.0, 0.0, float(height // pattern.height), len(rows), rows, counts)
    return solver


def _chosen(
    job: Job, patterns: Sequence[Pattern], height: int, worths: Sequence[int], nodes: int
) -> tuple[tuple[tuple[Pattern, int], ...], bool]:
    """Return the worthiest choice of whole strips among these patterns, and whether that is certain."""
    import highspy

    solver = _model(job, patterns, height, worths)
    columns = len(job.demand) + len(patterns)
    solver.setOptionValue("mip_max_nodes", nodes)
    solver.setOptionValue("mip_rel_gap", 0.0)
    in_whole(solver, columns)
    solver.run()
    done = solver.getModelStatus() == highspy.HighsModelStatus.kOptimal
    counts = [round(value) for value in solver.getSolution().col_value[len(job.demand) :]]
    plan = [(pattern, count) for pattern, count in zip(patterns, counts, strict=True) if count]
    return tuple(without_excess(plan, job.demand)), done


def _worth(strips: Iterable[tuple[Pattern, int]], worths: Sequence[int]) -> int:
    return sum(
        strips_ * count * worths[cut.kind] for pattern, strips_ in strips for cut, count in pattern.cuts
    )


def _in_steps(relaxed: _Relaxed, short: Fraction, height: int) -> tuple[list[int], Fraction]:
    """Return prices, and how far a pattern may fall short, in units in which a step of height costs 1.

    Where height costs nothing, since there is more than enough of it, no pattern falls short.
    """
    if not relaxed.step:
        return [0] * len(relaxed.prices), Fraction(height)
    factor = FINE / relaxed.step
    return [math.ceil(price * factor) for price in relaxed.prices], short * factor


def _proved(
    job: Job,
    height: int,
    worths: Sequence[int],
    relaxed: _Relaxed,
    best: tuple[tuple[Pattern, int], ...],
    most: int,
    nodes: int,
) -> Filling:
    """Choose again among all patterns that a worthier filling could use; where that ends, it is proved."""
    worth, bound = _worth(best, worths), math.floor(relaxed.bound)
    if worth >= bound:
        return Filling(best, worth, bound)
    prices, spare = _in_steps(relaxed, relaxed.bound - worth - 1, height)
    try:
        useful = useful_patterns(job, prices, spare, Fraction(0), most)
    except TooManyError:
        return Filling(best, worth, bound)
    # The strips of the best filling stay choosable, so that the choice is never worse than it.
    chosen, done = _chosen(job, [*dict.fromkeys([*useful, *(p for p, _ in best)])], height, worths, nodes)
    if (found := _worth(chosen, worths)) > worth:
        best, worth = chosen, found
    assert length_of(best) <= height, "the strips fit on the cloth"
    return Filling(best, worth, worth if done else bound)
