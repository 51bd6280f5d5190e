"""Borders round a section: corners of every kind, pieced strips, and coping."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Corner
from quarterturn.geometry import as_polygon
from quarterturn.measure import inches
from quarterturn.setting import Child, ClothUse, Frame, Framed, PlainCloth, Setting, arrange, map_findings
from tests.samples import design_of, with_setting

STRIPS = """
[sections.hedge]
kind = "straight"
map = "a0"
down = 3
[sections.verge]
kind = "straight"
map = "b1"
across = 4
"""


def laid(border: str, sections: str = "", rows: str = "a0 a0 a0 a0\n" * 3) -> Setting:
    """Return a top of 8" × 6" with a border."""
    design = design_of(
        with_setting(f"{sections}[setting]\nkind = 'straight'\nmap = '''\n{rows}'''\n[[borders]]\n{border}")
    )
    blocks = draft_blocks(design)
    assert map_findings(design, blocks) == ()
    return arrange(design, blocks)


def frame_of(setting: Setting) -> Frame:
    assert isinstance(setting.top, Framed)
    (frame,) = setting.top.frames
    return frame


def sizes(frame: Frame) -> list[tuple[float, float]]:
    return [(float(child.width), float(child.height)) for child in (*frame.strips, *frame.corners)]


def test_mitred_strips_are_as_long_as_the_outer_edge_and_cut_off_aslant() -> None:
    """A strip d wide about an edge of w covers d·(w + d): a trapezium of w + 2d and w."""
    setting = laid("fabric = 'C'\nwidth = '1 1/2 in'\ncorners = 'mitred'")
    frame = frame_of(setting)
    assert frame.corner is Corner.MITRED
    assert sizes(frame) == [(1.5, 9), (1.5, 9), (11, 1.5), (11, 1.5)]
    areas = [as_polygon(cloth.region).area for cloth in setting.cloths]
    assert areas == pytest.approx([1.5 * 7.5, 1.5 * 7.5, 1.5 * 9.5, 1.5 * 9.5])


def test_cornerstones_leave_every_strip_as_long_as_its_edge() -> None:
    setting = laid("fabric = 'C'\nwidth = 2\ncorners = 'cornerstones'\ncornerstone = 'B'")
    frame = frame_of(setting)
    assert sizes(frame) == [(2, 6), (2, 6), (8, 2), (8, 2), *[(2, 2)] * 4]
    assert {child.node for child in frame.corners} == {
        PlainCloth(ClothUse.CORNERSTONE, "B", inches(2), inches(2))
    }
    assert (setting.width, setting.height) == (12, 10)


def test_pieced_strips_are_turned_by_a_half_on_the_far_edges() -> None:
    setting = laid("kind = 'pieced'\nsides = 'hedge'\nends = 'verge'\ncorners = 'a1'", STRIPS)
    frame = frame_of(setting)
    assert [child.turn for child in frame.strips] == [0, 2, 0, 2]
    assert [child.turn for child in frame.corners] == [1, 2, 3, 0]
    assert (frame.side_depth, frame.end_depth, setting.width, setting.height) == (2, 2, 12, 10)
    assert setting.tally == {"a": 12 + 2 * 3 + 4, "b": 2 * 4}


def test_without_corners_the_pair_sewn_second_runs_through() -> None:
    longer = STRIPS.replace("across = 4", "across = 6")
    setting = laid("kind = 'pieced'\nsides = 'hedge'\nends = 'verge'", longer)
    assert sizes(frame_of(setting)) == [(2, 6), (2, 6), (12, 2), (12, 2)]
    taller = STRIPS.replace("down = 3", "down = 5")
    setting = laid("kind = 'pieced'\nsides = 'hedge'\nends = 'verge'\nfirst = 'ends'", taller)
    assert sizes(frame_of(setting)) == [(2, 10), (2, 10), (8, 2), (8, 2)]


def test_coping_puts_half_of_what_is_missing_on_each_side() -> None:
    setting = laid("kind = 'coping'\nfabric = 'C'\nto = [9, 10]")
    frame = frame_of(setting)
    assert (frame.side_depth, frame.end_depth) == (inches(0, 1, 2), 2)
    assert sizes(frame) == [(0.5, 6), (0.5, 6), (9, 2), (9, 2)]
    assert {cloth.what for cloth in setting.cloths} == {ClothUse.COPING.value}
    assert (setting.width, setting.height) == (9, 10)


def test_coping_that_is_needed_one_way_alone_has_two_strips() -> None:
    setting = laid("kind = 'coping'\nfabric = 'C'\nto = [8, 7]")
    assert len(setting.cloths) == 2
    assert frame_of(setting).side_depth == 0


def test_coping_of_what_has_its_size_already_is_no_border() -> None:
    setting = laid("kind = 'coping'\nfabric = 'C'\nto = [8, 6]")
    assert not isinstance(setting.top, Framed)


def test_a_unit_in_a_corner_has_a_place_of_its_own() -> None:
    setting = laid("kind = 'pieced'\nsides = 'hedge'\nends = 'verge'\ncorners = 'a1'", STRIPS)
    corners = [unit for unit in setting.units if unit.section == "border 1 of top"]
    assert [(unit.copy, unit.row, unit.column, unit.turn) for unit in corners] == [
        (0, 0, 0, 1), (0, 0, 1, 2), (0, 0, 2, 3), (0, 0, 3, 0),
    ]  # fmt: skip


def test_units_join_across_the_seam_of_a_pieced_border() -> None:
    """12 units have 17 joins; strips and corners add one at each unit of the edge, and those between themselves."""
    setting = laid("kind = 'pieced'\nsides = 'hedge'\nends = 'verge'\ncorners = 'a1'", STRIPS)
    within = 17 + 2 * 2 + 2 * 3
    assert len(setting.joins) == within + 2 * (3 + 4) + 2 * 4


def test_child_tells_its_size_as_it_lies() -> None:
    cloth = PlainCloth(ClothUse.STRIP, "A", inches(3), inches(1))
    assert (Child(cloth, 1).width, Child(cloth, 1).height) == (1, 3)
