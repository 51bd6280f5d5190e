"""What a design says while it is changed in a window."""

from __future__ import annotations

import json
import re
from collections.abc import Callable

from playwright.sync_api import Page

from tests.studio.running import Running


def text_of(studio: Running) -> str:
    """Return the text of the design that is open."""
    return str(json.loads(studio.get(f"/api/designs/{studio.design}")[1])["text"])


def until(studio: Running, page: Page, holds: Callable[[str], object]) -> str:
    """Wait until something holds of the text of the design, and return it: a window shows what is not kept yet."""
    for _ in range(600):
        if holds(text := text_of(studio)):
            return text
        page.wait_for_timeout(100)
    raise AssertionError(f"what was waited for does not hold of\n{text}")


def written(studio: Running, page: Page, wanted: str) -> str:
    """See to it that the design comes to say something."""
    return until(studio, page, lambda text: re.search(wanted, text, re.MULTILINE))


def gone(studio: Running, page: Page, unwanted: str) -> str:
    """See to it that the design no longer says something."""
    return until(studio, page, lambda text: not re.search(unwanted, text, re.MULTILINE))
