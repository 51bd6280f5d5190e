"""The figure of a binding on the bias is to scale, and its tube is made of the rows that it is cut into."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.geometry import as_polygon, region_bounds
from quarterturn.publish import Area, Sheet
from quarterturn.publish.figures import bias_figure
from quarterturn.publish.lettering import text_width
from quarterturn.publish.sheet import Text
from quarterturn.steps import CutBias, Step
from tests.samples import ROUNDS, Changed, pattern_of

SMALL, LARGE = (1, 1), (30, 40)
WIDTH = 165.0


@cache
def drawn(repeats: tuple[int, int]) -> tuple[Sheet, Step]:
    laid = f'kind = "straight"\nacross = {repeats[0]}\ndown = {repeats[1]}'
    words = Changed(ROUNDS).with_('kind = "straight"', laid).text
    pattern = pattern_of(Changed(words).with_("[binding]", '[binding]\nkind = "bias"').text)
    step = next(step for step in pattern.steps.steps if isinstance(step.action, CutBias))
    return bias_figure(pattern, step, WIDTH), step


def areas(sheet: Sheet) -> list[float]:
    """Return the areas of the sheet, the slanting piece, what is cut off it, and what is seen of each row."""
    plates = 3.6 * 3.6
    found = [as_polygon(mark.region).area for mark in sheet.marks if isinstance(mark, Area)]
    return [area for area in found if abs(area - plates) > 1e-6]


@pytest.mark.parametrize("repeats", [SMALL, LARGE])
def test_the_sheet_and_the_slanting_piece_are_to_one_scale(repeats: tuple[int, int]) -> None:
    sheet, step = drawn(repeats)
    assert isinstance(step.action, CutBias)
    whole, slanting, over, *_ = areas(sheet)
    boxes = [region_bounds(mark.region) for mark in sheet.marks if isinstance(mark, Area)]
    short, along = sorted((boxes[0].width, boxes[0].height))
    assert whole == pytest.approx(short * along)
    seam = (along - slanting / short) / 2
    row = (slanting - over) / short / step.action.rows
    assert row / seam == pytest.approx(float(step.action.strip_width) * 2**0.5 / float(step.action.seam))


@pytest.mark.parametrize("repeats", [SMALL, LARGE])
def test_the_front_of_the_tube_is_half_of_what_is_sewn_but_for_the_row_at_its_end(
    repeats: tuple[int, int],
) -> None:
    sheet, step = drawn(repeats)
    assert isinstance(step.action, CutBias)
    _, slanting, over, *rest = areas(sheet)
    boxes = [region_bounds(mark.region) for mark in sheet.marks if isinstance(mark, Area)]
    short, along = sorted((boxes[0].width, boxes[0].height))
    seam = (along - slanting / short) / 2
    rows = rest[:-1]  # the last area is the tip of the arrow
    sewn = (slanting - over) * (short - 2 * seam) / short
    assert abs(sum(rows) - sewn / 2) <= sewn / step.action.rows / 2


@pytest.mark.parametrize("repeats", [SMALL, LARGE])
def test_the_lettering_stays_inside_and_the_figure_fits_its_page(repeats: tuple[int, int]) -> None:
    sheet, _ = drawn(repeats)
    assert sheet.width <= WIDTH + 2
    for mark in sheet.marks:
        if isinstance(mark, Text):
            reach = text_width(mark.text, mark.size, bold=mark.bold)
            left = {"start": 0.0, "middle": reach / 2, "end": reach}[mark.anchor]
            assert mark.at.real - left >= -0.5
            assert mark.at.real - left + reach <= sheet.width + 0.5
            assert 0 <= mark.at.imag <= sheet.height
