"""The first rows of tracings that are staggered, across the web, to scale."""

from __future__ import annotations

from quarterturn.geometry import Motion, Point, Region, region_bounds
from quarterturn.materials import Stagger
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import DIMENSION, OUTLINE, WEB, box, line, measured, outline
from quarterturn.publish.figures.shapes import PAPER
from quarterturn.publish.sheet import Area, Mark, Scale, Sheet
from quarterturn.publish.wording import length, on_ruler
from quarterturn.steps import TraceRings

ROWS = 3
"""Rows that are shown: the third lies as the first."""

CROSS = 1.0


def staggered_figure(
    pattern: Pattern, action: TraceRings, rule: Stagger, count: int, width: float = 78.0
) -> Sheet:
    """Return up to three rows with the sizes that lead to their middles."""
    design, web = pattern.design, pattern.materials.web
    left, top, right = 17.0, 9.0, 17.0
    across = width - left - right
    factor = across / float(web.web_width)
    scale = Scale(factor, complex(left, top))
    rows = min(ROWS, rule.rows(count), action.rows_on_sheet or ROWS)
    motions = list(rule.motions(min(count, (rows + 1) // 2 * rule.odd + rows // 2 * rule.even)))
    deep = max(region_bounds(motion.region(action.ring_out)).bottom for motion in motions) * factor + 2
    marks: list[Mark] = [box(left, top, across, deep, PAPER)]
    for motion in motions:
        marks += _ring(action, motion, scale)
    start = complex(left, top)
    marks += measured(start, start + across, length(design, web.web_width), -4.6j)
    marks += _sizes(pattern, rule, scale, rows, complex(left, top), complex(left + across, top), deep)
    alt = (
        f"The first {rows} rows of tracings of the {action.shape} shape on web {length(design, web.web_width)} wide: "
        f"{rule.odd} and {rule.even} in turn, every second row shifted so that it reaches into the one before."
    )
    return Drawing(width, top + deep + 11, tuple(marks)).sheet("Staggered rows on the web", alt)


def _ring(action: TraceRings, motion: Motion, scale: Scale) -> list[Mark]:
    band = Region((*action.ring_out.paths, *(path.reversed() for path in action.ring_in.paths)))
    at, arm = scale.point(motion.move), CROSS
    marks: list[Mark] = [Area(scale.region(motion.region(band)), WEB)]
    lines = (action.traced, *((action.hole,) if action.hole else ()))
    marks += [outline(scale.path(motion.path(path)), OUTLINE) for path in lines]
    return [*marks, line(at - arm, at + arm, DIMENSION), line(at - arm * 1j, at + arm * 1j, DIMENSION)]


def _sizes(
    pattern: Pattern, rule: Stagger, scale: Scale, rows: int, start: Point, end: Point, deep: float
) -> list[Mark]:
    """Return the sizes: across, above and below the rows; along, at the left and at the right."""
    design = pattern.design
    marks: list[Mark] = []

    def at(across: float, along: float) -> Point:
        return scale.point(complex(across, along))

    first, second, pitch = float(rule.first), float(rule.second), float(rule.pitch)
    head, foot = start.imag, start.imag + deep
    if rule.in_one_line:
        one, two = (complex(at(x, 0).real, head) for x in (first, second))
        marks += measured(one, two, on_ruler(design, rule.pitch / 2), -0.9j)
    elif rule.odd > 1:
        one, two = (complex(at(x, 0).real, head) for x in (first, first + pitch))
        marks += measured(one, two, on_ruler(design, rule.pitch), -0.9j)
    left = complex(start.real, foot)
    marks += measured(left, complex(at(first, 0).real, foot), on_ruler(design, rule.first), 1.4j)
    if rows > 1:
        marks += measured(left, complex(at(second, 0).real, foot), on_ruler(design, rule.second), 6j)
    middles = [at(0, float(rule.along(row))).imag for row in range(rows)]
    marks += measured(complex(start.real, middles[0]), start, on_ruler(design, rule.top), complex(-1.4))
    for row, size in zip(range(rows - 1), (rule.down, rule.back), strict=False):
        if not size:
            continue
        above, below = (complex(end.real, middle) for middle in middles[row : row + 2])
        marks += measured(above, below, on_ruler(design, size), complex(1.4))
    return marks
