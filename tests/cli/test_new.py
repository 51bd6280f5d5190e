"""A new design is written once, works, and is never written over unasked."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.cli.door import run
from quarterturn.cli.new import titled
from quarterturn.design import read_design
from quarterturn.measure import Units


@pytest.mark.parametrize("units", list(Units))
def test_a_new_design_is_one_without_findings(tmp_path: Path, units: Units) -> None:
    file = tmp_path / "late-peonies.toml"
    assert run(["new", str(file), "--units", units.value]) == 0
    reading = read_design(file.read_bytes())
    assert reading.findings == ()
    assert reading.design is not None
    assert (reading.design.title, reading.design.units) == ("Late Peonies", units)


def test_a_title_may_be_given(tmp_path: Path) -> None:
    file = tmp_path / "a.toml"
    assert run(["new", str(file), "--title", 'The "Ü" Quilt']) == 0
    design = read_design(file.read_bytes()).design
    assert design is not None
    assert design.title == 'The "Ü" Quilt'


def test_a_file_that_is_there_stays_unless_it_is_to_be_replaced(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "a.toml"
    file.write_text("mine", encoding="utf-8")
    assert run(["new", str(file)]) == 2
    assert file.read_text(encoding="utf-8") == "mine"
    assert capsys.readouterr().err == f"quarterturn: {file}: is there already; --replace writes over it\n"
    assert run(["new", str(file), "--replace"]) == 0
    assert file.read_text(encoding="utf-8") != "mine"


def test_a_folder_and_a_file_in_no_folder_are_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["new", str(tmp_path)]) == 2
    assert run(["new", str(tmp_path / "nowhere" / "a.toml")]) == 2
    said = capsys.readouterr().err.splitlines()
    assert len(said) == 2
    assert said[0].endswith("is a folder; name a file in it")
    assert said[1].endswith("no such file or directory")


def test_a_title_is_taken_from_the_name_of_the_file() -> None:
    assert titled(Path("a/pocket-of_moons.toml")) == "Pocket Of Moons"
    assert titled(Path("-.toml")) == "Untitled"
