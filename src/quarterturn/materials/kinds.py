"""Pieces as the cutter sees them: how many of what size, and which ways round they may lie in a strip."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.design import Direction
from quarterturn.measure import Length
from quarterturn.pieces import Grain, Piece


@dataclass(frozen=True, slots=True, order=True)
class Position:
    """A way to lie in a strip: `along` it, `across` it."""

    along: Length
    across: Length


@dataclass(frozen=True, slots=True)
class Kind:
    """Equal pieces to cut, with the positions that they may take; the one in which they are listed first."""

    label: str
    count: int
    positions: tuple[Position, ...]


def kind_of(piece: Piece, direction: Direction, usable: Length) -> Kind:
    """Return a piece as a kind; it has no positions where it fits no strip.

    A piece's length runs along the strip, that is across the cloth. Turned by a quarter it may lie only if
    neither its own grain nor the print of the fabric has a direction: on a print with a direction the length
    of every piece runs across the cloth, so that all pieces show the print the same way up.
    """
    listed = Position(piece.length, piece.width)
    turned = Position(piece.width, piece.length)
    if piece.grain is Grain.LENGTHWISE:
        allowed = [turned]
    elif piece.grain is Grain.ANY and direction is Direction.NONE and listed != turned:
        allowed = [listed, turned]
    else:
        allowed = [listed]
    return Kind(piece.label, piece.count, tuple(p for p in allowed if p.along <= usable))
