"""The designs that were open before are listed as their journals tell."""

from __future__ import annotations

import os
from pathlib import Path

from quarterturn.studio.history import Step, splice
from quarterturn.studio.journal import SAVED, Line, acted, opened
from quarterturn.studio.recent import Shelf


def journal(folder: Path, identity: str, *lines: Line, changed: float = 0) -> None:
    file = folder / f"{identity}.journal"
    file.write_bytes(b"".join(line.written for line in lines))
    os.utime(file, (changed, changed))


def test_the_newest_comes_first_and_each_has_its_last_file_and_title(tmp_path: Path) -> None:
    first = opened(Path("/a.toml"), "one", "hash", "One")
    edited = acted(Step("write", splice("one", "two")))
    saved = Line(SAVED, {"path": "/b.toml", "disk": "hash", "title": "Two"})
    journal(tmp_path, "0" * 16, first, edited, saved, edited, changed=10)
    journal(tmp_path, "1" * 16, opened(None, "x", "", "Three"), changed=20)
    found = [(entry.id[0], entry.path, entry.title, entry.changed) for entry in Shelf(tmp_path).entries()]
    assert found == [("1", None, "Three", 20.0), ("0", Path("/b.toml"), "Two", 10.0)]


def test_what_is_no_journal_is_not_listed(tmp_path: Path) -> None:
    (tmp_path / "notes.journal").write_bytes(opened(None, "", "", "").written)
    (tmp_path / f"{'2' * 16}.journal").write_bytes(b"")
    (tmp_path / f"{'3' * 16}.journal").write_bytes(b"\xff" * 100)
    (tmp_path / f"{'4' * 16}.journal").write_bytes(opened(None, "", "", "").written[:-9])
    journal(tmp_path, "5" * 16, Line(SAVED, {"path": "/b.toml", "disk": ""}))
    assert Shelf(tmp_path).entries() == []


def test_a_journal_is_read_again_only_after_it_was_written(tmp_path: Path) -> None:
    shelf = Shelf(tmp_path)
    journal(tmp_path, "0" * 16, opened(None, "", "", "One"))
    assert shelf.entries()[0].title == "One"
    journal(tmp_path, "0" * 16, opened(None, "", "", "Two"))  # of the same length, at the same time
    assert shelf.entries()[0].title == "One"
    journal(tmp_path, "0" * 16, opened(None, "", "", "Two"), changed=5)
    assert shelf.entries()[0].title == "Two"
