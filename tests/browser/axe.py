"""What axe-core, the page's own development dependency, finds against WCAG 2.2 A and AA and good practice."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Page

AXE = Path(__file__).parents[2] / "frontend" / "node_modules" / "axe-core" / "axe.min.js"


def violations(page: Page) -> list[str]:
    """Return the rules that are broken, each with the first thing that breaks it."""
    page.evaluate(AXE.read_text(encoding="utf-8"))
    found: list[str] = page.evaluate(
        "axe.run().then((told) => told.violations.map((each) => `${each.id}: ${each.nodes[0].html}`))"
    )
    return found
