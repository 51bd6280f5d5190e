"""Booklets of tops that are more than a map of units: every step told once, and nothing used before it is made."""

from __future__ import annotations

from functools import cache

import pytest
from hypothesis import HealthCheck, given, settings

from quarterturn.design import Design, Paper
from quarterturn.pipeline import make_pattern
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import Document, assemble
from quarterturn.publish.booklet.model import Entry, Plate, Section, Table
from quarterturn.publish.sheet import Text
from tests.publish.booklet.test_booklet import figure_list, numbered, out_of_order
from tests.samples import pattern_of
from tests.section_texts import TEXTS
from tests.trees import tops


@cache
def document(name: str) -> Document:
    return assemble(pattern_of(TEXTS[name]), Paper.LETTER)


def titles(name: str) -> list[str]:
    return [block.title for block in document(name).blocks if isinstance(block, Entry)]


def hold_together(pattern: Pattern) -> None:
    told = numbered(assemble(pattern, Paper.A4).blocks)
    assert [entry.number for entry in told] == list(range(1, len(told) + 1))
    steps = sorted(number for entry in told for number in entry.steps)
    assert steps == [step.number for step in pattern.steps.steps]
    assert out_of_order(pattern) == []


@pytest.mark.parametrize("name", TEXTS)
def test_every_step_is_told_once_and_in_an_order_that_can_be_sewn(name: str) -> None:
    hold_together(pattern_of(TEXTS[name]))


@settings(max_examples=40, suppress_health_check=list(HealthCheck))
@given(tops())
def test_every_step_is_told_once_whatever_holds_whatever(design: Design) -> None:
    hold_together(make_pattern(design))


@pytest.mark.parametrize("name", TEXTS)
def test_lettering_is_legible_and_every_drawing_is_described(name: str) -> None:
    for figure in figure_list(document(name).blocks):
        for cell in figure.cells:
            assert cell.sheet.alt.endswith(".")
            sizes = [mark.size * figure.least for mark in cell.sheet.marks if isinstance(mark, Text)]
            assert min(sizes, default=5.0) >= 5 * 25.4 / 72, cell.sheet.title


def test_a_map_of_units_keeps_its_unit_map_and_all_else_has_a_layout() -> None:
    headings = {
        name: [block.title for block in document(name).blocks if isinstance(block, Section)] for name in TEXTS
    }
    assert "Unit map" in headings["mitred"]
    assert "Unit map" in headings["pieced"]
    assert {name for name in TEXTS if "Layout" in headings[name]} == set(TEXTS) - {"mitred", "pieced"}
    assert headings["nested"].index("Sections") < headings["nested"].index("Assembly")
    assert "Panels" in headings["panels"]


def test_sections_are_listed_with_how_many_to_make_those_that_others_hold_first() -> None:
    table = next(
        block
        for block in document("nested").blocks
        if isinstance(block, Table) and block.heads[0] == "Section"
    )
    assert [(row[0], row[-1]) for row in table.rows] == [("vine", "(2)"), ("round", "(4)"), ("medal", "(1)")]
    drawn = [
        cell.text
        for block in document("nested").blocks
        if isinstance(block, Plate)
        for cell in block.figure.cells
        if "make" in cell.text
    ]
    assert [text.partition(",")[0] for text in drawn] == [
        "vine: make (2)",
        "round: make (4)",
        "medal: make (1)",
    ]


def test_each_border_is_told_by_itself_in_the_order_of_sewing() -> None:
    medal = [
        title
        for title in titles("nested")
        if title.startswith(("Medal: sew on coping", "Medal: sew on border"))
    ]
    assert medal == [
        "Medal: sew on coping 1: Fabric A (oyster, background)",
        "Medal: sew on border 2: Fabric C (brick, border)",
    ]
    assert titles("pieced").index("Sew on the border: hedge and verge") > titles("pieced").index(
        "Sew the corners to the border strips"
    )


def test_slanting_rows_are_told_in_the_order_of_the_trade() -> None:
    told = [
        title for title in titles("on point") if "row" in title or "triangles" in title or "quare" in title
    ]
    wanted = [
        "Sew the rows",
        "Sew triangles to the ends of the slanting rows",
        "Sew the slanting rows together",
        "Sew on the corner triangles",
        "Square it up",
    ]
    assert [title for title in told if title in wanted] == wanted


def test_motifs_are_told_with_their_distance_from_two_raw_edges() -> None:
    entry = next(
        block
        for block in document("panels").blocks
        if isinstance(block, Entry) and block.title == "Fuse the motifs to panel vase"
    )
    assert entry.lines[1:] == (
        '1: B leaf, 3¼" from the left and 4¼" from the top raw edge, turned 45° clockwise.',
        '2: C leaf, 3¾" from the left and 4¾" from the top raw edge.',
        '3: C round, 5¼" from the left and 9¼" from the top raw edge.',
    )
