"""What is nested, and what a nesting says: shapes, scraps, placements, centres that remain."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.geometry import Motion, Path, Region
from quarterturn.measure import Length

TOUCH = 3e-5
"""Outlines that overlap, or miss their gap, by no more than this are said to touch, in inches.

It is what places on a grid of 1/100,000 inch, and curves flattened for a check, can be out by.
"""

STEP = Fraction(1, 10_000)
"""Lengths that are found are rounded up to this, and bounds down, in inches."""


@dataclass(frozen=True, slots=True)
class Shape:
    """A kind of tracing: its outermost outline, what is hollow in it, how many, and how it may be turned.

    `turns` are quarter turns, clockwise as seen, from the position in which the outline is given. A shape is never
    flipped: one that is traced mirrored is given mirrored. `hollow` is left of the web, or of the cloth, when the
    shape is cut: other shapes may lie in it.
    """

    name: str
    outline: Path
    hollow: Region = Region(())  # noqa: RUF009
    count: int = 1
    turns: tuple[int, ...] = (0, 2)


@dataclass(frozen=True, slots=True)
class Scrap:
    """Pieces left over from before, such as grounds cut away: shapes may lie in them, up to their edges."""

    name: str
    region: Region
    count: int = 1


@dataclass(frozen=True, slots=True)
class Place:
    """Where one shape lies: `motion` moves its outline to the sheet or the scrap that it is cut from.

    x runs across the roll from its left edge, y along it from its beginning.
    """

    shape: str
    motion: Motion
    within: int | None = None
    """The place, by its number in the nesting, of the shape in whose hollow this one lies; None for the outermost."""
    scrap: str | None = None
    """The name of the scrap that it is cut from; None for the roll or a sheet."""
    number: int = 0
    """Which of the sheets, or of the equal scraps, counted from 0."""


@dataclass(frozen=True, slots=True)
class Centre:
    """Equal hollows, or scraps, after the nesting, and what still fits.

    `region` is what remains, as it lies in the shape as given (untouched hollows whole, others less what they hold
    and the gap round it). Width and height are those of the whole hollow.
    """

    owner: str
    count: int
    width: float
    height: float
    holds: tuple[str, ...]
    region: Region
    disc: float
    """The diameter of the largest disc in what remains."""
    fits: tuple[tuple[str, int], ...] = ()
    """Of the further shapes asked about, how many of each, taken alone, fit in one of these."""


@dataclass(frozen=True, slots=True)
class Nesting:
    """Places of all shapes but those that fit nowhere, and how good the nesting is.

    On a roll, `length`, `bound` and `rows_length` are lengths of it; on sheets they are numbers of sheets.
    """

    places: tuple[Place, ...]
    unplaced: tuple[tuple[str, int], ...]
    length: Length
    bound: Length
    """No nesting of the same shapes, in centres or not, is shorter."""
    rows_length: Length
    """What plain rows of all shapes take, with nothing in centres or scraps."""
    centres: tuple[Centre, ...]

    @property
    def saved(self) -> Length:
        """Return what is saved against plain rows."""
        return self.rows_length - self.length

    @property
    def proved(self) -> bool:
        """Return whether no nesting is shorter by more than the rounding of lengths."""
        return self.length - self.bound <= STEP

    @property
    def counts(self) -> Counter[str]:
        """Return how often each shape is placed."""
        return Counter(place.shape for place in self.places)
