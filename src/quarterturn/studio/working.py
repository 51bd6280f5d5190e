"""Work ahead, in a thread of its own: figures first, plans next, findings last; a newer revision drops older work."""

from __future__ import annotations

import threading
from collections import OrderedDict

from quarterturn.materials import EFFORT, QUICK, Effort
from quarterturn.studio.papers import Paper, Snapshot
from quarterturn.studio.stages import UnmadeError

QUIET = 0.35
"""Seconds without an edit after which slow work begins, so that a hand that paints is not held up."""


class Worker:
    """Makes ready what the windows will ask for next, and tells them as it is there."""

    def __init__(self, quiet: float = QUIET) -> None:
        self._quiet = quiet
        self._waiting: OrderedDict[str, Paper] = OrderedDict()
        self._changed = threading.Condition()
        self._is_stopped = False
        self._settled: dict[str, int] = {}
        self._found: dict[str, tuple[int, int]] = {}
        self._thread = threading.Thread(target=self._run, name="worker", daemon=True)
        self._thread.start()

    def soon(self, paper: Paper) -> None:
        """See to it that a paper's newest text is worked on."""
        with self._changed:
            self._waiting.pop(paper.id, None)
            self._waiting[paper.id] = paper
            self._changed.notify()

    def effort(self, paper: Paper, revision: int) -> Effort:
        """Return what can be shown of a revision without waiting."""
        return EFFORT if self._settled.get(paper.id) == revision else QUICK

    def found(self, paper: Paper, revision: int) -> int | None:
        """Return how many findings the checks make of a revision; None until they have been made."""
        known, count = self._found.get(paper.id, (None, 0))
        return count if known == revision else None

    def stop(self) -> None:
        """Begin nothing more, and wait for the thread only as long as it takes to notice."""
        with self._changed:
            self._is_stopped = True
            self._changed.notify()
        self._thread.join(0.2)

    def _run(self) -> None:
        while paper := self._next():
            now = paper.now
            try:
                self._work(paper, now)
            except UnmadeError:
                paper.news.tell("findings", revision=now.revision)
            except Exception as error:  # a fault of a stage must not end the work on all other designs
                paper.news.tell("fault", revision=now.revision, kind=type(error).__name__)

    def _next(self) -> Paper | None:
        with self._changed:
            self._changed.wait_for(lambda: self._waiting or self._is_stopped)
            return None if self._is_stopped else self._waiting.popitem(last=True)[1]

    def _work(self, paper: Paper, now: Snapshot) -> None:
        """Make the figures at once, and the rest after a while of quiet. Raises UnmadeError."""
        made = paper.stages.at(now.text, paper.name)
        made.size().materials(QUICK)
        paper.news.tell("figures", revision=now.revision)
        if self._is_disturbed(paper, now):
            return
        for size in made.sizes:
            size.pattern()
            if self._is_old(paper, now):
                return
        self._settled[paper.id] = now.revision
        paper.news.tell("plans", revision=now.revision)
        found = len(made.findings)
        self._found[paper.id] = now.revision, found
        paper.news.tell("findings", revision=now.revision, findings=found)

    def _is_disturbed(self, paper: Paper, now: Snapshot) -> bool:
        """Wait for a while of quiet; tell whether there was none."""
        with self._changed:
            return self._changed.wait_for(lambda: self._is_old(paper, now), self._quiet)

    def _is_old(self, paper: Paper, now: Snapshot) -> bool:
        return self._is_stopped or paper.now.revision != now.revision
