"""Each check of the sewing fires on its fault."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.setting import Side
from quarterturn.steps import AddBorder, LayOut, SewLine, Step
from tests.proof.checks.sound import (
    EIGHTH,
    Spoil,
    action,
    found,
    making,
    setting,
    sound,
    step,
    steps,
    text,
    wider,
)

UNITS = sound().setting.units


def turned(each: Step) -> Step:
    """Let the first piece of a line be turned once more."""
    assert isinstance(each.action, SewLine)
    first, *rest = each.action.parts
    parts = (replace(first, turn=(first.turn + 1) % 4), *rest)
    return replace(each, action=replace(each.action, parts=parts))


FIRES: dict[str, Spoil] = {
    "layout-differs": setting(units=(replace(UNITS[0], turn=1), *UNITS[1:])),
    "centre-differs": step(SewLine, turned),
    "sewn-size-wrong": step(AddBorder, wider),
    "pressing-clashes": action(SewLine, press=None),
}
PASSES: dict[str, Spoil] = {
    "pressing-clashes": text(making('pressing = "open"')),
    "centre-differs": text(
        ("a2 a3 b2 b3", "a2 a3 b2 b3 a1"),
        ("a1 a0 b1 b0", "a1 a0 b1 b0 b1"),
        ("b2 b3 a2 a3", "b2 b3 a2 a3 b0"),
        ("b1 b0 a1 a0", "b1 b0 a1 a0 a0"),
    ),
    "sewn-size-wrong": text(("width = '2\"'", 'width = \'2"\'\nfirst = "ends"')),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_the_first_unit_that_differs_is_named_by_row_and_place() -> None:
    spoilt = setting(units=(*UNITS[:6], replace(UNITS[6], turn=3), *UNITS[7:]))
    (sentence,) = found("layout-differs", spoilt())
    assert sentence == "The map has b1 in row 2, unit 3; the assembly drawing has b3."


def test_a_layout_with_a_row_too_few_is_found() -> None:
    rows = next(s.action for s in sound().steps.steps if isinstance(s.action, LayOut)).rows
    assert "3 rows" in found("layout-differs", action(LayOut, rows=rows[:-1])())[0]


def test_a_border_strip_of_another_length_than_its_edge_is_found() -> None:
    used = next(each.uses[1].label for each in sound().steps.steps if isinstance(each.action, AddBorder))

    def longer(each: Step) -> Step:
        made = (replace(m, width=m.width + EIGHTH) if m.label == used else m for m in each.makes)
        return replace(each, makes=tuple(made))

    spoilt = steps(lambda all_: tuple(longer(each) for each in all_))
    assert found("sewn-size-wrong", spoilt())[0].endswith('sews edges of 16½" and 16⅝" to one another.')


def test_without_a_step_that_sews_the_rows_the_centre_is_not_made() -> None:
    spoilt = action(SewLine, last=True, way=Side.RIGHT)
    assert found("centre-differs", spoilt()) == ["No step sews the rows to one another."]
