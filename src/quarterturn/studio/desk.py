"""The desk: all designs that are open, each found again as it was left, whatever ended the run before."""

from __future__ import annotations

import os
import secrets
import shutil
import threading
from collections.abc import Callable
from pathlib import Path

from quarterturn.files import write_file
from quarterturn.studio.filing import Filed, read_file
from quarterturn.studio.history import History
from quarterturn.studio.journal import Journal, JournalTakenError, Known, Scribe, opened
from quarterturn.studio.papers import Paper
from quarterturn.studio.recent import Entry, Shelf
from quarterturn.studio.refusals import NotHereError, Refusal, TakenError, reason
from quarterturn.studio.stages import Stages

LOOK_EVERY = 1.0
"""Seconds between two looks at the files of open designs."""


def state_folder() -> Path:
    """Return where the studio keeps what it must find again (XDG Base Directory Specification, state)."""
    named = os.environ.get("XDG_STATE_HOME", "")
    home = Path(named) if Path(named).is_absolute() else Path.home() / ".local" / "state"
    return home / "quarterturn"


class Desk:
    """The open designs. Every method may be called from any thread."""

    def __init__(self, state: Path, on_change: Callable[[Paper], None] = lambda paper: None) -> None:
        """Make the state folder ready; only its owner may look into it. Raises OSError."""
        self.state = state
        self.shelf = Shelf(state / "journals")
        self.shelf.folder.mkdir(parents=True, exist_ok=True)
        state.chmod(0o700)
        self._on_change = on_change
        self._scribe = Scribe()
        self._papers: dict[str, Paper] = {}
        self._lock = threading.RLock()
        self._stop = threading.Event()
        self._watcher = threading.Thread(target=self._watch, name="watcher", daemon=True)
        self._watcher.start()

    def papers(self) -> list[Paper]:
        """Return the designs that are open."""
        with self._lock:
            return list(self._papers.values())

    def paper(self, identity: str) -> Paper:
        """Return an open design, or open one of an earlier run again. Raises NotHereError."""
        with self._lock:
            if identity in self._papers:
                return self._papers[identity]
            file = self.shelf.file(identity)
            if file is None or not file.is_file():
                raise NotHereError("This design is not open.", "Open it from the start page.")
            try:
                return self._resume(identity, file)
            except JournalTakenError as error:
                raise Refusal("This design is open in another studio.", "Go on there, or end it.") from error

    def open(self, path: Path) -> Paper:
        """Open a file, with all that was done to it before. Raises Refusal."""
        with self._lock:
            for paper in self._papers.values():
                if paper.now.path == path:
                    paper.look()
                    return paper
            entry = self.shelf.of_path(path)
            is_elsewhere = False
            if entry:
                try:
                    if path.exists() and (again := self._resumed(entry)):
                        return again
                except JournalTakenError:
                    is_elsewhere = True
            filed = read_file(path)
            paper = self._begin(path, filed)
            paper.news.is_elsewhere = is_elsewhere
            return paper

    def begin(self, text: str) -> Paper:
        """Begin a design that has no file yet. Raises Refusal."""
        with self._lock:
            return self._begin(None, Filed(text, ""))

    def duplicate(self, paper: Paper, path: Path) -> Paper:
        """Write a copy of a design into a new file, and open that. Raises TakenError, Refusal."""
        if path.exists():
            raise TakenError(f"{path.name} is there already.", "Give the copy another name.")
        try:
            write_file(path, paper.now.text.encode())
        except OSError as error:
            raise Refusal(reason(error), "Put the copy somewhere else.") from error
        return self.open(path)

    def save(self, paper: Paper, path: Path | None = None, *, replace: bool = False) -> None:
        """Save a design, with the photos that were kept for it until it had a file. Raises Refusal."""
        if any(other.now.path == path for other in self.papers() if path and other is not paper):
            raise Refusal("Another open design has this file.", "Close that one, or give another name.")
        before = self.photos(paper)
        paper.save(path, replace=replace)
        after = self.photos(paper)
        if before == after or not before.is_dir():
            return
        for photo in sorted(before.glob("cloth-*.jpg")):
            try:
                if not (after / photo.name).exists():
                    write_file(after / photo.name, photo.read_bytes())
            except OSError as error:
                raise Refusal(reason(error), "Bring the photos beside the design by hand.") from error

    def close(self, paper: Paper) -> None:
        """Close a design. All that was done to it is kept, unless that is nothing."""
        with self._lock:
            if self._papers.pop(paper.id, None):
                paper.close()
                if paper.is_blank:
                    self._forget(paper.id)

    def entries(self) -> list[Entry]:
        """Return the designs that were open at some time, newest first."""
        with self._lock:
            return self.shelf.entries()

    def photos(self, paper: Paper) -> Path:
        """Return the folder of a design's photos: beside its file, or kept for it until it has one."""
        path = paper.now.path
        return path.parent if path else self.state / "photos" / paper.id

    def stop(self) -> None:
        """Close everything."""
        self._stop.set()
        self._watcher.join()
        for paper in self.papers():
            self.close(paper)
        self._scribe.stop()

    def _resumed(self, entry: Entry) -> Paper | None:
        """Open a design of an earlier run again; put its journal aside where it cannot be read."""
        file = self.shelf.file(entry.id)
        assert file is not None
        try:
            return self._resume(entry.id, file)
        except NotHereError:
            file.replace(file.with_suffix(".damaged"))
            return None

    def _resume(self, identity: str, file: Path) -> Paper:
        journal = Journal(file, self._scribe)
        known = journal.read()
        if known is None:
            journal.close()
            raise NotHereError("The journal of this design cannot be read.", "Open its file again.")
        paper = self._lay(identity, known, journal)
        paper.look()
        return paper

    def _begin(self, path: Path | None, filed: Filed) -> Paper:
        identity = secrets.token_hex(8)
        file = self.shelf.file(identity)
        assert file is not None
        known = Known(path, History(filed.text), filed.disk, filed.text if filed.disk else "")
        try:
            journal = Journal(file, self._scribe)
            paper = Paper(identity, known, journal, Stages())
            journal.begin(opened(path, filed.text, filed.disk, paper.title))
        except OSError as error:
            raise Refusal(reason(error), "Make room for the journals of the studio.") from error
        return self._add(paper)

    def _lay(self, identity: str, known: Known, journal: Journal) -> Paper:
        return self._add(Paper(identity, known, journal, Stages()))

    def _add(self, paper: Paper) -> Paper:
        paper.on_change = self._on_change
        self._papers[paper.id] = paper
        self._on_change(paper)
        return paper

    def _forget(self, identity: str) -> None:
        file = self.shelf.file(identity)
        if file:
            file.unlink(missing_ok=True)
        shutil.rmtree(self.state / "photos" / identity, ignore_errors=True)

    def _watch(self) -> None:
        while not self._stop.wait(LOOK_EVERY):
            for paper in self.papers():
                try:
                    paper.look()
                except Refusal:  # the journal cannot be written now; the next act will tell
                    continue
