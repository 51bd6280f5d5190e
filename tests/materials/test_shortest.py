"""The plan that is taken: never longer than the quick one, its bound never lower than the quick one, and remembered."""

from __future__ import annotations

import os
import subprocess
import sys

from hypothesis import given, settings

from quarterturn.materials.bounds import lower_bound
from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import length_of, shelve
from quarterturn.materials.shortest import shortest_strips
from quarterturn.measure import inches
from tests.materials.cutting_cases import kind, kinds

W = inches(40)


@settings(max_examples=60)
@given(kinds(most=6, count=100))
def test_plan_and_bound_are_at_least_as_good_as_the_quick_ones(wanted: list[Kind]) -> None:
    plan = shortest_strips(tuple(wanted), W)
    assert plan.length == length_of(plan.shelves) <= length_of(shelve(wanted, W))
    assert lower_bound(wanted, W) <= plan.bound <= plan.length


def test_pairs_that_fill_a_strip_are_found_and_proved() -> None:
    wanted = (kind("A1", 12, (104, 40)), kind("A2", 12, (56, 40)), kind("A3", 5, (28, 36), (36, 28)))
    plan = shortest_strips(wanted, inches(20))
    assert plan.proved
    assert plan.length <= length_of(shelve(wanted, inches(20)))


def test_a_plan_is_remembered() -> None:
    wanted = (kind("A1", 7, (80, 60)), kind("A2", 5, (52, 44), (44, 52)))
    assert shortest_strips(wanted, W) is shortest_strips(tuple(wanted), W)


def test_the_solver_stays_away_where_the_quick_plan_is_proved() -> None:
    program = (
        "import sys; from fractions import Fraction as F; from quarterturn.materials.kinds import Kind, Position;"
        "from quarterturn.materials.shortest import shortest_strips as plan;"
        "print(plan((Kind('A1', 16, (Position(F(10), F(10)),)),), F(40)).proved, 'highspy' in sys.modules)"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=True, env=dict(os.environ)
    )
    assert done.stdout.split() == ["True", "False"]
