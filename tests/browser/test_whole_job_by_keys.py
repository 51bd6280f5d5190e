"""The whole job in one sitting, by keys alone."""

from __future__ import annotations

import re
from pathlib import Path

from playwright.sync_api import expect

from tests.browser.sitting import TITLE, Sitting, in_hand, kept, mirrored, proved_totals, rehearsed


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
    keys(button("Sizes and beds"), "Enter")
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
    expect(page.get_by_text("what they sew is the picture")).to_be_visible()
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
