"""Each check of the sewing fires on its fault."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.proof import Pattern
from quarterturn.setting import Side
from quarterturn.steps import AddBorder, LayOut, SewLine, Step, Steps
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
from tests.samples import pattern_of
from tests.section_texts import NESTED, SASHED, TEXTS

UNITS = sound().setting.units


def turned(each: Step) -> Step:
    """Let the first piece of a line be turned once more."""
    assert isinstance(each.action, SewLine)
    first, *rest = each.action.parts
    parts = (replace(first, turn=(first.turn + 1) % 4), *rest)
    return replace(each, action=replace(each.action, parts=parts))


def sashing_out_of_order() -> Pattern:
    """Return a pattern in whose first row of sashing a strip begins where a cornerstone should."""
    pattern = pattern_of(SASHED)

    def shifted(each: Step) -> Step:
        if isinstance(each.action, SewLine) and each.makes[0].label == "sashing 2":
            parts = each.action.parts[1:] + each.action.parts[:1]
            return replace(each, action=replace(each.action, parts=parts))
        return each

    return replace(pattern, steps=Steps(tuple(map(shifted, pattern.steps.steps))))


FIRES: dict[str, Spoil] = {
    "layout-differs": setting(units=(replace(UNITS[0], turn=1), *UNITS[1:])),
    "centre-differs": step(SewLine, turned),
    "sewn-size-wrong": step(AddBorder, wider),
    "pressing-clashes": action(SewLine, press=None),
    "crossings-miss": sashing_out_of_order,
}
PASSES: dict[str, Spoil] = {
    "crossings-miss": lambda: pattern_of(SASHED),
    "layout-differs": lambda: pattern_of(NESTED),
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


@pytest.mark.parametrize("name", TEXTS)
def test_a_part_turned_once_more_is_found_in_every_section_that_is_sewn(name: str) -> None:
    pattern = pattern_of(TEXTS[name])
    assert found("centre-differs", pattern) == []
    rows = [
        each.number
        for each in pattern.steps.steps
        if isinstance(each.action, SewLine)
        and each.action.parts[0].label.startswith("unit ")
        and "border" not in each.makes[0].label
    ]
    for number in rows:
        spoilt = tuple(turned(each) if each.number == number else each for each in pattern.steps.steps)
        assert found("centre-differs", replace(pattern, steps=Steps(spoilt)))
