"""The steps, from bolt to bound quilt."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given
from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st

from quarterturn.proof import Pattern, prove
from quarterturn.setting import Side
from quarterturn.steps import Chapter, Crease, CutApart, LayOut, SewLine, Steps, Trim
from tests.samples import ROUNDS, Changed, pattern_of

MAP = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    """The sample quilt."""
    return pattern_of(ROUNDS)


def test_numbers_run_from_one(pattern: Pattern) -> None:
    numbers = [step.number for step in pattern.steps.steps]
    assert numbers == list(range(1, len(numbers) + 1))


def test_chapters_come_in_order(pattern: Pattern) -> None:
    order = list(Chapter)
    places = [order.index(step.chapter) for step in pattern.steps.steps]
    assert places == sorted(places)


def test_whatever_is_used_was_made_and_whatever_is_made_is_used(pattern: Pattern) -> None:
    made: Counter[str] = Counter()
    used: Counter[str] = Counter()
    for step in pattern.steps.steps:
        for pile in step.uses:
            used[pile.label] += pile.count
            assert used[pile.label] <= made[pile.label], f"step {step.number} wants {pile.label} too early"
        for product in step.makes:
            made[product.label] += product.count
    made.subtract(used)
    assert {label: n for label, n in made.items() if n} == {"quilt": 1}


def test_the_layout_is_the_map(pattern: Pattern) -> None:
    (layout,) = [step.action for step in pattern.steps.steps if isinstance(step.action, LayOut)]
    rows = [" ".join(f"{p.label.removeprefix('unit ')}{p.turn}" for p in row) for row in layout.rows]
    assert "\n".join(rows) + "\n" == MAP


def test_neighbouring_rows_are_pressed_opposite_ways(pattern: Pattern) -> None:
    rows = [
        s.action
        for s in pattern.steps.steps
        if isinstance(s.action, SewLine) and s.makes[0].label.startswith("row")
    ]
    assert [row.press for row in rows] == [Side.RIGHT, Side.LEFT, Side.RIGHT]


def test_open_seams_have_no_side() -> None:
    steps = pattern_of(ROUNDS + '\n[making]\npressing = "open"\n').steps.steps
    assert {s.action.press for s in steps if isinstance(s.action, SewLine)} == {None}


def test_cuts_lie_on_the_creases(pattern: Pattern) -> None:
    crease = next(s.action for s in pattern.steps.steps if isinstance(s.action, Crease))
    assert all(s.action.cuts == crease.folds for s in pattern.steps.steps if isinstance(s.action, CutApart))


def test_an_untrimmed_master_has_no_trimming_step() -> None:
    text = Changed(ROUNDS).with_('curve = "as drawn"', 'curve = "as drawn"\ntrim = \'0"\'').text
    assert not any(isinstance(s.action, Trim) for s in pattern_of(text).steps.steps)


def test_equal_pairs_are_made_together() -> None:
    text = Changed(ROUNDS).with_(MAP + "'''", "a2 a3\na1 a0\n'''\nacross = 3\ndown = 4").text
    steps = pattern_of(text).steps
    pairs = [s.makes[0] for s in steps.steps if s.makes and s.makes[0].label.startswith("pair")]
    assert [(p.label, p.count) for p in pairs] == [("pair 1", 12), ("pair 2", 12)]


def test_a_single_column_needs_no_pairs() -> None:
    assert_sewn(Changed(ROUNDS).with_(MAP, "a2\nb1\na0\n").text)


def test_a_single_row() -> None:
    assert_sewn(Changed(ROUNDS).with_(MAP, "a2 b1 a0\n").text)


def test_two_columns() -> None:
    assert_sewn(Changed(ROUNDS).with_(MAP, "a2 b1\na0 a0\n").text)


def assert_sewn(text: str) -> Steps:
    """Rehearse a design; the steps must make its picture."""
    pattern = pattern_of(text)
    proof = prove(pattern)
    assert proof.findings == ()
    assert proof.share == 0
    return pattern.steps


CELLS = st.tuples(st.sampled_from("ab"), st.sampled_from("0123")).map("".join)
MAPS = st.tuples(st.integers(1, 5), st.integers(1, 5)).flatmap(
    lambda size: st.lists(
        st.lists(CELLS, min_size=size[0], max_size=size[0]), min_size=size[1], max_size=size[1]
    )
)
SHAPES = st.sampled_from(["{ flow = true }", "{ diameter = '2\"' }", "{ radius = '1 3/4\"' }"])


@hypothesis_settings(max_examples=60)
@given(MAPS, SHAPES, st.sampled_from(["as drawn", "sewn true"]), st.sampled_from(['0"', '1/2"', '1"']))
def test_rehearsal_equals_picture(cells: list[list[str]], shape: str, curve: str, trim: str) -> None:
    """Law: whatever the map, the shape and the trim, the steps make the quilt in the picture."""
    text = Changed(ROUNDS).with_(MAP, "\n".join(" ".join(row) for row in cells) + "\n")
    text = text.with_("{ flow = true }", shape).with_(
        'curve = "as drawn"', f"curve = \"{curve}\"\ntrim = '{trim}'"
    )
    assert_sewn(text.text)
