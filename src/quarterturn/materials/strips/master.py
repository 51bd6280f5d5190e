"""The master problem: how often each pattern is cut. Solved by the HiGHS solver, imported only here."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from quarterturn.materials.strips.job import Job
from quarterturn.materials.strips.patterns import Pattern

if TYPE_CHECKING:
    import highspy


OPTIONS: dict[str, str | int | float | bool] = {
    "threads": 1,
    "parallel": "off",
    "random_seed": 1,
    # A plan is there before the solver begins: guessing others took most of its time and found none (measured).
    "mip_heuristic_effort": 0.0,
    "mip_heuristic_run_feasibility_jump": False,
    "mip_heuristic_run_root_reduced_cost": False,
    "mip_heuristic_run_rins": False,
    "mip_heuristic_run_rens": False,
    "mip_allow_restart": False,
}
"""How the solver goes: the same way every time, on one thread."""


class Master:
    """min Σ height · x so that Σ yield · x ≥ demand, x ≥ 0: patterns are added as they are found."""

    def __init__(self, job: Job, patterns: Iterable[Pattern]) -> None:
        self.job = job
        self.patterns: list[Pattern] = []
        self._known: set[Pattern] = set()
        self._solver = solver_with_options()
        for wanted in job.demand:
            self._solver.addRow(float(wanted), self._solver.inf, 0, [], [])
        for pattern in patterns:
            self.add(pattern)

    def add(self, pattern: Pattern) -> bool:
        """Add a pattern; tell whether it is new."""
        if pattern in self._known:
            return False
        self._known.add(pattern)
        self.patterns.append(pattern)
        _add_column(self._solver, pattern, len(self.job.demand))
        return True

    def solve(self) -> tuple[list[float], list[float], float]:
        """Return how often each pattern is cut in part, the prices of the kinds, and the length that comes to."""
        self._solver.run()
        solution = self._solver.getSolution()
        return list(solution.col_value), list(solution.row_dual), self._solver.getObjectiveValue()


def whole_plan(
    job: Job, patterns: Sequence[Pattern], at_most: int, nodes: int
) -> tuple[list[tuple[Pattern, int]] | None, bool]:
    """Return the shortest plan of these patterns in whole strips that is no longer than `at_most`, if one is found.

    Also tells whether the search came to its end within so many nodes, so that there is none if none is returned.
    """
    import highspy

    solver = solver_with_options()
    solver.setOptionValue("mip_max_nodes", nodes)
    solver.setOptionValue("mip_rel_gap", 0.0)
    solver.setOptionValue("objective_bound", at_most + 0.5)
    for wanted in job.demand:
        solver.addRow(float(wanted), solver.inf, 0, [], [])
    for pattern in patterns:
        _add_column(solver, pattern, len(job.demand))
    solver.addRow(
        -solver.inf,
        float(at_most),
        len(patterns),
        list(range(len(patterns))),
        [float(p.height) for p in patterns],
    )
    in_whole(solver, len(patterns))
    solver.run()
    status = solver.getModelStatus()
    done = status in (highspy.HighsModelStatus.kOptimal, highspy.HighsModelStatus.kInfeasible)
    if solver.getInfo().primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
        return None, done
    strips = [round(value) for value in solver.getSolution().col_value]
    return [(pattern, count) for pattern, count in zip(patterns, strips, strict=True) if count], done


def solver_with_options() -> highspy.Highs:
    """Return a silent solver that goes the same way every time."""
    import highspy

    solver = highspy.Highs()  # type: ignore[no-untyped-call]  # its stub leaves the result out
    solver.silent()
    for option, value in OPTIONS.items():
        solver.setOptionValue(option, value)
    return solver


def in_whole(solver: highspy.Highs, columns: int) -> None:
    """Let the first columns of a model be taken in whole numbers only."""
    import highspy
    import numpy as np

    whole = np.full(columns, highspy.HighsVarType.kInteger, dtype=np.uint8)
    solver.changeColsIntegrality(columns, np.arange(columns, dtype=np.int32), whole)


def _add_column(solver: highspy.Highs, pattern: Pattern, kinds: int) -> None:
    found = [(kind, count) for kind, count in enumerate(pattern.yields(kinds)) if count]
    solver.addCol(
        float(pattern.height),
        0.0,
        solver.inf,
        len(found),
        [kind for kind, _ in found],
        [float(count) for _, count in found],
    )
