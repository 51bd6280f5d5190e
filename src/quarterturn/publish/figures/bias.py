"""A binding on the bias, to scale: the sheet and its cut, the slanting piece with its lines, the tube."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from quarterturn.geometry import Point, Region, keep_left, line_through, polygon
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing, beside
from quarterturn.publish.figures.inks import (
    ACCENT,
    CUT,
    LABEL,
    OFFCUT,
    OUTLINE,
    SMALL,
    STITCH,
    arrow,
    caption,
    cloth,
    line,
    measured,
    wrong_side,
)
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.publish.wording import length
from quarterturn.steps import CutBias, Step

TALLEST = 44.0
"""Millimetres of the sheet's shorter side, at most."""
BETWEEN, ABOVE, BELOW = 7.0, 6.0, 9.0
"""Millimetres between the drawings, and round them for their lettering."""
BESIDE, NARROWEST = 9.0, 30.0
"""Millimetres for what the sheet measures, beside it; and of the tube with its words, at least."""
DRAWN = Ink(stroke="#55554f", width=0.18)
"""A line that is drawn on the wrong side."""


@dataclass(frozen=True, slots=True)
class _Sheet:
    """A sheet of short × along in millimetres as drawn, and the rows that it gives."""

    short: float
    along: float
    seam: float
    row: float
    """How far two lines are apart along the straight edges."""
    rows: int

    @property
    def base(self) -> float:
        """Return the length of the straight edges of the slanting piece."""
        return self.along - 2 * self.seam

    @property
    def high(self) -> float:
        """Return how high the slanting piece is inside the seam of the tube."""
        return self.short - 2 * self.seam


def bias_figure(pattern: Pattern, step: Step, width: float) -> Sheet:
    """Return the sheet with its cut, the slanting piece with its lines, and the tube, side by side to one scale."""
    action, (used,) = step.action, step.uses
    assert isinstance(action, CutBias)
    design, piece = pattern.design, pattern.bill.piece(used.label)
    short, along = sorted((float(piece.length), float(piece.width)))
    room = width - 2 * BETWEEN - BESIDE - 2
    factor = min(TALLEST / short, room / (2 * along + 1.75 * short), (room - NARROWEST) / (2 * along + short))
    row = float(action.strip_width) * 2**0.5
    sheet = _Sheet(short * factor, along * factor, float(action.seam) * factor, row * factor, action.rows)
    colour = wrong_side(design.fabric(piece.fabric).colour)
    low, wide = (length(design, side) for side in sorted((piece.length, piece.width)))
    strip = length(design, action.strip_width)
    drawings = (_cut(sheet, colour, low, wide), _slanting(sheet, colour, strip), _tube(sheet, colour))
    alt = (
        f"A sheet of {wide} × {low} is cut at 45° from a corner, and the triangle sewn to the other end. On the "
        f"slanting piece lines run along the slanting edges, {strip} apart: {action.rows} rows. Sewn to a tube with "
        "its straight edges shifted by one row, it is cut round and round along the line."
    )
    return beside(drawings, BETWEEN).sheet("Binding on the bias", alt)


def _cut(sheet: _Sheet, colour: str, low: str, wide: str) -> Drawing:
    """Return the sheet, wrong side up, with the cut from a corner; its parts are numbered."""
    corner, high = complex(0, ABOVE), complex(0, sheet.short)
    far = corner + sheet.along
    tip = corner + complex(sheet.short, sheet.short)
    marks: list[Mark] = [
        _area((corner, far, far + high, corner + high), cloth(colour, OUTLINE)),
        line(corner, tip, CUT),
        *measured(corner, far, wide, -1.6j),
        *measured(far, far + high, low, 1.6 + 0j),
        *_numbered(corner + complex(sheet.short * 0.27, sheet.short * 0.72), "1"),
        *_numbered(corner + complex((sheet.short * 0.4 + sheet.along) / 2, sheet.short * 0.28), "2"),
        _below(sheet.along / 2, sheet, "Cut"),
    ]
    return Drawing(sheet.along + BESIDE, ABOVE + sheet.short + BELOW, tuple(marks))


def _slanting(sheet: _Sheet, colour: str, strip: str) -> Drawing:
    """Return the slanting piece, wrong side up, with its seam, its lines, and what is left beyond the last."""
    top, down = complex(0, ABOVE), complex(sheet.short, sheet.short)
    lines = [top + sheet.row * number for number in range(sheet.rows + 1)]
    end, joint = top + sheet.base, top + sheet.along - sheet.seam
    marks: list[Mark] = [
        _area((top, end, end + down, top + down), cloth(colour, OUTLINE)),
        _area((lines[-1], end, end + down, lines[-1] + down), OFFCUT),
        *(line(start, start + down, DRAWN) for start in lines[1:-1]),
        line(lines[-1], lines[-1] + down, CUT),
        line(joint, joint + complex(0, sheet.short), STITCH),
        *_numbered(top + complex(sheet.along * 0.62, sheet.short * 0.4), "2"),
        *_numbered(joint + complex(sheet.short * 0.3, sheet.short * 0.72), "1"),
        caption(top + complex(sheet.base / 2, -1.8), "straight edge", SMALL),
        caption(top + complex(sheet.short + sheet.base / 2, sheet.short + 1.9), "straight edge", SMALL),
        _below((sheet.short + sheet.base) / 2, sheet, f"Sew; draw {sheet.rows} rows, {strip} apart"),
    ]
    return Drawing(sheet.base + sheet.short, ABOVE + sheet.short + BELOW, tuple(marks))


def _tube(sheet: _Sheet, colour: str) -> Drawing:
    """Return the front of the tube, laid flat: the rows run round it, and its seam across them.

    On the slanting piece the straight edges are brought together by the vector `round_`, from a point of the one to its
    partner on the other, a row short of straight along the rows. With that as the way round, the piece and its copies
    cover the tube, whose front is half of it.
    """
    round_ = complex(sheet.high - sheet.row, sheet.high)
    turn, half = round_.conjugate() / abs(round_), abs(round_) / 2
    start = -0.12 * half
    down = complex(sheet.high, sheet.high)
    rows = [
        (k * sheet.row + 0j, (k + 1) * sheet.row + 0j, (k + 1) * sheet.row + down, k * sheet.row + down)
        for k in range(sheet.rows)
    ]
    copies = range(-2 - sheet.rows, 3 + sheet.rows)
    shown = [
        region
        for row in rows
        for copy in copies
        if (region := _front([(p + copy * round_) * turn for p in row], start, start + half)).paths
    ]
    points = [segment.start for region in shown for path in region.paths for segment in path.segments]
    low = min(p.imag for p in points)
    tall = max(p.imag for p in points) - low
    off = complex(-start, ABOVE - low)
    marks: list[Mark] = [
        Area(_moved(region, off), Ink(colour, DRAWN.stroke, DRAWN.width)) for region in shown
    ]
    for copy in copies:
        marks += _seam(sheet, copy * round_, turn, (start, start + half), off)
    begin = sheet.row * turn / 2 + off
    marks += arrow(begin + complex(-1.5, 6.5), begin + complex(0, 1.2), ACCENT)
    marks.append(caption(begin + complex(1.2, 7.8), "begin", SMALL, colour=ACCENT))
    bottom = max(ABOVE + tall, ABOVE + sheet.short, begin.imag + 9)
    marks.append(caption(complex(half / 2, bottom + BELOW - 2), "Shift by a row; cut round", SMALL))
    return Drawing(max(half, NARROWEST), bottom + BELOW, tuple(marks))


def _front(points: Iterable[Point], left: float, right: float) -> Region:
    """Return what of a polygon lies between two vertical lines."""
    region = Region((polygon(tuple(points)),))
    for x, way in ((left, -1j), (right, 1j)):
        region = keep_left(region, line_through(complex(x, 0), x + way))
    return region


def _moved(region: Region, off: Point) -> Region:
    return Region(
        tuple(polygon(tuple(segment.start + off for segment in path.segments)) for path in region.paths)
    )


def _seam(sheet: _Sheet, at: Point, turn: Point, between: tuple[float, float], off: Point) -> Iterator[Mark]:
    """Return what of the seam of a copy lies on the front."""
    one, other = at * turn, (at + sheet.rows * sheet.row) * turn
    shares = sorted((edge - one.real) / (other - one).real for edge in between)
    low, high = max(0.0, shares[0]), min(1.0, shares[1])
    if low < high:
        yield line(one + (other - one) * low + off, one + (other - one) * high + off, STITCH)


def _area(points: tuple[Point, ...], ink: Ink) -> Area:
    return Area(Region((polygon(points),)), ink)


def _numbered(at: Point, number: str) -> Iterator[Mark]:
    yield _area((at - 1.8 - 1.8j, at + 1.8 - 1.8j, at + 1.8 + 1.8j, at - 1.8 + 1.8j), Ink(fill="#ffffff"))
    yield caption(at, number, LABEL, bold=True)


def _below(middle: float, sheet: _Sheet, words: str) -> Mark:
    return caption(complex(middle, ABOVE + sheet.short + BELOW - 2), words, SMALL)
