"""Scores: what they measure is what the setting shows."""

from __future__ import annotations

import itertools
import random
from dataclasses import replace

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Design, StraightSet, Symmetry
from quarterturn.setting import Meeting, arrange
from quarterturn.setting.finder import Block, Judge, moves_of
from quarterturn.setting.finder.scoring import closed_curves
from tests.samples import ROUNDS, design_of

FLOWING = design_of(ROUNDS)
"""Two colourways, a dark on light and b light on dark, whose curves meet the middles of the sides."""
SMALL_DISCS = design_of(ROUNDS.replace("flow = true", "radius = '1 1/2\"'"))


def judge(design: Design, size: int, symmetry: Symmetry = Symmetry.SLIDE, codes: str = "ab") -> Judge:
    return Judge(design, draft_blocks(design), tuple(codes), symmetry, size)


def block_of(text: str) -> Block:
    return tuple("ab".index(word[0]) * 4 + int(word[1]) for word in text.replace("/", " ").split())


@pytest.mark.parametrize("design", [FLOWING, SMALL_DISCS], ids=["flowing", "small discs"])
@pytest.mark.parametrize("symmetry", Symmetry)
def test_flow_is_what_the_joins_of_the_quilt_come_to(design: Design, symmetry: Symmetry) -> None:
    """A quilt of n copies has, but for its edges, n times the joins of one; two quilts of unlike size tell which."""
    lot = random.Random(5)
    block = tuple(lot.randrange(8) for _ in range(4))
    judged = judge(design, 2, symmetry)
    torus, side = judged.torus(block), judged.side
    rows = tuple(tuple(torus[r * side : (r + 1) * side]) for r in range(side))
    wrapped = [(*row, row[0]) for row in (*rows, rows[0])]
    cells = tuple(
        Judge(design, judged.blocks, ("a", "b"), Symmetry.SLIDE, 1).cells((s,))[0][0] for s in range(8)
    )
    quilt = replace(design, setting=StraightSet(tuple(tuple(cells[s] for s in row) for row in wrapped), 1, 1))
    arranged = arrange(quilt, judged.blocks)
    marks = [
        mark
        for join in arranged.joins
        # The last row and column repeat the first: their own joins would count twice.
        if (join.side.value == "right" and arranged.units[join.first].row < side)
        or (join.side.value == "bottom" and arranged.units[join.first].column < side)
        for mark in join.marks
    ]
    met = sum(2 for mark in marks if mark.meeting is Meeting.MATCH)
    edges = sum(1 if mark.meeting is Meeting.END else 2 for mark in marks)
    assert judged.score(block).flow == pytest.approx(met / edges)


def test_whole_rounds_of_one_colour_flow_close_and_show_no_line() -> None:
    score = judge(SMALL_DISCS, 2).score(block_of("a2 a3 / a1 a0"))
    assert (score.flow, score.rounds, score.cloth) == (1, 1, pytest.approx(1))


def test_rounds_light_and_dark_in_turn_are_balanced() -> None:
    score = judge(SMALL_DISCS, 4).score(block_of("a2 a3 b2 b3 / a1 a0 b1 b0 / b2 b3 a2 a3 / b1 b0 a1 a0"))
    assert (score.flow, score.rounds, score.balance) == (1, 1, pytest.approx(1))


def test_bands_that_wind_flow_without_closing() -> None:
    score = judge(FLOWING, 4).score(block_of("a2 b0 b2 a0 / b0 b2 a0 a2 / b2 a0 a2 b0 / a0 a2 b0 b2"))
    assert (score.flow, score.rounds) == (1, 0)
    assert (score.cloth, score.balance) == (pytest.approx(1), pytest.approx(1))
    assert score.total == pytest.approx(90)


def test_units_all_the_same_way_up_have_no_curve_that_runs_on() -> None:
    score = judge(SMALL_DISCS, 1).score(block_of("a0"))
    assert (score.flow, score.rounds) == (0, 0)


def test_a_round_of_four_units_and_the_outline_of_a_cross_of_twelve_close() -> None:
    small, large = judge(FLOWING, 2), judge(FLOWING, 4, codes="a")
    assert closed_curves(small.torus(block_of("a2 a3 / a1 a0")), 2, small.joining) == [4]
    cross = block_of("a2 a2 a3 a3 / a2 a0 a1 a3 / a1 a3 a2 a0 / a1 a1 a0 a0")
    assert closed_curves(large.torus(cross), 4, large.joining) == [12]


@pytest.mark.parametrize("symmetry", Symmetry)
def test_a_score_does_not_change_when_a_block_is_moved(symmetry: Symmetry) -> None:
    judged = judge(FLOWING, 2, symmetry)
    for block in itertools.islice(itertools.product(range(8), repeat=4), 0, 4096, 331):
        totals = [judged.score(move(block)).total for move in moves_of(symmetry, 2, 2)]
        assert max(totals) == pytest.approx(min(totals))
