"""Pieces of cloth cut alike, drawn once to scale: the true piece, what squaring takes off it, strips and pieces."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.materials import ClothPlan, ParcelLayout
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cloth import strip_marks
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import CREASE, OUTLINE, SMALL, box, caption, hatched, measured
from quarterturn.publish.sheet import Mark, Sheet
from quarterturn.publish.wording import layout_line, length, named

NOTE, TOP, RIGHT = 13.0, 5.0, 9.0
"""Room for the heights of strips at the left, and for the measures above and at the right."""
SQUARED = 3.4
"""The measure at the right stands beyond what squaring takes off."""
LINE = 2.9
"""Notes are no nearer to one another."""
TALLEST = 70.0


def parcel_figure(pattern: Pattern, plan: ClothPlan, layout: ParcelLayout, width: float) -> Sheet:
    """Return a layout; all those of a fabric that are drawn as wide have the same scale."""
    factor = min(_factor(plan, each, width) for each in (plan.parcels.layouts if plan.parcels else (layout,)))
    true = _as_laid(plan, layout)
    size = complex(float(true[0]), float(true[1])) * factor
    marks: list[Mark] = [
        box(NOTE, TOP, size.real, size.imag, CREASE),
        *_strips(pattern, plan, layout, factor),
    ]
    marks += _notes(pattern, layout, factor)
    marks += _sizes(pattern, layout, factor)
    drawing = Drawing(NOTE + size.real + RIGHT, TOP + size.imag, tuple(marks))
    return drawing.sheet(f"Layout {layout.label}", _described(pattern, plan, layout))


def _as_laid(plan: ClothPlan, layout: ParcelLayout) -> tuple[float, float]:
    """Return the true size of the cloth as it lies to be cut."""
    assert plan.parcels, "a layout is of pieces of cloth"
    stock = plan.parcels.stock(layout.stock)
    width, height = float(stock.width), float(stock.height)
    return (height, width) if layout.upright else (width, height)


def _factor(plan: ClothPlan, layout: ParcelLayout, width: float) -> float:
    across, down = _as_laid(plan, layout)
    return min((width - NOTE - RIGHT) / across, TALLEST / down)


def _strips(pattern: Pattern, plan: ClothPlan, layout: ParcelLayout, factor: float) -> Iterator[Mark]:
    """Return the strips from the top, and what is left below them."""
    colour = pattern.design.fabric(plan.fabric).colour
    whole, top = float(layout.length) * factor, TOP
    for group in layout.strips:
        for _ in range(group.strips):
            yield from strip_marks(group, colour, top, factor, whole, NOTE)
            top += float(group.height) * factor
    if layout.cut < layout.room:
        yield from hatched(NOTE, top, whole, float(layout.room - layout.cut) * factor)
    yield box(NOTE, TOP, whole, float(layout.room) * factor, OUTLINE)


def _notes(pattern: Pattern, layout: ParcelLayout, factor: float) -> Iterator[Mark]:
    """Return beside each group of strips how many there are of which height."""
    top, last = TOP, 0.0
    for group in layout.strips:
        height = float(group.height) * group.strips * factor
        last = max(top + height / 2, last + LINE)
        text = f"({group.strips}) {length(pattern.design, group.height)}"
        yield caption(complex(NOTE - 1.4, last), text, SMALL, "end")
        top += height


def _sizes(pattern: Pattern, layout: ParcelLayout, factor: float) -> Iterator[Mark]:
    """Measure the piece as it is squared up."""
    corner, size = complex(NOTE, TOP), complex(float(layout.length), float(layout.room)) * factor
    yield from measured(corner, corner + size.real, length(pattern.design, layout.length), -1.6j)
    right = complex(NOTE + size.real, TOP)
    yield from measured(right, right + size.imag * 1j, length(pattern.design, layout.room), SQUARED)


def _described(pattern: Pattern, plan: ClothPlan, layout: ParcelLayout) -> str:
    parts = []
    for group in layout.strips:
        pieces = (
            ", ".join(f"{cut.count} of {cut.piece}" for cut in group.crosscuts)
            or f"left whole, {group.label}"
        )
        parts.append(f"({group.strips}) strips {length(pattern.design, group.height)} high, each: {pieces}")
    return f"{named(pattern.design, plan.fabric)}, to scale. {layout_line(plan, layout)}: {'; '.join(parts)}."
