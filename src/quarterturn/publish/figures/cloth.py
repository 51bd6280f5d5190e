"""The cutting plan of one fabric, to scale across its usable width: strips stacked, pieces lettered, offcuts grey.

Where all strips would be too tall, each group of equal strips is drawn once with its count.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import Direction
from quarterturn.design.colour import text_colour_on
from quarterturn.materials import ClothPlan, PanelGroup, Split, StripGroup
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    LABEL,
    OUTLINE,
    QUIET,
    SMALL,
    SMALLEST,
    arrow,
    box,
    caption,
    cloth,
    hatched,
    line,
    measured,
)
from quarterturn.publish.sheet import Ink, Mark, Sheet
from quarterturn.publish.wording import length, named

TALLEST = 62.0
LONGEST = 120.0
"""All strips together, where some are cut along the cloth: those are drawn to a smaller scale, if need be."""
NOTE = 23.0
"""Room for the notes at the left of the strips."""
PANEL = 9.0
"""Drawn height of backing lengths, which are too long to be drawn to scale."""


@dataclass(frozen=True, slots=True)
class _Band:
    """A stretch of the drawing: so many equal strips, or lengths, drawn `drawn` times."""

    group: StripGroup | PanelGroup
    drawn: int
    height: float


def cloth_figure(pattern: Pattern, plan: ClothPlan, width: float) -> Sheet:
    """Return the cutting plan of a fabric."""
    factor = (width - NOTE - 1) / float(plan.usable_width)
    if any(group.height > plan.usable_width for group in plan.strips):
        factor = min(factor, LONGEST / sum(float(group.height) for group in plan.strips))
    bands = _bands(plan, factor)
    marks: list[Mark] = []
    top = 5.0
    for band in bands:
        marks += _notes(pattern, band, top)
        for _ in range(band.drawn):
            marks += _band(pattern, plan, band, top, factor)
            top += band.height
        top += 1.4
    right = complex(NOTE + float(plan.usable_width) * factor, 5)
    marks += measured(
        complex(NOTE, 5), right, f"{length(pattern.design, plan.usable_width)} usable width", -1.6j
    )
    marks += _print(pattern.design.fabric(plan.fabric).direction)
    return Drawing(width, top, tuple(marks)).sheet("Cutting plan", _described(pattern, plan))


def _print(direction: Direction) -> Iterator[Mark]:
    """Show which way a print with a direction runs: along the selvages, which stand upright in the plan."""
    if direction is Direction.NONE:
        return
    foot, head = complex(NOTE - 2.4, 4.9), complex(NOTE - 2.4, 0.3)
    yield caption(complex(NOTE - 4.2, 2.6), "print", SMALL, "end")
    yield from arrow(foot, head)
    if direction is Direction.TWO_WAY:
        yield from arrow(head, foot)


def _bands(plan: ClothPlan, factor: float) -> list[_Band]:
    """Draw every strip where there is room, else each group once."""
    whole = sum(float(g.height) * g.strips for g in plan.strips) * factor + PANEL * len(plan.panels)
    panels = [_Band(p, 1, PANEL) for p in plan.panels]
    strips = [_Band(g, g.strips if whole <= TALLEST else 1, float(g.height) * factor) for g in plan.strips]
    return [*panels, *strips]


def _notes(pattern: Pattern, band: _Band, top: float) -> Iterator[Mark]:
    group, design = band.group, pattern.design
    middle = top + band.height * band.drawn / 2
    right = NOTE - 1.6
    if isinstance(group, PanelGroup):
        text = f"({group.panels}) {length(design, group.cut_length)} × WOF"
        yield caption(complex(right, middle - 1.6), text, SMALL, "end")
        yield caption(complex(right, middle + 1.6), "not to scale", SMALL - 0.4, "end", colour=QUIET)
        return
    text = f"({group.strips}) {length(design, group.height)} × WOF"
    yield caption(complex(right, middle), text, SMALL, "end")


def _band(pattern: Pattern, plan: ClothPlan, band: _Band, top: float, factor: float) -> Iterator[Mark]:
    fabric = pattern.design.fabric(plan.fabric)
    colour, whole = fabric.colour, float(plan.usable_width) * factor
    ink = text_colour_on(colour)
    if isinstance(band.group, PanelGroup):
        yield box(NOTE, top, whole, band.height, cloth(colour, OUTLINE))
        yield caption(
            complex(NOTE + whole / 2, top + band.height / 2), band.group.piece, LABEL, bold=True, colour=ink
        )
        yield from _break(NOTE + whole * 0.86, top, band.height)
        return
    yield from strip_marks(band.group, colour, top, factor, whole)


def _break(x: float, top: float, height: float) -> Iterator[Mark]:
    """Return the two slanting lines that say: shortened."""
    paper = Ink(stroke="#ffffff", width=1.2)
    foot, head = complex(x - 1.5, top + height + 0.4), complex(x + 1.5, top - 0.4)
    yield line(foot, head, paper)
    yield line(foot - 0.6, head - 0.6, OUTLINE)
    yield line(foot + 0.6, head + 0.6, OUTLINE)


def strip_marks(
    group: StripGroup, colour: str, top: float, factor: float, whole: float, start: float = NOTE
) -> Iterator[Mark]:
    """Return a strip and its pieces; in what a band has left lie the strips that are cut from that."""
    height, left = float(group.height) * factor, start
    ink = text_colour_on(colour)
    if not group.pieces:
        yield box(left, top, whole, height, cloth(colour, OUTLINE))
        text = f"{group.label}, whole"
        if (size := _fit(height, whole, text)) >= SMALLEST:
            yield caption(complex(left + whole / 2, top + height / 2), text, size, colour=ink)
        return
    yield from hatched(left, top, whole, height)
    for cut in group.crosscuts:
        along, across = float(cut.along) * factor, float(cut.across) * factor
        size = _fit(across, along, cut.piece)
        for _ in range(cut.count):
            yield box(left, top, along, across, cloth(colour, OUTLINE))
            if size >= SMALLEST:
                yield caption(complex(left + along / 2, top + across / 2), cut.piece, size, colour=ink)
            left += along
    for split in group.splits:
        for _ in range(split.count):
            yield from _segment(split, colour, complex(left, top), factor)
            left += float(split.along) * factor
    below = top
    for each in group.rest:
        for _ in range(each.strips // group.strips):
            yield from strip_marks(each, colour, below, factor, start + whole - left, left)
            below += float(each.height) * factor
    yield box(start, top, whole, height, OUTLINE)


def _segment(split: Split, colour: str, corner: complex, factor: float) -> Iterator[Mark]:
    """Return the pieces of a segment, one below the other."""
    top, ink = corner.imag, text_colour_on(colour)
    for cut in split.crosscuts:
        along, across = float(cut.along) * factor, float(cut.across) * factor
        size = _fit(across, along, cut.piece)
        for _ in range(cut.count):
            yield box(corner.real, top, along, across, cloth(colour, OUTLINE))
            if size >= SMALLEST:
                middle = complex(corner.real + along / 2, top + across / 2)
                yield caption(middle, cut.piece, size, colour=ink)
            top += across


def _fit(height: float, width: float, text: str) -> float:
    """Return the size at which a text fits in a box."""
    return min(LABEL, height * 0.75, width / (0.62 * max(1, len(text))))


def _described(pattern: Pattern, plan: ClothPlan) -> str:
    parts = [f"({p.panels}) lengths for the backing" for p in plan.panels]
    for group, _ in plan.groups:
        pieces = ", ".join(f"{c.count} of {c.piece}" for c in group.pieces) or "left whole"
        height = length(pattern.design, group.height)
        parts.append(f"({group.strips}) strips {height} high, each: {pieces}")
    way = pattern.design.fabric(plan.fabric).direction
    runs = "" if way is Direction.NONE else " Its print runs up the drawing, along the selvages."
    return f"Cutting plan of {named(pattern.design, plan.fabric)}, to scale: {'; '.join(parts)}.{runs}"
