"""What shows along the sides of a sewn unit."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from quarterturn.blocks.model import Layer, Span, Unit
from quarterturn.geometry import (
    EPSILON,
    Line,
    Motion,
    Point,
    Region,
    mirror_across_vertical,
    quarter_turns,
    same_region,
    shift,
)
from quarterturn.measure import Length

Measure = Callable[[Point], float]


def turned_about_centre(unit: Unit, turn: int) -> Motion:
    """Return the motion that turns a unit within its own place: its top left corner stays that of its box."""
    width, height = float(unit.width), float(unit.height)
    turned = quarter_turns(turn, complex(width, height) / 2)
    return turned.then(shift(complex(height - width, width - height) / 2)) if turn % 2 else turned


def turned_size(unit: Unit, turn: int) -> tuple[Length, Length]:
    """Return the finished width and height of a unit that lies turned."""
    return (unit.height, unit.width) if turn % 2 else (unit.width, unit.height)


def is_own_mirror_image(unit: Unit) -> bool:
    """Tell whether a unit is its own mirror image in the diagonal from its top left corner, and so a square.

    Such a unit, mirrored in a vertical or a horizontal line, is itself in another turn.
    """
    flip = Motion(1j, 0j, mirrored=True)
    return unit.width == unit.height and all(
        same_region(flip.region(layer.region), layer.region) for layer in unit.cut_layers
    )


def mirror_turn(unit: Unit, other: Unit) -> int | None:
    """Return in which turn another unit is the mirror image, left for right, of a unit that is not turned.

    None where it is so in no turn. Of a unit that is turned t times it is the mirror image when turned t times less.
    """
    size = (unit.width, unit.height)
    flip = mirror_across_vertical(float(unit.width) / 2)
    wanted = {part: flip.region(region) for part, region in _by_part(unit).items()}
    there = _by_part(other)
    for turn in range(4):
        motion = turned_about_centre(other, turn)
        fits = turned_size(other, turn) == size and wanted.keys() == there.keys()
        if fits and all(same_region(wanted[part], motion.region(region)) for part, region in there.items()):
            return turn
    return None


def _by_part(unit: Unit) -> dict[str, Region]:
    """Return what is seen of each part, as one region."""
    parts = dict.fromkeys(layer.part for layer in unit.sewn_layers)
    return {
        part: Region(tuple(p for layer in unit.sewn_layers if layer.part == part for p in layer.region.paths))
        for part in parts
    }


def side_spans(unit: Unit, turn: int) -> dict[str, tuple[Span, ...]]:
    """Return for each side of a turned unit the stretches on which each part shows, left to right or top to bottom."""
    right, bottom = (float(side) for side in turned_size(unit, turn))
    motion = turned_about_centre(unit, turn)
    layers = [Layer(layer.part, motion.region(layer.region), layer.shape) for layer in unit.sewn_layers]
    return {
        "top": _spans(layers, lambda p: p.imag, lambda p: p.real),
        "right": _spans(layers, lambda p: p.real - right, lambda p: p.imag),
        "bottom": _spans(layers, lambda p: p.imag - bottom, lambda p: p.real),
        "left": _spans(layers, lambda p: p.real, lambda p: p.imag),
    }


def _spans(layers: Sequence[Layer], off: Measure, along: Measure) -> tuple[Span, ...]:
    """Lay the layers over one another along the line where `off` is 0, the later on top."""
    shown: list[Span] = []
    for layer in layers:
        for start, end in _touching(layer, off, along):
            shown = [rest for span in shown for rest in _uncovered(span, start, end)]
            shown.append(Span(layer.part, start, end))
    return tuple(sorted(shown, key=lambda span: span.start))


def _touching(layer: Layer, off: Measure, along: Measure) -> list[tuple[float, float]]:
    """Return the stretches of the line along which a layer has a straight edge: where it is cut by the seam."""
    found = []
    for segment in layer.region.segments():
        if isinstance(segment, Line) and max(abs(off(segment.start)), abs(off(segment.end))) < 10 * EPSILON:
            a, b = along(segment.start), along(segment.end)
            found.append((min(a, b), max(a, b)))
    return found


def _uncovered(span: Span, start: float, end: float) -> list[Span]:
    rest = [
        Span(span.part, span.start, min(span.end, start)),
        Span(span.part, max(span.start, end), span.end),
    ]
    return [s for s in rest if s.end - s.start > 10 * EPSILON]
