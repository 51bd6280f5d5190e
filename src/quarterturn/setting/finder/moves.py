"""The movements after which a block, laid over and over, is still the same quilt.

A block of k × k units is told as numbers: place r·k + c holds 4·(number of the colourway) + turn. A movement takes each
place from another, and changes every state alike. Those of a symmetry are the ones that turn every block laid with it
into a block laid with it:

- slide: k × k shifts round the torus, 4 turns, each also mirrored: 8k²
- mirror, half turn: the 4 turns, each also mirrored: 8. The lines and centres keep their places.
- turn: the half turn and the reflections in the two diagonals: 4, with the quilt at rest

and each of them with every exchange of the colourways.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import Cell, Symmetry, mirrored, turned

Block: TypeAlias = tuple[int, ...]
Rows: TypeAlias = tuple[tuple[Cell, ...], ...]
TURNS = 4


@dataclass(frozen=True, slots=True)
class Move:
    """A movement: place i is taken from `places[i]`, and a unit in state s comes to be in `states[s]`."""

    places: tuple[int, ...]
    states: tuple[int, ...]

    def __call__(self, block: Block) -> Block:
        """Return the block moved."""
        return tuple(self.states[block[place]] for place in self.places)

    def then(self, after: Move) -> Move:
        """Return the movement that makes this one first and `after` second."""
        places = tuple(self.places[place] for place in after.places)
        return Move(places, tuple(after.states[state] for state in self.states))


def moves_of(symmetry: Symmetry, size: int, codes: int, *, exchange: bool = True) -> tuple[Move, ...]:
    """Return all movements of blocks of `size` × `size` units in so many colourways; they are a group.

    Without `exchange`, those that leave every colourway as it is.
    """
    still = (identity(size, codes),)
    return tuple(
        plane.then(exchanged).then(shift)
        for plane in _plane_moves(symmetry, size, codes)
        for exchanged in (exchanges(size, codes) if exchange else still)
        for shift in (_shifts(size, codes) if symmetry is Symmetry.SLIDE else still)
    )


def exchanges(size: int, codes: int) -> Iterator[Move]:
    """Return every exchange of the colourways, that of none first."""
    here = tuple(range(size * size))
    for order in itertools.permutations(range(codes)):
        yield Move(here, tuple(TURNS * code + turn for code in order for turn in range(TURNS)))


def identity(size: int, codes: int) -> Move:
    """Return the movement that leaves all as it is."""
    return Move(tuple(range(size * size)), tuple(range(TURNS * codes)))


def quarter_turn(size: int, codes: int) -> Move:
    """Return the turn of a block by a quarter clockwise."""
    return _move_by(turned, size, codes)


def reflection(size: int, codes: int) -> Move:
    """Return the reflection of a block that exchanges left and right."""
    return _move_by(mirrored, size, codes)


def _move_by(motion: Callable[[Rows], Rows], size: int, codes: int) -> Move:
    """Read a movement off what it does to a block whose codes are the numbers of its places, and to each turn."""
    numbered = tuple(tuple(Cell(str(r * size + c), 0) for c in range(size)) for r in range(size))
    places = tuple(int(cell.code) for row in motion(numbered) for cell in row)
    turns = [motion(((Cell("", turn),),))[0][0].turn for turn in range(TURNS)]
    return Move(places, tuple(TURNS * code + turn for code in range(codes) for turn in turns))


def _plane_moves(symmetry: Symmetry, size: int, codes: int) -> Iterator[Move]:
    turn, mirror = quarter_turn(size, codes), reflection(size, codes)
    for quarters, is_mirrored in itertools.product(range(4), (False, True)):
        # About the middle of a round, an even number of quarters or a reflection in a diagonal leaves the
        # upper left quarter a quarter of such a round.
        if symmetry is Symmetry.TURN and quarters % 2 != is_mirrored:
            continue
        move = mirror if is_mirrored else identity(size, codes)
        for _ in range(quarters):
            move = move.then(turn)
        yield move


def _shifts(size: int, codes: int) -> Iterator[Move]:
    states = tuple(range(TURNS * codes))
    for down, across in itertools.product(range(size), repeat=2):
        places = tuple(
            (r + down) % size * size + (c + across) % size
            for r, c in itertools.product(range(size), repeat=2)
        )
        yield Move(places, states)
