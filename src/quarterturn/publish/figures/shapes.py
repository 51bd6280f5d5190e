"""Web and cloth of the shapes: rings in their rows, a ring on its blank."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.blocks import FusedShape
from quarterturn.geometry import EPSILON, STAY, Point, Region, path_bounds, shift
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
from quarterturn.publish.wording import length, named, room_side

PAPER = Ink(fill="#fbfaf6", stroke=EDGE.stroke, width=0.2)


def ring_figure(pattern: Pattern, rows: WebRows, width: float = 74.0) -> Sheet:
    """Return one row of tracings across the web, to scale."""
    design, web = pattern.design, pattern.materials.web.web_width
    shape = template_shape(pattern, rows.recipe, rows.shape)
    factor = (width - 1) / float(web)
    room = complex(float(rows.width), float(rows.height)) * factor
    gap, top = float(rows.gap) * factor, 6.0
    deep = room.imag + 2.4
    marks: list[Mark] = [box(0, top, width - 1, deep + 7, PAPER)]
    shown = min(rows.per_row, rows.count)
    for k in range(shown):
        middle = complex(room.real / 2 + k * (room.real + gap), top + 1.2 + room.imag / 2)
        marks += _ring(shape, Scale(factor, middle))
    marks += measured(complex(0, top), complex(width - 1, top), length(design, web), -1.6j)
    takes = room_side(design, rows.width, rows.per_row, rows.gap, web)
    # More than a number needs room on both sides, which the middle of the row has.
    ahead = shown // 2 * (room.real + gap) if " " in takes else 0.0
    at = complex(ahead, top + deep - 0.4)
    marks += measured(at, at + room.real, takes, 1.4j)
    alt = (
        f"A row of {shown} tracings of the {rows.shape} shape across the {length(design, web)} web; each "
        f"ring is hollow, and takes {takes}."
    )
    return Drawing(width, top + deep + 8, tuple(marks)).sheet("Rings on the web", alt)


def template_shape(pattern: Pattern, recipe: str, name: str) -> FusedShape:
    """Return a shape of a recipe as its template shows it, but not mirrored: about the middle of its box."""
    master = pattern.blocks.master(recipe)
    shape = next(shape for shape, _ in master.templates if shape.name == name)
    centre = path_bounds(shape.traced).centre
    move = shift(-centre) if abs(centre) > EPSILON else STAY
    return replace(
        shape,
        traced=move.path(shape.traced),
        hole=move.path(shape.hole) if shape.hole else None,
        ring_out=move.region(shape.ring_out),
        ring_in=move.region(shape.ring_in),
    )


def _ring(shape: FusedShape, scale: Scale) -> tuple[Mark, ...]:
    """Return a traced shape with its ring: the web that stays is tinted."""
    holes = tuple(path.reversed() for path in shape.ring_in.paths)
    band = Region((*shape.ring_out.paths, *holes))
    lines = (outline(scale.path(path), OUTLINE) for path in shape.region.paths)
    return (Area(scale.region(band), WEB), *lines, *_cross(scale.origin))


def _cross(middle: Point, arm: float = 1.2) -> tuple[Mark, ...]:
    return (
        line(middle - arm, middle + arm, DIMENSION),
        line(middle - arm * 1j, middle + arm * 1j, DIMENSION),
    )


def blank_figure(pattern: Pattern, shape: FusedShape, label: str, side: float = 34.0) -> Sheet:
    """Return the cloth of a label, wrong side up, with the ring of a shape, as `template_shape` has it, fused on."""
    piece = pattern.bill.piece(label)
    fabric = pattern.design.fabric(piece.fabric)
    scale = Scale(side / float(max(piece.length, piece.width)), complex(side / 2, side / 2 + 5))
    across, down = float(piece.length) * scale.factor, float(piece.width) * scale.factor
    ground = box(
        (side - across) / 2, 5 + (side - down) / 2, across, down, cloth(wrong_side(fabric.colour), OUTLINE)
    )
    marks: list[Mark] = [ground, *_ring(shape, scale)]
    start, end = complex((side - across) / 2, 5), complex((side + across) / 2, 5)
    marks += measured(start, end, length(pattern.design, piece.length), -1.6j)
    notes = (("cut on the outline", 0.0), ("paper side up", 4.0))
    marks += [caption(complex(side / 2, side + 8 + down), text, SMALL, colour=DARK) for text, down in notes]
    word = "square" if across == down else "rectangle"
    alt = (
        f"A {word} of {named(pattern.design, piece.fabric)}, wrong side up, with a ring of web fused to its middle; "
        f"the shape is cut on the outline that runs inside the ring."
    )
    return Drawing(side, side + 14, tuple(marks)).sheet("Ring on the cloth", alt)
