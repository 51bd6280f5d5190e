"""What was written down is found again, whatever became of the end of the file."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.studio.history import Step, splice
from quarterturn.studio.journal import (
    OUTSIDE,
    REDONE,
    SAVED,
    UNDONE,
    Journal,
    JournalTakenError,
    Line,
    Scribe,
    acted,
    opened,
    read_line,
    replay,
)

LINES = (
    opened(Path("/quilts/a.toml"), "one", "hash 1", "A"),
    acted(Step("write", splice("one", "two"))),
    acted(Step("write", splice("two", "two ½\n"))),
    Line(UNDONE, {}),
    Line(REDONE, {}),
    Line(SAVED, {"path": "/quilts/b.toml", "disk": "hash 2", "title": "B"}),
    acted(Step("write", splice("two ½\n", "three"))),
    Line(OUTSIDE, {"text": "four", "disk": "hash 3"}),
)
TEXTS = ("one", "two", "two ½\n", "two", "two ½\n", "two ½\n", "three", "three")
CONTENT = b"".join(line.written for line in LINES)


@pytest.fixture
def scribe() -> Iterator[Scribe]:
    scribe = Scribe(every=0.01)
    yield scribe
    scribe.stop()


def test_a_journal_comes_to_the_text_and_to_all_that_was_done() -> None:
    found = replay(CONTENT)
    assert found is not None
    known, whole = found
    assert whole == len(CONTENT)
    assert (known.path, known.disk, known.saved) == (Path("/quilts/b.toml"), "hash 3", "two ½\n")
    assert (known.history.text, known.history.revision, known.outside) == ("three", 5, "four")
    assert [step.act for step in known.history.done] == ["write"] * 3


@given(st.integers(len(LINES[0].written), len(CONTENT)))
def test_a_journal_cut_off_anywhere_comes_to_its_last_whole_line(end: int) -> None:
    found = replay(CONTENT[:end])
    assert found is not None
    known, whole = found
    count = CONTENT[:end].count(b"\n")
    assert whole == sum(len(line.written) for line in LINES[:count])
    assert known.history.text == TEXTS[count - 1]


@given(st.integers(0, len(CONTENT) - 1), st.integers(1, 255))
def test_a_byte_that_was_damaged_ends_what_is_believed(place: int, by: int) -> None:
    damaged = bytearray(CONTENT)
    damaged[place] ^= by
    found = replay(bytes(damaged))
    line = CONTENT[:place].count(b"\n")
    if line == 0:
        assert found is None
    else:
        assert found is not None
        assert found[0].history.text == TEXTS[line - 1]


@given(st.binary(max_size=60))
def test_whatever_bytes_come_to_nothing_without_a_fault(content: bytes) -> None:
    assert replay(content) is None


def test_a_line_that_cannot_follow_is_left_out() -> None:
    odd = acted(Step("write", splice("other", "text"))).written
    found = replay(LINES[0].written + odd)
    assert found is not None
    assert found[0].history.text == "one"
    assert found[1] == len(LINES[0].written)


@given(st.text())
def test_a_line_is_read_as_it_was_written(text: str) -> None:
    line = opened(None, text, "", text)
    assert line.written.count(b"\n") == 1
    assert read_line(line.written) == line


def test_what_was_half_written_is_taken_away_and_written_over(tmp_path: Path, scribe: Scribe) -> None:
    file = tmp_path / "a.journal"
    file.write_bytes(CONTENT[:-3])
    journal = Journal(file, scribe)
    known = journal.read()
    assert known is not None
    journal.write(Line(UNDONE, {}))
    journal.close()
    again = replay(file.read_bytes())
    assert again is not None
    assert again[0].history.text == "two ½\n"
    assert again[1] == file.stat().st_size


def test_one_run_alone_holds_a_journal(tmp_path: Path, scribe: Scribe) -> None:
    journal = Journal(tmp_path / "a.journal", scribe)
    with pytest.raises(JournalTakenError):
        Journal(tmp_path / "a.journal", scribe)
    journal.close()
    Journal(tmp_path / "a.journal", scribe).close()


def test_a_line_that_cannot_be_written_is_not_there(
    tmp_path: Path, scribe: Scribe, monkeypatch: pytest.MonkeyPatch
) -> None:
    journal = Journal(tmp_path / "a.journal", scribe)
    journal.begin(LINES[0])

    class Full:
        """A disk that takes half of a line."""

        def __init__(self, stream: object) -> None:
            self._stream = stream

        def write(self, content: bytes) -> int:
            return int(getattr(self._stream, "write")(content[: len(content) // 2]))  # noqa: B009

        def __getattr__(self, name: str) -> object:
            return getattr(self._stream, name)

    monkeypatch.setattr(journal, "_stream", Full(journal._stream))
    with pytest.raises(OSError, match="No space"):
        journal.write(LINES[1])
    assert (tmp_path / "a.journal").read_bytes() == LINES[0].written
    journal.close()


def test_lines_reach_the_disk_within_a_second(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import threading

    synced = threading.Event()
    monkeypatch.setattr(os, "fsync", lambda descriptor: synced.set())
    scribe = Scribe()
    journal = Journal(tmp_path / "a.journal", scribe)
    journal.begin(LINES[0])
    assert synced.wait(1.0)
    journal.close()
    scribe.stop()
