"""What each two neighbouring units make of their seam, worked out once for all pairs."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.blocks import Blocks, side_spans
from quarterturn.design import Design
from quarterturn.setting.finder.moves import TURNS
from quarterturn.setting.joins import Seams
from quarterturn.setting.joins import Turned as State
from quarterturn.setting.model import JoinMark, Meeting, Side

ACROSS, DOWN = 0, 1
"""A seam between a unit and its right neighbour, and one between a unit and the one below it."""


@dataclass(frozen=True, slots=True)
class Seam:
    """What lies at a seam: edges that meet, edges in all, and the share of it with one cloth on both sides."""

    met: int
    edges: int
    same: float


@dataclass(frozen=True, slots=True)
class Joining:
    """Seams by direction, state and neighbour's state; for each state the two sides that its curve runs between.

    A state is 4·(number of the colourway) + turn. The sides are numbered clockwise from the top; a unit whose edges
    do not make one curve between two sides has no ends.
    """

    seams: tuple[tuple[tuple[Seam, ...], ...], tuple[tuple[Seam, ...], ...]]
    ends: tuple[tuple[int, int] | None, ...]


def join_all(design: Design, blocks: Blocks, codes: tuple[str, ...]) -> Joining:
    """Return what all units in these colourways make of one another."""
    states: list[State] = [(code, turn) for code in codes for turn in range(TURNS)]
    sides = [_sides(design, blocks, code, turn) for code, turn in states]
    seams = tuple(
        tuple(
            tuple(_seam(marks, sides[i][first.value], sides[j][second.value]) for j, marks in enumerate(row))
            for i, row in enumerate(_marked(design, blocks, states, first, second))
        )
        for first, second in ((Side.RIGHT, Side.LEFT), (Side.BOTTOM, Side.TOP))
    )
    return Joining((seams[ACROSS], seams[DOWN]), tuple(_ends(each) for each in sides))


Cloths = tuple[tuple[str, float, float], ...]
"""Stretches of a side: fabric, start and end."""


def _sides(design: Design, blocks: Blocks, code: str, turn: int) -> dict[str, Cloths]:
    sides = side_spans(blocks.unit(design, code), turn)
    return {
        name: tuple((design.cloth(code, span.part), span.start, span.end) for span in spans)
        for name, spans in sides.items()
    }


def _marked(
    design: Design, blocks: Blocks, states: list[State], side: Side, facing: Side
) -> list[list[tuple[JoinMark, ...]]]:
    """Lay every unit at a side of every other, and return what meets at the seams between the two."""
    seams = Seams(design, blocks)
    return [[seams.marks(first, side, second, facing, False) for second in states] for first in states]


def _seam(found: tuple[JoinMark, ...], first: Cloths, second: Cloths) -> Seam:
    length = max(end for _, _, end in first)
    met = sum(mark.meeting is Meeting.MATCH for mark in found)
    # Edges that meet are one mark of two edges.
    edges = sum(1 if mark.meeting is Meeting.END else 2 for mark in found)
    shared = sum(
        max(0.0, min(end, other_end) - max(start, other_start))
        for cloth, start, end in first
        for other, other_start, other_end in second
        if cloth == other
    )
    return Seam(2 * met, edges, shared / length)


def _ends(sides: dict[str, Cloths]) -> tuple[int, int] | None:
    changes = [len(sides[name]) - 1 for name in ("top", "right", "bottom", "left")]
    if sorted(changes) != [0, 0, 1, 1]:
        return None
    first, second = (side for side, count in enumerate(changes) if count)
    return first, second
