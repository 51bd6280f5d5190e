"""Sheets as PNG."""

from __future__ import annotations

import itertools
import struct
from io import BytesIO
from typing import Any

import pytest
from PIL import Image

from quarterturn.geometry import Line
from quarterturn.publish import Ink, Sheet, Stroke, sheet_png
from tests.publish.sheets import every_mark


def size_of(png: bytes) -> tuple[int, int]:
    """Return width and height from the header chunk (PNG, section 11.2.2)."""
    assert png[:8] == b"\x89PNG\r\n\x1a\n"
    width, height = struct.unpack(">II", png[16:24])
    return width, height


@pytest.mark.parametrize("pixels", [1, 7, 120, 333, 1201])
def test_a_picture_is_as_wide_as_asked(pixels: int) -> None:
    width, height = size_of(sheet_png(every_mark(), pixels))
    assert width == pixels
    assert abs(height - pixels * 100 / 120) <= 1


def test_equal_sheets_give_equal_bytes() -> None:
    assert sheet_png(every_mark(), 200) == sheet_png(every_mark(), 200)


@pytest.mark.parametrize("pixels", [800, 840, 900, 1000, 1131])
@pytest.mark.parametrize(("width", "height"), [(210.0, 297.0), (215.9, 279.4), (120.0, 87.3)])
def test_no_thin_line_is_lost_between_pixels(pixels: int, width: float, height: float) -> None:
    """A line of 1 mm ticks across and down, each of which must show, wherever it falls on the pixels."""
    ink = Ink(None, "#000000", 0.3)
    across = [Stroke((Line(complex(x, 5), complex(x, 9)),), ink) for x in range(1, int(width))]
    down = [Stroke((Line(complex(5, y), complex(9, y)),), ink) for y in range(11, int(height))]
    sheet = Sheet(width, height, (*across, *down), "t", "a")
    with Image.open(BytesIO(sheet_png(sheet, pixels))) as picture:
        grey = picture.convert("L")
    scale = pixels / width
    row = [grey.getpixel((x, round(7 * scale))) for x in range(pixels)]
    column = [grey.getpixel((round(7 * scale), y)) for y in range(round(10 * scale), grey.height)]
    assert dark_runs(row) == len(across)
    assert dark_runs(column) == len(down)


def dark_runs(pixels: list[Any]) -> int:
    """Count the stretches in which a row of pixels is not white."""
    return sum(before > 230 >= after for before, after in itertools.pairwise([255, *pixels]))
