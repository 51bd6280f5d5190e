"""Every check is proved to fire and to pass; every finding is in the book; large quilts are checked quickly."""

from __future__ import annotations

import importlib
import re
from pathlib import Path

import pytest

from quarterturn.design import Severity
from quarterturn.design.codes import CODES
from quarterturn.proof import ACROSS_CODES, CHECKS, Check, check_pattern
from quarterturn.setting import MAP_CODES
from tests.proof.checks.sound import SOUND, Spoil, sound
from tests.samples import pattern_of

ROOT = Path(__file__).parents[2]
MODULES = sorted(path.stem for path in (Path(__file__).parent / "checks").glob("test_*.py"))
FIRES: dict[str, Spoil] = {}
for name in MODULES:
    FIRES |= getattr(importlib.import_module(f"tests.proof.checks.{name}"), "FIRES", {})

REHEARSAL = {"rehearsal-failed": "stops", "rehearsal-differs": "stops"}
MANY = SOUND.replace('kind = "straight"', 'kind = "straight"\nacross = 10\ndown = 10')


def rows_of_book() -> dict[str, tuple[str, str, str]]:
    """Return severity, meaning and remedy of each code in docs/findings.md."""
    book = (ROOT / "docs" / "findings.md").read_text(encoding="utf-8")
    rows = [re.split(r" ?\| ?", line.strip("| ")) for line in book.splitlines() if line.startswith("| `")]
    return {code.strip("`"): (severity, meaning, remedy) for code, severity, meaning, remedy, *_ in rows}


def test_a_sound_design_gives_no_finding() -> None:
    assert check_pattern(sound()) == ()


@pytest.mark.parametrize("path", sorted((ROOT / "examples").glob("*.toml")), ids=lambda path: path.stem)
def test_no_finding_stops_an_example(path: Path) -> None:
    findings = check_pattern(pattern_of(path.read_text(encoding="utf-8")))
    assert [finding for finding in findings if finding.severity is Severity.STOPS] == []


def test_a_check_has_one_code_of_plain_words_and_answers_points_of_the_list() -> None:
    codes = [check.code for check in CHECKS]
    assert len(set(codes)) == len(codes)
    assert [code for code in codes if not re.fullmatch(r"[a-z]+(-[a-z]+)*", code)] == []
    assert set(codes) & CODES.keys() == set()
    assert [check.code for check in CHECKS if not set(check.answers) <= set(range(1, 106))] == []


def test_each_check_has_a_case_in_which_it_fires() -> None:
    assert {check.code for check in CHECKS} ^ FIRES.keys() == set()


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.code)
def test_what_a_check_tells_can_be_printed_and_says_how_to_mend_it(check: Check) -> None:
    findings = list(check.run(FIRES[check.code]()))
    assert findings
    for finding in findings:
        assert (finding.code, finding.severity) == (check.code, check.severity)
        for words in (finding.sentence, finding.remedy):
            assert words.isprintable()
            assert words[0].isupper() or words[0] in "`0123456789" or words.startswith(finding.place.key)
            assert words.endswith((".", "?"))
            assert len(words) < 400


def test_the_book_lists_every_finding_with_its_severity_and_meaning() -> None:
    book = rows_of_book()
    wanted = {check.code: check.severity.value for check in CHECKS}
    wanted |= {code: severity.value for code, (severity, _) in CODES.items()} | REHEARSAL
    wanted |= dict.fromkeys(MAP_CODES, "stops") | dict.fromkeys(ACROSS_CODES, "costs")
    assert {code: severity for code, (severity, _, _) in book.items()} == wanted
    meanings = {check.code: check.title for check in CHECKS}
    meanings |= {code: meaning for code, (_, meaning) in CODES.items()} | dict(MAP_CODES) | dict(ACROSS_CODES)
    assert {code: book[code][1] for code in meanings} == meanings
    assert [code for code, (_, _, remedy) in book.items() if not remedy.strip("*").endswith(".")] == []


POINTS = range(1, 106)


def test_the_book_says_what_covers_each_point_of_a_technical_edit() -> None:
    book = (ROOT / "docs" / "findings.md").read_text(encoding="utf-8")
    rows = dict(re.findall(r"^\| (\d+) \| .+\. \| (.+) \|$", book, re.MULTILINE))
    assert [int(number) for number in rows] == list(POINTS)
    covered = {int(number): set(re.findall(r"`(.+?)`", by)) for number, by in rows.items()}
    by_code = {number: {check.code for check in CHECKS if number in check.answers} for number in POINTS}
    tests = {name for file in (ROOT / "tests").rglob("test_*.py") for name in _tests_in(file)}
    for number, by in rows.items():
        found = covered[int(number)]
        assert {code for code in found if not code.startswith("test_")} - set(ACROSS_CODES) == by_code[
            int(number)
        ]
        assert {name for name in found if name.startswith("test_")} <= tests
        assert found or by.startswith("*")


def _tests_in(file: Path) -> list[str]:
    return re.findall(r"^def (test_\w+)", file.read_text(encoding="utf-8"), re.MULTILINE)
