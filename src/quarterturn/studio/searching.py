"""Searches of the finder: the newest of a design goes on, and ends those before it, which nobody waits for any more."""

from __future__ import annotations

import threading
from collections import Counter
from collections.abc import Callable

from quarterturn.studio.papers import Paper
from quarterturn.studio.refusals import StaleError


class Searches:
    """How many searches were begun for each design."""

    def __init__(self) -> None:
        self._begun: Counter[str] = Counter()
        self._lock = threading.Lock()

    def begin(self, paper: Paper, revision: int) -> Callable[[], None]:
        """End the searches before, and return what a new one calls again and again: it raises StaleError at its end."""
        own = self.call_off(paper)

        def watch() -> None:
            if self._begun[paper.id] != own or paper.now.revision != revision:
                raise StaleError(paper.now.revision)

        return watch

    def call_off(self, paper: Paper) -> int:
        """End all searches for a design."""
        with self._lock:
            self._begun[paper.id] += 1
            return self._begun[paper.id]
