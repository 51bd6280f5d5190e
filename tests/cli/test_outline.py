"""`outline`: shapes of a drawing become tables of a design, and nothing about a drawing gives a traceback."""

from __future__ import annotations

import contextlib
import io
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quarterturn.cli.door import run
from quarterturn.design import read_design
from quarterturn.measure import inches, mm
from tests.samples import ROUNDS

DRAWING = """<svg xmlns="http://www.w3.org/2000/svg" width="8in" height="8in" viewBox="0 0 80 80">
  <path id="head" d="M 10 10 L 30 20 H 50 L 70 10 C 75 40 55 60 40 70 C 25 60 5 40 10 10 Z"/>
  <rect id="den" x="1" y="1" width="40" height="30" rx="5"/>
  <path id="tail" d="M 1 1 L 9 9"/>
</svg>
"""


@pytest.fixture
def drawing(tmp_path: Path) -> Path:
    file = tmp_path / "fox.svg"
    file.write_text(DRAWING, encoding="utf-8")
    return file


@pytest.fixture
def design(tmp_path: Path) -> Path:
    file = tmp_path / "rounds.toml"
    file.write_text(f"# my own note\n{ROUNDS}", encoding="utf-8")
    return file


def test_each_closed_shape_is_printed_as_a_table_with_its_true_size(
    drawing: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["outline", str(drawing)]) == 0
    said = capsys.readouterr()
    assert '# 6.157" × 6" (156.4 × 152.4 mm), the path on line 2\n[outlines.head]\npath = """\nM ' in said.out
    assert '# 4" × 3" (101.6 × 76.2 mm), the rect on line 3\n[outlines.den]\n' in said.out
    assert "width = '4\"'" in said.out
    wrong = "is open: its ends lie 141.4% of its width apart; close it"
    assert said.err == f"{drawing}:4: path 'tail': {wrong}\n"
    reading = read_design(f"{ROUNDS}\n{said.out}")
    assert reading.findings == ()
    assert reading.design is not None
    assert [outline.name for outline in reading.design.outlines] == ["head", "den"]


def test_one_shape_is_taken_by_its_id_and_given_a_name(
    drawing: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["outline", str(drawing), "--id", "den", "--name", "burrow"]) == 0
    said = capsys.readouterr()
    assert "[outlines.burrow]" in said.out
    assert said.out.count("[outlines") == 1
    assert said.err == ""


def test_a_shape_is_added_to_a_design_whose_notes_are_kept(
    drawing: Path, design: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    arguments = ["outline", str(drawing), "--id", "den", "--into", str(design)]
    assert run(arguments) == 0
    assert capsys.readouterr().out == f'Added den (4" wide) to {design}.\n'
    text = design.read_text(encoding="utf-8")
    assert text.startswith(f"# my own note\n{ROUNDS}".rstrip())
    reading = read_design(text)
    assert reading.findings == ()
    assert reading.design is not None
    assert reading.design.outlines[0].width == inches(4)
    assert run(arguments) == 2
    assert "has an outline 'den' already; give another --name, or --replace it" in capsys.readouterr().err
    drawing.write_text(DRAWING.replace('width="40"', 'width="45"'), encoding="utf-8")
    assert run([*arguments, "--replace"]) == 0
    again = read_design(design.read_text(encoding="utf-8")).design
    assert again is not None
    assert again.outlines[0].width == inches(4, 1, 2)


def test_a_metric_design_gets_millimetres(drawing: Path, design: Path) -> None:
    design.write_text(ROUNDS.replace('"inch"', '"metric"').replace("'2\"'", "'50 mm'"), encoding="utf-8")
    assert run(["outline", str(drawing), "--id", "den", "--into", str(design)]) == 0
    text = design.read_text(encoding="utf-8")
    assert 'width = "101.6 mm"' in text
    assert "L -38.1 38.1 A 12.7 12.7 0 0 1 -50.8 25.4 " in text
    reading = read_design(text).design
    assert reading is not None
    assert reading.outlines[0].width == mm("101.6")


def test_a_drawing_without_a_size_is_told_of(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "a.svg"
    file.write_text('<svg><rect width="96" height="96"/></svg>', encoding="utf-8")
    assert run(["outline", str(file)]) == 0
    said = capsys.readouterr()
    assert said.err == f"{file}: states no size, so that 96 of its units count as an inch\n"
    assert "width = '1\"'" in said.out


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--name", "fox"], "--name is for one outline, and there are 2; say which by --id"),
        (["--id", "den", "--name", "heart"], "the program has an outline 'heart' of its own; give another --name"),
        (["--id", "den", "--name", " "], "--name is no name; give a word or two"),
        (["--id", "nobody"], "holds no closed shape with the id 'nobody'"),
        (["--id", "tail"], "holds no closed shape with the id 'tail'"),
        (["--replace"], "--replace goes with --into"),
        (["--into", "nowhere.toml"], "nowhere.toml: no such file or directory"),
        (["--into", "fox.svg"], "fox.svg: it does not follow TOML:"),
        (["--into", "photo.toml"], "photo.toml: is not text in UTF-8"),
    ],
)  # fmt: skip
def test_what_cannot_be_done_is_refused_and_nothing_is_written(
    drawing: Path, more: list[str], said: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:  # fmt: skip
    monkeypatch.chdir(drawing.parent)
    Path("photo.toml").write_bytes(b"\x89\xff")
    assert run(["outline", str(drawing), *more]) == 2
    captured = capsys.readouterr()
    assert said in captured.err
    assert captured.out == ""
    assert drawing.read_text(encoding="utf-8") == DRAWING
    assert sorted(file.name for file in drawing.parent.iterdir()) == ["fox.svg", "photo.toml"]


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"<svg>\n  <g>\n</svg>", ":3:3: cannot be read as an SVG drawing: mismatched tag"),
        (b"<svg/>", ": holds no closed shape that could be cut out of cloth"),
        (b"\x89PNG\r\n", ":1:1: cannot be read as an SVG drawing: not well-formed (invalid token)"),
        (
            b'<!DOCTYPE svg [<!ENTITY a "b">]>\n<svg>&a;</svg>',
            "declares things of its own in its document type",
        ),
        (b'<svg><image href="/etc/passwd"/></svg>', ":1: image: is passed over"),
    ],
)
def test_a_file_that_holds_no_outline_is_refused_with_its_place(
    content: bytes, said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "a.svg"
    file.write_bytes(content)
    assert run(["outline", str(file)]) == 2
    captured = capsys.readouterr()
    assert f"{file}{said}" in captured.err or said in captured.err
    assert captured.out == ""


def test_a_fault_in_path_data_is_shown_with_a_caret(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "a.svg"
    file.write_text('<svg>\n<path id="ear" d="M0 0 L10 x"/></svg>', encoding="utf-8")
    assert run(["outline", str(file)]) == 2
    assert capsys.readouterr().err.splitlines()[:3] == [
        f"{file}:2: path 'ear': has no sound path data: a number is missing (at character 10)",
        "    M0 0 L10 x",
        "             ^",
    ]


@given(
    st.lists(st.tuples(st.integers(0, len(DRAWING)), st.integers(0, 20), st.binary(max_size=6)), max_size=4)
)
@settings(max_examples=100, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_a_spoilt_drawing_gives_tables_or_a_sentence(
    tmp_path: Path, changes: list[tuple[int, int, bytes]]
) -> None:
    content = DRAWING.encode()
    for at, cut, scrap in changes:
        content = content[:at] + scrap + content[at + cut :]
    file = tmp_path / "spoilt.svg"
    file.write_bytes(content)
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        ending = run(["outline", str(file)])
    assert ending in (0, 2)
    assert (ending == 0) == ("[outlines." in out.getvalue())
    assert "Traceback" not in err.getvalue()
