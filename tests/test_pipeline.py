"""The spine: a pattern for each size, and findings that say of which size they are."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest

from quarterturn.design import UnknownSizeError
from quarterturn.measure import YARD, Length, inches, round_up
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
        assert rest.startswith(("size: ", "size, border 1 (borders.0): "))
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


GARDEN_GEMS = {
    "baby": (45, 45, "3", "3/8"),
    "throw": (60, 75, "4", "1/2"),
    "twin": (75, 90, "5 1/2", "5/8"),
    "queen": (90, 105, "8 1/4", "3/4"),
    "king": (105, 105, "9 1/2", "7/8"),
}
"""Width and height in inches, yards of backing and of binding: equilter.com product 265806 (see tests of backing)."""


def published_sizes() -> str:
    """Return one unit of 7 1/2 inches, laid as often as each published size has them."""
    plain = re.sub(r"map = '''.*?'''", "map = 'a2'", ROUNDS.replace("'2\"'", "'7 1/2\"'"), flags=re.DOTALL)
    alone = re.sub(r"\[\[borders\]\].*?(?=\[binding\])", "", plain, flags=re.DOTALL)
    alone = alone.replace('[backing]\nfabric = "A"', '[backing]\nfabric = "C"').replace(
        "[backing]", f"{WIDE}[backing]"
    )
    return alone + "".join(
        f"[sizes.{name}]\nchanges = {{ setting.across = {width * 2 // 15}, setting.down = {height * 2 // 15} }}\n"
        for name, (width, height, _, _) in GARDEN_GEMS.items()
    )


WIDE = """[making]
usable_width = '42"'
binding_extra = '10"'

"""


def test_the_five_sizes_of_a_published_pattern_are_sizes_of_one_design() -> None:
    """Backing of 42 inches, 8 larger than the top, up to 1/4 yd; binding strips of 2 1/2, up to 1/8 yd."""
    job = run(published_sizes())
    for pattern in job.patterns[1:]:
        width, height, backing, binding = GARDEN_GEMS[pattern.design.size]
        assert (pattern.setting.width, pattern.setting.height) == (width, height)
        assert yards(pattern.materials.plan("C").cut_length, "1/4") == parse_fraction(backing)
        strips = math.ceil(pattern.materials.binding_run / 42)
        assert yards(strips * inches(2, 1, 2), "1/8") == parse_fraction(binding)


def yards(length: Length, step: str) -> Fraction:
    return round_up(length, Fraction(step) * YARD) / YARD


def parse_fraction(text: str) -> Fraction:
    return sum((Fraction(part) for part in text.split()), Fraction(0))
