"""Pieces of cloth that are there by themselves, a parcel for short: precuts to buy, and what lies on the shelf.

A parcel lies as it came off the bolt: its width runs across the cloth, from selvage to selvage, its height along it.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass

from quarterturn.measure import Length, Units, inches, mm, show_length


class Precut(enum.Enum):
    """What cloth is sold as, besides lengths off the bolt (trade words)."""

    FAT_QUARTER = "fat quarter"
    FAT_EIGHTH = "fat eighth"
    TEN_INCH = "10 inch square"
    STRIP = "2 1/2 inch strip"


PINKED = (Precut.TEN_INCH, Precut.STRIP)
"""Cut to size by machine, with pinked edges: used as they are, nothing is squared off."""

_NAMES = {
    Precut.FAT_QUARTER: "fat quarter",
    Precut.FAT_EIGHTH: "fat eighth",
    Precut.TEN_INCH: '10" square',
    Precut.STRIP: '2½" strip',
}


@dataclass(frozen=True, slots=True)
class Parcel:
    """Equal pieces of cloth. `width` and `height` can be counted on before they are squared up."""

    name: str
    """What one is called: fat quarter, or by its size."""
    width: Length
    height: Length
    squaring: Length
    """Taken off the width, and off the height, to square it up."""
    count: int | None = None
    """How many there are; None where as many are bought as it takes."""
    precut: Precut | None = None
    """What of the trade's precuts it is."""

    @property
    def pinked(self) -> bool:
        """Tell whether its edges are pinked, so that it is measured from point to point."""
        return self.precut in PINKED


_FAT = {
    Units.INCH: (inches(21), inches(18), inches(9)),
    Units.METRIC: (mm(525), mm(500), mm(250)),
}
"""Of fat quarters and eighths what is left across when the selvage is off, and their heights along the cloth.

18" × 21" and 9" × 21" are published for cloth of 42" (allpeoplequilt.com), stated as 18" × 22" (sew4home.com).
Metric shops cut half a metre of cloth 110 cm wide in two: 50 × 55 cm (common practice, no source).
"""

_STATED = {
    Units.INCH: (inches(22), inches(18), inches(9)),
    Units.METRIC: (mm(550), mm(500), mm(250)),
}
"""What such a precut is called in a shop, selvage and all."""


def sides_of(precut: Precut, units: Units, usable_width: Length) -> tuple[Length, Length]:
    """Return the width and height that can be counted on; strips are as long as the cloth is usable."""
    across, quarter, eighth = _FAT[units]
    match precut:
        case Precut.FAT_QUARTER:
            return across, quarter
        case Precut.FAT_EIGHTH:
            return across, eighth
        case Precut.TEN_INCH:
            return inches(10), inches(10)
        case Precut.STRIP:
            return usable_width, inches(2, 1, 2)


def stated_sides(precut: Precut, units: Units) -> tuple[Length, Length] | None:
    """Return the width and height by which shops call it, where those are more than can be counted on."""
    across, quarter, eighth = _STATED[units]
    heights = {Precut.FAT_QUARTER: quarter, Precut.FAT_EIGHTH: eighth}
    return (across, heights[precut]) if precut in heights else None


def precut_of(word: str) -> Precut | None:
    """Return the precut that a word names; None where it names none."""
    return next((each for each in Precut if each.value == word), None)


def bought_parcel(precut: Precut, units: Units, usable_width: Length, squaring: Length) -> Parcel:
    """Return a precut as it is bought where the design says no more than its word."""
    width, height = sides_of(precut, units, usable_width)
    loss = Length(0) if precut in PINKED else squaring
    return Parcel(_NAMES[precut], width, height, loss, None, precut)


def name_of(precut: Precut | None) -> str:
    """Return what a precut is called in sentences; of one's own size simply a piece."""
    return _NAMES[precut] if precut else "piece"


def size_name(width: Length, height: Length, units: Units) -> str:
    """Return what pieces are called that have no name: by their size."""
    return f"piece of {show_length(width, units)} × {show_length(height, units)}"


def counted(count: int, name: str) -> str:
    """Print so many pieces: `1 fat quarter`, `6 fat quarters`, and `(9) 10" squares`, which no-one can misread."""
    called = name if count == 1 else several(name)
    return f"({count:,}) {called}" if name[:1].isdigit() else f"{count:,} {called}"


def several(name: str) -> str:
    """Return the plural of what a piece is called: fat quarters, pieces of 21" × 17½"."""
    noun, of, size = name.partition(" of ")
    return f"{noun}s{of}{size}"
