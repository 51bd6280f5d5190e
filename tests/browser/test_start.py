"""The front of the envelope: begin, open, go on, take apart."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.watching import Watched


@pytest.fixture
def page(window: Watched) -> Page:
    """Return the page at the front of the envelope."""
    expect(window.page.get_by_text("Cloth to buy")).to_be_visible(timeout=60_000)
    window.page.keyboard.press("Alt+0")
    expect(window.page.get_by_role("heading", name="A new quilt")).to_be_visible(timeout=60_000)
    return window.page


def on_the_mat(page: Page, title: str) -> None:
    """See to it that a design of this title lies on the mat."""
    expect(page.get_by_role("heading", name=title, level=1)).to_be_visible(timeout=60_000)
    expect(page.locator("svg.field use[href]").first).to_be_attached(timeout=60_000)


def test_three_choices_lay_a_quilt_on_the_mat(page: Page) -> None:
    page.get_by_label("My own size").check()
    page.get_by_label("Width").fill('40"')
    page.get_by_label("Length").fill('50"')
    page.get_by_label("orchard").check(force=True)
    page.get_by_label("What is it called?").fill("Plum Jam")
    page.get_by_role("button", name="Lay it on the mat").click()
    on_the_mat(page, "Plum Jam")


def test_what_the_choices_come_to_is_told_before_it_is_begun(page: Page, window: Watched) -> None:
    page.get_by_label("My own size").check()
    page.get_by_label("Width").fill("40")
    page.get_by_label("Length").fill("48")
    told = page.locator("form .comes")
    expect(told).to_have_text('Comes to 39" × 49", 48 units.', timeout=60_000)
    page.get_by_label("Width").fill("5000")
    expect(told).to_contain_text("larger than any", timeout=60_000)
    window.faults[:] = [fault for fault in window.faults if "422" not in fault]


def test_an_example_is_opened_as_a_copy(page: Page) -> None:
    page.get_by_role("button", name="Late Peonies").click()
    on_the_mat(page, "Late Peonies")
    expect(page.get_by_text("Kept here, no file yet")).to_be_visible()


def test_what_was_open_lies_on_the_table_lately(page: Page) -> None:
    page.locator(".recent button", has_text="Rounds").click()
    on_the_mat(page, "Rounds")


def test_a_file_is_opened_by_its_name(page: Page, design: Path) -> None:
    page.get_by_label("Folder and name of a design file").fill(str(design))
    page.get_by_role("button", name="Open", exact=True).click()
    on_the_mat(page, "Rounds")


def test_a_file_that_is_not_there_is_told(page: Page, window: Watched, tmp_path: Path) -> None:
    page.get_by_label("Folder and name of a design file").fill(str(tmp_path / "none.toml"))
    page.get_by_role("button", name="Open", exact=True).click()
    expect(page.get_by_role("alert")).to_be_visible(timeout=60_000)
    window.faults[:] = [
        fault for fault in window.faults if "404" not in fault
    ]  # the browser notes the refusal


def test_the_tour_goes_round_by_keys(page: Page) -> None:
    page.get_by_role("button", name="Show me round").focus()
    page.keyboard.press("Enter")
    for _ in range(4):
        page.get_by_role("button", name="Next", exact=True).press("Enter")
    expect(page.get_by_role("dialog", name="The envelope")).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.get_by_role("button", name="Show me round")).to_be_focused()


@pytest.mark.parametrize("light", LIGHTS)
def test_the_front_is_open_to_everyone(page: Page, light: Light) -> None:
    lit(page, light)
    assert barriers(page, good_practice=True) == []
