"""What meets at each seam between two units.

On either side of a seam the fabrics change at certain places. Where both sides change at one place the edges
match; where they change a little apart there is a step; where one side changes alone, its edge ends there.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Sequence
from functools import cache

from quarterturn.blocks import Blocks, Span, side_spans, turned_size
from quarterturn.design import Design
from quarterturn.setting.model import Join, JoinMark, Meeting, PlacedUnit, Side

MATCH_WITHIN = 1 / 32
"""Edges nearer than this, in inches, match (trade check 6)."""

STEP_WITHIN = 0.25
"""Edges nearer than this share of the seam's length are meant to meet, and make a step."""

Change = tuple[float, str, str]
"""A place along a side and the fabrics before and behind it."""


def find_joins(
    design: Design, blocks: Blocks, units: tuple[PlacedUnit, ...], columns: int
) -> tuple[Join, ...]:
    """Return the joins of all units, row by row, each unit's right one before its lower one."""

    @cache
    def changes(name: str, turn: int, side: Side) -> tuple[Change, ...]:
        spans = side_spans(blocks.unit(design, name), turn)[side.value]
        return _changes(spans, lambda part: design.cloth(name, part))

    @cache
    def marks(first: tuple[str, int], second: tuple[str, int], side: Side) -> tuple[JoinMark, ...]:
        width, height = turned_size(blocks.unit(design, first[0]), first[1])
        length = float(height if side is Side.RIGHT else width)
        facing = Side.LEFT if side is Side.RIGHT else Side.TOP
        return _meet(changes(*first, side), changes(*second, facing), length)

    joins = []
    for index, unit in enumerate(units):
        here = (unit.name, unit.turn)
        if unit.column + 1 < columns:
            right = units[index + 1]
            found = marks(here, (right.name, right.turn), Side.RIGHT)
            joins.append(Join(unit.row, unit.column, Side.RIGHT, found))
        if index + columns < len(units):
            below = units[index + columns]
            found = marks(here, (below.name, below.turn), Side.BOTTOM)
            joins.append(Join(unit.row, unit.column, Side.BOTTOM, found))
    return tuple(joins)


def _changes(spans: tuple[Span, ...], cloth: Callable[[str], str]) -> tuple[Change, ...]:
    pairs = itertools.pairwise((span.start, cloth(span.part)) for span in spans)
    return tuple((start, before, behind) for (_, before), (start, behind) in pairs if before != behind)


def _meet(first: tuple[Change, ...], second: tuple[Change, ...], length: float) -> tuple[JoinMark, ...]:
    """Mark what the changes of two sides meet; what stays alone ends at the seam."""
    near, far = [c[0] for c in first], [c[0] for c in second]
    pairs = pair_up(near, far, length)
    marks = [JoinMark((near[i] + far[j]) / 2, meeting_at(distance), distance) for i, j, distance in pairs]
    paired_near, paired_far = {i for i, _, _ in pairs}, {j for _, j, _ in pairs}
    alone = [at for i, at in enumerate(near) if i not in paired_near]
    alone += [at for j, at in enumerate(far) if j not in paired_far]
    marks += [JoinMark(at, Meeting.END, 0.0) for at in alone]
    return tuple(sorted(marks, key=lambda mark: mark.at))


def meeting_at(distance: float) -> Meeting:
    """Return what two edges make that are paired at this distance."""
    return Meeting.MATCH if distance <= MATCH_WITHIN else Meeting.STEP


def pair_up(
    first: Sequence[float], second: Sequence[float], length: float
) -> tuple[tuple[int, int, float], ...]:
    """Pair places on either side of a seam of this length, the nearest first, each once.

    Returns the number of each of the two, and how far apart they are.
    """
    pairs = sorted((abs(a - b), i, j) for i, a in enumerate(first) for j, b in enumerate(second))
    taken_first: set[int] = set()
    taken_second: set[int] = set()
    found = []
    for distance, i, j in pairs:
        if distance > STEP_WITHIN * length or i in taken_first or j in taken_second:
            continue
        taken_first.add(i)
        taken_second.add(j)
        found.append((i, j, distance))
    return tuple(found)
