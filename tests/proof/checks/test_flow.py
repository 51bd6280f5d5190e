"""Each check of the flow fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.design import StraightSet
from quarterturn.proof import Pattern
from quarterturn.setting import Closing, Flow, arrange, closing_turns
from tests.proof.checks.sound import Spoil, found, recipe, setting, sound, text
from tests.samples import HEARTS, ROUNDS, pattern_of, straight, units_in

FLOW = sound().setting.flow
SLIP = text(("b1 b0 a1 a0\n", "b1 b0 a1 a2\n"))
"""The last unit of the map is turned by two quarters, so that its round stays open."""
FIRES: dict[str, Spoil] = {
    "flow-miscounted": setting(flow=replace(FLOW, paths=FLOW.rounds[:1])),
    "round-left-open": SLIP,
}
PASSES: dict[str, Spoil] = {
    "flow-miscounted": SLIP,
    "round-left-open": text(("b1 b0 a1 a0\n", "b1 b0 a2 a2\n")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def spoilt(flow: Flow) -> Pattern:
    return setting(flow=flow)()


def test_pieces_paths_steps_and_lengths_are_held_against_the_map() -> None:
    short, *others = FLOW.rounds
    for wrong, words in {
        replace(FLOW, rounds=FLOW.rounds[1:]): "12 pieces of curve",
        replace(FLOW, rounds=tuple(others), paths=(short,)): "1 open paths;",
        replace(FLOW, steps=2): "2 steps",
        replace(FLOW, rounds=(replace(short, length=short.length / 2), *others)): "long",
    }.items():
        (said,) = found("flow-miscounted", spoilt(wrong))
        assert words in said


@pytest.mark.parametrize("words", [ROUNDS, HEARTS], ids=["circles", "outlines"])
def test_the_flow_of_a_design_is_that_of_its_map(words: str) -> None:
    assert found("flow-miscounted", pattern_of(words)) == []


def test_a_unit_that_keeps_a_round_open_is_told_with_its_place_and_its_turn() -> None:
    pattern = SLIP()
    assert closing_turns(pattern.design, pattern.blocks, pattern.setting) == (Closing(15, 2, 4, 3),)
    assert found("round-left-open", pattern) == [
        "Turned by 2 quarters more, the unit at row 4, column 4 would close a round of 4 pieces, like the 3 that close "
        "elsewhere."
    ]


def test_the_turn_that_is_told_closes_the_round() -> None:
    slip = SLIP()
    (closing,) = closing_turns(slip.design, slip.blocks, slip.setting)
    rows = [list(row) for row in units_in(straight(slip.design).rows())]
    slipped = slip.setting.units[closing.unit]
    unit = rows[slipped.row][slipped.column]
    rows[slipped.row][slipped.column] = replace(unit, turn=(unit.turn + closing.quarters) % 4)
    mended = replace(slip.design, setting=StraightSet(tuple(map(tuple, rows)), 1, 1))
    assert len(slip.setting.flow.rounds) == 3
    assert len(arrange(mended, slip.blocks).flow.rounds) == 4


def test_where_many_units_keep_rounds_open_it_is_the_design() -> None:
    many = text(("a2 a3 b2 b3", "a2 a3 b2 b1"), ("b1 b0 a1 a0\n", "b1 b0 a1 a2\n"))()
    assert len(closing_turns(many.design, many.blocks, many.setting)) == 2
    assert found("round-left-open", many) == []


def test_a_unit_of_an_outline_with_several_kinds_of_unit_may_be_the_slip() -> None:
    hearts = HEARTS.replace(
        "a-tl0 a-tr0 c-tl0 c-tr0 a-tl0", "a-tl0 a-tr0 a-tl0 a-tr0 a-tl0 a-tr0 a-tl0 a-tr0"
    )
    slip = hearts.replace("a-bl0 a-br0 c-tr2 c-tl2 a-tl1", "a-bl0 a-br0 a-bl0 a-br0 a-bl0 a-br0 a-bl0 a-br3")
    (said,) = found("round-left-open", pattern_of(slip.replace('recipe = "leaf"', 'recipe = "heart"')))
    assert said.startswith("Turned by 1 quarter more, the unit at row 2, column 8")


def test_no_round_closes_where_no_other_does() -> None:
    alone = text(("a2 a3 b2 b3\na1 a0 b1 b0\nb2 b3 a2 a3\nb1 b0 a1 a0", "a2 a3\na1 a2"))()
    assert closing_turns(alone.design, alone.blocks, alone.setting) == ()


def test_a_step_is_told_with_the_two_places_that_make_it() -> None:
    near = text(
        recipe("finished = '4\"'\nshape = { radius = '1 7/8\"' }\ncurve = \"sewn true\""),
        ("a2 a3 b2 b3", "a2 a0 b2 b3"),
    )()
    (said,) = found("edges-step", near)
    assert 'step by up to ¼"' in said
    assert said.endswith('The curve of pool meets the side 1⅞" from one end, and so 2⅛" from the other.')
