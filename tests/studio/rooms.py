"""A studio to send requests to, without a server."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from starlette.testclient import TestClient

from quarterturn.studio.app import make_app
from quarterturn.studio.guard import TOKEN, Keys
from quarterturn.studio.studio import open_studio

KEYS = Keys("the token of this run", 8720)
HOME = "http://127.0.0.1:8720"


@contextmanager
def client(state: Path, built: Path | None = None) -> Iterator[TestClient]:
    """Open a studio, and give what asks it as its page does; a fault of the program is answered, not raised."""
    studio = open_studio(state)
    app = make_app(studio, KEYS, built or state / "page")
    try:
        headers = {TOKEN: KEYS.token}
        yield TestClient(app, base_url=HOME, headers=headers, raise_server_exceptions=False)
    finally:
        studio.stop()


def opened(asking: TestClient, **order: object) -> str:
    """Open a design and return the address of what concerns it."""
    answer = asking.post("/api/designs", json=order)
    assert answer.status_code == 201, answer.text
    return f"/api/designs/{answer.json()['id']}"
