"""The steps of tops that are more than a map of units: every section inside out, the root last."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from functools import cache
from itertools import pairwise

import pytest

from quarterturn.measure import ROOT_TWO
from quarterturn.proof import Pattern, prove
from quarterturn.setting import Side
from quarterturn.steps import (
    AddBorder,
    AddCorners,
    AddMitred,
    AddTriangles,
    Chapter,
    CutTriangles,
    LayOut,
    SetAside,
    SetIn,
    SewLine,
    SquareUp,
    Step,
    Towards,
    TrimToFit,
)
from tests.samples import pattern_of
from tests.section_texts import NESTED, ON_POINT, PANELS, PIECED, SASHED, SASHED_STRAIGHT, TEXTS


@cache
def pattern_for(text: str) -> Pattern:
    """Return the pattern of a text, made once."""
    return pattern_of(text)


def steps_of(text: str, kind: type) -> list[Step]:
    """Return the steps of a kind."""
    return [step for step in pattern_for(text).steps.steps if isinstance(step.action, kind)]


@pytest.mark.parametrize("name", TEXTS)
def test_the_steps_make_the_picture(name: str) -> None:
    proof = prove(pattern_for(TEXTS[name]))
    assert proof.findings == ()
    assert proof.share < 1e-6


@pytest.mark.parametrize("name", TEXTS)
def test_whatever_is_used_was_made_and_whatever_is_made_is_used(name: str) -> None:
    made: Counter[str] = Counter()
    used: Counter[str] = Counter()
    for step in pattern_for(TEXTS[name]).steps.steps:
        for pile in step.uses:
            used[pile.label] += pile.count
            assert used[pile.label] <= made[pile.label], f"step {step.number} wants {pile.label} too early"
        for product in step.makes:
            made[product.label] += product.count
    made.subtract(used)
    assert {label: n for label, n in made.items() if n} == {"quilt": 1}


@pytest.mark.parametrize("name", TEXTS)
def test_the_bill_is_what_the_steps_take(name: str) -> None:
    """Cutting makes what a full strip gives, and sets the rest aside; all others together use what the bill counts."""
    pattern = pattern_for(TEXTS[name])
    used: Counter[str] = Counter()
    for step in pattern.steps.steps:
        if not isinstance(step.action, SetAside):
            used.update({pile.label: pile.count for pile in step.uses})
    for piece in pattern.bill.pieces:
        if used[piece.label]:
            assert used[piece.label] == piece.count, piece.label


@pytest.mark.parametrize("name", TEXTS)
def test_chapters_come_in_order(name: str) -> None:
    order = list(Chapter)
    places = [order.index(step.chapter) for step in pattern_for(TEXTS[name]).steps.steps]
    assert places == sorted(places)


def test_equal_sections_are_made_together() -> None:
    made = {p.label: p.count for step in pattern_for(NESTED).steps.steps for p in step.makes}
    assert (made["round"], made["vine"], made["medal"], made["top"]) == (4, 2, 1, 1)


def test_sections_come_before_what_holds_them() -> None:
    first: dict[str, int] = {}
    for step in pattern_for(NESTED).steps.steps:
        for product in step.makes:
            first.setdefault(product.label, step.number)
    assert first["round"] < first["medal"] < first["top"]
    assert first["vine"] < first["top"]


def test_side_triangles_are_quarters_and_corners_halves_of_squares() -> None:
    sides, corners = steps_of(ON_POINT, CutTriangles)
    assert isinstance(sides.action, CutTriangles)
    assert isinstance(corners.action, CutTriangles)
    assert (sides.action.cuts, sides.uses[0].count, sides.makes[0].count) == (2, 2, 8)
    assert (corners.action.cuts, corners.uses[0].count, corners.makes[0].count) == (1, 2, 4)
    over = [pile for step in steps_of(ON_POINT, SetAside) for pile in step.uses]
    assert [pile.count for pile in over if pile.label == sides.makes[0].label] == [2]


def test_points_reach_a_leg_less_two_seams_beyond_their_row() -> None:
    """A row of one unit of 2" with a triangle at each end; squares of 4 1/8" have short edges of 4 1/8" / √2."""
    (first, *_) = steps_of(ON_POINT, AddTriangles)
    leg = Fraction(33, 8) * ROOT_TWO / 2
    assert first.makes[0].width == Fraction(5, 2) + 2 * (leg - Fraction(1, 2))
    assert first.makes[0].height == Fraction(5, 2)


def test_slanting_rows_are_pressed_by_turns() -> None:
    rows = [s.action for s in steps_of(ON_POINT, SewLine) if s.makes[0].label.startswith("row")]
    assert {row.press for row in rows if isinstance(row, SewLine)} <= {Side.LEFT, Side.RIGHT}
    ends = [
        step.action.press
        for step in steps_of(ON_POINT, AddTriangles)
        if isinstance(step.action, AddTriangles)
    ]
    assert all(a is not b for a, b in pairwise(ends))


def test_seams_by_sashing_are_pressed_to_it() -> None:
    for text in (SASHED, SASHED_STRAIGHT):
        sewn = [step.action for step in steps_of(text, SewLine)]
        assert {action.press for action in sewn if isinstance(action, SewLine)} == {Towards.SASHING}


def test_open_seams_are_open_everywhere() -> None:
    for text in (SASHED, NESTED, PIECED):
        pattern = pattern_for(text + '\n[making]\npressing = "open"\n')
        pressed = {getattr(step.action, "press", None) for step in pattern.steps.steps}
        assert pressed == {None}


def test_rows_that_move_leave_a_triangle_to_set_in() -> None:
    """Of four sashed rows of two, one slanting row moves on; without sashing no triangle needs setting in."""
    (step,) = steps_of(SASHED, SetIn)
    assert isinstance(step.action, SetIn)
    assert len(step.action.places) == 1
    assert steps_of(ON_POINT, SetIn) == []


def test_a_section_on_point_is_squared_up_to_its_size() -> None:
    (step,) = steps_of(ON_POINT, SquareUp)
    setting = pattern_for(ON_POINT).setting
    assert step.makes[0].width == setting.centre.width + Fraction(1, 2)
    assert isinstance(step.action, SquareUp)
    assert step.action.beyond == Fraction(1, 4)


def test_strips_that_no_ruler_measures_are_trimmed_to_what_they_are_sewn_to() -> None:
    trims = steps_of(ON_POINT, TrimToFit)
    assert [step.chapter for step in trims] == [Chapter.BORDERS, Chapter.BORDERS]
    assert [step.action.fits for step in trims if isinstance(step.action, TrimToFit)] == ["top", "top"]
    assert steps_of(SASHED_STRAIGHT, TrimToFit) == []


def test_the_corners_of_a_pieced_border_wait_in_their_stacks() -> None:
    (layout,) = steps_of(PIECED, LayOut)
    assert isinstance(layout.action, LayOut)
    assert [(pile.label, pile.count) for pile in layout.action.later] == [("unit a", 4)]
    turns = [step.action.turn for step in steps_of(PIECED, AddBorder) if isinstance(step.action, AddBorder)]
    assert turns == [0, 2, 0, 0]


def test_borders_of_sections_belong_to_assembly_and_those_of_the_root_to_borders() -> None:
    chapters = {step.makes[0].label: step.chapter for step in steps_of(NESTED, AddMitred)}
    assert chapters == {"medal": Chapter.ASSEMBLY, "top": Chapter.BORDERS}


def test_every_panel_is_fused_stitched_and_cut_away_by_itself() -> None:
    panels = pattern_for(PANELS).steps.of(Chapter.PANELS)
    assert [step.makes[0].label for step in panels] == ["vase, fused", "vase, stitched", "vase"]
    assert {step.makes[0].count for step in panels} == {2}


def test_corner_triangles_come_last() -> None:
    (corners,) = steps_of(SASHED, AddCorners)
    assert isinstance(corners.action, AddCorners)
    assert [corner.side for corner in corners.action.corners] == [
        Side.TOP,
        Side.BOTTOM,
        Side.LEFT,
        Side.RIGHT,
    ]
    assert corners.number > max(step.number for step in steps_of(SASHED, AddTriangles))
