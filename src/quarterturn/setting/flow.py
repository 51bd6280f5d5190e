"""Curves that flow: every piece of curve followed from unit to unit through the whole top."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.blocks import Blocks
from quarterturn.design import Design
from quarterturn.setting.curves import CurvePiece, Curves, End, Link
from quarterturn.setting.joins import Turned, meeting_at
from quarterturn.setting.model import Flow, Meeting, PlacedUnit, Side, Stop, Trail, WidestStep
from quarterturn.setting.neighbours import Neighbours

NONE = -1

JUST_AS_WIDE = 1e-9
"""Steps that differ by less than this, in inches, are equally wide."""


def follow_curves(
    design: Design, blocks: Blocks, units: Sequence[PlacedUnit], neighbours: Neighbours
) -> Flow:
    """Return the rounds and paths that the curves of all units make."""
    network = Network(Curves(design, blocks), [(unit.name, unit.turn) for unit in units], neighbours)
    count, widest = network.steps()
    return Flow(tuple(network.rounds()), tuple(network.paths()), count, widest)


class Network:
    """The ends of all pieces, and which of them go on into one another.

    Ends are numbered unit by unit, piece by piece; the two ends of a piece are 2k and 2k + 1. Turning a unit changes
    where its ends lie, never their numbers.
    """

    def __init__(self, curves: Curves, units: Sequence[Turned], neighbours: Neighbours) -> None:
        self.curves, self.neighbours = curves, neighbours
        self.units = list(units)
        self.first: list[int] = []
        """The first end of each unit."""
        self.home: list[int] = []
        """The unit of each piece that has ends."""
        self.drawn: list[CurvePiece] = []
        self.numbers: list[int] = []
        """Which piece of its unit each is."""
        for index, (name, _) in enumerate(units):
            pieces = [(k, piece) for k, piece in enumerate(curves.pieces(name)) if piece.ends]
            self.first.append(2 * len(self.home))
            self.home += [index] * len(pieces)
            self.numbers += [k for k, _ in pieces]
            self.drawn += [piece for _, piece in pieces]
        self.partner = [NONE] * (2 * len(self.home))
        """The end into which each end goes on."""
        self.stepping: dict[int, int] = {}
        """The end that each of two ends that step nearly meets."""
        for unit, beside in enumerate(neighbours):
            for side, other in beside.items():
                if other.unit > unit:
                    self.link(unit, side)

    def neighbour(self, unit: int, side: Side) -> int:
        """Return the unit at a side of another; NONE where none shares that side."""
        beside = self.neighbours[unit].get(side)
        return beside.unit if beside else NONE

    def links(self, unit: int, side: Side) -> tuple[Link, ...]:
        """Return which ends of a unit and of its neighbour at a side are paired, and how far apart they are."""
        beside = self.neighbours[unit].get(side)
        if beside is None:
            return ()
        other = self.units[beside.unit]
        return self.curves.links(self.units[unit], side, other, beside.side, beside.flipped)

    def link(self, unit: int, side: Side) -> None:
        """Let the ends at a side of a unit go on into those of its neighbour that they match."""
        beside = self.neighbour(unit, side)
        for i, j, distance in self.links(unit, side):
            here, there = self.first[unit] + i, self.first[beside] + j
            if meeting_at(distance) is Meeting.MATCH:
                if self.partner[here] == self.partner[there] == NONE:  # an end goes on into one end only
                    self.partner[here], self.partner[there] = there, here
            else:
                self.stepping[here], self.stepping[there] = there, here

    def ends_of(self, unit: int) -> range:
        """Return the ends of a unit."""
        last = unit + 1 == len(self.first)
        return range(self.first[unit], len(self.partner) if last else self.first[unit + 1])

    def matched(self, unit: int) -> int:
        """Return how many ends of a unit go on."""
        return sum(self.partner[end] != NONE for end in self.ends_of(unit))

    def turn(self, unit: int, turn: int) -> None:
        """Turn one unit, and let the curves about it go on as they then do."""
        for end in self.ends_of(unit):
            if (met := self.partner[end]) != NONE:
                self.partner[end] = self.partner[met] = NONE
            if end in self.stepping:
                del self.stepping[self.stepping.pop(end)]
        self.units[unit] = (self.units[unit][0], turn)
        for side in self.neighbours[unit]:
            self.link(unit, side)

    def walk(self, start: int, most: int = 0) -> tuple[list[int], int]:
        """Go on from an end through its piece, and further: return the pieces, and the last end.

        The last end is NONE where the walk comes back to its start. `most` pieces are passed, or any number if it is 0.
        """
        pieces, end = [], start
        while True:
            pieces.append(end >> 1)
            out = end ^ 1
            end = self.partner[out]
            if end == start:
                return pieces, NONE
            if end == NONE or len(pieces) == most:
                return pieces, out

    def paths(self) -> Iterator[Trail]:
        """Follow every curve that does not close, from the first of its stops."""
        told = [False] * len(self.partner)
        for start, partner in enumerate(self.partner):
            if partner == NONE and not told[start]:
                pieces, last = self.walk(start)
                told[last] = True
                yield self._trail(pieces, (self._stop(start), self._stop(last)))

    def rounds(self) -> Iterator[Trail]:
        """Follow every curve that closes: through several units, or inside one."""
        alone = [
            (index, Trail((index,), (number,), piece.length, (), circle=False))
            for index, (name, _) in enumerate(self.units)
            for number, piece in enumerate(self.curves.pieces(name))
            if not piece.ends
        ]
        found = [*alone, *((trail.units[0], trail) for trail in self._rounds_of_several())]
        yield from (trail for _, trail in sorted(found, key=lambda round_: round_[0]))

    def _rounds_of_several(self) -> Iterator[Trail]:
        told = self._on_paths()
        for piece in range(len(told)):
            if not told[piece]:
                pieces, _ = self.walk(2 * piece)
                for passed in pieces:
                    told[passed] = True
                yield self._trail(pieces, ())

    def rounds_through(self, unit: int, most: int) -> Iterator[Trail]:
        """Follow the curves of one unit that close within so many pieces."""
        for start in self.ends_of(unit)[::2]:
            pieces, last = self.walk(start, most)
            if last == NONE:
                yield self._trail(pieces, ())

    def _on_paths(self) -> list[bool]:
        told = [False] * len(self.home)
        for start, partner in enumerate(self.partner):
            if partner == NONE and not told[start >> 1]:
                for piece in self.walk(start)[0]:
                    told[piece] = True
        return told

    def _trail(self, pieces: Sequence[int], stops: tuple[Stop, ...]) -> Trail:
        units = tuple(self.home[piece] for piece in pieces)
        length = sum(self.drawn[piece].length for piece in pieces)
        circle = not stops and len(pieces) == 4 and all(self.drawn[piece].circular for piece in pieces)
        return Trail(units, tuple(self.numbers[piece] for piece in pieces), length, stops, circle)

    def side_of(self, end: int) -> Side | None:
        """Return the side of its unit on which an end lies; None in a corner, or inside the unit."""
        return self._end(end).side

    def _end(self, end: int) -> End:
        unit = self.home[end >> 1]
        return self.curves.ends(self.units[unit])[end - self.first[unit]]

    def _stop(self, end: int) -> Stop:
        if end in self.stepping:
            return Stop.STEP
        side = self.side_of(end)
        if side is None:
            return Stop.UNDER if self._end(end).inside else Stop.CORNER
        return Stop.EDGE if self.neighbour(self.home[end >> 1], side) == NONE else Stop.SEAM

    def steps(self) -> tuple[int, WidestStep | None]:
        """Count the steps, and return the first of the widest."""
        widest: WidestStep | None = None
        for unit in sorted({self.home[end >> 1] for end in self.stepping}):
            for side, beside in self.neighbours[unit].items():
                distance = self._widest_at(unit, side) if beside.unit > unit else 0.0
                if distance > (widest.distance + JUST_AS_WIDE if widest else 0.0):
                    widest = WidestStep(unit, side, distance)
        return len(self.stepping) // 2, widest

    def _widest_at(self, unit: int, side: Side) -> float:
        steps = (d for _, _, d in self.links(unit, side) if meeting_at(d) is Meeting.STEP)
        return max(steps, default=0.0)
