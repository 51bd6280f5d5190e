"""Every part of a top is counted as often as it is made."""

from __future__ import annotations

from fractions import Fraction

from quarterturn.pieces import held_by, times_made
from quarterturn.setting import Child, Grid, OneUnit

UNIT = OneUnit("a", Fraction(2), Fraction(2))
PAIR = Grid("pair", ((Child(UNIT), Child(UNIT, 1)),), Fraction(4), Fraction(2))


def column(*children: Child) -> Grid:
    """Return children one below another."""
    return Grid("all", tuple((child,) for child in children), Fraction(4), Fraction(2 * len(children)))


def test_what_others_hold_is_made_as_often_as_they_are() -> None:
    top = column(Child(PAIR), Child(PAIR, 2), Child(PAIR))
    assert times_made(top) == {UNIT: 6, PAIR: 3, top: 1}


def test_turned_children_are_the_same_node() -> None:
    assert held_by(PAIR) == {UNIT: 2}


def test_whatever_is_held_comes_before_what_holds_it() -> None:
    block = column(Child(PAIR), Child(PAIR))
    top = column(Child(block), Child(PAIR), Child(UNIT))
    order = list(times_made(top))
    assert [order.index(node) for node in (UNIT, PAIR, block, top)] == sorted(
        order.index(node) for node in (UNIT, PAIR, block, top)
    )
    assert times_made(top)[PAIR] == 3
    assert times_made(top)[UNIT] == 7
