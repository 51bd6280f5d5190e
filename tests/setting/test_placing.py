"""Laws of every top, whatever sections it is made of: it is covered once, and turns as a whole."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given, settings

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    AnyBorder,
    Cell,
    Design,
    LineSet,
    OnPointSet,
    PiecedBorder,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    format_design,
    read_design,
)
from quarterturn.geometry import Region, as_polygon, quarter_turns, rectangle, region_bounds, shift
from quarterturn.proof.rehearsal.compare import area_of_difference
from quarterturn.setting import Face, Setting, arrange, map_findings, picture, setting_text, turned_in_place
from tests.samples import ROUNDS, design_of
from tests.trees import BLOCKS, tops, turned_whole


def laid(design: Design) -> Setting:
    assert map_findings(design, BLOCKS) == ()
    return arrange(design, BLOCKS)


@given(tops())
@settings(max_examples=60, deadline=None)
def test_units_and_cloth_cover_the_top_once(design: Design) -> None:
    import shapely

    setting = laid(design)
    whole = float(setting.width * setting.height)
    pieces = [as_polygon(cloth.region) for cloth in setting.cloths if cloth.what != "motif"]
    side = float(design.recipes[0].finished)
    for unit in setting.units:
        corners = (unit.motion(complex(x, y) * side) for x, y in ((0, 0), (1, 0), (1, 1), (0, 1)))
        pieces.append(shapely.Polygon([(p.real, p.imag) for p in corners]))
    assert sum(piece.area for piece in pieces) == pytest.approx(whole, abs=1e-6)
    assert shapely.union_all(pieces, grid_size=1e-9).area == pytest.approx(whole, abs=1e-5)


@given(tops())
@settings(max_examples=25, deadline=None)
def test_turning_the_whole_top_turns_its_picture_and_keeps_its_curves(design: Design) -> None:
    setting, turned = laid(design), laid(turned_whole(design))
    assert (turned.width, turned.height) == (setting.height, setting.width)
    motion = quarter_turns(1).then(shift(complex(float(setting.height), 0)))
    moved = [Face(face.fabric, motion.region(face.region)) for face in picture(design, BLOCKS, setting)]
    assert area_of_difference(moved, picture(design, BLOCKS, turned)) < 1e-5
    assert marks(setting) == marks(turned)
    assert curves(setting) == curves(turned)


def marks(setting: Setting) -> Counter[tuple[str, float]]:
    return Counter(
        (mark.meeting.value, round(mark.distance, 6)) for join in setting.joins for mark in join.marks
    )


def curves(setting: Setting) -> Counter[tuple[int, float, bool]]:
    trails = (*setting.flow.rounds, *setting.flow.paths)
    return Counter((trail.pieces, round(trail.length, 5), trail.circle) for trail in trails)


@given(tops())
@settings(max_examples=60, deadline=None)
def test_as_many_units_lie_in_the_top_as_the_maps_say(design: Design) -> None:
    counted = counts_of(design, design.setting, design.borders)
    setting = laid(design)
    assert setting.tally == {code: counted[code] for code in "ab" if counted[code]}
    assert len({(u.section, u.copy, u.row, u.column) for u in setting.units}) == len(setting.units)


def counts_of(design: Design, setting: SectionSet, borders: tuple[AnyBorder, ...]) -> Counter[str]:
    cells: list[object] = []
    if isinstance(setting, StraightSet):
        cells += [cell for row in setting.rows() for cell in row]
    if isinstance(setting, OnPointSet):
        cells += [cell for row in (*setting.cells, *setting.between) for cell in row]
    if isinstance(setting, LineSet):
        cells += [part for part in setting.parts if not isinstance(part, Strip)]
    for border in borders:
        if isinstance(border, PiecedBorder):
            cells += [border.sides, border.ends] * 2 + [border.corners] * 4
    total: Counter[str] = Counter()
    for cell in cells:
        if isinstance(cell, Cell):
            total[cell.code] += 1
        if isinstance(cell, SectionCell):
            inner = next(each.setting for each in design.sections if each.name == cell.section)
            total += counts_of(design, inner, inner.borders)
    return total


@given(tops())
@settings(max_examples=60, deadline=None)
def test_a_design_of_any_sections_printed_whole_reads_back_as_itself(design: Design) -> None:
    reading = read_design(format_design(design))
    assert [finding.code for finding in reading.findings] in ([], ["symmetry-unused"])
    assert reading.design == design


@given(tops())
@settings(max_examples=25, deadline=None)
def test_the_text_tells_of_every_section_once(design: Design) -> None:
    text = setting_text(laid(design), design.units).splitlines()
    for section in design.sections:
        assert sum(line.startswith(f"{section.name}:") for line in text) == 1


@pytest.mark.parametrize("turn", range(4))
def test_what_is_turned_in_its_place_keeps_its_top_left_corner(turn: int) -> None:
    motion = turned_in_place(5.0, 2.0, turn)
    box = region_bounds(Region((motion.path(rectangle(0, 0, 5, 2)),)))
    assert (box.left, box.top) == (0, 0)
    assert (box.right, box.bottom) == ((2, 5) if turn % 2 else (5, 2))


def test_a_straight_top_is_placed_row_by_row() -> None:
    design = design_of(ROUNDS)
    setting = arrange(design, draft_blocks(design))
    assert [(unit.row, unit.column) for unit in setting.units[4:7]] == [(0, 4), (1, 0), (1, 1)]
    once, unturned = setting.units[5:7]
    assert (once.turn, unturned.turn) == (1, 0)
    assert once.motion(0j) == 1.5 + 2 + 3.5j, "turned once, its top left corner is at the top right"
    assert unturned.motion(0j) == 3.5 + 3.5j
