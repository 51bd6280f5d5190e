"""Tracings in staggered rows: every second row is shifted, so that rows reach into each other. Told by rule."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.geometry import Motion, quarter_turns, shift
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Stagger:
    """Rows in turn of `odd` and `even` tracings, the first, third and so on odd; all lengths lead to middles.

    Measured across the web from its left edge, and along it from its cut end, on the steps of a ruler.
    """

    odd: int
    even: int
    first: Length
    """From the left edge to the first middle of an odd row."""
    second: Length
    """From the left edge to the first middle of an even row."""
    pitch: Length
    """From middle to middle in a row."""
    top: Length
    """From the cut end to the middles of the first row."""
    down: Length
    """From an odd row to the even one after it."""
    back: Length
    """From an even row to the odd one after it."""
    quarter: bool
    """Whether all templates are traced turned by a quarter."""
    flipped: bool
    """Whether those in even rows are turned by a half besides."""

    @property
    def in_one_line(self) -> bool:
        """Tell whether every second row lies on the line of the one before it, between its tracings."""
        return not self.down

    def rows(self, count: int) -> int:
        """Return how many rows so many tracings take."""
        pairs, left = divmod(count, self.odd + self.even)
        return 2 * pairs + (0 if not left else 1 if left <= self.odd else 2)

    def along(self, row: int) -> Length:
        """Return how far from the cut end the middles of a row lie, the first row being 0."""
        return self.top + row // 2 * (self.down + self.back) + row % 2 * self.down

    def motions(self, count: int) -> Iterator[Motion]:
        """Return the motions that lead a shape, as its template is printed, to its places, row by row."""
        row = 0
        while count > 0:
            start, most = (self.second, self.even) if row % 2 else (self.first, self.odd)
            turned = quarter_turns(int(self.quarter) + 2 * (row % 2 if self.flipped else 0))
            for n in range(min(most, count)):
                yield turned.then(shift(complex(start + n * self.pitch, self.along(row))))
            count, row = count - most, row + 1
