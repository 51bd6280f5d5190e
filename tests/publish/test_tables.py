"""Lists for other programs."""

from __future__ import annotations

import csv
import enum
import json
from dataclasses import dataclass, replace
from fractions import Fraction
from io import StringIO
from typing import TypeAlias

import pytest

from quarterturn.materials import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    JoinMethod,
    Materials,
    PanelGroup,
    StripGroup,
    WebPlan,
)
from quarterturn.measure import inches
from quarterturn.publish import cut_list_csv, job_json, json_value
from quarterturn.publish.tables import COLUMNS
from quarterturn.setting import Side
from quarterturn.steps import Chapter, SewLine, Step, Steps, Straighten
from tests.publish.stages import Stages, moons

NOTHING = inches(0)


def plan(
    fabric: str, *strips: StripGroup, runs: tuple[JoinedRun, ...] = (), panels: tuple[PanelGroup, ...] = ()
) -> ClothPlan:
    return ClothPlan(fabric, inches(40), strips, runs, panels, *(NOTHING,) * 5, ())


def materials(*plans: ClothPlan) -> Materials:
    web = WebPlan(inches(17), (), NOTHING, NOTHING, ())
    return Materials(
        cloth=plans,
        web=web,
        batting_width=NOTHING,
        batting_height=NOTHING,
        batting_package="",
        binding_run=NOTHING,
        stitching=(),
        shopping=(),
    )


@pytest.fixture
def quilt() -> Stages:
    return moons()


@pytest.fixture
def bought() -> Materials:
    square, border = inches(10, 1, 4), inches(2, 1, 2)
    strips = StripGroup("As1", square, 2, (Crosscut("A1", square, square, 3),), 3 * square)
    rest = StripGroup("Bs1", border, 2, (), NOTHING)
    pieces = (Crosscut("B1", inches(13), border, 2),)
    lost, length = inches(0, 1, 2), inches(79, 1, 2)
    run = JoinedRun("Br1", "Bs1", 2, inches(40), border, JoinMethod.STRAIGHT, lost, length, pieces)
    panel = PanelGroup("A3", 1, inches(24), inches(0, 1, 2), True)
    return materials(plan("A", strips, panels=(panel,)), plan("B", rest, runs=(run,)))


def rows(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(StringIO(text, newline="")))


def test_the_cut_list_has_a_row_for_each_strip_run_sheet_and_kind_of_piece(
    quilt: Stages, bought: Materials
) -> None:
    found = rows(cut_list_csv(quilt.bill, bought, quilt.design))
    told = [(r["fabric"], r["cut"], r["what"], r["piece"], r["count"]) for r in found]
    assert told == [
        ("A", "As1", "strip", "", "2"),
        ("A", "As1", "piece", "A1", "6"),
        ("A", "", "panel", "A3", "1"),
        ("B", "Bs1", "strip", "", "2"),
        ("B", "Br1", "joined strips", "", "2"),
        ("B", "Br1", "piece", "B1", "2"),
    ]


def test_sizes_are_exact_in_inches_and_millimetres(quilt: Stages, bought: Materials) -> None:
    strip = rows(cut_list_csv(quilt.bill, bought, quilt.design))[0]
    assert (strip["length in"], strip["width in"]) == ("40", "10.25")
    assert (strip["length mm"], strip["width mm"]) == ("1016", "260.35")


def test_lines_end_as_the_standard_says(quilt: Stages, bought: Materials) -> None:
    """RFC 4180, section 2: each record on a line of its own, ended by CRLF."""
    text = cut_list_csv(quilt.bill, bought, quilt.design)
    assert text.endswith("\r\n")
    assert text.replace("\r\n", "").count("\n") == 0
    assert text.split("\r\n")[0] == ",".join(COLUMNS)


@pytest.mark.parametrize("name", ["=1+1", "+x", "-x", "@x", "\tx", "\rx"])
def test_no_cell_is_taken_for_a_formula(name: str, quilt: Stages, bought: Materials) -> None:
    fabrics = tuple(replace(f, name=name) for f in quilt.design.fabrics)
    found = rows(cut_list_csv(quilt.bill, bought, replace(quilt.design, fabrics=fabrics)))
    assert {row["fabric name"] for row in found} == {f"'{name}"}


def test_commas_and_quotes_come_through(quilt: Stages, bought: Materials) -> None:
    fabrics = tuple(replace(f, name='ink, "dark"') for f in quilt.design.fabrics)
    found = rows(cut_list_csv(quilt.bill, bought, replace(quilt.design, fabrics=fabrics)))
    assert {row["fabric name"] for row in found} == {'ink, "dark"'}


class Tone(enum.Enum):
    DARK = "dark"


@dataclass(frozen=True)
class Dot:
    at: complex


@dataclass(frozen=True)
class Dash:
    length: Fraction
    tone: Tone


Sign: TypeAlias = Dot | Dash


@dataclass(frozen=True)
class Line:
    name: str
    signs: tuple[Sign, ...]
    first: Dot
    note: Dot | None
    counts: dict[str, int]


def test_records_become_plain_values_and_those_of_several_kinds_tell_theirs() -> None:
    line = Line("a", (Dot(1 + 2j), Dash(Fraction(19, 2), Tone.DARK)), Dot(0j), None, {"b": 1, "a": 2})
    assert json_value(line) == {
        "name": "a",
        "signs": [{"kind": "Dot", "at": [1.0, 2.0]}, {"kind": "Dash", "length": "19/2", "tone": "dark"}],
        "first": {"at": [0.0, 0.0]},
        "note": None,
        "counts": {"b": 1, "a": 2},
    }


def test_keys_stand_in_the_records_order() -> None:
    text = job_json(Line("é", (), Dot(0j), Dot(1j), {}))
    assert list(json.loads(text)) == ["name", "signs", "first", "note", "counts"]
    assert "é" in text
    assert text.endswith("}\n")


def test_steps_tell_the_kind_of_their_action() -> None:
    step = Step(1, Chapter.CUTTING, SewLine((), Side.RIGHT, inches(0, 1, 4), None), (), ())
    found = json_value(Steps((step,)))
    assert found == {
        "steps": [
            {
                "number": 1,
                "chapter": "cutting",
                "action": {"kind": "SewLine", "parts": [], "way": "right", "seam": "1/4", "press": None},
                "uses": [],
                "makes": [],
            }
        ]
    }
    assert Straighten.__name__ != SewLine.__name__


def test_all_results_of_the_stages_can_be_written(quilt: Stages) -> None:
    found = json.loads(job_json(quilt))
    assert found["design"]["recipes"][0]["shapes"][0]["size"] == {"kind": "DrawnDiameter", "diameter": "7"}
    [arc] = found["blocks"]["masters"][0]["shapes"][0]["traced"]["segments"]
    assert (arc["kind"], arc["radius"]) == ("Arc", 3.5)
    assert job_json(quilt) == job_json(moons())


def test_what_is_no_record_is_refused() -> None:
    with pytest.raises(AssertionError, match="no JSON for a set"):
        json_value({1, 2})
