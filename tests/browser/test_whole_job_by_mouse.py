"""The whole job in one sitting, by mouse."""

from __future__ import annotations

import re
from pathlib import Path

from playwright.sync_api import Locator, Page, expect

from tests.browser.sitting import TITLE, Sitting, in_hand, kept, mirrored, proved_totals, rehearsed


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
    button("Sizes and beds").click()
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
    expect(page.get_by_text("what they sew is the picture")).to_be_visible()
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
