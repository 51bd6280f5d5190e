"""What every true-size page has: its paper, a head with a legend, and test marks to hold a ruler to.

A page is held to its scale by a 1 inch and a 2 cm square, a 10 cm and a 4 inch line: the longer ones because a
1 inch square hides an error of 3 % (trade check 85).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.design import Paper
from quarterturn.geometry import Bounds, Line, Path, Point, Region, rectangle
from quarterturn.publish.lettering import broken, largest_size, shortened
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Sheet, Stroke, Text

PAPER_MM = {Paper.LETTER: (215.9, 279.4), Paper.A4: (210.0, 297.0)}
"""Letter is 8½ × 11 inches (ANSI/ASME Y14.1, size A), A4 is 210 × 297 mm (ISO 216)."""
PAPER_NAMES = {Paper.LETTER: "Letter", Paper.A4: "A4"}

MARGIN = 10.0
"""Everything but the outermost web line keeps this far from the edge of the paper, in millimetres."""
BLEED = 5.0
"""The outermost web line may come this near: most printers leave 4 to 5 mm blank (common practice)."""

INK = "#1d1d1b"
SMALLEST = 2.5
"""No lettering is smaller than this, in millimetres."""
TITLE, PLAIN, NOTE = 5.0, 3.2, 2.8
LEADING = 4.4
FINE = Ink(None, INK, 0.2)

_LEGEND = 52.0
"""Width of the legend's column."""
_FIRST_ROW = 20.5
_TESTS = MM_PER_INCH
"""Height of the row of test marks."""
_CAUTION = 6.5
_METRIC_SQUARE = 20.0


@dataclass(frozen=True, slots=True)
class Entry:
    """A line of the legend: a sample of the ink, and what it means."""

    ink: Ink
    text: str


@dataclass(frozen=True, slots=True)
class Head:
    """What the top of a page says."""

    title: str
    rows: tuple[str, ...]
    legend: tuple[Entry, ...]
    number: int = 1
    count: int = 1

    @property
    def depth(self) -> float:
        """Return where the head ends, from the top of the paper."""
        return _FIRST_ROW + (max(len(self.rows), len(self.legend)) - 1) * LEADING + 3


def body(paper: Paper, head: Head) -> Bounds:
    """Return the room between head and test marks, inside the margins."""
    width, height = PAPER_MM[paper]
    return Bounds(MARGIN, head.depth, width - MARGIN, height - MARGIN - _TESTS - _CAUTION)


def corner(paper: Paper) -> Bounds:
    """Return the room right of the test marks, where the key of the tiles stands."""
    width, height = PAPER_MM[paper]
    left = MARGIN + _TESTS + 5 + _METRIC_SQUARE + 6 + 4 * MM_PER_INCH + 6
    return Bounds(left, height - MARGIN - _TESTS, width - MARGIN, height - MARGIN)


def page(paper: Paper, head: Head, marks: Sequence[Mark], alt: str) -> Sheet:
    """Return a page of marks with its head and test marks."""
    width, height = PAPER_MM[paper]
    whole = (*_head_marks(head, width), *marks, *_test_marks(paper))
    return Sheet(width, height, whole, f"{head.title}, page {head.number} of {head.count}", alt)


def wrapped(paper: Paper, text: str) -> list[str]:
    """Break a sentence into rows that leave the legend's column free."""
    return broken(text, PAPER_MM[paper][0] - 2 * MARGIN - _LEGEND - 4, PLAIN)


def _head_marks(head: Head, width: float) -> Iterator[Mark]:
    right = width - MARGIN
    yield _title(head.title, width - 2 * MARGIN - 26)
    yield Text(complex(right, 14.2), f"page {head.number} of {head.count}", PLAIN, "end")
    for index, row in enumerate(head.rows):
        yield Text(complex(MARGIN, _FIRST_ROW + index * LEADING), row, PLAIN)
    for index, entry in enumerate(head.legend):
        y = _FIRST_ROW + index * LEADING
        yield Stroke(
            (Line(complex(right - _LEGEND, y - 1), complex(right - _LEGEND + 14, y - 1)),), entry.ink
        )
        yield Text(complex(right - _LEGEND + 16, y), entry.text, NOTE)


def _title(text: str, room: float) -> Text:
    """Return the title in the largest size that fits, cut short where none does."""
    size = largest_size(text, room, (TITLE, 4.2, 3.6), bold=True) or PLAIN
    return Text(complex(MARGIN, 14.2), shortened(text, room, size, bold=True), size, bold=True)


def _test_marks(paper: Paper) -> Iterator[Mark]:
    """Return the caution, two squares and two rulers."""
    top = PAPER_MM[paper][1] - MARGIN - _TESTS
    yield Text(complex(MARGIN, top - 2.2), _caution(paper), PLAIN, bold=True)
    yield from _square(complex(MARGIN, top), MM_PER_INCH, '1"', "test square")
    metric = complex(MARGIN + MM_PER_INCH + 5, top + MM_PER_INCH - _METRIC_SQUARE)
    yield from _square(metric, _METRIC_SQUARE, "2 cm", "test square")
    left = metric.real + _METRIC_SQUARE + 6
    yield from _ruler(complex(left, top + 8), 10, 10.0, 2, "10 cm")
    yield from _ruler(complex(left, top + 21), 4, MM_PER_INCH, 4, '4"')


def _caution(paper: Paper) -> str:
    name = PAPER_NAMES[paper]
    return f"Print at 100 % (actual size) on {name} paper; measure the squares and lines before cutting."


def _square(at: Point, side: float, size: str, text: str) -> Iterator[Mark]:
    path = rectangle(at.real, at.imag, at.real + side, at.imag + side)
    middle = at + complex(side, side) / 2
    yield Area(Region((path,)), FINE)
    yield Text(middle - 0.5j, size, TITLE, "middle", bold=True)
    yield Text(middle + 4.2j, text, SMALLEST, "middle")


def _ruler(at: Point, steps: int, step: float, parts: int, text: str) -> Iterator[Mark]:
    """Return a scale that starts at a point: long ticks at whole steps, short ones at their parts."""
    end = at + steps * step
    yield Stroke((Line(at, end),), FINE)
    for tick in range(steps * parts + 1):
        foot = at + tick * step / parts
        yield Stroke((Line(foot, foot - (1.5j if tick % parts else 3j)),), FINE)
    yield Text(at + 3.6j, "0", NOTE, "middle")
    yield Text(end + 3.6j, text, NOTE, "end")
    yield Text((at + end) / 2 + 3.6j, f"this line is {text} long", NOTE, "middle")


def outline(path: Path, ink: Ink) -> Area:
    """Return the outline of a path as a mark."""
    return Area(Region((path,)), ink)
