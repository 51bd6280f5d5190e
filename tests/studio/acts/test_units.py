"""The units of a design are changed, and nothing that it states becomes another length."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.design import read_design
from quarterturn.measure import Units
from quarterturn.studio.acts import do
from quarterturn.studio.acts.units import ChangeUnits, with_units_stated
from quarterturn.studio.stages import Stages
from tests.samples import ROUNDS

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
BARE = ROUNDS.replace("'2\"'", "2").replace('"inch"', '"inch" # mine')


def test_bare_lengths_get_their_units_and_counts_do_not() -> None:
    design = read_design(BARE).design
    assert design
    stated = with_units_stated(BARE, design)
    assert "finished = '2\"'" in stated
    assert read_design(stated).design == design
    assert "format = 1\n" in stated
    assert 'number = "T-1"' in stated


def test_there_and_back_the_design_is_what_it_was() -> None:
    there = do(ChangeUnits(units="metric"), BARE, Stages()).made.text
    changed, before = read_design(there).design, read_design(BARE).design
    assert changed
    assert before
    assert changed.units is Units.METRIC
    assert [recipe.finished_width for recipe in changed.recipes] == [r.finished_width for r in before.recipes]
    assert "# mine" in there
    assert changed.making.seam == before.making.seam
    back = do(ChangeUnits(units="inch"), there, Stages()).made.text
    assert read_design(back).design == before


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_of_every_example_the_lengths_can_be_stated(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    design = read_design(text).design
    assert design
    assert read_design(with_units_stated(text, design)).design == design


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_can_be_told_in_the_other_units(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    stages = Stages()
    before = stages.at(text)
    other = "metric" if before.design.units is Units.INCH else "inch"
    after = do(ChangeUnits(units=other), text, stages).made
    sides = [(made.size().setting.width, made.size().setting.height) for made in (before, after)]
    assert sides[0] == sides[1]


def test_the_same_units_change_nothing() -> None:
    assert not do(ChangeUnits(units="inch"), BARE, Stages()).changed
