"""Every example through every stage: the text forms are goldens, and the rehearsal makes the picture."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from quarterturn.cli.show import TEXTS
from quarterturn.design import OnPointSet, Severity
from quarterturn.pipeline import Job, run
from quarterturn.proof import ACCEPTED, Pattern, findings_text, prove, rehearsal_text, sizes_text
from tests.conftest import Golden

EXAMPLES = sorted((Path(__file__).parent.parent / "examples").glob("*.toml"))
NAMES = [file.stem for file in EXAMPLES]


@cache
def job_of(name: str) -> Job:
    file = EXAMPLES[NAMES.index(name)]
    return run(file.read_bytes(), file.name)


def pattern_of(name: str) -> Pattern:
    pattern = job_of(name).pattern
    assert pattern is not None, job_of(name).findings
    return pattern


def test_there_are_examples_from_a_mini_to_a_king() -> None:
    sizes = [len(pattern_of(name).setting.units) for name in NAMES]
    assert min(sizes) <= 100
    assert max(sizes) >= 1600


@pytest.mark.parametrize("stage", TEXTS)
@pytest.mark.parametrize("name", NAMES)
def test_what_a_stage_makes_of_an_example(name: str, stage: str, golden: Golden) -> None:
    golden.check(f"{name}/{stage}.txt", TEXTS[stage](pattern_of(name)))


@pytest.mark.parametrize("name", NAMES)
def test_what_is_found_in_an_example(name: str, golden: Golden) -> None:
    findings = job_of(name).findings
    assert [finding for finding in findings if finding.severity is Severity.STOPS] == []
    golden.check(f"{name}/findings.txt", findings_text(findings, f"{name}.toml"))


@pytest.mark.parametrize("name", NAMES)
def test_the_steps_of_an_example_make_its_picture(name: str, golden: Golden) -> None:
    pattern = pattern_of(name)
    proof = prove(pattern)
    assert proof.findings == ()
    assert proof.share < ACCEPTED <= 1e-6
    assert proof.rehearsal.steps_done == len(pattern.steps.steps)
    golden.check(f"{name}/rehearsal.txt", rehearsal_text(pattern, proof))


IN_SIZES = [name for name in NAMES if len(job_of(name).patterns) > 1]


def test_an_example_shows_sizes_by_more_units_and_by_larger_ones() -> None:
    base, *others = job_of("marbles-on-the-stair").patterns
    assert len(others) >= 5
    assert {each.blocks == base.blocks for each in others} == {True, False}
    assert any(each.setting.width > 4 * each.setting.height for each in others)


def test_an_example_sets_rejoined_blocks_on_point_beside_panels_with_motifs_in_two_sizes() -> None:
    patterns = job_of("gates-of-the-orchard").patterns
    assert len(patterns) == 2
    for pattern in patterns:
        assert isinstance(pattern.design.setting, OnPointSet)
        assert pattern.design.setting.sashing
        assert pattern.bill.motifs
        assert all(pattern.design.colourway(code).is_rejoined for code in pattern.setting.codes)


@pytest.mark.parametrize("name", IN_SIZES)
def test_the_sizes_of_an_example_side_by_side(name: str, golden: Golden) -> None:
    golden.check(f"{name}/sizes.txt", sizes_text(job_of(name).patterns))


@pytest.mark.parametrize("name", IN_SIZES)
def test_the_steps_of_every_size_make_its_picture(name: str) -> None:
    for pattern in job_of(name).patterns[1:]:
        proof = prove(pattern)
        assert proof.findings == (), pattern.design.size
        assert proof.share < ACCEPTED
        assert proof.rehearsal.steps_done == len(pattern.steps.steps)
