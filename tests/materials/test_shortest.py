"""The plan that is taken: never longer than the quick one, its bound never lower than the quick one, and remembered."""

from __future__ import annotations

import os
import subprocess
import sys

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Direction
from quarterturn.materials.bounds import lower_bound
from quarterturn.materials.kinds import Kind, kind_of
from quarterturn.materials.shelves import length_of, shelve
from quarterturn.materials.shortest import shortest_strips
from quarterturn.measure import inches
from quarterturn.pieces import Grain
from tests.materials.cutting_cases import kind, kinds, piece
from tests.materials.every_strip import shortest
from tests.materials.strips.level_model import shortest_length

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


TINY_W = inches(23)


@st.composite
def tiny_jobs(draw: st.DrawFn) -> tuple[Kind, ...]:
    """Return a handful of pieces as they may lie on cloth of any print: squares, oblongs, some with a grain."""
    direction = draw(st.sampled_from(Direction))
    sides = st.integers(8, 160).map(lambda n: inches(0, n, 8))
    pieces = [
        piece(
            draw(st.integers(1, 3)),
            draw(sides),
            draw(sides),
            label=f"A{n}",
            grain=draw(st.sampled_from(Grain)),
        )
        for n in range(1, draw(st.integers(1, 3)) + 1)
    ]
    return tuple(kind_of(each, direction, TINY_W) for each in pieces)


@settings(max_examples=800)
@given(tiny_jobs())
def test_plans_of_a_few_pieces_are_the_shortest_whatever_grain_and_print(wanted: tuple[Kind, ...]) -> None:
    """Two searches that share nothing agree: all strips tried in turn, lower pieces trimmed from higher ones too."""
    plan = shortest_strips(wanted, TINY_W)
    assert plan.length == shortest(wanted, TINY_W)
    assert plan.bound <= plan.length


@settings(max_examples=40, deadline=None)
@given(tiny_jobs())
def test_three_searches_agree_on_a_few_pieces(wanted: tuple[Kind, ...]) -> None:
    assert shortest_length(wanted, TINY_W) == shortest(wanted, TINY_W)
