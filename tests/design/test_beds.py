"""The arithmetic of beds: published drops, and the laws of how many repeats a quilt needs."""

from __future__ import annotations

from fractions import Fraction
from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import BEDS, Bed, Fit, Growth, fit_over, nearest_fit
from quarterturn.design.file import SizeTable
from quarterturn.measure import MM, Length, inches

STEP = inches(0, 1, 4)
sizes = st.builds(Fraction, st.integers(80, 1200), st.sampled_from([8, 10]))
growths = st.builds(
    Growth,
    st.integers(0, 160).map(lambda n: Fraction(n, 8)),
    st.integers(4, 240).map(lambda n: Fraction(n, 8)),
)
borders = st.one_of(st.none(), st.integers(2, 96).map(lambda n: Fraction(n, 8)))


def bed(width: int, length: int, drop: int, tuck: int = 0) -> Bed:
    return Bed("", inches(width), inches(length), inches(drop), inches(tuck), inches(2))


@pytest.mark.parametrize(
    ("name", "mattress", "drop", "wanted"),
    [
        ("twin", (39, 75), 12, (63, 87)),  # ciaspalette.com, categories/mattresses
        (
            "twin XL",
            (39, 80),
            12,
            (63, 92),
        ),  # these five: one chart, 5minpourcreer.com, cherryblossomlove.com
        ("full", (54, 75), 12, (78, 87)),
        ("queen", (60, 80), 12, (84, 92)),
        ("", (78, 80), 12, (102, 92)),  # the chart's king is 2" wider than the trade's
        ("California king", (72, 84), 12, (96, 96)),
        ("queen", (60, 80), 13, (86, 93)),  # quiltersreview.com, how-to-make-a-bed-quilt
    ],
)
def test_published_drops_come_out(
    name: str, mattress: tuple[int, int], drop: int, wanted: tuple[int, int]
) -> None:
    assert not name or BEDS[name] == mattress
    assert bed(*mattress, drop).wanted == wanted


def test_a_tuck_makes_a_quilt_longer_and_no_wider() -> None:
    assert bed(60, 80, 12, 10).wanted == (84, 102)


def test_the_words_for_beds_are_the_beds_that_are_known() -> None:
    annotation = SizeTable.model_fields["bed"].annotation
    assert get_args(get_args(annotation)[0]) == tuple(BEDS)


def test_beds_are_no_wider_than_long_and_metric_ones_whole_centimetres() -> None:
    assert [name for name, (width, length) in BEDS.items() if width > length] == []
    metric = [side for name, sides in BEDS.items() if name.startswith(("UK", "cont")) for side in sides]
    assert {side / MM % 10 for side in metric} == {0}


@given(wanted=st.tuples(sizes, sizes), across=growths, down=growths, border=borders)
def test_a_fit_is_large_enough_and_one_repeat_less_is_not(
    wanted: tuple[Length, Length], across: Growth, down: Growth, border: Length | None
) -> None:
    fit = fit_over(wanted, across, down, border, STEP)
    assert fit.width >= wanted[0]
    assert fit.height >= wanted[1]
    assert fit.across == 1 or across.at(fit.across - 1) < wanted[0]
    assert fit.down == 1 or down.at(fit.down - 1) < wanted[1]


@given(wanted=st.tuples(sizes, sizes), across=growths, down=growths, border=borders)
def test_a_fit_has_the_size_of_its_repeats_and_its_border(
    wanted: tuple[Length, Length], across: Growth, down: Growth, border: Length | None
) -> None:
    for fit in (
        fit_over(wanted, across, down, border, STEP),
        nearest_fit(wanted, across, down, border, STEP, inches(2)),
    ):
        more = 2 * (fit.border - border) if fit.border is not None and border is not None else 0
        assert (fit.width, fit.height) == (across.at(fit.across) + more, down.at(fit.down) + more)
        assert border is not None or fit.border is None


@given(wanted=st.tuples(sizes, sizes), across=growths, down=growths, border=borders)
def test_no_other_number_of_repeats_comes_nearer(
    wanted: tuple[Length, Length], across: Growth, down: Growth, border: Length | None
) -> None:
    fit = nearest_fit(wanted, across, down, border, STEP, inches(0))
    for columns in range(max(1, fit.across - 2), fit.across + 3):
        for rows in range(max(1, fit.down - 2), fit.down + 3):
            other = Fit(columns, rows, across.at(columns), down.at(rows))
            assert fit.off(wanted) <= other.off(wanted)


def test_a_fit_keeps_the_border_where_that_is_near_enough() -> None:
    growth = Growth(inches(8), inches(19))
    assert nearest_fit((inches(84), inches(84)), growth, growth, inches(4), STEP, inches(2)) == Fit(
        4, 4, inches(84), inches(84)
    )
    narrower = nearest_fit((inches(80), inches(80)), growth, growth, inches(4), STEP, inches(2))
    assert narrower == Fit(4, 4, inches(80), inches(80), inches(2))
