"""`show` prints what each stage makes, as text and as JSON."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from quarterturn.cli.door import run
from quarterturn.cli.ending import Ending
from quarterturn.cli.show import FINDINGS, STAGES, TEXTS
from quarterturn.design import read_design
from tests.samples import ROUNDS, design_of


@pytest.fixture
def file(tmp_path: Path) -> str:
    file = tmp_path / "rounds.toml"
    file.write_text(ROUNDS, encoding="utf-8")
    return str(file)


def test_every_stage_has_a_text_form() -> None:
    assert {*TEXTS, FINDINGS} == set(STAGES)


@pytest.mark.parametrize("stage", STAGES)
def test_a_stage_is_printed_as_lines_and_as_json(
    stage: str, file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["show", stage, file]) == Ending.GOOD
    text = capsys.readouterr().out
    assert text.endswith("\n")
    assert [line for line in text.splitlines() if line != line.rstrip()] == []
    assert run(["show", stage, file, "--json"]) == Ending.GOOD
    assert isinstance(json.loads(capsys.readouterr().out), dict | list)


def test_the_design_is_printed_as_a_file_that_reads_back_as_the_same(
    file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["show", "design", file]) == Ending.GOOD
    assert read_design(capsys.readouterr().out).design == design_of(ROUNDS)


def test_steps_are_numbered_one_to_a_line(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["show", "steps", file]) == Ending.GOOD
    firsts = [line.split()[0] for line in capsys.readouterr().out.splitlines() if line.startswith("  ")]
    numbers = [int(first) for first in firsts if first.isdigit()]
    assert numbers == list(range(1, len(numbers) + 1))


def test_a_design_that_cannot_be_made_has_findings_to_show_and_nothing_else(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "empty.toml"
    file.touch()
    assert run(["show", "findings", str(file)]) == Ending.GOOD
    assert "(empty-file)" in capsys.readouterr().out
    assert run(["show", "steps", str(file)]) == Ending.STOPPED
    assert "(empty-file)" in capsys.readouterr().err
