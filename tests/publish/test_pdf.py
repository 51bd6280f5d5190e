"""Sheets as PDF, read back with pikepdf and pdfium."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO

import pikepdf
import pytest

from quarterturn.geometry import Region as Cloth
from quarterturn.geometry import disc, rectangle
from quarterturn.publish import Area, Sheet, sheets_pdf
from tests.publish.reading import read_pdf
from tests.publish.sheets import SOLID, every_mark

INCH_SQUARE = Area(Cloth((rectangle(10, 10, 35.4, 35.4),)), SOLID)
CIRCLE = Area(disc(88.9, 105 + 140j), SOLID)


def page(width: float, height: float) -> Sheet:
    return Sheet(width, height, (INCH_SQUARE, CIRCLE), "title", "A square and a circle.")


@pytest.mark.parametrize(("width", "height"), [(215.9, 279.4), (210.0, 297.0), (62.5, 33.3)])
def test_each_page_has_the_exact_size_of_its_sheet(width: float, height: float) -> None:
    [found] = read_pdf(sheets_pdf([page(width, height)], "title"))
    assert (found.width, found.height) == pytest.approx((width, height), abs=1e-3)


def test_marks_have_their_true_size_in_the_file() -> None:
    [found] = read_pdf(sheets_pdf([page(215.9, 279.4)], "title"))
    square, circle = found.paths
    assert square.box == pytest.approx((10, 10, 35.4, 35.4), abs=1e-3)
    assert circle.size == pytest.approx((177.8, 177.8), abs=1e-3)
    assert square.width == pytest.approx(0.25, abs=1e-3)


def test_viewers_are_asked_not_to_scale() -> None:
    with pikepdf.open(BytesIO(sheets_pdf([every_mark()], "title"))) as document:
        assert document.Root.ViewerPreferences.PrintScaling == "/None"


def test_the_file_is_tagged_says_its_language_and_claims_the_accessibility_standard() -> None:
    with pikepdf.open(BytesIO(sheets_pdf([every_mark()], "title"))) as document:
        assert document.Root.MarkInfo.Marked
        assert document.Root.Lang == "en"
        assert b"<pdfuaid:part>1</pdfuaid:part>" in document.Root.Metadata.read_bytes()


def test_each_figure_carries_its_description() -> None:
    pdf = sheets_pdf([every_mark(), page(100, 100)], "title")
    with pikepdf.open(BytesIO(pdf)) as document:
        told = [
            str(item.Alt)
            for item in document.objects
            if isinstance(item, pikepdf.Dictionary) and "/Alt" in item
        ]
    assert sorted(told) == ['A ring, "lines" & leaves.', "A square and a circle."]


def test_a_sheet_without_a_description_is_refused() -> None:
    with pytest.raises(AssertionError, match="missing alt text"):
        sheets_pdf([replace(every_mark(), alt="")], "title")


def test_the_file_tells_no_date() -> None:
    with pikepdf.open(BytesIO(sheets_pdf([every_mark()], "title"))) as document:
        assert "/CreationDate" not in document.docinfo
        assert "/ModDate" not in document.docinfo


def test_equal_sheets_give_equal_bytes() -> None:
    assert sheets_pdf([every_mark()], "title") == sheets_pdf([every_mark()], "title")
