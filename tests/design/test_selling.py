"""Money, notions, kits and a class: what a file says, what it leaves out, and that it is written back."""

from __future__ import annotations

from dataclasses import fields, replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import KitContent, Minutes, Notion, Selling, format_design, read_design, write_design
from quarterturn.design.selling import default_kits, default_money
from quarterturn.design.selling_tables import MinutesTable
from quarterturn.measure import MM, YARD, Units, mm
from tests.design.broken_cases import GOOD
from tests.samples import design_of

SOLD = (
    GOOD
    + """currency = "EUR"

[money]
rate = 18.5
share = 12
web = 6.2
batting = 40
minutes = { seam = 2, stitching = 0.3 }

[[notions]]
name = "square-up ruler"
price = 15

[[notions]]
name = "machine needles"
count = 2

[kits]
count = 12
content = "pieces"
spare = 0
bolt = "8 yd"
label = "Marram patterns"

[class]
students = 8
hours = 5.5
masters = 4
homework = ["cutting", "borders"]
"""
)


def test_a_file_tells_of_all_that_is_sold() -> None:
    sold = design_of(SOLD).selling
    assert (sold.money.rate, sold.money.share, sold.money.thread) == (
        Fraction("18.5"),
        Fraction("0.12"),
        None,
    )
    assert sold.money.minutes == replace(Minutes(), seam=Fraction(2), stitching=Fraction("0.3"))
    assert sold.notions == (
        Notion("square-up ruler", price=Fraction(15)),
        Notion("machine needles", count=2),
    )
    assert sold.kits is not None
    assert (sold.kits.count, sold.kits.content) == (12, KitContent.PIECES)
    assert (sold.kits.spare, sold.kits.bolt) == (0, 8 * YARD)
    assert sold.lesson is not None
    assert (sold.lesson.hours, sold.lesson.homework) == (Fraction("5.5"), ("cutting", "borders"))


def test_a_file_that_sells_nothing_says_nothing() -> None:
    design = design_of(GOOD)
    assert design.selling == Selling()
    assert not any(word in format_design(design) for word in ("[money", "[[notions", "[kits", "[class"))


@pytest.mark.parametrize("text", [SOLD, SOLD.replace('"inch"', '"metric"').replace("'0\"'", "'1/3\"'")])
def test_what_is_sold_reads_back(text: str) -> None:
    design = design_of(text)
    assert design_of(format_design(design)) == design


def test_metric_files_have_metric_spools_and_bolts() -> None:
    assert default_money(Units.METRIC).spool == mm(180_000)
    assert default_kits(Units.METRIC).bolt % (1000 * MM) == 0
    assert default_money(Units.INCH).spool == 200 * YARD


def test_every_kind_of_work_can_be_set() -> None:
    assert list(MinutesTable.model_fields) == [field.name for field in fields(Minutes)]


def test_a_notion_can_be_added_where_there_is_none() -> None:
    after = design_of(write_design(GOOD, {"notions.0.name": "pins", "class.students": 8, "class.hours": 6}))
    assert after.selling.notions == (Notion("pins"),)
    assert after.selling.lesson is not None


def test_a_size_can_have_other_kits() -> None:
    text = f"{SOLD}\n[sizes.large]\nchanges = {{ kits.count = 3, setting.across = 3 }}\n"
    large = design_of(text).in_size("large")
    assert large.selling.kits is not None
    assert large.selling.kits.count == 3


def test_kits_and_a_class_say_for_which_size_they_are() -> None:
    chosen = SOLD.replace("count = 12", 'count = 12\nsize = "large"').replace(
        "masters = 4", 'size = "original"'
    )
    design = design_of(f"{chosen}\n[sizes.large]\nchanges = {{ kits.count = 3, setting.across = 3 }}\n")
    assert design.selling.kits is not None
    assert design.selling.kits.size == "large"
    assert design.selling.lesson is not None
    assert design.selling.lesson.size == "original"
    assert design_of(format_design(design)) == design


POINTS = st.tuples(st.integers(-50, 50), st.integers(0, 50)).map(lambda p: f"{p[0] / 10:g} {p[1] / 10:g}")


@given(st.lists(POINTS, max_size=6))
def test_the_way_of_a_needle_reads_back(between: list[str]) -> None:
    way = ", ".join(["0 0", *between, "0 5.1"])
    design = design_of(GOOD.replace('kind = "zigzag"', f'kind = "zigzag"\nrepeat = "{way}"'))
    assert len(design.making.stitch.repeat) == len(between) + 2
    assert design_of(format_design(design)) == design


def test_a_wash_reads_back() -> None:
    text = GOOD.replace('role = "circles"', "shrink_along = 3.5\nshrink_across = 1")
    design = design_of(text)
    assert (design.fabric("B").shrink_along, design.fabric("B").shrink_across) == (
        Fraction("0.035"),
        Fraction("0.01"),
    )
    assert design_of(format_design(design)) == design


def test_prices_of_any_kind_want_a_currency() -> None:
    for table in ("[money]\nbatting = 40", '[[notions]]\nname = "pins"\nprice = 3'):
        found = read_design(f"{GOOD}\n{table}\n").findings
        assert [finding.code for finding in found] == ["price-without-currency"]
