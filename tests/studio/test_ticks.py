"""Ticks are kept by design and size, and survive a file that cannot be read."""

from __future__ import annotations

from pathlib import Path

from quarterturn.studio.ticks import Ticks


def test_a_tick_is_there_again_for_whoever_opens_the_folder(tmp_path: Path) -> None:
    ticks = Ticks(tmp_path / "state")
    assert ticks.of("quay", "throw") == frozenset()
    ticks.tick("quay", "throw", "a1", done=True)
    assert ticks.tick("quay", "throw", "b2", done=True) == {"a1", "b2"}
    assert Ticks(tmp_path / "state").of("quay", "throw") == {"a1", "b2"}
    assert ticks.of("quay", "queen") == ticks.of("moor", "throw") == frozenset()


def test_a_tick_can_be_taken_away_one_by_one_or_all(tmp_path: Path) -> None:
    ticks = Ticks(tmp_path)
    ticks.tick("quay", "throw", "a1", done=True)
    ticks.tick("quay", "throw", "b2", done=True)
    assert ticks.tick("quay", "throw", "a1", done=False) == {"b2"}
    ticks.clear("quay", "throw")
    assert ticks.of("quay", "throw") == frozenset()


def test_a_broken_file_loses_ticks_but_breaks_nothing(tmp_path: Path) -> None:
    (tmp_path / "ticks.json").write_text('{"quay": ', encoding="utf-8")
    assert Ticks(tmp_path).tick("quay", "throw", "a1", done=True) == {"a1"}
