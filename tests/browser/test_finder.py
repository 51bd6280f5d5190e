"""The finder: settings looked for, looked at large and taken, with the mouse and with keys alone."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.designing import text_of, until
from tests.browser.watching import Watched
from tests.studio.running import Running


@pytest.fixture
def sheet(window: Watched) -> Page:
    """Go to the finder and wait for its sheet."""
    page = window.page
    page.get_by_role("link", name="Finder").click()
    expect(page.get_by_role("option").first).to_be_visible(timeout=60_000)
    return page


def test_a_setting_is_taken_with_the_mouse_and_undone(sheet: Page, studio: Running) -> None:
    before = text_of(studio)
    expect(sheet.get_by_role("status").filter(has_text="different settings")).to_be_visible()
    sheet.get_by_role("option").nth(2).click()
    look = sheet.get_by_role("region", name="Setting 3, looked at large")
    expect(look.get_by_role("img", name="The quilt as it would be with setting 3")).to_be_visible()
    look.get_by_role("button", name="Take it into the quilt").click()
    expect(sheet.get_by_role("button", name="Undo")).to_be_enabled(timeout=60_000)
    until(studio, sheet, lambda text: text != before)
    expect(look.get_by_text("The quilt lies so now.")).to_be_visible()
    expect(look.get_by_role("link", name="See it in the quilt")).to_be_visible()
    sheet.keyboard.press("Control+z")
    expect(sheet.get_by_role("button", name="Undo")).to_be_disabled(timeout=60_000)
    until(studio, sheet, lambda text: text == before)


def test_keys_alone_go_over_the_sheet_and_take(sheet: Page, studio: Running) -> None:
    before = text_of(studio)
    sheet.get_by_role("option").first.focus()
    sheet.keyboard.press("ArrowRight")
    expect(sheet.get_by_role("option", selected=True)).to_have_accessible_name(re.compile("^Setting 2,"))
    sheet.keyboard.press("Enter")
    expect(sheet.get_by_role("region", name="Setting 2, looked at large")).to_be_visible()
    sheet.keyboard.press("ArrowDown")
    expect(sheet.get_by_role("region", name="Setting 3, looked at large")).to_be_visible()
    sheet.keyboard.press("Tab")
    expect(sheet.get_by_role("button", name="Back to the sheet")).to_be_focused()
    sheet.keyboard.press("Tab")
    sheet.keyboard.press("Enter")
    expect(sheet.get_by_role("button", name="Undo")).to_be_enabled(timeout=60_000)
    until(studio, sheet, lambda text: text != before)


def test_another_block_is_another_search(sheet: Page) -> None:
    told = sheet.get_by_role("status").filter(has_text="among")
    before = told.inner_text()
    sheet.get_by_role("radio", name="1 × 1").check(force=True)
    expect(told).not_to_have_text(before, timeout=60_000)
    sheet.get_by_role("radio", name="1 × 1").press("ArrowRight")
    expect(told).to_have_text(before, timeout=60_000)


@pytest.mark.parametrize("light", LIGHTS)
def test_nothing_is_in_the_way_of_anyone(sheet: Page, light: Light) -> None:
    lit(sheet, light)
    assert barriers(sheet) == []
    sheet.get_by_text("What the numbers mean").click()
    assert barriers(sheet) == []
    sheet.get_by_role("option").first.click()
    expect(sheet.get_by_role("button", name="Take it into the quilt")).to_be_enabled()
    assert barriers(sheet) == []
