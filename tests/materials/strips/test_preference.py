"""What a cutter prefers among plans as short: held against every plan of that length that there is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.materials.kinds import Kind
from quarterturn.materials.shelves import Shelf
from quarterturn.materials.shortest import shortest_strips
from quarterturn.materials.strips import Cut, Job, Pattern, job_of
from quarterturn.materials.strips.easing import NEAR
from quarterturn.materials.strips.patterns import pattern_of
from quarterturn.measure import Length, inches
from tests.materials.cutting_cases import kind

W = inches(40)
LOW = st.sampled_from([24, 30, 31, 32, 40, 56])


@st.composite
def few(draw: st.DrawFn) -> list[Kind]:
    """Return two or three kinds of a few long pieces, some of nearly equal heights, some that may turn."""
    found = []
    for number in range(1, draw(st.integers(2, 3)) + 1):
        a, b = draw(st.integers(60, 200)), draw(LOW)
        positions = [(a, b), (b, a)] if draw(st.booleans()) else [(a, b)]
        found.append(kind(f"A{number}", draw(st.integers(1, 3)), *positions))
    return found


def patterns(job: Job) -> set[Pattern]:
    """Return every strip that can be cut."""

    def held(number: int, room: int, left: Sequence[int]) -> Iterator[list[tuple[Cut, int]]]:
        if number == len(job.cuts):
            yield []
            return
        cut = job.cuts[number]
        for count in range(min(room // cut.along, left[cut.kind]) + 1):
            less = [n - count if k == cut.kind else n for k, n in enumerate(left)]
            for more in held(number + 1, room - count * cut.along, less):
                yield [(cut, count), *more] if count else more

    return {pattern_of(cuts) for cuts in held(0, job.width, job.demand) if cuts}


def plans(job: Job, longest: int) -> Iterator[list[Pattern]]:
    """Yield every plan, a list of strips from high to low, that is no longer than `longest`."""
    order = sorted(patterns(job), key=lambda pattern: -pattern.height)
    gives = [pattern.yields(len(job.demand)) for pattern in order]

    def go(first: int, left: tuple[int, ...], room: int) -> Iterator[list[Pattern]]:
        if not any(left):
            yield []
            return
        for number in range(first, len(order)):
            if order[number].height <= room and all(g <= n for g, n in zip(gives[number], left, strict=True)):
                less = tuple(n - g for g, n in zip(gives[number], left, strict=True))
                for more in go(number, less, room - order[number].height):
                    yield [order[number], *more]

    return go(0, job.demand, longest)


def burden(heights: Sequence[Length]) -> tuple[int, int]:
    """Return how many heights strips have, and how many strips there are."""
    return len(set(heights)), len(heights)


@given(few())
@settings(max_examples=60, deadline=None)
def test_no_plan_as_short_has_fewer_heights_nor_as_many_and_fewer_strips(wanted: list[Kind]) -> None:
    plan, job = shortest_strips(tuple(wanted), W), job_of(wanted, W)
    mine = [shelf.height for shelf in plan.shelves for _ in range(shelf.strips)]
    others = [
        [p.height * job.across_step for p in each] for each in plans(job, int(plan.length / job.across_step))
    ]
    assert burden(mine) == min(map(burden, others))


@given(few())
@settings(max_examples=40, deadline=None)
def test_no_two_heights_are_nearly_equal_where_a_plan_as_short_does_without(wanted: list[Kind]) -> None:
    plan, job = shortest_strips(tuple(wanted), W), job_of(wanted, W)
    mine = {shelf.height for shelf in plan.shelves}
    for each in plans(job, int(plan.length / job.across_step)):
        heights = {p.height * job.across_step for p in each}
        assert near_pairs(mine) <= near_pairs(heights) or len(heights) > len(mine)


def near_pairs(heights: set[Length]) -> int:
    return sum(abs(a - b) < NEAR for a, b in combinations(heights, 2))


@given(few())
@settings(max_examples=40, deadline=None)
def test_the_largest_pieces_are_cut_first(wanted: list[Kind]) -> None:
    for first, second in pairwise(shortest_strips(tuple(wanted), W).shelves):
        assert longest(first) >= longest(second)


def longest(shelf: Shelf) -> Length:
    return max(max(cut.along, cut.across) for cut in shelf.crosscuts)
