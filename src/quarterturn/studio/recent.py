"""The designs that were open before, as their journals tell: newest first."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from quarterturn.studio.journal import MOST_BYTES, OPENED, SAVED, SUFFIX, read_line

_KINDS = (OPENED + b" ", SAVED + b" ")
_IDENTITY = re.compile(r"[0-9a-f]{16}")

MOST = 60
"""Designs that the start page lists."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A design that was open: the id of its journal, where its file is if it has one, when it was last changed."""

    id: str
    path: Path | None
    title: str
    changed: float


@dataclass(slots=True)
class Shelf:
    """The folder of journals. Each is read again only after it was written."""

    folder: Path
    _read: dict[str, tuple[tuple[int, int], Entry | None]] = field(default_factory=dict)

    def file(self, identity: str) -> Path | None:
        """Return the journal of an id, if there can be one: nothing else is ever opened by an id."""
        return self.folder / f"{identity}{SUFFIX}" if _IDENTITY.fullmatch(identity) else None

    def entries(self) -> list[Entry]:
        """Return all designs, that which was changed last first."""
        found = [entry for entry in self._entries() if entry]
        return sorted(found, key=lambda entry: (-entry.changed, entry.id))

    def of_path(self, path: Path) -> Entry | None:
        """Return the design of a file, if it was open before."""
        return next((entry for entry in self.entries() if entry.path == path), None)

    def _entries(self) -> Iterator[Entry | None]:
        for file in self.folder.glob(f"*{SUFFIX}"):
            if not _IDENTITY.fullmatch(file.stem):
                continue
            try:
                told = file.stat()
                stamp = (told.st_mtime_ns, told.st_size)
                if self._read.get(file.stem, (None,))[0] != stamp:
                    self._read[file.stem] = (stamp, read_head(file, told.st_mtime))
            except OSError:  # it has gone meanwhile, or is not ours to read
                continue
            yield self._read[file.stem][1]


def read_head(file: Path, changed: float) -> Entry | None:
    """Return what a journal tells of its file; nothing where it is none. Lines that tell of edits are passed over."""
    path, title, is_begun = "", "", False
    with file.open("rb") as stream:
        for written in stream.read(MOST_BYTES).splitlines(keepends=True):
            if written[9:11] not in _KINDS:
                continue
            line = read_line(written)
            if line is None or (not is_begun and line.kind != OPENED):
                return None
            is_begun = True
            path, title = str(line.facts.get("path", "")), str(line.facts.get("title", title))
    return Entry(file.stem, Path(path) if path else None, title, changed) if is_begun else None
