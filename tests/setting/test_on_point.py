"""On point: counts, finished sizes and the squares for setting triangles, held against published values."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    Cell,
    ClothCell,
    Design,
    Finding,
    OnPointSet,
    Sashing,
    TriangleFit,
    default_making,
)
from quarterturn.measure import ROOT_TWO, Length, Units, cut_up, inches, mm, quote
from quarterturn.setting import OnPoint, Setting, arrange, map_findings
from quarterturn.setting.on_point import exact_additions, handbook_additions
from tests.samples import ROUNDS, Changed, design_of


@cache
def design_with(finished: str) -> Design:
    """A design whose units finish at a size."""
    return replace(design_of(Changed(ROUNDS).with_("'2\"'", f"'{finished}\"'").text), borders=())


def on_point(
    rows: int, columns: int, finished: str, fit: TriangleFit = TriangleFit.HANDBOOK, **changes: object
) -> Design:
    """A design of units on point with plain cloth between them."""
    cells = ((Cell("a", 0),) * columns,) * rows
    between = ((ClothCell("B"),) * (columns - 1),) * (rows - 1)
    setting = OnPointSet(cells, between, "A", "C", fit, inches(0))
    return replace(design_with(finished), setting=replace(setting, **changes))  # type: ignore[arg-type]


def node_of(design: Design) -> OnPoint:
    node = setting_of(design).top
    assert isinstance(node, OnPoint)
    return node


def setting_of(design: Design) -> Setting:
    return arrange(design, draft_blocks(design))


def found(design: Design) -> tuple[Finding, ...]:
    return map_findings(design, draft_blocks(design))


EIGHTHS = {
    5: ("8 3/8", "4 1/2"), 6: ("9 3/4", "5 1/8"), 7: ("11 1/4", "5 7/8"), 8: ("12 5/8", "6 5/8"), 9: ("14", "7 1/4"),
    10: ("15 1/2", "8"), 11: ("16 7/8", "8 3/4"), 12: ("18 1/4", "9 3/8"), 13: ("19 3/4", "10 1/8"),
    14: ("21 1/8", "10 7/8"), 15: ("22 1/2", "11 1/2"), 16: ("23 7/8", "12 1/4"),
}  # fmt: skip
"""Squares for side and corner triangles by the finished block, as printed at lukas.is-a-geek.org/tani/chart.htm, which
says that it rounds up to the next eighth. Its rules are those of phoebemoon.com/tutorials/on-point.htm and others:
block × 1.414 + 1¼", and block ÷ 1.414 + ⅞"."""

COMPUTED = {
    2: ("4 1/8", "2 3/8"), 3: ("5 1/2", "3"), 4: ("7", "3 3/4"), 17: ("25 3/8", "13"), 18: ("26 3/4", "13 5/8"),
    19: ("28 1/8", "14 3/8"), 20: ("29 5/8", "15 1/8"),
}  # fmt: skip
"""The same rules worked out by hand for blocks that the chart does not have."""


def length(text: str) -> Length:
    whole, _, part = text.partition(" ")
    return inches(int(whole)) + (inches(0, *map(int, part.split("/"))) if part else 0)


@pytest.mark.parametrize(("block", "squares"), [*EIGHTHS.items(), *COMPUTED.items()])
def test_the_squares_are_those_of_the_published_chart(block: int, squares: tuple[str, str]) -> None:
    node = node_of(on_point(2, 2, str(block)))
    assert (node.side_square, node.corner_square) == tuple(map(length, squares))


def test_a_block_of_six_inches_takes_the_squares_of_a_guild() -> None:
    """6" block: 9¾" and 5⅛" (moonlightquilters.org/tip-on-point-settings)."""
    node = node_of(on_point(1, 1, "6"))
    assert (node.side_square, node.corner_square) == (inches(9, 3, 4), inches(5, 1, 8))


DIAGONALS = {
    4: "5 5/8", 5: "7 1/8", 6: "8 1/2", 7: "9 7/8", 8: "11 3/8", 9: "12 3/4", 10: "14 1/8", 12: "17", 14: "19 3/4",
}  # fmt: skip
"""M. Hohn, maths charts, quilterscache.com/M/MathChartsPage.html (2002): to the nearest eighth."""


@pytest.mark.parametrize(("block", "diagonal"), DIAGONALS.items())
def test_a_lone_square_on_point_is_as_wide_as_its_diagonal(block: int, diagonal: str) -> None:
    node = node_of(on_point(1, 1, str(block)))
    assert node.width == node.height
    assert quote(node.width, Units.INCH) == length(diagonal)


@pytest.mark.parametrize(
    ("rows", "columns", "squares", "sides"),
    [(4, 4, 16 + 9, 12), (4, 5, 32, 14), (3, 4, 18, 10), (5, 4, 32, 14)],
)
def test_squares_and_triangles_are_counted_as_published(
    rows: int, columns: int, squares: int, sides: int
) -> None:
    """r·c + (r − 1)(c − 1) squares, 2(r + c − 2) side triangles, 4 corners.

    4 × 4: kristamoser.com; 4 × 5: In the Garden (2023) and Call Me Square (2019); 3 × 4: inflorescencedesigns.com.
    """
    setting = setting_of(on_point(rows, columns, "6"))
    cloths = [cloth.what for cloth in setting.cloths]
    assert len(setting.units) + cloths.count("plain square") == squares
    assert (cloths.count("side triangle"), cloths.count("corner triangle")) == (sides, 4)


@given(st.integers(1, 9), st.integers(1, 9))
def test_triangles_are_counted_for_any_size(rows: int, columns: int) -> None:
    setting = setting_of(on_point(rows, columns, "2"))
    cloths = [cloth.what for cloth in setting.cloths]
    assert len(setting.units) == rows * columns
    assert cloths.count("plain square") == (rows - 1) * (columns - 1)
    assert cloths.count("side triangle") == 2 * (rows + columns - 2)


def test_a_published_quilt_on_point_has_its_sizes() -> None:
    """In the Garden (free pattern, 2023): 12⅜" blocks, 4 × 5, centre unfinished 70½" × 88", squares 18¾" and 9⅝"."""
    node = node_of(on_point(5, 4, "12 3/8"))
    unfinished = [quote(size + inches(0, 1, 2), Units.INCH) for size in (node.width, node.height)]
    assert unfinished == [inches(70, 1, 2), 88]
    assert (node.side_square, node.corner_square) == (inches(18, 3, 4), inches(9, 5, 8))


def test_a_published_quilt_on_point_with_sashing_has_its_sizes() -> None:
    """Call Me Square (Quilter's World, May 2019, p. 60): 10" blocks, 1" sashing, 4 × 5: 63⅝" × 79¼", 16⅞" and 9⅜"."""
    design = on_point(5, 4, "10", sashing=Sashing("B", inches(1), "A", outer=True))
    node = node_of(design)
    assert [quote(size, Units.INCH) for size in (node.width, node.height)] == [
        inches(63, 5, 8),
        inches(79, 1, 4),
    ]
    assert (node.side_square, node.corner_square) == (inches(16, 7, 8), inches(9, 3, 8))


@given(st.integers(1, 5), st.integers(1, 5))
def test_every_square_has_sashing_on_all_sides_and_a_cornerstone_at_every_corner(
    rows: int, columns: int
) -> None:
    """Squares stand in r + c − 1 slanting rows; each adds a strip on two sides, and each row one more at an end."""
    design = on_point(rows, columns, "2", sashing=Sashing("B", inches(1), "A", outer=True))
    setting = setting_of(design)
    cloths = [cloth.what for cloth in setting.cloths]
    squares, slanting = rows * columns + (rows - 1) * (columns - 1), rows + columns - 1
    assert cloths.count("sashing strip") == 2 * (squares + slanting)
    assert cloths.count("cornerstone") == squares + 2 * slanting + 1


def test_squares_of_the_common_practice_are_accepted() -> None:
    """7¼" squares serve 4¼" units, which need 7.2175"; by the handbook it is 7⅜" (common practice, no source)."""
    design = on_point(2, 2, "4 1/4")
    assert node_of(design).side_square == inches(7, 3, 8)
    stated = on_point(2, 2, "4 1/4", side_square=inches(7, 1, 4))
    assert found(stated) == ()
    assert node_of(stated).side_square == inches(7, 1, 4)
    assert node_of(on_point(2, 2, "4 1/4", fit=TriangleFit.EXACT)).side_square == inches(7, 1, 4)


def test_a_square_that_is_too_small_is_found_with_what_would_do() -> None:
    (finding,) = found(on_point(2, 2, "4 1/4", side_square=inches(7, 1, 8)))
    assert (finding.code, finding.place.key) == ("triangles-too-small", "setting.side_square")
    assert "7.2175" in finding.sentence
    assert '7¼"' in finding.remedy
    (finding,) = found(on_point(2, 2, "4 1/4", corner_square=inches(3)))
    assert finding.place.key == "setting.corner_square"


def test_an_excess_below_five_thousandths_is_ignored() -> None:
    """A 12⅜" block needs 18.7079" at least; a hair less than that is not worth an eighth."""
    least = inches(12, 3, 8) * ROOT_TWO + exact_additions(inches(0, 1, 4))[0]
    assert found(on_point(2, 2, "12 3/8", side_square=least - inches(0, 4, 1000))) == ()
    assert len(found(on_point(2, 2, "12 3/8", side_square=least - inches(0, 6, 1000)))) == 1


def test_the_exact_additions_are_those_of_the_triangles() -> None:
    """¼(2+√2) = 0.853553 and ¼(2+2√2) = 1.207107; the handbook's ⅞" and 1¼" are 0.0214" and 0.0429" generous."""
    side, corner = exact_additions(inches(0, 1, 4))
    assert (float(side), float(corner)) == pytest.approx((1.207107, 0.853553), abs=1e-6)
    assert handbook_additions(inches(0, 1, 4), Units.INCH) == (inches(1, 1, 4), inches(0, 7, 8))
    assert float(inches(1, 1, 4) - side) == pytest.approx(0.0429, abs=1e-4)
    assert float(inches(0, 7, 8) - corner) == pytest.approx(0.0214, abs=1e-4)


def test_another_seam_brings_its_own_additions_up_to_the_next_mark() -> None:
    assert handbook_additions(inches(0, 3, 8), Units.INCH) == (inches(1, 7, 8), inches(1, 3, 8))
    assert handbook_additions(mm("7.5"), Units.METRIC) == (mm(40), mm(30))


def test_metric_squares_follow_from_their_own_seam() -> None:
    design = replace(on_point(2, 2, "4"), units=Units.METRIC, making=default_making(Units.METRIC))
    side = design.recipes[0].finished
    node = node_of(design)
    assert node.side_square == cut_up(side * ROOT_TWO + mm(40), Units.METRIC)
    assert node.corner_square == cut_up(side * ROOT_TWO / 2 + mm(30), Units.METRIC)


def test_oversized_triangles_let_the_squares_float() -> None:
    usual = node_of(on_point(2, 3, "6"))
    node = node_of(on_point(2, 3, "6", TriangleFit.OVERSIZED, float=inches(0, 1, 2)))
    assert (node.width, node.height) == (usual.width + 1, usual.height + 1)
    assert (node.side_square, node.corner_square) == (inches(10, 3, 4), inches(6, 1, 8))


def test_a_square_stands_with_its_top_left_corner_at_the_top() -> None:
    setting = setting_of(on_point(1, 1, "2"))
    top = setting.units[0].motion(0j)
    assert (top.real, top.imag) == pytest.approx((math.sqrt(2), 0))
    right = setting.units[0].motion(2 + 0j)
    assert (right.real, right.imag) == pytest.approx((2 * math.sqrt(2), math.sqrt(2)))


def test_what_is_no_square_of_the_common_size_is_found() -> None:
    design = on_point(1, 1, "2")
    other = design_with("3")
    ways = (*design.colourways[:1], replace(other.colourways[0], code="c", recipe="big"))
    recipes = (*design.recipes, replace(other.recipes[0], name="big"))
    cells = ((Cell("a", 0), Cell("c", 0)),)
    setting = OnPointSet(cells, (), "A", "A", TriangleFit.EXACT, inches(0))
    mixed = replace(design, colourways=ways, recipes=recipes, setting=setting)
    (finding,) = found(mixed)
    assert (finding.code, finding.place.key) == ("cells-not-square", "setting.map")
    assert '3" × 3"' in finding.sentence


def test_plain_cloth_alone_has_no_size() -> None:
    setting = OnPointSet(((ClothCell("A"),),), (), "A", "A", TriangleFit.EXACT, inches(0))
    (finding,) = found(replace(design_with("2"), setting=setting))
    assert finding.code == "size-open"
