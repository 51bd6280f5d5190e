"""The drafting table: recipes by numbers and by the handles of their master, with the mouse and with keys alone."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.barriers import LIGHTS, barriers, lit
from tests.browser.designing import text_of, until, written
from tests.browser.watching import Watched
from tests.studio.running import Running

DRAWING = """<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="3in" viewBox="0 0 4 3">
<path id="kite" d="M 1 0 L 2 1 L 1 3 L 0 1 Z"/><path id="open" d="M 3 0 L 4 1"/></svg>"""


@pytest.fixture
def table(window: Watched) -> Page:
    """Go to the drafting table."""
    page = window.page
    page.get_by_role("link", name="Drafting table").click()
    expect(page.get_by_role("heading", name="The master")).to_be_visible(timeout=60_000)
    return page


def field(page: Page, label: str) -> Locator:
    return page.get_by_role("textbox", name=re.compile(label))


def test_a_number_is_written_with_a_fraction_as_on_paper(table: Page, studio: Running) -> None:
    field(table, "Finished side").fill("4 1/4")
    field(table, "Finished side").press("Enter")
    written(studio, table, r"finished = ['\"]4 1/4")
    expect(field(table, "Master, as cut")).to_have_value('10 1/4"')


def test_a_size_that_is_put_takes_the_place_of_what_it_followed_from(table: Page, studio: Running) -> None:
    field(table, "Master, as cut").fill("10")
    field(table, "Master, as cut").press("Enter")
    assert not re.search(r"^finished", written(studio, table, r"start = ['\"]10"), re.MULTILINE)


def test_what_is_no_length_or_does_not_fit_is_told_beside_its_field(
    table: Page, studio: Running, window: Watched
) -> None:
    before = text_of(studio)
    field(table, "Finished side").fill("four")
    field(table, "Finished side").press("Enter")
    expect(table.get_by_role("alert")).to_contain_text("This is no length")
    field(table, "Finished side").fill("1/100")
    field(table, "Finished side").press("Enter")
    expect(table.get_by_role("alert")).not_to_contain_text("This is no length")
    expect(field(table, "Finished side")).to_have_attribute("aria-invalid", "true")
    assert text_of(studio) == before
    refused = [each for each in window.faults if "422" in each]
    assert len(refused) == 1  # the browser tells of each refusal in its console
    window.faults.remove(refused[0])


def test_of_several_shapes_the_one_that_is_taken_up_has_all_its_handles(table: Page, studio: Running) -> None:
    studio.act(name="add-recipe", recipe="scatter", kind="shapes cut", outline="leaf")
    for at in (["-1", "0"], ["1", "1"]):
        studio.act(
            name="add-shape", recipe="scatter", part="leaf", outline="leaf", width="1", fabric="A", at=at
        )
    table.get_by_role("button", name=re.compile("^scatter")).click()
    places = table.get_by_role("button", name=re.compile("^Place of shape"))
    expect(places).to_have_count(3)
    for number in (1, 2, 3):
        places.nth(number - 1).focus()
        expect(table.get_by_role("button", name=re.compile(f"^Width of shape {number},"))).to_be_visible()
        expect(table.get_by_role("button", name=re.compile("^Width of shape"))).to_have_count(1)
        expect(table.get_by_role("button", name=re.compile("^Turn of shape"))).to_have_count(1)


def test_the_handle_of_the_circle_is_dragged_and_snaps_to_the_ruler(table: Page, studio: Running) -> None:
    box = table.get_by_role("button", name=re.compile("Diameter of")).bounding_box()
    assert box
    table.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    table.mouse.down()
    table.mouse.move(box["x"] + box["width"] / 2 - 12, box["y"] + box["height"] / 2, steps=6)
    table.mouse.up()
    found = re.search(r"diameter = ['\"]([\d /]+)", written(studio, table, r"diameter = ['\"][\d /]+"))
    assert found
    whole = sum(int(a) / int(b or 1) for a, b in re.findall(r"(\d+)(?:/(\d+))?", found[1]))
    assert whole * 8 == int(whole * 8)


def test_the_handle_of_the_circle_goes_by_keys_and_undo_takes_it_back(table: Page, studio: Running) -> None:
    before = text_of(studio)
    handle = table.get_by_role("button", name=re.compile("Diameter of"))
    handle.focus()
    handle.press("ArrowLeft")
    handle.press("ArrowLeft")
    handle.press("Enter")
    written(studio, table, r"diameter = ['\"](?!6 1/2\")")
    table.keyboard.press("Control+z")
    until(studio, table, lambda text: text == before)


def test_each_kind_of_recipe_is_laid_on_the_table(table: Page, studio: Running) -> None:
    for kind, name in (
        ("circle cut both ways", "pond"),
        ("shape cut both ways", "wish"),
        ("shapes cut", "pair"),
        ("halves rejoined", "swap"),
    ):
        table.get_by_role("button", name="New recipe").click()
        sheet = table.get_by_role("region", name="A new recipe")
        sheet.get_by_role("radio", name=re.compile(f"^{kind}")).check()
        sheet.get_by_label("What is it called?").fill(name)
        if kind == "shapes cut":
            sheet.get_by_role("combobox", name="Cuts").select_option("one diagonal")
        sheet.get_by_role("button", name="Lay it on the table").click()
        expect(sheet).to_be_hidden()
        expect(table.get_by_role("button", name=re.compile(f"^{name}"), pressed=True)).to_be_visible()
        written(studio, table, rf"\[recipes\.{name}\]\nkind = ['\"]{kind}")


def test_shapes_are_moved_turned_and_cut_by_keys(table: Page, studio: Running) -> None:
    table.get_by_role("button", name="New recipe").click()
    sheet = table.get_by_role("region", name="A new recipe")
    sheet.get_by_role("radio", name=re.compile("^shapes cut")).check()
    sheet.get_by_role("combobox", name="Outline").select_option("heart")
    sheet.get_by_role("button", name="Lay it on the table").click()
    place = table.get_by_role("button", name=re.compile("^Place of shape 1"))
    place.focus()
    place.press("ArrowRight")
    place.press("ArrowDown")
    place.press("Enter")
    written(studio, table, r"at = \[ ?['\"]1/8\"['\"], ?['\"]1/8\"['\"] ?\]")
    turn = table.get_by_role("button", name=re.compile("^Turn of shape 1"))
    turn.focus()
    turn.press("ArrowRight")
    turn.press("Enter")
    written(studio, table, "turn = 5")
    cut = table.get_by_role("button", name=re.compile("^Cut 1, end 1"))
    cut.focus()
    cut.press("Shift+ArrowRight")
    cut.press("Enter")
    written(studio, table, r"cuts = \[\[")


def test_the_other_curve_is_shown_beside_and_can_be_chosen(table: Page, studio: Running) -> None:
    table.get_by_role("button", name="Both curves").click()
    expect(table.get_by_text(re.compile("a peak of")).first).to_be_visible()
    wanted = "sewn true" if "sewn true" not in text_of(studio) else "as drawn"
    table.get_by_role("radio", name=re.compile(f"^{wanted}")).check()
    written(studio, table, f"curve = ['\"]{wanted}")


def test_an_outline_comes_out_of_a_drawing_and_is_used(table: Page, studio: Running, tmp_path: Path) -> None:
    drawing = tmp_path / "kite.svg"
    drawing.write_text(DRAWING, encoding="utf-8")
    table.get_by_role("button", name="Outline from a drawing").click()
    sheet = table.get_by_role("region", name="An outline from a drawing")
    sheet.get_by_label("Drawing, an SVG file").set_input_files(drawing)
    expect(sheet.get_by_text("1 shape found")).to_be_visible()
    expect(sheet.get_by_text('2" × 3"')).to_be_visible()
    assert barriers(table) == []
    sheet.get_by_role("button", name="Take it").click()
    written(studio, table, r"\[outlines\.kite\]")
    table.keyboard.press("Escape")
    table.get_by_role("button", name="New recipe").click()
    sheet = table.get_by_role("region", name="A new recipe")
    sheet.get_by_role("radio", name=re.compile("^shape cut both ways")).check()
    sheet.get_by_role("combobox", name="Outline").select_option("kite")
    sheet.get_by_role("button", name="Lay it on the table").click()
    written(studio, table, r"outline = ['\"]kite")


@pytest.mark.parametrize("width", [1440, 1024, 768])
def test_the_drafting_table_has_no_barriers(table: Page, width: int) -> None:
    table.set_viewport_size({"width": width, "height": 900})
    for light in LIGHTS:
        lit(table, light)
        assert barriers(table) == []
