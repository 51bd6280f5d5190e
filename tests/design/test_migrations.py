"""Formats of the file, old and new."""

from __future__ import annotations

from typing import Any

from quarterturn.design.migrations import MIGRATIONS, Migration, migrate, newest
from quarterturn.design.notes import Notes


def rename_curve(data: dict[str, Any]) -> dict[str, Any]:
    return {("curve" if key == "bend" else key): value for key, value in data.items()}


def add_paper(data: dict[str, Any]) -> dict[str, Any]:
    return data | {"paper": "a4"}


FAKE = (Migration(1, rename_curve), Migration(2, add_paper))


def test_the_migrations_are_in_order_without_a_gap() -> None:
    assert [migration.origin for migration in MIGRATIONS] == list(range(1, newest()))


def test_data_is_brought_from_each_format_to_the_newest() -> None:
    notes = Notes()
    assert newest(FAKE) == 3
    assert migrate({"format": 1, "bend": 1}, notes, FAKE) == {"format": 3, "curve": 1, "paper": "a4"}
    assert migrate({"format": 2, "curve": 1}, notes, FAKE) == {"format": 3, "curve": 1, "paper": "a4"}
    assert migrate({"format": 3, "curve": 1}, notes, FAKE) == {"format": 3, "curve": 1}
    assert notes.findings == []


def test_a_format_before_the_first_or_after_the_last_is_refused() -> None:
    for version, code in ((0, "format-unknown"), (4, "format-newer")):
        notes = Notes()
        assert migrate({"format": version}, notes, FAKE) is None
        assert [finding.code for finding in notes.findings] == [code]


def test_a_file_without_a_format_is_taken_to_be_of_the_newest() -> None:
    notes = Notes()
    assert migrate({"title": "x"}, notes, FAKE) == {"title": "x"}
    assert notes.findings[0].remedy == "Write format = 3 at the top of the file."
