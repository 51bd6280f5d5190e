"""One open design: its text with all that was done to it, its journal, its file, and the windows that look at it."""

from __future__ import annotations

import threading
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from quarterturn.files import write_file
from quarterturn.studio.filing import Filed, hash_now, read_file
from quarterturn.studio.history import Step, splice
from quarterturn.studio.journal import (
    OUTSIDE,
    REDONE,
    SAVED,
    UNDONE,
    Journal,
    Known,
    Line,
    acted,
    hash_of,
)
from quarterturn.studio.news import Newsroom
from quarterturn.studio.refusals import OutsideError, Refusal, StaleError, TakenError, reason

if TYPE_CHECKING:
    from quarterturn.studio.acts import Act
    from quarterturn.studio.stages import Made, Stages

OUTSIDE_ACT = "outside"
KEEP_ACT = "keep-mine"
"""Steps that no act made: the text of the file as someone else wrote it, and ours after it."""


@dataclass(frozen=True, slots=True)
class Snapshot:
    """A design at one moment, which stays as it is while the design goes on."""

    revision: int
    text: str
    path: Path | None
    is_saved: bool
    is_outside: bool
    done: str | None
    undone: str | None
    """The names of the acts that undo and redo would concern."""


@dataclass(frozen=True, slots=True)
class Result:
    """What a change came to. `facts` tell what it did; the page has the words."""

    revision: int
    changed: bool
    act: str
    facts: Mapping[str, str | int]


class Paper:
    """An open design. Every method may be called from any thread."""

    def __init__(self, identity: str, known: Known, journal: Journal, stages: Stages) -> None:
        self.id, self.stages, self.news = identity, stages, Newsroom()
        self._known, self._journal = known, journal
        self._lock = threading.RLock()
        self._now = self._seen()
        self.on_change: Callable[[Paper], None] = lambda paper: None

    @property
    def now(self) -> Snapshot:
        """Return the design as it is at this moment."""
        return self._now

    @property
    def name(self) -> str:
        """Return what the file is called, or would be."""
        path = self._now.path
        return path.name if path else "design.toml"

    @property
    def title(self) -> str:
        """Return the title of the quilt; nothing where the text is no design."""
        design = self.stages.at(self._now.text, self.name).reading.design
        return design.title if design else ""

    def made(self) -> tuple[Snapshot, Made]:
        """Return the design as it is at this moment with what the stages make of it."""
        now = self._now
        return now, self.stages.at(now.text, self.name)

    def act(self, revision: int, act: Act) -> Result:
        """Do an act. Raises StaleError, and RefusedError of the acts."""
        from quarterturn.studio.acts import do

        with self._lock:
            self._check(revision)
            done = do(act, self._known.history.text, self.stages)
            if not done.changed:
                return Result(self._now.revision, False, done.act, done.facts)
            self._do(done.act, done.made.text)
            return Result(self._now.revision, True, done.act, done.facts)

    def undo(self, revision: int) -> Result:
        """Undo the last step. Where there is none, nothing is changed."""
        with self._lock:
            self._check(revision)
            if not self._known.history.done:
                return Result(self._now.revision, False, "", {})
            self._write(Line(UNDONE, {}))
            return self._gone(self._known.history.undo())

    def redo(self, revision: int) -> Result:
        """Redo what was undone last. Where there is nothing, nothing is changed."""
        with self._lock:
            self._check(revision)
            if not self._known.history.undone:
                return Result(self._now.revision, False, "", {})
            self._write(Line(REDONE, {}))
            return self._gone(self._known.history.redo())

    def save(self, target: Path | None = None, *, replace: bool = False) -> Snapshot:
        """Write the text into its file, or into another that is then its file.

        Raises OutsideError where someone else wrote into it since, TakenError where another file would be written
        over without `replace`, and Refusal where there is no file or it cannot be written.
        """
        with self._lock:
            place = target or self._known.path
            if place is None:
                raise Refusal("The design has no file yet.", "Say where to save it.")
            if place == self._known.path:
                self._look()
                if self._known.outside is not None:
                    raise OutsideError(place.name)
            elif place.exists() and not replace:
                raise TakenError(f"{place.name} is there already.", "Give another name, or replace it.")
            return self._save(place)

    def keep(self, revision: int, *, ours: bool) -> Result:
        """Go on with our text, or with that of the file, after both were changed. Undo brings the other back."""
        with self._lock:
            self._check(revision)
            theirs, mine = self._known.outside, self._known.history.text
            if theirs is None:
                return Result(self._now.revision, False, "", {})
            self._take_theirs(theirs)
            if ours:
                self._do(KEEP_ACT, mine)
            return Result(self._now.revision, True, KEEP_ACT if ours else OUTSIDE_ACT, {})

    def look(self) -> None:
        """Look whether someone else wrote into the file. Raises OSError where the journal cannot be written."""
        with self._lock:
            self._look()

    def close(self) -> None:
        """Let go of the journal and end the news."""
        with self._lock:
            self.news.close()
            self._journal.close()

    @property
    def is_blank(self) -> bool:
        """Tell whether nothing was ever done to it and it has no file, so that there is nothing to keep."""
        history = self._known.history
        return self._known.path is None and not history.done and not history.undone

    def _look(self) -> None:
        path = self._known.path
        if path is None:
            return
        disk = hash_now(path)
        if disk in ("", self._known.disk):
            return
        try:
            filed = read_file(path)
        except Refusal:  # it has gone since, or holds what is no text: saving will write over neither unasked
            filed = Filed("", disk, is_text=False)
        self._found(filed)

    def _found(self, filed: Filed) -> None:
        """Take in that the file holds something else than was known."""
        history = self._known.history
        if filed.text == history.text:
            self._note(Line(SAVED, {**self._place(), "disk": filed.disk}))
        elif self._now.is_saved and filed.is_text:
            self._do(OUTSIDE_ACT, filed.text)
            self._note(Line(SAVED, {**self._place(), "disk": filed.disk}))
            self.news.tell("outside", conflict=False)
        else:
            self._note(Line(OUTSIDE, {"text": filed.text, "disk": filed.disk}))
            self.news.tell("outside", conflict=True)

    def _take_theirs(self, theirs: str) -> None:
        self._do(OUTSIDE_ACT, theirs)
        self._note(Line(SAVED, {**self._place(), "disk": self._known.disk}))

    def _place(self) -> dict[str, str]:
        return {"path": str(self._known.path or "")}

    def _save(self, place: Path) -> Snapshot:
        content = self._known.history.text.encode()
        try:
            write_file(place, content)
        except OSError as error:
            raise Refusal(reason(error), "Save it somewhere else.") from error
        facts = {"path": str(place), "disk": hash_of(content), "title": self.title}
        self._note(Line(SAVED, facts))
        self.news.tell("saved", revision=self._now.revision)
        return self._now

    def _check(self, revision: int) -> None:
        if revision != self._known.history.revision:
            raise StaleError(self._known.history.revision)

    def _do(self, act: str, text: str) -> None:
        """Write a step down, and then do it."""
        step = Step(act, splice(self._known.history.text, text))
        self._note(acted(step))
        self._tell(act)

    def _note(self, line: Line) -> None:
        self._write(line)
        self._known.take(line)
        self._now = self._seen()

    def _write(self, line: Line) -> None:
        try:
            self._journal.write(line)
        except OSError as error:
            sentence = f"The journal cannot be written ({(error.strerror or str(error)).lower()})."
            raise Refusal(sentence, "Make room on the disk; until then nothing is changed.") from error

    def _gone(self, act: str) -> Result:
        self._now = self._seen()
        self._tell(act)
        return Result(self._now.revision, True, act, {})

    def _tell(self, act: str) -> None:
        self.news.tell("revision", revision=self._now.revision, act=act)
        self.on_change(self)

    def _seen(self) -> Snapshot:
        known, history = self._known, self._known.history
        return Snapshot(
            revision=history.revision,
            text=history.text,
            path=known.path,
            is_saved=bool(known.disk) and known.saved == history.text and known.outside is None,
            is_outside=known.outside is not None,
            done=history.done[-1].act if history.done else None,
            undone=history.undone[-1].act if history.undone else None,
        )
