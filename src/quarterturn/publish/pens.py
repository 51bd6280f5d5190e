"""The drawing protocol: a sheet is drawn by telling a pen its marks, in their order.

A pen knows how its kind of file writes a mark and decides nothing. `Recorder` keeps what it was told.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import Protocol, TypeAlias

from quarterturn.geometry import Motion, Region, Segment
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet, Stroke, Text, Use


class Pen(Protocol):
    """What every pen can do. Lengths are millimetres; a later mark covers an earlier one."""

    def symbol(self, name: str, marks: Sequence[Mark]) -> None:
        """Learn a group of marks that will be used by its name."""

    def area(self, region: Region, ink: Ink) -> None:
        """Fill a region and draw its outline."""

    def stroke(self, segments: Sequence[Segment], ink: Ink) -> None:
        """Draw an open run of segments."""

    def text(self, text: Text) -> None:
        """Set a line of text."""

    def use(self, symbol: str, motion: Motion) -> None:
        """Lay down a symbol that was learnt before."""


def draw(sheet: Sheet, pen: Pen) -> None:
    """Tell a pen the symbols of a sheet, then its marks."""
    for name, marks in sheet.symbols.items():
        pen.symbol(name, marks)
    lay(sheet.marks, pen)


def lay(marks: Iterable[Mark], pen: Pen) -> None:
    """Tell a pen marks one after the other."""
    for mark in marks:
        match mark:
            case Area(region, ink):
                pen.area(region, ink)
            case Stroke(segments, ink):
                pen.stroke(segments, ink)
            case Text():
                pen.text(mark)
            case Use(symbol, motion):
                pen.use(symbol, motion)


def laid_out(sheet: Sheet) -> Iterator[Mark]:
    """Return the marks of a sheet with every symbol put in its places, for pens that have no symbols.

    A symbol may not use another, and a mirrored symbol may hold no text.
    """
    for mark in sheet.marks:
        if isinstance(mark, Use):
            yield from (moved(part, mark.motion) for part in sheet.symbols[mark.symbol])
        else:
            yield mark


def moved(mark: Mark, motion: Motion) -> Mark:
    """Return a mark moved; text is turned with it, but may not be mirrored."""
    match mark:
        case Area(region, ink):
            return Area(motion.region(region), ink)
        case Stroke(segments, ink):
            return Stroke(tuple(motion.segment(s) for s in segments), ink)
        case Text():
            return _moved_text(mark, motion)
        case Use():
            raise AssertionError(f"a symbol uses another: {mark.symbol}")


def _moved_text(text: Text, motion: Motion) -> Text:
    assert not motion.mirrored, f"text would be mirrored: {text.text}"
    turn = text.turn + math.degrees(cmath.phase(motion.factor))
    return replace(text, at=motion(text.at), turn=turn)


Told: TypeAlias = (
    tuple[str, str, tuple[Mark, ...]]
    | tuple[str, Region, Ink]
    | tuple[str, tuple[Segment, ...], Ink]
    | tuple[str, Text]
    | tuple[str, str, Motion]
)
"""The verb and what came with it."""


@dataclass
class Recorder:
    """A pen that keeps what it is told, for tests and to play it to another."""

    told: list[Told] = field(default_factory=list)

    def symbol(self, name: str, marks: Sequence[Mark]) -> None:
        """Keep a symbol."""
        self.told.append(("symbol", name, tuple(marks)))

    def area(self, region: Region, ink: Ink) -> None:
        """Keep an area."""
        self.told.append(("area", region, ink))

    def stroke(self, segments: Sequence[Segment], ink: Ink) -> None:
        """Keep a stroke."""
        self.told.append(("stroke", tuple(segments), ink))

    def text(self, text: Text) -> None:
        """Keep a text."""
        self.told.append(("text", text))

    def use(self, symbol: str, motion: Motion) -> None:
        """Keep a use."""
        self.told.append(("use", symbol, motion))
