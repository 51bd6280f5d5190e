"""The map names a quarter where the quarters of a master differ, and only there."""

from __future__ import annotations

import pytest

from quarterturn.design import Severity
from quarterturn.pipeline import run
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
