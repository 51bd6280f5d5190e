"""The page asks nobody else, keeps its key to itself, and shows again what was done, whatever ends the studio."""

from __future__ import annotations

import json
import re
import urllib.request
from pathlib import Path

from playwright.sync_api import Browser, Page, expect

from quarterturn.studio.guard import TOKEN
from tests.browser.watching import Watched
from tests.studio.drafts import TEXT
from tests.studio.running import Running, running


def title(page: Page, title: str) -> None:
    """See to it that the page shows a design of this title."""
    expect(page.get_by_text(title, exact=True).first).to_be_visible(timeout=60_000)


def retitle(studio: Running, revision: int, title: str) -> None:
    """Do an act from beside the page."""
    act = {"name": "put", "at": "title", "value": title}
    request = urllib.request.Request(
        f"http://127.0.0.1:{studio.port}/api/designs/{studio.design}/acts",
        json.dumps({"revision": revision, "act": act}).encode(),
        {TOKEN: studio.token, "Content-Type": "application/json"},
    )
    with urllib.request.urlopen(request, timeout=15) as answer:
        assert answer.status == 200


def test_the_key_leaves_the_address_and_the_page_can_be_loaded_again(
    window: Watched, studio: Running
) -> None:
    title(window.page, "Rounds")
    assert studio.token not in window.page.url
    window.page.reload()
    title(window.page, "Rounds")
    pages = [url for url in window.requests if "/api/" not in url]
    assert pages
    assert [url for url in pages if studio.token in url] == []


def test_a_page_without_the_key_shows_nothing_of_the_design(chromium: Browser, studio: Running) -> None:
    context = chromium.new_context()
    page = context.new_page()
    page.goto(f"http://127.0.0.1:{studio.port}/#/design/{studio.design}/quilt")
    page.wait_for_load_state("networkidle")
    assert "Rounds" not in page.inner_text("body")
    context.close()


def test_the_whole_address_opens_the_design_in_a_window_that_shows_the_studio_already(
    chromium: Browser, studio: Running
) -> None:
    context = chromium.new_context()
    page = context.new_page()
    page.goto(f"http://127.0.0.1:{studio.port}/")
    expect(page.get_by_text("This page is opened by the whole address")).to_be_visible()
    page.goto(studio.address)
    title(page, "Rounds")
    page.goto(studio.address)
    title(page, "Rounds")
    page.wait_for_url(re.compile(r"#/design/\w+/quilt$"))
    context.close()


def test_what_is_done_elsewhere_is_shown_at_once(window: Watched, studio: Running, design: Path) -> None:
    title(window.page, "Rounds")
    retitle(studio, 0, "Moons")
    title(window.page, "Moons")
    assert design.read_text(encoding="utf-8") == TEXT


def test_what_another_program_writes_is_shown(window: Watched, studio: Running, design: Path) -> None:
    title(window.page, "Rounds")
    design.write_text(TEXT.replace("Rounds", "Theirs"), encoding="utf-8")
    title(window.page, "Theirs")


def test_a_killed_studio_shows_again_what_was_done_and_undoes_it(
    chromium: Browser, tmp_path: Path, design: Path
) -> None:
    state = tmp_path / "killed"
    with running(state, "studio", str(design), "--no-browser") as studio:
        retitle(studio, 0, "Moons")
        studio.process.kill()
    with running(state, "studio", str(design), "--no-browser") as studio:
        context = chromium.new_context(viewport={"width": 1440, "height": 900})
        page = context.new_page()
        page.goto(studio.address)
        title(page, "Moons")
        page.get_by_role("button", name="Undo", exact=False).first.click()
        title(page, "Rounds")
        context.close()


def test_a_second_window_is_told(window: Watched, studio: Running) -> None:
    title(window.page, "Rounds")
    other = window.page.context.new_page()
    other.goto(studio.address)
    for page in (window.page, other):
        expect(page.get_by_text("open in 2 windows").first).to_be_visible(timeout=60_000)
    other.close()
    expect(window.page.get_by_text("open in 2 windows")).to_have_count(0, timeout=60_000)


def test_of_two_texts_the_page_asks_which_goes_on(window: Watched, studio: Running, design: Path) -> None:
    title(window.page, "Rounds")
    retitle(studio, 0, "Ours")
    title(window.page, "Ours")
    design.write_text(TEXT.replace("Rounds", "Theirs"), encoding="utf-8")
    expect(window.page.get_by_text("Two versions").first).to_be_visible(timeout=60_000)
    window.page.get_by_role("button", name="Go on with the file's").click()
    title(window.page, "Theirs")
    window.page.get_by_role("button", name="Undo", exact=False).first.click()
    title(window.page, "Ours")
