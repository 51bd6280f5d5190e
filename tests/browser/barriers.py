"""What stands in the way of those who do not see or point: axe-core on the page as it is."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Page

AXE = Path(__file__).parents[2] / "frontend" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]


def barriers(page: Page, *, good_practice: bool = False) -> list[str]:
    """Return the rules of WCAG 2.2 AA, and of good practice if asked, that the page breaks, and where it first does."""
    page.evaluate(AXE.read_text(encoding="utf-8"))
    rules = {} if good_practice else {"runOnly": RULES}
    found = page.evaluate("rules => axe.run(rules)", rules)
    return [f"{each['id']}: {each['nodes'][0]['html'][:200]}" for each in found["violations"]]
