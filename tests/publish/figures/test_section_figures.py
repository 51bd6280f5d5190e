"""Drawings of sections: rows on point pulled apart, triangles with their grain, borders, panels, layouts."""

from __future__ import annotations

import math
from collections import Counter

import pytest

from quarterturn.geometry import Line, Region, as_polygon, polygon, region_bounds
from quarterturn.proof import Pattern
from quarterturn.publish.figures import (
    border_figure,
    grid_figure,
    layout_figure,
    mitre_figure,
    panel_figure,
    section_figure,
    slanting_figure,
    triangles_figure,
)
from quarterturn.publish.figures.inks import ACCENT
from quarterturn.publish.figures.nodes import name_plate
from quarterturn.publish.figures.slanting import slanting_rows
from quarterturn.publish.sheet import Area, Sheet, Stroke, Text, Use
from quarterturn.publish.wording import sections_of
from quarterturn.setting import Framed, Grid, OnPoint
from quarterturn.steps import CutTriangles, FuseToPanel, Step
from tests.samples import ROUNDS, pattern_of
from tests.section_texts import MITRED, NESTED, ON_POINT, PANELS, PIECED, SASHED, TEXTS


def lettering(sheet: Sheet) -> list[str]:
    return [mark.text for mark in sheet.marks if isinstance(mark, Text)]


def on_point(text: str) -> tuple[Pattern, OnPoint]:
    pattern = pattern_of(text)
    node = pattern.setting.centre
    assert isinstance(node, OnPoint)
    return pattern, node


@pytest.mark.parametrize("text", [ON_POINT, SASHED], ids=["plain", "sashed"])
def test_slanting_rows_show_every_unit_once_and_are_numbered_from_the_upper_right(text: str) -> None:
    pattern, node = on_point(text)
    sheet = slanting_figure(pattern, node, 160, 180)
    assert Counter(mark.symbol for mark in sheet.marks if isinstance(mark, Use)) == pattern.setting.tally
    numbers = [mark for mark in sheet.marks if isinstance(mark, Text) and mark.text.isdigit()]
    assert [mark.text for mark in numbers] == [str(k) for k in range(1, slanting_rows(node) + 1)]
    assert numbers[0].at.imag < numbers[-1].at.imag
    assert numbers[0].at.real > numbers[-1].at.real


@pytest.mark.parametrize("text", [ON_POINT, SASHED], ids=["plain", "sashed"])
def test_parts_of_slanting_rows_lie_apart_within_the_sheet(text: str) -> None:
    import shapely

    pattern, node = on_point(text)
    sheet = slanting_figure(pattern, node, 160, 180)
    cloth = [as_polygon(m.region) for m in sheet.marks if isinstance(m, Area) and m.ink.fill != "#ffffff"]
    side = float(pattern.design.recipes[0].finished)
    for mark in sheet.marks:
        if isinstance(mark, Use):
            ground = sheet.symbols[mark.symbol][0]
            assert isinstance(ground, Area)
            factor = region_bounds(ground.region).width / side
            corners = (0j, complex(side, 0), complex(side, side), complex(0, side))
            square = polygon(tuple(mark.motion(corner * factor) for corner in corners))
            cloth.append(as_polygon(Region((square,))))
    assert shapely.union_all(cloth).area == pytest.approx(sum(part.area for part in cloth))
    left, top, right, bottom = shapely.union_all(cloth).bounds
    assert min(left, top) >= 0
    assert right <= sheet.width <= 162
    assert bottom <= sheet.height <= 182


def cut_triangles(pattern: Pattern) -> list[Step]:
    return [step for step in pattern.steps.steps if isinstance(step.action, CutTriangles)]


def test_triangles_have_their_grain_along_the_outer_edge() -> None:
    pattern = pattern_of(ON_POINT)
    sides, corners = (triangles_figure(pattern, step) for step in cut_triangles(pattern))
    assert "twice into four side triangles; the grain runs along the long edge" in sides.alt
    assert "once into two corner triangles; the grain runs along the short edges" in corners.alt
    for sheet in (sides, corners):
        lines = [
            segment
            for mark in sheet.marks
            if isinstance(mark, Stroke) and not mark.ink.dash
            for segment in mark.segments
            if isinstance(segment, Line)
        ]
        for line in lines:
            way = line.end - line.start
            assert math.isclose(way.real, 0, abs_tol=1e-9) or math.isclose(way.imag, 0, abs_tol=1e-9)


def framed(text: str) -> tuple[Pattern, Framed]:
    pattern = pattern_of(text)
    assert isinstance(pattern.setting.top, Framed)
    return pattern, pattern.setting.top


def test_a_pieced_border_shows_its_units_and_corners() -> None:
    pattern, top = framed(PIECED)
    (frame,) = top.frames
    outer = (float(top.width), float(top.height))
    sheet = border_figure(pattern, frame, outer, 56)
    assert Counter(m.symbol for m in sheet.marks if isinstance(m, Use)) == {"a": 8, "b": 6}
    assert [text for text in lettering(sheet) if text.isdigit()] == ["1", "2", "3", "4"]


def test_mitred_strips_are_drawn_with_slanting_ends() -> None:
    pattern, top = framed(MITRED)
    (frame,) = top.frames
    sheet = border_figure(pattern, frame, (float(top.width), float(top.height)), 56)
    slanting = [
        mark
        for mark in sheet.marks
        if isinstance(mark, Area)
        and sum(
            abs((s.end - s.start).real * (s.end - s.start).imag) > 1e-6 for s in mark.region.paths[0].segments
        )
        == 2
    ]
    assert len(slanting) == 4
    assert {'stop ¼" from it', "raw corner of the top"} <= set(lettering(mitre_figure(pattern, "C")))


def test_a_panel_is_to_scale_with_each_motif_measured_from_two_edges() -> None:
    pattern = pattern_of(PANELS)
    step = next(s for s in pattern.steps.steps if isinstance(s.action, FuseToPanel))
    sheet = panel_figure(pattern, step, 150)
    assert [text for text in lettering(sheet) if text.isdigit()] == ["1", "2", "3"]
    assert {'8½"', '12½"'} <= set(lettering(sheet))
    thin = [mark for mark in sheet.marks if isinstance(mark, Stroke) and mark.ink.stroke == ACCENT]
    assert len(thin) == 6
    assert '3: C round, 5¼" from the left and 9¼" from the top raw edge.' in sheet.alt


def test_a_motif_is_drawn_with_its_number_on_the_cross_of_its_template() -> None:
    heart = PANELS.replace('shape = { outline = "leaf", width = \'2 1/4"\', turn = 1 }', "").replace(
        '[recipes.leaf]\nkind = "shape cut both ways"',
        """[recipes.leaf]
kind = "shapes cut"
cuts = "both ways"
shapes = [{ name = "leaf", outline = "heart", width = '2"', at = ['1"', '1/2"'], turn = 30 }]""",
    )
    pattern = pattern_of(heart)
    step = next(s for s in pattern.steps.steps if isinstance(s.action, FuseToPanel))
    sheet = panel_figure(pattern, step, 150)
    shapes = [mark for mark in sheet.marks[2:] if isinstance(mark, Area)]
    plate = next(mark for mark in sheet.marks if isinstance(mark, Text) and mark.text == "2")
    assert abs(region_bounds(shapes[1].region).centre - plate.at) < 1.0


def test_numbers_of_motifs_lie_on_all_lines_that_measure_them() -> None:
    pattern = pattern_of(PANELS)
    step = next(s for s in pattern.steps.steps if isinstance(s.action, FuseToPanel))
    marks = panel_figure(pattern, step, 150).marks
    thin = [k for k, mark in enumerate(marks) if isinstance(mark, Stroke) and mark.ink.stroke == ACCENT]
    digits = [k for k, mark in enumerate(marks) if isinstance(mark, Text) and mark.text.isdigit()]
    assert max(thin) < min(digits)


def test_a_name_runs_upwards_in_a_narrow_upright_outline() -> None:
    tall, broad = (polygon((0j, complex(w, 0), complex(w, h), complex(0, h))) for w, h in ((5, 40), (40, 5)))
    (_, upwards), (_, level) = name_plate("hedgeside0", tall), name_plate("hedgeside0", broad)
    assert isinstance(upwards, Text)
    assert isinstance(level, Text)
    assert (upwards.turn, level.turn) == (-90.0, 0.0)
    assert upwards.size == level.size


def test_a_layout_names_the_sections_that_the_quilt_is_put_together_of() -> None:
    sheet = layout_figure(pattern_of(NESTED), 150, 150)
    assert lettering(sheet) == ["vine0", "medal0", "vine2", "A3", "A3"]
    units = Counter(mark.symbol for mark in sheet.marks if isinstance(mark, Use))
    assert units == pattern_of(NESTED).setting.tally


@pytest.mark.parametrize("name", TEXTS)
def test_a_section_is_drawn_with_its_finished_size_and_its_parts_by_their_names(name: str) -> None:
    pattern = pattern_of(TEXTS[name])
    for made in sections_of(pattern.setting.top):
        sheet = section_figure(pattern, made.node)
        assert sum(text.endswith('"') for text in lettering(sheet)) == 2
        if isinstance(made.node, Grid):
            labels = [[f"p{r}{c}" for c in range(len(row))] for r, row in enumerate(made.node.rows)]
            apart = grid_figure(pattern, made.node, labels, [None] * len(labels), (90, 60))
            assert apart.width <= 92
            assert all(label in apart.alt for row in labels for label in row)


@pytest.mark.parametrize(("times", "has_plates"), [(1, True), (3, False)])
def test_every_part_of_many_rows_is_named_on_its_cloth_and_of_few_on_a_plate(
    times: int, has_plates: bool
) -> None:
    text = ROUNDS.replace("[setting]", f"[setting]\nacross = {times}\ndown = {times}")
    pattern = pattern_of(text)
    node = pattern.setting.centre
    assert isinstance(node, Grid)
    labels = [[f"{child.node.name}{child.turn}" for child in row] for row in node.rows]  # type: ignore[union-attr]
    sheet = grid_figure(pattern, node, labels, [None] * len(labels), (160, 240))
    named = Counter(name for name in lettering(sheet) if not name.isdigit())
    assert named == Counter(name for row in labels for name in row)
    plates = [mark for mark in sheet.marks if isinstance(mark, Area) and mark.ink.fill == "#ffffff"]
    assert bool(plates) is has_plates
