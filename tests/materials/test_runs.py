"""Strips sewn end to end: published binding sums, and the law that a run reaches with no strip to spare."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.materials import JoinMethod
from quarterturn.materials.runs import (
    binding_run,
    border_runs,
    least_of_borders,
    length_of_runs,
    separate_runs,
    strips_to_join,
)
from quarterturn.measure import Length, inches
from quarterturn.pieces import Piece, Purpose
from tests.materials.cutting_cases import MAKING, piece, size

SEAM = inches(0, 1, 4)


def border(count: int, length: str | int, width: str | int, label: str = "A1") -> Piece:
    """Return border strips."""
    return piece(count, length, width, Purpose.BORDER, label)


def perimeter(width: str | int, height: str | int) -> Length:
    """Return the way round a quilt."""
    return 2 * (size(width) + size(height))


BINDINGS = [
    pytest.param(perimeter(54, 60) + 10, 42, 0, 6, id="238 in, monicacurryquiltdesign.com 2019"),
    pytest.param(perimeter(102, 112) + 10, 40, 0, 11, id="438 in, petiterepublic.com"),
    pytest.param(perimeter(40, 50), 40, 0, 5, id="180 in, alwaysinstitchesohio.blogspot.com 2009"),
    pytest.param(perimeter(46, 46), 40, 0, 5, id="184 in, sylviasquiltdepot.com"),
    pytest.param(
        perimeter(50, 60), 40, 2, 6, id="220 in, 2 lost at each join, castillejacotton.blogspot.com 2013"
    ),
    pytest.param(size("295 3/4"), 40, 0, 8, id="Call Me Square, Quilter's World May 2019"),
    pytest.param(size("295 3/4"), 42, 0, 8, id="Call Me Square, wider cloth"),
    pytest.param(perimeter("42 1/2", "42 1/2") + 10, 42, 0, 5, id="Spin, allpeoplequilt.com"),
    pytest.param(perimeter("51 1/2", "51 1/2") + 10, 42, 0, 6, id="Girly Swirls, allpeoplequilt.com"),
    pytest.param(perimeter("37 1/2", "37 1/2") + 10, 42, 0, 4, id="Magic Circles, allpeoplequilt.com"),
    pytest.param(perimeter("22 1/2", "22 1/2") + 10, 42, 0, 3, id="Spools Fun, allpeoplequilt.com"),
    pytest.param(perimeter("38 1/2", "38 1/2") + 10, 42, 0, 4, id="Garden Blooms, allpeoplequilt.com"),
    pytest.param(perimeter(70, 90) + 10, 42, 0, 8, id="Circle Fun, pastimesquiltdesign.blogspot.com 2012"),
]


@pytest.mark.parametrize(("length", "usable", "loss", "strips"), BINDINGS)
def test_published_strips_of_binding(length: Length, usable: int, loss: int, strips: int) -> None:
    assert strips_to_join(length, inches(usable), inches(loss)) == strips


def test_the_extra_of_binding_is_within_the_published_habits() -> None:
    """8″ to 24″ beyond the perimeter by source, 10″ in most."""
    assert 8 <= MAKING.binding_extra <= 24


LENGTHS = st.integers(1, 4000).map(lambda n: inches(0, n, 8))


@given(LENGTHS, st.integers(100, 350), st.integers(0, 40))
def test_a_run_is_long_enough_and_no_strip_too_many(length: Length, eighths: int, lost: int) -> None:
    usable, loss = inches(0, eighths, 8), inches(0, lost, 8)
    n = strips_to_join(length, usable, loss)
    assert n * usable - (n - 1) * loss >= length
    assert n == 1 or (n - 1) * usable - (n - 2) * loss < length


def test_binding_is_joined_on_the_diagonal_and_each_join_takes_a_strip_width() -> None:
    run = binding_run(piece(1, 302, "2 1/2", Purpose.BINDING), inches(42), SEAM)
    assert (run.strips, run.method, run.loss) == (8, JoinMethod.DIAGONAL, inches(2, 1, 2))
    assert (run.length, run.crosscuts) == (inches(318, 1, 2), ())


def test_cloth_no_wider_than_the_binding_is_joined_straight() -> None:
    run = binding_run(piece(1, 20, 6, Purpose.BINDING), inches(4), SEAM)
    assert (run.method, run.loss, run.strips) == (JoinMethod.STRAIGHT, inches(0, 1, 2), 6)


def test_a_short_binding_is_a_run_of_one_strip() -> None:
    run = binding_run(piece(1, 30, 2, Purpose.BINDING), inches(40), SEAM)
    assert (run.strips, run.length) == (1, 40)


def test_borders_of_one_width_share_a_run() -> None:
    """Apart they take 4 strips each; the shared run has 272″ to cut from 7 × 42 − 6 × ½ = 291″."""
    borders = [border(2, "71 1/2", "5 1/2"), border(2, "64 1/2", "5 1/2", "A2")]
    (run,) = border_runs(borders, inches(42), SEAM)
    assert (run.strips, run.length, run.method) == (7, 291, JoinMethod.STRAIGHT)
    assert [(c.piece, c.count, c.along) for c in run.crosscuts] == [
        ("A1", 2, inches(71, 1, 2)),
        ("A2", 2, inches(64, 1, 2)),
    ]
    assert [r.strips for r in separate_runs(borders, inches(42), SEAM)] == [4, 4]


def test_borders_have_runs_of_their_own_where_a_further_join_would_cost_a_strip() -> None:
    """Two strips of 40″ joined give 79½″, just what each kind needs; a shared run would lose ½″ more."""
    runs = border_runs([border(1, "79 1/2", 3), border(1, "79 1/2", 3, "A2")], inches(40), SEAM)
    assert [run.strips for run in runs] == [2, 2]


def test_borders_of_different_widths_have_different_runs_wide_before_narrow() -> None:
    runs = border_runs([border(2, 50, 2), border(2, 60, 5, "A2")], inches(40), SEAM)
    assert [(run.height, run.strips) for run in runs] == [(5, 4), (2, 3)]


BORDERS = st.lists(
    st.tuples(st.integers(1, 2), st.integers(321, 1200), st.sampled_from([16, 20])), min_size=1, max_size=4
)


@given(BORDERS)
def test_runs_lie_between_their_bound_and_the_hand_rule(wanted: list[tuple[int, int, int]]) -> None:
    borders = [
        piece(count, inches(0, long, 8), inches(0, wide, 8), Purpose.BORDER, f"A{i}")
        for i, (count, long, wide) in enumerate(wanted, 1)
    ]
    runs = border_runs(borders, inches(40), SEAM)
    by_hand = length_of_runs(separate_runs(borders, inches(40), SEAM))
    assert least_of_borders(borders, inches(40), SEAM) <= length_of_runs(runs) <= by_hand
    cut = {c.piece: c.count for run in runs for c in run.crosscuts}
    assert cut == {b.label: b.count for b in borders}
    for run in runs:
        assert sum(c.along * c.count for c in run.crosscuts) <= run.length
        assert run.length == run.strips * 40 - (run.strips - 1) * run.loss


def test_a_diagonal_join_takes_the_width_of_the_strip() -> None:
    (straight,) = border_runs([border(2, 60, 5)], inches(40), SEAM)
    (diagonal,) = border_runs([border(2, 60, 5)], inches(40), SEAM, JoinMethod.DIAGONAL)
    assert (straight.strips, straight.loss, straight.length) == (4, inches(0, 1, 2), size("158 1/2"))
    assert (diagonal.strips, diagonal.loss, diagonal.length) == (4, 5, 145)
    assert least_of_borders([border(2, 60, 5)], inches(40), SEAM, JoinMethod.DIAGONAL) <= 4 * 5


def test_cloth_no_wider_than_the_strip_has_no_diagonal_to_join_on() -> None:
    (run,) = border_runs([border(1, 60, 8)], inches(8), SEAM, JoinMethod.DIAGONAL)
    assert run.method is JoinMethod.STRAIGHT
