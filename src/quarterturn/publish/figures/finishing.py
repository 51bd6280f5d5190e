"""The backing from its lengths, and the diagonal join of the binding."""

from __future__ import annotations

import math

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Region, polygon, rectangle
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    CREASE,
    CUT,
    OUTLINE,
    SMALL,
    box,
    caption,
    cloth,
    line,
    measured,
    outline,
    wrong_side,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.publish.wording import length, named
from quarterturn.steps import JoinPanels, Step


def backing_figure(pattern: Pattern, step: Step, longest: float = 52.0) -> Sheet:
    """Return the backing with its seams, the top dashed on it."""
    assert isinstance(step.action, JoinPanels)
    (sheet,), panels = step.makes, step.uses[0].count
    factor = longest / float(max(sheet.width, sheet.height))
    width, height = float(sheet.width) * factor, float(sheet.height) * factor
    over = float(pattern.design.making.overage) * factor
    colour = pattern.design.fabric(pattern.design.backing_fabric).colour
    left, top = 1.0, 5.0
    shade = text_colour_on(wrong_side(colour))
    ink = Ink(stroke=shade, width=0.25)
    marks: list[Mark] = [box(left, top, width, height, cloth(wrong_side(colour), OUTLINE))]
    for k in range(1, panels):
        share = k / panels
        if step.action.runs_down:
            x = left + width * share
            marks.append(line(complex(x, top), complex(x, top + height), ink))
        else:
            y = top + height * share
            marks.append(line(complex(left, y), complex(left + width, y), ink))
    inner = rectangle(left + over, top + over, left + width - over, top + height - over)
    marks.append(outline(inner, Ink(stroke=shade, width=0.2, dash=CREASE.dash)))
    place = complex(left, top) + _inside_first(step, width, height, over)
    marks.append(caption(place, "quilt top", SMALL, colour=shade))
    marks += measured(
        complex(left, top), complex(left + width, top), length(pattern.design, sheet.width), -1.6j
    )
    side = complex(left + width, top)
    marks += measured(side, side + height * 1j, length(pattern.design, sheet.height), 1.6)
    seams = f"{panels} lengths" if panels > 1 else "one length"
    alt = (
        f"The backing, {length(pattern.design, sheet.width)} × {length(pattern.design, sheet.height)}, made of {seams} "
        f"of {named(pattern.design, pattern.design.backing_fabric)}; the quilt top is dashed on it."
    )
    return Drawing(left + width + 13, top + height + 1, tuple(marks)).sheet("Backing", alt)


def _inside_first(step: Step, width: float, height: float, over: float) -> complex:
    """Return the middle of what the quilt top covers of the first length, clear of all seams."""
    assert isinstance(step.action, JoinPanels)
    panels = step.uses[0].count
    right = width / panels if step.action.runs_down and panels > 1 else width - over
    bottom = height / panels if not step.action.runs_down and panels > 1 else height - over
    return complex((over + right) / 2, (over + bottom) / 2)


def binding_figure(pattern: Pattern) -> Sheet:
    """Return two binding strips laid across each other: sewn corner to corner, trimmed an allowance beyond."""
    design = pattern.design
    colour = design.fabric(design.binding_fabric).colour
    wide, long = 13.0, 34.0
    level = Area(Region((rectangle(0, 0, long, wide),)), cloth(colour, OUTLINE))
    upright = Area(Region((rectangle(long - wide, 0, long, long - 2),)), cloth(wrong_side(colour), OUTLINE))
    ink = text_colour_on(wrong_side(colour))
    marks: tuple[Mark, ...] = (
        level,
        upright,
        *_trimmed_corner(long, wide, wide * float(design.making.seam / design.binding_width)),
        line(complex(long - wide, 0), complex(long, wide), Ink(stroke=ink, width=0.45, dash=(0.9, 0.6))),
        caption(complex((long - wide) / 2, wide / 2), "right side", SMALL, colour=text_colour_on(colour)),
        caption(complex(long - wide * 0.72, wide * 0.78), "sew", SMALL, colour=ink),
        caption(complex(long - wide / 2, wide + 8), "wrong", SMALL, colour=ink),
        caption(complex(long - wide / 2, wide + 11), "side", SMALL, colour=ink),
    )
    alt = (
        "Two binding strips at right angles, right sides together; the seam runs across the corner from edge to edge, "
        f"and the corner is trimmed off {length(design, design.making.seam)} beyond it."
    )
    return Drawing(long, long - 2, marks).sheet("Diagonal join", alt)


def _trimmed_corner(long: float, wide: float, allowance: float) -> tuple[Mark, ...]:
    """Return the corner that is trimmed off beyond the seam, and the line to trim along."""
    reach = allowance * math.sqrt(2)
    start, end = complex(long - wide + reach, 0), complex(long, wide - reach)
    corner = Area(Region((polygon((start, complex(long, 0), end)),)), Ink(fill="#ededea"))
    return corner, line(start, end, CUT), caption(complex(long - wide / 4, wide / 6), "trim", SMALL)
