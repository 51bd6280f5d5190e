"""Folders are gone through where a design is saved and opened, and one is made."""

from __future__ import annotations

import re
from pathlib import Path

from playwright.sync_api import expect

from tests.browser.barriers import barriers
from tests.browser.sitting import Sitting
from tests.browser.watching import Watched
from tests.studio.running import Running


def test_a_design_is_saved_by_keys_in_a_folder_that_is_made(
    window: Watched, studio: Running, tmp_path: Path
) -> None:
    page = window.page
    expect(page.get_by_text("Rounds", exact=True).first).to_be_visible()
    page.get_by_role("button", name="Copy", exact=True).press("Enter")
    field = page.get_by_label("Folder and name of the file")
    expect(page.get_by_role("group", name="Folders")).to_contain_text(tmp_path.name)
    field.fill(f"{tmp_path}/new/newer/moons.toml")
    expect(page.get_by_text("There is no folder")).to_contain_text(f"{tmp_path}/new/newer")
    assert barriers(page) == []
    page.get_by_role("button", name="Make this folder and the copy").press("Enter")
    page.wait_for_url(re.compile(rf"#/design/(?!{studio.design})\w+/quilt"))
    assert (tmp_path / "new" / "newer" / "moons.toml").is_file()


def test_a_folder_is_gone_into_and_its_design_opened(sitting: Sitting, design: Path) -> None:
    page = sitting.page
    (design.parent / "shelf").mkdir()
    moved = design.rename(design.parent / "shelf" / "rounds.toml")
    page.get_by_label("Folder and name of a design file").fill(f"{design.parent}/")
    page.get_by_text("Look for it in the folders").click()
    folders = page.get_by_role("group", name="Folders")
    folders.get_by_role("button", name="shelf").click()
    expect(folders).to_contain_text(str(moved.parent))
    assert barriers(page) == []
    folders.get_by_role("button", name="rounds.toml").press("Enter")
    expect(page.get_by_text("Rounds", exact=True).first).to_be_visible()
