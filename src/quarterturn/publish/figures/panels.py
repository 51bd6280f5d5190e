"""A panel to scale, its motifs numbered, each with the distance of its middle from two raw edges."""

from __future__ import annotations

import cmath
import math

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Point, rectangle
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    ACCENT,
    CREASE,
    EDGE,
    OUTLINE,
    SMALL,
    box,
    caption,
    cloth,
    line,
    measured,
    outline,
)
from quarterturn.publish.figures.shapes import template_shape
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet
from quarterturn.publish.wording import length, turned_by
from quarterturn.steps import FuseToPanel, PlacedMotif, Step

LONGEST = 88.0
LEFT, TOP = 4.0, 6.0


def panel_figure(pattern: Pattern, step: Step, width: float) -> Sheet:
    """Return the raw panel with its seam lines dashed and its motifs in place."""
    assert isinstance(step.action, FuseToPanel)
    (made,) = step.makes
    factor = min((width - LEFT - 14) / float(made.width), LONGEST / float(made.height))
    scale = Scale(factor, complex(LEFT, TOP))
    wide, tall = float(made.width) * factor, float(made.height) * factor
    piece = pattern.bill.piece(step.uses[0].label)
    colour = pattern.design.fabric(piece.fabric).colour
    seam = float(pattern.design.making.seam) * factor
    ink = Ink(stroke=text_colour_on(colour), width=0.2, dash=CREASE.dash)
    marks: list[Mark] = [box(LEFT, TOP, wide, tall, cloth(colour, OUTLINE))]
    marks.append(outline(rectangle(LEFT + seam, TOP + seam, LEFT + wide - seam, TOP + tall - seam), ink))
    for motif in step.action.motifs:
        marks += _shape(pattern, motif, scale)
    at = [scale.point(motif.motion.move) for motif in step.action.motifs]
    marks += [_led(spot, edge) for spot in at for edge in (complex(spot.real, TOP), complex(LEFT, spot.imag))]
    for number, spot in enumerate(at, start=1):
        marks += _number(number, spot)
    marks += measured(
        complex(LEFT, TOP), complex(LEFT + wide, TOP), length(pattern.design, made.width), -1.6j
    )
    edge = complex(LEFT + wide, TOP)
    marks += measured(edge, edge + tall * 1j, length(pattern.design, made.height), 1.6)
    alt = f"The panel as cut, to scale, with {len(step.action.motifs)} motifs: " + "; ".join(
        motif_line(pattern, number, motif) for number, motif in enumerate(step.action.motifs, start=1)
    )
    alt = f"{alt}."
    return Drawing(LEFT + wide + 14, TOP + tall + 1, tuple(marks)).sheet("Panel", alt)


def motif_line(pattern: Pattern, number: int, motif: PlacedMotif) -> str:
    """Return where a motif lies and how it is turned."""
    at = motif.motion.move
    from_left, from_top = (length(pattern.design, value) for value in (at.real, at.imag))
    said = turned_by(math.degrees(cmath.phase(motif.motion.factor)))
    turned = f", {said}" if said else ""
    return f"{number}: {motif.label}, {from_left} from the left and {from_top} from the top raw edge{turned}"


def _shape(pattern: Pattern, motif: PlacedMotif, scale: Scale) -> tuple[Mark, ...]:
    letter = motif.label.removesuffix(f" {motif.shape}")
    shape = template_shape(pattern, motif.recipe, motif.shape)
    region = scale.region(motif.motion.region(shape.region))
    return (Area(region, cloth(pattern.design.fabric(letter).colour, EDGE)),)


def _led(at: Point, edge: Point) -> Mark:
    """Return a thin line from the middle of a motif to an edge that it is measured from."""
    return line(at, edge, Ink(stroke=ACCENT, width=0.12, dash=(0.8, 0.8)))


def _number(number: int, at: Point) -> tuple[Mark, ...]:
    """Return the number of a motif on its middle, on a plate that lies on all lines."""
    plate = box(at.real - 1.6, at.imag - 1.6, 3.2, 3.2, Ink(fill="#ffffff", stroke=ACCENT, width=0.2))
    return plate, caption(at, str(number), SMALL, bold=True)
