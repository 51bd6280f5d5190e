"""How a map that is laid once can be made longer or shorter inside: by the lines in it that repeat.

A ring of other units round it, or other lines at its ends, stay what they are.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from quarterturn.blocks import Blocks
from quarterturn.design import BORDER_STEP, Design, Fit, Growth, Map, StraightSet, Symmetry, fit_over
from quarterturn.measure import Length
from quarterturn.setting.fitting import outermost_of, quilt_size, why_once

T = TypeVar("T", bound=Hashable)

LONGEST = 8
"""A group of lines that repeats has so many at most: few maps are made of longer ones."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """Lines from `start` on, `period` of them, that stand `times` times one after another."""

    start: int
    period: int
    times: int

    def of(self, lines: Sequence[T], times: int) -> tuple[T, ...]:
        """Return the lines with the group so many times."""
        end = self.start + self.period * self.times
        group = lines[self.start : self.start + self.period]
        return (*lines[: self.start], *(times * tuple(group)), *lines[end:])


def stretch_of(lines: Sequence[Hashable]) -> Stretch | None:
    """Return the group of lines that repeats most, the shortest and first of equal ones; None where none repeats."""
    found = [
        Stretch(start, period, times)
        for period in range(1, min(LONGEST, len(lines) // 2) + 1)
        for start in range(len(lines) - 2 * period + 1)
        if (times := _times(lines, start, period)) > 1
    ]
    return max(found, key=lambda each: (each.times * each.period, -each.period, -each.start), default=None)


def _times(lines: Sequence[Hashable], start: int, period: int) -> int:
    group, times = lines[start : start + period], 1
    while lines[start + times * period : start + (times + 1) * period] == group:
        times += 1
    return times


@dataclass(frozen=True, slots=True)
class Stretched:
    """A fit by more or fewer of the lines that repeat, and the map that it has then."""

    fit: Fit
    cells: Map


def stretched_to(design: Design, blocks: Blocks, wanted: tuple[Length, Length]) -> Stretched | None:
    """Return the smallest map, stretched along its rows and columns, whose quilt is nowhere smaller than is wanted.

    None where the map is laid more than once, where nothing in it repeats, or where the quilt cannot grow at all.
    """
    setting = design.setting
    if not isinstance(setting, StraightSet) or why_once(design) or not _is_laid_once(setting):
        return None
    ways = stretch_of(tuple(zip(*setting.cells, strict=True))), stretch_of(setting.cells)
    if None in ways:
        return None
    across, down = ways
    assert across is not None, "just seen"
    assert down is not None, "just seen"
    here = quilt_size(design, blocks)
    more = quilt_size(_with(design, across, across.times + 1, down, down.times + 1), blocks)
    wider, higher = (
        Growth(size - way.times * (grown - size), grown - size)
        for size, grown, way in zip(here, more, (across, down), strict=True)
    )
    fit = fit_over(wanted, wider, higher, outermost_of(design), BORDER_STEP[design.units])
    grown = _with(design, across, fit.across, down, fit.down).setting
    assert isinstance(grown, StraightSet), "what is stretched stays what it is"
    return Stretched(fit, grown.cells)


def _is_laid_once(setting: StraightSet) -> bool:
    return setting.symmetry is Symmetry.SLIDE and setting.across == setting.down == 1


def _with(design: Design, across: Stretch, columns: int, down: Stretch, rows: int) -> Design:
    assert isinstance(design.setting, StraightSet), "only rows and columns are stretched"
    lines = down.of(design.setting.cells, rows)
    cells = tuple(across.of(line, columns) for line in lines)
    return replace(design, setting=replace(design.setting, cells=cells))
