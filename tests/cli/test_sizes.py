"""`sizes` lists the sizes of a design, and repeats for every known bed; other commands take one of the sizes."""

from __future__ import annotations

import json
from pathlib import Path

import pypdfium2
import pytest

from quarterturn import proof
from quarterturn.cli.door import run
from quarterturn.cli.ending import Ending
from quarterturn.design import BEDS, read_design
from quarterturn.proof import Pattern, Proof, prove
from tests.cli.test_rehearse import without_the_first_strips
from tests.samples import ROUNDS, straight
from tests.section_texts import NESTED, ON_POINT, PANELS, PIECED, SASHED

SIZES = f"""{ROUNDS}
[sizes.wide]
changes = {{ setting.across = 2 }}
mattress = ['20"', '30"']

[sizes.small]
changes = {{ recipes.round.finished = '1 1/2"' }}
"""


@pytest.fixture
def file(tmp_path: Path) -> str:
    file = tmp_path / "rounds.toml"
    file.write_text(SIZES, encoding="utf-8")
    return str(file)


def test_each_size_and_each_bed_has_a_line(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["sizes", file]) == Ending.GOOD
    sizes, beds = (part.splitlines() for part in capsys.readouterr().out.split("\n\n"))
    assert [line.split()[0] for line in sizes[1:]] == ["original", "wide", "small"]
    assert [
        name for name, line in zip(BEDS, beds[2:], strict=True) if not line.startswith(f"  {name} ")
    ] == []


def test_the_json_has_sizes_and_changes(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["sizes", file, "--json", "--drop", "14 in", "--tuck", "10 in"]) == Ending.GOOD
    told = json.loads(capsys.readouterr().out)
    assert [size["finished_inches"] for size in told["sizes"]] == [[13, 9], [23, 9], [10.5, 7.5]]
    assert told["sizes"][1]["wanted_inches"] == [44, 42]
    queen = next(each for each in told["beds"] if each["bed"] == "queen")
    assert queen["wanted_inches"] == [88, 104]
    assert queen["changes"] == {"setting.across": 9, "setting.down": 17, "borders.0.width": '1"'}
    assert queen["finished_inches"] == [92, 104]


@pytest.mark.parametrize("bed", ["queen", "UK king", "continental 140"])
def test_the_lines_for_a_bed_make_a_size_that_covers_it(
    bed: str, file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["sizes", file, "--bed", bed, "--tuck", "4 in"]) == Ending.GOOD
    lines = capsys.readouterr().out
    Path(file).write_text(f"{SIZES}\n{lines}", encoding="utf-8")
    assert run(["sizes", file, "--json"]) == Ending.GOOD
    made = json.loads(capsys.readouterr().out)["sizes"][-1]
    assert made["size"] == made["bed"] == bed
    assert made["finished_inches"] >= made["wanted_inches"]


def test_a_bed_that_takes_too_many_units_is_told(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    tiny = ROUNDS.replace("finished = '2\"'", "finished = '3/8\"'")
    Path(file).write_text(tiny, encoding="utf-8")
    assert run(["sizes", file]) == Ending.GOOD
    assert "more than 200 rows" in capsys.readouterr().out
    assert run(["sizes", file, "--bed", "king"]) == Ending.GOOD
    assert capsys.readouterr().out == "# king: the map would have more than 200 rows.\n"


WIDE = f"""{ON_POINT}
[sizes.wide]
[sizes.wide.changes]
"setting.map" = "a0 b1 a0\\nb3 a2 b3\\na1 b0 a1\\n"
"setting.between" = "A"
"borders.0.corners" = "mitred"
"""


def test_a_quilt_on_point_is_told_by_its_map(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    Path(file).write_text(WIDE, encoding="utf-8")
    assert run(["sizes", file, "--json", "--drop", "0 in"]) == Ending.GOOD
    told = json.loads(capsys.readouterr().out)
    first, wide = told["sizes"]
    assert [first["kind"], first["across"], first["rows"], first["columns"]] == ["on point", None, 3, 2]
    assert (wide["columns"], wide["units"]) == (3, {"a": 5, "b": 4})
    assert first["borders_inches"] == [[1.5, 1.5]]
    assert {each["but"] for each in told["beds"]} == {"make the map larger"}
    assert {each["changes"] for each in told["beds"]} == {None}


@pytest.mark.parametrize(
    ("text", "why", "but"),
    [
        (ON_POINT, "A setting on point has no repeats.", "make the map larger"),
        (NESTED, "A setting of columns has no repeats.", "make its parts larger"),
        (
            PIECED,
            "The pieced border is as long as these repeats of the map and no others. "
            "Nor has it a plain border outermost to make wider.",
            "make the map and its borders larger",
        ),
    ],
)
def test_a_quilt_without_repeats_says_so(
    text: str, why: str, but: str, file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    Path(file).write_text(text, encoding="utf-8")
    assert run(["sizes", file]) == Ending.GOOD
    _, beds = capsys.readouterr().out.split("\n\n")
    said, _, _, *rows = beds.splitlines()
    assert said == why
    assert {row.rpartition("  ")[2] for row in rows} == {but}
    assert run(["sizes", file, "--bed", "king"]) == Ending.GOOD
    assert capsys.readouterr().out.startswith("# king: ")


def test_a_border_that_covers_a_bed_makes_a_size(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    large = ON_POINT.replace("finished = '2\"'", "finished = '13\"'")
    Path(file).write_text(large, encoding="utf-8")
    assert run(["sizes", file, "--bed", "crib", "--drop", "3 in"]) == Ending.GOOD
    lines = capsys.readouterr().out
    assert 'changes = { "borders.0.width" = ' in lines
    Path(file).write_text(f"{large}\n{lines}", encoding="utf-8")
    assert run(["sizes", file, "--json"]) == Ending.GOOD
    made = json.loads(capsys.readouterr().out)["sizes"][-1]
    assert made["finished_inches"][0] >= made["wanted_inches"][0]
    assert made["finished_inches"][1] >= made["wanted_inches"][1]


@pytest.mark.parametrize("text", [SASHED, PANELS], ids=["sashed", "panels"])
def test_sections_of_every_kind_have_a_line(text: str, file: str, capsys: pytest.CaptureFixture[str]) -> None:
    Path(file).write_text(text, encoding="utf-8")
    assert run(["sizes", file]) == Ending.GOOD
    assert "original" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["--drop", "long"], "--drop 'long' is not a length"),
        (["--tuck", "90 in"], "--tuck '90 in' is longer than any quilt hangs down"),
        (["--bed", "quen"], "there is no bed 'quen'; choose from crib, twin"),
    ],
)
def test_what_cannot_be_understood_is_refused(
    words: list[str], told: str, file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["sizes", file, *words]) == Ending.REFUSED
    assert told in capsys.readouterr().err


def test_one_size_is_shown_as_a_design_of_its_own(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["show", "design", file, "--size", "wide"]) == Ending.GOOD
    design = read_design(capsys.readouterr().out).design
    assert design is not None
    assert (design.size, straight(design).across, design.sizes) == ("wide", 2, ())


@pytest.mark.parametrize("command", [["rehearse"], ["show", "steps"], ["show", "findings"]])
def test_a_size_that_is_not_there_is_refused(
    command: list[str], file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run([*command, file, "--size", "huge"]) == Ending.REFUSED
    assert "there is no size 'huge'; the design has original, wide, small" in capsys.readouterr().err


def test_every_size_is_rehearsed_under_its_name(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["rehearse", file]) == Ending.GOOD
    said = capsys.readouterr().out
    assert [line for line in said.splitlines() if line.startswith("In ")] == [
        "In original size:",
        "In wide size:",
        "In small size:",
    ]
    assert said.count("is the one in the picture") == 3
    assert run(["rehearse", file, "--size", "wide"]) == Ending.GOOD
    alone = capsys.readouterr().out
    assert alone in said
    assert "In wide size" not in alone


def test_the_rehearsals_as_json_stand_beside_each_other(
    file: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["rehearse", file, "--json"]) == Ending.GOOD
    told = json.loads(capsys.readouterr().out)
    assert [told["size"], *(each["size"] for each in told["sizes"])] == ["original", "wide", "small"]
    assert all(each["holds"] and each["difference_share"] < 1e-6 for each in (told, *told["sizes"]))


def test_a_size_that_fails_fails_the_rehearsal(
    file: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def spoilt(pattern: Pattern) -> Proof:
        return without_the_first_strips(pattern) if pattern.design.size == "wide" else prove(pattern)

    monkeypatch.setattr(proof, "prove", spoilt)
    assert run(["rehearse", file, "--size", "small"]) == Ending.GOOD
    assert run(["rehearse", file]) == Ending.STOPPED
    assert "(rehearsal-failed)" in capsys.readouterr().out


def test_findings_say_in_which_size_they_stand(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["check", file]) == Ending.GOOD
    lines = [line for line in capsys.readouterr().out.splitlines() if "(bed-missed)" in line]
    header = SIZES.splitlines().index("[sizes.wide]") + 1
    assert len(lines) == 1
    assert lines[0].startswith(f'{file}:{header}: confuses: In wide size: The quilt finishes 23" × 9".')


def published(folder: Path) -> str:
    """Return the words of the booklet in a folder."""
    with pypdfium2.PdfDocument(folder / "booklet.pdf") as pdf:
        return " ".join(" ".join(page.get_textpage().get_text_range() for page in pdf).split())


def test_the_booklet_has_a_column_for_each_size_or_is_that_of_one(file: str, tmp_path: Path) -> None:
    all_sizes, wide = tmp_path / "all", tmp_path / "wide"
    assert run(["publish", file, "--only", "booklet", "--to", str(all_sizes)]) == Ending.GOOD
    assert run(["publish", file, "--only", "booklet", "--size", "wide", "--to", str(wide)]) == Ending.GOOD
    assert "This pattern comes in 3 sizes." in published(all_sizes)
    assert "Rehearsed as well: the wide and small sizes." in published(all_sizes)
    assert "wide size" in published(wide)
    assert "This pattern comes in" not in published(wide)


def test_one_size_is_published_to_a_folder_of_its_own(
    file: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert run(["publish", file, "--only", "lists", "--size", "wide"]) == Ending.GOOD
    assert {path.name for path in (tmp_path / "out" / "rounds-wide").iterdir()} == {
        "contents.txt",
        "cut-list.csv",
        "job.json",
    }


def test_a_size_that_fails_is_not_published(
    file: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def spoilt(pattern: Pattern) -> Proof:
        return without_the_first_strips(pattern) if pattern.design.size == "wide" else prove(pattern)

    monkeypatch.setattr(proof, "prove", spoilt)
    assert run(["publish", file, "--to", str(tmp_path / "out")]) == Ending.STOPPED
    assert "In wide size: The steps cannot be carried out" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
    to = ["--to", str(tmp_path / "out"), "--size", "small"]
    assert run(["publish", file, "--only", "lists", *to]) == Ending.GOOD
