"""Each check of how cloth behaves fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from quarterturn.design import default_making
from quarterturn.measure import Units
from quarterturn.proof import Pattern, check_pattern
from quarterturn.steps import CutAway
from tests.proof.checks.sound import Spoil, found, making, text, without

INK, SAND = 'colour = "#22304a"', 'colour = "#efe6d8"'
WOOL = (INK, f'{INK}\nkind = "wool"')
STRIPE = (INK, f'{INK}\ndirection = "two-way"')
TURNED = ("a2 a3 b2 b3", "a2 a2 b2 b3")
FOAM = '[fabrics.D]\nname = "foam"\nrole = "backing"\ncolour = "#ffffff"\ndirection = "two-way"'
OWN_BACKING = (
    ("[recipes.pool]", f"{FOAM}\n\n[recipes.pool]"),
    ('[backing]\nfabric = "A"', '[backing]\nfabric = "D"'),
)


def striped_backing(runs_down: bool) -> Pattern:
    """Return the pattern whose striped backing runs down, or across."""
    pattern = text(*OWN_BACKING)()
    cloth = tuple(
        replace(each, panels=tuple(replace(group, runs_down=runs_down) for group in each.panels))
        for each in pattern.materials.cloth
    )
    return replace(pattern, materials=replace(pattern.materials, cloth=cloth))


FIRES: dict[str, Spoil] = {
    "print-turns": text(STRIPE, TURNED),
    "backing-print-lies": lambda: striped_backing(False),
    "seam-for-thick": text(WOOL),
    "wool-bulk": text(WOOL),
    "wool-needle": text(WOOL),
    "stitch-too-long": text(making("stitch = { length = '3 mm' }")),
    "edges-fray": text(making('stitch = { kind = "straight" }')),
    "shadow-through": without(CutAway),
}
PASSES: dict[str, Spoil] = {
    "print-turns": text(STRIPE),
    "backing-print-lies": lambda: striped_backing(True),
    "seam-for-thick": text(WOOL, making("seam = '3/8\"'")),
    "wool-bulk": text(WOOL, making('pressing = "open"')),
    "wool-needle": text(WOOL, making('stitch = { needle = "90/14 topstitch" }')),
    "stitch-too-long": text(making("stitch = { length = '2.5 mm' }")),
    "edges-fray": text(making('stitch = { kind = "blanket" }')),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_one_way_print_takes_a_square_for_each_unit_of_the_commonest_turn() -> None:
    (sentence,) = found("print-turns", text((INK, f'{INK}\ndirection = "one-way"'), TURNED)())
    assert "it takes 3 squares; 2 are made" in sentence


def test_a_stripe_may_hang_upside_down() -> None:
    half_turned = ("a1 a0 b1 b0\nb2 b3 a2 a3", "a1 a2 b1 b0\nb2 b3 a2 a3")
    assert found("print-turns", text(STRIPE, half_turned)()) == []


NEEDLES = {60: 8, 65: 9, 70: 10, 75: 11, 80: 12, 90: 14, 100: 16, 110: 18}
"""Metric size (hundredths of a millimetre) and number of needles: apparelscience.com, needle numbers."""


def test_needles_are_named_by_both_sizes_and_the_usual_one_suits_quilting() -> None:
    """A machine needle 70/10 or 80/12 to begin with (North Dakota State University Extension, CB111)."""
    usual = default_making(Units.INCH).stitch.needle
    thick = [
        finding.remedy for finding in check_pattern(FIRES["wool-needle"]()) if finding.code == "wool-needle"
    ]
    named = [re.search(r"(\d+)/(\d+)", words) for words in (usual, *thick)]
    assert {int(each[1]): int(each[2]) for each in named if each} == {70: NEEDLES[70], 90: NEEDLES[90]}
    assert usual.startswith("70/10")
