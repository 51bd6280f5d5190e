"""The borders of one ring, pulled away from the top and numbered in their order of sewing; the mitred corner."""

from __future__ import annotations

from quarterturn.design import Corner
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Motion, Region, polygon, shift
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    ACCENT,
    CREASE,
    CUT,
    LABEL,
    OUTLINE,
    SMALL,
    STITCH,
    box,
    caption,
    cloth,
    line,
    wrong_side,
)
from quarterturn.publish.figures.nodes import names_in, node_marks, node_symbols
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet, Use
from quarterturn.publish.wording import length, named, section_name
from quarterturn.setting import (
    Child,
    Frame,
    PlainCloth,
    Side,
    corner_places,
    mitred_strip,
    strip_places,
    turned_in_place,
)

OUTWARD = {Side.LEFT: -1 + 0j, Side.RIGHT: 1 + 0j, Side.TOP: -1j, Side.BOTTOM: 1j}
INSIDE = Ink(fill="#f4f3f0", stroke=OUTLINE.stroke, width=OUTLINE.width)
APART = 3.6
LEAST_INSIDE = 18.0
"""Millimetres in which there is room for a name between the numbers of narrow strips."""

RAW = Ink(stroke=ACCENT, width=0.18, dash=(0.5, 0.5))
LEADER = Ink(stroke=ACCENT, width=0.12)

Size = tuple[float, float]


def border_figure(pattern: Pattern, frame: Frame, outer: Size, width: float, name: str = "top") -> Sheet:
    """Return the strips of a ring in their places, a little apart from what they are sewn to; `outer` is its size."""
    factor = (width - 2 * APART) / max(outer)
    corner = complex(APART, APART)
    side, end = float(frame.side_depth), float(frame.end_depth)
    inside = (outer[0] - 2 * side) * factor, (outer[1] - 2 * end) * factor
    at = complex(side, end) * factor + corner
    marks: list[Mark] = [box(at.real, at.imag, *inside, INSIDE)]
    children = []
    for number, (where, child, place) in enumerate(strip_places(frame, *outer), start=1):
        off = corner + OUTWARD[where] * (2.6 if number <= 2 else 3.4)
        children.append(child)
        if frame.corner is Corner.MITRED and isinstance(child.node, PlainCloth):
            marks += _mitred(pattern, child, mitred_strip(where, frame, *outer), factor, off)
        else:
            marks += _placed(pattern, child, place * factor + off, factor)
        marks += _number(pattern, child, number, (place * factor + off, factor), OUTWARD[where])
    for child, place in corner_places(frame, *outer):
        middle = place + complex(side, end) / 2 - complex(*outer) / 2
        out = complex(2.6 if middle.real > 0 else -2.6, 3.4 if middle.imag > 0 else -3.4)
        marks += _placed(pattern, child, place * factor + corner + _with_second(frame, out), factor)
        children.append(child)
    if inside[0] > LEAST_INSIDE:
        marks.append(caption(at + complex(*inside) / 2, name, LABEL))
    symbols = node_symbols(pattern, names_in(c.node for c in children), factor)
    order = ", ".join(where.value for where, _, _ in strip_places(frame, *outer))
    alt = f"{_said(pattern, children[0])} round the {name}; order of sewing: {order}."
    size = complex(*outer) * factor + 2 * corner
    return Drawing(size.real, size.imag, tuple(marks), symbols).sheet("Border", alt)


def _with_second(frame: Frame, out: complex) -> complex:
    """Return how far a corner is pulled out: with the strips sewn second, which it lies at the ends of."""
    return (
        complex(0, out.imag)
        if frame.sides_first
        else complex(out.imag * 0 + (3.4 if out.real > 0 else -3.4), 0)
    )


def _said(pattern: Pattern, child: Child) -> str:
    if isinstance(child.node, PlainCloth):
        return f"The border of {named(pattern.design, child.node.fabric)}"
    return f"The pieced border of {section_name(child.node)}"


def _placed(pattern: Pattern, child: Child, at: complex, factor: float) -> tuple[Mark, ...]:
    node = child.node
    if isinstance(node, PlainCloth):
        colour = pattern.design.fabric(node.fabric).colour
        size = float(child.width) * factor, float(child.height) * factor
        return (box(at.real, at.imag, *size, cloth(colour, OUTLINE)),)
    motion = turned_in_place(float(node.width) * factor, float(node.height) * factor, child.turn).then(
        shift(at)
    )
    return tuple(_moved(mark, motion) for mark in node_marks(pattern, node, factor))


def _moved(mark: Mark, motion: Motion) -> Mark:
    if isinstance(mark, Use):
        return Use(mark.symbol, mark.motion.then(motion))
    assert isinstance(mark, Area)
    return Area(motion.region(mark.region), mark.ink)


def _mitred(pattern: Pattern, child: Child, region: Region, factor: float, off: complex) -> tuple[Mark, ...]:
    assert isinstance(child.node, PlainCloth)
    colour = pattern.design.fabric(child.node.fabric).colour
    points = (off + segment.start * factor for path in region.paths for segment in path.segments)
    return (Area(Region((polygon(tuple(points)),)), cloth(colour, OUTLINE)),)


def _number(
    pattern: Pattern, child: Child, number: int, place: tuple[complex, float], out: complex
) -> tuple[Mark, ...]:
    at, factor = place
    wide, tall = float(child.width) * factor, float(child.height) * factor
    middle = at + complex(wide, tall) / 2
    size = min(LABEL, min(wide, tall) * 0.8)
    inside = size > 1.7
    if not isinstance(child.node, PlainCloth):
        plate = box(middle.real - 1.7, middle.imag - 1.7, 3.4, 3.4, Ink(fill="#ffffff"))
        return plate, caption(middle, str(number), LABEL, bold=True)
    ink = text_colour_on(pattern.design.fabric(child.node.fabric).colour) if inside else ACCENT
    spot = middle if inside else middle - out * 5.6
    return (caption(spot, str(number), size if inside else SMALL, bold=True, colour=ink),)


def mitre_figure(pattern: Pattern, fabric: str, side: float = 40.0) -> Sheet:
    """Return a corner being mitred: the two strips wrong side up, the line to sew on and the line to trim.

    The seams to the top lie within its raw edges, one allowance from them; its raw corner is under the strips.
    """
    seam = length(pattern.design, pattern.design.making.seam)
    colour = pattern.design.fabric(fabric).colour
    wide, corner, allowance = 13.0, complex(2.0, 7.0), 2.2
    inner, far = corner + complex(wide, wide), side
    raw = inner - complex(allowance, allowance)
    upright = polygon((corner, inner, complex(inner.real, far), complex(corner.real, far)))
    level = polygon((corner, complex(far, corner.imag), complex(far, inner.imag), inner))
    back = wrong_side(colour)
    off = complex(allowance, -allowance) / 2**0.5
    note = complex(far + 2.0, 0)
    sewn, trimmed = inner + (corner - inner) * 0.7, inner + (corner - inner) * 0.35 + off
    ink = Ink(stroke=text_colour_on(back), width=STITCH.width, dash=STITCH.dash)
    marks: tuple[Mark, ...] = (
        box(inner.real, inner.imag, far - inner.real, far - inner.imag, INSIDE),
        Area(Region((upright,)), cloth(back)),
        Area(Region((level,)), cloth(back)),
        line(corner, complex(far, corner.imag), OUTLINE),
        line(corner, complex(corner.real, far), OUTLINE),
        line(complex(raw.real, far), raw, RAW),
        line(raw, complex(far, raw.imag), RAW),
        line(inner, corner, ink),
        line(inner + off, corner + off, CUT),
        line(complex(inner.real, far), inner, CREASE),
        line(inner, complex(far, inner.imag), CREASE),
        caption(complex((inner.real + far) / 2, (inner.imag + far) / 2), "top", LABEL),
        *_noted(raw, note + 14j, "raw corner of the top"),
        *_noted(inner, note + 21j, f"stop {seam} from it"),
        *_noted(sewn, note + 2.5j, "sew the mitre on the dots"),
        *_noted(trimmed, note + 8j, "trim on the dashes"),
    )
    alt = (
        f"A corner of the border, wrong side up: the seams to the top stop {seam} from its raw corner, and the mitre "
        f"is sewn at 45° from there to the outer corner; the allowance is trimmed to {seam}."
    )
    return Drawing(far + 38.0, far, marks).sheet("Mitred corner", alt)


def _noted(at: complex, place: complex, text: str) -> tuple[Mark, ...]:
    """Return a note with a thin line that leads to what it is about."""
    dot = box(at.real - 0.35, at.imag - 0.35, 0.7, 0.7, Ink(fill=ACCENT))
    return line(place - 0.6, at, LEADER), dot, caption(place, text, SMALL, "start")
