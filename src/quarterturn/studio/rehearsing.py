"""The rehearsal, carried out in a thread of its own: told as it goes, and able to be called off."""

from __future__ import annotations

import threading
import time
from dataclasses import dataclass, field, replace
from typing import Literal

from quarterturn.studio.papers import Paper
from quarterturn.studio.refusals import BusyError
from quarterturn.studio.stages import OneSize

State = Literal["none", "running", "comparing", "done", "failed", "cancelled"]
WORKING = ("running", "comparing")

APART = 0.1
"""Seconds at least between two news of how far it is."""


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a rehearsal has come: `done` of `steps`; `reason` says why it failed."""

    state: State = "none"
    revision: int = 0
    size: str = ""
    done: int = 0
    steps: int = 0
    reason: str = ""


class _CalledOffError(Exception):
    """The designer has called the rehearsal off."""


@dataclass(slots=True)
class Run:
    """One rehearsal, and how far it has come."""

    paper: Paper
    progress: Progress
    off: threading.Event = field(default_factory=threading.Event)
    told: float = 0.0

    def tell(self, **changes: object) -> None:
        """Go on, and let the windows know."""
        self.progress = replace(self.progress, **changes)  # type: ignore[arg-type]
        now = self.progress
        self.told = time.monotonic()
        facts = {"state": now.state, "revision": now.revision, "done": now.done, "steps": now.steps}
        self.paper.news.tell("rehearsal", **facts)

    def stepped(self, done: int) -> None:
        """Take in that a step is done. Raises _CalledOffError."""
        self.begin()
        if time.monotonic() - self.told > APART:
            self.tell(done=done)
        else:
            self.progress = replace(self.progress, done=done)

    def begin(self) -> None:
        """Raises _CalledOffError where it has been called off."""
        if self.off.is_set():
            raise _CalledOffError


class Rehearsals:
    """The last rehearsal of each open design."""

    def __init__(self) -> None:
        self._runs: dict[str, Run] = {}
        self._lock = threading.Lock()

    def start(self, paper: Paper, revision: int, size: OneSize) -> Progress:
        """Begin to rehearse a size as it is now. Raises BusyError, UnmadeError."""
        name = size.laid_design.size
        with self._lock:
            known = self._runs.get(paper.id)
            if known and known.progress.state in WORKING and not known.off.is_set():
                raise BusyError("This design is being rehearsed.", "Wait for it, or call it off.")
            run = Run(paper, Progress("running", revision, name))
            self._runs[paper.id] = run
        threading.Thread(target=_carry_out, args=(run, size), name="rehearsal", daemon=True).start()
        return run.progress

    def progress(self, paper: Paper) -> Progress:
        """Return how far the last rehearsal of a design has come."""
        run = self._runs.get(paper.id)
        return run.progress if run else Progress()

    def call_off(self, paper: Paper) -> Progress:
        """Call a rehearsal off; it ends before its next step."""
        if run := self._runs.get(paper.id):
            run.off.set()
        return self.progress(paper)

    def stop(self) -> None:
        """Call everything off."""
        for run in self._runs.values():
            run.off.set()


def _carry_out(run: Run, size: OneSize) -> None:
    """Rehearse, and tell how it ended, whatever happens."""
    from quarterturn.studio.views.film import film_of

    try:
        steps = len(size.steps().steps)
        run.begin()
        run.tell(steps=steps)
        film = film_of(size, run.stepped)
        run.begin()
        run.tell(state="comparing", done=len(film.shots))
        size.prove_by(film.rehearsal)
        run.begin()
        run.tell(state="done")
    except _CalledOffError:
        run.tell(state="cancelled")
    except Exception as error:  # the thread ends here, and the windows must hear of it
        said = f"This is a fault of the program, not of your design ({type(error).__name__})."
        run.tell(state="failed", reason=said)
