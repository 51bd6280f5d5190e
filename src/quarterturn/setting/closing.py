"""Units that keep a round open: turned another way, they would close it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.blocks import Blocks
from quarterturn.design import Design
from quarterturn.setting.arrange import neighbours_of
from quarterturn.setting.curves import Curves
from quarterturn.setting.flow import NONE, Network
from quarterturn.setting.model import Setting, Trail

MOST_TRIALS = 3000
"""Turns that are tried at most: those of a thousand units."""

LEAST_PIECES = 4
"""No fewer quarter circles close to a round."""


@dataclass(frozen=True, slots=True)
class Closing:
    """A unit that would close a round of so many pieces if it were turned clockwise by `quarters` more.

    `unit` is its place in `Setting.units`; `alike` counts the rounds of the top that close already and have as many
    pieces and the same length.
    """

    unit: int
    quarters: int
    pieces: int
    alike: int


def closing_turns(design: Design, blocks: Blocks, setting: Setting) -> tuple[Closing, ...]:
    """Return the units that one turn would make part of a round such as others of the top, in order of their places.

    Looked at are units beside an open end and in no round; the turn must leave them no fewer ends that match. Trials
    are bounded, so that in a large top full of open ends not all units are looked at.
    """
    flow = setting.flow
    alike = Counter(_kind(trail) for trail in flow.rounds if trail.pieces >= LEAST_PIECES)
    if not alike:
        return ()
    network = Network(
        Curves(design, blocks),
        [(u.name, u.turn) for u in setting.units],
        neighbours_of(design, blocks, setting),
    )
    closed = {unit for trail in flow.rounds for unit in trail.units}
    beside = sorted(set(_beside_open_ends(network)) - closed)[: MOST_TRIALS // 3]
    found = ((unit, _turned_closed(network, unit, alike)) for unit in beside)
    return tuple(
        Closing(unit, quarters, kind[0], alike[kind])
        for unit, closing in found
        if closing
        for quarters, kind in (closing,)
    )


Kind = tuple[int, float]
"""Pieces and length of a round."""


def _kind(trail: Trail) -> Kind:
    return trail.pieces, round(trail.length, 3)


def _beside_open_ends(network: Network) -> Iterator[int]:
    """Return the units across the seams at which ends stop."""
    for end, partner in enumerate(network.partner):
        side = network.side_of(end) if partner == NONE else None
        if side is not None and (beside := network.neighbour(network.home[end >> 1], side)) != NONE:
            yield beside


def _turned_closed(network: Network, unit: int, alike: Counter[Kind]) -> tuple[int, Kind] | None:
    """Return by how many quarters to turn a unit, and the kind of round that it then closes, if it does."""
    turn = network.units[unit][1]
    matched = network.matched(unit)
    found = None
    for quarters in (1, 2, 3) if network.curves.is_square(network.units[unit][0]) else (2,):
        network.turn(unit, (turn + quarters) % 4)
        kinds = (_kind(trail) for trail in network.rounds_through(unit, max(alike)[0]))
        if network.matched(unit) >= matched and (kind := next((k for k in kinds if k in alike), None)):
            found = quarters, kind
            break
    network.turn(unit, turn)
    return found
