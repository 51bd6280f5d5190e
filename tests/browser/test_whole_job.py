"""The whole job in one sitting, from a new design to the booklet in hand: once by mouse, once by keys alone."""

from __future__ import annotations

import io
import json
import re
import time
import zipfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pypdfium2
import pytest
from PIL import Image, ImageDraw
from playwright.sync_api import Browser, Download, Locator, Page, expect

from quarterturn.design import read_design
from tests.browser.watching import Watched
from tests.studio.running import Running, running

PATIENCE = 90_000
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


@pytest.fixture
def sitting(chromium: Browser, tmp_path: Path) -> Iterator[Sitting]:
    """Sit down before the front of the envelope."""
    before = 5_000
    with running(tmp_path / "state", "studio", "--no-browser") as studio:
        context = chromium.new_context(
            viewport={"width": 1440, "height": 900}, reduced_motion="reduce", accept_downloads=True
        )
        context.set_default_timeout(PATIENCE)
        expect.set_options(timeout=PATIENCE)
        watched = Watched(context.new_page())
        watched.watch()
        refused: list[str] = []
        watched.page.on(
            "response",
            lambda answer: refused.append(f"{answer.status} {answer.url}") if answer.status >= 400 else None,
        )
        watched.page.goto(studio.address)
        expect(watched.page.get_by_role("heading", name="A new quilt")).to_be_visible()
        yield Sitting(studio, watched.page)
        context.close()
        expect.set_options(timeout=before)
        assert watched.elsewhere(studio.port) == []
        for search in [each for each in refused if re.fullmatch(r"409 .*/find", each)]:
            refused.remove(search)  # a search ends so when the room is left, or the design has changed
            watched.faults.remove(next(fault for fault in watched.faults if "409 (Conflict)" in fault))
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
    assert len(plans) == 3
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


def begun_by_mouse(sitting: Sitting) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_label("My own size").click()
    page.get_by_label("Width").fill('30"')
    page.get_by_label("Length").fill('30"')
    page.get_by_label("What is it called?").fill(TITLE)
    button("Lay it on the mat").click()
    sitting.laid()


def drafted_by_mouse(sitting: Sitting) -> None:
    page = sitting.page
    page.get_by_role("link", name="Drafting table").click()
    diameter = page.get_by_role("textbox", name="Diameter")
    diameter.fill("9 1/2")
    page.get_by_role("heading", name="The master").click()  # a field is done when it is left
    sitting.written(r"diameter = ['\"]9 1/2")


def painted_by_mouse(sitting: Sitting) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Quilt", exact=True).click()
    sitting.laid()
    before = sitting.words()
    first = page.locator("svg.field use").first
    first.click(force=True)
    sitting.awaited("nothing is turned", lambda: sitting.words() != before)
    button(re.compile("^b: ")).click()
    button("mirrored both ways").click()
    first.click(force=True)
    sitting.awaited("nothing is laid", lambda: sitting.words()[-1][-1].startswith("b"))
    mirrored(sitting.words())


def clothed_by_mouse(sitting: Sitting, photo: Path) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Cloth", exact=True).click()
    button("Bring a photo").click()
    sheet = page.get_by_role("region", name=re.compile("^Photo of A"))
    sheet.get_by_label("Photo, a JPEG").set_input_files(photo)
    drag(page, sheet.get_by_role("button", name=re.compile("^Mark 1")), -60)
    expect(sheet.get_by_role("button", name=re.compile("^Mark 1"))).not_to_have_accessible_name(
        re.compile(r"\b20\b")
    )
    sheet.get_by_label("Between the marks").fill("6")
    sheet.get_by_role("button", name="Use this photo").click()
    sitting.written(
        r"photo_width = "
    )  # whoever is quicker than the sheet, which goes by itself, is not hindered
    button("Colours from a photo").click()
    sheet = page.get_by_role("region", name="Colours from a photo")
    sheet.get_by_label("Photo, a JPEG").set_input_files(photo)
    sheet.get_by_role("button", name=re.compile(r"^Take \d")).click()
    sitting.written(r'colour = "#2[0-9a-f]4')


def found_by_mouse(sitting: Sitting) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Finder").click()
    before = sitting.words()
    page.locator("[role=option]").nth(2).click()
    button("Take it into the quilt").click()
    sitting.awaited("no setting is taken", lambda: sitting.words() != before)


def sized_by_mouse(sitting: Sitting) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Cutting").click()
    button("Add a size").click()
    page.get_by_role("dialog").get_by_role("button", name="Add", exact=True).first.click()
    page.get_by_role("dialog").get_by_role("button", name="Put away").click()
    expect(page.get_by_role("table", name="Sizes side by side").get_by_role("columnheader")).to_have_count(3)
    proved_totals(sitting)


def proved_by_mouse(sitting: Sitting) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Proof").click()
    expect(page.get_by_text(re.compile(r"\d+ checks made"))).to_be_visible()
    page.locator(".card").first.click()
    if page.get_by_role("dialog").count():
        page.get_by_role("dialog").get_by_role("button", name="Put away").click()
    button("Rehearsal").click()
    button("Rehearse").click()
    expect(page.get_by_text("which is nothing")).to_be_visible()
    page.locator(".steps button").last.click()
    rehearsed(page)


def published_by_mouse(sitting: Sitting, folder: Path) -> None:
    page, button = sitting.page, sitting.button
    page.get_by_role("link", name="Booklet").click()
    page.get_by_role("tab", name="Publish").click()
    button("Publish").click()
    expect(page.get_by_text("Published.")).to_be_visible()
    with page.expect_download() as downloading:
        page.get_by_role("link", name=re.compile("^Download all")).click()
    in_hand(downloading.value, folder)


def saved_by_mouse(sitting: Sitting, folder: Path) -> None:
    page, button = sitting.page, sitting.button
    button("Save").click()
    page.get_by_label("Folder and name of the file").fill(str(folder / "plum.toml"))
    button("Save here").click()
    sitting.awaited("it is not saved", lambda: sitting.view()["saved"] is True)
    kept(folder / "plum.toml")


def test_the_whole_job_by_mouse(sitting: Sitting, photo: Path, tmp_path: Path) -> None:
    begun_by_mouse(sitting)
    drafted_by_mouse(sitting)
    painted_by_mouse(sitting)
    clothed_by_mouse(sitting, photo)
    found_by_mouse(sitting)
    sized_by_mouse(sitting)
    proved_by_mouse(sitting)
    published_by_mouse(sitting, tmp_path)
    saved_by_mouse(sitting, tmp_path)


def drag(page: Page, wanted: Locator, across: float) -> None:
    """Drag something across with the mouse."""
    wanted.hover()
    box = wanted.bounding_box()
    assert box
    middle = (box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    page.mouse.move(*middle)
    page.mouse.down()
    page.mouse.move(middle[0] + across, middle[1], steps=5)
    page.mouse.up()


def begun_by_keys(sitting: Sitting) -> None:
    page, keys = sitting.page, sitting.keys
    keys(page.get_by_role("radio", name="For a bed or a cot"), "ArrowRight")
    sitting.write(page.get_by_label("Width"), '30"')
    sitting.write(page.get_by_label("Length"), '30"')
    sitting.write(page.get_by_label("What is it called?"), TITLE)
    page.keyboard.press("Enter")
    sitting.laid()


def drafted_by_keys(sitting: Sitting) -> None:
    page = sitting.page
    page.keyboard.press("Alt+2")
    sitting.write(page.get_by_role("textbox", name="Diameter"), "9 1/2")
    page.keyboard.press("Enter")
    sitting.written(r"diameter = ['\"]9 1/2")


def painted_by_keys(sitting: Sitting) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+1")
    sitting.laid()
    before = sitting.words()
    keys(page.locator("[role=gridcell][tabindex='0']"), "r")
    sitting.awaited("nothing is turned", lambda: sitting.words() != before)
    keys(button(re.compile("^b: ")), "Enter")
    keys(button("mirrored both ways"), "Enter")
    keys(page.locator("[role=gridcell][tabindex='0']"), "Enter", back=True)
    sitting.awaited("nothing is laid", lambda: sitting.words()[-1][-1].startswith("b"))
    mirrored(sitting.words())


def clothed_by_keys(sitting: Sitting, photo: Path) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+3")
    keys(button("Bring a photo"), "Enter")
    sheet = page.get_by_role("region", name=re.compile("^Photo of A"))
    file = sheet.get_by_label(re.compile("^Photo, a JPEG"))
    sitting.reach(file)
    file.set_input_files(photo)
    keys(sheet.get_by_role("button", name=re.compile("^Mark 1")), *["Shift+ArrowLeft"] * 4)
    sitting.write(sheet.get_by_label("Between the marks"), "8")
    expect(sheet.get_by_text('What is shown is 10" × 5" in truth')).to_be_visible()
    keys(sheet.get_by_role("button", name="Use this photo"), "Enter")
    expect(sheet).to_be_hidden()
    sitting.written(r"photo_width = ['\"]10\"")
    keys(button("Colours from a photo"), "Enter")
    sheet = page.get_by_role("region", name="Colours from a photo")
    file = sheet.get_by_label("Photo, a JPEG")
    sitting.reach(file)
    file.set_input_files(photo)
    keys(sheet.get_by_role("button", name=re.compile(r"^Take \d")), "Enter")
    sitting.written(r'colour = "#2[0-9a-f]4')


def found_by_keys(sitting: Sitting) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+4")
    before = sitting.words()
    keys(page.locator("[role=option][aria-selected=true]"), "ArrowRight", "ArrowRight", "Enter")
    keys(button("Take it into the quilt"), "Enter")
    sitting.awaited("no setting is taken", lambda: sitting.words() != before)


def sized_by_keys(sitting: Sitting) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+5")
    keys(button("Add a size"), "Enter")
    keys(page.get_by_role("dialog").get_by_role("button", name="Add", exact=True).first, "Enter")
    sitting.awaited("no size is added", lambda: "crib" in sitting.text())
    page.keyboard.press("Escape")
    expect(page.get_by_role("dialog")).to_have_count(0)
    expect(page.get_by_role("table", name="Sizes side by side").get_by_role("columnheader")).to_have_count(3)
    proved_totals(sitting)


def proved_by_keys(sitting: Sitting) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+6")
    expect(page.get_by_text(re.compile(r"\d+ checks made"))).to_be_visible()
    keys(page.locator(".card").first, "Enter")
    if page.get_by_role("dialog").count():
        page.keyboard.press("Escape")
        expect(page.get_by_role("dialog")).to_have_count(0)
    keys(button("Rehearsal"), "Enter", back=True)
    keys(button("Rehearse"), "Enter")
    expect(page.get_by_text("which is nothing")).to_be_visible()
    keys(page.get_by_role("slider"), "End")
    rehearsed(page)


def published_by_keys(sitting: Sitting, folder: Path) -> None:
    page, button, keys = sitting.page, sitting.button, sitting.keys
    page.keyboard.press("Alt+7")
    keys(page.get_by_role("tab", selected=True), "ArrowLeft")
    keys(button("Publish"), "Enter")
    expect(page.get_by_text("Published.")).to_be_visible()
    link = page.get_by_role("link", name=re.compile("^Download all"))
    sitting.reach(link)
    with page.expect_download() as downloading:
        page.keyboard.press("Enter")
    in_hand(downloading.value, folder)


def saved_by_keys(sitting: Sitting, folder: Path) -> None:
    page = sitting.page
    page.keyboard.press("Control+s")
    sitting.write(page.get_by_label("Folder and name of the file"), str(folder / "plum.toml"))
    page.keyboard.press("Enter")
    sitting.awaited("it is not saved", lambda: sitting.view()["saved"] is True)
    kept(folder / "plum.toml")


def test_the_whole_job_by_keys_alone(sitting: Sitting, photo: Path, tmp_path: Path) -> None:
    begun_by_keys(sitting)
    drafted_by_keys(sitting)
    painted_by_keys(sitting)
    clothed_by_keys(sitting, photo)
    found_by_keys(sitting)
    sized_by_keys(sitting)
    proved_by_keys(sitting)
    published_by_keys(sitting, tmp_path)
    saved_by_keys(sitting, tmp_path)
