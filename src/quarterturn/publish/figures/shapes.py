"""Web and cloth of the shapes: rings in their rows, a ring on its blank."""

from __future__ import annotations

from quarterturn.blocks import Master
from quarterturn.geometry import Point, Region
from quarterturn.materials import WebRows
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    DARK,
    DIMENSION,
    EDGE,
    OUTLINE,
    SMALL,
    WEB,
    box,
    caption,
    cloth,
    line,
    measured,
    outline,
    wrong_side,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet
from quarterturn.publish.wording import length, named

PAPER = Ink(fill="#fbfaf6", stroke=EDGE.stroke, width=0.2)


def ring_figure(pattern: Pattern, rows: WebRows, width: float = 74.0) -> Sheet:
    """Return one row of tracings across the web, to scale."""
    design, web = pattern.design, pattern.materials.web
    master = pattern.blocks.master(rows.shape)
    factor = (width - 1) / float(web.web_width)
    room = complex(float(rows.width), float(rows.height)) * factor
    gap, top = float(rows.gap) * factor, 6.0
    deep = room.imag + 2.4
    marks: list[Mark] = [box(0, top, width - 1, deep + 7, PAPER)]
    shown = min(rows.per_row, rows.count)
    for k in range(shown):
        middle = complex(room.real / 2 + k * (room.real + gap), top + 1.2 + room.imag / 2)
        marks += _ring(master, Scale(factor, middle))
    marks += measured(complex(0, top), complex(width - 1, top), length(design, web.web_width), -1.6j)
    at = complex(0, top + deep - 0.4)
    marks += measured(at, at + room.real, length(design, rows.width), 1.4j)
    alt = (
        f"A row of {shown} tracings of the {rows.shape} shape across the {length(design, web.web_width)} web; each "
        f"ring is hollow, and takes {length(design, rows.width)}."
    )
    return Drawing(width, top + deep + 8, tuple(marks)).sheet("Rings on the web", alt)


def _ring(master: Master, scale: Scale) -> tuple[Mark, ...]:
    """Return a traced shape with its ring: the web that stays is tinted."""
    shape = master.shape
    holes = tuple(path.reversed() for path in shape.ring_in.paths)
    band = Region((*shape.ring_out.paths, *holes))
    return (Area(scale.region(band), WEB), outline(scale.path(shape.traced), OUTLINE), *_cross(scale.origin))


def _cross(middle: Point, arm: float = 1.2) -> tuple[Mark, ...]:
    return (
        line(middle - arm, middle + arm, DIMENSION),
        line(middle - arm * 1j, middle + arm * 1j, DIMENSION),
    )


def blank_figure(pattern: Pattern, recipe: str, label: str, side: float = 34.0) -> Sheet:
    """Return a square of cloth of a label, wrong side up, with the ring of a recipe fused on."""
    master, piece = pattern.blocks.master(recipe), pattern.bill.piece(label)
    fabric = pattern.design.fabric(piece.fabric)
    scale = Scale(side / float(piece.length), complex(side / 2, side / 2 + 5))
    marks: list[Mark] = [box(0, 5, side, side, cloth(wrong_side(fabric.colour), OUTLINE))]
    marks += _ring(master, scale)
    marks += measured(5j, complex(side, 5), length(pattern.design, piece.length), -1.6j)
    notes = (("cut on the outline", 0.0), ("paper side up", 4.0))
    marks += [caption(complex(side / 2, side + 8 + down), text, SMALL, colour=DARK) for text, down in notes]
    alt = (
        f"A square of {named(pattern.design, piece.fabric)}, wrong side up, with a ring of web fused to its middle; "
        f"the shape is cut on the outline that runs inside the ring."
    )
    return Drawing(side, side + 14, tuple(marks)).sheet("Ring on the cloth", alt)
