"""All materials of whole designs."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.materials import Materials, gap_percent, materials_text
from quarterturn.measure import inches
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from tests.conftest import Golden
from tests.samples import ROUNDS, Changed, pattern_of

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))


def materials_of(text: str) -> Materials:
    """Return the materials of a design."""
    return pattern_of(text).materials


def example(file: Path) -> Pattern:
    """Return the pattern of an example."""
    return pattern_of(file.read_text(encoding="utf-8"))


def test_a_fabric_that_nothing_is_cut_from_has_no_plan() -> None:
    unused = '[fabrics.Z]\nname = "sand"\nrole = "none"\ncolour = "#d8c8a0"\n[recipes.round]'
    materials = materials_of(Changed(ROUNDS).with_("[recipes.round]", unused).text)
    assert [plan.fabric for plan in materials.cloth] == ["A", "B", "C"]


def test_batting_is_the_top_and_the_overage_all_round() -> None:
    """Five by three units of 2″ and a border of 1½″: 13″ × 9″, and 4″ on each side."""
    materials = materials_of(ROUNDS)
    assert (materials.batting_width, materials.batting_height) == (21, 17)
    assert materials.batting_package == "crib"


def test_binding_goes_round_and_a_foot_further() -> None:
    materials = materials_of(ROUNDS)
    assert materials.binding_run == 2 * (13 + 9) + 12
    (run,) = materials.plan("B").runs
    assert run.length >= materials.binding_run


def test_whole_circles_quartered() -> None:
    """QUILTsocial, Fall 2014, p. 15: six 12″ squares and six 6″ circles of each of two colours give 48 units of 5″.

    Cut from 42″ cloth each colour takes two strips of 12″ and one of 6½″, 30½″; the magazine prints 1 yard.
    """
    rows = "\n".join(["a0 a1 a2 a3 b0 b1 b2 b3"] * 6)
    text = Changed(ROUNDS).with_("finished = '2\"'", "finished = '5\"'\ntrim = '1\"'")
    text = text.with_("{ flow = true }", "{ diameter = '6\"' }")
    text = text.with_("a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1", rows)
    text = text.with_('[binding]\nfabric = "B"', '[binding]\nfabric = "C"')
    text = text.with_('[backing]\nfabric = "A"', '[backing]\nfabric = "C"')
    pattern = pattern_of(text.text + "\n[making]\nusable_width = '42\"'\n")
    assert [(m.count, m.units_needed, m.surplus_units) for m in pattern.bill.masters] == [
        (6, 24, 0),
        (6, 24, 0),
    ]
    for letter in "AB":
        assert sorted((p.count, p.length) for p in pattern.bill.of_fabric(letter)) == [
            (6, inches(6, 1, 2)),
            (6, inches(12)),
        ]
        assert pattern.materials.plan(letter).cut_length == inches(30, 1, 2)


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_plans_are_no_longer_than_the_hand_rule(file: Path) -> None:
    """Those of maps of units are proved best where none is split; how near others come, their text forms say."""
    pattern = example(file)
    plain = {Purpose.BORDER, Purpose.GROUND, Purpose.SHAPE, Purpose.BINDING, Purpose.BACKING}
    for plan in pattern.materials.cloth:
        assert plan.unplaced == ()
        assert plan.lower_bound <= plan.cut_length <= plan.hand_rule
        split = any(group.splits for group in plan.strips)
        if not split and {piece.purpose for piece in pattern.bill.pieces} <= plain:
            assert gap_percent(plan) == 0


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_text_form_of_the_examples(file: Path, golden: Golden) -> None:
    pattern = example(file)
    golden.check(f"{file.stem}.txt", materials_text(pattern.materials, pattern.design.units))
