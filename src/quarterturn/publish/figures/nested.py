"""The web with each tracing at its place, to scale: a roll with its cut end at the left, sheets upright.

A roll bears a grid that its places are read off, and names its edges: its left edge lies below in the figure.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from quarterturn.geometry import (
    Motion,
    Point,
    Region,
    disc,
    flatten_path,
    quarter_turns,
    region_bounds,
    shift,
)
from quarterturn.materials import TracedPlace
from quarterturn.measure import Length, Units, inches, mm
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    DARK,
    LIGHT,
    OUTLINE,
    SMALL,
    WEB,
    box,
    caption,
    line,
    measured,
    outline,
)
from quarterturn.publish.figures.shapes import PAPER
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet, Text
from quarterturn.publish.wording import length, rectangle
from quarterturn.steps import TraceNested, Tracing

PAGE = 48.0
"""Of a longer web, so many inches are shown in one figure, and what lies over their end."""

SIDE = quarter_turns(-1)
"""Lays the web on its side."""

COARSE = 0.01

LEFT, RIGHT, BELOW = 12.0, 6.0, 7.5
"""Room beside a roll, in millimetres, for its width and the names of its edges, and for the numbers of its grid."""

GRID = Ink(stroke="#dcdad3", width=0.1)
NUMBERED = Ink(stroke="#bdbab1", width=0.15)

GRIDS: Mapping[Units, tuple[Length, int]] = {Units.INCH: (inches(1), 6), Units.METRIC: (mm(50), 4)}
"""How far the lines of the grid are apart, and of how many one bears a number."""


@dataclass(frozen=True, slots=True)
class _Shown:
    """A tracing in a figure: its number, and how it lies there, in inches; whether another lies in its centre."""

    number: int
    tracing: Tracing
    motion: Motion
    holds: bool

    @property
    def ends(self) -> tuple[float, float]:
        box = region_bounds(self.motion.region(self.tracing.ring_out))
        return box.left, box.right


def nested_figures(pattern: Pattern, action: TraceNested, width: float = 160.0) -> Iterator[Sheet]:
    """Return the web with its tracings: sheet by sheet, or in as many figures as its length takes, each ring whole."""
    if pattern.materials.web.sheet:
        yield from _sheets(pattern, action)
        return
    pages = _pages(action)
    factor = (width - LEFT - RIGHT) / max(end - start for start, end in map(_stretch, pages))
    for page in pages:
        yield _figure(pattern, page, factor)


def _pages(action: TraceNested) -> list[list[_Shown]]:
    """Return the tracings figure by figure, those with the one in whose centre they lie."""
    drawn = {tracing.shape: tracing for tracing in action.tracings}
    holding = {place.within for place in action.places}
    pages: dict[int, list[_Shown]] = {}
    for number, place in enumerate(action.places):
        shown = _Shown(number + 1, drawn[place.shape], place.motion.then(SIDE), number in holding)
        pages.setdefault(int(_outermost(action, place).middle.imag // PAGE), []).append(shown)
    return [pages[key] for key in sorted(pages)]


def _sheets(pattern: Pattern, action: TraceNested, width: float = 50.0) -> Iterator[Sheet]:
    """Return each sheet with its tracings, upright, its number above it."""
    drawn = {tracing.shape: tracing for tracing in action.tracings}
    holding = {place.within for place in action.places}
    web, design = pattern.materials.web, pattern.design
    high = float(web.sheet or 0)
    factor, top = width / float(web.web_width), 6.0
    for sheet in range(web.sheets):
        marks: list[Mark] = [box(0, top, width, high * factor, PAPER)]
        marks.append(caption(complex(width / 2, 2.5), f"Sheet {sheet + 1}", SMALL, colour=DARK))
        shown = [
            _Shown(number + 1, drawn[place.shape], place.motion, number in holding)
            for number, place in enumerate(action.places)
            if place.sheet == sheet
        ]
        scale = Scale(factor, complex(0, top))
        marks += [mark for each in shown for mark in _ring(each, scale)]
        marks += [mark for each in shown for mark in _number(each, scale)]
        alt = (
            f"Sheet {sheet + 1} of {web.sheets}, {rectangle(design, web.web_width, high)}, with {len(shown)} tracings, "
            "numbered."
        )
        yield Drawing(width, top + high * factor + 1, tuple(marks)).sheet(
            f"Sheet {sheet + 1} of the web", alt
        )


def _outermost(action: TraceNested, place: TracedPlace) -> TracedPlace:
    while place.within is not None:
        place = action.places[place.within]
    return place


def _stretch(page: list[_Shown]) -> tuple[float, float]:
    return min(shown.ends[0] for shown in page), max(shown.ends[1] for shown in page)


def _figure(pattern: Pattern, page: list[_Shown], factor: float) -> Sheet:
    design, web = pattern.design, float(pattern.materials.web.web_width)
    start, end = _stretch(page)
    across, top = web * factor, 5.0
    scale = Scale(factor, complex(LEFT - start * factor, top + across))
    long = (end - start) * factor
    marks: list[Mark] = [box(LEFT, top, long, across, PAPER)]
    marks += _grid(pattern, scale, start, end)
    for shown in page:
        marks += _ring(shown, scale)
    for shown in page:
        marks += _number(shown, scale)
    marks += measured(complex(LEFT, top), complex(LEFT + long, top), _told(pattern, start, end), -1.6j)
    marks += measured(complex(LEFT, top + across), complex(LEFT, top), length(design, web), complex(-4.6))
    marks += _edges(scale, start, web)
    alt = (
        f"Web {length(design, web)} wide, lying on its side, from {length(design, start)} to {length(design, end)} "
        f"of its length, its left edge below, with {len(page)} tracings, numbered; small rings lie in the centres of "
        "larger ones."
    )
    size = LEFT + long + RIGHT, top + across + BELOW
    return Drawing(*size, tuple(marks)).sheet("Rings nested on the web", alt)


def _grid(pattern: Pattern, scale: Scale, start: float, end: float) -> Iterator[Mark]:
    """Draw the lines that places are read off: along from the cut end, and up from the left edge, which is below."""
    design, wide = pattern.design, float(pattern.materials.web.web_width)
    step, numbered = GRIDS[design.units]
    for n in range(math.ceil(start / step - COARSE), math.floor(end / step + COARSE) + 1):
        foot, head = (scale.point(complex(float(n * step), -up)) for up in (0, wide))
        yield line(foot, head, GRID if n % numbered else NUMBERED)
        if n % numbered == 0:
            yield caption(foot + 2.2j, length(design, n * step), SMALL, colour=DARK)
    for n in range(math.floor(wide / step + COARSE) + 1):
        foot, head = (scale.point(complex(along, -float(n * step))) for along in (start, end))
        yield line(foot, head, GRID if n % numbered else NUMBERED)
        if n and n % numbered == 0:
            yield caption(head + 0.8, length(design, n * step), SMALL, "start", colour=DARK)


def _edges(scale: Scale, start: float, wide: float) -> Iterator[Mark]:
    """Name the edges that places are measured from."""
    foot = scale.point(complex(start))
    yield caption(foot + 5.6j, "left edge of the web", SMALL, "start", colour=DARK)
    said = "cut end" if start < COARSE else "towards the cut end"
    yield Text(scale.point(complex(start, -wide / 2)) - 1.4, said, SMALL, "middle", -90.0, colour=DARK)


def _told(pattern: Pattern, start: float, end: float) -> str:
    said = length(pattern.design, end)
    return said if start < COARSE else f"from {length(pattern.design, start)} to {said} from the cut end"


def _ring(shown: _Shown, scale: Scale) -> Iterator[Mark]:
    """Draw the web that stays, tinted, and the outline."""
    tracing = shown.tracing
    band = Region((*tracing.ring_out.paths, *(path.reversed() for path in tracing.ring_in.paths)))
    yield Area(scale.region(shown.motion.region(band)), WEB)
    for path in (tracing.traced, *((tracing.hole,) if tracing.hole else ())):
        yield outline(scale.path(shown.motion.path(path)), OUTLINE)


def _number(shown: _Shown, scale: Scale) -> tuple[Mark, ...]:
    """Write the number into the middle, or onto the outline at the upper right where another ring lies there."""
    at = scale.point(shown.motion.move)
    if not shown.holds:
        return (caption(at, str(shown.number), SMALL, colour=DARK),)
    corners = flatten_path(shown.motion.path(shown.tracing.traced), COARSE)
    at = scale.point(max(corners, key=_upper_right))
    ground = Area(shift(at).region(disc(1.7)), Ink(fill=LIGHT))
    return ground, caption(at, str(shown.number), SMALL, colour=DARK)


def _upper_right(point: Point) -> float:
    return round(point.real - point.imag, 6)
