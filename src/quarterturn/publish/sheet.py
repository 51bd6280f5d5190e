"""A sheet: marks in millimetres, origin at the top left, y down. Pens turn it into svg, pdf, png or dxf.

A sheet holds all decisions; a pen holds none. Curves stay curves until a pen cannot draw them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from quarterturn.geometry import Arc, Cubic, Line, Motion, Path, Point, Region, Segment

MM_PER_INCH = 25.4


@dataclass(frozen=True, slots=True)
class Ink:
    """How a mark is drawn: fill and stroke as #rrggbb or None, stroke width and dashes in millimetres."""

    fill: str | None = None
    stroke: str | None = None
    width: float = 0.2
    dash: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Area:
    """A region, filled and outlined."""

    region: Region
    ink: Ink


@dataclass(frozen=True, slots=True)
class Stroke:
    """An open run of segments, each starting where the one before it ends."""

    segments: tuple[Segment, ...]
    ink: Ink


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text; `at` is on the baseline, `size` in millimetres, `turn` in degrees clockwise."""

    at: Point
    text: str
    size: float = 3.2
    anchor: Literal["start", "middle", "end"] = "start"
    turn: float = 0.0
    bold: bool = False
    colour: str = "#1d1d1b"


@dataclass(frozen=True, slots=True)
class Use:
    """A symbol of the sheet, laid down by a motion (in millimetres)."""

    symbol: str
    motion: Motion


Mark: TypeAlias = Area | Stroke | Text | Use


@dataclass(frozen=True, slots=True)
class Sheet:
    """A drawing of a stated size. `alt` describes it to someone who cannot see it."""

    width: float
    height: float
    marks: tuple[Mark, ...]
    title: str
    alt: str
    symbols: Mapping[str, tuple[Mark, ...]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Scale:
    """Lays geometry in inches on a sheet: so many millimetres to the inch, the origin at a place on it."""

    factor: float = MM_PER_INCH
    origin: Point = 0j

    def point(self, point: Point) -> Point:
        """Return the place of a point on the sheet."""
        return self.origin + point * self.factor

    def segment(self, segment: Segment) -> Segment:
        """Return a segment on the sheet."""
        match segment:
            case Line(start, end):
                return Line(self.point(start), self.point(end))
            case Arc(centre, radius, start_angle, sweep):
                return Arc(self.point(centre), radius * self.factor, start_angle, sweep)
            case Cubic(start, control1, control2, end):
                return Cubic(*(self.point(p) for p in (start, control1, control2, end)))

    def path(self, path: Path) -> Path:
        """Return a path on the sheet."""
        return Path(tuple(self.segment(s) for s in path.segments))

    def region(self, region: Region) -> Region:
        """Return a region on the sheet."""
        return Region(tuple(self.path(p) for p in region.paths))

    def motion(self, motion: Motion) -> Motion:
        """Return a motion in inches as one of symbols drawn about the sheet's origin at this factor."""
        return Motion(motion.factor, self.origin + motion.move * self.factor, motion.mirrored)
