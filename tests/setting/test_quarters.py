"""The map names a quarter where the quarters of a master differ, and only there."""

from __future__ import annotations

import pytest

from quarterturn.design import Severity
from quarterturn.pipeline import run
from tests.recipe_samples import GIZZARDS, HALVES, RIPPLES
from tests.samples import HEARTS, ROUNDS, Changed


def found(text: str) -> list[tuple[str, str, int | None]]:
    job = run(text)
    assert job.pattern is None
    assert all(finding.severity is Severity.STOPS for finding in job.findings)
    return [(f.code, f.place.key, f.place.line) for f in job.findings]


def line_with(text: str, words: str) -> int:
    return next(n for n, line in enumerate(text.splitlines(), start=1) if line.startswith(words))


@pytest.mark.parametrize(
    ("word", "code", "remedy"),
    [
        ("a0", "quarter-missing", "Write a-tl, a-tr, a-br or a-bl."),
        ("c0", "quarter-missing", "Write c-tl or c-tr."),
        ("c-br0", "quarter-unwanted", "Write c-tl, turned by 2 quarters more."),
        ("c-bl1", "quarter-unwanted", "Write c-tr, turned by 2 quarters more."),
    ],
)
def test_a_unit_that_the_master_has_not_is_found_at_its_line(word: str, code: str, remedy: str) -> None:
    text = Changed(HEARTS).with_("a-bl0 a-br0", f"a-bl0 {word}").text
    assert found(text) == [(code, "setting.map.1", line_with(text, "a-bl0"))]
    assert run(text).findings[0].remedy == remedy
    assert run(text).findings[0].place.detail == "row 2, unit 2"


def test_a_quarter_of_a_circle_is_not_wanted() -> None:
    text = Changed(ROUNDS).with_("a1 a0 b1", "a1 a-tl0 b1").text
    assert found(text) == [("quarter-unwanted", "setting.map.1", line_with(text, "a1 a-tl0"))]


def test_a_word_is_told_once() -> None:
    text = HEARTS.replace("a-tl0", "a0")
    assert [code for code, _, _ in found(text)] == ["quarter-missing"]


def test_a_piece_with_slanting_sides_is_for_rejoining() -> None:
    text = Changed(GIZZARDS).with_("g0 g1 g2", "g0 g1 a0").text
    assert found(text) == [("unit-slanting", "setting.map.0", line_with(text, "g0 g1 a0"))]
    assert "halves rejoined" in run(text).findings[0].remedy


@pytest.mark.parametrize("rows", ["a-lh0 a-rh1", "a-lh0\na-rh3"])
def test_units_that_are_not_square_fit_their_row_and_column(rows: str) -> None:
    """Halves that finish 4" by 5": turned they fit no longer."""
    text = Changed(HALVES.replace("height = '5\"'", "height = '6\"'")).with_("a-lh0 a-rh0 a-lh0", rows).text
    (finding,) = run(text).findings
    assert finding.code == "edges-misfit"
    assert ("row 1" in finding.sentence) == ("\n" not in rows)
    assert ("high" in finding.sentence) == ("\n" not in rows)
    turned = "a-lh" if "\n" in rows else "a-rh"
    assert f"Turn `{turned}` by a quarter" in finding.remedy


def test_pieces_of_lines_of_ones_own_are_held_against_one_another_once_they_are_cut() -> None:
    text = Changed(HALVES).with_('cuts = "down"', "cuts = [[[1, -2], [1, 2]]]").text
    assert run(text).pattern is not None  # each column is as wide as its piece
    text = Changed(text).with_("a-lh0 a-rh0 a-lh0", "a-lh0 a-rh0\na-rh0 a-lh0").text
    assert [code for code, _, _ in found(text)] == ["edges-misfit"] * 2  # both columns


def test_a_unit_that_is_not_its_own_mirror_image_cannot_be_laid_mirrored() -> None:
    text = Changed(GIZZARDS).with_("map = '''", "across = 2\nsymmetry = \"mirror\"\nmap = '''").text
    assert [code for code, _, _ in found(text)] == ["unit-mirrored"]


def test_discs_of_several_cloths_can_be_laid_mirrored() -> None:
    text = Changed(RIPPLES).with_("map = '''", "across = 2\nsymmetry = \"mirror\"\nmap = '''").text
    assert run(text).pattern is not None


def test_a_piece_that_there_is_not_is_found_with_those_that_there_are() -> None:
    text = Changed(HALVES).with_("a-lh0 a-rh0 a-lh0", "a-lh0 a-th0 a-lh0").text
    (finding,) = run(text).findings
    assert (finding.code, finding.remedy) == ("quarter-unwanted", "Write a-lh or a-rh.")
