"""News of a design, told to every window that has it open, as server-sent events (HTML standard, section 9.2)."""

from __future__ import annotations

import asyncio
import contextlib
import json
import threading
from collections.abc import AsyncIterator
from dataclasses import dataclass, field

HEARTBEAT = 15.0
"""Seconds of silence after which a comment is sent, so that a window that has gone is noticed."""

WAITING = 256
"""News that a window may be behind; one that is further behind misses the oldest."""


@dataclass(frozen=True, slots=True)
class News:
    """One event, by its name, and facts about it."""

    event: str
    facts: dict[str, object]

    @property
    def written(self) -> str:
        """Return it as a stream has it."""
        return f"event: {self.event}\ndata: {json.dumps(self.facts)}\n\n"


@dataclass(eq=False, slots=True)
class Window:
    """One window that listens, on the loop of the server."""

    loop: asyncio.AbstractEventLoop
    queue: asyncio.Queue[News | None] = field(default_factory=asyncio.Queue)

    def tell(self, news: News | None) -> None:
        """Let news reach the window, from whatever thread."""
        with contextlib.suppress(RuntimeError):  # the loop has been closed, and the window with it
            self.loop.call_soon_threadsafe(self._put, news)

    def _put(self, news: News | None) -> None:
        if self.queue.qsize() >= WAITING:
            self.queue.get_nowait()
        self.queue.put_nowait(news)


class Newsroom:
    """The windows of one design. Safe to tell from any thread."""

    def __init__(self) -> None:
        self.is_elsewhere = False
        """Whether another studio has the design open too."""
        self._windows: list[Window] = []
        self._lock = threading.Lock()

    @property
    def windows(self) -> int:
        """Return how many windows listen."""
        with self._lock:
            return len(self._windows)

    def tell(self, event: str, **facts: object) -> None:
        """Tell every window."""
        news = News(event, facts)
        with self._lock:
            for window in self._windows:
                window.tell(news)

    def close(self) -> None:
        """End every stream."""
        with self._lock:
            for window in self._windows:
                window.tell(None)

    async def listen(self, heartbeat: float = HEARTBEAT) -> AsyncIterator[str]:
        """Yield the stream of one window, and tell all how many there are as it comes and goes."""
        window = Window(asyncio.get_running_loop())
        with self._lock:
            self._windows.append(window)
        self._count()
        try:
            yield "retry: 1000\n\n"
            while (news := await self._next(window, heartbeat)) is not None:
                yield news
        finally:
            with self._lock:
                self._windows.remove(window)
            self._count()

    def _count(self) -> None:
        self.tell("window", windows=self.windows, elsewhere=self.is_elsewhere)

    @staticmethod
    async def _next(window: Window, heartbeat: float) -> str | None:
        try:
            news = await asyncio.wait_for(window.queue.get(), heartbeat)
        except TimeoutError:
            return ": still here\n\n"
        return None if news is None else news.written
