"""The line weights and colours of all figures, and marks that many figures draw."""

from __future__ import annotations

from typing import Literal

from quarterturn.geometry import Line, Path, Point, Region, polygon, rectangle
from quarterturn.publish.sheet import Area, Ink, Mark, Stroke, Text

DARK, LIGHT = "#1d1d1b", "#ffffff"
ACCENT = "#a63d2f"
"""What the sewer acts on: cuts, rulers, edges to trim."""
QUIET = "#6f6f6a"


OUTLINE = Ink(stroke=DARK, width=0.25)
EDGE = Ink(stroke="#55554f", width=0.12)
"""Between two fabrics, and round every unit: light, so that colours stay what they are."""
CREASE = Ink(stroke=QUIET, width=0.2, dash=(1.2, 0.9))
CUT = Ink(stroke=ACCENT, width=0.45, dash=(2.2, 1.0))
TRIM = Ink(stroke=ACCENT, width=0.7)
STITCH = Ink(stroke=DARK, width=0.45, dash=(0.45, 0.45))
DIMENSION = Ink(stroke=QUIET, width=0.15)
OFFCUT = Ink(fill="#ededea", stroke="#b5b5b0", width=0.12)
HATCH = Ink(stroke="#b5b5b0", width=0.12)
WEB = Ink(fill="#e4ebe6", stroke="#7c8a80", width=0.15)
PAPER = Ink(fill="#ffffff", stroke="#b5b5b0", width=0.15)

SMALL, LABEL = 2.3, 2.8
"""Sizes of lettering in millimetres: 6.5 and 8 points."""
SMALLEST = 5.01 * 25.4 / 72
"""No lettering is smaller than this: 5 points."""


def wrong_side(colour: str) -> str:
    """Return a paler colour: the wrong side of a printed cloth."""
    return "#" + "".join(f"{round(255 - (255 - int(colour[i : i + 2], 16)) * 0.45):02x}" for i in (1, 3, 5))


def cloth(colour: str, edge: Ink = EDGE) -> Ink:
    """Return the ink of a piece of cloth."""
    return Ink(fill=colour, stroke=edge.stroke, width=edge.width)


def box(left: float, top: float, width: float, height: float, ink: Ink) -> Area:
    """Return an upright rectangle."""
    return Area(Region((rectangle(left, top, left + width, top + height),)), ink)


def line(start: Point, end: Point, ink: Ink) -> Stroke:
    """Return a straight line."""
    return Stroke((Line(start, end),), ink)


def outline(path: Path, ink: Ink) -> Stroke:
    """Return a closed path as a run of segments, for inks with dashes."""
    return Stroke(path.segments, ink)


def caption(
    at: Point,
    text: str,
    size: float = LABEL,
    anchor: Literal["start", "middle", "end"] = "middle",
    *,
    bold: bool = False,
    colour: str = DARK,
) -> Text:
    """Return a line of text whose letters stand with their middle height at a point."""
    return Text(at + 0.35j * size, text, size, anchor, 0.0, bold, colour)


def arrow(
    start: Point, end: Point, colour: str = DARK, width: float = 0.3, head: float = 1.5
) -> tuple[Mark, ...]:
    """Return a straight arrow."""
    way = (end - start) / abs(end - start)
    neck = end - way * head
    barb = way * 1j * head * 0.42
    tip = Area(Region((polygon((end, neck + barb, neck - barb)),)), Ink(fill=colour))
    return line(start, neck, Ink(stroke=colour, width=width)), tip


def seen_arrow(start: Point, end: Point) -> tuple[Mark, ...]:
    """Return an arrow that is seen on any cloth, light or dark: it is dark, with a light rim."""
    way = (end - start) / abs(end - start)
    rim = arrow(start - way * 0.4, end + way * 0.9, LIGHT, 1.15, 3.5)
    return *rim, *arrow(start, end, DARK, 0.45, 2.0)


def measured(start: Point, end: Point, text: str, off: Point) -> tuple[Mark, ...]:
    """Return a dimension line beside the stretch from start to end, moved by `off`, with its text beyond."""
    a, b = start + off, end + off
    tick = off / abs(off) * 0.9
    upright = abs((b - a).imag) > abs((b - a).real)
    beyond = (a + b) / 2 + off / abs(off) * (1.2 if upright else 2.1)
    anchor: Literal["start", "middle", "end"] = "middle"
    if upright:
        anchor = "start" if off.real > 0 else "end"
    ends = tuple(line(p - tick, p + tick, DIMENSION) for p in (a, b))
    return line(a, b, DIMENSION), *ends, caption(beyond, text, SMALL, anchor)


def hatched(left: float, top: float, width: float, height: float) -> tuple[Mark, ...]:
    """Return an offcut: grey, with slanting lines."""
    marks: list[Mark] = [box(left, top, width, height, OFFCUT)]
    reach = width + height
    for k in range(1, int(reach / 2.2) + 1):
        d = k * 2.2
        start = complex(left + min(d, width), top + max(0.0, d - width))
        end = complex(left + max(0.0, d - height), top + min(d, height))
        if abs(end - start) > 0.3:
            marks.append(line(start, end, HATCH))
    return tuple(marks)
