"""Sheet -> SVG in millimetres. Arcs stay arcs (A commands), text stays text, the output is stable.

Coordinates are rounded to 1e-4 mm. Arcs are written in pieces so short that a reader who turns each piece
into one cubic (as the typesetter of the PDF does) stays within a thousandth of a millimetre of the circle.
"""

from __future__ import annotations

import cmath
import math
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from quarterturn.geometry import Arc, Cubic, Line, Motion, Point, Region, Segment
from quarterturn.publish.pens import draw, lay
from quarterturn.publish.sheet import Ink, Mark, Sheet, Text

FONT = "Source Sans Pro"
"""The face of all lettering on sheets, from the locked font package."""

ARC_TOLERANCE = 1e-3
"""One cubic for each piece of an arc is within this many millimetres of it."""

_CUBIC_ERROR = 2.73e-4
"""Radial error of the usual cubic for a quarter circle of radius 1 (4/3·tan(22.5°) handles); it falls with
the sixth power of the sweep (a known property, from memory; 2.72e-4 measured)."""

_ESCAPES = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;"})
_COLOUR = re.compile(r"#[0-9a-fA-F]{6}")
_FORBIDDEN = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that XML 1.0 (section 2.2) does not allow."""


def sheet_svg(sheet: Sheet, ids: str = "") -> str:
    """Return a sheet as a whole SVG document, ending with a line end.

    `ids` goes before the name of each symbol, so that several drawings can stand in one page of HTML.
    """
    pen = SvgPen(ids)
    draw(sheet, pen)
    width, height = number(sheet.width), number(sheet.height)
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm"'
        f' viewBox="0 0 {width} {height}" role="img">'
    )
    body = '<g fill-rule="nonzero" stroke-linejoin="round" fill="none">'
    lines = [head, f"<title>{safe(sheet.title)}</title>", f"<desc>{safe(sheet.alt)}</desc>"]
    if pen.symbols:
        lines += ["<defs>", *pen.symbols, "</defs>"]
    return "\n".join([*lines, body, *pen.lines, "</g>", "</svg>", ""])


@dataclass
class SvgPen:
    """The pen that writes SVG elements."""

    ids: str = ""
    lines: list[str] = field(default_factory=list)
    symbols: list[str] = field(default_factory=list)

    def symbol(self, name: str, marks: Sequence[Mark]) -> None:
        """Write a group to be used later."""
        inner = SvgPen(self.ids)
        lay(marks, inner)
        self.symbols += [f"<g id={_quoted(self.ids + name)}>", *inner.lines, "</g>"]

    def area(self, region: Region, ink: Ink) -> None:
        """Write a closed path."""
        if not region.is_empty():
            data = "".join(_run(path.segments) + "Z" for path in region.paths)
            self.lines.append(f'<path d="{data}"{_ink(ink)}/>')

    def stroke(self, segments: Sequence[Segment], ink: Ink) -> None:
        """Write an open path."""
        self.lines.append(f'<path d="{_run(segments)}"{_ink(ink)}/>')

    def text(self, text: Text) -> None:
        """Write a line of text."""
        x, y = number(text.at.real), number(text.at.imag)
        parts = [f'<text x="{x}" y="{y}" font-family="{FONT}, sans-serif" font-size="{number(text.size)}"']
        if text.bold:
            parts.append(' font-weight="bold"')
        if text.anchor != "start":
            parts.append(f' text-anchor="{text.anchor}"')
        if text.turn:
            parts.append(f' transform="rotate({number(text.turn)} {x} {y})"')
        self.lines.append(f'{"".join(parts)} fill="{colour(text.colour)}">{safe(text.text)}</text>')

    def use(self, symbol: str, motion: Motion) -> None:
        """Write a use of a symbol."""
        self.lines.append(f"<use href={_quoted('#' + self.ids + symbol)}{_transform(motion)}/>")


def number(value: float) -> str:
    """Return a number rounded to 1e-4 without trailing zeros, and never −0."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def colour(value: str) -> str:
    """Return a colour that is #rrggbb; anything else is a broken promise."""
    assert _COLOUR.fullmatch(value), f"not a colour: {value!r}"
    return value


def safe(text: str) -> str:
    """Return a text escaped for XML, without the characters that XML does not allow."""
    return _FORBIDDEN.sub("\ufffd", text).translate(_ESCAPES)


def _quoted(text: str) -> str:
    return f'"{safe(text)}"'


def _ink(ink: Ink) -> str:
    parts = [f' fill="{colour(ink.fill)}"'] if ink.fill else []
    if ink.stroke:
        parts.append(f' stroke="{colour(ink.stroke)}" stroke-width="{number(ink.width)}"')
        if ink.dash:
            parts.append(f' stroke-dasharray="{" ".join(number(d) for d in ink.dash)}"')
    return "".join(parts)


def _transform(motion: Motion) -> str:
    """Return the attribute of a motion: a shift, a shift and a turn, or the whole matrix where mirrored."""
    a, move = motion.factor, motion.move
    shift = f"translate({number(move.real)} {number(move.imag)})"
    if motion.mirrored:
        c = (a.real, a.imag, a.imag, -a.real, move.real, move.imag)
        return f' transform="matrix({" ".join(_fine(v) for v in c)})"'
    turn = _fine(math.degrees(cmath.phase(a)))
    return f' transform="{shift}"' if turn == "0" else f' transform="{shift} rotate({turn})"'


def _fine(value: float) -> str:
    """Return a number to nine figures, for factors that multiply lengths."""
    text = f"{value:.9f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _run(segments: Sequence[Segment]) -> str:
    return f"M{_point(segments[0].start)}" + "".join(part for s in segments for part in _command(s))


def _command(segment: Segment) -> Iterator[str]:
    match segment:
        case Line(_, end):
            yield f"L{_point(end)}"
        case Cubic(_, control1, control2, end):
            yield f"C{_point(control1)} {_point(control2)} {_point(end)}"
        case Arc():
            yield from _arc_pieces(segment)


def _arc_pieces(arc: Arc) -> Iterator[str]:
    pieces = arc_piece_count(arc)
    radius, way = number(arc.radius), 1 if arc.sweep > 0 else 0
    for k in range(1, pieces + 1):
        yield f"A{radius} {radius} 0 0 {way} {_point(arc.point(k / pieces))}"


def arc_piece_count(arc: Arc) -> int:
    """Return in how many equal pieces an arc is written: none above 45°, each within ARC_TOLERANCE as a cubic."""
    quarter = math.pi / 2
    longest = min(quarter / 2, quarter * math.pow(ARC_TOLERANCE / (_CUBIC_ERROR * arc.radius), 1 / 6))
    return max(1, math.ceil(abs(arc.sweep) / longest - 1e-9))


def _point(point: Point) -> str:
    return f"{number(point.real)} {number(point.imag)}"
