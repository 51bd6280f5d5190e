"""One sitting before the page, from a new design to the booklet in hand: what is done, and what came of it."""

from __future__ import annotations

import io
import json
import re
import time
import zipfile
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pypdfium2
from PIL import Image
from playwright.sync_api import Download, Locator, Page, expect

from quarterturn.design import read_design
from tests.browser.watching import PATIENCE
from tests.studio.running import Running

TITLE = "Plum Jam"
CODE = re.compile(r"^(\w+?)([0-3])$")


@dataclass
class Sitting:
    """A person before the page: what is seen of it, and what the studio has of the design."""

    studio: Running
    page: Page

    def view(self, what: str = "") -> dict[str, object]:
        """Return what the studio tells of the design that is open."""
        found = re.search(r"#/design/(\w+)/", self.page.url)
        assert found, self.page.url
        told: dict[str, object] = json.loads(self.studio.get(f"/api/designs/{found[1]}{what}")[1])
        return told

    def text(self) -> str:
        return str(self.view()["text"])

    def awaited(self, what: str, holds: Callable[[], bool]) -> None:
        """Wait until something holds, however busy the machine is."""
        end = time.monotonic() + PATIENCE / 1000
        while not holds():
            assert time.monotonic() < end, f"{what}:\n{self.text()}"
            self.page.wait_for_timeout(100)

    def written(self, wanted: str) -> None:
        """Wait until the design says something."""
        self.awaited(f"{wanted!r} does not come", lambda: bool(re.search(wanted, self.text())))

    def words(self) -> list[list[str]]:
        """Return the rows of the map."""
        sections = self.view()["sections"]
        assert isinstance(sections, list)
        rows: list[list[str]] = sections[0]["words"]
        return rows

    def laid(self) -> None:
        """Wait until the quilt lies on the mat and nothing moves any more."""
        expect(self.page.get_by_role("heading", name=TITLE, level=1)).to_be_visible()
        expect(self.page.locator("svg.field use[href]").first).to_be_attached()
        expect(self.page.get_by_text("Cloth to buy")).to_be_visible()

    def reach(self, wanted: Locator, *, back: bool = False) -> None:
        """Go to something by Tab alone."""
        expect(wanted).to_be_visible()
        for _ in range(250):
            if wanted.evaluate("node => node === document.activeElement"):
                return
            self.page.keyboard.press("Shift+Tab" if back else "Tab")
        raise AssertionError(f"Tab does not reach {wanted}")

    def keys(self, wanted: Locator, *keys: str, back: bool = False) -> None:
        """Go to something by Tab, and press keys on it."""
        self.reach(wanted, back=back)
        for key in keys:
            self.page.keyboard.press(key)

    def write(self, wanted: Locator, text: str) -> None:
        """Go to a field by Tab, and write over what is in it."""
        self.keys(wanted, "Control+a")
        self.page.keyboard.type(text)

    def button(self, name: str | re.Pattern[str]) -> Locator:
        return self.page.get_by_role("button", name=name, exact=isinstance(name, str))


def mirrored(rows: list[list[str]]) -> None:
    """See to it that the four corners are one unit, each turned its own way about the middle."""
    corners = [CODE.match(rows[down][across]) for down, across in ((0, 0), (0, -1), (-1, -1), (-1, 0))]
    assert all(corners)
    assert [corner[1] for corner in corners if corner] == ["b"] * 4
    assert [corner[2] for corner in corners if corner] == ["0", "1", "2", "3"]


def proved_totals(at: Sitting) -> None:
    """Read the totals: each fabric's is on the page as the studio has it, and proved."""
    expect(at.page.get_by_text("These plans are proved.")).to_be_visible()
    table = at.page.get_by_role("table", name="What is bought, fabric by fabric")
    plans = at.view("/cutting")["plans"]
    assert isinstance(plans, list)
    letters = [plan["letter"] for plan in plans]
    assert letters == list("ABCD")  # the setting that was taken has circles of B and D on A, and C binds it
    for plan in plans:
        row = table.get_by_role("row").filter(has=at.button(re.compile(f"^{plan['letter']} ")))
        expect(row.locator("td").first).to_contain_text(re.compile(r"[\d¼½¾⅛⅜⅝⅞]"))
        expect(row.locator("td").first).to_contain_text(plan["bought"]["text"])


def rehearsed(page: Page) -> None:
    """See to it that the rehearsal stands at its last step and came out as the quilt."""
    expect(page.get_by_text(re.compile(r"^step (\d+) of \1$"))).to_be_visible()
    expect(page.get_by_role("button", name="Step on")).to_be_disabled()
    expect(page.locator(".table").first).to_contain_text("quilt")


def in_hand(download: Download, folder: Path) -> None:
    """Open what was downloaded and leaf through the booklet."""
    packed = folder / "all.zip"
    download.save_as(packed)
    with zipfile.ZipFile(packed) as bundle:
        assert bundle.testzip() is None
        names = bundle.namelist()
        assert {"booklet.pdf", "contents.txt"} <= set(names), names
        booklet = pypdfium2.PdfDocument(io.BytesIO(bundle.read("booklet.pdf")))
    try:
        assert len(booklet) > 5
        assert TITLE.casefold() in booklet[0].get_textpage().get_text_bounded().casefold()
    finally:
        booklet.close()


def kept(file: Path) -> None:
    """Read the design that was saved, which holds all that was done to it."""
    text = file.read_text(encoding="utf-8")
    reading = read_design(text, file.name)
    assert not reading.findings
    design = reading.design
    assert design
    assert design.title == TITLE
    assert re.search(r"diameter = ['\"]9 1/2", text)
    assert [size.size for size in design.sizes] == ["crib"]
    photo = next(fabric.photo for fabric in design.fabrics if fabric.letter == "A")
    assert photo
    assert photo.width
    with Image.open(file.parent / photo.file) as picture:
        assert picture.width == 2 * picture.height
