"""The quilt room, by mouse, by touch of keys alone, and as it is told to hearers."""

from __future__ import annotations

import json
import re
import urllib.request
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from quarterturn.studio.guard import TOKEN
from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.watching import Watched
from tests.studio.running import Running


def paper(studio: Running) -> dict[str, object]:
    """Return the design as the studio has it."""
    request = urllib.request.Request(
        f"http://127.0.0.1:{studio.port}/api/designs/{studio.design}", headers={TOKEN: studio.token}
    )
    with urllib.request.urlopen(request, timeout=15) as answer:
        told: dict[str, object] = json.load(answer)
    return told


def words(studio: Running) -> list[str]:
    """Return the rows of the map, once all that was done is in."""
    sections = paper(studio)["sections"]
    assert isinstance(sections, list)
    return [" ".join(row) for row in sections[0]["words"]]


def said(page: Page, text: str) -> None:
    """See to it that the slip tells this."""
    expect(page.locator(".notice", has_text=text).first).to_be_visible(timeout=60_000)


@pytest.fixture
def page(window: Watched) -> Page:
    """Return the page with the quilt on the mat."""
    expect(window.page.locator("svg.field use[href]").first).to_be_attached(timeout=60_000)
    expect(window.page.get_by_text("Cloth to buy")).to_be_visible(timeout=60_000)  # nothing moves any more
    return window.page


def middle(page: Page, cell: int) -> tuple[float, float]:
    """Return where the middle of a place is in the window."""
    box = page.locator("svg.field use").nth(cell).bounding_box()
    assert box
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def needle(page: Page) -> str:
    """Return what is told of the place on which the needle stands."""
    return page.locator("[role=gridcell][tabindex='0']").get_attribute("aria-label") or ""


def test_a_click_turns_a_unit_and_undo_turns_it_back(page: Page, studio: Running) -> None:
    before = words(studio)
    page.mouse.click(*middle(page, 0))
    said(page, "Turned 1 unit.")
    after = words(studio)
    assert after != before
    page.get_by_role("button", name="Undo").click()
    said(page, "Undone: turning.")
    assert words(studio) == before
    page.keyboard.press("Control+Shift+z")
    said(page, "Done again: turning.")
    assert words(studio) == after


def test_a_unit_is_counted_wherever_its_place_lies(page: Page, studio: Running) -> None:
    studio.act(name="puts", values={"setting.across": 2, "setting.down": 3})
    expect(page.locator(".figures, .slip").get_by_text("216").first).to_be_visible(timeout=60_000)
    expect(page.locator("svg.field use[href]")).to_have_count(216)
    page.get_by_role("button", name="All in sight (0)").click()
    page.mouse.click(*middle(page, 0))
    said(page, "Turned 6 units.")


def test_one_drag_lays_a_row_and_is_one_act(page: Page, studio: Running) -> None:
    before = words(studio)
    columns = len(before[0].split())
    page.locator(".tile").first.click()
    page.get_by_role("button", name="turned twice").click()
    page.mouse.move(*middle(page, 0))
    page.mouse.down()
    page.mouse.move(*middle(page, columns - 1), steps=3)
    page.mouse.up()
    said(page, "Laid")
    code = (page.locator(".tile").first.text_content() or "").strip()
    assert words(studio)[0] == " ".join([f"{code}2"] * columns)
    page.keyboard.press("Control+z")
    said(page, "Undone: laying.")
    assert words(studio) == before


def test_the_needle_does_it_all_by_keys(page: Page, studio: Running) -> None:
    page.locator("[role=gridcell][tabindex='0']").focus()
    assert needle(page).startswith("row 1 column 1, ")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowRight")
    assert needle(page).startswith("row 2 column 2, ")
    expect(page.locator("[role=gridcell]:focus")).to_have_count(1)
    turn = needle(page)
    page.keyboard.press("r")
    said(page, "Turned 1 unit.")
    assert needle(page) != turn
    page.keyboard.press("Shift+ArrowLeft")
    page.keyboard.press("c")
    said(page, "2 places copied.")
    page.keyboard.press("Escape")
    page.keyboard.press("ArrowUp")
    page.keyboard.press("s")
    said(page, "Stamped 2 places.")
    top, below = words(studio)[:2]
    assert top.split()[:2] == below.split()[:2]


def test_the_brush_mirrors_what_it_lays(page: Page, studio: Running) -> None:
    page.locator("[role=gridcell][tabindex='0']").focus()
    page.keyboard.press("]")
    for _ in range(3):
        page.keyboard.press("y")
    page.keyboard.press("Enter")
    said(page, "Laid")
    rows = [row.split() for row in words(studio)]
    corners = [rows[0][0], rows[0][-1], rows[-1][-1], rows[-1][0]]
    assert [word[:-1] for word in corners] == [corners[0][:-1]] * 4
    assert [word[-1] for word in corners] == ["0", "1", "2", "3"]


def test_a_border_is_sewn_on_and_saved_with_the_file(page: Page, studio: Running, design: Path) -> None:
    page.get_by_role("button", name="Borders", exact=True).click()
    page.get_by_role("button", name="Sew it on").click()
    said(page, "Added border")
    page.keyboard.press("Control+s")
    said(page, "Saved")
    assert "[[borders]]" in design.read_text(encoding="utf-8")


@pytest.mark.parametrize("width", [1440, 1024, 768])
def test_a_quilt_that_is_fitted_in_lies_free(page: Page, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    page.locator("[role=gridcell][tabindex='0']").focus()
    page.keyboard.press("Control+a")
    expect(page.get_by_role("toolbar", name="Marked")).to_be_visible()
    page.get_by_role("button", name="All in sight (0)").click()
    covering = page.evaluate("""() => {
      const quilt = document.querySelector("svg.field > g").getBoundingClientRect();
      const over = each => { const box = each.getBoundingClientRect();
        return box.left < quilt.right && box.right > quilt.left && box.top < quilt.bottom && box.bottom > quilt.top };
      return [...document.querySelectorAll("main button, footer")].filter(over).map(each => each.outerHTML);
    }""")
    assert covering == []


@pytest.mark.parametrize("width", [1440, 1024, 768])
def test_all_that_can_be_laid_is_on_the_shelf(page: Page, studio: Running, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    for number in range(40):
        studio.act(name="add-fabric", called=f"cloth {number}", colour="#a0522d")
    tiles, shelf = page.locator(".tile"), page.locator(".shelf")
    last = page.get_by_role("button", name="plain cloth 39")
    expect(last).to_be_attached(timeout=60_000)
    assert shelf.evaluate("shelf => shelf.scrollWidth <= shelf.clientWidth")
    expect(shelf).to_have_class(re.compile("more"))
    expect(last).not_to_be_in_viewport(ratio=0.5)
    page.locator("[role=gridcell][tabindex='0']").focus()
    for _ in range(tiles.count()):
        page.keyboard.press("]")
        expect(page.locator(".tile[aria-pressed='true']")).to_be_in_viewport(ratio=0.9)
    last.focus()
    expect(last).to_be_in_viewport(ratio=0.9)
    expect(shelf).not_to_have_class(re.compile("more"))


def test_a_mat_comes_nearer_by_a_sign_in_any_room_that_has_one_alone(page: Page) -> None:
    page.get_by_role("link", name="Cloth", exact=True).click()
    expect(page.get_by_role("heading", name="From dark to light")).to_be_visible()
    drawing = page.locator("svg.field > g").first
    scale = (drawing.get_attribute("transform") or "").partition(") ")[2]  # where it lies may yet move
    page.keyboard.press("+")
    expect(drawing).not_to_have_attribute("transform", re.compile(re.escape(scale)))
    page.keyboard.press("0")
    expect(drawing).to_have_attribute("transform", re.compile(re.escape(scale)))


def test_every_key_is_told(page: Page) -> None:
    page.keyboard.press("F1")
    sheet = page.get_by_role("dialog", name="All keys")
    expect(sheet.get_by_text("Turn clockwise")).to_be_visible()
    for where in ("On a mat", "With the pages of the booklet", "In the making room, step by step"):
        expect(sheet.get_by_role("heading", name=where)).to_be_attached()
    page.keyboard.press("Escape")
    expect(sheet).to_have_count(0)


@pytest.mark.parametrize("light", LIGHTS)
@pytest.mark.parametrize("side", ["Sections", "Borders", "Motifs"])
def test_the_room_is_open_to_everyone(page: Page, light: Light, side: str) -> None:
    lit(page, light)
    page.get_by_role("button", name=side, exact=True).click()
    assert barriers(page, good_practice=True) == []


def test_the_room_is_whole_at_200_percent(page: Page) -> None:
    page.set_viewport_size({"width": 720, "height": 450})
    assert page.evaluate("document.documentElement.scrollWidth") <= 720
    expect(page.get_by_role("button", name="Save")).to_be_visible()
    assert barriers(page, good_practice=True) == []
