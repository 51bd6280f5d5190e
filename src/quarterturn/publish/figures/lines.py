"""Pairs and rows of units as sewn, with their pressing arrows."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from quarterturn.geometry import Point
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import cell_size, code_of, laid, sewn_symbols, unit_parts
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, QUIET, SMALL, SMALLEST, arrow, caption
from quarterturn.publish.sheet import Mark, Sheet
from quarterturn.publish.wording import placed_name
from quarterturn.setting import Side
from quarterturn.steps import Placed, Press, SewLine, Step, Towards


def pair_figure(pattern: Pattern, step: Step, cell: float = 11.0) -> Sheet:
    """Return a pair of units with their names below, and the pressing arrow above the seam."""
    assert isinstance(step.action, SewLine)
    parts, top, left = step.action.parts, 3.4, 0.0
    marks: list[Mark] = []
    sizes = [cell_size(pattern, code_of(part), part.turn, cell) for part in parts]
    for part, size in zip(parts, sizes, strict=True):
        at = complex(left, top)
        marks.append(laid(pattern, code_of(part), part.turn, at, cell))
        marks.append(caption(at + complex(size.real / 2, size.imag + 2.0), placed_name(part), SMALL))
        left += size.real
    marks += pressing(step.action.press, complex(sizes[0].real, 1.4))
    names = " and ".join(placed_name(part) for part in parts)
    label = step.makes[0].label
    alt = f"{label.capitalize()}: units {names} side by side{_said(step.action.press)}."
    symbols = sewn_symbols(pattern, sorted({code_of(p) for p in parts}), cell)
    deep = max(size.imag for size in sizes)
    return Drawing(left, top + deep + 3.6, tuple(marks), symbols).sheet(label, alt)


def pressing(press: Press, seam: Point, reach: float = 2.6) -> tuple[Mark, ...]:
    """Return the arrow that shows to which side a seam is pressed; a seam pressed open has one each way.

    Where it goes is said in words if it is no one side.
    """
    if isinstance(press, Towards):
        return ()
    if press is Side.RIGHT:
        return arrow(seam - reach, seam + reach, ACCENT)
    if press is Side.LEFT:
        return arrow(seam + reach, seam - reach, ACCENT)
    return (*arrow(seam, seam - reach, ACCENT), *arrow(seam, seam + reach, ACCENT))


def _said(press: Press) -> str:
    return f", the seam pressed to the {press.value}" if press else ", the seam pressed open"


def row_figure(pattern: Pattern, step: Step, lines: Mapping[str, Sequence[Placed]], width: float) -> Sheet:
    """Return a row, its pairs a little apart and named below, with the pressing arrow at its end."""
    assert isinstance(step.action, SewLine)
    parts = step.action.parts
    units = unit_parts(parts, lines)
    gap, end = 0.8, 7.0
    share = sum(cell_size(pattern, code_of(u), u.turn, 1.0).real for u in units)
    cell = min(9.0, (width - 2 - end - gap * (len(parts) - 1)) / share)
    deep = max(cell_size(pattern, code_of(u), u.turn, cell).imag for u in units)
    marks: list[Mark] = []
    left = 0.0
    for part in parts:
        start = left
        for u in unit_parts((part,), lines):
            marks.append(laid(pattern, code_of(u), u.turn, complex(left, 0), cell))
            left += cell_size(pattern, code_of(u), u.turn, cell).real
        middle = complex((start + left) / 2, deep + 1.7)
        marks.append(caption(middle, _short(part), SMALL if cell > 3 else SMALLEST, colour=QUIET))
        left += gap
    marks += pressing(step.action.press, complex(left + 3.4, deep / 2))
    label = step.makes[0].label
    alt = (
        f"{label.capitalize()}, from left to right: {', '.join(placed_name(u) for u in units)}"
        f"{_said(step.action.press).replace('the seam', 'its seams')}."
    )
    symbols = sewn_symbols(pattern, sorted({code_of(u) for u in units}), cell)
    return Drawing(left + end, deep + 3.4, tuple(marks), symbols).sheet(label, alt)


def _short(part: Placed) -> str:
    return placed_name(part).removeprefix("pair ")
