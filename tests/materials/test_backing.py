"""Backing against published sums and tables, and batting against the packages that are sold."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.materials import PanelGroup
from quarterturn.materials.backing import (
    PACKAGES,
    backing_panels,
    in_one_width,
    package_for,
    panels_across,
)
from quarterturn.materials.runs import strips_to_join
from quarterturn.measure import YARD, Length, Units, inches, round_up
from quarterturn.pieces import Piece, Purpose
from tests.materials.cutting_cases import MAKING, piece, size
from tests.samples import ROUNDS, Changed, pattern_of

HALF = inches(0, 1, 2)


def panels(
    width: str | int | Length,
    height: str | int | Length,
    usable: int,
    seam: Length = HALF,
    turnable: bool = True,
) -> PanelGroup:
    """Return the panels of a backing of width × height."""
    group = backing_panels(piece(1, width, height, Purpose.BACKING), inches(usable), seam, turnable)
    assert group is not None
    return group


def sheet(width: Length, height: Length) -> Piece:
    """Return a backing of width × height."""
    return piece(1, width, height, Purpose.BACKING)


def cut(group: PanelGroup) -> Length:
    """Return the length of cloth that panels take."""
    return group.panels * group.cut_length


def yards(length: Length, step: str) -> Fraction:
    """Return a length in yards, rounded up to a step."""
    return round_up(length, Fraction(step) * YARD) / YARD


GARDEN_GEMS = [
    pytest.param(45, 45, "3", "3/8", id="baby"),
    pytest.param(60, 75, "4", "1/2", id="throw"),
    pytest.param(75, 90, "5 1/2", "5/8", id="twin"),
    pytest.param(90, 105, "8 1/4", "3/4", id="queen"),
    pytest.param(105, 105, "9 1/2", "7/8", id="king"),
]
"""Five sizes of a listed pattern, equilter.com product 265806. The rules are inferred: cloth 42″ wide, backing 8″
larger than the top, joined with ½″ seams in the cheaper direction, up to ¼ yd; binding (perimeter + 10″) / 42″ in
strips of 2½″, up to ⅛ yd."""


@pytest.mark.parametrize(("width", "height", "backing", "binding"), GARDEN_GEMS)
def test_five_published_sizes_of_a_pattern(width: int, height: int, backing: str, binding: str) -> None:
    assert yards(cut(panels(width + 8, height + 8, 42)), "1/4") == size(backing)
    strips = strips_to_join(inches(2 * (width + height) + 10), inches(42), inches(0))
    assert yards(strips * inches(2, 1, 2), "1/8") == size(binding)


def test_throw_and_twin_of_that_pattern_fail_on_narrow_cloth() -> None:
    """An 83″ side needs two widths of 42″ but three of 40″."""
    assert panels_across(inches(83), inches(42), HALF) == 2
    assert panels_across(inches(83), inches(40), HALF) == 3
    assert cut(panels(68, 83, 42)) == 2 * 68


PUBLISHED = [
    pytest.param(51, 51, "2 7/8", "1/8", id="Spin"),
    pytest.param(60, 60, "3 1/3", "1/3", id="Girly Swirls"),
    pytest.param(46, 46, "2 5/8", "1/8", id="Magic Circles"),
    pytest.param(31, 31, "7/8", "1/8", id="Spools Fun, one width"),
    pytest.param(47, 47, "2 2/3", "1/3", id="Garden Blooms"),
    pytest.param(49, 49, "2 3/4", "1/8", id="Sweet Tweet"),
    pytest.param(51, 54, "2 7/8", "1/8", id="Hearts & Flowers"),
]
"""Free patterns of allpeoplequilt.com, cloth 42″ wide: the backing is as large as the batting they state."""


@pytest.mark.parametrize(("width", "height", "published", "step"), PUBLISHED)
def test_published_backings(width: int, height: int, published: str, step: str) -> None:
    assert yards(cut(panels(width, height, 42)), step) == size(published)


SOLD = [
    pytest.param("42 1/2", "42 1/2", 51, 51, id="Spin"),
    pytest.param("51 1/2", "51 1/2", 60, 60, id="Girly Swirls"),
    pytest.param("37 1/2", "37 1/2", 46, 46, id="Magic Circles"),
    pytest.param("22 1/2", "22 1/2", 31, 31, id="Spools Fun"),
    pytest.param("38 1/2", "38 1/2", 47, 47, id="Garden Blooms"),
    pytest.param("42 1/2", "42 1/2", 49, 49, id="Sweet Tweet"),
    pytest.param("45", "48 1/4", 51, 54, id="Hearts & Flowers"),
]
"""The same patterns: the quilt with its outer seams, and the batting that they state."""


@pytest.mark.parametrize(("width", "height", "wide", "high"), SOLD)
def test_published_batting_stands_out_as_far_as_the_sources_say(
    width: str, height: str, wide: int, high: int
) -> None:
    """6″ (honeybegood.com) to 8½″ in all; what is stated here by default, 4″ all round, lies within that."""
    for side, batting in ((size(width), wide), (size(height), high)):
        assert size("5 3/4") <= batting - side <= size("8 1/2")
    assert inches(6) <= 2 * MAKING.overage <= size("8 1/2")


@pytest.mark.parametrize(
    ("each", "top", "sheet"),
    [
        pytest.param(3, 60, 66, id="twistedquilting.com"),
        pytest.param(4, 60, 68, id="katieskitchenblog.com: 8 in all"),
        pytest.param(6, 60, 72, id="vandcdesign.com: 12 in all, for a long-arm"),
    ],
)
def test_published_overages_are_on_each_side(each: int, top: int, sheet: int) -> None:
    pattern = pattern_of(_as_large_as(top, each))
    (backing,) = (piece for piece in pattern.bill.pieces if piece.purpose is Purpose.BACKING)
    assert backing.length == backing.width == pattern.materials.batting_width == sheet


def _as_large_as(top: int, overage: int) -> str:
    """Return a square quilt of a size, made so by its border, with an overage on each side."""
    made = Changed(ROUNDS).with_('kind = "straight"', 'kind = "straight"\nacross = 3\ndown = 5').text
    border = f"width = '{(top - 30) // 2}\"'"
    words = Changed(made).with_("width = '1 1/2\"'", border).text
    return Changed(words).with_("[binding]", f"[making]\noverage = '{overage}\"'\n\n[binding]").text


def test_two_lengths_of_two_yards_join_to_83_inches() -> None:
    """59″ × 72″ from 44″ cloth: two lengths of 2 yd, 4 yd, 83″ when joined (quiltingboard.com 4724601), 42″ usable."""
    group = panels(83, 72, 42, turnable=False)
    assert (group.panels, cut(group)) == (2, 4 * YARD)
    assert group.panels * 42 - (group.panels - 1) * 2 * HALF == 83


def test_two_lengths_of_74() -> None:
    """Two lengths of 74″ are 148″, 4.11 yd, up to 4¼ yd (katieskitchenblog.com)."""
    group = panels(60, 74, 42, turnable=False)
    assert (group.panels, cut(group), yards(cut(group), "1/4")) == (2, 148, size("4 1/4"))


def test_two_widths_across_80() -> None:
    """80″ × 56″ from 40″ cloth without overage or seams: two widths of 56″, 3.11 yd (quiltingboard.com t290638)."""
    group = panels(80, 56, 40, inches(0))
    assert (group.panels, cut(group), group.runs_down) == (2, 112, True)
    assert yards(cut(group), "1/8") == size("3 1/8")


def test_the_cheaper_seam_direction_is_taken() -> None:
    """65″ × 78″: 2 × 65 = 130″, 3⅝ yd, or 2 × 78 = 156″, 4⅓ yd (quiltingboard.com, post 7400852)."""
    group = panels(65, 78, 40)
    assert (cut(group), group.runs_down, yards(cut(group), "1/8")) == (130, False, size("3 5/8"))
    other = panels(65, 78, 40, turnable=False)
    assert (cut(other), other.runs_down, yards(cut(other), "1/3")) == (156, True, size("4 1/3"))


def test_circle_fun() -> None:
    """About 70″ × 90″ with 4″ all round: two lengths of 98″, 5½ yd (pastimesquiltdesign.blogspot.com, 2012)."""
    assert yards(cut(panels(78, 98, 40)), "1/4") == size("5 1/2")


def test_a_top_up_to_40_inches_wide_is_backed_by_one_width() -> None:
    """40″ × 45″ takes about 1½ yd (stcroixquilters.com): the minimum is 45″."""
    group = panels(40, 45, 40)
    assert (group.panels, cut(group)) == (1, 45)
    assert cut(group) <= size("1 1/2") * YARD


def test_equal_ways_give_upright_seams() -> None:
    assert panels(60, 60, 42).runs_down


def test_a_sheet_that_seams_eat_up_cannot_be_made() -> None:
    assert panels_across(inches(10), inches(4), inches(2)) is None
    sheet = piece(1, 10, 12, Purpose.BACKING)
    assert backing_panels(sheet, inches(4), inches(2), True) is None


SIDES = st.integers(80, 1000).map(lambda n: inches(0, n, 8))


@given(SIDES, SIDES, st.integers(30, 60))
def test_panels_cover_the_sheet_and_one_less_would_not(width: Length, height: Length, usable: int) -> None:
    group = panels(width, height, usable)
    across = width if group.runs_down else height
    assert group.panels * usable - (group.panels - 1) * 2 * HALF >= across
    assert group.panels == 1 or (group.panels - 1) * usable - (group.panels - 2) * 2 * HALF < across
    assert group.cut_length == (height if group.runs_down else width)


@given(SIDES, SIDES, st.integers(30, 60))
def test_turning_the_sheet_turns_the_panels(width: Length, height: Length, usable: int) -> None:
    assert cut(panels(width, height, usable)) == cut(panels(height, width, usable))


@given(SIDES, SIDES)
def test_a_wide_backing_without_a_seam_is_as_long_as_the_side_that_is_not_across(
    width: Length, height: Length
) -> None:
    short, long = sorted((width, height))
    wanted = short if long <= 108 else long if short <= 108 else None
    assert in_one_width(sheet(width, height), Units.INCH, True) == wanted


def test_a_print_with_a_direction_is_laid_one_way_on_a_wide_backing_too() -> None:
    assert in_one_width(sheet(inches(120), inches(90)), Units.INCH, True) == inches(120)
    assert in_one_width(sheet(inches(120), inches(90)), Units.INCH, False) is None


PACKAGED = [
    pytest.param("crib", 45, 60, id="crib"),
    pytest.param("twin", 72, 90, id="twin"),
    pytest.param("full", 81, 96, id="full"),
    pytest.param("queen", 90, 108, id="queen"),
    pytest.param("king", 120, 120, id="king"),
]
"""Nominal sizes of honeybegood.com, 2012, and stitchingtimes.blogspot.com, 2011."""


@pytest.mark.parametrize(("name", "short", "long"), PACKAGED)
def test_each_package_holds_its_own_size_either_way_round(name: str, short: int, long: int) -> None:
    assert package_for(inches(short), inches(long)) == package_for(inches(long), inches(short)) == name


def test_a_bit_more_takes_the_next_package_and_beyond_the_largest_there_is_none() -> None:
    names = list(PACKAGES)
    for name, following in zip(names, [*names[1:], ""], strict=True):
        short, long = PACKAGES[name]
        assert package_for(short, long + inches(0, 1, 8)) == following


def test_packages_are_a_setting() -> None:
    """Throw 60″ × 60″ and craft 36″ × 45″ are sold too (from memory)."""
    mine = {"craft": (inches(36), inches(45)), "throw": (inches(60), inches(60))}
    assert package_for(inches(50), inches(60), mine) == "throw"
    assert package_for(inches(61), inches(60), mine) == ""
