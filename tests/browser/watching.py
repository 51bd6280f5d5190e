"""A window of the browser of which everything is kept that it asked for and complained of."""

from __future__ import annotations

from dataclasses import dataclass, field

from playwright.sync_api import ConsoleMessage, Page

PATIENCE = 60_000
"""Milliseconds that something may take to be seen, on a machine that is busy with other things too."""


@dataclass
class Watched:
    """A window with all that it asked for and all that was said in its console."""

    page: Page
    requests: list[str] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)

    def watch(self) -> None:
        """Keep what happens from now on."""
        self.page.on("request", lambda request: self.requests.append(request.url))
        self.page.on("pageerror", lambda error: self.faults.append(str(error)))
        self.page.on("console", self._said)

    def _said(self, message: ConsoleMessage) -> None:
        if message.type in ("error", "warning"):
            self.faults.append(message.text)

    def elsewhere(self, port: int) -> list[str]:
        """Return the requests that went anywhere but to the studio."""
        own = (f"http://127.0.0.1:{port}/", "blob:", "data:")
        return [url for url in self.requests if not url.startswith(own)]
