"""A quarter circle as two pieces: cut, pinned and sewn along the curve."""

from __future__ import annotations

from quarterturn.blocks import GROUND, SHAPE, PiecedPair, pieced_pair
from quarterturn.design import Design
from quarterturn.geometry import Path, Point, Region, path_bounds, rectangle
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import layer_colour, layered, unit_of
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    CREASE,
    OUTLINE,
    SMALL,
    caption,
    cloth,
    measured,
    outline,
)
from quarterturn.publish.sheet import Area, Mark, Scale, Sheet
from quarterturn.publish.wording.places import measure

SIDE = 36.0
TOP = 5.0


def curve_figure(pattern: Pattern, code: str) -> Sheet:
    """Return quarter disc and surround as cut, and the unit that they make."""
    master = pattern.blocks.master(pattern.design.colourway(code).recipe)
    pair = pieced_pair(master)
    assert pair, "only a recipe that offers it is shown so"
    unit = unit_of(pattern, code)
    factor = SIDE / float(unit.cut_width)
    pieces = (
        _piece(pattern, code, SHAPE, pair.disc, factor, "quarter disc"),
        _piece(pattern, code, GROUND, pair.surround, factor, "surround"),
    )
    alt = (
        f"The quarter disc, its curve cut with a radius of {_radius(pattern.design, pair.disc_radius)}; the surround, "
        f"its curve cut with {_radius(pattern.design, pair.surround_radius)}; and unit {code}, sewn of the two."
    )
    return beside((*pieces, _sewn(pattern, code, pair, factor)), 9).sheet("Sew the curve", alt)


def _radius(design: Design, value: float) -> str:
    return measure(design, value)


def _piece(pattern: Pattern, code: str, part: str, path: Path, factor: float, note: str) -> Drawing:
    box = path_bounds(path)
    scale = Scale(factor, -complex(box.left, box.top) * factor + TOP * 1j)
    width, height = box.width * factor, box.height * factor
    marks: list[Mark] = [
        Area(scale.region(Region((path,))), cloth(layer_colour(pattern, code, part), OUTLINE))
    ]
    text = measure(pattern.design, box.width)
    marks += measured(TOP * 1j, complex(width, TOP), text, -1.6j)
    marks.append(caption(complex(width / 2, TOP + height + 3), note, SMALL))
    return Drawing(max(width, 22.0), TOP + height + 6, tuple(marks))


def _sewn(pattern: Pattern, code: str, pair: PiecedPair, factor: float) -> Drawing:
    unit = unit_of(pattern, code)
    seam = float(unit.seam)
    scale = Scale(factor, complex(seam, seam) * factor + TOP * 1j)
    marks: list[Mark] = [
        *layered(pattern, code, unit.cut_layers, scale, OUTLINE),
        outline(scale.path(rectangle(0, 0, float(unit.width), float(unit.height))), CREASE),
    ]
    low: Point = complex(SIDE / 2, TOP + float(unit.cut_height) * factor + 3)
    marks.append(caption(low, f"unit {code}, sewn", SMALL))
    return Drawing(SIDE, TOP + float(unit.cut_height) * factor + 6, tuple(marks))
