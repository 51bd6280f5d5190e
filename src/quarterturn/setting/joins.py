"""What meets at each seam between two units.

On either side of a seam the fabrics change at certain places. Where both sides change at one place the edges
match; where they change a little apart there is a step; where one side changes alone, its edge ends there.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator, Sequence
from functools import cache, partial

from quarterturn.blocks import Blocks, Span, Unit, side_spans
from quarterturn.design import Design
from quarterturn.setting.model import Join, JoinMark, Meeting, PlacedUnit, Side
from quarterturn.setting.neighbours import Neighbours

MATCH_WITHIN = 1 / 32
"""Edges nearer than this, in inches, match (trade check 6)."""

STEP_WITHIN = 0.25
"""Edges nearer than this share of the seam's length are meant to meet, and make a step."""

Change = tuple[float, str, str]
"""A place along a side and the fabrics before and behind it."""

Turned = tuple[str, int]
"""The name of a unit, and its turn."""


class Seams:
    """What any two units make of their seam, each pair worked out once."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self._design, self._blocks = design, blocks
        self.marks = cache(self._marks)
        self._changes_at = cache(self._changes_of)

    def _marks(
        self, first: Turned, side: Side, second: Turned, facing: Side, flipped: bool
    ) -> tuple[JoinMark, ...]:
        """Return what meets where the `facing` side of the second unit is sewn to a side of the first.

        Marks are measured from the left or top end of the first one's side, which is the other end of the second one's
        side where that is flipped.
        """
        length = side_length(self._blocks.unit(self._design, first[0]), first[1], side)
        far = self._changes_at(second, facing)
        if flipped:
            far = tuple((length - at, behind, before) for at, before, behind in reversed(far))
        return _meet(self._changes_at(first, side), far, length)

    def _changes_of(self, unit: Turned, side: Side) -> tuple[Change, ...]:
        name, turn = unit
        spans = side_spans(self._blocks.unit(self._design, name), turn)[side.value]
        return _changes(spans, partial(self._design.cloth, name))


def side_length(unit: Unit, turn: int, side: Side) -> float:
    """Return the finished length of a side of a turned unit."""
    level = side in (Side.TOP, Side.BOTTOM)
    return float(unit.width if level == (turn % 2 == 0) else unit.height)


def find_joins(seams: Seams, units: Sequence[PlacedUnit], neighbours: Neighbours) -> tuple[Join, ...]:
    """Return the joins of all units, each told with the earlier of the two: its right one before its lower one."""
    return tuple(_joins(seams, units, neighbours))


def _joins(seams: Seams, units: Sequence[PlacedUnit], neighbours: Neighbours) -> Iterator[Join]:
    turned = [(unit.name, unit.turn) for unit in units]
    for index, here in enumerate(turned):
        for side, beside in neighbours[index].items():
            if beside.unit > index:
                marks = seams.marks(here, side, turned[beside.unit], beside.side, beside.flipped)
                yield Join(index, beside.unit, side, marks)


def _changes(spans: tuple[Span, ...], cloth: Callable[[str], str]) -> tuple[Change, ...]:
    told = [(span.start, cloth(span.part)) for span in spans]
    return tuple(
        (at, before, after) for (_, before), (at, after) in itertools.pairwise(told) if before != after
    )


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
