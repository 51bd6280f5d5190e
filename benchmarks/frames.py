"""Time frames: how long each takes while a large quilt is painted, zoomed and moved in real Chromium.

A frame is the time between two calls of requestAnimationFrame: it tells what the page's own work delays, and not how
late the pixels come that Chromium draws beside it.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median, quantiles
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

from benchmarks.timing import Row
from quarterturn.studio.page_files import INDEX, PAGE
from tests.studio.running import running

if TYPE_CHECKING:
    from playwright.sync_api import Page

NAMES = ("chromium", "chromium-browser")
ROUNDS = 8
STEPS = 12
PATIENCE = 120_000
BEGUN = 3000
"""So long the first figures are still being reckoned."""
DRAWN = 150
"""So many milliseconds after the quilt has been read again it is drawn; any longer counts frames with nothing to do."""

FRAME = 16

WATCH = """() => {
  const frames = (window.frames_seen = []);
  let last = performance.now();
  const tick = (now) => { frames.push(now - last); last = now; window.frames_next = requestAnimationFrame(tick); };
  window.frames_next = requestAnimationFrame((now) => {
    last = now;
    window.frames_next = requestAnimationFrame(tick);
  });
}"""
ENOUGH = "() => { cancelAnimationFrame(window.frames_next); return window.frames_seen; }"


class NoBrowserError(Exception):
    """Nothing to look with: Chromium or the built page is missing."""


def frame_rows(file: Path) -> list[Row]:
    """Return the frames of strokes, of zooming and of moving, with the slowest of twenty and the worst as notes."""
    with _window(file) as page:
        page.locator("svg use").first.wait_for(timeout=PATIENCE)
        page.wait_for_timeout(BEGUN)
        return [
            _row("painting, and reading it again", _frames(page, _painting)),
            _row("zooming", _frames(page, _zooming)),
            _row("moving", _frames(page, _moving)),
        ]


def _row(name: str, frames: list[float]) -> Row:
    late = quantiles(frames, n=20)[-1]
    note = f"p95 {late:.1f} ms, worst {max(frames):.1f} ms, {len(frames)} frames"
    return Row(name, median(frames), min(frames), note)


def _frames(page: Page, deed: Callable[[Page, float, float], None]) -> list[float]:
    """Do something again and again, and return how long the frames took."""
    box = page.locator(".mat").first.bounding_box()
    assert box
    page.evaluate(WATCH)
    for _ in range(ROUNDS):
        deed(page, box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    found: list[float] = page.evaluate(ENOUGH)
    return found


def _painting(page: Page, x: float, y: float) -> None:
    with page.expect_response("**/quilt", timeout=PATIENCE):
        page.mouse.move(x - 60, y - 60)
        page.mouse.down()
        page.mouse.move(x + 60, y + 60, steps=STEPS)
        page.mouse.up()
    page.wait_for_timeout(DRAWN)


def _zooming(page: Page, x: float, y: float) -> None:
    page.mouse.move(x, y)
    page.keyboard.down("Control")
    for by in (-15, 15):
        for _ in range(STEPS):
            page.mouse.wheel(0, by)
            page.wait_for_timeout(FRAME)
    page.keyboard.up("Control")


def _moving(page: Page, x: float, y: float) -> None:
    page.mouse.move(x, y)
    page.mouse.down(button="middle")
    for step in (*range(STEPS), *reversed(range(STEPS))):
        page.mouse.move(x + 20 * step, y + 10 * step)
        page.wait_for_timeout(FRAME)
    page.mouse.up(button="middle")


@contextmanager
def _window(file: Path) -> Iterator[Page]:
    from playwright.sync_api import sync_playwright

    found = next((path for name in NAMES if (path := shutil.which(name))), None)
    if not found or not (PAGE / INDEX).is_file():
        raise NoBrowserError("no Chromium, or no built page: ./check installs the one and builds the other")
    with TemporaryDirectory() as folder, sync_playwright() as playwright:
        own = Path(shutil.copy(file, folder))
        with running(Path(folder) / "state", "studio", str(own), "--no-browser") as studio:
            browser = playwright.chromium.launch(
                executable_path=found, args=["--no-sandbox", "--disable-dev-shm-usage"]
            )
            page = browser.new_page(viewport={"width": 1440, "height": 900})
            page.goto(studio.address)
            yield page
            browser.close()
