"""How strips for long pieces are joined: as is said, or as takes less to buy; the other way is told."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import Joins, LongCut
from quarterturn.materials import ClothPlan, JoinMethod
from quarterturn.materials.cloth import plan_bolt
from quarterturn.measure import Units
from quarterturn.pieces import Purpose
from tests.materials.cutting_cases import MAKING, fabric, piece


def plan(length: int, joins: Joins) -> ClothPlan:
    """Plan two borders 5 inches wide of a length, joined."""
    making = replace(MAKING, borders=LongCut.CROSSWISE, joins=joins)
    return plan_bolt(fabric(40), [piece(2, length, 5, Purpose.BORDER)], making, Units.INCH)


@pytest.mark.parametrize(
    ("joins", "method"),
    [
        (Joins.CHEAPEST, JoinMethod.STRAIGHT),
        (Joins.STRAIGHT, JoinMethod.STRAIGHT),
        (Joins.DIAGONAL, JoinMethod.DIAGONAL),
    ],
)
def test_strips_are_joined_as_is_said(joins: Joins, method: JoinMethod) -> None:
    found = plan(75, joins)
    assert [run.method for run in found.runs] == [method]
    assert found.lower_bound <= found.cut_length


def test_the_plan_tells_what_the_other_way_would_buy() -> None:
    straight, diagonal = plan(78, Joins.CHEAPEST), plan(78, Joins.DIAGONAL)
    assert straight.bought < diagonal.bought
    assert (straight.other_join, diagonal.other_join) == (diagonal.bought, straight.bought)


def test_where_nothing_long_is_joined_there_is_no_other_way() -> None:
    found = plan_bolt(fabric(40), [piece(1, 200, 3, Purpose.BINDING)], MAKING, Units.INCH)
    assert found.other_join is None
