"""Squares cut corner to corner: which cuts, how many triangles, and where the straight grain lies."""

from __future__ import annotations

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Region, polygon
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    ACCENT,
    CUT,
    OUTLINE,
    SMALL,
    arrow,
    box,
    caption,
    cloth,
    line,
    measured,
)
from quarterturn.publish.sheet import Area, Mark, Sheet
from quarterturn.publish.wording import length
from quarterturn.steps import CutTriangles, Step


def triangles_figure(pattern: Pattern, step: Step, side: float = 24.0) -> Sheet:
    """Return a square with its cuts, and the triangles pulled apart with the straight grain along the outer edge."""
    assert isinstance(step.action, CutTriangles)
    piece = pattern.bill.piece(step.uses[0].label)
    colour = pattern.design.fabric(piece.fabric).colour
    whole = _square(length(pattern.design, piece.width), colour, step.action.cuts, side)
    apart = _quarters(colour, side) if step.action.cuts == 2 else _halves(colour, side)
    kind = (
        "four side triangles; the grain runs along the long edge"
        if step.action.cuts == 2
        else ("two corner triangles; the grain runs along the short edges")
    )
    cuts = "twice" if step.action.cuts == 2 else "once"
    alt = f"A square of {length(pattern.design, piece.width)} cut corner to corner {cuts} into {kind}."
    return beside([whole, apart], 9).sheet("Triangles", alt)


def _square(size: str, colour: str, cuts: int, side: float) -> Drawing:
    top = 5.0
    marks: list[Mark] = [box(0, top, side, side, cloth(colour, OUTLINE))]
    ways = [(complex(0, top), complex(side, top + side)), (complex(side, top), complex(0, top + side))]
    marks += [line(a, b, CUT) for a, b in ways[:cuts]]
    marks += measured(complex(0, top), complex(side, top), size, -1.6j)
    marks += arrow(complex(side + 2.4, top + side * 0.85), complex(side + 2.4, top + side * 0.15), ACCENT)
    marks.append(caption(complex(side / 2, top + side + 2.4), "arrow: straight grain", SMALL))
    return Drawing(side + 5, top + side + 4.5, tuple(marks))


def _quarters(colour: str, side: float) -> Drawing:
    away, top = 2.2, 5.0
    middle = complex(side / 2 + away, top + side / 2)
    half = side / 2
    marks: list[Mark] = []
    for way in (-1j, 1 + 0j, 1j, -1 + 0j):
        tip = middle + way * away
        a, b = tip + (way + way * 1j) * half, tip + (way - way * 1j) * half
        marks.append(Area(Region((polygon((tip, b, a)),)), cloth(colour, OUTLINE)))
        along = way * 1j
        start = tip + way * (half - 2.0)
        marks += arrow(start - along * half * 0.5, start + along * half * 0.5, text_colour_on(colour))
    return Drawing(side + 2 * away, top + side + 2 * away, tuple(marks))


def _halves(colour: str, side: float) -> Drawing:
    away, top = 2.4, 5.0
    marks: list[Mark] = []
    for lower in (True, False):
        off = complex(0, top + (away if lower else 0)) + (0 if lower else away)
        corners = (
            (0j, complex(0, side), complex(side, side))
            if lower
            else (0j, complex(side, 0), complex(side, side))
        )
        marks.append(Area(Region((polygon(tuple(off + c for c in corners)),)), cloth(colour, OUTLINE)))
        ink = text_colour_on(colour)
        if lower:
            marks += arrow(off + complex(2.0, side * 0.8), off + complex(2.0, side * 0.35), ink)
            marks += arrow(off + complex(side * 0.2, side - 2.0), off + complex(side * 0.65, side - 2.0), ink)
        else:
            marks += arrow(off + complex(side * 0.35, 2.0), off + complex(side * 0.8, 2.0), ink)
            marks += arrow(off + complex(side - 2.0, side * 0.2), off + complex(side - 2.0, side * 0.65), ink)
    return Drawing(side + away, top + side + away, tuple(marks))
