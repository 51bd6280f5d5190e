"""The spine: a pattern for each size, and findings that say of which size they are."""

from __future__ import annotations

import pytest

from quarterturn.design import UnknownSizeError
from quarterturn.pipeline import run
from tests.samples import ROUNDS

SIZES = f"""{ROUNDS}
[sizes.wide]
changes = {{ setting.across = 2 }}
bed = "queen"

[sizes.narrow]
changes = {{ borders.0.width = '3/8"' }}
"""


def test_a_job_has_a_pattern_for_each_size_that_of_the_file_first() -> None:
    job = run(SIZES)
    assert [pattern.design.size for pattern in job.patterns] == ["original", "wide", "narrow"]
    assert job.pattern is job.patterns[0]


def test_findings_of_the_file_stand_as_they_are_and_those_of_a_size_once() -> None:
    alone, all_sizes = run(ROUNDS).findings, run(SIZES).findings
    assert [finding.sentence for finding in all_sizes[: len(alone)]] == [
        finding.sentence for finding in alone
    ]
    further = all_sizes[len(alone) :]
    assert {finding.code for finding in further} >= {"bed-missed", "border-narrow"}
    lines = {name: SIZES.splitlines().index(f"[sizes.{name}]") + 1 for name in ("wide", "narrow")}
    for finding in further:
        _, name, rest = finding.sentence.split(" ", 2)
        assert rest.startswith("size: ")
        assert (finding.place.key, finding.place.line) == (f"sizes.{name}", lines[name])


def test_one_size_has_its_own_findings_alone() -> None:
    job = run(SIZES, size="narrow")
    assert [pattern.design.size for pattern in job.patterns] == ["narrow"]
    assert "border-narrow" in {finding.code for finding in job.findings}
    assert "bed-missed" not in {finding.code for finding in job.findings}
    with pytest.raises(UnknownSizeError, match="no size 'huge'"):
        run(SIZES, size="huge")


def test_a_map_of_a_size_that_asks_for_another_quarter_stops_the_design() -> None:
    job = run(f"{ROUNDS}\n[sizes.odd]\nchanges.setting.map = 'a-tr0'\n")
    assert job.patterns == ()
    assert job.pattern is None
    (finding,) = job.findings
    assert finding.code == "quarter-unwanted"
    assert finding.sentence.startswith("In odd size: ")


def test_the_stages_are_told_and_then_each_further_size() -> None:
    told: list[str] = []
    run(SIZES, watch=told.append)
    assert told == [
        "design",
        "blocks",
        "setting",
        "pieces",
        "materials",
        "steps",
        "wide",
        "narrow",
        "proof",
    ]
