"""`find`: a list, a drawing of it, and a design with one taken."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from quarterturn.cli.door import run
from quarterturn.design import Symmetry, read_design
from tests.samples import ROUNDS, straight, with_setting


@pytest.fixture
def design(tmp_path: Path) -> Path:
    file = tmp_path / "rounds.toml"
    file.write_text(f"# my own note\n{ROUNDS}", encoding="utf-8")
    return file


def test_the_list_has_a_line_for_each_setting(design: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["find", str(design), "--repeat", "2", "--most", "5"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0].startswith("2 × 2 units of colourways a, b, slid: 98 different settings in 4,096 ways")
    assert [line.split()[0] for line in lines[3:]] == ["1", "2", "3", "4", "5"]


def test_the_list_as_json_says_what_was_looked_at(design: Path, capsys: pytest.CaptureFixture[str]) -> None:
    arguments = ["find", str(design), "--repeat", "2", "--symmetry", "mirror", "--codes", "a", "--json"]
    assert run(arguments) == 0
    record = json.loads(capsys.readouterr().out)
    assert (record["ways"], record["different"], record["sampled"], record["seed"]) == (256, 43, None, None)
    assert record["codes"] == ["a"]
    assert set(record["settings"][0]) == {"map", "score", "flow", "rounds", "cloth", "balance"}


@pytest.mark.parametrize(("kind", "start"), [("pdf", b"%PDF"), ("png", b"\x89PNG"), ("svg", b"<")])
def test_the_settings_are_drawn(design: Path, kind: str, start: bytes, tmp_path: Path) -> None:
    sheet = tmp_path / f"found.{kind}"
    assert run(["find", str(design), "--repeat", "1", "--to", str(sheet)]) == 0
    assert sheet.read_bytes().startswith(start)


@pytest.mark.parametrize("symmetry", Symmetry)
def test_the_one_taken_is_written_and_the_notes_are_kept(
    design: Path, symmetry: Symmetry, tmp_path: Path
) -> None:
    new = tmp_path / "new.toml"
    asked = ["--repeat", "2", "--symmetry", symmetry.value, "--take", "14", "--into", str(new)]
    assert run(["find", str(design), *asked]) == 0
    text = new.read_text(encoding="utf-8")
    assert text.startswith("# my own note\n")
    reading = read_design(text)
    assert reading.findings == ()
    assert reading.design is not None
    assert straight(reading.design).symmetry is symmetry
    assert len(straight(reading.design).cells) == 2


def test_no_setting_takes_the_place_of_one_that_is_not_straight(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    design, new = tmp_path / "design.toml", tmp_path / "new.toml"
    design.write_text(with_setting("[setting]\nkind = 'columns'\nparts = ['a0', 'b1']"), "utf-8")
    assert run(["find", str(design), "--repeat", "2"]) == 0
    assert run(["find", str(design), "--repeat", "2", "--take", "1", "--into", str(new)]) == 2
    assert "not set in rows and columns" in capsys.readouterr().err
    assert not new.exists()


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--take", "1"], "give both or neither"),
        (["--into", "new.toml"], "give both or neither"),
        (["--to", "found.gif"], "name a file that ends in .pdf, .svg, .png"),
        (["--codes", "a,z"], "there is no colourway z"),
        (["--take", "50", "--into", "new.toml", "--codes", "a"], "there are only 17 settings to take"),
    ],
)
def test_what_cannot_be_done_is_refused(
    design: Path, more: list[str], said: str, capsys: pytest.CaptureFixture[str], tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.chdir(tmp_path)
    assert run(["find", str(design), "--repeat", "2", *more]) == 2
    assert said in capsys.readouterr().err
    assert [file.name for file in tmp_path.iterdir()] == ["rounds.toml"]


def test_a_file_that_is_there_is_not_written_over(design: Path, capsys: pytest.CaptureFixture[str]) -> None:
    arguments = ["find", str(design), "--repeat", "1", "--take", "1", "--into", str(design)]
    assert run(arguments) == 2
    assert "is there already" in capsys.readouterr().err
    assert design.read_text(encoding="utf-8").endswith(ROUNDS)


def test_a_design_with_mistakes_is_told_of_them(design: Path, capsys: pytest.CaptureFixture[str]) -> None:
    design.write_text(ROUNDS.replace("a2 a3 b2", "a2 a3 z2"), encoding="utf-8")
    assert run(["find", str(design), "--repeat", "1"]) == 1
    assert "unknown-code" in capsys.readouterr().err
