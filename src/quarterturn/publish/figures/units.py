"""Single units: each colourway, the four turns, cutting away and trimming."""

from __future__ import annotations

from quarterturn.blocks import GROUND, SHAPE
from quarterturn.design import quarter_of_unit
from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import (
    Point,
    Region,
    Segment,
    StraightLine,
    keep_left,
    mirror_across_vertical,
    offset_path,
    rectangle,
    shift,
)
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import (
    cell_factor,
    cell_size,
    diagonal_share,
    is_quarter_circle,
    laid,
    layer_colour,
    layered,
    longest_side,
    master_of,
    rooms,
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
from quarterturn.publish.wording import cloths_of, length, parts_of
from quarterturn.steps import CutAway, Step, Trim


def colourway_figure(pattern: Pattern, code: str, width: float = 24.0) -> Sheet:
    """Return a unit as trimmed, its longer side `width`, with the letters of its fabrics and its seam lines."""
    unit, design = unit_of(pattern, code), pattern.design
    factor = width / float(max(unit.cut_width, unit.cut_height))
    seam, across = float(unit.seam) * factor, float(unit.width) * factor
    marks: list[Mark] = [
        *layered(pattern, code, unit.cut_layers, Scale(factor, complex(seam, seam)), OUTLINE)
    ]
    marks.append(outline(rectangle(seam, seam, seam + across, seam + float(unit.height) * factor), CREASE))
    for part in parts_of(pattern, code):
        letter, (at, room) = design.cloth(code, part), _lettering_place(pattern, code, part)
        ink = text_colour_on(layer_colour(pattern, code, part))
        size = min(3.4, across * 1.2 * room / len(letter))
        if size >= SMALLEST:
            marks.append(caption(complex(seam, seam) + at * across, letter, size, bold=True, colour=ink))
    alt = f"Unit {code} as trimmed: {cloths_of(pattern, code)}."
    size_across, size_down = (float(side) * factor for side in (unit.cut_width, unit.cut_height))
    return Drawing(size_across, size_down, tuple(marks)).sheet(f"Unit {code}", alt)


def _lettering_place(pattern: Pattern, name: str, part: str) -> tuple[Point, float]:
    """Return where a fabric's letter stands, and how much room it has there, as shares of the width."""
    if not is_quarter_circle(pattern, name):
        return rooms(pattern, name).get(part, (0j, 0.0))
    reach = diagonal_share(pattern, name)
    at = reach / 2 if part == SHAPE else (1 + reach) / 2
    return complex(at, at), min(at, 1 - at)


def turns_figure(pattern: Pattern, cell: float = 14.0) -> Sheet:
    """Return the four turns of the square unit with a shape that lies in most of them, with the names of the map."""
    units = ((name, unit_of(pattern, name)) for name in pattern.setting.tally)
    shown = [name for name, unit in units if unit.width == unit.height and len(unit.sewn_layers) > 1]
    code = max(shown or pattern.setting.tally, key=lambda name: _ways(pattern, name))
    own = cell / (cell_factor(pattern, cell) * longest_side(pattern, code)) * cell
    pitch = cell + 9
    marks: list[Mark] = []
    for turn in range(4):
        left, size = complex(turn * pitch, 0), cell_size(pattern, code, turn, own)
        marks.append(laid(pattern, code, turn, left + (complex(cell, cell) - size) / 2, own))
        marks.append(caption(left + complex(cell / 2, cell + 3), f"{code}{turn}", 3.2, bold=True))
        if turn < 3:
            marks += arrow(left + complex(cell + 2, cell / 2), left + complex(cell + 7, cell / 2), ACCENT)
    alt = f"Unit {code} at its four turns, each a quarter turn clockwise from the one before."
    symbols = sewn_symbols(pattern, [code], own)
    return Drawing(3 * pitch + cell, cell + 5, tuple(marks), symbols).sheet("The four turns", alt)


def _ways(pattern: Pattern, name: str) -> int:
    """Return in how many turns a unit lies in the top."""
    return len({unit.turn for unit in pattern.setting.units if unit.name == name})


def trim_figure(pattern: Pattern, code: str, away: Step, trim: Step | None, side: float = 32.0) -> Sheet:
    """Return the unit from its wrong side with the cut-away, and from its right side with the edges to trim."""
    assert isinstance(away.action, CutAway)
    inside = length(pattern.design, away.action.behind[0].inside)
    alt = f"Unit {code} from the wrong side, with the cut-away line {inside} inside the stitching."
    drawings = [_cut_away(pattern, code, away.action, side)]
    if trim:
        drawings.append(_trimming(pattern, code, trim, side))
        alt += " Beside it the unit from the right side: its two outer edges are trimmed."
    return beside(drawings, 12).sheet("Cutting away and trimming", alt)


def _as_cut(pattern: Pattern, name: str, region: Region) -> Region:
    """Return what of a region of the master lies in a unit as cut, the unit's top left corner at 0.

    Where a master has one kind of unit, its middle is that corner.
    """
    master, unit = master_of(pattern, name), unit_of(pattern, name)
    half = float(master.side) / 2
    corner = _middle_corner(name)
    placed = master.part(unit.quarter).motion.region(region)
    middle = master.part(unit.quarter).motion(0j)
    placed = shift(corner * half - middle).region(placed)
    for way in (StraightLine(corner * half, 1 + 0j), StraightLine(corner * half, -1j)):
        x, y = way.direction.real, way.direction.imag
        inward = corner.imag == 0 if x else corner.real == 0
        placed = keep_left(placed, way if inward else StraightLine(way.through, complex(-x, -y)))
    return placed


def _middle_corner(name: str) -> Point:
    """Return the corner of a unit that was the middle of its master: 0 is the top left, 1 + 1j the bottom right."""
    quarter = quarter_of_unit(name) or "br"
    return complex(quarter[1] == "l", quarter[0] == "t")


def _cut_away(pattern: Pattern, code: str, action: CutAway, side: float) -> Drawing:
    master = master_of(pattern, code)
    half = float(master.side / 2)
    scale, corner = Scale(side / half, 5j), _middle_corner(code) * half
    stitched = _as_cut(pattern, code, Region((master.shape.traced,)))
    inside = action.behind[0].inside
    opened = _as_cut(pattern, code, offset_path(master.shape.traced, -float(inside)))
    if unit_of(pattern, code).quarter:  # seen from behind; a circle's quarter looks the same
        behind = mirror_across_vertical(half / 2)
        stitched, opened, corner = behind.region(stitched), behind.region(opened), behind(corner)
    ground, shape = (wrong_side(layer_colour(pattern, code, part)) for part in (GROUND, SHAPE))
    at = scale.point(_along_horizontal(stitched, corner)), scale.point(_along_horizontal(opened, corner))
    marks: list[Mark] = [
        box(0, 5, side, side, cloth(ground, OUTLINE)),
        Area(scale.region(opened), cloth(shape)),
        *_run(_curve(stitched, corner), scale, STITCH),
        *_run(_curve(opened, corner), scale, CUT),
        *measured(at[1], at[0], length(pattern.design, inside), -1.6j),
        caption(complex(side / 2, side + 8), "wrong side: cut on the dashes", SMALL),
    ]
    return Drawing(side, side + 10, tuple(marks))


def _run(runs: list[list[Segment]], scale: Scale, ink: Ink) -> tuple[Mark, ...]:
    """Return each run of segments as one line; nothing where a small shape leaves none."""
    return tuple(Stroke(tuple(scale.segment(s) for s in run), ink) for run in runs)


def _curve(region: Region, corner: Point) -> list[list[Segment]]:
    """Return the runs of segments of a unit's shape that do not lie on the two cuts through a corner."""
    runs: list[list[Segment]] = []
    for segment in region.segments():
        if _on_cut(segment, corner):
            continue
        if runs and abs(runs[-1][-1].end - segment.start) < 1e-6:
            runs[-1].append(segment)
        else:
            runs.append([segment])
    return runs


def _on_cut(segment: Segment, corner: Point) -> bool:
    ends = segment.start - corner, segment.end - corner
    return max(abs(p.real) for p in ends) < 1e-6 or max(abs(p.imag) for p in ends) < 1e-6


def _along_horizontal(region: Region, corner: Point) -> Point:
    """Return where a shape's edge meets the horizontal cut, farthest from the corner."""
    ends = (p for s in region.segments() for p in (s.start, s.end) if abs(p.imag - corner.imag) < 1e-6)
    return max(ends, key=lambda p: abs(p - corner), default=corner)


def _trimming(pattern: Pattern, code: str, trim: Step, side: float) -> Drawing:
    """Return a unit with its two outer edges hatched, seen about the corner that was its master's middle."""
    assert isinstance(trim.action, Trim)
    master, unit = master_of(pattern, code), unit_of(pattern, code)
    factor = side / float(master.side / 2)
    side_kept = trim.action.lines[0].distance
    kept, corner = float(side_kept) * factor, _middle_corner(code)
    off = side - kept
    left, top = corner.real * off, 5 + corner.imag * off
    seam = complex(float(master.seam), float(master.seam)) * factor
    upright = off if corner.real else kept
    level = 5 + (off if corner.imag else kept)
    meeting = complex(corner.real * side, 5 + corner.imag * side)
    inwards = complex(1 - 2 * corner.real, 1 - 2 * corner.imag)
    marks: list[Mark] = [
        *layered(pattern, code, unit.cut_layers, Scale(factor, complex(left, top) + seam), OUTLINE),
        *hatched(0 if corner.real else kept, 5, off, side),
        *hatched(left, 5 if corner.imag else 5 + kept, kept, off),
        line(complex(upright, top), complex(upright, top + kept), TRIM),
        line(complex(left, level), complex(left + kept, level), TRIM),
        *measured(complex(left, 5), complex(left + kept, 5), length(pattern.design, side_kept), -1.6j),
        *measured(complex(side, top), complex(side, top + kept), length(pattern.design, side_kept), 1.6),
        caption(complex(side / 2, side + 8), "right side: trim two outer edges", SMALL),
    ]
    # The shape covers the master's middle, and the edges to keep meet there.
    ink = text_colour_on(layer_colour(pattern, code, SHAPE))
    marks.append(caption(meeting + inwards * side * 0.16, "keep", LABEL, colour=ink))
    return Drawing(side + 12, side + 10, tuple(marks))
