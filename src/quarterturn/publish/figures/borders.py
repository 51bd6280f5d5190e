"""The borders of one ring, pulled away from the top and numbered in their order of sewing."""

from __future__ import annotations

from collections.abc import Sequence

from quarterturn.design.colour import text_colour_on
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import ACCENT, LABEL, OUTLINE, SMALL, box, caption, cloth
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.publish.wording import named
from quarterturn.setting import BorderStrip, Side
from quarterturn.steps import Step

OUTWARD = {Side.LEFT: -1 + 0j, Side.RIGHT: 1 + 0j, Side.TOP: -1j, Side.BOTTOM: 1j}
INSIDE = Ink(fill="#f4f3f0", stroke=OUTLINE.stroke, width=OUTLINE.width)


def border_figure(
    pattern: Pattern, steps: Sequence[Step], strips: Sequence[BorderStrip], width: float
) -> Sheet:
    """Return the strips of a ring in their places, a little apart from the top; `steps` sew them in that order."""
    left, top = min(s.left for s in strips), min(s.top for s in strips)
    across = max(s.left + s.width for s in strips) - left
    apart = 3.6
    factor = (width - 2 * apart) / float(max(across, max(s.top + s.height for s in strips) - top))
    inner = _inner(strips)
    marks: list[Mark] = [
        _drawn(inner, complex(float(left), float(top)), factor, complex(apart, apart), INSIDE)
    ]
    for number, (step, strip) in enumerate(zip(steps, strips, strict=True), start=1):
        marks += _strip(pattern, step, strip, number, (complex(float(left), float(top)), factor, apart))
    middle = complex(float(inner[0] + inner[2] / 2 - left), float(inner[1] + inner[3] / 2 - top)) * factor
    marks.append(caption(middle + complex(apart, apart), "top", LABEL))
    fabric = strips[0].fabric
    order = ", ".join(strip.side.value for strip in strips)
    alt = f"The border of {named(pattern.design, fabric)} round the top; order of sewing: {order}."
    height = float(max(s.top + s.height for s in strips) - top) * factor + 2 * apart
    return Drawing(float(across) * factor + 2 * apart, height, tuple(marks)).sheet("Border", alt)


def _inner(strips: Sequence[BorderStrip]) -> tuple[float, float, float, float]:
    """Return left, top, width and height of what the ring encloses."""
    by_side = {strip.side: strip for strip in strips}
    left = by_side[Side.LEFT].left + by_side[Side.LEFT].width
    top = by_side[Side.TOP].top + by_side[Side.TOP].height
    return (
        float(left),
        float(top),
        float(by_side[Side.RIGHT].left - left),
        float(by_side[Side.BOTTOM].top - top),
    )


def _drawn(
    where: tuple[float, float, float, float], corner: complex, factor: float, off: complex, ink: Ink
) -> Area:
    at = (complex(where[0], where[1]) - corner) * factor + off
    return box(at.real, at.imag, where[2] * factor, where[3] * factor, ink)


def _strip(
    pattern: Pattern, step: Step, strip: BorderStrip, number: int, place: tuple[complex, float, float]
) -> list[Mark]:
    corner, factor, apart = place
    colour = pattern.design.fabric(strip.fabric).colour
    out = OUTWARD[strip.side]
    off = complex(apart, apart) + out * (2.6 if number <= 2 else 3.4)
    where = (float(strip.left), float(strip.top), float(strip.width), float(strip.height))
    middle = (complex(where[0] + where[2] / 2, where[1] + where[3] / 2) - corner) * factor + off
    label = f"{number}"
    size = min(LABEL, float(strip.depth) * factor * 0.8)
    inside = size > 1.7
    ink = text_colour_on(colour) if inside else ACCENT
    marks: list[Mark] = [_drawn(where, corner, factor, off, cloth(colour, OUTLINE))]
    at = middle if inside else middle - out * 5.6
    marks.append(caption(at, label, size if inside else SMALL, bold=True, colour=ink))
    return marks
