"""Stagger rows of equal tracings, so that they reach into each other: told by rule, for any number of them."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from quarterturn.geometry import Region, as_polygon, path_bounds, quarter_turns
from quarterturn.materials.model import WebRows
from quarterturn.materials.staggered import Stagger
from quarterturn.measure import Length

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

    from quarterturn.materials.nesting import Shape

DRAWN_IN = 1e-4
"""Outlines are drawn in by this, in inches, so that those which may touch are told from those which overlap."""

COARSE = 1e-3
"""Chords stand for curves within this, in inches, while rules are sought; the one chosen is checked finely."""

TRIES = 8
"""How many rules, the best first, are checked."""

SHOWN = 5
"""Rows, in each of which some stand for all, that a rule is checked with."""


def stagger_rows(
    rows: WebRows, kind: Shape, web_width: Length, step: Length, sheet: Length | None = None
) -> WebRows:
    """Return the rows staggered where they are shorter for it, or more fit a sheet; else as they are."""
    stagger = _best(kind, rows.count, rows.gap, web_width, step, sheet)
    if stagger is None:
        return rows
    if sheet is None:
        length = _length(kind, stagger, rows.count, step)
        if length >= rows.length:
            return rows
        return replace(
            rows, per_row=stagger.odd, rows=stagger.rows(rows.count), stagger=stagger, staggered_length=length
        )
    on_sheet = _rows_within(kind, stagger, sheet)
    found = replace(
        rows, per_row=stagger.odd, rows=stagger.rows(rows.count), rows_on_sheet=on_sheet, stagger=stagger
    )
    return found if found.sheets < rows.sheets else rows


@lru_cache(maxsize=256)
def _best(
    kind: Shape, count: int, gap: Length, width: Length, step: Length, sheet: Length | None
) -> Stagger | None:
    """Return the rule by which the rows are shortest, or by which most fit a sheet; the plainest of equals."""
    rules = list(_rules(kind, gap, width, step))
    if sheet is None:
        rules.sort(key=lambda rule: (_length(kind, rule, count, step), rule.flipped, rule.quarter, rule.odd))
    else:
        rules.sort(key=lambda rule: (-_on_sheet(kind, rule, sheet), rule.flipped, rule.quarter, rule.odd))
    tried = (each for rule in rules[:TRIES] for each in (rule, _wider(rule, step)))
    return next((rule for rule in tried if _is_sound(kind, rule, gap, width)), None)


def _wider(rule: Stagger, step: Length) -> Stagger:
    """Return the rule with its rows a step further apart."""
    return replace(rule, down=rule.down + step, back=rule.back + step)


def _rules(kind: Shape, gap: Length, width: Length, step: Length) -> Iterator[Stagger]:
    for quarter in (False, True):
        for flipped in (False, True):
            pair = _Pair.of(kind, quarter, flipped, float(gap))
            if pair is not None:
                yield from pair.rules(width, step)


@dataclass(frozen=True, slots=True)
class _Pair:
    """A shape as it lies in odd rows, and in even ones."""

    odd: BaseGeometry
    even: BaseGeometry
    gap: float
    quarter: bool
    flipped: bool

    @classmethod
    def of(cls, kind: Shape, quarter: bool, flipped: bool, gap: float) -> _Pair | None:
        """Return the pair; None where the shape, turned so, looks the same as unturned."""
        from quarterturn.geometry import same_outline

        turned = [quarter_turns(int(quarter)).path(kind.outline)]
        turned.append(quarter_turns(2 if flipped else 0).path(turned[0]))
        if (flipped and same_outline(turned[0], turned[1])) or (
            quarter and same_outline(kind.outline, turned[0])
        ):
            return None
        odd, even = (
            as_polygon(Region((path,)), COARSE).simplify(COARSE).buffer(-DRAWN_IN) for path in turned
        )
        return cls(odd, even, gap, quarter, flipped)

    def rules(self, width: Length, step: Length) -> Iterator[Stagger]:
        """Return a rule for each number of columns, odd rows in the odd ones and even rows in the even ones."""
        left, top, right, _ = (float(side) for side in self.odd.bounds)
        wide, across = right - left + 2 * DRAWN_IN, float(width)
        first = _up(-left + DRAWN_IN, step)
        most = 2 * math.floor((across + self.gap + 1e-9) / (wide + self.gap)) + 1
        start = _up(-top + DRAWN_IN, step)
        both = max(self._apart(one, one, (0.0,), step) for one in (self.odd, self.even))
        for columns in range(2, most + 1):
            last = float((self.odd if columns % 2 else self.even).bounds[2]) + DRAWN_IN
            between = math.floor((across - float(first) - last) / (columns - 1) / float(step) + 1e-6) * step
            even_left = float(first + between + self.even.bounds[0]) - DRAWN_IN
            if (
                wide + self.gap <= 2 * float(between) + 1e-6
                and float(between) < wide + self.gap + 1
                and even_left > -1e-6
            ):
                yield self._rule(columns, first, between, start, both, step)

    def _rule(
        self, columns: int, first: Length, between: Length, top: Length, both: Length, step: Length
    ) -> Stagger:
        """Return a rule with rows as near as they may be. `both` is how far equal ones must lie below each other."""
        shifts = (float(between), -float(between))
        down = self._apart(self.odd, self.even, shifts, step)
        back = self._apart(self.even, self.odd, shifts, step) if self.flipped else down
        if self.flipped:
            back = max(back, both - down)
        else:
            down = back = max(down, _up(float(both) / 2, step))
        return Stagger(
            odd=(columns + 1) // 2, even=columns // 2, first=first, second=first + between, pitch=2 * between,
            top=top, down=down, back=back, quarter=self.quarter, flipped=self.flipped,
        )  # fmt: skip

    def _apart(
        self, one: BaseGeometry, other: BaseGeometry, shifts: tuple[float, ...], step: Length
    ) -> Length:
        """Return the fewest steps, by halving, that the other must lie further along to keep the gap."""
        low, high = (
            0,
            math.ceil((one.bounds[3] - other.bounds[1] + self.gap + 2 * DRAWN_IN) / float(step) - 1e-6),
        )
        while low < high:
            middle = (low + high) // 2
            if self._is_apart(one, other, shifts, middle * float(step)):
                high = middle
            else:
                low = middle + 1
        return low * step

    def _is_apart(
        self, one: BaseGeometry, other: BaseGeometry, shifts: tuple[float, ...], along: float
    ) -> bool:
        import shapely
        from shapely.affinity import translate

        shapely.prepare(one)
        near = (
            shapely.dwithin(one, translate(other, across, along), self.gap + DRAWN_IN) for across in shifts
        )
        return not any(near)


def _is_sound(kind: Shape, rule: Stagger, gap: Length, width: Length) -> bool:
    """Tell whether the first and last of a few rows lie on the web, each a gap from its neighbours."""
    from quarterturn.materials.nesting import Checker, Place

    places = [Place(kind.name, motion) for motion in rule.motions(_count(rule, SHOWN))]
    return not Checker([kind], float(gap)).faults(places, float(width), math.inf)


def _count(rule: Stagger, rows: int) -> int:
    """Return how many tracings full rows hold."""
    return -(-rows // 2) * rule.odd + rows // 2 * rule.even


def _length(kind: Shape, rule: Stagger, count: int, step: Length) -> Length:
    """Return what rows take along the web, up to a step."""
    last = rule.rows(count) - 1
    return max(_bottom(kind, rule, row, step) for row in range(max(0, last - 1), last + 1))


def _bottom(kind: Shape, rule: Stagger, row: int, step: Length) -> Length:
    turns = int(rule.quarter) + (2 if rule.flipped and row % 2 else 0)
    low = path_bounds(quarter_turns(turns).path(kind.outline)).bottom
    return rule.along(row) + _up(low, step)


def _rows_within(kind: Shape, rule: Stagger, sheet: Length) -> int:
    """Return how many rows lie on a sheet."""
    rows = 0
    while _bottom(kind, rule, rows, Length(1, 10**6)) <= sheet:
        rows += 1
    return rows


def _on_sheet(kind: Shape, rule: Stagger, sheet: Length) -> int:
    return _count(rule, _rows_within(kind, rule, sheet))


def _up(value: float, step: Length) -> Length:
    return math.ceil(value / float(step) - 1e-6) * step
