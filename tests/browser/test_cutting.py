"""The room of cutting: plans to scale, pieces marked in the quilt, totals that follow an edit, sizes side by side."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.watching import Watched
from tests.studio.running import Running

WIDTHS = (1440, 1024, 768)
APART = """([count, ofStrips]) => {
  const boxes = [...document.querySelectorAll("svg .parcel .selvage")].map(each => each.getBoundingClientRect());
  const free = (one, two) => one.right <= two.left + 1 || two.right <= one.left + 1
    || one.bottom <= two.top + 1 || two.bottom <= one.top + 1;
  const holds = (whole, box) => box.left >= whole.left - 1 && box.right <= whole.right + 1
    && box.top >= whole.top - 1 && box.bottom <= whole.bottom + 1;
  const pieces = [...document.querySelectorAll("svg [data-spot]")];
  return boxes.length === count
    && boxes.every((one, k) => boxes.every((two, n) => k === n || free(one, two)))
    && pieces.length > 0
    && pieces.every(each => holds(boxes[ofStrips[each.dataset.spot.split("-")[0]]],
      each.querySelector("rect").getBoundingClientRect()));
}"""
"""Whether pieces of cloth lie apart, and what is cut from each lies on it."""


@pytest.fixture
def room(window: Watched) -> Page:
    """Go to the room."""
    page = window.page
    page.get_by_role("link", name="Cutting").click()
    expect(page.get_by_role("heading", name="Fabric A: cream")).to_be_visible(timeout=60_000)
    expect(page.get_by_text("These plans are proved.")).to_be_visible(timeout=60_000)
    return page


def view(studio: Running) -> dict[str, list[dict[str, object]]]:
    found: dict[str, list[dict[str, object]]] = json.loads(
        studio.get(f"/api/designs/{studio.design}/cutting")[1]
    )
    return found


def test_the_plan_of_each_fabric_is_drawn_piece_by_piece(room: Page, studio: Running) -> None:
    for plan in view(studio)["plans"]:
        room.get_by_role("button", name=re.compile(f"^{plan['letter']} ")).click()
        expect(room.get_by_role("heading", name=f"Fabric {plan['letter']}:")).to_be_visible()
        drawn = room.locator("svg [data-spot]").count()
        strips = plan["strips"]
        assert isinstance(strips, list)
        assert drawn == sum(bool(piece["label"]) for strip in strips for piece in strip["pieces"])


def test_a_piece_that_is_pointed_at_is_named_and_counted_and_one_that_is_pressed_stays_marked(
    room: Page,
) -> None:
    piece = room.locator("svg [data-spot]").first
    piece.hover()
    expect(room.locator("aside .stuck > p").first).to_contain_text(re.compile(r"A\d, .*: \d+ to cut"))
    assert room.locator("aside mask path").count() > 0
    piece.click()
    room.get_by_role("heading", name="Cutting").hover()
    expect(room.locator("aside .stuck > p").first).to_contain_text("to cut")
    assert room.locator("aside mask path").count() > 0
    expect(room.locator(".list [aria-pressed=true]")).to_have_count(1)
    piece.click()
    room.get_by_role("heading", name="Cutting").hover()
    assert room.locator("aside mask path").count() == 0


def test_the_plan_is_walked_by_keys_alone(room: Page) -> None:
    room.locator("svg [data-spot][tabindex='0']").focus()
    room.keyboard.press("End")
    room.keyboard.press("ArrowLeft")
    room.keyboard.press("ArrowDown")
    place = room.evaluate("document.activeElement.dataset.spot")
    assert place.startswith("1-")
    room.keyboard.press("Enter")
    expect(room.locator(f"[data-spot='{place}']")).to_have_attribute("aria-pressed", "true")


def test_each_piece_of_cloth_is_drawn_by_itself(room: Page, studio: Running) -> None:
    studio.act(name="put", at="fabrics.B.bought_as", value="fat quarter")
    room.get_by_role("button", name=re.compile("^B ")).click()
    expect(room.locator("svg .parcel").first).to_be_visible(timeout=60_000)
    plan = next(plan for plan in view(studio)["plans"] if plan["letter"] == "B")
    strips, parcels = plan["strips"], plan["parcels"]
    assert isinstance(strips, list)
    assert isinstance(parcels, list)
    assert len(parcels) > 1
    of_strips = [strip["parcel"] for strip in strips]
    for width in WIDTHS:
        room.set_viewport_size({"width": width, "height": 900})
        room.wait_for_function(APART, arg=[len(parcels), of_strips])


def test_the_web_shows_the_middle_of_every_tracing(room: Page, studio: Running) -> None:
    room.get_by_role("button", name="Fusible web").click()
    web = json.loads(studio.get(f"/api/designs/{studio.design}/cutting")[1])["web"]
    expect(room.locator("path.middle")).to_have_count(len(web["tracings"]))


def test_figures_follow_an_edit_and_say_what_it_changed(room: Page, studio: Running) -> None:
    bought = room.locator("tbody tr").nth(1).locator("td").first
    before = bought.inner_text()
    studio.act(name="put", at="borders.0.width", value="7 1/2")
    expect(bought).to_contain_text(f"was {before}", timeout=60_000)
    expect(room.get_by_text("These plans are proved.")).to_be_visible(timeout=60_000)
    expect(bought).to_contain_text(f"was {before}")
    studio.act(name="put", at="title", value="Other rounds")
    expect(bought).not_to_contain_text("was", timeout=60_000)


def test_a_size_is_added_and_stands_beside_the_first(room: Page) -> None:
    room.get_by_role("button", name="Sizes and beds").click()
    room.get_by_role("button", name="Add", exact=True).first.click()
    room.keyboard.press("Escape")
    table = room.get_by_role("table", name="Sizes side by side")
    expect(table).to_be_visible(timeout=60_000)
    expect(table.get_by_role("columnheader")).to_have_count(3)
    table.get_by_role("columnheader").nth(2).get_by_role("button").click()
    expect(table.get_by_role("columnheader").nth(2).get_by_role("button")).to_have_attribute(
        "aria-pressed", "true", timeout=60_000
    )


@pytest.mark.parametrize("light", LIGHTS)
def test_nothing_stands_in_the_way_at_any_width(room: Page, light: Light) -> None:
    lit(room, light)
    for width in WIDTHS:
        room.set_viewport_size({"width": width, "height": 900})
        room.locator("svg [data-spot]").first.click()
        assert barriers(room) == []


def test_strips_are_kept_as_they_are_and_left_to_the_plan_again(
    room: Page, studio: Running, design: Path
) -> None:
    decided = room.get_by_role("region", name="Strips of A that you decide on")
    before = design.read_text(encoding="utf-8")
    keep = decided.get_by_role("button", name="Keep as they are").first
    keep.focus()
    room.keyboard.press("Enter")
    expect(decided.get_by_text("This costs no more")).to_be_visible()
    assert view(studio)["plans"][0]["decisions"]
    expect(room.locator("svg .kept").first).to_be_visible()
    height = decided.get_by_label(re.compile("^Height of "))
    kept = height.input_value()
    height.fill("30")
    height.press("Enter")
    expect(decided.get_by_text("with all strips left to the plan")).to_be_visible()
    height.fill(kept)
    height.press("Enter")
    expect(decided.get_by_text("This costs no more")).to_be_visible()
    decided.get_by_role("button", name="Leave to the plan").first.click()
    expect(decided.get_by_text("All strips are left to the plan.", exact=False)).to_be_visible()
    assert view(studio)["plans"][0]["decisions"] == []
    assert design.read_text(encoding="utf-8") == before


def test_the_heights_that_strips_may_have_are_named_and_a_wrong_one_says_why(
    room: Page, studio: Running, window: Watched
) -> None:
    heights = room.get_by_label("Heights that strips may have")
    heights.fill("nine")
    heights.press("Enter")
    expect(room.get_by_role("alert")).to_contain_text("`nine` is not a length")
    assert view(studio)["plans"][0]["heights"] == []
    refused = [each for each in window.faults if "422" in each]
    assert len(refused) == 1  # the browser tells of each refusal in its console
    window.faults.remove(refused[0])
    heights.fill('12 1/2"; 9"')
    heights.press("Enter")
    expect(heights).to_have_value('9"; 12 1/2"')
    heights.fill("")
    heights.press("Enter")
    expect(heights).to_have_value("")
