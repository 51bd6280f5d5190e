"""Cut pieces from full-width strips: shelves, tallest pieces first, lower ones in what is left of taller strips.

The method is best-fit decreasing height (a classic of two-dimensional strip packing), tried with every way to
turn the pieces, and with strips that are filled one after the other or all alike. Equal pieces are placed by
division, never one by one, so that the time does not depend on how many there are.
"""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.model import Crosscut
from quarterturn.measure import Length, inches

TIGHT: Length = inches(0, 1, 2)
"""With less than this left of a strip, cloth a little narrower loses a piece (common practice)."""

SPREADS = (None, 0, 1, 2, 3)
"""How strips are opened for a kind: filled one after another, or all alike in so many strips beyond its need.

Further strips can pay: what they leave free may hold lower pieces that else need strips of their own.
"""

MOST_TRIES = 16
"""Ways to turn the pieces that are tried one by one; where there are more, only the uniform ones are."""


@dataclass(frozen=True, slots=True)
class Shelf:
    """Equal strips of a `height`, cut into `crosscuts` and `splits`, with `room` left at the end of each.

    `ends` are heights of strips cut from that room, one below the other, each with the number of the run it goes into.
    """

    height: Length
    strips: int
    crosscuts: tuple[Crosscut, ...]
    room: Length
    splits: tuple[Segment, ...] = ()
    ends: tuple[tuple[int, Length], ...] = ()

    @property
    def pieces(self) -> Iterator[Crosscut]:
        """Yield the pieces of one strip, those of its segments included."""
        yield from self.crosscuts
        for split in self.splits:
            yield from (replace(cut, count=cut.count * split.count) for cut in split.crosscuts)


@dataclass(frozen=True, slots=True)
class Segment:
    """So many equal lengths of a strip, each cut across its height into `crosscuts` that lie one below the other."""

    along: Length
    across: Length
    count: int
    crosscuts: tuple[Crosscut, ...]


_Turning: TypeAlias = tuple[Position, ...]
_Preference: TypeAlias = Callable[[Shelf], tuple[Length, Length]]


def shelve(kinds: Sequence[Kind], usable: Length) -> tuple[Shelf, ...]:
    """Return strips that hold all pieces, the longest pieces first: the shortest plan found.

    Every kind must have a position. The result does not depend on the order of the kinds. Among plans of one
    length the one with fewer different heights is taken, then the one with fewer strips filled to their end,
    then the one with fewer kinds of strip.
    """
    kinds = sorted(kinds, key=lambda kind: (kind.positions, kind.label))
    plans = [
        _shelved(kinds, turning, usable, preference, spread)
        for turning in _turnings(kinds, usable)
        for preference in (_least_room, _least_height)
        for spread in (SPREADS if len(kinds) > 1 else SPREADS[:2])
    ]
    best = min(plans, key=_cost)
    return tuple(sorted(_merged(best), key=cutting_order))


def length_of(shelves: Iterable[Shelf]) -> Length:
    """Return the length of cloth that strips take."""
    return sum((shelf.height * shelf.strips for shelf in shelves), Length(0))


def strips_alone(count: int, position: Position, usable: Length) -> int:
    """Return how many strips pieces need that share their strips with no others."""
    return -(-count // (usable // position.along))


def _least_room(shelf: Shelf) -> tuple[Length, Length]:
    return shelf.room, shelf.height


def _least_height(shelf: Shelf) -> tuple[Length, Length]:
    return shelf.height, shelf.room


def _cost(plan: Sequence[Shelf]) -> tuple[Length, int, int, int]:
    heights = {shelf.height for shelf in plan}
    tight = sum(shelf.strips for shelf in plan if shelf.room < TIGHT)
    return length_of(plan), len(heights), tight, len(plan)


def cutting_order(shelf: Shelf) -> tuple[Length, Length, int, list[str]]:
    """Put the strip with the longest piece first: borders before squares, large squares before small ones."""
    pieces = list(shelf.pieces)
    longest = max(max(cut.along, cut.across) for cut in pieces)
    return -longest, -shelf.height, -shelf.strips, [cut.piece for cut in pieces]


def _turnings(kinds: Sequence[Kind], usable: Length) -> Iterable[_Turning]:
    """Return the ways to turn the pieces that are worth a try; all as they are listed comes first."""
    tries = 1
    for kind in kinds:
        tries *= len(kind.positions)
    if tries <= MOST_TRIES:
        return itertools.product(*(kind.positions for kind in kinds))
    return (
        tuple(kind.positions[0] for kind in kinds),
        tuple(min(kind.positions, key=lambda p: p.across) for kind in kinds),
        tuple(max(kind.positions, key=lambda p: p.across) for kind in kinds),
        tuple(_frugal(kind, usable) for kind in kinds),
    )


def _frugal(kind: Kind, usable: Length) -> Position:
    return min(kind.positions, key=lambda p: strips_alone(kind.count, p, usable) * p.across)


def _shelved(
    kinds: Sequence[Kind], turning: _Turning, usable: Length, preference: _Preference, spread: int | None
) -> list[Shelf]:
    """Place the kinds, tallest first, so that every strip there is high enough for all that follow.

    Of the last, lowest kind no strips are opened beyond need: nothing comes to use what they would leave.
    """
    shelves: list[Shelf] = []
    order = sorted(
        zip(kinds, turning, strict=True), key=lambda one: (-one[1].across, -one[1].along, one[0].label)
    )
    for number, (kind, lying) in enumerate(order, 1):
        beyond = None if spread is None else spread if number < len(order) else 0
        cut = Crosscut(kind.label, lying.along, lying.across, kind.count)
        shelves, left = _fill(sorted(shelves, key=preference), cut)
        shelves += _opened(cut, left, usable, beyond)
    return shelves


def _merged(shelves: Iterable[Shelf]) -> list[Shelf]:
    """Make equal strips one shelf."""
    strips: Counter[tuple[Length, tuple[Crosscut, ...], Length]] = Counter()
    for shelf in shelves:
        strips[shelf.height, shelf.crosscuts, shelf.room] += shelf.strips
    return [Shelf(height, count, cuts, room) for (height, cuts, room), count in strips.items()]


def _opened(cut: Crosscut, count: int, usable: Length, spread: int | None) -> Iterator[Shelf]:
    """Open strips for pieces: full ones and a last one, or some beyond need, all alike but for one piece."""
    full = int(usable // cut.along)
    loads = [(count // full, full), (1, count % full)]
    if spread is not None and count:
        strips = min(count, -(-count // full) + spread)
        fewer, more = divmod(count, strips)
        loads = [(more, fewer + 1), (strips - more, fewer)]
    for strips, held in loads:
        if strips and held:
            yield _with(Shelf(cut.across, strips, (), usable), strips, cut, held)


def _fill(shelves: list[Shelf], cut: Crosscut) -> tuple[list[Shelf], int]:
    """Fill what is left of the strips there are, in order; return them and how many pieces are left over."""
    filled: list[Shelf] = []
    left = cut.count
    for shelf in shelves:
        for loaded, placed in _loaded(shelf, cut, left):
            filled.append(loaded)
            left -= placed
    return filled, left


def _loaded(shelf: Shelf, cut: Crosscut, count: int) -> Iterator[tuple[Shelf, int]]:
    """Put up to `count` pieces on equal strips: some are filled, one may be filled in part, the rest stay."""
    each = min(count, int(shelf.room // cut.along))
    full = min(shelf.strips, count // each) if each else 0
    rest = count - full * each if each and full < shelf.strips else 0
    for strips, held in ((full, each), (1 if rest else 0, rest), (shelf.strips - full - bool(rest), 0)):
        if strips:
            yield _with(shelf, strips, cut, held), strips * held


def _with(shelf: Shelf, strips: int, cut: Crosscut, held: int) -> Shelf:
    if not held:
        return Shelf(shelf.height, strips, shelf.crosscuts, shelf.room)
    more = Crosscut(cut.piece, cut.along, cut.across, held)
    return Shelf(shelf.height, strips, (*shelf.crosscuts, more), shelf.room - cut.along * held)
