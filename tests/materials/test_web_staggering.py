"""Staggered rows: shorter than plain ones, told by rule, and no two rings nearer than the gap."""

from __future__ import annotations

import math
import time
from fractions import Fraction

import pytest

from quarterturn.geometry import Path, circle, polygon, shift
from quarterturn.materials.model import WebRows
from quarterturn.materials.nesting import Checker, Place, Shape
from quarterturn.materials.web import web_rows
from quarterturn.materials.web_staggering import stagger_rows
from quarterturn.measure import MM, Length, inches

STEP = Fraction(1, 16)
WEB = inches(17)
NOTHING = inches(0)


def rows_of(
    outline: Path, width: Length, height: Length, count: int, gap: Length = NOTHING
) -> tuple[WebRows, Shape]:
    """Return plain rows of a shape, and the shape."""
    kind = Shape("shape", outline, count=count, turns=(0, 1, 2, 3))
    return web_rows("recipe", "shape", width, height, count, WEB, gap), kind


def discs(diameter: Length, count: int, gap: Length = NOTHING) -> tuple[WebRows, Shape]:
    return rows_of(circle(float(diameter) / 2), diameter, diameter, count, gap)


def faults(rows: WebRows, kind: Shape, length: float) -> tuple[str, ...]:
    assert rows.stagger
    places = [Place("shape", motion) for motion in rows.stagger.motions(rows.count)]
    assert len(places) == rows.count
    return Checker([kind], float(rows.gap)).faults(places, float(WEB), length)


@pytest.mark.parametrize("gap", [inches(0), inches(0, 1, 4)])
@pytest.mark.parametrize("diameter", ["2", "2.5", "3.625", "5.75", "8", "10"])
def test_rows_of_discs_keep_their_gap_and_are_no_longer_than_plain_ones(diameter: str, gap: Length) -> None:
    plain, kind = discs(Fraction(diameter), 61, gap)
    rows = stagger_rows(plain, kind, WEB, STEP)
    assert rows.length <= plain.length
    if rows.stagger:
        assert rows.length < plain.length
        assert faults(rows, kind, float(rows.length)) == ()
        assert rows.rows == rows.stagger.rows(61)


def test_rows_of_discs_come_near_the_hexagonal_ones() -> None:
    """Rows of 4 and 3 of discs 3⅝" across, 17" wide: as far apart as √(D² − c²), or half of D where that is more."""
    plain, kind = discs(inches(3, 5, 8), 400)
    rows = stagger_rows(plain, kind, WEB, STEP)
    assert rows.stagger
    across = float(rows.stagger.pitch) / 2
    least = max(math.sqrt(max(0.0, 3.625**2 - across**2)), 3.625 / 2)
    assert least - 1e-9 <= rows.stagger.down <= least + 1 / 16
    assert rows.length < plain.length * Fraction(85, 100)


def test_squares_stay_in_plain_rows() -> None:
    plain, kind = rows_of(polygon((0j, 4 + 0j, 4 + 4j, 4j)), inches(4), inches(4), 30)
    assert stagger_rows(plain, kind, WEB, STEP) is plain


def test_triangles_lie_head_to_foot() -> None:
    outline = shift(-2 - 2j).path(polygon((0j, 4 + 0j, 2 + 4j)))
    plain, kind = rows_of(outline, inches(4), inches(4), 40)
    rows = stagger_rows(plain, kind, WEB, STEP)
    assert rows.stagger
    assert rows.stagger.flipped
    assert rows.length <= plain.length * Fraction(2, 3)
    assert faults(rows, kind, float(rows.length)) == ()


def test_every_measure_is_on_the_ruler() -> None:
    for step in (STEP, MM):
        plain, kind = discs(inches(3, 5, 8), 60)
        rule = stagger_rows(plain, kind, WEB, step).stagger
        assert rule
        sizes = (rule.first, rule.second, rule.pitch, rule.top, rule.down, rule.back)
        assert all((size / step).denominator == 1 for size in sizes)


def test_sheets_hold_as_many_as_the_rule_says() -> None:
    plain, kind = discs(inches(5), 6)
    on_sheets = WebRows("shape", "recipe", plain.width, plain.height, plain.gap, 1, 6, 6, rows_on_sheet=2)
    assert on_sheets.sheets == 3
    rows = stagger_rows(on_sheets, kind, inches(9), STEP, inches(12))
    assert (rows.on_sheet, rows.sheets) == (3, 2)


def test_a_rule_for_thousands_takes_no_longer_than_for_few() -> None:
    """No place is listed: 100,000 rows are as quick to plan as ten."""
    plain, kind = discs(inches(2, 7, 16), 100_000)
    start = time.process_time()
    rows = stagger_rows(plain, kind, WEB, STEP)
    assert time.process_time() - start < 1
    assert rows.stagger
    assert rows.length < plain.length
