"""Widths of lettering, compared with the font itself."""

from __future__ import annotations

import importlib
from typing import Any

import pytest

from quarterturn.publish.lettering import broken, largest_size, shortened, text_width
from quarterturn.publish.typesetting import font_folder

PRINTED = "".join(map(chr, range(32, 127)))


def font(style: str) -> Any:
    library = importlib.import_module("fontTools.ttLib")  # comes with ezdxf, without type information
    return library.TTFont(font_folder("font_source_sans_pro") / f"SourceSansPro-{style}.ttf")


@pytest.mark.parametrize(("style", "bold"), [("Regular", False), ("Bold", True)])
def test_widths_are_those_of_the_font(style: str, bold: bool) -> None:
    face = font(style)
    em, letters, widths = face["head"].unitsPerEm, face.getBestCmap(), face["hmtx"]
    for letter in PRINTED:
        own = widths[letters[ord(letter)]][0] / em
        assert text_width(letter, 1.0, bold=bold) == pytest.approx(own, abs=6e-4), letter


@pytest.mark.parametrize("style", ["Regular", "Bold"])
def test_no_sign_of_a_pattern_is_wider_than_what_is_reckoned(style: str) -> None:
    face = font(style)
    em, letters, widths = face["head"].unitsPerEm, face.getBestCmap(), face["hmtx"]
    for sign in "½¼¾⅛⅜⅝⅞×–—°…⁄−″′éüß":
        assert widths[letters[ord(sign)]][0] / em <= text_width(sign, 1.0)


def test_a_text_is_set_as_large_as_fits() -> None:
    sizes = (6.0, 4.0, 2.5)
    assert largest_size("moon", 100, sizes) == 6.0
    assert largest_size("moon", text_width("moon", 4.0), sizes) == 4.0
    assert largest_size("moon", 1, sizes) is None


def test_a_text_that_fits_is_not_cut_short() -> None:
    assert shortened("moon", 100, 3) == "moon"
    short = shortened("a moon over the hill", 20, 3)
    assert short.endswith("…")
    assert text_width(short, 3) <= 20


def test_rows_fit_and_hold_all_words() -> None:
    text = "Fuse four of fabric B and two of fabric C for the moons"
    rows = broken(text, 40, 3)
    assert " ".join(rows) == text
    assert all(text_width(row, 3) <= 40 for row in rows)
    assert len(rows) > 1


def test_a_word_that_is_too_wide_is_cut_short() -> None:
    assert broken("a" * 200, 20, 3)[0].endswith("…")
