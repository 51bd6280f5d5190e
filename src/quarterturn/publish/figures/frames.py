"""Put marks together: shift them, set them side by side, frame them as a sheet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from quarterturn.geometry import Point, shift
from quarterturn.publish.figures.inks import SMALLEST
from quarterturn.publish.sheet import Area, Mark, Sheet, Stroke, Text, Use

PAD = 0.6
"""Millimetres round a drawing, so that no line is cut off at the sheet's edge."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """Marks that keep to the box from the origin to width × height, in millimetres."""

    width: float
    height: float
    marks: tuple[Mark, ...]
    symbols: Mapping[str, tuple[Mark, ...]] = field(default_factory=dict)

    def moved(self, by: Point) -> Drawing:
        """Return the drawing moved; its box grows to the right and downwards."""
        return Drawing(
            self.width + by.real, self.height + by.imag, tuple(moved(m, by) for m in self.marks), self.symbols
        )

    def sheet(self, title: str, alt: str) -> Sheet:
        """Return the drawing as a sheet, a hair larger all round."""
        marks = tuple(moved(mark, complex(PAD, PAD)) for mark in self.marks)
        return Sheet(self.width + 2 * PAD, self.height + 2 * PAD, marks, title, alt, self.symbols)


def moved(mark: Mark, by: Point) -> Mark:
    """Return a mark moved by a vector in millimetres."""
    motion = shift(by)
    match mark:
        case Area():
            return replace(mark, region=motion.region(mark.region))
        case Stroke():
            return replace(mark, segments=tuple(motion.segment(s) for s in mark.segments))
        case Text():
            return replace(mark, at=mark.at + by)
        case Use():
            return replace(mark, motion=mark.motion.then(motion))


def beside(drawings: Sequence[Drawing], gap: float) -> Drawing:
    """Return drawings side by side, their top edges level."""
    placed: list[Drawing] = []
    left = 0.0
    for drawing in drawings:
        placed.append(drawing.moved(complex(left, 0)))
        left += drawing.width + gap
    return together(placed)


def together(drawings: Iterable[Drawing]) -> Drawing:
    """Return drawings that already stand at their places as one."""
    several = tuple(drawings)
    symbols = {name: marks for d in several for name, marks in d.symbols.items()}
    marks = tuple(mark for d in several for mark in d.marks)
    return Drawing(max(d.width for d in several), max(d.height for d in several), marks, symbols)


def least_share(sheet: Sheet, wanted: float) -> float:
    """Return the share of its size to which a sheet may shrink: as wanted, but its lettering stays legible."""
    sizes = [mark.size for mark in sheet.marks if isinstance(mark, Text)]
    return min(1.0, max(wanted, SMALLEST / min(sizes))) if sizes else wanted
