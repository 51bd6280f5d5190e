"""The text form of the materials."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.materials import gap_percent, materials_text
from quarterturn.measure import Units, inches
from tests.materials.cutting_cases import piece, plan
from tests.samples import ROUNDS, pattern_of


def test_text_form_of_the_sample() -> None:
    text = materials_text(pattern_of(ROUNDS).materials, Units.INCH)
    assert text.endswith("\n")
    assert not any(line.endswith(" ") for line in text.splitlines())
    for word in (
        "cloth",
        "fabric A",
        "web 17",
        "batting 21",
        "binding 56",
        "thread, an estimate",
        "shopping",
    ):
        assert word in text


def test_what_does_not_fit_is_told() -> None:
    materials = pattern_of(ROUNDS).materials
    cloth = (plan(piece(1, 50), width=40),)
    web = replace(materials.web, rows=(), unplaced=("round",))
    text = materials_text(replace(materials, cloth=cloth, web=web, batting_package=""), Units.INCH)
    assert "  does not fit: A1\n" in text
    assert "  wider than the web: round\n" in text
    assert "package" not in text


def test_the_gap_is_told_in_percent_of_the_bound() -> None:
    best = plan(piece(8, 5))
    assert gap_percent(best) == 0
    assert gap_percent(replace(best, cut_length=inches(6))) == 20
    assert gap_percent(replace(best, lower_bound=inches(0))) == 0
