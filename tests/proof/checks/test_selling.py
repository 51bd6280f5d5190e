"""Each check of kits and classes fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import re

import pytest

from quarterturn.design import read_design
from quarterturn.pipeline import make_pattern
from quarterturn.proof import check_pattern
from quarterturn.proof.work import class_plan
from tests.proof.checks.sound import SOUND, Spoil, found, text
from tests.samples import pattern_of


def sold(lines: str) -> Spoil:
    """Return the pattern of the sound design with tables of kits or a class."""
    return text(("[backing]", f"{lines}\n\n[backing]"))


FIRES: dict[str, Spoil] = {
    "kit-over-bolt": sold("[kits]\ncount = 3\nbolt = '1 yd'\nbacking = true"),
    "class-too-long": sold("[class]\nstudents = 4\nhours = 1"),
    "irons-few": sold("[class]\nstudents = 9\nhours = 60\nirons = 2"),
    "homework-absent": sold('[class]\nstudents = 4\nhours = 60\nhomework = ["cutting", "panels"]'),
}
PASSES: dict[str, Spoil] = {
    "kit-over-bolt": sold("[kits]\ncount = 3\nbolt = '3 yd'\nbacking = true"),
    "class-too-long": sold("[class]\nstudents = 4\nhours = 60"),
    "irons-few": sold("[class]\nstudents = 8\nhours = 60\nirons = 2"),
    "homework-absent": sold('[class]\nstudents = 4\nhours = 60\nhomework = ["cutting", "borders"]'),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_class_that_makes_the_masters_that_are_told_is_done_in_time() -> None:
    pattern = sold("[class]\nstudents = 4\nhours = 2")()
    (finding,) = [each for each in check_pattern(pattern) if each.code == "class-too-long"]
    masters = int(finding.remedy.split("class.masters to ")[1].split(",")[0])
    for count, fits in ((masters, True), (masters + 1, False)):
        fewer = sold(f"[class]\nstudents = 4\nhours = 2\nmasters = {count}")()
        assert fewer.design.selling.lesson
        assert class_plan(fewer, fewer.design.selling.lesson).fits is fits


def test_a_bolt_as_long_as_is_told_holds_the_kits() -> None:
    (sentence,) = found("kit-over-bolt", sold("[kits]\ncount = 3\nbolt = '1 yd'\nbacking = true")())
    assert sentence.startswith(
        "Kits take cuts of fabric A for which a bolt of 1 yard is too short: (3) A for a kit"
    )


def test_kits_of_another_size_are_checked_in_that_size_alone() -> None:
    kits = "[kits]\ncount = 1\nbolt = '1 yd'\nsize = \"large\""
    words = f"{SOUND}\n{kits}\n[sizes.large]\nchanges = {{ setting.across = 9 }}"
    design = read_design(words).design
    assert design
    assert found("kit-over-bolt", make_pattern(design)) == []
    assert found("kit-over-bolt", make_pattern(design.in_size("large")))


def test_no_class_is_asked_to_last_longer_than_one_can() -> None:
    words = SOUND.replace('kind = "straight"', 'kind = "straight"\nacross = 12\ndown = 12')
    pattern = pattern_of(f"{words}\n[class]\nstudents = 4\nhours = 3\n")
    (finding,) = [each for each in check_pattern(pattern) if each.code == "class-too-long"]
    assert re.fullmatch(r"Set class\.masters to \d+\.", finding.remedy)
