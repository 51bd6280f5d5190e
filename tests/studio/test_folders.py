"""What is told of folders, and how one is made for a design."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.studio.folders import look_into, make_folder_of
from quarterturn.studio.refusals import Refusal
from quarterturn.studio.views.folders import folder_view


@pytest.fixture
def shelf(tmp_path: Path) -> Path:
    """Return a folder with folders, designs and what is neither."""
    folder = tmp_path.resolve() / "shelf"
    for name in ("quilts", "Borders", ".hidden"):
        (folder / name).mkdir(parents=True)
    for name in ("moons.toml", "Arcs.TOML", "notes.txt", ".moons.toml.part", ".secret.toml"):
        (folder / name).write_text("", encoding="utf-8")
    return folder


def test_folders_and_designs_are_told_by_name_and_nothing_else(shelf: Path) -> None:
    seen = look_into(str(shelf))
    assert (seen.path, seen.wanted) == (shelf, None)
    assert seen.folders == ("Borders", "quilts")
    assert seen.designs == ("Arcs.TOML", "moons.toml")


def test_a_file_is_looked_for_in_its_folder_whether_it_is_there_or_not(shelf: Path) -> None:
    assert (
        look_into(str(shelf / "moons.toml")) == look_into(str(shelf / "none.toml")) == look_into(str(shelf))
    )


def test_of_a_folder_that_is_not_there_the_nearest_above_it_is_told(shelf: Path) -> None:
    seen = look_into(str(shelf / "new" / "newer" / "moons.toml"))
    assert (seen.path, seen.wanted) == (shelf, shelf / "new" / "newer")


def test_without_a_name_it_is_the_home_folder(shelf: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("HOME", str(shelf))
    assert look_into("").path == shelf
    assert look_into("~/quilts").path == shelf / "quilts"


def test_the_root_of_the_disk_has_nothing_above_it(shelf: Path) -> None:
    assert folder_view(look_into("/")).above == ""
    view = folder_view(look_into(str(shelf / "quilts")))
    assert (view.path, view.above) == (f"{shelf}/quilts/", f"{shelf}/")


def test_what_names_nothing_is_refused() -> None:
    with pytest.raises(Refusal, match="names no file"):
        look_into("a\0b")


def test_a_folder_is_made_with_those_above_it(shelf: Path) -> None:
    make_folder_of(shelf / "new" / "newer" / "moons.toml")
    assert (shelf / "new" / "newer").is_dir()
    make_folder_of(shelf / "moons.toml")
    with pytest.raises(Refusal, match="Put it somewhere else"):
        make_folder_of(shelf / "notes.txt" / "moons.toml")
