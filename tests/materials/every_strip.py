"""An exhaustive search for the shortest plan of strips: the judge of bounds and plans of a handful of pieces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from quarterturn.materials.kinds import Kind
from quarterturn.measure import Length


def shortest(wanted: Sequence[Kind], usable: Length) -> Length:
    """Return the length of the best plan of strips, by trying every strip for every rest of the pieces."""
    heights = {p.across for kind in wanted for p in kind.positions}

    @cache
    def least(counts: tuple[int, ...]) -> Length:
        if not any(counts):
            return Length(0)
        return min(
            height + least(tuple(a - b for a, b in zip(counts, strip, strict=True)))
            for height in heights
            for strip in strips(wanted, counts, height, usable)
        )

    return least(tuple(kind.count for kind in wanted))


def strips(
    wanted: Sequence[Kind], counts: tuple[int, ...], height: Length, usable: Length
) -> set[tuple[int, ...]]:
    """Return all that a strip of a height can hold, as counts of the kinds."""
    slots = [(i, p.along) for i, kind in enumerate(wanted) for p in kind.positions if p.across <= height]

    def fill(number: int, room: Length, held: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
        if number == len(slots):
            yield held
            return
        which, along = slots[number]
        for more in range(min(counts[which] - held[which], int(room // along)) + 1):
            grown = tuple(n + more if i == which else n for i, n in enumerate(held))
            yield from fill(number + 1, room - more * along, grown)

    return {held for held in fill(0, usable, (0,) * len(wanted)) if any(held)}
