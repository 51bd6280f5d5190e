"""The contact sheet: every setting is drawn as it is sewn, three times each way, with its number."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Symmetry, laid
from quarterturn.geometry import Motion
from quarterturn.publish import Sheet, Text, Use, sheet_svg, sheets_pdf
from quarterturn.publish.contact import contact_pages, contact_sheet
from quarterturn.setting.finder import Selection, find_settings
from tests.samples import ROUNDS, design_of

DESIGN = design_of(ROUNDS)
BLOCKS = draft_blocks(DESIGN)


def found(symmetry: Symmetry, most: int) -> Selection:
    return find_settings(DESIGN, BLOCKS, ("a", "b"), 2, symmetry, most)


def words(sheet: Sheet) -> list[str]:
    return [mark.text for mark in sheet.marks if isinstance(mark, Text)]


def uses(sheet: Sheet) -> list[Use]:
    return [mark for mark in sheet.marks if isinstance(mark, Use)]


@pytest.mark.parametrize("symmetry", Symmetry)
def test_each_setting_is_laid_three_times_each_way(symmetry: Symmetry) -> None:
    selection = found(symmetry, 4)
    sheet = contact_sheet(DESIGN, BLOCKS, selection)
    side = 3 * selection.repeat
    assert len(uses(sheet)) == 4 * side * side * 2
    rows = laid(selection.best[0].cells, symmetry, 3, 3)
    grounds = [f"{unit.code}-ground" for row in rows for unit in row]
    assert [use.symbol for use in uses(sheet)[: side * side]] == grounds


def test_units_are_turned_and_lie_side_by_side() -> None:
    selection = found(Symmetry.SLIDE, 1)
    sheet = contact_sheet(DESIGN, BLOCKS, selection)
    first, second = (use.motion for use in uses(sheet)[:2])
    assert isinstance(first, Motion)
    assert first.factor == 1j ** selection.best[0].cells[0][0].turn
    cell = (second.move - first.move).real
    assert 6 * cell == pytest.approx((sheet.width - 2 * 10 - 2 * 6) / 3)


def test_every_setting_has_its_number_and_score() -> None:
    selection = found(Symmetry.SLIDE, 5)
    said = words(contact_sheet(DESIGN, BLOCKS, selection))
    assert [word for word in said if word.isdigit()] == ["1", "2", "3", "4", "5"]
    assert f"score {selection.best[0].score.total:.1f}" in said


def test_pages_hold_nine_settings_and_say_which_page_they_are() -> None:
    pages = contact_pages(DESIGN, BLOCKS, found(Symmetry.SLIDE, 20))
    assert [sum(word.isdigit() for word in words(page)) for page in pages] == [9, 9, 2]
    assert "page 2 of 3" in words(pages[1])
    lowest = max(mark.at.imag for page in pages for mark in page.marks if isinstance(mark, Text))
    assert lowest < pages[0].height - 10


def test_the_pages_are_a_pdf_and_the_sheet_an_svg_and_equal_each_time() -> None:
    selection = found(Symmetry.TURN, 2)
    pages = contact_pages(DESIGN, BLOCKS, selection)
    assert sheets_pdf(pages, "Settings") == sheets_pdf(contact_pages(DESIGN, BLOCKS, selection), "Settings")
    svg = sheet_svg(contact_sheet(DESIGN, BLOCKS, selection))
    assert svg.startswith(("<svg", "<?xml"))
