"""Steps in a few words."""

from __future__ import annotations

from quarterturn.steps import LayOut, Placed, SewLine
from quarterturn.steps.doing import map_rows
from quarterturn.steps.lines import line_of_parts
from quarterturn.steps.text import steps_text
from tests.samples import ROUNDS, pattern_of

PATTERN = pattern_of(ROUNDS)


def test_neighbours_of_one_kind_share_its_name_and_units_have_their_turn() -> None:
    parts = (
        Placed("pair 1", 0),
        Placed("pair 2", 0),
        Placed("unit a", 3),
        Placed("unit b", 0),
        Placed("row 1", 2),
    )
    assert line_of_parts(parts) == "pair 1 2, unit a3 b0, row 1@2"


def test_a_layout_is_written_as_the_map_of_the_file() -> None:
    [layout] = [step.action for step in PATTERN.steps.steps if isinstance(step.action, LayOut)]
    assert map_rows(layout.rows) == ["a2 a3 b2 b3 a2", "a1 a0 b1 b0 a1", "b0 b1 a0 a2 b1"]


def test_every_step_has_one_line_with_what_it_uses_and_makes() -> None:
    lines = steps_text(PATTERN.steps, PATTERN.design.units).splitlines()
    for step in PATTERN.steps.steps:
        [line] = [line for line in lines if line.split()[0] == str(step.number)]
        for pile in step.uses:
            assert f"{pile.count} {pile.label}" in line
        for product in step.makes:
            assert f"{product.count} {product.label} " in line.partition(" -> ")[2]
        if isinstance(step.action, SewLine):
            assert line_of_parts(step.action.parts) in line
