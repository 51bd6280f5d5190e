"""Shapes laid in the hollows of larger ones, and in scraps.

Each shape, the largest first, goes into the tightest hollow or scrap in which a place is found. A shape lies only in
hollows of larger shapes, so that nothing ever lies in itself.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from quarterturn.geometry import Point, Region
from quarterturn.materials.nesting.bodies import Body, Catalogue, shrunk_region
from quarterturn.materials.nesting.model import Scrap
from quarterturn.materials.nesting.rooms import NoFit, Room, inside_area

Content = tuple[int, int, Point]
"""What lies in a hollow: a shape, its turn, and its place, all as the owner lies when it is not turned."""

State = tuple["Source", tuple[Content, ...]]


@dataclass(frozen=True, slots=True)
class Source:
    """Equal hollows, by the number of their shape, or equal scraps, by theirs."""

    number: int
    is_scrap: bool


@dataclass(slots=True)
class Hole:
    """One hollow or scrap. `owner` is the number of the piece it is in, or which of the equal scraps it is."""

    source: Source
    owner: int
    contents: tuple[Content, ...] = ()
    pieces: tuple[int, ...] = ()
    """The numbers of the pieces in it, in the order of `contents`."""

    @property
    def state(self) -> State:
        """Return what it is and holds: equal states have the same places left."""
        return self.source, self.contents


class Holes:
    """The hollows and scraps of a job, and where there is a place in them."""

    def __init__(self, catalogue: Catalogue, nofit: NoFit, scraps: Sequence[Scrap]) -> None:
        self._catalogue, self._nofit, self.scraps = catalogue, nofit, tuple(scraps)
        self._rooms: dict[State, Room] = {}
        self._spots: dict[tuple[State, int], Content | None] = {}
        self._areas: dict[Source, float] = {}

    def region(self, source: Source) -> Region:
        """Return the hollow or the scrap."""
        owners = self.scraps if source.is_scrap else self._catalogue.shapes
        owner = owners[source.number]
        return owner.region if isinstance(owner, Scrap) else owner.hollow

    def room_left(self, state: State) -> float:
        """Return the area of what nothing covers yet."""
        source, contents = state
        if source not in self._areas:
            self._areas[source] = self.region(source).area()
        return self._areas[source] - sum(self._catalogue.area(shape) for shape, _, _ in contents)

    def spot(self, state: State, shape: int) -> Content | None:
        """Return a place for a shape; None where none is found."""
        key = (state, shape)
        if key not in self._spots:
            self._spots[key] = self._found(state, shape)
        return self._spots[key]

    def _found(self, state: State, shape: int) -> Content | None:
        bodies = self._allowed(state[0], shape)
        if not bodies or self._catalogue.area(shape) > self.room_left(state):
            return None
        found = self._room(state).lowest(bodies)
        if found is None:
            return None
        body, at = found
        return shape, body.turn, complex(round(at.real, 5), round(at.imag, 5))

    def _allowed(self, source: Source, shape: int) -> tuple[Body, ...]:
        """Return the turns in the hollow that stay allowed however its owner is turned."""
        if source.is_scrap:
            return self._catalogue.bodies(shape)
        owners = {turn % 4 for turn in self._catalogue.shapes[source.number].turns}
        allowed = {turn % 4 for turn in self._catalogue.shapes[shape].turns}
        turns = (t for t in range(4) if all((t + owner) % 4 in allowed for owner in owners))
        return self._catalogue.bodies(shape, tuple(turns))

    def _room(self, state: State) -> Room:
        """Return the room of a state: that of the state before, and one piece more."""
        if state not in self._rooms:
            source, contents = state
            if not contents:
                gap = 0.0 if source.is_scrap else self._catalogue.gap
                self._rooms[state] = Room(inside_area(shrunk_region(self.region(source), gap)), self._nofit)
            else:
                shape, turn, at = contents[-1]
                room = self._room((source, contents[:-1])).copy()
                room.put(self._catalogue.body(shape, turn), at)
                self._rooms[state] = room
        return self._rooms[state]

    def most(self, state: State, shape: int, limit: int = 99) -> int:
        """Return how many of a shape are found places for, one after another."""
        count = 0
        while count < limit and (spot := self.spot(state, shape)):
            state = (state[0], (*state[1], spot))
            count += 1
        return count


@dataclass(frozen=True, slots=True)
class Held:
    """Pieces, the largest first, by the number of their shape; those held by nothing; and all hollows and scraps."""

    pieces: tuple[int, ...]
    outermost: tuple[int, ...]
    holes: tuple[Hole, ...]


def hold(catalogue: Catalogue, holes: Holes, counts: Sequence[int], *, nothing: bool = False) -> Held:
    """Lay every piece for which there is a hollow or a scrap in the tightest one; `nothing` leaves all outermost."""
    kinds = sorted(range(len(counts)), key=lambda n: (-catalogue.area(n), catalogue.shapes[n].name))
    pieces = [kind for kind in kinds for _ in range(counts[kind])]
    there = [Hole(Source(n, True), k) for n, scrap in enumerate(holes.scraps) for k in range(scrap.count)]
    outermost: list[int] = []
    hopeless: int | None = None
    for number, kind in enumerate(pieces):
        spot = None
        if kind != hopeless and not nothing:
            hole, spot = _tightest(holes, there, kind)
        if spot:
            hole.contents, hole.pieces = (*hole.contents, spot), (*hole.pieces, number)
        else:
            outermost.append(number)
            hopeless = kind
        if not catalogue.shapes[kind].hollow.is_empty():
            there.append(Hole(Source(kind, False), number))
    return Held(tuple(pieces), tuple(outermost), tuple(there))


def _tightest(holes: Holes, there: Sequence[Hole], kind: int) -> tuple[Hole, Content | None]:
    """Return the hole with the least area left in which there is a place, the first of several, and the place."""
    states: dict[State, Hole] = {}
    for hole in there:
        states.setdefault(hole.state, hole)
    for state, hole in sorted(states.items(), key=lambda one: (holes.room_left(one[0]), one[1].owner)):
        if spot := holes.spot(state, kind):
            return hole, spot
    return Hole(Source(0, True), 0), None
