"""Tracings nested on web: smaller rings in the centres of larger ones, the rest close together."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.geometry import Motion, Point
from quarterturn.measure import Length

QUARTERS = (1 + 0j, 1j, -1 + 0j, -1j)


@dataclass(frozen=True, slots=True)
class TracedPlace:
    """Where one tracing lies on the web, seen from the paper side.

    `motion` leads from the shape as its template is printed, the middle of its upright box at 0, to the web: x runs
    across it from its left edge, y along it from its cut end. It turns by quarters and shifts, and never mirrors.
    """

    shape: str
    """What the template of the shape is called."""
    motion: Motion
    within: int | None
    """The place, by its number among all, of the ring in whose centre this one lies; None for the outermost."""
    sheet: int = 0
    """Which of the sheets it lies on, from 0, where web is sold by the sheet."""

    @property
    def middle(self) -> Point:
        """Return where the middle of the shape lies: from the left edge, and from the cut end."""
        return self.motion.move

    @property
    def turned(self) -> int:
        """Return by how many degrees it is turned, clockwise."""
        return 90 * QUARTERS.index(self.motion.factor)


@dataclass(frozen=True, slots=True)
class WebCentre:
    """Equal centres that are cut out of rings and remain, or what remains of them."""

    shape: str
    """The template of the ring that it comes out of."""
    count: int
    width: Length
    """Of the whole centre, to the nearest step of a ruler; so its height."""
    height: Length
    holds: tuple[str, ...]
    """What lies in it."""
    disc: Length
    """Across the largest disc that still lies in one of these, down to a step of a ruler."""
    fits: tuple[tuple[str, int], ...]
    """Of the quilt's own shapes, how many more of each, taken alone, fit in one of these."""


@dataclass(frozen=True, slots=True)
class NestedWeb:
    """A place for every tracing, middles on the steps of a ruler."""

    places: tuple[TracedPlace, ...]
    gap: Length
    """Between any two rings, and a ring and the centre that it lies in: no less than this."""
    length: Length
    """Of all the sheets, one after another, where web is sold by the sheet."""

    def numbers(self, shape: str) -> tuple[int, ...]:
        """Return the numbers of the places of a shape, from 0."""
        return tuple(number for number, place in enumerate(self.places) if place.shape == shape)
