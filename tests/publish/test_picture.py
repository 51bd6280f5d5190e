"""The picture of the sewn top."""

from __future__ import annotations

import pytest

from quarterturn.design.colour import contrast
from quarterturn.geometry import Region, region_bounds, same_region
from quarterturn.publish import (
    COLOURED,
    LINES,
    PLAIN,
    Area,
    Look,
    Scale,
    faces_sheet,
    laid_out,
    sheet_svg,
    top_sheet,
)
from quarterturn.setting import picture
from tests.publish.stages import Stages, moons


@pytest.fixture(scope="module")
def quilt() -> Stages:
    return moons(cells="a2 b3\nb1 a0\na1 a1")


def drawn_regions(quilt: Stages, look: Look) -> list[Region]:
    """Return all areas of the picture but the binding."""
    sheet = top_sheet(quilt.design, quilt.blocks, quilt.setting, 200, look)
    return [mark.region for mark in laid_out(sheet) if isinstance(mark, Area)][1:]


def wanted_regions(quilt: Stages, look: Look) -> list[Region]:
    edge = 0.25
    factor = (200 - look.line) / (float(quilt.setting.width) + 2 * edge)
    corner = edge * factor + look.line / 2
    scale = Scale(factor, complex(corner, corner))
    return [scale.region(face.region) for face in picture(quilt.design, quilt.blocks, quilt.setting)]


def test_the_picture_shows_every_sewn_face_at_its_place(quilt: Stages) -> None:
    drawn, wanted = drawn_regions(quilt, COLOURED), wanted_regions(quilt, COLOURED)
    assert len(drawn) == len(wanted)
    assert all(same_region(a, b) for a, b in zip(drawn, wanted, strict=True))


def test_without_seam_lines_grounds_come_before_shapes_so_that_no_ground_covers_a_neighbours_shape(
    quilt: Stages,
) -> None:
    drawn = drawn_regions(quilt, PLAIN)
    sides = [len(region.paths[0].segments) for region in drawn[: 2 * len(quilt.setting.units)]]
    assert sides == [4] * 6 + [3] * 6


def test_the_sheet_holds_the_binding(quilt: Stages) -> None:
    sheet = top_sheet(quilt.design, quilt.blocks, quilt.setting, 200)
    binding = sheet.marks[0]
    assert isinstance(binding, Area)
    box = region_bounds(binding.region)
    assert (box.left, box.right) == pytest.approx((0.05, 199.95))
    assert (box.top, sheet.height - box.bottom) == pytest.approx((0.05, 0.05))
    across, down = float(quilt.setting.width) + 0.5, float(quilt.setting.height) + 0.5
    assert box.height / box.width == pytest.approx(down / across)


def test_the_line_drawing_has_thin_lines_and_no_fill(quilt: Stages) -> None:
    sheet = top_sheet(quilt.design, quilt.blocks, quilt.setting, 200, LINES)
    inks = {mark.ink for mark in laid_out(sheet) if isinstance(mark, Area)}
    [ink] = inks
    assert ink.fill is None
    assert ink.stroke is not None
    assert 2 < contrast(ink.stroke, "#ffffff") < 3.5
    assert ink.width <= 0.25


def test_the_description_counts_the_units(quilt: Stages) -> None:
    alt = top_sheet(quilt.design, quilt.blocks, quilt.setting, 200).alt
    assert "3 × 2 units, 4 with ink on oyster, 2 with oyster on ink" in alt
    assert "Border, from the inside: ink" in alt
    assert "Bound in ink." in alt


def test_a_large_quilt_stays_a_small_drawing() -> None:
    row = " ".join(["a2 b3"] * 20)
    large = moons(finished='2"', shape="{ flow = true }", cells="\n".join([row] * 40))
    sheet = top_sheet(large.design, large.blocks, large.setting, 150)
    assert len(large.setting.units) == 1600
    assert len(sheet.symbols) == 2
    assert len(sheet_svg(sheet)) < 120_000


def test_faces_are_drawn_in_their_fabrics_colours(quilt: Stages) -> None:
    faces = picture(quilt.design, quilt.blocks, quilt.setting)
    size = (float(quilt.setting.width), float(quilt.setting.height))
    sheet = faces_sheet(faces, size, {"A": "#ffffff", "B": "#000000"}, 100, "What was sewn")
    fills = [mark.ink.fill for mark in sheet.marks if isinstance(mark, Area)]
    assert fills == ["#ffffff" if face.fabric == "A" else "#000000" for face in faces]
    assert (sheet.width, sheet.height) == pytest.approx((100, 100 * size[1] / size[0]))
