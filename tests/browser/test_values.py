"""Values that are no part of the picture are set in their fields by keys alone, and the file says them."""

from __future__ import annotations

import re

from playwright.sync_api import Page, expect

from tests.browser.barriers import barriers
from tests.browser.designing import gone, written
from tests.browser.watching import Watched
from tests.studio.running import Running


def unfolded(page: Page, name: str) -> None:
    """Unfold a table of the sheet by its key."""
    summary = page.locator("summary").filter(has_text=re.compile(f"^{name}$"))
    summary.focus()
    page.keyboard.press("Enter")
    expect(summary.locator("..")).to_have_attribute("open", "")


def test_allowances_are_set_by_keys_and_an_empty_field_is_as_usual(window: Watched, studio: Running) -> None:
    page = window.page
    page.get_by_role("link", name="Cutting").click()
    page.get_by_role("button", name="Allowances").focus()
    page.keyboard.press("Enter")
    unfolded(page, "Allowances and habits")
    slack = page.get_by_label("Slack that is bought")
    expect(slack).to_have_value('2"')
    slack.fill('3 1/2"')
    slack.press("Enter")
    written(studio, page, r"slack = ['\"]3 1/2")
    expect(slack).to_have_value('3 1/2"')
    slack.fill("")
    slack.press("Enter")
    expect(slack).to_have_value('2"')
    gone(studio, page, "slack")
    unfolded(page, "Binding")
    page.get_by_label("Cloth of the binding").select_option("A")
    written(studio, page, r"\[binding\]\s+fabric = ['\"]A")
    assert barriers(page) == []


def test_kits_and_notions_are_added_and_a_wrong_value_is_told_beside_its_row(
    window: Watched, studio: Running
) -> None:
    page = window.page
    page.get_by_role("link", name="Booklet").click()
    page.get_by_role("button", name="Money, kits, classes").click()
    unfolded(page, "Kits")
    page.get_by_role("button", name="Pack kits").press("Enter")
    expect(page.get_by_label("Kits", exact=True)).to_have_value("6")
    unfolded(page, "Notions")
    page.get_by_label("Name 1").fill("glass-headed pins")
    page.get_by_label("How many 1").fill("two")
    page.get_by_role("button", name="Add", exact=True).press("Enter")
    expect(page.locator(".told").first).to_be_visible()
    window.faults = [fault for fault in window.faults if "422" not in fault]  # the browser notes the refusal
    page.get_by_label("How many 1").fill("2")
    page.get_by_role("button", name="Add", exact=True).press("Enter")
    expect(page.get_by_role("button", name="Take out glass-headed pins")).to_be_visible()
    written(studio, page, '"glass-headed pins", count = 2')
    unfolded(page, "Kits")
    page.get_by_role("button", name="No kits").press("Enter")
    expect(page.get_by_role("button", name="Pack kits")).to_be_visible()
    gone(studio, page, r"\[kits\]")
