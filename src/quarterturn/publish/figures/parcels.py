"""Pieces of cloth cut alike, drawn once to scale: the true piece, what squaring takes off it, strips and pieces."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.materials import ClothPlan, ParcelLayout
from quarterturn.measure import Units
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cloth import strip_marks
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import CREASE, OUTLINE, SMALL, box, caption, hatched, measured
from quarterturn.publish.sheet import Mark, Sheet, Text
from quarterturn.publish.wording import layout_line, length, named

TOP = 5.0
"""Room for the measure above."""
NOTE = {Units.INCH: 13.0, Units.METRIC: 17.0}
"""Room for the heights of strips at the left."""
RIGHT = {Units.INCH: 11.0, Units.METRIC: 15.0}
"""Room for the measure at the right."""
SQUARED = 3.4
"""The measure at the right stands beyond what squaring takes off."""
LINE = 2.9
"""Notes are no nearer to one another."""
TALLEST = 70.0


@dataclass(frozen=True, slots=True)
class _Frame:
    """Where a layout is drawn: where its left edge is, and millimetres to the inch."""

    left: float
    factor: float


def parcel_figure(pattern: Pattern, plan: ClothPlan, layout: ParcelLayout, width: float) -> Sheet:
    """Return a layout; all those of a fabric that are drawn as wide have the same scale."""
    units = pattern.design.units
    room = width - NOTE[units] - RIGHT[units]
    frame = _Frame(NOTE[units], min(_factor(plan, each, room) for each in _layouts(plan)))
    across, down = (side * frame.factor for side in _as_laid(plan, layout))
    notes = list(_notes(pattern, layout, frame))
    marks: list[Mark] = [box(frame.left, TOP, across, down, CREASE)]
    marks += [*_strips(pattern, plan, layout, frame), *notes, *_sizes(pattern, layout, frame)]
    low = max(note.at.imag for note in notes) + LINE / 2
    drawing = Drawing(frame.left + across + RIGHT[units], max(TOP + down, low), tuple(marks))
    return drawing.sheet(f"Layout {layout.label}", _described(pattern, plan, layout))


def _layouts(plan: ClothPlan) -> tuple[ParcelLayout, ...]:
    assert plan.parcels, "the fabric is there in pieces"
    return plan.parcels.layouts


def _as_laid(plan: ClothPlan, layout: ParcelLayout) -> tuple[float, float]:
    """Return the true size of the cloth as it lies to be cut."""
    assert plan.parcels, "a layout is of pieces of cloth"
    stock = plan.parcels.stock(layout.stock)
    width, height = float(stock.width), float(stock.height)
    return (height, width) if layout.upright else (width, height)


def _factor(plan: ClothPlan, layout: ParcelLayout, room: float) -> float:
    across, down = _as_laid(plan, layout)
    return min(room / across, TALLEST / down)


def _strips(pattern: Pattern, plan: ClothPlan, layout: ParcelLayout, frame: _Frame) -> Iterator[Mark]:
    """Return the strips from the top, and what is left below them."""
    colour = pattern.design.fabric(plan.fabric).colour
    whole, top = float(layout.length) * frame.factor, TOP
    for group in layout.strips:
        for _ in range(group.strips):
            yield from strip_marks(group, colour, top, frame.factor, whole, frame.left)
            top += float(group.height) * frame.factor
    if layout.cut < layout.room:
        yield from hatched(frame.left, top, whole, float(layout.room - layout.cut) * frame.factor)
    yield box(frame.left, TOP, whole, float(layout.room) * frame.factor, OUTLINE)


def _notes(pattern: Pattern, layout: ParcelLayout, frame: _Frame) -> Iterator[Text]:
    """Return beside each group of strips how many there are of which height."""
    top, last = TOP, 0.0
    for group in layout.strips:
        height = float(group.height) * group.strips * frame.factor
        last = max(top + height / 2, last + LINE)
        text = f"({group.strips}) {length(pattern.design, group.height)}"
        yield caption(complex(frame.left - 1.4, last), text, SMALL, "end")
        top += height


def _sizes(pattern: Pattern, layout: ParcelLayout, frame: _Frame) -> Iterator[Mark]:
    """Measure the piece as it is squared up."""
    corner, size = complex(frame.left, TOP), complex(float(layout.length), float(layout.room)) * frame.factor
    yield from measured(corner, corner + size.real, length(pattern.design, layout.length), -1.6j)
    right = complex(frame.left + size.real, TOP)
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
