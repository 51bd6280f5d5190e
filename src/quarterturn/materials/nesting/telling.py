"""Layings told as places: where every piece lies, whether on the roll, in a hollow, or in a scrap."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from quarterturn.geometry import Motion, Point, quarter_turns, shift
from quarterturn.materials.nesting.bodies import Catalogue
from quarterturn.materials.nesting.holding import Held, Hole
from quarterturn.materials.nesting.model import Place, Scrap
from quarterturn.materials.nesting.rooms import Laid


def told(
    held: Held, scraps: Sequence[Scrap], catalogue: Catalogue, sheets: Sequence[Sequence[Laid]]
) -> tuple[Place, ...]:
    """Return the place of each piece, by its number: owners of hollows come before what they hold."""
    found = _outermost(held, catalogue, sheets)
    for hole in sorted(held.holes, key=lambda hole: (not hole.source.is_scrap, hole.owner)):
        for piece, (shape, turn, at) in zip(hole.pieces, hole.contents, strict=True):
            name, way = catalogue.shapes[shape].name, motion(turn, at)
            found[piece] = _held(name, way, hole, piece_owner(found, hole), scraps)
    return tuple(found[number] for number in range(len(held.pieces)))


def piece_owner(found: dict[int, Place], hole: Hole) -> Place | None:
    """Return the place of the shape whose hollow it is; None for a scrap."""
    return None if hole.source.is_scrap else found[hole.owner]


def _held(name: str, way: Motion, hole: Hole, owner: Place | None, scraps: Sequence[Scrap]) -> Place:
    if owner is None:
        return Place(name, way, None, scraps[hole.source.number].name, hole.owner)
    return Place(name, way.then(owner.motion), hole.owner, owner.scrap, owner.number)


def _outermost(held: Held, catalogue: Catalogue, sheets: Sequence[Sequence[Laid]]) -> dict[int, Place]:
    """Give the pieces of each shape the places that were found for it, in turn."""
    places: dict[int, list[Place]] = defaultdict(list)
    for number, laid in enumerate(sheets):
        for body, at in laid:
            place = Place(catalogue.shapes[body.shape].name, motion(body.turn, at), number=number)
            places[body.shape].append(place)
    return {piece: places[held.pieces[piece]].pop(0) for piece in held.outermost}


def motion(turn: int, at: Point) -> Motion:
    """Return the motion that turns a shape about 0 and shifts it."""
    return quarter_turns(turn).then(shift(at))
