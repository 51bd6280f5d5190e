"""How many blocks are different, and one of each: counted by Burnside's lemma, listed by orbits.

Burnside's lemma (W. Burnside, Theory of Groups of Finite Order, 2nd ed. 1911, § 145): the number of orbits is the
mean, over the movements of the group, of how many blocks each leaves as they are.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.setting.finder.moves import Block, Move


def count_different(moves: Sequence[Move]) -> int:
    """Return how many blocks are different under a group of movements."""
    total = sum(_unmoved(move) for move in moves)
    assert total % len(moves) == 0, "the movements are a group"
    return total // len(moves)


def _unmoved(move: Move) -> int:
    """Return how many blocks a movement leaves as they are.

    Round a cycle of n places the states follow from one another, and the first must come back after n changes.
    """
    product = 1
    for length in _cycles(move.places):
        product *= sum(_repeated(move.states, state, length) == state for state in range(len(move.states)))
    return product


def _cycles(places: Sequence[int]) -> Iterator[int]:
    """Return the lengths of the cycles of a permutation."""
    seen: set[int] = set()
    for first in range(len(places)):
        length, place = 0, first
        while place not in seen:
            seen.add(place)
            length, place = length + 1, places[place]
        if length:
            yield length


def _repeated(states: Sequence[int], state: int, times: int) -> int:
    for _ in range(times):
        state = states[state]
    return state


def representatives(moves: Sequence[Move]) -> Iterator[Block]:
    """Return one block of each orbit, the first of it in the order of numbers; time and room grow with all blocks."""
    places, states = len(moves[0].places), len(moves[0].states)
    tables = [_numbering(move) for move in moves]
    seen = bytearray(states**places)
    number = 0
    while number >= 0:
        block = block_of(number, places, states)
        yield block
        for table in tables:
            seen[_number(table, block)] = 1
        number = seen.find(0, number + 1)


def canonical(block: Block, moves: Sequence[Move]) -> Block:
    """Return the first, in the order of numbers, of the blocks that a block can be moved into."""
    return min(move(block) for move in moves)


def block_of(number: int, places: int, states: int) -> Block:
    """Return the block of a number: its digits, one for each place, the first place the weightiest."""
    digits = []
    for _ in range(places):
        number, digit = divmod(number, states)
        digits.append(digit)
    return tuple(reversed(digits))


def _numbering(move: Move) -> list[list[int]]:
    """Return, for each place and state of a block, what it adds to the number of the block moved."""
    count, base = len(move.places), len(move.states)
    weights = {source: base ** (count - 1 - target) for target, source in enumerate(move.places)}
    return [[state * weights[place] for state in move.states] for place in range(count)]


def _number(table: list[list[int]], block: Block) -> int:
    return sum(map(list.__getitem__, table, block))
