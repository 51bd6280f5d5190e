"""A design is drafted anew in the other units."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path
from typing import Literal

import pytest

from quarterturn.design import read_design
from quarterturn.measure import MM, Units
from quarterturn.studio.acts import RefusedError, do
from quarterturn.studio.acts.units import ChangeUnits, lengths_of, nearest_mark
from quarterturn.studio.stages import Stages
from tests.samples import ROUNDS

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
BARE = ROUNDS.replace("'2\"'", "2").replace('"inch"', '"inch" # mine')


def test_what_is_a_length_is_told_from_what_is_a_count_or_a_name() -> None:
    design = read_design(BARE).design
    assert design
    found = lengths_of(BARE, design)
    assert found[("recipes", "round", "finished")] == 2
    assert ("format",) not in found
    assert ("number",) not in found


def test_units_finish_at_a_mark_of_the_other_ruler_and_seams_are_as_usual() -> None:
    there = do(ChangeUnits(units="metric"), BARE, Stages()).made.text
    design = read_design(there).design
    assert design
    assert (design.units, design.making.seam) == (Units.METRIC, Fraction("7.5") * MM)
    assert [recipe.finished_width for recipe in design.recipes] == [50 * MM]
    assert 'units = "metric" # mine' in there


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_is_drafted_anew_or_keeps_its_lengths(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    stages = Stages()
    before = stages.at(text)
    other: Literal["inch", "metric"] = "metric" if before.design.units is Units.INCH else "inch"
    refused: RefusedError | None = None
    try:
        after = do(ChangeUnits(units=other), text, stages).made
    except RefusedError as error:
        refused = error
    else:
        assert "units-mixed" not in {finding.code for finding in after.findings}
    if refused is not None:
        assert refused.can_anyway
        after = do(ChangeUnits(units=other, anyway=True), text, stages).made
    assert after.design.units.value == other
    if not after.stops:
        sides = [
            (float(made.size().setting.width), float(made.size().setting.height)) for made in (before, after)
        ]
        assert sides[1] == pytest.approx(sides[0], rel=0.06)


def test_the_nearest_mark_is_never_nothing() -> None:
    assert nearest_mark(Fraction(4), Units.METRIC) == 100 * MM
    assert nearest_mark(Fraction(1, 100), Units.METRIC) == MM / 2
    assert nearest_mark(100 * MM, Units.INCH) == Fraction(4)
    assert nearest_mark(Fraction(0), Units.METRIC) == 0


def test_the_same_units_change_nothing() -> None:
    assert not do(ChangeUnits(units="inch"), BARE, Stages()).changed
