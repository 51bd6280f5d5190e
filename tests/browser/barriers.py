"""What stands in the way of those who do not see or point: axe-core on the page as it is."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Page

AXE = Path(__file__).parents[2] / "frontend" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]


def barriers(page: Page) -> list[str]:
    """Return the rules of WCAG 2.2 AA that the page breaks, each with where it first does."""
    page.evaluate(AXE.read_text(encoding="utf-8"))
    found = page.evaluate("rules => axe.run({ runOnly: rules })", RULES)
    return [f"{each['id']}: {each['nodes'][0]['html'][:200]}" for each in found["violations"]]
