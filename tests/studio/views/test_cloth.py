"""Colours out of photos, greys, and outlines out of drawings."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.studio import views
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.cloth import areas_shown, grey_of
from tests.samples import ROUNDS

EXAMPLES = Path(__file__).parents[3] / "examples"


def test_grey_keeps_the_value_of_a_colour() -> None:
    assert [grey_of(colour) for colour in ("#000000", "#ffffff", "#808080")] == [
        "#000000",
        "#ffffff",
        "#808080",
    ]


def test_a_drawing_is_told_with_what_can_be_taken() -> None:
    svg = b'<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in" viewBox="0 0 4 4">'
    svg += b'<path id="Kite" d="M0 1L1 0L2 1L1 3Z"/><path d="M0 0L1 1"/></svg>'
    made = Stages().at(ROUNDS)
    found = views.outlines_view(svg, made.design.units)
    assert [(each.name, each.width) for each in found.outlines] == [("kite", '2"')]
    assert found.states_size


@pytest.mark.parametrize("example", sorted(path.stem for path in EXAMPLES.glob("*.toml")))
def test_the_cloth_that_shows_adds_up_to_the_top(example: str) -> None:
    size = Stages().at((EXAMPLES / f"{example}.toml").read_text("utf-8")).size()
    top = float(size.setting.width * size.setting.height)
    shown = sum(areas_shown(size).values())
    assert shown == pytest.approx(top, rel=1e-4)
    assert sum(each.share for each in views.cloth_view(1, size).fabrics) == pytest.approx(1, abs=1e-3)
