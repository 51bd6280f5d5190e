"""A publish never takes the place of anything that no publish made."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.files import CONTENTS, ForeignFolderError, guard, guard_others
from quarterturn.publish import release

SUM = "0" * 64


def published(folder: Path, *names: str) -> Path:
    folder.mkdir()
    for name in names:
        (folder / name).touch()
    (folder / CONTENTS).write_text("".join(f"{SUM}  {name}\n" for name in names), encoding="utf-8")
    return folder


def test_the_list_of_contents_is_the_one_that_a_release_makes() -> None:
    assert release.CONTENTS == CONTENTS


def test_nothing_an_empty_folder_and_a_published_folder_may_be_replaced(tmp_path: Path) -> None:
    guard(tmp_path / "absent")
    (tmp_path / "empty").mkdir()
    guard(tmp_path / "empty")
    guard(published(tmp_path / "out", "booklet.pdf", "a name with  blanks.svg"))


def test_a_file_in_the_place_is_refused(tmp_path: Path) -> None:
    (tmp_path / "out").touch()
    with pytest.raises(ForeignFolderError, match="is a file"):
        guard(tmp_path / "out")


def test_a_folder_with_anything_else_is_refused(tmp_path: Path) -> None:
    folder = published(tmp_path / "out", "booklet.pdf")
    (folder / "letter to the shop.txt").touch()
    with pytest.raises(ForeignFolderError, match=r"holds letter to the shop\.txt"):
        guard(folder)


def test_a_folder_with_an_unreadable_list_is_refused(tmp_path: Path) -> None:
    folder = published(tmp_path / "out", "booklet.pdf")
    (folder / CONTENTS).write_bytes(b"\xff\xfe")
    with pytest.raises(ForeignFolderError, match=r"holds booklet\.pdf"):
        guard(folder)


def test_the_folder_one_is_in_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "in").mkdir()
    monkeypatch.chdir(tmp_path / "in")
    with pytest.raises(ForeignFolderError, match="is the folder you are in"):
        guard(Path())
    with pytest.raises(ForeignFolderError, match="is the folder you are in"):
        guard(tmp_path)


def test_other_parts_published_before_are_not_lost(tmp_path: Path) -> None:
    folder = published(tmp_path / "out", "booklet.pdf", "picture.png")
    guard_others(folder, ["picture.png", "booklet.pdf", CONTENTS])
    with pytest.raises(ForeignFolderError, match=r"holds booklet\.pdf"):
        guard_others(folder, ["picture.png", CONTENTS])
