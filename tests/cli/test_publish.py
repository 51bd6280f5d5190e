"""`publish` makes whole folders of proved patterns, or none."""

from __future__ import annotations

import json
import random
import subprocess
import sys
import time
from dataclasses import replace
from pathlib import Path

import pytest

from quarterturn import proof
from quarterturn.cli.door import run
from quarterturn.cli.ending import Ending
from quarterturn.cli.publish import PARTS
from quarterturn.design import Finding, Place, Severity
from quarterturn.files.writing import write_folder
from quarterturn.proof import Pattern, Proof, prove
from quarterturn.publish import release
from tests.samples import ROUNDS

FILES = {
    "booklet": {"booklet.pdf"},
    "templates": {"templates.pdf", "shape-1-round.svg", "shape-1-round.dxf"},
    "picture": {"picture.svg", "picture.png"},
    "lists": {"cut-list.csv", "job.json"},
    "selling": set[str](),
    "findings": {"findings.txt"},
}
PROGRAM = [sys.executable, "-c", "from quarterturn.cli import main; main()"]
KILLS = 3


@pytest.fixture
def file(tmp_path: Path) -> str:
    file = tmp_path / "rounds.toml"
    file.write_text(ROUNDS, encoding="utf-8")
    return str(file)


def names(folder: Path) -> set[str]:
    return {path.name for path in folder.iterdir()}


def with_a_fault(pattern: Pattern) -> Proof:
    fault = Finding("planted", Severity.STOPS, Place(""), "Something is wrong.", "Mend it.")
    return replace(prove(pattern), findings=(fault,))


def test_what_only_takes_are_the_parts_of_a_release() -> None:
    assert PARTS == tuple(part.name for part in release.PARTS) == tuple(FILES)


def test_a_publish_makes_every_file_and_a_list_that_checks_them(file: str, tmp_path: Path) -> None:
    assert run(["publish", file, "--to", str(tmp_path / "out")]) == Ending.GOOD
    assert names(tmp_path / "out") == {release.CONTENTS}.union(*FILES.values())
    checked = subprocess.run(
        ["sha256sum", "--check", "--strict", release.CONTENTS],
        cwd=tmp_path / "out",
        capture_output=True,
        check=False,
    )
    assert checked.returncode == 0, checked.stdout
    job = json.loads((tmp_path / "out" / "job.json").read_text(encoding="utf-8"))
    assert job["design"]["title"] == "Two Rounds"
    assert (tmp_path / "out" / "booklet.pdf").read_bytes().startswith(b"%PDF-")
    assert (tmp_path / "out" / "picture.png").read_bytes().startswith(b"\x89PNG")


def test_a_second_publish_gives_the_same_bytes(file: str, tmp_path: Path) -> None:
    assert run(["publish", file, "--to", str(tmp_path / "one")]) == Ending.GOOD
    assert run(["publish", file, "--to", str(tmp_path / "two")]) == Ending.GOOD
    assert (tmp_path / "one" / release.CONTENTS).read_bytes() == (
        tmp_path / "two" / release.CONTENTS
    ).read_bytes()


@pytest.mark.parametrize("part", ["templates", "picture", "lists", "selling", "findings"])
def test_only_the_parts_asked_for_are_made(part: str, file: str, tmp_path: Path) -> None:
    assert run(["publish", file, "--only", part, "--to", str(tmp_path / "out")]) == Ending.GOOD
    assert names(tmp_path / "out") == {release.CONTENTS, *FILES[part]}


def test_only_never_takes_the_place_of_other_parts(
    file: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    to = ["--to", str(tmp_path / "out")]
    assert run(["publish", file, "--only", "lists", *to]) == Ending.GOOD
    assert run(["publish", file, "--only", "findings", *to]) == Ending.REFUSED
    assert "holds cut-list.csv, which would not be made anew" in capsys.readouterr().err
    assert run(["publish", file, "--only", "findings", "--only", "lists", *to]) == Ending.GOOD


def test_without_a_folder_named_it_is_called_after_the_file(
    file: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert run(["publish", file, "--only", "findings"]) == Ending.GOOD
    assert names(tmp_path / "out" / "rounds") == {release.CONTENTS, "findings.txt"}


def test_the_paper_can_be_chosen(file: str, tmp_path: Path) -> None:
    for paper, width in (("letter", 612), ("a4", 595)):
        to = tmp_path / paper
        assert run(["publish", file, "--only", "templates", "--paper", paper, "--to", str(to)]) == Ending.GOOD
        assert page_width(to / "templates.pdf") == width


def page_width(file: Path) -> int:
    import pikepdf

    with pikepdf.open(file) as document:
        return int(document.pages[0].mediabox[2])


def test_what_stops_the_sewer_is_not_published_but_as_a_draft_that_says_so(
    file: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(proof, "prove", with_a_fault)
    to = ["--to", str(tmp_path / "out")]
    assert run(["publish", file, *to]) == Ending.STOPPED
    assert not (tmp_path / "out").exists()
    assert "(planted)" in capsys.readouterr().err
    assert run(["publish", file, "--draft", *to]) == Ending.GOOD
    assert "Draft: 1 finding that stops the sewer." in text_of(tmp_path / "out" / "booklet.pdf")
    assert "(planted)" in (tmp_path / "out" / "findings.txt").read_text(encoding="utf-8")


def text_of(file: Path) -> str:
    import pypdfium2

    document = pypdfium2.PdfDocument(file)
    return " ".join(" ".join(page.get_textpage().get_text_range() for page in document).split())


def test_letters_that_the_fonts_lack_are_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "signs.toml"
    file.write_text(ROUNDS.replace("Two Rounds", "𓂀 Rounds"), encoding="utf-8")
    assert run(["publish", str(file), "--to", str(tmp_path / "out")]) == Ending.REFUSED
    assert "no glyph" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


def test_nothing_but_the_result_is_told_where_nobody_watches(
    file: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["publish", file, "--only", "findings", "--to", str(tmp_path / "out")]) == Ending.GOOD
    printed = capsys.readouterr()
    assert printed.err == ""
    assert printed.out == f"{tmp_path / 'out'}: findings.txt, contents.txt\n"


def test_a_real_run_that_is_killed_leaves_the_old_folder_whole(file: str, tmp_path: Path) -> None:
    folder, chance = tmp_path / "published" / "out", random.Random(11)
    write_folder(
        folder, {"findings.txt": b"old", release.CONTENTS: release.contents({"findings.txt": b"old"})}
    )
    for _ in range(KILLS):
        with subprocess.Popen([*PROGRAM, "publish", file, "--to", str(folder)]) as program:
            time.sleep(chance.uniform(0.1, 0.6))
            program.kill()
        assert names(folder) in (
            {"findings.txt", release.CONTENTS},
            {release.CONTENTS}.union(*FILES.values()),
        )
    assert run(["publish", file, "--to", str(folder)]) == Ending.GOOD
    assert names(tmp_path / "published") == {"out"}


@pytest.mark.parametrize("place", ["rounds.toml", "rounds.toml/out", ".", "others"])
def test_a_place_that_cannot_be_taken_is_refused_in_one_line(
    place: str, file: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "others").mkdir()
    (tmp_path / "others" / "letter.txt").touch()
    assert run(["publish", file, "--only", "findings", "--to", str(tmp_path / place)]) == Ending.REFUSED
    assert len(capsys.readouterr().err.splitlines()) == 1
    assert names(tmp_path) == {"rounds.toml", "others"}
    assert names(tmp_path / "others") == {"letter.txt"}
