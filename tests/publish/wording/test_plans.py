"""How good plans are is told on the last page; beside a plan stands what the sewer needs."""

from __future__ import annotations

from quarterturn.publish.wording import beside_plan, cutting_advice, plan_rows, plans_compared
from tests.samples import ROUNDS, Changed, pattern_of


def test_beside_a_plan_stands_what_is_bought_and_no_proof() -> None:
    pattern = pattern_of(ROUNDS)
    for plan in pattern.materials.cloth:
        said = beside_plan(pattern, plan)
        assert said.startswith("Bought ")
        assert "slack" in said
        assert "No plan" not in said
        assert "plain rule" not in said


def test_each_plan_and_the_web_have_a_row_of_what_is_proved() -> None:
    pattern = pattern_of(ROUNDS)
    rows = tuple(plan_rows(pattern))
    assert [row[0] for row in rows] == [*(f"Fabric {plan.fabric}" for plan in pattern.materials.cloth), "Web"]
    assert all(row[2].startswith("No plan") for row in rows)
    assert "plain rule" in plans_compared(pattern)[0]


def test_the_head_of_cutting_names_the_width_and_the_prints_that_stand() -> None:
    advice = cutting_advice(pattern_of(ROUNDS))
    assert 'The plans count on a usable width of 40": measure your cloth first.' in advice
    assert not any("stands upright" in line for line in advice)
    assert not any("plain rule" in line for line in advice)
    colour = next(line for line in ROUNDS.splitlines() if line.startswith("colour"))
    standing = Changed(ROUNDS).with_(colour, f'{colour}\ndirection = "one-way"\nupright = true').text
    assert any(
        line.startswith("Mark the top of each piece of fabric A")
        for line in cutting_advice(pattern_of(standing))
    )
