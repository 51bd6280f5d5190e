"""Strips that the designer has decided on: cut first, so that all other pieces are planned around them.

What such strips hold is chosen here: the pieces that are named, then others that fit beside them, by area. Heights
alone are no matter of order: where only some are allowed, a piece lies in a strip as if it were as high as the lowest
of them that holds it, and the plan is as good as any, and as well proved, as one that is free.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace

from quarterturn.design import PinnedStrips
from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.model import Crosscut
from quarterturn.materials.shelves import Segment, Shelf
from quarterturn.materials.shortest import shortest_strips
from quarterturn.materials.strips import Effort, job_of
from quarterturn.materials.strips.patterns import without_excess
from quarterturn.materials.strips.planning import shelf_of
from quarterturn.materials.strips.pricing import price_strips
from quarterturn.measure import Length

BEFORE_OTHERS = 1000
"""How much more a piece that is named is worth than its area: it goes before any others."""


def pinned_strips(
    pins: Iterable[PinnedStrips], kinds: tuple[Kind, ...], usable: Length, effort: Effort
) -> tuple[tuple[Shelf, ...], tuple[Kind, ...]]:
    """Return the strips that are decided on, and the kinds with what is left of them.

    What cannot be kept is left out: a piece that is not there or too high, and strips that nothing is left for.
    """
    shelves: list[Shelf] = []
    for pin in pins:
        found = _counted(pin, kinds, usable) if pin.count else _for_pieces(pin, kinds, usable, effort)
        shelves += found
        kinds = _less(kinds, found)
    return tuple(shelves), kinds


def _counted(pin: PinnedStrips, kinds: Sequence[Kind], usable: Length) -> list[Shelf]:
    """Fill so many strips one after another, with the pieces that are named before all others."""
    shelves: list[Shelf] = []
    left = pin.count or 0
    while left and (shelf := _fullest(kinds, usable, pin.height, pin.pieces)):
        shelves.append(replace(shelf, strips=_times(shelf, kinds, left)))
        left -= shelves[-1].strips
        kinds = _less(kinds, shelves[-1:])
    return _alike(shelves)


def _times(shelf: Shelf, kinds: Iterable[Kind], most: int) -> int:
    """Return how often a strip can be cut until there is too little of one of its kinds."""
    held = Counter[str]()
    for cut in shelf.crosscuts:
        held[cut.piece] += cut.count
    return min(most, *(kind.count // held[kind.label] for kind in kinds if held[kind.label]))


def _for_pieces(pin: PinnedStrips, kinds: Sequence[Kind], usable: Length, effort: Effort) -> list[Shelf]:
    """Cut all of the named pieces from strips of the height, as few as can be, and others from what these leave."""
    named = [
        replace(kind, positions=low)
        for kind in kinds
        if kind.label in pin.pieces and (low := _up_to(kind, usable, pin.height))
    ]
    if not named:
        return []
    raised = tuple(replace(kind, positions=_at_height(kind.positions, pin.height)) for kind in named)
    found = shortest_strips(raised, usable, effort).shelves
    taken = {kind.label for kind in named}
    others: Sequence[Kind] = [kind for kind in kinds if kind.label not in taken]
    topped: list[Shelf] = []
    for shelf in (at_own_height(each, named) for each in found):
        left = shelf.strips
        while left and (more := _fullest(others, shelf.room, pin.height, ())):
            strips, cuts = _times(more, others, left), (*shelf.crosscuts, *more.crosscuts)
            topped.append(replace(shelf, strips=strips, crosscuts=cuts, room=more.room))
            others = _less(others, [replace(more, strips=strips)])
            left -= strips
        if left:
            topped.append(replace(shelf, strips=left))
    return _alike(topped)


def _fullest(kinds: Sequence[Kind], room: Length, height: Length, first: Sequence[str]) -> Shelf | None:
    """Return a strip of a height with the most area of pieces in it, some before others; None if none fits."""
    fitting = [replace(kind, positions=low) for kind in kinds if (low := _up_to(kind, room, height))]
    if not fitting:
        return None
    job = job_of(fitting, room)
    worths = [_worth(kind, first) / (job.along_step * job.across_step) for kind in fitting]
    best = price_strips(job, [int(worth) for worth in worths])[-1].pattern
    ((pattern, _),) = without_excess([(best, 1)], job.demand)
    return replace(shelf_of(pattern, 1, fitting, job, room), height=height)


def _worth(kind: Kind, first: Sequence[str]) -> Length:
    area = kind.positions[0].along * kind.positions[0].across
    return area * (BEFORE_OTHERS if kind.label in first else 1)


def _up_to(kind: Kind, room: Length, height: Length) -> tuple[Position, ...]:
    return tuple(p for p in kind.positions if p.along <= room and p.across <= height)


def _at_height(positions: Iterable[Position], height: Length) -> tuple[Position, ...]:
    return tuple(Position(p.along, height) for p in positions)


def _less(kinds: Sequence[Kind], shelves: Iterable[Shelf]) -> tuple[Kind, ...]:
    given = Counter[str]()
    for shelf in shelves:
        for cut in shelf.pieces:
            given[cut.piece] += cut.count * shelf.strips
    left = (replace(kind, count=kind.count - given[kind.label]) for kind in kinds)
    return tuple(kind for kind in left if kind.count > 0)


def _alike(shelves: Iterable[Shelf]) -> list[Shelf]:
    """Make equal strips one shelf."""
    strips = Counter[Shelf]()
    for shelf in shelves:
        strips[replace(shelf, strips=1)] += shelf.strips
    return [replace(shelf, strips=count) for shelf, count in strips.items()]


def raised_to(heights: Sequence[Length], kinds: Iterable[Kind]) -> tuple[Kind, ...]:
    """Return kinds as high as the lowest allowed strip that holds them; as they are where no height is given.

    A position that no allowed strip holds is left out, unless a piece has no other: then all of its positions stay.
    """
    if not heights:
        return tuple(kinds)
    return tuple(
        replace(kind, positions=_raised(kind.positions, heights) or kind.positions) for kind in kinds
    )


def _raised(positions: Iterable[Position], heights: Sequence[Length]) -> tuple[Position, ...]:
    holding = ((p, next((h for h in heights if h >= p.across), None)) for p in positions)
    return tuple(Position(p.along, height) for p, height in holding if height is not None)


def at_own_height(shelf: Shelf, kinds: Iterable[Kind]) -> Shelf:
    """Return strips whose pieces, planned as high as the strips, have their own height again."""
    own = {(kind.label, p.along): p.across for kind in kinds for p in kind.positions}

    def lowered(cuts: Iterable[Crosscut]) -> tuple[Crosscut, ...]:
        return tuple(replace(cut, across=own.get((cut.piece, cut.along), cut.across)) for cut in cuts)

    splits = tuple(
        Segment(each.along, each.across, each.count, lowered(each.crosscuts)) for each in shelf.splits
    )
    return replace(shelf, crosscuts=lowered(shelf.crosscuts), splits=splits)
