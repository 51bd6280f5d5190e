"""Which ways round a piece may lie."""

from __future__ import annotations

import pytest

from quarterturn.design import Direction
from quarterturn.materials.kinds import Position, kind_of
from quarterturn.measure import inches
from quarterturn.pieces import Grain
from tests.materials.cutting_cases import piece

LISTED, TURNED = Position(inches(20), inches(3)), Position(inches(3), inches(20))

CASES = [
    pytest.param(Grain.ANY, Direction.NONE, (LISTED, TURNED), id="free"),
    pytest.param(Grain.ANY, Direction.TWO_WAY, (LISTED,), id="stripes run up the pieces' width"),
    pytest.param(Grain.ANY, Direction.ONE_WAY, (LISTED,), id="one-way print"),
    pytest.param(Grain.CROSSWISE, Direction.NONE, (LISTED,), id="length across the cloth"),
    pytest.param(Grain.LENGTHWISE, Direction.NONE, (TURNED,), id="length along the cloth"),
    pytest.param(Grain.LENGTHWISE, Direction.ONE_WAY, (TURNED,), id="length along a printed cloth"),
]


@pytest.mark.parametrize(("grain", "direction", "positions"), CASES)
def test_positions(grain: Grain, direction: Direction, positions: tuple[Position, ...]) -> None:
    assert kind_of(piece(1, 20, 3, grain=grain), direction, inches(40)).positions == positions


def test_a_square_has_one_position() -> None:
    assert len(kind_of(piece(1, 20), Direction.NONE, inches(40)).positions) == 1


def test_positions_wider_than_the_cloth_are_left_out() -> None:
    assert kind_of(piece(1, 20, 3), Direction.NONE, inches(10)).positions == (TURNED,)
    assert kind_of(piece(1, 20, 3), Direction.ONE_WAY, inches(10)).positions == ()
