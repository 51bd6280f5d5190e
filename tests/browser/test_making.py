"""Making: steps ticked off at the sewing table, which stay ticked, and are printed as a list."""

from __future__ import annotations

import json
import re

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.watching import Watched
from tests.studio.running import Running

TOUCH = 44
"""Pixels that a target of a finger has at least (WCAG 2.2, 2.5.5)."""


def done(studio: Running, page: Page, wanted: int) -> None:
    """See to it that so many ticks come to be kept: the page shows them before."""
    for _ in range(600):
        if json.loads(studio.get(f"/api/designs/{studio.design}/making")[1])["done"] == wanted:
            return
        page.wait_for_timeout(100)
    raise AssertionError(f"{wanted} ticks are not kept")


@pytest.fixture
def making(window: Watched) -> Page:
    """Go to the sewing table."""
    page = window.page
    page.get_by_role("link", name="Making").click()
    expect(page.get_by_role("button", name="Done, and next")).to_be_visible(timeout=60_000)
    return page


def test_what_is_done_stays_done_when_the_window_is_closed(making: Page, studio: Running) -> None:
    for n in (1, 2, 3):
        making.get_by_role("button", name="Done, and next").click()
        expect(making.get_by_text(re.compile(f"^{n} of .* done$"))).to_be_visible()
    done(studio, making, 3)
    making.reload()
    expect(making.get_by_text(re.compile("step 4 of "))).to_be_visible(timeout=60_000)
    making.get_by_role("button", name="Begin anew").click()
    making.get_by_role("button", name="Take all 3 ticks away?").click()
    expect(making.get_by_text(re.compile("^0 of .* done$"))).to_be_visible()
    done(studio, making, 0)


def test_keys_alone_go_through_the_work(making: Page, studio: Running) -> None:
    making.get_by_role("button", name="Done, and next").focus()
    making.keyboard.press("Enter")
    expect(making.get_by_text(re.compile("step 2 of "))).to_be_visible()
    making.keyboard.press("ArrowRight")
    expect(making.get_by_text(re.compile("step 3 of "))).to_be_visible()
    making.keyboard.press("ArrowLeft")
    making.keyboard.press("ArrowLeft")
    expect(making.get_by_role("checkbox", name="Done")).to_be_checked()
    making.get_by_role("checkbox", name="Done").press(" ")
    expect(making.get_by_text(re.compile("^0 of .* done$"))).to_be_visible()
    done(studio, making, 0)


def test_chapters_of_cutting_and_ironing_say_what_to_take_care_of(making: Page) -> None:
    expect(making.get_by_role("complementary", name="Take care")).to_contain_text("Rotary cutter")
    making.get_by_role("button", name=re.compile("^Fusing")).click()
    expect(making.get_by_role("complementary", name="Take care")).to_contain_text("Iron")


def test_it_is_for_fingers_and_for_reading_from_afar(chromium: Browser, studio: Running) -> None:
    context = chromium.new_context(viewport={"width": 768, "height": 1024}, has_touch=True)
    page = context.new_page()
    page.goto(studio.address)
    page.get_by_role("link", name="Making").click()
    expect(page.get_by_role("button", name="Done, and next")).to_be_visible(timeout=60_000)
    for target in page.locator(".making button:visible, .making .tick").all():
        box = target.bounding_box()
        assert box is not None
        assert min(box["width"], box["height"]) >= TOUCH, target.inner_text()
    size = page.locator(".making .words").first.evaluate(
        "words => parseFloat(getComputedStyle(words).fontSize)"
    )
    assert size >= 28
    wide = page.evaluate("document.documentElement.scrollWidth")
    assert wide <= 768
    context.close()


def test_the_whole_work_is_printed_with_its_figures(making: Page) -> None:
    making.emulate_media(media="print")
    making.evaluate("dispatchEvent(new Event('beforeprint'))")
    expect(making.get_by_role("heading", name="Finishing")).to_be_visible()
    expect(making.get_by_role("figure").first).to_be_visible()
    expect(making.get_by_role("navigation", name="Rooms")).to_be_hidden()
    assert len(making.pdf()) > 50_000


@pytest.mark.parametrize("light", LIGHTS)
def test_nothing_is_in_the_way_of_anyone(making: Page, light: Light) -> None:
    lit(making, light)
    assert barriers(making) == []
    making.get_by_role("radio", name="The whole list").check(force=True)
    expect(making.get_by_role("heading", name=re.compile("^Finishing"))).to_be_visible()
    assert barriers(making) == []


def test_ticks_made_in_haste_are_kept_in_their_order(making: Page, studio: Running) -> None:
    box = making.get_by_role("checkbox", name="Done", exact=True)
    for _ in range(7):
        box.press(" ")
    expect(box).to_be_checked()
    done(studio, making, 1)
    for _ in range(7):
        box.press(" ")
    expect(box).not_to_be_checked()
    done(studio, making, 0)
    making.wait_for_timeout(500)
    expect(making.get_by_text(re.compile("^0 of .* done$"))).to_be_visible()
