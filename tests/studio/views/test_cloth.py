"""Colours out of photos, greys, and outlines out of drawings."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from quarterturn.design import read_design
from quarterturn.studio import views
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.cloth import areas_shown, grey_of, palette_of
from tests.samples import ROUNDS

EXAMPLES = Path(__file__).parents[3] / "examples"


def test_a_photo_of_two_colours_has_these_two() -> None:
    picture = Image.new("RGB", (60, 30), "#204060")
    picture.paste("#e0c080", (0, 0, 20, 30))
    file = BytesIO()
    picture.save(file, "PNG")
    found = palette_of(file.getvalue(), 2)
    assert [(each.colour, round(each.share, 2)) for each in found] == [("#204060", 0.67), ("#e0c080", 0.33)]
    design = read_design(ROUNDS).design
    assert design is not None
    view = views.palette_view(file.getvalue(), design, 2)
    assert view.suggested["B"] == "#204060"
    assert view.suggested["A"] == "#e0c080"


def test_what_is_no_picture_has_no_colours() -> None:
    with pytest.raises(OSError):  # noqa: PT011 - the library's own words
        palette_of(b"no picture", 3)


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
