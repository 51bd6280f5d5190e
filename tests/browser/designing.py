"""What a design says while it is changed in a window."""

from __future__ import annotations

import json
import re

from playwright.sync_api import Page

from tests.studio.running import Running


def text_of(studio: Running) -> str:
    """Return the text of the design that is open."""
    return str(json.loads(studio.get(f"/api/designs/{studio.design}")[1])["text"])


def written(studio: Running, page: Page, wanted: str) -> None:
    """See to it that the design comes to say something."""
    for _ in range(600):
        if re.search(wanted, text_of(studio)):
            return
        page.wait_for_timeout(100)
    raise AssertionError(f"{wanted!r} is not in\n{text_of(studio)}")
