"""Booklets of recipes of any shapes and cuts: every step told once, figures described and inside their edges."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.design import SHAPE, Paper
from quarterturn.geometry import Path, path_bounds
from quarterturn.proof import Pattern
from quarterturn.publish import Sheet, Stroke, Text
from quarterturn.publish.booklet import Document, assemble
from quarterturn.publish.booklet.model import CutLine, CutList, Entry, Figure, Plate
from quarterturn.publish.figures.cells import rooms
from quarterturn.publish.lettering import text_width
from quarterturn.steps import Rejoin
from tests.recipe_samples import SAMPLES
from tests.samples import HEARTS, ONE_UPRIGHT, pattern_of

HIDDEN = (
    HEARTS.replace("width = '2 1/4\"', turn = 1", "width = '3/4\"'")
    .replace("a-tl0 a-tr0 c-tl0 c-tr0 a-tl0", "c-tl0 c-tr0")
    .replace("a-bl0 a-br0 c-tr2 c-tl2 a-tl1", "c-tr2 c-tl2")
)
"""A leaf so narrow that the seams hide it: it is on the units as they are cut, and on none as it is sewn."""
TEXTS = {**SAMPLES, "one upright": ONE_UPRIGHT, "hidden": HIDDEN}
EVERY = pytest.mark.parametrize("name", TEXTS)


@cache
def pattern(name: str) -> Pattern:
    return pattern_of(TEXTS[name])


@cache
def document(name: str) -> Document:
    return assemble(pattern(name), Paper.LETTER)


def figures(name: str) -> list[Figure]:
    found: list[Figure] = []
    for block in document(name).blocks:
        if isinstance(block, CutList | Plate):
            found.append(block.figure)
        if isinstance(block, Entry):
            found += block.figures
    return found


def sheets(name: str) -> list[Sheet]:
    return [cell.sheet for figure in figures(name) for cell in figure.cells]


def titled(name: str, title: str) -> list[Sheet]:
    return [sheet for sheet in sheets(name) if sheet.title.startswith(title)]


def words(sheet: Sheet) -> list[str]:
    return [mark.text for mark in sheet.marks if isinstance(mark, Text)]


@EVERY
def test_every_step_is_told_exactly_once(name: str) -> None:
    told: list[Entry | CutLine] = []
    for block in document(name).blocks:
        told += block.lines if isinstance(block, CutList) else (block,) if isinstance(block, Entry) else ()
    steps = sorted(number for entry in told for number in entry.steps)
    assert steps == [step.number for step in pattern(name).steps.steps]


@EVERY
def test_figures_are_described_and_keep_their_lettering_inside_their_edges(name: str) -> None:
    for sheet in sheets(name):
        assert sheet.alt.endswith("."), sheet.title
        for text in (mark for mark in sheet.marks if isinstance(mark, Text)):
            width = text_width(text.text, text.size, bold=text.bold) * 0.97
            left = text.at.real - {"start": 0.0, "middle": 0.5, "end": 1.0}[text.anchor] * width
            assert left >= -0.3, (sheet.title, text.text)
            assert left + width <= sheet.width + 0.3, (sheet.title, text.text)
            assert 0 <= text.at.imag <= sheet.height, (sheet.title, text.text)


def test_the_middles_of_shapes_are_measured_from_that_of_the_master() -> None:
    (sheet,) = titled("ponds", "Mark and fuse: pond")
    assert {'1"', '½"', '9½"'} <= set(words(sheet))


def test_cuts_that_no_fold_shows_are_measured_from_the_corners() -> None:
    (sheet,) = titled("bands", "Mark and fuse: band")
    assert words(sheet).count('4¾"') == 4
    marking = next(b for b in document("bands").blocks if isinstance(b, Entry) and "mark" in b.title)
    assert any('the top edge, 4¾" from its left corner' in sentence for sentence in marking.sentences)


def test_halves_are_shown_apart_joined_and_trimmed() -> None:
    (sheet,) = titled("lone hearts", "Join halves")
    assert "cut edge to cut edge" in words(sheet)
    assert "trim from the seam’s middle" in words(sheet)
    raw = pattern("lone hearts").blocks.rejoining("gizzard").raw_outline
    scale = 34.0 / max(path_bounds(raw).width, path_bounds(raw).height)
    outlined = [m for m in sheet.marks if isinstance(m, Stroke) and len(m.segments) == len(raw.segments)]
    assert any(
        path_bounds(Path(m.segments)).width == pytest.approx(path_bounds(raw).width * scale) for m in outlined
    )
    rejoins = [s for s in pattern("lone hearts").steps.steps if isinstance(s.action, Rejoin)]
    assert len(rejoins) == 2


def test_layers_of_cloth_are_counted_at_every_side() -> None:
    bulk = titled("ripples", "Layers at the seams")
    assert len(bulk) == 1
    assert {"1", "2", "3"} <= set(words(bulk[0]))
    assert "top 1 to 3" in bulk[0].alt
    (gizzard,) = titled("gizzards", "Layers at the seams")
    assert "inner seam: 2 to 4 layers" in words(gizzard)


def test_a_master_that_is_not_cut_has_no_ruler_and_no_seams() -> None:
    assert titled("whole", "Cut apart") == []
    assert titled("whole", "What the seams leave") == []


def test_units_are_named_where_they_are_cut_apart_though_the_seams_hide_their_shape() -> None:
    names = set(pattern("hidden").setting.tally)
    assert names == {"c-tl", "c-tr"}
    assert all(SHAPE not in rooms(pattern("hidden"), name) for name in names)
    (sheet,) = titled("hidden", "Cut apart")
    assert names <= set(words(sheet))
