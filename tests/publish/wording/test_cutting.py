"""What the booklet says of stacks, split strips, unequal strips in a run, joins and strips that are decided on."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from quarterturn.materials import JoinMethod
from quarterturn.proof import Pattern, prove
from quarterturn.publish.figures import cloth_figure
from quarterturn.publish.wording import cutting_advice, plan_line, tell
from quarterturn.steps import CutSegments, JoinEnds, Step, Subcut
from tests.proof.checks.sound import SOUND
from tests.samples import ROUNDS, pattern_of, quay_with_borders

EXAMPLES = Path(__file__).parents[3] / "examples"


@cache
def foxes(layers: int = 4) -> Pattern:
    text = (EXAMPLES / "foxes-on-the-heath.toml").read_text("utf-8")
    return pattern_of(f"{text}\n[making]\nlayers = {layers}\n" if "[making]" not in text else text)


def first(pattern: Pattern, kind: type[CutSegments] | type[JoinEnds] | type[Subcut]) -> Step:
    return next(step for step in pattern.steps.steps if isinstance(step.action, kind))


@pytest.mark.parametrize(
    ("layers", "said"),
    [(4, "subcut in one stack into (16)"), (3, "subcut in 2 stacks into"), (1, "subcut into (16)")],
)
def test_strips_cut_up_alike_are_stacked_as_high_as_is_said(layers: int, said: str) -> None:
    pattern = foxes(layers)
    assert tell(first(pattern, Subcut), pattern).line.startswith(said)
    stacking = [line for line in cutting_advice(pattern) if "are stacked, up to" in line]
    assert [f"up to {layers} layers" in line for line in stacking] == ([True] if layers > 1 else [])


def test_the_maker_of_the_cutter_has_the_last_word() -> None:
    assert any("than the maker of your rotary cutter says" in line for line in cutting_advice(foxes()))


def test_a_split_strip_is_told_and_drawn() -> None:
    pattern = foxes()
    said = tell(first(pattern, CutSegments), pattern).line
    assert said == 'cut Ds1 segment, one below the other, into (2) 3" × 29½" strips – D1 (border, end strip)'
    plan = pattern.materials.plan("D")
    assert "pieces may lie below one another in a strip too, in every plan compared" in plan_line(
        pattern, plan
    )
    assert "2 of D3, 2 of D1" in cloth_figure(pattern, plan, 100).alt


def test_a_run_of_unequal_strips_names_them_all() -> None:
    pattern = foxes()
    assert tell(first(pattern, JoinEnds), pattern).line.startswith(
        "Sew the (3) strips Bs1 and (2) strips Bs3 end to end with diagonal seams"
    )


def test_joins_that_are_asked_for_on_the_diagonal_are_told_with_what_straight_ones_take() -> None:
    text = quay_with_borders("crosswise").replace("[making]\n", '[making]\njoins = "diagonal"\n')
    pattern = pattern_of(text)
    plan = pattern.materials.plan("B")
    assert {run.method for run in plan.runs} == {JoinMethod.DIAGONAL}
    assert "Their joins are on the diagonal; straight, the best plan found takes 3 yards." in plan_line(
        pattern, plan
    )
    assert prove(pattern).holds


def test_what_strips_that_are_decided_on_cost_is_told() -> None:
    more = "\n[[fabrics.A.strips]]\nheight = '12\"'\ncount = 1\n"
    pattern = pattern_of(SOUND.replace('colour = "#efe6d8"', f'colour = "#efe6d8"\n{more}', 1))
    said = plan_line(pattern, pattern.materials.plan("A"))
    assert "as the designer has decided, in every plan compared; without that, 1⅛ yards would" in said


def test_it_is_told_that_pieces_lower_than_their_strip_are_trimmed_where_there_are_any() -> None:
    pattern = pattern_of(ROUNDS)
    assert any("lower than the strip" in line for line in cutting_advice(pattern))
    level = tuple(
        replace(plan, strips=tuple(group for group in plan.strips if len(group.crosscuts) == 1))
        for plan in pattern.materials.cloth
    )
    even = replace(pattern, materials=replace(pattern.materials, cloth=level))
    assert not any("lower than the strip" in line for line in cutting_advice(even))
