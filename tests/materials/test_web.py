"""Rings in rows across the web."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from time import process_time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.materials import WebPlan
from quarterturn.materials.web import plan_web, rolled_length, web_rows
from quarterturn.measure import Units, inches
from tests.recipe_samples import WHOLE
from tests.samples import ROUNDS, Changed, design_of, pattern_of

EXAMPLES = Path(__file__).parents[2] / "examples"


def web_of(text: str) -> WebPlan:
    """Return the web of a design."""
    return pattern_of(text).materials.web


def rounds(shape: str, making: str = "", finished: str = '4 1/4"') -> str:
    """Return the sample design with another shape and other habits."""
    text = (
        Changed(ROUNDS).with_("{ flow = true }", shape).with_("finished = '2\"'", f"finished = '{finished}'")
    )
    return text.text + (f"\n[making]\n{making}\n" if making else "")


def test_rings_touch_where_lines_are_half_an_inch_apart() -> None:
    """Tracings ½″ apart, cut out ¼″ outside the line (Spin and two more patterns of allpeoplequilt.com)."""
    (rows,) = web_of(rounds("{ diameter = '7\"' }")).rows
    assert (rows.width, rows.height, rows.gap, rows.per_row) == (inches(7, 1, 2), inches(7, 1, 2), 0, 2)


def test_lines_further_apart_leave_a_gap_between_the_rings() -> None:
    web = web_of(rounds("{ diameter = '7\"' }", "tracing_gap = '3/4\"'"))
    (rows,) = web.rows
    assert rows.gap == inches(0, 1, 4)
    assert web.used_length == rows.rows * inches(7, 3, 4) - inches(0, 1, 4)


def test_rings_wider_than_the_gap_between_lines_still_touch_only() -> None:
    """Another habit: rings about 1″ wide (thepatchsmith.blogspot.com, 2022)."""
    (rows,) = web_of(rounds("{ diameter = '7\"' }", "ring_out = '1/2\"'\nring_in = '1/2\"'")).rows
    assert (rows.gap, rows.width) == (0, 8)


def test_every_master_has_its_tracing_spares_included() -> None:
    pattern = pattern_of(rounds("{ diameter = '7\"' }", "spare_masters = 2"))
    (rows,) = pattern.materials.web.rows
    assert rows.count == sum(masters.count for masters in pattern.bill.masters)
    assert sum(masters.spare for masters in pattern.bill.masters) == 4
    assert rows.rows == -(-rows.count // rows.per_row)


def test_a_given_size_has_exactly_its_room() -> None:
    """Two rooms of 8½″ fill 17″: a hair more and each would need a row."""
    (rows,) = web_of(rounds("{ diameter = '8\"' }")).rows
    assert (rows.width, rows.per_row) == (Fraction(17, 2), 2)


def test_web_is_bought_as_a_shop_cuts_it() -> None:
    web = web_of(rounds("{ diameter = '7\"' }"))
    assert web.used_length <= web.bought < web.used_length + inches(4, 1, 2)


def test_a_ring_wider_than_the_web_is_named() -> None:
    design = design_of(rounds("{ diameter = '7\"' }"))
    pattern = pattern_of(rounds("{ diameter = '7\"' }"))
    narrow = replace(design.making, web_width=inches(7))
    web = plan_web(narrow, pattern.blocks, pattern.bill.masters, Units.INCH)
    assert (web.unplaced, web.rows, web.used_length, web.bought) == (("round",), (), 0, 0)


TWO_RECIPES = (
    Changed(ROUNDS)
    .with_(
        "[colourways.a]",
        "[recipes.small]\nkind = \"circle cut both ways\"\nfinished = '2\"'\nshape = { diameter = '1 1/2\"' }\n"
        'curve = "as drawn"\n[colourways.a]',
    )
    .with_('recipe = "round"', 'recipe = "small"')
    .text
)


def test_tall_shapes_come_before_low_ones_with_the_gap_between() -> None:
    text = TWO_RECIPES + "\n[making]\ntracing_gap = '1\"'\n"
    web = web_of(text)
    assert [rows.shape for rows in web.rows] == ["round", "small"]
    first, second = web.rows
    apart = first.rows + second.rows - 1
    heights = first.rows * first.height + second.rows * second.height
    assert web.used_length == heights + apart * inches(0, 1, 2)


SIZES = st.integers(1, 128).map(lambda n: inches(0, n, 8))


@given(SIZES, SIZES, st.integers(1, 300), st.integers(0, 8))
def test_rows_hold_all_tracings_and_no_row_could_hold_one_more(
    width: Fraction, height: Fraction, count: int, gap: int
) -> None:
    apart = inches(0, gap, 8)
    rows = web_rows("round", "round", width, height, count, inches(17), apart)
    across = rows.per_row * width + (rows.per_row - 1) * apart
    assert across <= 17 < across + apart + width
    assert (rows.rows - 1) * rows.per_row < count <= rows.rows * rows.per_row
    assert rolled_length([rows]) == rows.rows * height + (rows.rows - 1) * apart


@pytest.mark.parametrize("diameter", ["3 7/8", "6", "5 3/4"])
def test_no_room_is_rounded(diameter: str) -> None:
    (rows,) = web_of(rounds(f"{{ diameter = '{diameter}\"' }}")).rows
    assert rows.width == sum(map(Fraction, diameter.split())) + inches(0, 1, 2)


def test_every_shape_of_a_recipe_is_traced_for_every_master() -> None:
    """Two leaves and a bloom on each of four squares; equal leaves share a template."""
    rows = pattern_of(WHOLE).materials.web.rows
    assert sorted(group.count for group in rows) == [4, 8]
    assert len({group.shape for group in rows}) == 2
    assert {group.recipe for group in rows} == {"posy"}


SHEETS = "\n[making]\nweb_sheet = ['9\"', '12\"']\n"


def test_sheets_are_counted_and_bought_whole() -> None:
    """A ring of 5½″ by itself fills half of a sheet of 9″ × 12″: two rows of one."""
    pattern = pattern_of(rounds("{ diameter = '5\"' }") + SHEETS)
    web = pattern.materials.web
    (rows,) = web.rows
    assert (web.web_width, web.sheet, web.nested) == (9, 12, None)
    assert (rows.per_row, rows.rows_on_sheet) == (1, 2)
    assert web.sheets == rows.sheets == -(-rows.count // 2)
    assert web.bought == web.used_length == 12 * web.sheets
    line = next(line for line in pattern.materials.shopping if line.key == "web")
    assert (line.sheets, line.length) == (web.sheets, web.bought)


def test_small_rings_share_the_sheets_of_large_ones() -> None:
    apart, nested = web_of(TWO_RECIPES + SHEETS), web_of(TWO_RECIPES)
    assert apart.sheets < apart.plain_length / 12
    assert apart.nested
    assert {place.sheet for place in apart.nested.places} == set(range(apart.sheets))
    assert nested.sheets == 0


def test_rows_that_fill_a_sheet_from_edge_to_edge_share_it_with_rows_of_another_shape() -> None:
    """Of 9″ × 12″, two pears of 6¼″ leave 5¾″: room for two moons of 4″. By themselves they take 4 sheets and 2."""
    web = web_of((EXAMPLES / "pears-in-the-pantry.toml").read_text(encoding="utf-8") + SHEETS)
    assert web.plain_length == 6 * 12
    assert web.sheets == 4
    assert web.nested
    for sheet in range(4):
        on_it = sorted(place.shape for place in web.nested.places if place.sheet == sheet)
        assert on_it == ["moon", "moon", "pear", "pear"]


def test_a_ring_higher_than_a_sheet_has_no_place() -> None:
    pattern = pattern_of(rounds("{ diameter = '7\"' }"))
    making = replace(pattern.design.making, web_sheet=(inches(12), inches(7)))
    web = plan_web(making, pattern.blocks, pattern.bill.masters, Units.INCH)
    assert (web.unplaced, web.sheets, web.bought) == (("round",), 0, 0)


@pytest.mark.parametrize("text", [TWO_RECIPES, TWO_RECIPES + SHEETS, rounds("{ diameter = '5\"' }")])
def test_what_is_used_lies_between_the_bound_and_plain_rows(text: str) -> None:
    web = web_of(text)
    assert 0 < web.bound <= web.used_length <= web.plain_length
    assert web.saved == web.plain_length - web.used_length


def test_centres_are_counted_with_the_largest_disc_that_they_hold() -> None:
    """A disc of 5″ whose ring has ¼″ of web inside leaves a centre of 4½″; a second ring of 5½″ fits none."""
    web = web_of(rounds("{ diameter = '5\"' }"))
    (centre,) = web.centres
    assert (centre.shape, centre.count) == ("round", web.rows[0].count)
    assert (centre.width, centre.height, centre.disc) == (inches(4, 1, 2), inches(4, 1, 2), inches(4, 1, 2))
    assert (centre.holds, centre.fits) == ((), ())


def test_a_centre_tells_which_shapes_of_the_quilt_fit_it() -> None:
    """Nothing less would be bought for nesting here, so the small ring lies in a row; its room is told all the same."""
    web = web_of(TWO_RECIPES.replace("'1 1/2\"'", "'1\"'"))
    assert web.nested is None
    assert [(centre.shape, centre.fits) for centre in web.centres] == [("round", (("small", 1),))]


def test_thousands_of_rings_are_planned_within_a_second() -> None:
    pattern = pattern_of(rounds("{ diameter = '5\"' }"))
    making = replace(pattern.design.making, web_width=inches(10, 1, 4))
    many = [replace(each, count=each.count * 800) for each in pattern.bill.masters]
    start = process_time()
    web = plan_web(making, pattern.blocks, many, Units.INCH)
    assert process_time() - start < 1
    (rows,) = web.rows
    assert rows.stagger
    assert rows.count > 1000
