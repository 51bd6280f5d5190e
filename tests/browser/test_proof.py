"""The room of proof: findings at their places, overlays with signs of their own, the rehearsal step by step."""

from __future__ import annotations

import json
import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.barriers import LIGHTS, Light, barriers, lit
from tests.browser.test_cutting import WIDTHS
from tests.browser.watching import Watched
from tests.studio.running import Running


@pytest.fixture
def room(window: Watched) -> Page:
    """Go to the room."""
    page = window.page
    page.get_by_role("link", name="Proof").click()
    expect(page.get_by_role("heading", name="Proof")).to_be_visible(timeout=60_000)
    expect(page.get_by_text(re.compile(r"\d+ checks made"))).to_be_visible(timeout=60_000)
    return page


def seams(studio: Running) -> dict[str, list[dict[str, object]]]:
    found: dict[str, list[dict[str, object]]] = json.loads(
        studio.get(f"/api/designs/{studio.design}/seams")[1]
    )
    return found


def test_findings_are_grouped_by_weight_and_filtered(room: Page) -> None:
    group = room.get_by_role("heading", name=re.compile("confuse: 3 things"))
    expect(group).to_be_visible()
    room.get_by_role("button", name="Confuses 3").click()
    expect(group).not_to_be_visible()
    room.get_by_role("button", name="Confuses 3").click()
    room.get_by_label("With the words").fill("maker")
    expect(room.locator(".list .card")).to_have_count(1)


def test_a_finding_goes_to_its_line_in_the_text(room: Page) -> None:
    card = room.locator(".list li").filter(has_text="Designer").first
    card.get_by_role("button", name=re.compile("In the text, line")).click()
    sheet = room.get_by_role("dialog")
    expect(sheet.locator("[aria-current=location]")).to_contain_text('maker = "Your name"')
    room.keyboard.press("Escape")
    expect(sheet).to_have_count(0)


def test_a_finding_is_marked_at_its_place_in_the_quilt(room: Page, studio: Running) -> None:
    studio.act(name="put", at="borders.0.width", value="2 7/16")
    card = room.locator(".card").filter(has_text="border 1 of centre").first
    expect(card).to_be_visible(timeout=60_000)
    assert room.locator(".canvas mask path").count() == 0
    card.click()
    expect(room.locator(".canvas mask path")).to_have_count(1)
    expect(card).to_have_attribute("aria-pressed", "true")


def test_mending_opens_the_room_with_the_field_in_focus(room: Page, studio: Running) -> None:
    studio.act(name="put", at="borders.0.width", value="2 7/16")
    card = room.locator(".list li").filter(has_text="border 1 of centre").first
    card.get_by_role("link", name="Mend it in Quilt").focus()
    room.keyboard.press("Enter")
    field = room.get_by_role("region", name="Borders").get_by_label("Width").first
    expect(field).to_be_focused()
    expect(field).to_have_value('2 7/16"')


def test_mending_takes_up_the_colourway_and_the_words_that_are_spoken_of(room: Page, studio: Running) -> None:
    fabrics = json.loads(studio.get(f"/api/designs/{studio.design}")[1])["fabrics"]
    studio.act(name="put", at=f"fabrics.{fabrics[1]['letter']}.colour", value=fabrics[0]["colour"])
    card = room.locator(".list li").filter(has_text="meet in the quilt").first
    card.get_by_role("link", name="Mend it in Cloth").click()
    expect(room.locator("article.way:focus")).to_have_attribute("data-at", re.compile(r"^colourways\.\w+$"))
    room.get_by_role("link", name="Proof").click()
    card = room.locator(".list li").filter(has_text="“Designer” still says")
    card.get_by_role("link", name="Mend it in").click()
    expect(room.get_by_role("textbox", name="Designer")).to_be_focused()


def test_a_finding_on_seams_switches_on_what_shows_it(room: Page, studio: Running) -> None:
    studio.act(name="put", at="recipes.round.shape.diameter", value='4 1/8"')
    studio.act(name="turn", cells=[{"section": "centre", "row": 1, "column": 1}], by=1)
    card = room.locator(".card").filter(has_text="nearly meet").first
    expect(card).to_be_visible(timeout=60_000)
    expect(room.get_by_role("button", name="Joins")).to_have_attribute("aria-pressed", "false")
    card.click()
    expect(room.get_by_role("button", name="Joins")).to_have_attribute("aria-pressed", "true")
    expect(room.locator("path.step").last).to_be_visible()


def test_overlays_tell_joins_apart_by_shape(room: Page, studio: Running) -> None:
    room.get_by_role("button", name="Joins").click()
    joins = seams(studio)["joins"]
    for meeting, words in (("match", "on across"), ("step", "at the seam"), ("end", "at the seam")):
        count = sum(join["meeting"] == meeting for join in joins)
        expect(room.locator(f".keys .{meeting}").locator("..")).to_contain_text(str(count))
        expect(room.locator(f".keys .{meeting}").locator("..")).to_contain_text(words)
    drawn = room.locator("path.match").get_attribute("d") or ""
    assert drawn.count("M") == sum(join["meeting"] == "match" for join in joins)


def test_curves_are_followed_one_by_one_and_stand_still_where_motion_is_not_wanted(
    room: Page, studio: Running
) -> None:
    room.get_by_role("button", name="Flow").click()
    trails = seams(studio)["trails"]
    expect(room.locator("path.flow[style]")).to_have_count(len(trails))
    assert room.locator("path.bead").count() == 0
    room.get_by_role("button", name="Next").click()
    expect(room.locator("path.flow[style]")).to_have_count(1)
    expect(room.get_by_text(f"Curve 1 of {len(trails)}")).to_be_visible()
    room.get_by_role("button", name="All", exact=True).click()
    expect(room.locator("path.flow[style]")).to_have_count(len(trails))


def test_the_slip_says_how_much_there_is_to_look_at(room: Page, studio: Running) -> None:
    studio.act(name="put", at="borders.0.width", value="2 7/16")
    found = len(json.loads(studio.get(f"/api/designs/{studio.design}/proof")[1])["findings"])
    room.get_by_role("link", name="Cutting").click()
    room.get_by_role("link", name=re.compile(rf"^{found} things? to look at$")).click()
    expect(room.get_by_role("heading", name="Proof")).to_be_visible()


def test_pressing_and_bulk_are_drawn(room: Page, studio: Running) -> None:
    room.get_by_role("button", name="Pressing").click()
    expect(room.locator("svg.field path.press").first).to_have_attribute("d", re.compile("^M"))
    room.get_by_role("button", name="Bulk").click()
    expect(room.locator("path.bulk").first).to_be_attached()
    assert seams(studio)["pressing"]


def test_the_rehearsal_is_watched_step_by_step_with_keys_alone(room: Page) -> None:
    room.get_by_role("button", name="Rehearsal").focus()
    room.keyboard.press("Enter")
    room.get_by_role("button", name="Rehearse", exact=True).focus()
    room.keyboard.press("Enter")
    expect(room.get_by_text("what they sew is the picture")).to_be_visible(timeout=60_000)
    expect(room.get_by_text(re.compile(r"^step 1 of \d+$"))).to_be_visible()
    room.get_by_role("button", name="Step on").focus()
    room.keyboard.press("Enter")
    room.keyboard.press("Enter")
    expect(room.get_by_text(re.compile(r"^step 3 of \d+$"))).to_be_visible()
    room.get_by_role("button", name="Step back").focus()
    room.keyboard.press("Enter")
    expect(room.locator(".steps [aria-current=step]")).to_contain_text("2")
    room.get_by_role("slider").focus()
    room.keyboard.press("End")
    expect(room.locator(".table").first).to_contain_text("quilt", timeout=60_000)
    expect(room.get_by_role("button", name="Step on")).to_be_disabled()


def test_the_film_of_another_revision_is_not_shown(room: Page, studio: Running) -> None:
    room.get_by_role("button", name="Rehearsal").click()
    room.get_by_role("button", name="Rehearse", exact=True).click()
    expect(room.get_by_text("what they sew is the picture")).to_be_visible(timeout=60_000)
    studio.act(name="put", at="borders.0.width", value="3")
    expect(room.get_by_text("has changed since the last rehearsal")).to_be_visible(timeout=60_000)
    expect(room.locator(".steps")).to_have_count(0)


def test_the_findings_of_the_rehearsal_stand_with_the_others(room: Page) -> None:
    room.get_by_role("button", name="Rehearsal").click()
    room.get_by_role("button", name="Rehearse", exact=True).click()
    expect(room.get_by_text("what they sew is the picture")).to_be_visible(timeout=60_000)
    room.get_by_role("button", name="Findings").click()
    expect(room.locator(".proved")).to_be_visible(timeout=60_000)


@pytest.mark.parametrize("light", LIGHTS)
def test_nothing_stands_in_the_way_at_any_width(room: Page, light: Light) -> None:
    lit(room, light)
    for name in ("Joins", "Flow", "Bulk", "Pressing"):
        room.get_by_role("button", name=name).click()
    room.locator(".card").first.click()
    expect(room.get_by_role("dialog")).to_be_visible()
    assert barriers(room) == []
    room.keyboard.press("Escape")
    for width in WIDTHS:
        room.set_viewport_size({"width": width, "height": 900})
        assert barriers(room) == []
    room.get_by_role("button", name="Rehearsal").click()
    room.get_by_role("button", name="Rehearse", exact=True).click()
    expect(room.get_by_text("what they sew is the picture")).to_be_visible(timeout=60_000)
    for width in WIDTHS:
        room.set_viewport_size({"width": width, "height": 900})
        assert barriers(room) == []
