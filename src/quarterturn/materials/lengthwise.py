"""Long pieces cut along the cloth: bands off the end of it, and strips across what is left beside the pieces.

A piece L long and b wide takes a band L high off the cloth and b of its width. What is left of the band is cloth as
good as any, only narrower: it is filled with other pieces, by area (`strips.filling`), before the rest of them are
planned on the whole width. Pieces cut so have no joins, and stretch less along their length (common practice).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.model import Crosscut
from quarterturn.materials.shelves import Shelf
from quarterturn.materials.strips import EFFORT, Effort, job_of
from quarterturn.materials.strips.filling import fill, fill_quickly
from quarterturn.materials.strips.planning import shelf_of
from quarterturn.measure import Length
from quarterturn.pieces import Piece

MOST_PATTERNS, MOST_NODES = 600, 50
"""How hard a rest is filled, counted in work."""


@dataclass(frozen=True, slots=True)
class Band:
    """A full-width length of cloth, cut along the cloth into long pieces; its rest is cut into strips across.

    `ends` are heights of further strips from the rest, each with the number of the run it goes into.
    """

    height: Length
    crosscuts: tuple[Crosscut, ...]
    rest: tuple[Shelf, ...]
    ends: tuple[tuple[int, Length], ...] = ()

    @property
    def used(self) -> Length:
        """Return how much of the width the long pieces take."""
        return sum((cut.along * cut.count for cut in self.crosscuts), Length(0))


def bands_of(
    pieces: Iterable[Piece], kinds: Sequence[Kind], usable: Length, effort: Effort = EFFORT
) -> tuple[list[Band], tuple[Kind, ...]]:
    """Return bands that hold the pieces, the longest first, and what of the kinds their rests do not give.

    No piece may be wider than the cloth. With the quick effort rests are filled strip by strip, without the solver.
    """
    bands, left = [], tuple(kinds)
    for crosscuts in _side_by_side(pieces, usable):
        band = Band(max(cut.across for cut in crosscuts), crosscuts, ())
        rest, left = _filled(left, usable - band.used, band.height, effort)
        bands.append(replace(band, rest=rest))
    return bands, left


def _side_by_side(pieces: Iterable[Piece], usable: Length) -> list[tuple[Crosscut, ...]]:
    """Share the pieces out, the longest first, each to the first band that has room for it."""
    rooms: list[Length] = []
    held: list[Counter[tuple[str, Length, Length]]] = []
    for piece in sorted(pieces, key=lambda piece: (-piece.length, -piece.width, piece.label)):
        for _ in range(piece.count):
            number = next((n for n, room in enumerate(rooms) if room >= piece.width), len(rooms))
            if number == len(rooms):
                rooms.append(usable)
                held.append(Counter())
            rooms[number] -= piece.width
            held[number][piece.label, piece.width, piece.length] += 1
    return [tuple(Crosscut(*lying, count) for lying, count in band.items()) for band in held]


def _filled(
    kinds: tuple[Kind, ...], width: Length, height: Length, effort: Effort
) -> tuple[tuple[Shelf, ...], tuple[Kind, ...]]:
    """Return strips that fill a cloth of this size with pieces, and the kinds with what is left of them."""
    fitting = [
        Kind(kind.label, kind.count, fits) for kind in kinds if (fits := _fits(kind.positions, width, height))
    ]
    if not fitting:
        return (), kinds
    job = job_of(fitting, width)
    areas = [kind.positions[0].along * kind.positions[0].across for kind in fitting]
    worths = [int(area / (job.along_step * job.across_step)) for area in areas]
    steps = int(height // job.across_step)
    if effort.rounds:
        found = fill(job, steps, worths, MOST_PATTERNS, MOST_NODES).strips
    else:
        found = fill_quickly(job, steps, worths)
    shelves = tuple(shelf_of(pattern, strips, fitting, job, width) for pattern, strips in found)
    given = Counter[str]()
    for shelf in shelves:
        for cut in shelf.crosscuts:
            given[cut.piece] += cut.count * shelf.strips
    left = (replace(kind, count=kind.count - given[kind.label]) for kind in kinds)
    return shelves, tuple(kind for kind in left if kind.count)


def _fits(positions: Iterable[Position], width: Length, height: Length) -> tuple[Position, ...]:
    return tuple(p for p in positions if p.along <= width and p.across <= height)
