"""Paper-backed fusible web: tracings in rows across its width, or nested where less web is bought for it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import replace
from fractions import Fraction

from quarterturn.blocks import Blocks, FusedShape
from quarterturn.design import Making
from quarterturn.materials.model import WebPlan, WebRows
from quarterturn.materials.web_nesting import nest_web
from quarterturn.measure import Length, Units, buy_up
from quarterturn.pieces import MasterCount, MotifCount


def plan_web(
    making: Making,
    blocks: Blocks,
    masters: Iterable[MasterCount],
    units: Units,
    motifs: Iterable[MotifCount] = (),
) -> WebPlan:
    """Plan a tracing for each master, spares included, and each motif; the shapes in rows, tallest first, or nested.

    Each tracing has room for the shape and its ring. Drawn lines are `making.tracing_gap` apart, so that
    rooms are apart by what of it two rings do not fill, in a row and from row to row.
    """
    counts: Counter[str] = Counter()
    for master in masters:
        counts[master.recipe] += master.count
    for motif in motifs:
        counts[motif.recipe] += motif.count
    traced = [
        (master.recipe, shape, each * counts[master.recipe])
        for master in blocks.masters
        if counts[master.recipe]
        for shape, each in master.templates
    ]
    rooms = {shape.name: room_of(shape, making.ring_out) for _, shape, _ in traced}
    fitting = [one for one in traced if rooms[one[1].name][0] <= making.web_width]
    gap = max(Length(0), making.tracing_gap - 2 * making.ring_out)
    rows = tuple(
        web_rows(recipe, shape.name, *rooms[shape.name], count, making.web_width, gap)
        for recipe, shape, count in sorted(fitting, key=lambda one: -rooms[one[1].name][1])
    )
    placed = {group.shape for group in rows}
    unplaced = tuple(shape.name for _, shape, _ in traced if shape.name not in placed)
    used, bought = _taken(rolled_length(rows), making, units)
    plan = WebPlan(making.web_width, rows, used, bought, unplaced)
    return _nested_if_shorter(plan, {shape.name: shape for _, shape, _ in traced}, making, units)


def _taken(used: Length, making: Making, units: Units) -> tuple[Length, Length]:
    """Return the length that tracings take, and what is bought for it."""
    return used, buy_up(used + making.slack, units) if used else used


def _nested_if_shorter(
    plan: WebPlan, shapes: Mapping[str, FusedShape], making: Making, units: Units
) -> WebPlan:
    """Return the plan with rings in the centres of others where less web is bought for it; else as it is."""
    nested = nest_web(plan.rows, shapes, plan.web_width, plan.used_length, units)
    if nested is None:
        return plan
    used, bought = _taken(nested.length, making, units)
    return replace(plan, used_length=used, bought=bought, nested=nested) if bought < plan.bought else plan


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
    return WebRows(shape, recipe, width, height, gap, per_row, -(-count // per_row), count)


def rolled_length(rows: Iterable[WebRows]) -> Length:
    """Return the length of web that rows of one gap take, the gap between every two of them."""
    total, gap = Length(0), Length(0)
    for group in rows:
        total += group.rows * (group.height + group.gap)
        gap = group.gap
    return total - gap
