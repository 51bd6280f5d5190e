"""Real Chromium on the real page of a real studio, with nothing else to reach.

Every test gets a studio with a state folder of its own, and a window in which every request, every word of the console
and every breach of the page's policy is kept; at its end there must have been no request to anywhere else and no fault.
"""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageDraw
from playwright.sync_api import Browser, Page, expect, sync_playwright

from quarterturn.studio.page_files import INDEX, PAGE
from tests.browser.sitting import Sitting
from tests.browser.watching import PATIENCE, Watched
from tests.studio.drafts import file_of
from tests.studio.forking import forked
from tests.studio.running import Running

expect.set_options(timeout=PATIENCE)

NAMES = ("chromium", "chromium-browser")
ARGUMENTS = [
    "--no-sandbox",  # the tests may be run as root, which has no sandbox
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-dev-shm-usage",
]


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """Start the browser."""
    found = next((path for name in NAMES if (path := shutil.which(name))), None)
    assert found, "the tests of the page need Chromium; ./check installs it, or says how"
    assert (PAGE / INDEX).is_file(), "the page has not been built; ./check and ./quarterturn studio build it"
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=found, args=ARGUMENTS)
        yield browser
        browser.close()


@pytest.fixture
def design(tmp_path: Path) -> Path:
    """Return the file of a small design."""
    return file_of(tmp_path)


@pytest.fixture
def studio(tmp_path: Path, design: Path) -> Iterator[Running]:
    """Start a studio with the design open."""
    with forked(tmp_path / "state", "studio", str(design), "--no-browser") as studio:
        yield studio


@pytest.fixture
def window(chromium: Browser, studio: Running) -> Iterator[Watched]:
    """Open the page in a window of its own."""
    context = chromium.new_context(
        viewport={"width": 1440, "height": 900}, reduced_motion="reduce", accept_downloads=True
    )
    context.set_default_timeout(PATIENCE)
    watched = Watched(context.new_page())
    watched.watch()
    refused = refusals(watched.page)
    watched.page.goto(studio.address)
    watched.page.wait_for_load_state("load")
    yield watched
    context.close()
    assert watched.elsewhere(studio.port) == []
    forgive_searches(watched, refused)
    assert watched.faults == []


def refusals(page: Page) -> list[str]:
    """Return a list that takes in every answer that is a refusal."""
    refused: list[str] = []
    page.on(
        "response",
        lambda answer: refused.append(f"{answer.status} {answer.url}") if answer.status >= 400 else None,
    )
    return refused


def forgive_searches(watched: Watched, refused: list[str]) -> None:
    """Take out the searches that ended since the room was left, or the design changed: the browser notes them."""
    for search in [each for each in refused if re.fullmatch(r"409 .*/find", each)]:
        refused.remove(search)
        watched.faults.remove(next(fault for fault in watched.faults if "409 (Conflict)" in fault))


@pytest.fixture
def sitting(chromium: Browser, tmp_path: Path) -> Iterator[Sitting]:
    """Sit down before the front of the envelope."""
    with forked(tmp_path / "state", "studio", "--no-browser") as studio:
        context = chromium.new_context(
            viewport={"width": 1440, "height": 900}, reduced_motion="reduce", accept_downloads=True
        )
        context.set_default_timeout(PATIENCE)
        watched = Watched(context.new_page())
        watched.watch()
        refused = refusals(watched.page)
        watched.page.goto(studio.address)
        expect(watched.page.get_by_role("heading", name="A new quilt")).to_be_visible()
        yield Sitting(studio, watched.page)
        context.close()
        assert watched.elsewhere(studio.port) == []
        forgive_searches(watched, refused)
        assert (watched.faults, refused) == ([], [])


@pytest.fixture
def photo(tmp_path: Path) -> Path:
    """Return a photo of a print, twice as wide as it is high."""
    picture = Image.new("RGB", (800, 400), "#244a6b")
    pen = ImageDraw.Draw(picture)
    pen.rectangle((400, 0, 800, 400), fill="#e8c46a")
    for x in range(40, 800, 160):
        pen.ellipse((x, 150, x + 80, 230), fill="#b5442f")
    file = tmp_path / "print.png"
    picture.save(file, "PNG")
    return file
