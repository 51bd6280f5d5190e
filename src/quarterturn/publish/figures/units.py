"""Single units: each colourway, the four turns, cutting away and trimming."""

from __future__ import annotations

from quarterturn.blocks import GROUND, SHAPE, Master
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Region, Segment, StraightLine, keep_left, offset_path, rectangle
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import (
    diagonal_share,
    laid,
    layer_colour,
    layered,
    sewn_symbols,
    unit_of,
)
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    ACCENT,
    CREASE,
    CUT,
    LABEL,
    OUTLINE,
    SMALL,
    SMALLEST,
    STITCH,
    TRIM,
    arrow,
    box,
    caption,
    cloth,
    hatched,
    line,
    measured,
    outline,
    wrong_side,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Sheet, Stroke
from quarterturn.publish.wording import length, named
from quarterturn.steps import CutAway, Step, Trim


def colourway_figure(pattern: Pattern, code: str, width: float = 24.0) -> Sheet:
    """Return a unit as trimmed, with the letters of its fabrics and its seam lines."""
    unit, way = unit_of(pattern, code), pattern.design.colourway(code)
    factor = width / float(unit.cut_side)
    seam, side = float(unit.seam) * factor, float(unit.side) * factor
    reach = diagonal_share(pattern, code)
    marks: list[Mark] = [
        *layered(pattern, code, unit.cut_layers, Scale(factor, complex(seam, seam)), OUTLINE)
    ]
    marks.append(outline(rectangle(seam, seam, seam + side, seam + side), CREASE))
    for part, letter, at in ((SHAPE, way.shape, reach / 2), (GROUND, way.ground, (1 + reach) / 2)):
        ink = text_colour_on(layer_colour(pattern, code, part))
        place = complex(seam + at * side, seam + at * side)
        size = min(3.4, side * 1.2 * min(at, 1 - at) / len(letter))
        if size >= SMALLEST:
            marks.append(caption(place, letter, size, bold=True, colour=ink))
    alt = (
        f"Unit {code} as trimmed: {named(pattern.design, way.shape)} on {named(pattern.design, way.ground)}."
    )
    return Drawing(width, width, tuple(marks)).sheet(f"Unit {code}", alt)


def turns_figure(pattern: Pattern, cell: float = 14.0) -> Sheet:
    """Return the four turns of the first colourway, with the names that the map uses."""
    code = next(iter(pattern.setting.tally))
    pitch = cell + 9
    marks: list[Mark] = []
    for turn in range(4):
        left = complex(turn * pitch, 0)
        marks.append(laid(code, turn, left, cell))
        marks.append(caption(left + complex(cell / 2, cell + 3), f"{code}{turn}", 3.2, bold=True))
        if turn < 3:
            marks += arrow(left + complex(cell + 2, cell / 2), left + complex(cell + 7, cell / 2), ACCENT)
    alt = f"Unit {code} at its four turns, each a quarter turn clockwise from the one before."
    symbols = sewn_symbols(pattern, [code], cell)
    return Drawing(3 * pitch + cell, cell + 5, tuple(marks), symbols).sheet("The four turns", alt)


def trim_figure(pattern: Pattern, code: str, away: Step, trim: Step | None, side: float = 32.0) -> Sheet:
    """Return the unit from its wrong side with the cut-away, and from its right side with the edges to trim."""
    assert isinstance(away.action, CutAway)
    master = pattern.blocks.master(pattern.design.colourway(code).recipe)
    inside = length(pattern.design, away.action.inside)
    alt = f"Unit {code} from the wrong side, with the cut-away line {inside} inside the stitching."
    drawings = [_cut_away(pattern, code, master, away.action, side)]
    if trim:
        drawings.append(_trimming(pattern, code, master, trim, side))
        alt += " Beside it the unit from the right side: its two outer edges are trimmed."
    return beside(drawings, 12).sheet("Cutting away and trimming", alt)


def _cut_away(pattern: Pattern, code: str, master: Master, action: CutAway, side: float) -> Drawing:
    scale = Scale(side / float(master.side / 2), 5j)
    stitched = _quarter(Region((master.shape.traced,)))
    opened = _quarter(offset_path(master.shape.traced, -float(action.inside)))
    ground, shape = (wrong_side(layer_colour(pattern, code, part)) for part in (GROUND, SHAPE))
    at = scale.point(_along_top(stitched)), scale.point(_along_top(opened))
    marks: list[Mark] = [
        box(0, 5, side, side, cloth(ground, OUTLINE)),
        Area(scale.region(opened), cloth(shape)),
        *_run(_curve(stitched), scale, STITCH),
        *_run(_curve(opened), scale, CUT),
        *measured(at[1], at[0], length(pattern.design, action.inside), -1.6j),
        caption(complex(side / 2, side + 8), "wrong side: cut on the dashes", SMALL),
    ]
    return Drawing(side, side + 10, tuple(marks))


def _run(segments: list[Segment], scale: Scale, ink: Ink) -> tuple[Mark, ...]:
    """Return segments as one line; nothing where a small shape leaves none."""
    return (Stroke(tuple(scale.segment(s) for s in segments), ink),) if segments else ()


def _quarter(region: Region) -> Region:
    """Return what of a region about the middle of a master lies to the lower right: the unit's own frame."""
    for way in (StraightLine(0j, 1 + 0j), StraightLine(0j, -1j)):
        region = keep_left(region, way)
    return region


def _curve(region: Region) -> list[Segment]:
    """Return the segments of a quarter that do not lie on the two cuts."""
    return [s for s in region.segments() if not _on_cut(s)]


def _on_cut(segment: Segment) -> bool:
    ends = segment.start, segment.end
    return max(abs(p.real) for p in ends) < 1e-6 or max(abs(p.imag) for p in ends) < 1e-6


def _along_top(region: Region) -> complex:
    """Return where a quarter's curve meets the level cut."""
    ends = (p for s in region.segments() for p in (s.start, s.end) if abs(p.imag) < 1e-6)
    return max(ends, key=lambda p: p.real, default=0j)


def _trimming(pattern: Pattern, code: str, master: Master, trim: Step, side: float) -> Drawing:
    assert isinstance(trim.action, Trim)
    factor = side / float(master.side / 2)
    scale = Scale(factor, 5j)
    seam = complex(float(master.seam), float(master.seam))
    kept = float(trim.action.side) * factor
    off = side - kept
    marks: list[Mark] = [
        *layered(pattern, code, master.units[0].cut_layers, Scale(factor, 5j + seam * factor), OUTLINE),
        *hatched(kept, 5, off, side),
        *hatched(0, 5 + kept, kept, off),
        line(complex(kept, 5), complex(kept, 5 + kept), TRIM),
        line(complex(0, 5 + kept), complex(kept, 5 + kept), TRIM),
        line(scale.point(0j), complex(side, 5), Ink(stroke=ACCENT, width=0.25)),
        line(scale.point(0j), complex(0, 5 + side), Ink(stroke=ACCENT, width=0.25)),
        *measured(complex(0, 5), complex(kept, 5), length(pattern.design, trim.action.side), -1.6j),
        *measured(complex(side, 5), complex(side, 5 + kept), length(pattern.design, trim.action.side), 1.6),
        caption(complex(side / 2, side + 8), "right side: trim two edges", SMALL),
    ]
    ink = text_colour_on(layer_colour(pattern, code, GROUND))
    marks.append(caption(complex(kept * 0.72, 5 + kept * 0.9), "keep", LABEL, colour=ink))
    return Drawing(side + 9, side + 10, tuple(marks))
