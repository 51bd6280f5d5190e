"""Start the studio: a free port of the loopback, a fresh token, the browser; and end it cleanly."""

from __future__ import annotations

import contextlib
import gc
import secrets
import socket
import threading
import webbrowser
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from quarterturn.studio.guard import Keys, address

if TYPE_CHECKING:
    from quarterturn.studio.studio import Studio

HOST = "127.0.0.1"
FIRST_PORT = 8720
"""The studio takes this port where it is free, so that its address is much the same from day to day."""

TRIED = 20


class PortTakenError(Exception):
    """A port that the person asked for is in use, or not to be had."""

    def __init__(self, port: int, why: str) -> None:
        super().__init__(f"port {port} cannot be had ({why}); name another with --port")


@dataclass(frozen=True, slots=True)
class Start:
    """How to start: which file to open, on which port (none: a free one), and whether to open the browser."""

    file: Path | None = None
    port: int | None = None
    with_browser: bool = True
    state: Path = field(default_factory=Path)


def listen(port: int | None) -> socket.socket:
    """Return a socket of the loopback that listens; nobody else can take its port. Raises PortTakenError."""
    if port is not None:
        return _bound(port)
    for each in range(FIRST_PORT, FIRST_PORT + TRIED):
        with contextlib.suppress(PortTakenError):
            return _bound(each)
    return _bound(0)


def _bound(port: int) -> socket.socket:
    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listening.bind((HOST, port))
        listening.listen(128)
    except (OSError, OverflowError) as error:
        listening.close()
        raise PortTakenError(port, str(getattr(error, "strerror", "") or error).lower()) from error
    listening.set_inheritable(False)
    return listening


def serve(
    start: Start, built: Path, say: Callable[[str, bool], None], open_browser: Callable[[str], bool]
) -> None:
    """Serve until interrupted. `say` is told the address, and whether a browser was opened there.

    Raises PortTakenError, Refusal where the file cannot be opened, and OSError for the state folder.
    """
    from quarterturn.studio.studio import open_studio

    with contextlib.closing(listen(start.port)) as listening:
        studio = open_studio(start.state)
        try:
            keys = Keys(secrets.token_urlsafe(32), listening.getsockname()[1])
            url = address(keys)
            if start.file is not None:
                url += f"&design={studio.desk.open(start.file).id}"
            _serve(studio, keys, built, listening, lambda: _show(start, url, say, open_browser))
        finally:
            studio.stop()


def _show(
    start: Start, url: str, say: Callable[[str, bool], None], open_browser: Callable[[str], bool]
) -> None:
    """Open the browser in a thread of its own, since some wait until it is closed."""
    if not start.with_browser:
        say(url, False)
        return

    def show() -> None:
        say(url, open_browser(url))

    threading.Thread(target=show, name="browser", daemon=True).start()


def in_browser(url: str) -> bool:
    """Open an address in the browser; tell whether there is one."""
    try:
        return webbrowser.open(url)
    except (webbrowser.Error, OSError):
        return False


def _serve(
    studio: Studio, keys: Keys, built: Path, listening: socket.socket, begin: Callable[[], None]
) -> None:
    import uvicorn

    from quarterturn.studio.app import make_app

    class Server(uvicorn.Server):
        """Tells when it answers, and lets go of the windows first when it ends."""

        async def startup(self, sockets: list[socket.socket] | None = None) -> None:
            await super().startup(sockets)
            begin()

        async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
            studio.end_news()
            await super().shutdown(sockets)

    config = uvicorn.Config(
        make_app(studio, keys, built),
        log_level="critical",
        access_log=False,
        server_header=False,
        date_header=False,
        proxy_headers=False,
        lifespan="off",
        ws="none",
        timeout_graceful_shutdown=2,
    )
    _settle_memory()
    with contextlib.suppress(KeyboardInterrupt):
        Server(config).run(sockets=[listening])


def _settle_memory() -> None:
    """Let the collector of cycles leave alone what was loaded for good, and come seldom: it would hold up a brush."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 20)
