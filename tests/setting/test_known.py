"""Known settings: each can be sewn as drawn, and is what its name says."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.design import read_design
from quarterturn.measure import MM, Units
from quarterturn.pipeline import Job, run
from quarterturn.proof import prove
from quarterturn.setting import Meeting
from quarterturn.setting.known import KnownSetting, begin_with, known_names, known_setting
from tests.samples import straight, units_in

NAMES = known_names()


@cache
def job_of(name: str, units: Units) -> Job:
    return run(begin_with(name, "A Title", units))


def units_at(known: KnownSetting) -> list[list[str]]:
    """The units of one repeat, as the map would write them."""
    rows, columns = known.repeat
    return [
        [f"{cell.code}{cell.turn}" for cell in row[:columns]]
        for row in units_in(straight(known.design).rows())[:rows]
    ]


def test_there_are_seven() -> None:
    assert NAMES == [
        "drunkards-path", "fans", "mill-wheel", "polka-dots", "shells", "snowball", "winding-path",
    ]  # fmt: skip


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("name", NAMES)
def test_a_design_that_begins_with_one_wants_only_its_designers_own_words(name: str, units: Units) -> None:
    job = job_of(name, units)
    assert {finding.code for finding in job.findings} == {"placeholder-left"}
    assert job.pattern is not None
    assert (job.pattern.design.title, job.pattern.design.units) == ("A Title", units)


@pytest.mark.parametrize("name", NAMES)
def test_its_steps_make_exactly_its_picture(name: str) -> None:
    pattern = job_of(name, Units.INCH).pattern
    assert pattern is not None
    proof = prove(pattern)
    assert proof.holds
    assert proof.difference == 0


@pytest.mark.parametrize("name", NAMES)
def test_metric_sizes_are_half_centimetres(name: str) -> None:
    design = read_design(begin_with(name, "A Title", Units.METRIC)).design
    assert design is not None
    assert [(recipe.finished / (5 * MM)).denominator for recipe in design.recipes] == [1]


@pytest.mark.parametrize("name", NAMES)
def test_it_has_two_fabrics_and_says_what_it_looks_like(name: str) -> None:
    known = known_setting(name)
    assert len(known.design.fabrics) == 2
    assert known.looks.endswith(".")
    assert known.colourways == len(known.design.colourways)


def test_the_drunkards_path_has_sixteen_units_half_of_each_colouring() -> None:
    """The traditional block: 4 × 4 units of two colourings (R. Finley, Old Patchwork Quilts, 1929)."""
    known = known_setting("drunkards-path")
    block = units_at(known)
    assert known.repeat == (4, 4)
    assert sum(unit.startswith("a") for row in block for unit in row) == 8
    assert block == [
        ["a2", "b0", "b1", "a3"],
        ["b0", "a0", "a1", "b1"],
        ["b3", "a3", "a2", "b2"],
        ["a1", "b3", "b2", "a0"],
    ]


@pytest.mark.parametrize("name", ["polka-dots", "snowball", "mill-wheel"])
def test_rounds_are_whole(name: str) -> None:
    rows = units_at(known_setting(name))
    assert [[unit[1] for unit in row] for row in rows] == [
        ["23"[column % 2] if row % 2 == 0 else "10"[column % 2] for column in range(len(rows[0]))]
        for row in range(len(rows))
    ]


def test_fans_all_look_the_same_way() -> None:
    rows = units_in(straight(known_setting("fans").design).rows())
    assert {cell.turn for row in rows for cell in row} == {3}


@pytest.mark.parametrize("name", ["winding-path", "polka-dots", "snowball", "mill-wheel"])
def test_no_curve_ends_at_a_seam(name: str) -> None:
    pattern = job_of(name, Units.INCH).pattern
    assert pattern is not None
    met = {mark.meeting for join in pattern.setting.joins for mark in join.marks}
    assert met == {Meeting.MATCH}
