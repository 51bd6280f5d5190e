"""All that one running studio holds: the desk, the worker, the press, and what was ticked off."""

from __future__ import annotations

import threading
from dataclasses import dataclass
from pathlib import Path

from quarterturn.studio.desk import Desk
from quarterturn.studio.publishing import Press
from quarterturn.studio.rehearsing import Rehearsals
from quarterturn.studio.searching import Searches
from quarterturn.studio.ticks import Ticks
from quarterturn.studio.working import Worker


@dataclass(frozen=True, slots=True)
class Studio:
    """What every request is answered from."""

    desk: Desk
    worker: Worker
    press: Press
    rehearsals: Rehearsals
    searches: Searches
    ticks: Ticks
    ticking: threading.Lock

    def end_news(self) -> None:
        """End the streams of all windows, which would keep the server waiting."""
        for paper in self.desk.papers():
            paper.news.close()

    def stop(self) -> None:
        """Let go of everything, when all of it is on the disk."""
        self.press.stop()
        self.rehearsals.stop()
        self.worker.stop()
        self.desk.stop()


def open_studio(state: Path) -> Studio:
    """Return a studio that keeps what it must find again in a folder. Raises OSError."""
    worker = Worker()
    return Studio(
        Desk(state, worker.soon), worker, Press(), Rehearsals(), Searches(), Ticks(state), threading.Lock()
    )
