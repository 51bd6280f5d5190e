"""The room of cloth: fabrics, photos at true scale, colours out of a photo, values and colourways."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.barriers import LIGHTS, barriers, lit
from tests.browser.designing import gone, text_of, written
from tests.browser.watching import Watched
from tests.studio.running import Running


@pytest.fixture
def room(window: Watched) -> Page:
    """Go to the room of cloth."""
    page = window.page
    page.get_by_role("link", name="Cloth", exact=True).click()
    expect(page.get_by_role("heading", name="Fabrics")).to_be_visible(timeout=60_000)
    expect(page.get_by_role("heading", name="Colourways")).to_be_visible(timeout=60_000)
    return page


def field(page: Page, label: str) -> Locator:
    return page.get_by_role("textbox", name=re.compile(f"^{label}"))


def chosen(page: Page, letter: str) -> None:
    page.get_by_role("region", name="Fabrics").get_by_role("button", name=re.compile(f"^{letter} ·")).click()


def test_a_fabric_is_added_named_and_priced_by_keys_alone(room: Page, studio: Running) -> None:
    add = room.get_by_role("button", name="New fabric")
    add.focus()
    add.press("Enter")
    room.keyboard.type("ember")
    room.keyboard.press("Enter")
    written(studio, room, r"\[fabrics\.D\]\nname = \"ember\"")
    form = room.get_by_role("region", name="Fabric D, ember")
    expect(form).to_be_visible()
    for label, text, wanted in (
        ("Role", "sparks", 'role = "sparks"'),
        ("Colour", "abc", 'colour = "#aabbcc"'),
        ("Price", "12.5", r"price = 12\.5"),
        ("Usable width", "42 1/2", "width = ['\"]42 1/2"),
        ("Shrinks along", "3", "shrink_along = 3"),
    ):
        field(room, label).fill(text)
        field(room, label).press("Enter")
        written(studio, room, wanted)
    room.get_by_label("Print runs").select_option("one-way")
    written(studio, room, 'direction = "one-way"')
    room.get_by_label("Its print stands upright").check()
    written(studio, room, "upright = true")


def test_a_letter_is_changed_wherever_it_stands(room: Page, studio: Running) -> None:
    chosen(room, "A")
    field(room, "Letter").fill("k")
    field(room, "Letter").press("Enter")
    assert '"A"' not in written(studio, room, r"\[fabrics\.K\]")
    expect(room.get_by_role("region", name=re.compile("^Fabric K"))).to_be_visible()


def test_what_is_no_colour_is_told_beside_the_field(room: Page, studio: Running) -> None:
    before = text_of(studio)
    field(room, "Colour").fill("blue")
    field(room, "Colour").press("Enter")
    expect(room.get_by_role("alert")).to_contain_text("This is no colour")
    assert text_of(studio) == before


def test_cloth_of_a_colourway_is_exchanged_by_menu_and_by_dragging(room: Page, studio: Running) -> None:
    room.get_by_role("combobox", name="ground of colourway a").select_option("C")
    written(studio, room, r"\[colourways\.a\]\nrecipe = .*\nground = \"C\"")
    swatch = room.get_by_role("region", name="Fabrics").get_by_role("button", name=re.compile("^A ·"))
    swatch.drag_to(room.get_by_role("combobox", name="ground of colourway a"))
    written(studio, room, r"\[colourways\.a\]\nrecipe = .*\nground = \"A\"")


def test_a_colourway_is_added_and_taken_away(room: Page, studio: Running) -> None:
    room.get_by_role("button", name="New colourway").click()
    form = room.get_by_role("form", name="New colourway")
    form.get_by_label("Code").fill("z")
    form.get_by_label("ground").select_option("C")
    form.get_by_role("button", name="Add it").click()
    written(studio, room, r"\[colourways\.z\]")
    room.get_by_role("button", name="Take colourway z away").click()
    gone(studio, room, r"colourways\.z")


def test_the_quilt_is_seen_in_grey(room: Page) -> None:
    group = room.locator("main .quilt g[style*='--cloth-A']").first
    before = group.get_attribute("style") or ""
    room.get_by_role("button", name="In grey").click()
    expect(group).not_to_have_attribute("style", before)
    greys = re.findall(r"--cloth-\w+: ?#(\w\w)(\w\w)(\w\w)", group.get_attribute("style") or "")
    assert greys
    assert all(r == g == b for r, g, b in greys)


def test_a_photo_is_brought_cropped_and_scaled_by_a_known_length(
    room: Page, studio: Running, photo: Path
) -> None:
    chosen(room, "A")
    room.get_by_role("button", name="Bring a photo").click()
    sheet = room.get_by_role("region", name=re.compile("^Photo of A"))
    sheet.get_by_label("Photo, a JPEG").set_input_files(photo)
    corner = sheet.get_by_role("button", name=re.compile("^Upper right corner"))
    expect(corner).to_be_visible()
    corner.focus()
    for _ in range(10):
        corner.press("Shift+ArrowLeft")  # the left half is shown
    for number, way, times in ((1, "ArrowLeft", 4), (2, "ArrowLeft", 4)):
        mark = sheet.get_by_role("button", name=re.compile(f"^Mark {number}"))
        mark.focus()
        for _ in range(times):
            mark.press(f"Shift+{way}")  # from 0 % to 60 % of the photo
    sheet.get_by_label("Between the marks").fill("6")
    expect(sheet.get_by_text('What is shown is 5" × 5" in truth')).to_be_visible()
    assert barriers(room) == []
    sheet.get_by_role("button", name="Use this photo").click()
    written(studio, room, r"photo_width = ['\"]5\"['\"]")
    text = written(studio, room, r"photo_crop = \[0(\.0)?, 0(\.0)?, 0\.5, 1(\.0)?\]")
    red, green, blue = bytes.fromhex(tomllib.loads(text)["fabrics"]["A"]["colour"][1:])
    assert 0x24 < red < green < blue  # a blue with some brick in it, and nothing of the yellow half
    pattern = room.locator("pattern#print-A-0")
    expect(pattern).to_have_attribute("width", "5")
    expect(pattern).to_have_attribute("height", "5")
    style = room.locator("main .quilt g[style*='--cloth-A']").first.get_attribute("style") or ""
    assert "print-A-0" in style


def test_a_crop_is_dragged_with_the_mouse(room: Page, studio: Running, photo: Path) -> None:
    chosen(room, "B")
    room.get_by_role("button", name="Bring a photo").click()
    sheet = room.get_by_role("region", name=re.compile("^Photo of B"))
    sheet.get_by_label("Photo, a JPEG").set_input_files(photo)
    corner = sheet.get_by_role("button", name=re.compile("^Lower right corner"))
    expect(corner).to_be_visible()
    box = corner.bounding_box()
    assert box
    middle = (box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    room.mouse.move(*middle)
    room.mouse.down()
    room.mouse.move(middle[0] - 120, middle[1] - 60, steps=5)
    room.mouse.up()
    sheet.get_by_role("button", name="Use this photo").click()
    cropped = written(studio, room, r"photo_crop = \[0(\.0)?, 0(\.0)?, 0\.\d+, 0\.\d+\]")
    assert "photo_width" not in cropped


def test_colours_are_taken_from_a_photo(room: Page, studio: Running, photo: Path) -> None:
    room.get_by_role("button", name="Colours from a photo").click()
    sheet = room.get_by_role("region", name="Colours from a photo")
    sheet.get_by_label("Photo, a JPEG").set_input_files(photo)
    take = sheet.get_by_role("button", name=re.compile(r"^Take \d"))
    expect(take).to_be_enabled()
    assert barriers(room) == []
    take.click()
    colours = re.findall(r'^colour = "#(\w{6})"', written(studio, room, 'colour = "#2'), re.MULTILINE)
    taken = [tuple(bytes.fromhex(each)) for each in colours]
    for red, green, blue in ((0x24, 0x4A, 0x6B), (0xE8, 0xC4, 0x6A)):
        assert any(abs(r - red) + abs(g - green) + abs(b - blue) < 20 for r, g, b in taken)
    assert "dark blue" in {each["name"] for each in tomllib.loads(text_of(studio))["fabrics"].values()}


@pytest.mark.parametrize("width", [1440, 1024, 768])
def test_the_room_of_cloth_has_no_barriers(room: Page, width: int) -> None:
    room.set_viewport_size({"width": width, "height": 900})
    for light in LIGHTS:
        lit(room, light)
        assert barriers(room) == []
