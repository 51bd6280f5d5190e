"""The booklet: leaves turned, house style seen at once, templates measured, published and downloaded."""

from __future__ import annotations

import io
import re
import zipfile
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.designing import written
from tests.browser.watching import Watched
from tests.studio.running import Running


@pytest.fixture
def booklet(window: Watched) -> Page:
    """Open the booklet and wait for all of its pages."""
    page = window.page
    page.get_by_role("link", name="Booklet").click()
    expect(page.get_by_text(re.compile(r"^Page 1 of \d+$"))).to_be_visible(timeout=60_000)
    return page


def test_leaves_are_turned_with_keys_and_with_the_mouse(booklet: Page) -> None:
    spread = booklet.get_by_role("group", name=re.compile("^Pages side by side"))
    spread.focus()
    booklet.keyboard.press("ArrowRight")
    expect(booklet.get_by_text(re.compile(r"^Page 2–3 of"))).to_be_visible()
    expect(spread.get_by_role("img", name="Page 2")).to_be_visible()
    wide = spread.get_by_role("img", name="Page 2").bounding_box()
    booklet.keyboard.press("+")
    booklet.wait_for_timeout(200)
    wider = spread.get_by_role("img", name="Page 2").bounding_box()
    assert wide is not None
    assert wider is not None
    assert wider["width"] > 1.2 * wide["width"]
    booklet.get_by_role("button", name="Page 1", exact=True).click()
    expect(booklet.get_by_text(re.compile(r"^Page 1 of"))).to_be_visible()


def test_house_style_shows_at_once(booklet: Page, studio: Running) -> None:
    booklet.get_by_role("button", name="House style").click()
    leaf = booklet.get_by_role("group", name=re.compile("^Pages side by side")).get_by_role("img")
    before = leaf.get_attribute("src")
    booklet.get_by_role("radio", name="A4").check(force=True)
    expect(leaf).to_have_attribute("style", re.compile(r"210\s*/\s*297"), timeout=60_000)
    assert leaf.get_attribute("src") != before
    written(studio, booklet, r"paper = ['\"]a4['\"]")
    booklet.get_by_role("textbox", name="Designer").fill("Wren")
    booklet.get_by_role("textbox", name="Designer").press("Enter")
    written(studio, booklet, r"maker = ['\"]Wren['\"]")
    booklet.get_by_role("radio", name="centimetres and metres").check(force=True)
    written(studio, booklet, r"units = ['\"]metric['\"]")
    expect(booklet.get_by_text("Drafted anew in the other units").last).to_be_visible()


def test_an_inch_of_the_screen_is_made_an_inch(booklet: Page) -> None:
    booklet.get_by_role("tab", name="Templates").click()
    paper = booklet.get_by_role("tabpanel").locator(".paper")
    expect(paper).to_be_visible(timeout=60_000)
    booklet.get_by_role("radio", name="True size").check(force=True)
    expect(paper).to_have_css("width", f"{8.5 * 96:g}px")
    booklet.get_by_role("slider").fill("1.25")
    expect(paper).to_have_css("width", f"{8.5 * 96 * 1.25:g}px")


def test_it_is_published_and_all_of_it_taken(booklet: Page, tmp_path: Path) -> None:
    booklet.get_by_role("tab", name="Publish").click()
    booklet.get_by_role("button", name="Publish", exact=True).click()
    expect(booklet.get_by_text("Published.")).to_be_visible(timeout=90_000)
    with booklet.expect_download() as downloading:
        booklet.get_by_role("link", name="Download booklet.pdf").click()
    pdf = tmp_path / "booklet.pdf"
    downloading.value.save_as(pdf)
    assert pdf.read_bytes().startswith(b"%PDF-")
    with booklet.expect_download() as downloading:
        booklet.get_by_role("link", name=re.compile("^Download all")).click()
    packed = tmp_path / "all.zip"
    downloading.value.save_as(packed)
    names = zipfile.ZipFile(io.BytesIO(packed.read_bytes())).namelist()
    assert {"booklet.pdf", "templates.pdf", "contents.txt"} <= set(names)
    told = booklet.locator(".files li .about").all_inner_texts()
    assert len(told) == len(names)
    assert all(told)


@pytest.mark.parametrize("light", LIGHTS)
def test_nothing_is_in_the_way_of_anyone(booklet: Page, light: Light) -> None:
    lit(booklet, light)
    assert barriers(booklet) == []
    booklet.get_by_role("button", name="House style").click()
    assert barriers(booklet) == []
    for place in ("Templates", "Publish"):
        booklet.get_by_role("tab", name=place).click()
        expect(booklet.get_by_role("tabpanel")).to_be_visible()
        booklet.wait_for_timeout(1500)
        assert barriers(booklet) == []
