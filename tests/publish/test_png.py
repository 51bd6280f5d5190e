"""Sheets as PNG."""

from __future__ import annotations

import struct

import pytest

from quarterturn.publish import sheet_png
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
