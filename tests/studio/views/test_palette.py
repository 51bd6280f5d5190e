"""Colours out of photos, and what they are called."""

from __future__ import annotations

from io import BytesIO

import pytest
from PIL import Image

from quarterturn.design import Design, read_design
from quarterturn.studio.views.palette import palette_of, palette_view, words_of
from tests.samples import ROUNDS


@pytest.fixture
def photo() -> bytes:
    """Return a photo whose left third is sand and whose rest is sea."""
    picture = Image.new("RGB", (60, 30), "#204060")
    picture.paste("#e0c080", (0, 0, 20, 30))
    file = BytesIO()
    picture.save(file, "PNG")
    return file.getvalue()


@pytest.fixture
def design() -> Design:
    """Return a design of three fabrics."""
    design = read_design(ROUNDS).design
    assert design
    return design


def test_a_photo_of_two_colours_has_these_two(photo: bytes, design: Design) -> None:
    found = palette_of(photo, 2)
    assert [(each.colour, round(each.share, 2)) for each in found] == [("#204060", 0.67), ("#e0c080", 0.33)]
    view = palette_view(photo, design, 2)
    assert view.suggested["B"] == "#204060"
    assert view.suggested["A"] == "#e0c080"


def test_of_what_is_cut_out_only_that_is_seen(photo: bytes, design: Design) -> None:
    view = palette_view(photo, design, 2, (0.0, 0.0, 0.3, 1.0))
    assert view.average == "#e0c080"
    assert {each.colour for each in view.colours} == {"#e0c080"}


def test_the_smallest_part_of_the_smallest_photo_has_a_colour(design: Design) -> None:
    file = BytesIO()
    Image.new("RGB", (1, 1), "#204060").save(file, "PNG")
    for crop in ((1.0, 1.0, 0.001, 0.001), (0.4, 0.4, 0.001, 0.001), (0.0, 0.0, 1.0, 1.0)):
        assert palette_view(file.getvalue(), design, 2, crop).average == "#204060"


def test_from_afar_black_and_white_in_turn_are_a_grey_of_half_the_light(design: Design) -> None:
    """Half of the light is 188 of 255 in sRGB (IEC 61966-2-1)."""
    picture = Image.new("RGB", (40, 40), "#000000")
    picture.paste("#ffffff", (0, 0, 20, 40))
    file = BytesIO()
    picture.save(file, "PNG")
    assert palette_view(file.getvalue(), design, 2).average == "#bcbcbc"


def test_what_is_no_picture_has_no_colours() -> None:
    with pytest.raises(OSError):  # noqa: PT011 - the library's own words
        palette_of(b"no picture", 3)


@pytest.mark.parametrize(
    ("colour", "words"),
    [
        ("#ff0000", ("red", "middle")),
        ("#ff8800", ("orange", "middle")),
        ("#ffee00", ("yellow", "middle")),
        ("#f2c14e", ("yellow", "middle")),
        ("#f5f0e6", ("cream", "middle")),
        ("#808080", ("grey", "middle")),
        ("#228833", ("green", "middle")),
        ("#008b8b", ("teal", "middle")),
        ("#0000ff", ("blue", "dark")),
        ("#87ceeb", ("blue", "pale")),
        ("#1f3a93", ("blue", "dark")),
        ("#7a2fb0", ("violet", "dark")),
        ("#800080", ("violet", "dark")),
        ("#ffc0cb", ("pink", "pale")),
        ("#6b4423", ("brown", "dark")),
        ("#111111", ("black", "middle")),
        ("#f4f4f2", ("white", "middle")),
    ],
)
def test_a_colour_is_called_as_the_eye_would(colour: str, words: tuple[str, str]) -> None:
    """From memory: the names that a reader gives to these colours."""
    assert words_of(colour) == words
