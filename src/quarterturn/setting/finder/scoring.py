"""How pleasing a setting is likely to be, measured on its repeat laid round a torus.

    score = 100 · (3 · flow + 1 · rounds + 4 · cloth + 2 · balance) / 10

- flow: the share of the edges at the seams that meet another (within 1/32", as the joins are judged)
- rounds: the share of the curves that close to a round without going about the torus
- cloth: the share of all seams that have one cloth on both sides, so that no straight line shows
- balance: 1 − |dark − light|, the shares of the area darker and lighter than half way between the darkest and the
  lightest fabric in use (by L*)

The weights are a choice of taste, no more (no source): curves and cloth that run on across the seams count most. They
were set so that whole rounds, bands that wind, and the drunkard's path with curves that meet come out near the top.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from quarterturn.blocks import Blocks, shown_areas
from quarterturn.design import Cell, Design, Symmetry, laid
from quarterturn.design.colour import value_of
from quarterturn.setting.finder.joining import ACROSS, DOWN, Joining, join_all
from quarterturn.setting.finder.moves import TURNS, Block

FLOW, ROUNDS, CLOTH, BALANCE = 3, 1, 4, 2

_STEPS = ((-1, 0), (0, 1), (1, 0), (0, -1))
"""Down and to the right, for each side from the top clockwise."""


@dataclass(frozen=True, slots=True)
class Score:
    """The four measures, each from 0 to 1."""

    flow: float
    rounds: float
    cloth: float
    balance: float

    @property
    def total(self) -> float:
        """Return the score, from 0 to 100."""
        parts = FLOW * self.flow + ROUNDS * self.rounds + CLOTH * self.cloth + BALANCE * self.balance
        return 100 * parts / (FLOW + ROUNDS + CLOTH + BALANCE)


@dataclass(frozen=True)
class Judge:
    """Judges blocks of `size` × `size` units in some colourways of a design, laid with a symmetry."""

    design: Design
    blocks: Blocks
    codes: tuple[str, ...]
    symmetry: Symmetry
    size: int

    @property
    def copies(self) -> int:
        """Return how many copies, across and down, lie in what slides over itself."""
        return 2 if self.symmetry in (Symmetry.MIRROR, Symmetry.HALF_TURN) else 1

    def cells(self, block: Block) -> tuple[tuple[Cell, ...], ...]:
        """Return a block as the map writes it."""
        units = [Cell(self.codes[state // TURNS], state % TURNS) for state in block]
        return tuple(tuple(units[r * self.size : (r + 1) * self.size]) for r in range(self.size))

    def torus(self, block: Block) -> Block:
        """Return what slides over itself when a block is laid with the symmetry, row by row."""
        return tuple(states[block[place]] for place, states in self._laying)

    @cached_property
    def side(self) -> int:
        """Return how many units what slides over itself has each way."""
        return self.size * self.copies * (2 if self.symmetry is Symmetry.TURN else 1)

    @cached_property
    def _laying(self) -> tuple[tuple[int, tuple[int, ...]], ...]:
        """Return, for each place of the torus, which place of the block is laid there, and what states become."""
        numbers = range(self.size**2)
        sheets = []
        for turn in range(TURNS):
            block = tuple(
                tuple(Cell(str(number), turn) for number in numbers[r * self.size : (r + 1) * self.size])
                for r in range(self.size)
            )
            rows = laid(block, self.symmetry, self.copies, self.copies)
            sheets.append([cell for row in rows for cell in row])
        return tuple(
            (
                int(at_turn[0].code),
                tuple(TURNS * code + cell.turn for code in range(len(self.codes)) for cell in at_turn),
            )
            for at_turn in zip(*sheets, strict=True)
        )

    @cached_property
    def joining(self) -> Joining:
        return join_all(self.design, self.blocks, self.codes)

    @cached_property
    def _dark(self) -> tuple[float, ...]:
        """Return, for each colourway, which share of its unit is dark."""
        shown = [self._shown(code) for code in self.codes]
        values = {letter: value_of(self.design.fabric(letter).colour) for each in shown for letter, _ in each}
        middle = (min(values.values()) + max(values.values())) / 2
        return tuple(sum(share for letter, share in each if values[letter] < middle) for each in shown)

    def _shown(self, code: str) -> list[tuple[str, float]]:
        """Return the letter of the fabric of each part of a colourway's unit, and which share of the unit it shows."""
        areas = shown_areas(self.blocks.unit(self.design, code))
        whole = sum(areas.values())
        return [(self.design.cloth(code, part), area / whole) for part, area in areas.items()]

    def score(self, block: Block) -> Score:
        """Measure a block."""
        torus, side = self.torus(block), self.side
        met = edges = 0
        same = 0.0
        for place, right, below in self._neighbours:
            state = torus[place]
            for seam in (
                self.joining.seams[ACROSS][state][torus[right]],
                self.joining.seams[DOWN][state][torus[below]],
            ):
                met, edges, same = met + seam.met, edges + seam.edges, same + seam.same
        dark = sum(self._dark[state // TURNS] for state in torus) / len(torus)
        return Score(
            flow=met / edges if edges else 0.0,
            rounds=sum(closed_curves(torus, side, self.joining)) / len(torus),
            cloth=same / (2 * len(torus)),
            balance=1 - abs(2 * dark - 1),
        )

    @cached_property
    def _neighbours(self) -> tuple[tuple[int, int, int], ...]:
        side = self.side
        return tuple(
            (r * side + c, r * side + (c + 1) % side, (r + 1) % side * side + c)
            for r in range(side)
            for c in range(side)
        )


def closed_curves(torus: Sequence[int], side: int, joining: Joining) -> list[int]:
    """Return the numbers of units in each curve that closes without going about the torus."""
    seen: set[int] = set()
    found = []
    for place in range(len(torus)):
        if place not in seen:
            curve, closes = _followed(place, torus, side, joining)
            seen |= curve
            if closes:
                found.append(len(curve))
    return found


def _followed(place: int, torus: Sequence[int], side: int, joining: Joining) -> tuple[set[int], bool]:
    """Follow the curve of a unit one way; return the units on it, and whether it comes back to where it began."""
    row, column = start = divmod(place, side)
    ends, curve = joining.ends[torus[place]], {place}
    out = ends[1] if ends else 0
    while ends:
        down, across = _STEPS[out]
        before = row % side * side + column % side
        row, column = row + down, column + across
        at = row % side * side + column % side
        if not _meet(torus[before], torus[at], out, joining):
            return curve, False
        if at == place:
            return curve, (row, column) == start
        curve.add(at)
        ends, came = joining.ends[torus[at]], (out + 2) % 4
        out = ends[1] if ends and ends[0] == came else ends[0] if ends else 0
    return curve, False


def _meet(state: int, neighbour: int, side: int, joining: Joining) -> bool:
    """Tell whether an edge meets another across a side of a unit, numbered clockwise from the top."""
    first, second = (neighbour, state) if side in (0, 3) else (state, neighbour)
    return joining.seams[ACROSS if side in (1, 3) else DOWN][first][second].met > 0
