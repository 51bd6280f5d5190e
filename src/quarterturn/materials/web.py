"""Paper-backed fusible web, by the length or by the sheet: tracings in rows, or nested where less is bought for it."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import TYPE_CHECKING

from quarterturn.blocks import Blocks, FusedShape
from quarterturn.design import Making
from quarterturn.materials.model import WebPlan, WebRows
from quarterturn.materials.web_nesting import (
    centres_left,
    least_web,
    nest_on_sheets,
    nest_web,
    ruler_step,
    tracing_kinds,
)
from quarterturn.materials.web_staggering import stagger_rows
from quarterturn.measure import Length, Units, buy_up
from quarterturn.pieces import MasterCount, MotifCount

if TYPE_CHECKING:
    from quarterturn.materials.nesting import Shape


def plan_web(
    making: Making,
    blocks: Blocks,
    masters: Iterable[MasterCount],
    units: Units,
    motifs: Iterable[MotifCount] = (),
    *,
    quick: bool = False,
) -> WebPlan:
    """Plan a tracing for each master, spares included, and each motif; the shapes in rows, tallest first, or nested.

    Each tracing has room for the shape and its ring. Drawn lines are `making.tracing_gap` apart, so that
    rooms are apart by what of it two rings do not fill, in a row and from row to row. Rows are plain unless less is
    bought with staggered ones, and rings lie in rows unless less still is bought with some in the centres of others.
    A quick plan keeps to rows, seeks no bound, and leaves out what centres remain.
    """
    traced = _traced(blocks, masters, motifs)
    width, height = making.web_sheet or (making.web_width, None)
    rooms = {shape.name: room_of(shape, making.ring_out) for _, shape, _ in traced}
    fitting = [one for one in traced if _fits(rooms[one[1].name], width, height)]
    gap = max(Length(0), making.tracing_gap - 2 * making.ring_out)
    rows = tuple(
        web_rows(recipe, shape.name, *rooms[shape.name], count, width, gap)
        for recipe, shape, count in sorted(fitting, key=lambda one: -rooms[one[1].name][1])
    )
    placed = {group.shape for group in rows}
    unplaced = tuple(shape.name for _, shape, _ in traced if shape.name not in placed)
    kinds = tracing_kinds(rows, {shape.name: shape for _, shape, _ in traced})
    plan = WebPlan(width, rows, Length(0), Length(0), unplaced, sheet=height)
    if not rows:
        return plan
    roll = _Roll(gap, making.slack, units, quick)
    return _on_sheets(plan, kinds, roll, height) if height else _on_roll(plan, kinds, roll)


def _traced(
    blocks: Blocks, masters: Iterable[MasterCount], motifs: Iterable[MotifCount]
) -> list[tuple[str, FusedShape, int]]:
    """Return every shape with the first recipe that has it, and how often it is traced.

    A recipe and its copy for prints that stand upright share their templates.
    """
    counts: Counter[str] = Counter()
    for master in masters:
        counts[master.recipe] += master.count
    for motif in motifs:
        counts[motif.recipe] += motif.count
    traced: Counter[str] = Counter()
    for drafted in blocks.masters:
        for shape, each in drafted.templates:
            traced[shape.name] += each * counts[drafted.recipe]
    templates = blocks.templates({recipe for recipe, count in counts.items() if count})
    return [(master.recipe, shape, traced[shape.name]) for master, shape in templates]


def _fits(room: tuple[Length, Length], width: Length, height: Length | None) -> bool:
    return room[0] <= width and (height is None or room[1] <= height)


@dataclass(frozen=True, slots=True)
class _Roll:
    """What tracings are laid on, and how it is bought."""

    gap: Length
    slack: Length
    units: Units
    quick: bool

    def taken(self, plan: WebPlan, length: Length) -> WebPlan:
        """Return the plan with what its tracings take, and what is bought for that."""
        return replace(plan, used_length=length, bought=buy_up(length + self.slack, self.units))


def _on_roll(plan: WebPlan, kinds: Sequence[Shape], roll: _Roll) -> WebPlan:
    """Return the plan in plain rows, in staggered ones or nested: the plainest of those that buy least."""
    gap, step = roll.gap, ruler_step(roll.units)
    plain = roll.taken(plan, rolled_length(plan.rows))
    least = Length(0) if roll.quick else least_web(tuple(kinds), gap, plan.web_width, None)
    plain = replace(plain, plain_length=plain.used_length, bound=min(least, plain.used_length))
    found = [plain]
    rows = tuple(
        stagger_rows(group, kind, plan.web_width, step) for group, kind in zip(plan.rows, kinds, strict=True)
    )
    if rows != plan.rows:
        found.append(roll.taken(replace(plain, rows=rows), rolled_length(rows)))
    nested = None if roll.quick else nest_web(kinds, gap, plan.web_width, step)
    if nested:
        found.append(roll.taken(replace(plain, nested=nested.web), nested.web.length))
    best = min(found, key=lambda each: each.bought)
    if roll.quick:
        return best
    centres = nested.centres if nested and best.nested else centres_left(tuple(kinds), gap, step)
    return replace(best, centres=centres)


def _on_sheets(plan: WebPlan, kinds: Sequence[Shape], roll: _Roll, height: Length) -> WebPlan:
    """Return the plan in rows, each shape on sheets of its own, or with single places where fewer sheets do."""
    gap, step = roll.gap, ruler_step(roll.units)
    least = height if roll.quick else least_web(tuple(kinds), gap, plan.web_width, height) * height
    plain = tuple(
        replace(group, rows_on_sheet=int((height + gap) // (group.height + gap))) for group in plan.rows
    )
    rows = tuple(
        stagger_rows(group, kind, plan.web_width, step, height)
        for group, kind in zip(plain, kinds, strict=True)
    )
    apart, in_rows = (sum(group.sheets for group in each) * height for each in (plain, rows))
    found = replace(plan, rows=rows, used_length=in_rows, bought=in_rows, plain_length=apart, bound=least)
    if roll.quick:
        return found
    nested = nest_on_sheets(kinds, gap, plan.web_width, height, step)
    if nested is None or nested.web.length >= in_rows:
        return replace(found, centres=centres_left(tuple(kinds), gap, step))
    used = nested.web.length
    return replace(
        found, rows=plain, nested=nested.web, used_length=used, bought=used, centres=nested.centres
    )


def room_of(shape: FusedShape, ring_out: Length) -> tuple[Length, Length]:
    """Return the width and height that a tracing takes with the web left outside its line."""
    return _as_length(shape.width) + 2 * ring_out, _as_length(shape.height) + 2 * ring_out


def _as_length(value: float) -> Length:
    """Return a curve's measure as a length: a size that was given exactly comes back exactly."""
    return Fraction(value).limit_denominator(10**9)


def web_rows(
    recipe: str, shape: str, width: Length, height: Length, count: int, web_width: Length, gap: Length
) -> WebRows:
    """Lay equal rooms in rows: n rooms across take n·width + (n − 1)·gap. A room must fit the web."""
    per_row = int((web_width + gap) // (width + gap))
    return WebRows(shape, recipe, width, height, gap, per_row, math.ceil(count / per_row), count)


def rolled_length(rows: Iterable[WebRows]) -> Length:
    """Return the length of web that rows of one gap take, the gap between every two of them."""
    total, gap = Length(0), Length(0)
    for group in rows:
        total += group.length + group.gap
        gap = group.gap
    return total - gap
