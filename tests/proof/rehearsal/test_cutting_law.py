"""Thousands of plans carried out on the cutting table alone: every piece is laid, within the cloth that was bought.

The table knows steps and cloth. Beside it each plan is laid flat, rectangle by rectangle, and looked at as a picture.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache

import pytest

from quarterturn.design import Direction, LongCut
from quarterturn.materials import ClothPlan, JoinedRun, Materials, StripGroup
from quarterturn.materials.shortest import shortest_strips
from quarterturn.measure import Length
from quarterturn.pieces import Bill, Grain, Piece, Purpose
from quarterturn.proof.rehearsal import Bolt, Supplies
from quarterturn.proof.rehearsal.rehearse import DOINGS
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import labels
from quarterturn.steps.cutting import cutting_steps
from tests.proof.rehearsal.cutting_jobs import Job, job
from tests.samples import ROUNDS, pattern_of

JOBS, SHARE = 2000, 250
BLOCKS = [range(first, first + SHARE) for first in range(0, JOBS, SHARE)]


@dataclass(frozen=True, slots=True)
class Laid:
    """A rectangle of cloth on the bolt: `x` across it, `y` along it."""

    label: str
    x: Length
    y: Length
    wide: Length
    high: Length


@cache
def planned(seed: int) -> tuple[Job, ClothPlan]:
    each = job(seed, most=40)
    return each, each.plan()


@cache
def sample() -> Materials:
    return pattern_of(ROUNDS).materials


def carried_out(job: Job, plan: ClothPlan) -> Table:
    """Carry the cutting steps out with what was bought, as far as the wash has left it."""
    bill = Bill((), tuple(piece for piece in job.pieces if piece.label not in plan.unplaced))
    length = plan.bought * (1 - job.fabric.shrink_along)
    bolt = Bolt(plan.usable_width, length, Direction.NONE)
    table = Table(Supplies({"A": bolt}, bolt, bolt))
    for number, draft in enumerate(cutting_steps(bill, replace(sample(), cloth=(plan,)), 4), 1):
        step = draft.numbered(number)
        DOINGS[type(step.action)](table, step, step.action)
    return table


def wanted(job: Job, plan: ClothPlan) -> dict[str, int]:
    """Return what must lie on the table: all pieces, a binding as a run, a backing as lengths."""
    found: dict[str, int] = {}
    for piece in job.pieces:
        if piece.label in plan.unplaced:
            continue
        if piece.purpose is Purpose.BACKING:
            (group,) = plan.panels
            found[labels.panel("A")] = group.panels
        elif piece.purpose is Purpose.BINDING:
            (run,) = (run for run in plan.runs if not run.crosscuts)
            found[run.label] = 1
        else:
            found[piece.label] = piece.count
    return found


def picture(plan: ClothPlan) -> Iterator[Laid]:
    """Lay a plan flat: lengths for the backing, strips one below the other, pieces side by side, rests beside them."""
    y = Length(0)
    for panels in plan.panels:
        for _ in range(panels.panels):
            yield Laid("panel", Length(0), y, plan.usable_width, panels.cut_length)
            y += panels.cut_length
    for group in plan.strips:
        for _ in range(group.strips):
            yield from strip(group, Length(0), y, plan.usable_width)
            y += group.height


def strip(group: StripGroup, x: Length, y: Length, wide: Length) -> Iterator[Laid]:
    left = x
    for cut in group.crosscuts:
        for _ in range(cut.count):
            yield Laid(cut.piece, left, y, cut.along, cut.across)
            left += cut.along
    for split in group.splits:
        for _ in range(split.count):
            down = y
            for cut in split.crosscuts:
                for _ in range(cut.count):
                    yield Laid(cut.piece, left, down, cut.along, cut.across)
                    down += cut.across
            left += split.along
    below = y
    for rest in group.rest:
        for _ in range(rest.strips // group.strips):
            yield from strip(rest, left, below, wide - (left - x))
            below += rest.height
    if not group.pieces:
        yield Laid("whole", x, y, wide, group.height)


def overlapping(rectangles: list[Laid]) -> list[tuple[Laid, Laid]]:
    """Return the pairs that share cloth: of those that begin at one height or below, by a sweep down the bolt."""
    found, open_ = [], list[Laid]()
    for one in sorted(rectangles, key=lambda each: (each.y, each.x)):
        open_ = [other for other in open_ if other.y + other.high > one.y]
        found += [
            (one, other) for other in open_ if other.x < one.x + one.wide and one.x < other.x + other.wide
        ]
        open_.append(one)
    return found


def allowed(job: Job, piece: Piece) -> set[tuple[Length, Length]]:
    """Return how a piece may lie, its size across the cloth first, by its grain and the print."""
    across, along = (piece.length, piece.width), (piece.width, piece.length)
    if piece.grain is Grain.LENGTHWISE:
        return {along}
    free = piece.grain is Grain.ANY and job.fabric.direction is Direction.NONE
    return {across, along} if free else {across}


@pytest.mark.parametrize("seeds", BLOCKS, ids=lambda seeds: f"{seeds.start}-{seeds.stop - 1}")
def test_whatever_is_wanted_every_piece_is_cut_and_nothing_else_is_left(seeds: range) -> None:
    for seed in seeds:
        each, plan = planned(seed)
        assert carried_out(each, plan).left() == wanted(each, plan), seed


@pytest.mark.parametrize("seeds", BLOCKS, ids=lambda seeds: f"{seeds.start}-{seeds.stop - 1}")
def test_nothing_overlaps_or_lies_outside_and_grain_and_print_are_kept(seeds: range) -> None:
    for seed in seeds:
        each, plan = planned(seed)
        laid = list(picture(plan))
        assert all(one.x >= 0 and one.x + one.wide <= plan.usable_width for one in laid), seed
        assert all(one.y >= 0 and one.y + one.high <= plan.cut_length for one in laid), seed
        assert overlapping(laid) == [], seed
        by_label = {piece.label: piece for piece in each.pieces}
        for one in laid:
            if one.label in by_label:
                assert (one.wide, one.high) in allowed(each, by_label[one.label]), (seed, one)


@pytest.mark.parametrize("seeds", BLOCKS, ids=lambda seeds: f"{seeds.start}-{seeds.stop - 1}")
def test_bound_length_and_hand_rule_stand_in_order_and_what_is_bought_covers_them(seeds: range) -> None:
    for seed in seeds:
        each, plan = planned(seed)
        assert plan.lower_bound <= plan.cut_length, seed
        if each.making.borders is not LongCut.LENGTHWISE:
            assert plan.cut_length <= plan.hand_rule, seed
        left = plan.bought * (1 - each.fabric.shrink_along)
        slack = max(each.making.slack, each.making.squaring) if plan.cut_length else 0
        assert left >= plan.cut_length + slack, seed


@pytest.mark.parametrize("seeds", BLOCKS, ids=lambda seeds: f"{seeds.start}-{seeds.stop - 1}")
def test_areas_of_pieces_runs_and_offcuts_add_up_to_the_cloth_cut(seeds: range) -> None:
    for seed in seeds:
        each, plan = planned(seed)
        laid = sum((one.wide * one.high for one in picture(plan)), Length(0))
        offcuts = sum((_offcut(group, plan.usable_width) for group in plan.strips), Length(0))
        assert laid + offcuts == plan.cut_length * plan.usable_width, seed
        cut = Counter({p.label: p.count for p in each.pieces if p.label not in plan.unplaced})
        whole = {p.label for p in each.pieces if p.purpose in (Purpose.BINDING, Purpose.BACKING)}
        joined = {c.piece for run in plan.runs for c in run.crosscuts}
        alone = sum(
            (p.length * p.width * cut[p.label] for p in each.pieces if p.label not in whole | joined),
            Length(0),
        )
        others = sum(
            (one.wide * one.high for one in picture(plan) if one.label in ("whole", "panel")), Length(0)
        )
        assert alone + others == laid, seed
        assert all(_fills(run) <= run.length for run in plan.runs), seed


def _offcut(group: StripGroup, wide: Length) -> Length:
    """Return what of equal strips is in no piece."""
    if not group.pieces:
        return Length(0)
    beside = group.used * group.height - sum((c.along * c.across * c.count for c in group.pieces), Length(0))
    room = (wide - group.used) * group.height
    given = sum((rest.height * rest.strips * (wide - group.used) for rest in group.rest), Length(0))
    return (
        group.strips * (beside + room)
        - given
        + sum((_offcut(rest, wide - group.used) for rest in group.rest), Length(0))
    )


def _fills(run: JoinedRun) -> Length:
    return sum((cut.along * cut.count for cut in run.crosscuts), Length(0))


def test_the_sweep_sees_what_overlaps_and_lets_neighbours_be() -> None:
    one = Laid("A1", Length(0), Length(0), Length(4), Length(4))
    assert overlapping([one, replace(one, x=Length(4)), replace(one, y=Length(4))]) == []
    assert len(overlapping([one, replace(one, x=Length(3), y=Length(3))])) == 1


def test_a_plan_is_the_same_whenever_it_is_made_and_in_whatever_order_pieces_come() -> None:
    for seed in range(150):
        each, first = planned(seed)
        shuffled = list(each.pieces)
        random.Random(seed).shuffle(shuffled)
        shortest_strips.cache_clear()
        again = replace(each, pieces=tuple(shuffled)).plan()
        assert replace(again, unplaced=()) == replace(first, unplaced=()), seed
        assert set(again.unplaced) == set(first.unplaced), seed
