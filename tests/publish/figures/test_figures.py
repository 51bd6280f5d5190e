"""Every figure describes itself, keeps its lettering inside its edges, and shows what the steps count."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import pytest

from quarterturn.design import Paper
from quarterturn.proof import Pattern
from quarterturn.publish import Sheet, Text, Use
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.model import CutList, Entry, Figure, Plate
from quarterturn.publish.figures import centre_figure, map_figure, map_parts, pair_figure
from quarterturn.publish.lettering import text_width
from quarterturn.publish.wording import centre_sewing
from quarterturn.steps import LayOut, SewLine
from tests.samples import ROUNDS, pattern_of

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
POINT = 25.4 / 72


@dataclass(frozen=True)
class Drawn:
    """A figure of a booklet and one of its sheets."""

    figure: Figure
    sheet: Sheet


def figures(pattern: Pattern) -> Iterator[Drawn]:
    for block in assemble(pattern, Paper.LETTER).blocks:
        match block:
            case CutList() | Plate():
                found: tuple[Figure, ...] = (block.figure,)
            case Entry():
                found = block.figures
            case _:
                found = ()
        yield from (Drawn(figure, cell.sheet) for figure in found for cell in figure.cells)


@cache
def example(index: int) -> Pattern:
    return pattern_of(EXAMPLES[index].read_text(encoding="utf-8"))


def lettering(sheet: Sheet) -> list[Text]:
    return [mark for mark in sheet.marks if isinstance(mark, Text)]


def ends(text: Text) -> tuple[float, float]:
    width = text_width(text.text, text.size, bold=text.bold) * 0.97
    before = {"start": 0.0, "middle": 0.5, "end": 1.0}[text.anchor] * width
    return text.at.real - before, text.at.real - before + width


@pytest.mark.parametrize("index", range(len(EXAMPLES)))
def test_every_figure_has_a_description_and_lettering_inside_its_edges(index: int) -> None:
    for drawn in figures(example(index)):
        assert drawn.sheet.alt.endswith(".")
        for text in lettering(drawn.sheet):
            left, right = ends(text)
            assert left >= -0.3, (drawn.sheet.title, text.text)
            assert right <= drawn.sheet.width + 0.3, (drawn.sheet.title, text.text)
            assert 0 <= text.at.imag <= drawn.sheet.height, (drawn.sheet.title, text.text)


@pytest.mark.parametrize("index", range(len(EXAMPLES)))
def test_all_lettering_is_legible_even_where_a_figure_shrinks(index: int) -> None:
    for drawn in figures(example(index)):
        sizes = [text.size * drawn.figure.least for text in lettering(drawn.sheet)]
        assert min(sizes, default=5 * POINT) >= 5 * POINT, drawn.sheet.title


def layout(pattern: Pattern) -> LayOut:
    return next(s.action for s in pattern.steps.steps if isinstance(s.action, LayOut))


def test_the_map_lays_every_unit_once_with_its_turn() -> None:
    pattern = pattern_of(ROUNDS)
    rows = layout(pattern).rows
    (part,) = map_parts(len(rows), len(rows[0]), 170, 200)
    sheet = map_figure(pattern, layout(pattern), part, 170, 200)
    laid = Counter(mark.symbol for mark in sheet.marks if isinstance(mark, Use))
    assert laid == pattern.setting.tally
    names = [t.text for t in lettering(sheet) if t.text[0].isalpha()]
    assert names == [f"{u.code}{u.turn}" for u in pattern.setting.units]


@pytest.mark.parametrize(("rows", "columns"), [(1, 1), (40, 40), (43, 40), (90, 41), (200, 200)])
def test_the_parts_of_a_map_cover_each_cell_once(rows: int, columns: int) -> None:
    cells = Counter(
        (r, c)
        for part in map_parts(rows, columns, 172, 230)
        for r in range(part.top, part.top + part.rows)
        for c in range(part.left, part.left + part.columns)
    )
    assert len(cells) == rows * columns
    assert set(cells.values()) == {1}


def test_the_assembly_shows_as_many_units_as_the_setting_has() -> None:
    pattern = pattern_of(ROUNDS)
    sewing = {s.makes[0].label: s.action for s in pattern.steps.steps if isinstance(s.action, SewLine)}
    sheet = centre_figure(pattern, centre_sewing(pattern), sewing, 160, 200)
    assert Counter(m.symbol for m in sheet.marks if isinstance(m, Use)) == pattern.setting.tally


def test_a_pair_names_its_units_and_its_pressing() -> None:
    pattern = pattern_of(ROUNDS)
    step = next(s for s in pattern.steps.steps if s.makes and s.makes[0].label == "pair 1")
    sheet = pair_figure(pattern, step)
    assert sheet.alt == "Pair 1: units a2 and a3 side by side, the seam pressed to the right."
