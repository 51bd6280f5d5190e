"""`check` says every finding, for people and for programs, and ends with the code that fits."""

from __future__ import annotations

import io
import json
import sys
from pathlib import Path

import pytest

from quarterturn.cli.door import run
from quarterturn.cli.ending import Ending
from tests.design.broken_cases import BROKEN, GOOD, Broken
from tests.samples import ROUNDS

LINES_OF_A_FINDING = 2


def saved(folder: Path, text: str | bytes, name: str = "quilt.toml") -> str:
    file = folder / name
    file.write_bytes(text if isinstance(text, bytes) else text.encode())
    return str(file)


def stopping(findings: list[dict[str, object]]) -> int:
    return sum(finding["severity"] == "stops" for finding in findings)


def test_a_design_that_nothing_stops_is_good(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["check", saved(tmp_path, ROUNDS)]) == Ending.GOOD
    assert "stops:" not in capsys.readouterr().out


def test_a_finding_has_a_line_with_its_place_and_a_line_with_its_remedy(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = saved(tmp_path, ROUNDS.replace('ground = "A"', 'ground = "Z"'))
    assert run(["check", file]) == Ending.STOPPED
    first, second, last = capsys.readouterr().out.splitlines()
    line = ROUNDS[: ROUNDS.index('ground = "A"')].count("\n") + 1
    assert first.startswith(f"{file}:{line}: stops: ")
    assert first.endswith("(unknown-fabric)")
    assert second.startswith("    ")
    assert last == "1 finding: 1 stops."


@pytest.mark.parametrize("case", BROKEN, ids=lambda case: case.name)
def test_a_broken_design_gives_its_findings_and_no_traceback(
    case: Broken, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = saved(tmp_path, case.text)
    code = run(["check", file, "--json"])
    told = json.loads(capsys.readouterr().out)
    found = [(finding["code"], finding["key"]) for finding in told["findings"]]
    assert [each for each in case.found if each not in found] == []
    assert told["stops"] == stopping(told["findings"])
    assert code == (Ending.STOPPED if told["stops"] else Ending.GOOD)
    assert run(["check", file]) == code
    printed = capsys.readouterr()
    assert len(printed.out.splitlines()) == LINES_OF_A_FINDING * len(told["findings"]) + 1
    assert printed.err == ""


@pytest.mark.parametrize(
    "junk", [b"", b"\0\0\0", b"\xff\xfe\xfa", b"[" * 10_000, b"\x89PNG\r\n\x1a\n" + bytes(100)]
)
def test_what_is_no_design_at_all_stops(
    junk: bytes, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["check", saved(tmp_path, junk)]) == Ending.STOPPED
    assert capsys.readouterr().out.endswith("1 finding: 1 stops.\n")


def test_strict_lets_any_finding_count(tmp_path: Path) -> None:
    file = saved(tmp_path, GOOD.replace('name = "ink"', 'name = "oyster"'))
    assert run(["check", file]) == Ending.GOOD
    assert run(["check", file, "--strict"]) == Ending.STOPPED


def test_a_design_may_come_by_standard_input(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(b"format = 99")))
    assert run(["check", "-"]) == Ending.STOPPED
    assert capsys.readouterr().out.startswith("standard input:1: stops: ")
