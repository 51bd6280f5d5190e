"""Neighbours are found by where units lie, across the seams of sections and in any turn."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import Design
from quarterturn.geometry import STAY, Motion, shift
from quarterturn.setting import Meeting, PlacedUnit, Setting, Side, arrange
from quarterturn.setting.neighbours import Neighbour, find_neighbours, grid_neighbours
from tests.samples import design_of, with_setting
from tests.trees import BLOCKS, tops


def placed(motion: Motion, turn: int = 0) -> PlacedUnit:
    return PlacedUnit("centre", 0, 0, 0, "a", turn, "", motion)


def laid(tables: str) -> Setting:
    design = design_of(with_setting(tables))
    return arrange(design, draft_blocks(design))


@given(st.integers(1, 6), st.integers(1, 6), st.floats(-50, 50), st.floats(-50, 50))
def test_units_in_a_grid_are_found_as_a_grid_has_them(rows: int, columns: int, x: float, y: float) -> None:
    units = [placed(shift(complex(x + 2 * c, y + 2 * r))) for r in range(rows) for c in range(columns)]
    found = find_neighbours(units, [(2.0, 2.0)] * len(units))
    assert list(found) == list(grid_neighbours(rows * columns, columns))


def test_half_a_side_is_no_neighbour() -> None:
    found = find_neighbours([placed(STAY), placed(shift(2 + 1j))], [(2.0, 2.0)] * 2)
    assert list(found) == [{}, {}]


def test_a_longer_side_is_no_neighbour() -> None:
    found = find_neighbours([placed(STAY), placed(shift(2 + 0j))], [(2.0, 2.0), (2.0, 4.0)])
    assert list(found) == [{}, {}]


def test_sides_of_sections_turned_against_each_other_run_against_each_other() -> None:
    """The second is upside down: its right side meets the right side of the first."""
    upside_down = placed(Motion(-1 + 0j, 4 + 2j))
    first, second = find_neighbours([placed(STAY), upside_down], [(2.0, 2.0)] * 2)
    assert first == {Side.RIGHT: Neighbour(1, Side.RIGHT, flipped=True)}
    assert second == {Side.RIGHT: Neighbour(0, Side.RIGHT, flipped=True)}


@given(tops())
@settings(max_examples=40, deadline=None)
def test_neighbours_are_mutual(design: Design) -> None:
    setting = arrange(design, BLOCKS)
    found = find_neighbours(setting.units, [(2.0, 2.0)] * len(setting.units))
    for unit, beside in enumerate(found):
        for side, other in beside.items():
            assert found[other.unit][other.side] == Neighbour(unit, side, other.flipped)
    assert sum(map(len, found)) == 2 * len(setting.joins)


WREATHS = """
[sections.wreath]
kind = "straight"
map = '''
a2 a3
a1 a0
'''
[setting]
kind = "{}"
{}
"""


def test_a_curve_flows_from_section_to_section_as_it_does_in_one_map() -> None:
    whole = laid("[setting]\nkind = 'straight'\nmap = '''\na2 a3 a0 a1\na1 a0 a3 a2\n'''")
    parted = laid(
        "[sections.left]\nkind = 'straight'\nmap = '''\na2 a3\na1 a0\n'''\n"
        "[sections.right]\nkind = 'straight'\nmap = '''\na0 a1\na3 a2\n'''\n"
        "[setting]\nkind = 'columns'\nparts = ['left', 'right']"
    )
    assert len(parted.joins) == len(whole.joins) == 10
    assert lengths(parted) == lengths(whole)
    assert parted.flow.circles == whole.flow.circles == 1


def lengths(setting: Setting) -> list[float]:
    return sorted(round(trail.length, 9) for trail in (*setting.flow.rounds, *setting.flow.paths))


@pytest.mark.parametrize("turn", range(4))
def test_a_join_across_sections_is_told_from_the_earlier_unit(turn: int) -> None:
    """Two wreaths side by side, however turned, meet in plain ground at two seams."""
    setting = laid(WREATHS.format("columns", f"parts = ['wreath0', 'wreath{turn}']"))
    across = [
        join for join in setting.joins if setting.units[join.first].copy != setting.units[join.second].copy
    ]
    assert [(join.side, join.marks) for join in across] == [(Side.RIGHT, ())] * 2
    assert all(join.first < join.second for join in setting.joins)


def test_marks_are_measured_from_the_top_end_of_the_earlier_side() -> None:
    """A radius of 0.9" meets the right side of a1 1.1" below its top; a2 upside down beside it meets there too."""
    text = with_setting(
        "[sections.one]\nkind = 'straight'\nmap = 'a2'\n[sections.two]\nkind = 'straight'\nmap = 'a1'\n"
        "[setting]\nkind = 'columns'\nparts = ['one', 'two2']"
    ).replace("{ flow = true }", "{ radius = '0.9\"' }")
    design = design_of(text)
    (join,) = arrange(design, draft_blocks(design)).joins
    (mark,) = join.marks
    assert (join.side, mark.meeting) == (Side.RIGHT, Meeting.MATCH)
    assert mark.at == pytest.approx(1.1)


def test_units_on_point_join_aslant() -> None:
    setting = laid(
        "[setting]\nkind = 'on point'\nmap = '''\na0 a1\na2 a3\n'''\nbetween = 'b0'\ntriangles = 'A'"
    )
    assert [(unit.row, unit.column) for unit in setting.units] == [(0, 0), (0, 1), (1, 0), (2, 0), (2, 1)]
    assert [(join.first, join.second, join.side) for join in setting.joins] == [
        (0, 2, Side.RIGHT), (1, 2, Side.BOTTOM), (2, 4, Side.RIGHT), (2, 3, Side.BOTTOM),
    ]  # fmt: skip
