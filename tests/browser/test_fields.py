"""Keys of the file that are rarely needed have their fields, set by keys alone; the file says what was set."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from quarterturn.design import PanelSet, read_design
from tests.browser.barriers import LIGHTS, barriers, lit
from tests.browser.designing import written
from tests.browser.watching import Watched
from tests.studio.running import Running


def sheet(page: Page, name: str) -> Locator:
    """Open a sheet of the quilt room by its button and the Enter key."""
    page.get_by_role("button", name=name, exact=True).focus()
    page.keyboard.press("Enter")
    found = page.locator(".sheet", has=page.get_by_role("heading", name=name, level=2))
    expect(found).to_be_visible()
    return found


def typed(field: Locator, text: str) -> None:
    """Write over what stands in a field, as keys do."""
    field.focus()
    field.press("Control+a")
    field.page.keyboard.type(text)
    field.press("Enter")


@pytest.fixture
def room(window: Watched) -> Page:
    """Return the page with the quilt on the mat."""
    expect(window.page.locator("svg.field use[href]").first).to_be_attached(timeout=60_000)
    return window.page


def test_sashing_and_the_order_of_sewing_are_set_by_keys_and_saved(
    room: Page, studio: Running, design: Path
) -> None:
    sections = sheet(room, "Sections")
    sections.get_by_text("Strips between the places").press("Enter")
    sections.get_by_role("checkbox", name="Sew strips between them").press("Space")
    typed(sections.get_by_role("textbox", name="Finished width"), "1 1/4")
    written(studio, room, r"width = ['\"]1 1/4")
    stone = sections.get_by_role("combobox", name="Cloth of the cornerstones")
    stone.focus()
    room.keyboard.press("End")
    written(studio, room, "cornerstone")
    room.keyboard.press("Escape")
    borders = sheet(room, "Borders")
    first = borders.get_by_role("combobox", name="Sewn on first").first
    first.focus()
    room.keyboard.press("ArrowDown")
    written(studio, room, 'first = "ends"')
    room.keyboard.press("Control+s")
    expect(room.locator(".notice", has_text="Saved").first).to_be_visible(timeout=60_000)
    made = read_design(design.read_text(encoding="utf-8")).design
    assert made
    sashing = getattr(made.setting, "sashing", None)
    assert sashing
    assert float(sashing.width) == 1.25
    assert sashing.cornerstone == made.fabrics[-1].letter
    assert not made.borders[0].sides_first


def test_a_width_that_cannot_be_is_refused_beside_its_field(room: Page, window: Watched) -> None:
    sections = sheet(room, "Sections")
    sections.get_by_text("Strips between the places").press("Enter")
    sections.get_by_role("checkbox", name="Sew strips between them").press("Space")
    width = sections.get_by_role("textbox", name="Finished width")
    typed(width, "900")
    expect(width).to_have_attribute("aria-invalid", "true")
    told = room.locator(f"[id='{(width.get_attribute('aria-describedby') or '').split()[-1]}']")
    expect(told).to_contain_text("900")
    window.faults.remove(next(each for each in window.faults if "422" in each))


@pytest.mark.parametrize("light", LIGHTS)
def test_the_fields_of_sections_and_borders_have_no_barriers(room: Page, light: str) -> None:
    lit(room, "dark" if light == "dark" else "light")
    for name in ("Sections", "Borders"):
        found = sheet(room, name)
        for fold in found.locator("summary").all():
            fold.press("Enter")
        assert barriers(room) == []
        room.keyboard.press("Escape")


def test_a_size_gets_its_bed_and_what_differs_in_it_by_keys(room: Page, studio: Running) -> None:
    room.keyboard.press("Alt+5")
    room.get_by_role("button", name="Sizes and beds").focus(timeout=60_000)
    room.keyboard.press("Enter")
    typed(room.get_by_role("textbox", name="A size of your own"), "lap")
    written(studio, room, r"\[sizes\.lap\]")
    bed = room.get_by_role("combobox", name="Meant for").last
    bed.focus()
    room.keyboard.press("End")
    written(studio, room, "mattress")
    typed(room.get_by_role("textbox", name="Hangs down by").last, "5")
    written(studio, room, r"drop = ['\"]5")
    typed(room.get_by_role("combobox", name="Something else that differs"), "setting.across")
    typed(room.get_by_role("textbox", name="Its value in this size"), "2")
    written(studio, room, r'"setting\.across" = 2')


def test_a_section_is_laid_below_the_quilt_and_another_beside_both(room: Page, studio: Running) -> None:
    sections = sheet(room, "Sections")
    sections.get_by_text("A new section").press("Enter")
    sections.get_by_label("Where it lies").select_option("below")
    sections.get_by_role("button", name="Add the section").press("Enter")
    text = written(studio, room, r'kind = "rows"')
    assert "[sections.body]" in text
    assert 'parts = [\n  "body0",\n  "piece0",\n]' in text
    expect(sections.get_by_role("button", name=re.compile("piece"))).to_be_visible()
    sections.get_by_role("button", name="Above", exact=True).press("Enter")
    written(studio, room, r'"piece0",\s+"body0",\s+"piece0"')
    assert barriers(room) == []


def test_a_panel_below_the_quilt_begins_as_wide_as_the_quilt(room: Page, studio: Running) -> None:
    sections = sheet(room, "Sections")
    sections.get_by_text("A new section").press("Enter")
    sections.get_by_label("Where it lies").select_option("below")
    sections.get_by_role("combobox", name="Set").last.select_option("panel")
    sections.get_by_role("button", name="Add the section").press("Enter")
    text = written(studio, room, 'kind = "panel"')
    design = read_design(text).design
    assert design
    [panel] = [each.setting for each in design.sections if each.name == "piece"]
    assert isinstance(panel, PanelSet)
    assert panel.width == 24  # six units of 4"
