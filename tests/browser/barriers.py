"""What stands in the way of those who do not see or point: axe-core on the page as it is."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

from playwright.sync_api import Page, expect

AXE = Path(__file__).parents[2] / "frontend" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]


Light = Literal["light", "dark"]
LIGHTS: tuple[Light, ...] = ("light", "dark")
AT_REST = """() => Promise.allSettled(document.getAnimations()
    .filter((each) => Number.isFinite(each.effect?.getComputedTiming().endTime ?? 0)).map((each) => each.finished))"""


def lit(page: Page, light: Light) -> None:
    """Light or darken the room, and wait until its colours stand: contrast on the way is nobody's."""
    page.emulate_media(color_scheme=light, reduced_motion="reduce")
    expect(page.locator("html")).to_have_attribute("data-light", light)
    page.evaluate(AT_REST)


def barriers(page: Page, *, good_practice: bool = False) -> list[str]:
    """Return the rules of WCAG 2.2 AA, and of good practice if asked, that the page breaks, and where it first does."""
    page.evaluate(AXE.read_text(encoding="utf-8"))
    rules = {} if good_practice else {"runOnly": RULES}
    found = page.evaluate("rules => axe.run(rules)", rules)
    return [f"{each['id']}: {each['nodes'][0]['html'][:200]}" for each in found["violations"]]
