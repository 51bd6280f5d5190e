"""Split segments: laws that such plans keep, and layouts without waste that no bound may exceed."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import Shelf, length_of
from quarterturn.materials.shortest import shortest_strips
from quarterturn.materials.strips import EFFORT, StripPlan, job_of
from quarterturn.materials.strips.pricing import price_strips
from quarterturn.materials.strips.splitting import price_split, split_strips
from quarterturn.measure import Length, inches
from tests.materials.cutting_cases import kind, kinds

W = inches(40)
JOBS = kinds(most=4, count=20)


def split(wanted: list[Kind]) -> StripPlan:
    """Return the plan with splits where every sixteenth of an inch is worth it."""
    return split_strips(wanted, W, EFFORT, shortest_strips(tuple(wanted), W), lambda length: length)


@given(JOBS)
@settings(max_examples=40)
def test_every_piece_is_cut_once_in_a_way_in_which_it_may_lie(wanted: list[Kind]) -> None:
    allowed = {(k.label, p.along, p.across) for k in wanted for p in k.positions}
    cut = Counter[str]()
    for shelf in split(wanted).shelves:
        for piece in shelf.pieces:
            cut[piece.piece] += piece.count * shelf.strips
            assert (piece.piece, piece.along, piece.across) in allowed
    assert cut == {kind.label: kind.count for kind in wanted}


@given(JOBS)
@settings(max_examples=40)
def test_segments_lie_side_by_side_and_their_pieces_one_below_the_other(wanted: list[Kind]) -> None:
    for shelf in split(wanted).shelves:
        assert used(shelf) + shelf.room == W
        assert shelf.room >= 0
        for segment in shelf.splits:
            assert sum(c.across * c.count for c in segment.crosscuts) == segment.across <= shelf.height
            assert max(c.along for c in segment.crosscuts) == segment.along
            assert sum(c.count for c in segment.crosscuts) > 1


def used(shelf: Shelf) -> Length:
    pieces = sum((c.along * c.count for c in shelf.crosscuts), Length(0))
    return pieces + sum((s.along * s.count for s in shelf.splits), Length(0))


@given(JOBS)
@settings(max_examples=40)
def test_a_plan_with_splits_is_shorter_or_it_is_the_one_without(wanted: list[Kind]) -> None:
    plain, plan = shortest_strips(tuple(wanted), W), split(wanted)
    assert plan is plain or plan.length < plain.length
    assert plan.bound <= plan.length == length_of(plan.shelves)


@st.composite
def layouts(draw: st.DrawFn) -> tuple[list[Kind], Length]:
    """Return the pieces of strips that are cut up with nothing left, and the length of these strips.

    The first segment of each strip is one piece, so that no strip is higher than a piece can lie.
    """
    found, length = list[Kind](), Length(0)
    for _ in range(draw(st.integers(1, 2))):
        height, width = draw(st.integers(16, 80)), 320
        length += inches(0, height, 8)
        first = True
        while width:
            along = width if width < 48 else draw(st.integers(24, width))
            along = width if width - along < 24 else along
            low = height if first else draw(st.sampled_from([height, height // 2]))
            parts = [low] if low == height else [low, height - low]
            found += [kind(f"A{len(found) + n}", 1, (along, across)) for n, across in enumerate(parts, 1)]
            width, first = width - along, False
    return found, length


@given(layouts())
@settings(max_examples=60)
def test_no_bound_exceeds_a_layout_that_leaves_nothing(layout: tuple[list[Kind], Length]) -> None:
    wanted, length = layout
    plan = split(wanted)
    assert plan.bound <= plan.length
    assert plan.length >= length
    if any(shelf.splits for shelf in plan.shelves):
        assert plan.bound <= length


def test_two_low_pieces_take_the_place_of_a_high_one() -> None:
    wanted = [kind("A1", 1, (160, 64)), kind("A2", 2, (160, 32))]
    plan = split(wanted)
    assert shortest_strips(tuple(wanted), W).length == 12
    assert (plan.length, plan.bound) == (8, 8)
    (shelf,) = plan.shelves
    assert [(s.count, [(c.piece, c.count) for c in s.crosscuts]) for s in shelf.splits] == [(1, [("A2", 2)])]


def test_nothing_is_split_where_nothing_less_is_bought_for_it() -> None:
    wanted = [kind("A1", 1, (160, 64)), kind("A2", 2, (160, 32))]
    plain = shortest_strips(tuple(wanted), W)
    assert split_strips(wanted, W, EFFORT, plain, lambda length: inches(18)) is plain


@given(JOBS, st.lists(st.integers(0, 1 << 20), min_size=4, max_size=4))
@settings(max_examples=40)
def test_a_strip_with_splits_is_worth_as_much_as_one_without(wanted: list[Kind], prices: list[int]) -> None:
    job = job_of(wanted, W)
    plain, split_ = price_strips(job, prices[: len(wanted)]), price_split(job, prices[: len(wanted)])
    # A kind that lies two ways is bounded in each of them where nothing is split, and in both where segments are
    # counted: only where no kind turns are the two comparable.
    if plain and all(len(each.positions) == 1 for each in wanted):
        assert max(p.worth for p in split_) >= max(p.worth for p in plain)


@pytest.mark.parametrize("count", [1, 7])
def test_a_stack_is_no_higher_than_its_strip(count: int) -> None:
    job = job_of([kind("A1", 1, (80, 60)), kind("A2", count, (40, 24))], W)
    for priced in price_split(job, (1000, 900)):
        assert priced.pattern.height <= priced.height
        assert priced.pattern.used <= job.width
