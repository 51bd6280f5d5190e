"""`rehearse` tells whether the steps make the picture, and what is left over."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from quarterturn import proof
from quarterturn.cli.door import run
from quarterturn.cli.ending import Ending
from quarterturn.proof import Pattern, Proof, prove
from quarterturn.steps import Steps, Subcut
from tests.samples import ROUNDS, pattern_of


@pytest.fixture
def file(tmp_path: Path) -> str:
    file = tmp_path / "rounds.toml"
    file.write_text(ROUNDS, encoding="utf-8")
    return str(file)


def first_subcut(pattern: Pattern) -> int:
    """Return the number of the first step that cuts strips into pieces."""
    return next(step.number for step in pattern.steps.steps if isinstance(step.action, Subcut))


def without_the_first_strips(pattern: Pattern) -> Proof:
    kept = tuple(step for step in pattern.steps.steps if step.number != first_subcut(pattern) - 1)
    return prove(replace(pattern, steps=Steps(kept)))


def test_a_rehearsal_that_holds_says_so_and_what_is_left(
    file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["rehearse", file]) == Ending.GOOD
    said = capsys.readouterr().out
    assert "single operations can be carried out as written" in said
    assert "is the one in the picture" in said
    assert [line.split()[:3] for line in said.splitlines() if line.startswith("  fabric")] == [
        ["fabric", "A", "oyster"],
        ["fabric", "B", "ink"],
        ["fabric", "C", "brick"],
    ]


def test_a_rehearsal_that_fails_names_the_step(
    file: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(proof, "prove", without_the_first_strips)
    assert run(["rehearse", file]) == Ending.STOPPED
    said = capsys.readouterr().out.splitlines()
    assert said[0].startswith(f"{file}: step {first_subcut(pattern_of(ROUNDS))}: stops: ")
    assert said[0].endswith("(rehearsal-failed)")


def test_the_result_as_json_has_lengths_in_inches(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["rehearse", file, "--json"]) == Ending.GOOD
    told = json.loads(capsys.readouterr().out)
    assert told["holds"] is True
    assert told["steps_done"] == told["steps"] > 0
    assert told["difference_share"] < 1e-6
    assert set(told["cloth_left_inches"]) == {"A", "B", "C"}
    assert min(told["cloth_left_inches"].values()) >= 0
    assert told["findings"] == []


def test_a_design_that_cannot_be_made_is_not_rehearsed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "empty.toml"
    file.touch()
    assert run(["rehearse", str(file)]) == Ending.STOPPED
    printed = capsys.readouterr()
    assert printed.out == ""
    assert "(empty-file)" in printed.err
