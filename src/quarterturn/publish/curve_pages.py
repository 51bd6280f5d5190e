"""True-size templates of the quarter circle as two pieces to be sewn along the curve: seam allowances are included."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator
from itertools import pairwise

from quarterturn.blocks import SHAPE, Blocks, Master, PiecedPair, pieced_pair
from quarterturn.design import GROUND, Design, Paper
from quarterturn.geometry import Arc, Line, Path, Point, Region, path_bounds, shift
from quarterturn.measure import show_length
from quarterturn.pieces import Bill, CurveBill, curve_bill
from quarterturn.publish.paper import INK, NOTE, Entry, Head, wrapped
from quarterturn.publish.shape_marks import TRACED, TRUE_SIZE, grain_arrow
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Stroke, Text
from quarterturn.publish.true_size import Draft, Drawn, drawn_pages, pattern_name
from quarterturn.publish.unit_pages import SEAM_LINE

MATCH = Ink(None, INK, 0.35)
MATCHES = (0.25, 0.5, 0.75)
"""Where the curve is marked for pinning: at its middle and its quarters (common practice)."""
SPACING = 2.0
"""Millimetres between the points with which join marks keep clear of lines."""


def curve_pages(design: Design, blocks: Blocks, bill: Bill, paper: Paper, first: int) -> Iterator[Draft]:
    """Return the pages of quarter disc and surround for each recipe that offers them."""
    curves, pages = curve_bill(design, blocks, bill), 0
    if curves is None:
        return
    for name in dict.fromkeys(count.recipe for count in curves.counts):
        master = blocks.master(name)
        pair = pieced_pair(master)
        assert pair, "the bill asks for what can be sewn"
        for what in ("quarter disc", "surround"):
            for draft in _pages(design, master, pair, curves, what, paper, first + pages):
                pages += 1
                yield draft


def _pages(
    design: Design, master: Master, pair: PiecedPair, curves: CurveBill, what: str, paper: Paper, first: int
) -> Iterator[Draft]:
    disc = what == "quarter disc"
    path, radius = (pair.disc, pair.disc_radius) if disc else (pair.surround, pair.surround_radius)
    seam = show_length(master.seam, design.units)
    rows = (
        f"Curve of radius {_inches(design, radius)}: as sewn {_inches(design, pair.seam_arc.radius)}, "
        f"{'and' if disc else 'less'} {seam}.",
        *wrapped(paper, _counts(design, curves, master, disc=disc)),
        *wrapped(
            paper, f"Seam allowances of {seam} are included. Mark the ticks: they are pinned on one another."
        ),
    )
    legend = (Entry(TRACED, "cut here"), Entry(SEAM_LINE, "sew here"), Entry(MATCH, "match when pinning"))
    head = Head(f"{pattern_name(design)} – {what} {master.recipe}", rows, legend)
    yield from drawn_pages(_drawn(master, pair, path, what), head, paper, first)


def _inches(design: Design, value: float) -> str:
    return show_length(value, design.units, sixteenths=True)


def _counts(design: Design, curves: CurveBill, master: Master, *, disc: bool) -> str:
    parts = []
    for count in curves.counts:
        if count.recipe == master.recipe:
            fabric = design.fabric(design.cloth(count.code, SHAPE if disc else GROUND))
            parts.append(f"{count.units} of fabric {fabric.letter} ({fabric.name}) for {count.code}")
    return f"Cut {', '.join(parts)}."


def _drawn(master: Master, pair: PiecedPair, path: Path, what: str) -> Drawn:
    centre = path_bounds(path).centre
    move = shift(-centre)
    moved = move.path(path)
    box = path_bounds(TRUE_SIZE.path(moved))
    marks = tuple(_marks(master, pair, path, what, centre))
    return Drawn(
        extent=(box.width, box.height),
        inner_width=box.width,
        marks=marks,
        marks_when_tiled=marks,
        points=_points(TRUE_SIZE.path(moved)),
        outline=TRUE_SIZE.path(moved),
        alt=lambda part: (
            f"True-size template of the {what} of {master.recipe} ({part}): cut line, seam line, ticks to match, "
            "grain arrow, test squares and rulers."
        ),
    )


def _marks(master: Master, pair: PiecedPair, path: Path, what: str, centre: Point) -> Iterator[Mark]:
    move = shift(-centre)
    yield Area(Region((TRUE_SIZE.path(move.path(_seam_line(master, pair, what))),)), SEAM_LINE)
    cut = next(s for s in path.segments if isinstance(s, Arc))
    for share in MATCHES:
        yield Stroke((TRUE_SIZE.segment(move.segment(_tick(pair.seam_arc, cut, share))),), MATCH)
    yield Area(Region((TRUE_SIZE.path(move.path(path)),)), TRACED)
    place = _room(pair, path, what)
    at = (place - centre) * MM_PER_INCH
    yield Text(at, f"{what}", NOTE + 0.6, "middle", bold=True)
    yield Text(at + 4.4j, master.recipe, NOTE, "middle")
    arrow = min(14.0, 0.3 * path_bounds(TRUE_SIZE.path(path)).height)
    yield from grain_arrow(at - complex(0, arrow / 2 + 4.5), arrow)


def _room(pair: PiecedPair, path: Path, what: str) -> Point:
    """Return where the lettering stands: about the middle of the disc, or in the far corner of the surround."""
    box = path_bounds(path)
    if what == "quarter disc":
        return complex(box.left + 0.42 * box.width, box.top + 0.54 * box.height)
    along = cmath.rect(pair.seam_arc.radius, math.pi / 4) + pair.seam_arc.centre
    return (along + complex(box.right, box.bottom)) / 2


def _tick(sewn: Arc, cut: Arc, share: float) -> Line:
    """Return a tick across the allowance, square to the curve, at a share of the sewn curve."""
    way = cmath.rect(1, cmath.phase(sewn.point(share) - sewn.centre))
    return Line(cut.centre + way * cut.radius, sewn.point(share))


def _seam_line(master: Master, pair: PiecedPair, what: str) -> Path:
    """Return the seam line of a piece, in the unit's frame."""
    unit, arc = master.units[0], pair.seam_arc
    top, low = sorted((arc.start, arc.end), key=lambda p: p.imag)
    down = arc if abs(arc.start - top) < abs(arc.end - top) else arc.reversed()
    if what == "quarter disc":
        return Path((Line(0j, top), down, Line(low, 0j)))
    far = complex(float(unit.width), float(unit.height))
    corners = (top, complex(far.real, 0), far, complex(0, far.imag), low)
    return Path((*(Line(a, b) for a, b in pairwise(corners)), down.reversed()))


def _points(path: Path) -> list[Point]:
    found: list[Point] = []
    for segment in path.segments:
        steps = max(1, math.ceil(segment.length() / SPACING))
        found += [segment.point(k / steps) for k in range(steps)]
    return found
