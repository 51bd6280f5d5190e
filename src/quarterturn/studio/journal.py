"""The journal of one design: every change is written down before it is answered, and found again after any ending.

A journal is a file of lines, only ever added to. A line is a checksum, a letter that says what it tells, and JSON:

- `O` a text was opened: where its file is (or none yet), what is in it, and the hash of the file
- `A` an act changed the text; `U` one was undone; `R` one was redone
- `S` the text was saved, or found to be that of the file: where, and the hash of the file
- `X` the file holds another text than ours, which is kept until the designer says which of the two goes on

Lines reach the system at once, so that no death of the program loses one that was answered, and the disk within a
second (`Scribe`), so that a failing machine loses no more than that. A last line that was half written is left out.
"""

from __future__ import annotations

import hashlib
import json
import os
import threading
import zlib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO, Any

from quarterturn.studio.history import History, Splice, Step

SUFFIX = ".journal"
OPENED, ACTED, UNDONE, REDONE, SAVED, OUTSIDE = b"O", b"A", b"U", b"R", b"S", b"X"
MOST_BYTES = 2**30
"""No journal is read further; a designer who paints a cell a second writes as much in some months."""


def hash_of(content: bytes) -> str:
    """Return what a file's content is told from others by (SHA-256, FIPS 180-4)."""
    return hashlib.sha256(content).hexdigest()


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a journal: what it tells, and the facts."""

    kind: bytes
    facts: Mapping[str, Any]

    @property
    def written(self) -> bytes:
        """Return the line as it stands in the file."""
        told = self.kind + b" " + json.dumps(self.facts, separators=(",", ":")).encode()
        return b"%08x %s\n" % (zlib.crc32(told), told)


def read_line(written: bytes) -> Line | None:
    """Return what a line of a file tells; nothing where it is not whole."""
    told = written[9:-1]
    if written[-1:] != b"\n" or written[:9] != b"%08x " % zlib.crc32(told):
        return None
    try:
        facts = json.loads(told[2:])
    except ValueError:
        return None
    return Line(told[:1], facts) if isinstance(facts, dict) else None


def read_lines(content: bytes) -> Iterator[tuple[Line, int]]:
    """Yield the lines of a file with where each ends, up to the first that is not whole."""
    end = 0
    for written in content.splitlines(keepends=True):
        line = read_line(written)
        if line is None:
            return
        end += len(written)
        yield line, end


@dataclass(slots=True)
class Known:
    """What a journal knows of a design: its text with all that was done to it, and what its file is."""

    path: Path | None
    history: History
    disk: str
    """The hash of the file as it was last read or written; empty where there is none."""
    saved: str
    """The text that the file then had."""
    outside: str | None = None
    """What the file holds instead, changed by someone else, until the designer decides."""

    def take(self, line: Line) -> None:
        """Take in what a further line tells. Raises ValueError, KeyError or IndexError for one that cannot follow."""
        facts = line.facts
        if line.kind == ACTED:
            self.history.do(Step(facts["act"], Splice(facts["at"], facts["cut"], facts["put"])))
        elif line.kind == UNDONE:
            self.history.undo()
        elif line.kind == REDONE:
            self.history.redo()
        elif line.kind == SAVED:
            self.path, self.disk = _path(facts["path"]), facts["disk"]
            self.saved, self.outside = self.history.text, None
        elif line.kind == OUTSIDE:
            self.outside, self.disk = facts["text"], facts["disk"]
        else:
            raise ValueError("a line of an unknown kind")


def opened(path: Path | None, text: str, disk: str, title: str) -> Line:
    """Return the first line of a journal."""
    return Line(OPENED, {"path": str(path or ""), "text": text, "disk": disk, "title": title})


def acted(step: Step) -> Line:
    """Return the line of a step."""
    change = step.splice
    return Line(ACTED, {"act": step.act, "at": change.at, "cut": change.cut, "put": change.put})


def replay(content: bytes) -> tuple[Known, int] | None:
    """Return what the content of a journal comes to and how much of it is whole; nothing where its head is not."""
    lines = read_lines(content)
    first, whole = next(lines, (None, 0))
    if first is None or first.kind != OPENED:
        return None
    facts = first.facts
    text = str(facts["text"])
    known = Known(_path(facts["path"]), History(text), facts["disk"], text if facts["disk"] else "")
    for line, end in lines:
        try:
            known.take(line)
        except (ValueError, KeyError, IndexError, TypeError):
            break
        whole = end
    return known, whole


def _path(written: str) -> Path | None:
    return Path(written) if written else None


class Scribe:
    """Lets what was written down reach the disk within a second, in a thread of its own, for all journals."""

    def __init__(self, every: float = 0.5) -> None:
        self._waiting: set[int] = set()
        self._lock = threading.Lock()
        self._syncing = threading.Lock()
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, args=(every,), name="scribe", daemon=True)
        self._thread.start()

    def soon(self, descriptor: int) -> None:
        """See to it that a file reaches the disk; returns at once."""
        with self._lock:
            self._waiting.add(descriptor)

    def forget(self, descriptor: int) -> None:
        """Let a file reach the disk now, as it is about to be closed."""
        with self._syncing:
            with self._lock:
                self._waiting.discard(descriptor)
            os.fsync(descriptor)

    def settle(self) -> None:
        """Let everything that waits reach the disk."""
        with self._syncing:
            with self._lock:
                waiting, self._waiting = self._waiting, set()
            for descriptor in waiting:
                os.fsync(descriptor)

    def stop(self) -> None:
        """Stop, when everything has reached the disk."""
        self._stop.set()
        self._thread.join()
        self.settle()

    def _run(self, every: float) -> None:
        while not self._stop.wait(every):
            self.settle()


class JournalTakenError(Exception):
    """A journal that another running studio writes."""


@dataclass(slots=True)
class Journal:
    """The open file of a journal, held by this run alone."""

    file: Path
    scribe: Scribe
    _stream: IO[bytes] = field(init=False)

    def __post_init__(self) -> None:
        """Open the file and hold it. Raises JournalTakenError, OSError."""
        self._stream = self.file.open("ab", buffering=0)
        try:
            _hold(self._stream.fileno())
        except BlockingIOError as error:
            self._stream.close()
            raise JournalTakenError(self.file.name) from error

    def read(self) -> Known | None:
        """Return what the journal comes to, and take away what was half written at its end."""
        with self.file.open("rb") as stream:
            content = stream.read(MOST_BYTES)
        found = replay(content)
        if found is None:
            return None
        known, whole = found
        if whole < len(content):
            self._stream.truncate(whole)
        return known

    def begin(self, line: Line) -> None:
        """Begin anew with a first line."""
        self._stream.truncate(0)
        self.write(line)

    def write(self, *lines: Line) -> None:
        """Write lines down. Raises OSError, and then none of them is there."""
        content = b"".join(line.written for line in lines)
        before = self.file.stat().st_size
        try:
            if self._stream.write(content) != len(content):
                raise OSError(28, os.strerror(28), str(self.file))
        except OSError:
            self._stream.truncate(before)
            raise
        self.scribe.soon(self._stream.fileno())

    def close(self) -> None:
        """Let go of the file, when all of it has reached the disk."""
        if not self._stream.closed:
            self.scribe.forget(self._stream.fileno())
            self._stream.close()


def _hold(descriptor: int) -> None:
    """Hold a lock, which the system lets go of however the run ends. Raises BlockingIOError where another has it."""
    try:
        import fcntl
    except ImportError:  # Windows has no such lock; two studios there are told apart by the file's hash alone
        return
    fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
