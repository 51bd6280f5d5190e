"""Counting: Burnside's lemma, orbits by brute force, and published counts agree."""

from __future__ import annotations

import itertools

import pytest

from quarterturn.design import Symmetry
from quarterturn.setting.finder import Block, Move, canonical, count_different, moves_of, representatives

SMALL = [*itertools.product(Symmetry, (1, 2), (1, 2)), (Symmetry.SLIDE, 2, 3), (Symmetry.SLIDE, 1, 4)]


def all_blocks(size: int, codes: int) -> list[Block]:
    return list(itertools.product(range(4 * codes), repeat=size * size))


@pytest.mark.parametrize(("symmetry", "size", "codes"), SMALL)
def test_the_lemma_counts_what_brute_force_counts(symmetry: Symmetry, size: int, codes: int) -> None:
    moves = moves_of(symmetry, size, codes)
    left = set(all_blocks(size, codes))
    orbits = 0
    while left:
        block = next(iter(left))
        left -= {move(block) for move in moves}
        orbits += 1
    assert count_different(moves) == orbits


@pytest.mark.parametrize(("symmetry", "size", "codes"), SMALL)
def test_one_of_each_orbit_is_listed_and_it_is_the_first_of_it(
    symmetry: Symmetry, size: int, codes: int
) -> None:
    moves = moves_of(symmetry, size, codes)
    listed = list(representatives(moves))
    assert listed == sorted({canonical(block, moves) for block in all_blocks(size, codes)})


def test_three_by_three_units_of_one_colourway_are_listed_whole() -> None:
    moves = moves_of(Symmetry.SLIDE, 3, 1)
    listed = list(representatives(moves))
    assert len(set(listed)) == len(listed) == count_different(moves)
    assert all(canonical(block, moves) == block for block in listed)


def test_slid_blocks_of_one_colourway_are_as_many_as_published() -> None:
    """OEIS A367536: tilings of the n × n torus, up to the symmetries of the square, by a tile that is only its own
    mirror image about a diagonal (P. Kagey, W. Keehn, Counting tilings of the n × m grid, cylinder, and torus,
    J. Integer Sequences 27 (2024), 24.6.1). A quarter of a disc is such a tile.
    """
    counts = [count_different(moves_of(Symmetry.SLIDE, size, 1)) for size in range(1, 6)]
    assert counts == [1, 17, 3692, 33572458, 5629501212064]


Pair = tuple[int, int, int]
"""The turn of a tile, the side (clockwise from the top) on which another lies, and the turn of that one."""


def seen_from_the_other(pair: Pair) -> Pair:
    first, side, second = pair
    return second, (side + 2) % 4, first


def turned_pair(pair: Pair) -> Pair:
    first, side, second = pair
    return (first + 1) % 4, (side + 1) % 4, (second + 1) % 4


def test_two_tiles_side_by_side_have_64_placements_of_which_10_are_different() -> None:
    """S. Truchet, Mémoire sur les combinaisons, Mém. Acad. R. Sci. Paris 1704: one tile in four turns, another on any
    of its four sides in four turns. Alike are placements that are one pair, turned, whichever tile is named first;
    reflections are not made. With them too there would be fewer.
    """
    left: set[Pair] = set(itertools.product(range(4), range(4), range(4)))
    assert len(left) == 64
    orbits = 0
    while left:
        orbit = {next(iter(left))}
        while more := {after(pair) for pair in orbit for after in (seen_from_the_other, turned_pair)} - orbit:
            orbit |= more
        left -= orbit
        orbits += 1
    assert orbits == 10


def test_the_lemma_finds_the_same_10_pairs() -> None:
    """A pair can be turned to lie level, with its first tile left; there only the half turn exchanges the tiles."""
    rest = Move((0, 1), (0, 1, 2, 3))
    half_turn = Move((1, 0), (2, 3, 0, 1))
    assert count_different([rest, half_turn]) == 10
