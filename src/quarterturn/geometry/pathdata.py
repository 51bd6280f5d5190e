"""Path data, the text in which SVG writes outlines, read and written (SVG 1.1 section 8.3, SVG 2 section 9.3).

All its commands are read: M L H V C S Q T A Z, absolute and relative. Circular arcs stay arcs, elliptical ones can
be mapped before they become cubics, and a quadratic curve is exactly a cubic. y runs down, as everywhere here.
"""

from __future__ import annotations

import cmath
import math
import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field

from quarterturn.geometry.affine import Affine, Drawn, Oval, as_segments, mapped
from quarterturn.geometry.paths import Path
from quarterturn.geometry.segments import Arc, Cubic, Line, Point, Segment

LARGEST_NUMBER = 1e7
"""No coordinate may be larger: far beyond any drawing, and far from where floats lose a thousandth."""

_SPACE = re.compile(r"[ \t\n\f\r]*")
_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?")
_STRAIGHT_ON: Mapping[str, str] = {"M": "L", "m": "l"}
"""Further pairs behind a moveto are linetos."""


class PathDataError(ValueError):
    """Text that is not path data: at which character, counted from 0, and why."""

    def __init__(self, offset: int, reason: str) -> None:
        super().__init__(f"{reason} (at character {offset + 1})")
        self.offset = offset
        self.reason = reason


@dataclass(frozen=True, slots=True)
class Subpath:
    """What is drawn between two movetos; `closed` where it ends in Z, whose line is among what is drawn."""

    start: Point
    drawn: tuple[Drawn, ...]
    closed: bool

    @property
    def end(self) -> Point:
        """Return the last point."""
        return self.drawn[-1].end if self.drawn else self.start

    def path(self, to: Affine = Affine()) -> Path:  # noqa: B008
        """Return it mapped, as a path; it is a closed one only where start and end are one point."""
        return Path(tuple(segment for each in self.drawn for segment in as_segments(mapped(each, to))))


def read_path_data(text: str) -> tuple[Subpath, ...]:
    """Read path data. Raises PathDataError where the text does not follow the grammar to its end."""
    return tuple(subpath for subpath in _Reader(text).subpaths() if subpath.drawn)


def read_numbers(text: str) -> tuple[float, ...]:
    """Read a list of numbers as in `points`, `viewBox` and transforms. Raises PathDataError."""
    reader = _Reader(text)
    found: list[float] = []
    reader.skip()
    while not reader.is_at_end():
        found.append(reader.number(first=not found))
        reader.skip()
    return tuple(found)


@dataclass
class _Reader:
    """A place in the text, and the pen: where it is, where its subpath began, the last curve's kind and control."""

    text: str
    at: int = 0
    pen: Point = 0j
    began: Point = 0j
    handle: tuple[str, Point] = ("", 0j)
    has_moved: bool = False
    drawn: list[Drawn] = field(default_factory=list)

    def subpaths(self) -> Iterator[Subpath]:
        """Return the subpaths, in order."""
        self.skip()
        while not self.is_at_end():
            letter = self._letter()
            if letter in "Mm" and self.drawn:
                yield self._finished(closed=False)
            if letter in "Zz":
                self._close()
                yield self._finished(closed=True)
            else:
                self._command(letter)
            self.skip()
        yield self._finished(closed=False)

    def _finished(self, *, closed: bool) -> Subpath:
        drawn, self.drawn = tuple(self.drawn), []
        return Subpath(self.began, drawn, closed)

    def _letter(self) -> str:
        letter = self.text[self.at]
        if letter not in "MmZzLlHhVvCcSsQqTtAa":
            raise PathDataError(self.at, f"{letter!r} is no command of path data")
        if not self.has_moved and letter not in "Mm":
            raise PathDataError(self.at, "path data begins with a moveto, M or m")
        self.has_moved = True
        self.at += 1
        return letter

    def _command(self, letter: str) -> None:
        """Carry a command out as often as there are numbers for it."""
        first = True
        while first or self._has_more():
            _COMMANDS[letter.upper()](self, letter.islower(), first)
            letter, first = _STRAIGHT_ON.get(letter, letter), False

    def _has_more(self) -> bool:
        """Tell whether another number follows, or a comma that promises one."""
        place = self.at
        self.skip()
        found = not self.is_at_end() and (self.text[self.at] == "," or self._number_here() is not None)
        self.at = place
        return found

    def skip(self) -> None:
        """Pass over white space."""
        found = _SPACE.match(self.text, self.at)
        self.at = found.end() if found else self.at

    def is_at_end(self) -> bool:
        """Tell whether nothing is left."""
        return self.at >= len(self.text)

    def _comma(self) -> None:
        self.skip()
        if self.text[self.at : self.at + 1] == ",":
            self.at += 1
            self.skip()

    def _number_here(self) -> re.Match[str] | None:
        return _NUMBER.match(self.text, self.at)

    def number(self, *, first: bool) -> float:
        """Read a number, behind a comma unless it is the first of a command."""
        self.skip() if first else self._comma()
        found = self._number_here()
        if not found:
            raise PathDataError(self.at, "a number is missing")
        value = float(found[0])
        if not abs(value) <= LARGEST_NUMBER:
            raise PathDataError(self.at, f"no number may be beyond {LARGEST_NUMBER:,.0f}")
        self.at = found.end()
        return value

    def flag(self) -> bool:
        """Read a flag: one digit, which need not be parted from what follows."""
        self._comma()
        digit = self.text[self.at : self.at + 1]
        if digit not in ("0", "1"):
            raise PathDataError(self.at, "a flag of an arc is missing; it is 0 or 1")
        self.at += 1
        return digit == "1"

    def point(self, relative: bool, *, first: bool = False) -> Point:
        """Read a pair of coordinates."""
        x = self.number(first=first)
        to = complex(x, self.number(first=False)) + (self.pen if relative else 0j)
        if max(abs(to.real), abs(to.imag)) > LARGEST_NUMBER:
            raise PathDataError(self.at, f"no point may lie beyond {LARGEST_NUMBER:,.0f}")
        return to

    def reflected(self, kind: str) -> Point:
        """Return the last control point mirrored in the pen, where the last command was of the same kind."""
        return 2 * self.pen - self.handle[1] if self.handle[0] == kind else self.pen

    def move(self, relative: bool, first: bool) -> None:
        """Begin a subpath."""
        self.pen = self.began = self.point(relative, first=first)
        self.handle = ("", 0j)

    def draw(self, drawn: Drawn, to: Point, handle: tuple[str, Point] = ("", 0j)) -> None:
        """Add what is drawn to a point, unless it is nothing."""
        if not isinstance(drawn, Line) or drawn.start != drawn.end:
            self.drawn.append(drawn)
        self.pen, self.handle = to, handle

    def line_to(self, to: Point) -> None:
        """Draw a straight line."""
        self.draw(Line(self.pen, to), to)

    def _close(self) -> None:
        self.line_to(self.began)

    def curve(self, control1: Point, control2: Point, to: Point) -> None:
        """Draw a cubic."""
        self.draw(Cubic(self.pen, control1, control2, to), to, ("C", control2))

    def quadratic(self, control: Point, to: Point) -> None:
        """Draw a quadratic curve: the cubic with its control points two thirds of the way to the one."""
        control1, control2 = self.pen + (control - self.pen) * 2 / 3, to + (control - to) * 2 / 3
        self.draw(Cubic(self.pen, control1, control2, to), to, ("Q", control))


def _line(reader: _Reader, relative: bool, first: bool) -> None:
    reader.line_to(reader.point(relative, first=first))


def _level(reader: _Reader, relative: bool, first: bool) -> None:
    x = reader.number(first=first) + (reader.pen.real if relative else 0.0)
    reader.line_to(complex(x, reader.pen.imag))


def _upright(reader: _Reader, relative: bool, first: bool) -> None:
    y = reader.number(first=first) + (reader.pen.imag if relative else 0.0)
    reader.line_to(complex(reader.pen.real, y))


def _cubic(reader: _Reader, relative: bool, first: bool) -> None:
    control1 = reader.point(relative, first=first)
    control2 = reader.point(relative)
    reader.curve(control1, control2, reader.point(relative))


def _smooth_cubic(reader: _Reader, relative: bool, first: bool) -> None:
    control2 = reader.point(relative, first=first)
    reader.curve(reader.reflected("C"), control2, reader.point(relative))


def _quadratic(reader: _Reader, relative: bool, first: bool) -> None:
    control = reader.point(relative, first=first)
    reader.quadratic(control, reader.point(relative))


def _smooth_quadratic(reader: _Reader, relative: bool, first: bool) -> None:
    to = reader.point(relative, first=first)
    reader.quadratic(reader.reflected("Q"), to)


def _arc(reader: _Reader, relative: bool, first: bool) -> None:
    across, down = abs(reader.number(first=first)), abs(reader.number(first=False))
    turn = math.radians(reader.number(first=False))
    large, sweeps = reader.flag(), reader.flag()
    to = reader.point(relative)
    if reader.pen == to or not across or not down:
        reader.line_to(to)
    else:
        reader.draw(arc_between(reader.pen, to, across, down, turn, large=large, sweeps=sweeps), to)


_COMMANDS: Mapping[str, Callable[[_Reader, bool, bool], None]] = {
    "M": _Reader.move,
    "L": _line,
    "H": _level,
    "V": _upright,
    "C": _cubic,
    "S": _smooth_cubic,
    "Q": _quadratic,
    "T": _smooth_quadratic,
    "A": _arc,
}


def arc_between(
    start: Point, end: Point, across: float, down: float, turn: float, *, large: bool, sweeps: bool
) -> Oval:
    """Return the elliptical arc between two points: SVG 1.1 appendix F.6.5, too small radii grown as F.6.6 says.

    The ellipse, turned back by `turn` and divided by its radii, is a unit circle; on it the centre lies off the
    middle of the chord at a right angle, on the one side or the other as the two flags agree or not.
    """
    way = cmath.rect(1, turn)

    def on_unit(point: Point) -> Point:
        back = point / way
        return complex(back.real / across, back.imag / down)

    # Told from the middle of the chord, so that no place far from 0 costs figures.
    half = on_unit((end - start) / 2)
    grown = max(1.0, abs(half))
    half /= grown
    rest = 1 - abs(half) ** 2
    height = math.sqrt(rest) if rest > 1e-14 else 0.0
    off = half / abs(half) * 1j * height * (1 if large != sweeps else -1)
    first, last = cmath.phase(-half - off), cmath.phase(half - off)
    sweep = (last - first) % math.tau if sweeps else -((first - last) % math.tau)
    first_radius, second_radius = way * across * grown, way * 1j * down * grown
    centre = (start + end) / 2 + first_radius * off.real + second_radius * off.imag
    return Oval(centre, first_radius, second_radius, first, sweep)


def write_path_data(path: Path, digits: int | None = None) -> str:
    """Return a closed path as path data, absolute commands with spaces between; numbers exact, or to so many digits.

    Read again it is the same outline: within float noise, or within what the digits leave. Arcs are written by
    quarters at most, for which the two ends tell the centre well.
    """

    def pair(point: Point) -> str:
        return f"{_figure(point.real, digits)} {_figure(point.imag, digits)}"

    parts = [f"M {pair(path.segments[0].start)}"]
    for segment in path.segments:
        parts += _written(segment, pair, digits)
    return " ".join([*parts, "Z"])


def _written(segment: Segment, pair: Callable[[Point], str], digits: int | None) -> Iterator[str]:
    match segment:
        case Line(_, end):
            yield f"L {pair(end)}"
        case Cubic(_, control1, control2, end):
            yield f"C {pair(control1)} {pair(control2)} {pair(end)}"
        case Arc(_, radius, _, sweep):
            count = max(1, math.ceil(abs(sweep) / (math.pi / 2) - 1e-9))
            size, flag = _figure(radius, digits), int(sweep > 0)
            for k in range(1, count + 1):
                yield f"A {size} {size} 0 0 {flag} {pair(segment.point(k / count))}"


def _figure(value: float, digits: int | None) -> str:
    """Write a number without a needless zero, and never −0."""
    if digits is None:
        return repr(value + 0.0).removesuffix(".0")
    text = f"{value:.{digits}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
