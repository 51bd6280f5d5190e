"""Outlines written into the text of a design: what was there stays to the letter, and the size stays true."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import WriteError, read_design
from quarterturn.design.drawings import read_drawing, suggested_names, table_of, width_text, with_outlines
from quarterturn.design.drawings.tables import own_width
from quarterturn.geometry import OUTLINES, Path, fitted, path_bounds, polygon, same_outline, scaled
from quarterturn.measure import Units, inches, mm
from tests.design.broken_cases import GOOD
from tests.strategies.outlines import outlines

SQUARE = polygon((0j, 3 + 0j, 3 + 2j, 2j))
METRIC = GOOD.replace('"inch"', '"metric"')


@pytest.mark.parametrize(
    "text", [GOOD, METRIC, GOOD.replace("\n", "\r\n"), f"{GOOD}\n\n\n# the end", GOOD.rstrip()]
)
def test_an_outline_is_added_behind_everything_else(text: str) -> None:
    after = with_outlines(text, {"fox": SQUARE})
    assert after.startswith(text.rstrip())
    assert after.count("\r\n") == (after.count("\n") if "\r\n" in text else 0)
    design = read_design(after).design
    assert design is not None
    (outline,) = design.outlines
    assert (outline.name, outline.width) == ("fox", inches(3))
    assert same_outline(outline.path, fitted(SQUARE))


def test_an_outline_of_the_same_name_is_exchanged_only_if_that_is_meant() -> None:
    first = with_outlines(f"{GOOD}# the end\n", {"fox": SQUARE})
    noted = first.replace("[outlines.fox]", "[outlines.fox] # my fox")
    with pytest.raises(WriteError, match="has an outline 'fox' already"):
        with_outlines(noted, {"fox": SQUARE})
    after = with_outlines(noted, {"fox": scaled(SQUARE, 1.5)}, replace=True)
    assert "[outlines.fox] # my fox" in after
    assert after.startswith(f"{GOOD}# the end\n")
    assert "width = '4 1/2\"'" in after
    assert with_outlines(first, {"fox": SQUARE}, replace=True) == first


@pytest.mark.parametrize(
    "text",
    ["title =", "outlines = 3", "outlines = {}", f"{GOOD}\n[outlines]\nfox = 3", "x = " + "[" * 3000],
)
def test_text_to_which_nothing_can_be_added_is_refused(text: str) -> None:
    with pytest.raises(WriteError):
        with_outlines(text, {"fox": SQUARE})


@pytest.mark.parametrize(
    ("width", "wanted", "text"),
    [
        (5.25, inches(5, 1, 4), '5 1/4"'),
        (80 / 25.4, mm(80), "80 mm"),
        (0.1 + 0.2 + 1.7, inches(2), '2"'),
        (3.14159265, inches(3) + inches(0, 1416, 10000), '3.1416"'),
    ],
)
def test_a_width_is_one_of_a_ruler_where_it_is_so(width: float, wanted: object, text: str) -> None:
    path = scaled(fitted(SQUARE), width)
    assert own_width(path) == wanted
    assert width_text(path) == text


@given(outlines(), st.sampled_from(Units))
def test_an_outline_in_a_table_is_the_one_that_was_drawn(path: Path, units: Units) -> None:
    head = METRIC if units is Units.METRIC else GOOD
    design = read_design(f"{head}\n{table_of('fox', path, units)}\n").design
    if design is not None:
        (outline,) = design.outlines
        assert same_outline(outline.path, fitted(path), tolerance=1e-7)
        assert abs(float(outline.width) - path_bounds(path).width) < 1e-4


def test_a_circle_in_a_drawing_comes_into_the_design_as_a_circle_of_its_size() -> None:
    drawing = read_drawing('<svg width="10in" height="10in" viewBox="0 0 254 254"><circle r="50"/></svg>')
    design = read_design(with_outlines(METRIC, {"moon": drawing.outlines[0].path})).design
    assert design is not None
    assert design.outlines[0].width == mm(100)
    assert len(design.outlines[0].path.segments) == 1


def test_names_are_plain_words_all_different_and_none_of_the_program_s() -> None:
    identities = ["Fox Head", "fox_head", "", "", "heart", "Füchse!", "x" * 90, "--"]
    names = suggested_names(identities)
    assert names[:6] == ["fox-head", "fox-head-2", "outline", "outline-2", "own-heart", "füchse"]
    assert len(set(names)) == len(identities)
    assert set(names).isdisjoint(OUTLINES)
    assert max(map(len, names)) <= 40
