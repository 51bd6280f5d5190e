"""Find the settings of a repeat, and put the most pleasing first."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.blocks import Blocks, is_own_mirror_image
from quarterturn.design import Cell, Design, StraightSet, Symmetry, codes_in, upright_letters
from quarterturn.setting.finder.counting import block_of, canonical, count_different, representatives
from quarterturn.setting.finder.moves import TURNS, Block, exchanges, moves_of
from quarterturn.setting.finder.scoring import Judge, Score

LARGEST_SIZE = 4
MOST_CODES = 4
FULL = 4**9
"""Up to so many blocks all are looked at: 3 × 3 units of one colourway, 2 × 2 of four."""

SEED = 1704
SAMPLES = 20_000
CLIMBS = 150
"""So many of the best of a sample are improved, unit by unit, until no change of one unit makes them better."""


@dataclass(frozen=True, slots=True)
class Found:
    """A setting: its block as the map writes it, and its score."""

    cells: tuple[tuple[Cell, ...], ...]
    score: Score


@dataclass(frozen=True, slots=True)
class Selection:
    """What a search found: the best settings, of how many that are different, of how many ways to lay the units."""

    size: int
    symmetry: Symmetry
    codes: tuple[str, ...]
    ways: int
    different: int
    sampled: int | None
    """How many ways were drawn by lot and looked at; None where all were."""
    best: tuple[Found, ...]

    @property
    def repeat(self) -> int:
        """Return how many units a copy has each way."""
        return self.size * (2 if self.symmetry is Symmetry.TURN else 1)

    def setting_like(self, number: int, rows: int, columns: int) -> StraightSet:
        """Return the setting of a number, counted from 1, in about so many rows and columns."""
        least = 2 if self.symmetry in (Symmetry.MIRROR, Symmetry.HALF_TURN) else 1
        down, across = (max(least, round(count / self.repeat)) for count in (rows, columns))
        return StraightSet(self.best[number - 1].cells, across, down, self.symmetry)


class SearchError(ValueError):
    """A search that cannot be made. The message is a sentence without its full stop.

    `is_of_code` where one colourway is the matter, so that others can be named instead.
    """

    def __init__(self, message: str, *, is_of_code: bool = False) -> None:
        super().__init__(message)
        self.is_of_code = is_of_code


def codes_of(design: Design, blocks: Blocks, wanted: Sequence[str] = ()) -> tuple[str, ...]:
    """Return the colourways to search with: those wanted, or those of the map, in the order of the design.

    Raises SearchError where there are too many, the design has no such one, their units differ in size, or the
    quarters of a master differ: such a quarter is not its own mirror image, by which settings are told apart.
    """
    used = set(wanted) or codes_in(design)
    known = [colourway.code for colourway in design.colourways]
    if unknown := sorted(used - set(known)):
        raise SearchError(f"there is no colourway {unknown[0]}; the design has {', '.join(known)}")
    codes = tuple(code for code in known if code in used)
    if len(codes) > MOST_CODES:
        raise SearchError(f"there are {len(codes)} colourways; name up to {MOST_CODES} of them")
    kinds = {code: blocks.units(design.colourway(code).recipe) for code in codes}
    for code, units in kinds.items():
        if upright_letters(design, code):
            raise SearchError(f"prints of colourway {code} must stand upright", is_of_code=True)
        if len(units) > 1 and len(design.masters_of(code)) == 1:
            raise SearchError(f"the four quarters of colourway {code} differ", is_of_code=True)
        if len(units) > 1 or not units[0].is_rectangle or not is_own_mirror_image(units[0]):
            raise SearchError(
                f"the units of colourway {code} are not their own mirror images", is_of_code=True
            )
    if len({units[0].side for units in kinds.values()}) > 1:
        raise SearchError(f"the units of {', '.join(codes)} differ in size")
    return codes


def find_settings(
    design: Design,
    blocks: Blocks,
    codes: tuple[str, ...],
    size: int,
    symmetry: Symmetry,
    most: int,
    watch: Callable[[], None] = lambda: None,
) -> Selection:
    """Return the best settings of a block of `size` × `size` units, up to `most`, the best first.

    Blocks that a movement or an exchange of colourways turns into one another are one setting, and so are those
    that are the same quilt once laid. Where there are more than `FULL` blocks, `SAMPLES` of them are drawn by lot
    with a fixed seed, and the best of those improved. Equal calls give equal results. `watch` is called again and
    again; what it raises ends the search.
    """
    judge = Judge(design, blocks, codes, symmetry, size)
    moves = moves_of(symmetry, size, len(codes))
    places, states = size * size, TURNS * len(codes)
    ways = states**places
    sampled = None if ways <= FULL else SAMPLES
    if sampled is None:
        tried: Iterable[Block] = (
            _best_exchange(judge, block) for block in _watched(representatives(moves), watch)
        )
    else:
        tried = _improved(judge, _drawn(places, states), watch)
    ranked = sorted((-judge.score(block).total, block) for block in tried)
    best = _unlike((block for _, block in ranked), judge, most)
    return Selection(
        size=size,
        symmetry=symmetry,
        codes=codes,
        ways=ways,
        different=count_different(moves),
        sampled=sampled,
        best=tuple(Found(judge.cells(block), judge.score(block)) for block in best),
    )


def _best_exchange(judge: Judge, block: Block) -> Block:
    """Return a block with its colourways exchanged as pleases most."""
    ways = {exchange(block) for exchange in exchanges(judge.size, len(judge.codes))}
    return min(ways, key=lambda way: (-judge.score(way).total, way))


def _unlike(ranked: Iterable[Block], judge: Judge, most: int) -> list[Block]:
    """Return the first blocks that make unlike quilts, each moved to be the first of those in its colourways."""
    moves = moves_of(judge.symmetry, judge.size, len(judge.codes), exchange=False)
    whole = moves_of(Symmetry.SLIDE, judge.side, len(judge.codes))
    seen: set[Block] = set()
    kept: list[Block] = []
    for block in ranked:
        if len(kept) == most:
            break
        quilt = canonical(judge.torus(block), whole)
        if quilt not in seen:
            seen.add(quilt)
            kept.append(canonical(block, moves))
    return kept


def _drawn(places: int, states: int) -> set[Block]:
    lot = random.Random(SEED)
    return {block_of(lot.randrange(states**places), places, states) for _ in range(SAMPLES)}


def _watched(blocks: Iterable[Block], watch: Callable[[], None]) -> Iterator[Block]:
    for block in blocks:
        watch()
        yield block


def _improved(judge: Judge, drawn: set[Block], watch: Callable[[], None]) -> Iterator[Block]:
    """Return blocks that were drawn, and what the best of them become by changing one unit at a time."""
    ranked = sorted((-judge.score(block).total, block) for block in _watched(drawn, watch))
    yield from drawn - {block for _, block in ranked[:CLIMBS]}
    for _, block in ranked[:CLIMBS]:
        watch()
        yield _climbed(judge, block)


def _climbed(judge: Judge, block: Block) -> Block:
    """Change the unit that helps most, again and again, until none helps."""
    score = judge.score(block).total
    while True:
        gains = ((judge.score(changed).total, changed) for changed in _changed(block, len(judge.codes)))
        better, changed = max(gains, key=lambda gain: (gain[0], [-state for state in gain[1]]))
        if better <= score + 1e-9:
            return block
        score, block = better, changed


def _changed(block: Block, codes: int) -> Iterator[Block]:
    for place, before in enumerate(block):
        for state in range(TURNS * codes):
            if state != before:
                yield (*block[:place], state, *block[place + 1 :])
