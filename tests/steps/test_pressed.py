"""Where the seams of each kind of section lie and to where they are pressed, kept as texts; and their laws."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

import pytest

from quarterturn.geometry import Point
from quarterturn.proof import Pattern
from quarterturn.steps import PressedSeam, pressed_seams
from tests.conftest import Golden
from tests.samples import ROUNDS, pattern_of
from tests.section_texts import TEXTS

NEAR = 1e-6
WAYS = {1: "right", -1: "left", 1j: "down", -1j: "up"}


def seams_of(pattern: Pattern) -> tuple[PressedSeam, ...]:
    return pressed_seams(pattern.steps, pattern.bill.pieces, float(pattern.design.making.seam))


def told(seam: PressedSeam) -> str:
    way = None if seam.towards is None else seam.towards
    named = next((name for each, name in WAYS.items() if way is not None and abs(way - each) < NEAR), None)
    slanting = "" if way is None else f"{round(way.real, 3):g}, {round(way.imag, 3):g}"
    pressed = "opened" if way is None else f"pressed {named or slanting}"
    return f"{at(seam.start)} to {at(seam.end)}, {pressed}"


def at(point: Point) -> str:
    return f"{round(point.real, 3) + 0.0:g} {round(point.imag, 3) + 0.0:g}"


@pytest.mark.parametrize("name", TEXTS)
def test_seams(name: str, golden: Golden) -> None:
    golden.check(f"{name}.txt", "".join(f"{told(seam)}\n" for seam in seams_of(pattern_of(TEXTS[name]))))


def test_a_border_that_no_cloth_is_wide_enough_for_has_its_seams_all_the_same() -> None:
    """The checks tell of it; what is laid over the quilt is drawn until it is mended."""
    cloth = 'name = "brick"\nbought_as = { name = "square", width = "5\\"", height = "5\\"" }'
    wide = ROUNDS.replace("width = '1 1/2\"'", "width = '6\"'")
    pattern = pattern_of(wide.replace('name = "brick"', cloth))
    assert pattern.materials.plan("C").unplaced
    assert seams_of(pattern) == seams_of(pattern_of(wide))


@pytest.mark.parametrize("name", TEXTS)
def test_seams_lie_within_the_top_and_are_pressed_across_themselves(name: str) -> None:
    pattern = pattern_of(TEXTS[name])
    width, height = float(pattern.setting.width), float(pattern.setting.height)
    for seam in seams_of(pattern):
        for point in (seam.start, seam.end):
            assert -NEAR < point.real < width + NEAR
            assert -NEAR < point.imag < height + NEAR
        way = seam.end - seam.start
        assert abs(way) > NEAR
        assert seam.towards is None or abs((way * seam.towards.conjugate()).real) < NEAR * abs(way)


@pytest.mark.parametrize("name", TEXTS)
def test_no_two_seams_lie_on_one_another(name: str) -> None:
    """A seam of the same two edges would be sewn twice."""
    for one, other in pairs(seams_of(pattern_of(TEXTS[name]))):
        assert overlap(one, other) < 1e-3, (told(one), told(other))


def pairs(seams: tuple[PressedSeam, ...]) -> Iterator[tuple[PressedSeam, PressedSeam]]:
    for number, one in enumerate(seams):
        yield from product((one,), seams[number + 1 :])


def overlap(one: PressedSeam, other: PressedSeam) -> float:
    """Return how far two seams run along one another."""
    way = (one.end - one.start) / abs(one.end - one.start)
    first, last = ((point - one.start) / way for point in (other.start, other.end))
    if abs(first.imag) > NEAR or abs(last.imag) > NEAR:
        return 0.0
    low, high = sorted((first.real, last.real))
    return max(0.0, min(high, abs(one.end - one.start)) - max(low, 0.0))
