"""The list of known settings, and a design that begins with one."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from quarterturn.cli.door import run
from quarterturn.design import Symmetry, read_design
from quarterturn.setting.known import known_names
from tests.samples import straight


def test_each_known_setting_has_a_line(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["settings"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines] == known_names()
    assert lines[0].split("  ")[:3] == ["drunkards-path", "4 × 4", "2 colourways"]


def test_the_list_as_json_has_the_size_of_the_repeat(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["settings", "--json"]) == 0
    records = {record["name"]: record for record in json.loads(capsys.readouterr().out)}
    assert (records["polka-dots"]["rows"], records["polka-dots"]["colourways"]) == (2, 1)
    assert records["drunkards-path"]["symmetry"] == "turn"


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_a_design_begins_with_a_known_setting(units: str, tmp_path: Path) -> None:
    file = tmp_path / "red-path.toml"
    assert run(["new", str(file), "--setting", "drunkards-path", "--units", units]) == 0
    design = read_design(file.read_bytes()).design
    assert design is not None
    assert (design.title, straight(design).symmetry) == ("Red Path", Symmetry.TURN)


def test_a_setting_that_nobody_knows_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "a.toml"
    assert run(["new", str(file), "--setting", "../known"]) == 2
    assert "there is no known setting '../known'" in capsys.readouterr().err
    assert not file.exists()
