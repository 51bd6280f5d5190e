"""The two papers, and what both hold."""

from __future__ import annotations

import math

import pytest

from quarterturn.design import Paper
from quarterturn.publish.paper import PAPER_MM


def test_a4_is_of_the_iso_series() -> None:
    """ISO 216: A0 is 1 m² with sides as 1 : √2, each size is half the one before, whole millimetres cut down."""
    width, height = 1000 / 2**0.25, 1000 * 2**0.25
    for _ in range(4):
        width, height = height / 2, width
    assert PAPER_MM[Paper.A4] == (math.floor(width), math.floor(height))


def test_letter_is_eight_and_a_half_by_eleven() -> None:
    """ANSI/ASME Y14.1, size A."""
    assert PAPER_MM[Paper.LETTER] == pytest.approx((8.5 * 25.4, 11 * 25.4))


def test_a4_is_narrower_and_longer() -> None:
    """6 mm narrower, 18 mm longer, to the nearest millimetre (amazines.com on ISO 216)."""
    (letter_wide, letter_high), (a4_wide, a4_high) = PAPER_MM[Paper.LETTER], PAPER_MM[Paper.A4]
    assert round(letter_wide - a4_wide) == 6
    assert round(a4_high - letter_high) == 18
