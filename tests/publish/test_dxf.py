"""Sheets as DXF, read back with ezdxf."""

from __future__ import annotations

import math
from io import StringIO
from typing import TYPE_CHECKING

import pytest

from quarterturn.geometry import Arc, Cubic, Line, disc, rectangle, spread_circle
from quarterturn.geometry import Region as Cloth
from quarterturn.publish import Area, Mark, Sheet, Stroke, Text, sheet_dxf
from tests.publish.sheets import DASHED, SOLID, every_mark

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.dxfgfx import DXFGraphic


def read(text: str) -> Drawing:
    from ezdxf.filemanagement import read as read_dxf

    return read_dxf(StringIO(text))


def entities(*marks: Mark) -> list[DXFGraphic]:
    return list(read(sheet_dxf(Sheet(100, 100, marks, "t", "a"))).modelspace())


def extent(entity: DXFGraphic) -> tuple[float, float, float, float]:
    from ezdxf.bbox import extents

    box = extents([entity], fast=False)
    return box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y


def test_the_file_is_in_millimetres_and_has_no_faults() -> None:
    document = read(sheet_dxf(every_mark()))
    assert document.dxfversion == "AC1024"
    assert document.header["$INSUNITS"] == 4
    assert document.header["$MEASUREMENT"] == 1
    audit = document.audit()
    assert audit.errors == []
    assert audit.fixes == []


def test_a_whole_circle_stays_a_circle_of_its_radius() -> None:
    [circle] = entities(Area(disc(44.45, 50 + 60j), SOLID))
    assert circle.dxftype() == "CIRCLE"
    assert circle.dxf.radius == 44.45
    assert (circle.dxf.center.x, circle.dxf.center.y) == (50, 40)


@pytest.mark.parametrize("sweep", [math.pi / 2, -math.pi / 2, 4.0, -4.0])
def test_an_open_arc_stays_an_arc_with_its_ends(sweep: float) -> None:
    from ezdxf.entities.arc import Arc as ReadArc

    arc = Arc(50 + 60j, 12.5, 0.3, sweep)
    [found] = entities(Stroke((arc,), SOLID))
    assert isinstance(found, ReadArc)
    assert found.dxf.radius == 12.5
    ends = {(round(p.x, 6), round(p.y, 6)) for p in (found.start_point, found.end_point)}
    assert ends == {(round(p.real, 6), round(100 - p.imag, 6)) for p in (arc.start, arc.end)}
    swept = (found.dxf.end_angle - found.dxf.start_angle) % 360
    assert swept == pytest.approx(math.degrees(abs(sweep)))


def test_an_outline_of_arcs_and_lines_becomes_a_polyline_with_bulges() -> None:
    from ezdxf.entities.lwpolyline import LWPolyline

    [found] = entities(Area(Cloth((spread_circle(20, 6.35),)), SOLID))
    assert isinstance(found, LWPolyline)
    assert found.closed
    bulges = [point[4] for point in found]
    quarter = math.tan(math.pi / 8)
    assert bulges == pytest.approx([-quarter, 0] * 4)
    assert extent(found) == pytest.approx((-26.35, 73.65, 26.35, 126.35), abs=1e-6)


def test_a_cubic_is_flattened_finely() -> None:
    from ezdxf.entities.lwpolyline import LWPolyline

    curve = Cubic(0j, 30 + 0j, 30 + 30j, 0 + 30j)
    [found] = entities(Stroke((Line(-5 + 0j, 0j), curve), SOLID))
    assert isinstance(found, LWPolyline)
    points = [complex(p[0], 100 - p[1]) for p in found]
    assert points[0] == -5
    assert points[-1] == pytest.approx(30j)
    assert max(p.real for p in points) == pytest.approx(22.5, abs=0.01)


def test_layers_are_told_by_purpose() -> None:
    box = Cloth((rectangle(0, 0, 10, 10),))
    marks = (
        Area(box, SOLID),
        Area(box, DASHED),
        Stroke((Line(0j, 5 + 0j),), SOLID),
        Stroke((Line(0j, 5 + 0j),), DASHED),
        Text(1 + 1j, "name"),
    )
    assert [e.dxf.layer for e in entities(*marks)] == ["CUT", "RING", "MARK", "FOLD", "TEXT"]


@pytest.mark.parametrize("anchor", ["start", "middle", "end"])
def test_text_keeps_its_words_place_and_turn(anchor: str) -> None:
    assert anchor in ("start", "middle", "end")
    [found] = entities(Text(10 + 20j, '4¾"', 4.0, anchor, 90.0))  # type: ignore[arg-type]  # checked above
    assert found.dxf.text == '4¾"'
    assert found.dxf.rotation == -90
    place = found.dxf.insert if anchor == "start" else found.dxf.align_point
    assert (place.x, place.y) == (10, 80)


def test_equal_sheets_give_equal_text_and_other_documents_keep_their_dates() -> None:
    from ezdxf._options import options

    assert sheet_dxf(every_mark()) == sheet_dxf(every_mark())
    assert options.write_fixed_meta_data_for_testing is False
