"""Sheets as SVG, read back with svgelements."""

from __future__ import annotations

import math
from io import StringIO
from typing import Any
from xml.etree import ElementTree

import pytest

from quarterturn.geometry import Arc, circle, disc, spread_circle
from quarterturn.geometry import Region as Cloth
from quarterturn.publish import Area, Ink, Sheet, Text, sheet_svg
from quarterturn.publish.svg import arc_piece_count, colour, number
from tests.publish.sheets import SOLID, every_mark

NAMES = {"s": "http://www.w3.org/2000/svg"}


def one_area(region: Cloth) -> Sheet:
    return Sheet(200, 200, (Area(region, SOLID),), "t", "a")


def read_paths(svg: str) -> list[Any]:
    """Return the paths as svgelements sees them, in millimetres."""
    from svgelements import SVG, Path

    document = SVG.parse(StringIO(svg), ppi=25.4)
    return [element for element in document.elements() if isinstance(element, Path)]


def test_the_document_is_as_wide_in_millimetres_as_its_box() -> None:
    root = ElementTree.fromstring(sheet_svg(every_mark()))
    assert root.get("width") == "120mm"
    assert root.get("height") == "100mm"
    assert root.get("viewBox") == "0 0 120 100"


def test_title_and_description_come_through_escaping() -> None:
    root = ElementTree.fromstring(sheet_svg(every_mark()))
    assert root.findtext("s:title", namespaces=NAMES) == "A & B <c>"
    assert root.findtext("s:desc", namespaces=NAMES) == 'A ring, "lines" & leaves.'


def test_text_comes_through_escaping_and_control_characters_are_replaced() -> None:
    root = ElementTree.fromstring(sheet_svg(every_mark("a < b & \"c\" 'd' \x00\x1b")))
    [text] = root.iterfind(".//s:text", NAMES)
    assert text.text == "a < b & \"c\" 'd' ��"


@pytest.mark.parametrize("bad", ["red", "#fff", 'url("x")', "#22304a;x", "#22304a\n", ""])
def test_only_plain_colours_are_written(bad: str) -> None:
    with pytest.raises(AssertionError, match="colour"):
        colour(bad)


def test_arcs_stay_arcs_and_their_box_is_exact() -> None:
    from svgelements import Arc as ReadArc

    [path] = read_paths(sheet_svg(one_area(disc(88.9, 100 + 100j))))
    arcs = [segment for segment in path if isinstance(segment, ReadArc)]
    assert len(arcs) == 8
    assert [arc.rx for arc in arcs] == pytest.approx([88.9] * 8, abs=1e-4)
    assert path.bbox() == pytest.approx((11.1, 11.1, 188.9, 188.9), abs=2e-4)


def test_a_spread_circle_keeps_its_arcs_and_flats() -> None:
    [path] = read_paths(sheet_svg(one_area(Cloth((spread_circle(50, 6.35),)))))
    assert path.bbox() == pytest.approx((-56.35, -56.35, 56.35, 56.35), abs=1e-4)


@pytest.mark.parametrize("radius", [0.5, 31.75, 88.9, 177.8, 700.0])
def test_one_cubic_for_a_piece_of_an_arc_is_within_a_thousandth_of_a_millimetre(radius: float) -> None:
    arc = Arc(0j, radius, 0.0, math.tau)
    part = math.tau / arc_piece_count(arc)
    handle = 4 / 3 * math.tan(part / 4)
    ends = (1 + 0j, complex(math.cos(part), math.sin(part)))
    controls = (ends[0] * (1 + 1j * handle), ends[1] * (1 - 1j * handle))

    def on_cubic(t: float) -> complex:
        u = 1 - t
        inner = 3 * u * u * t * controls[0] + 3 * u * t * t * controls[1]
        return radius * (u**3 * ends[0] + inner + t**3 * ends[1])

    assert max(abs(abs(on_cubic(k / 200)) - radius) for k in range(201)) <= 1e-3
    assert part <= math.pi / 4 + 1e-9


def test_clockwise_arcs_and_holes_run_the_other_way() -> None:
    region = Cloth((circle(2, 5 + 5j), circle(1, 5 + 5j).reversed()))
    svg = sheet_svg(one_area(region))
    assert "A2 2 0 0 1" in svg
    assert "A1 1 0 0 0" in svg


def test_numbers_are_short() -> None:
    found = [number(v) for v in (1.0, -0.00001, 0.12344, 25.4, 1e-9, 100.0, -2.50)]
    assert found == ["1", "0", "0.1234", "25.4", "0", "100", "-2.5"]


def test_symbols_are_written_once_and_used() -> None:
    svg = sheet_svg(every_mark(), ids="q-")
    assert svg.count('<g id="q-leaf">') == 1
    assert svg.count('<use href="#q-leaf"') == 2
    assert 'transform="translate(100 20) rotate(90)"' in svg
    assert 'transform="matrix(1 0 0 -1 100 50)"' in svg


def test_a_sheet_of_text_alone_has_no_definitions() -> None:
    svg = sheet_svg(Sheet(10, 10, (Text(1 + 1j, "a"),), "t", "a"))
    assert "<defs>" not in svg


def test_the_filling_rule_is_stated() -> None:
    assert 'fill-rule="nonzero"' in sheet_svg(every_mark())


def test_an_empty_region_leaves_no_mark() -> None:
    assert "<path" not in sheet_svg(Sheet(10, 10, (Area(Cloth(()), Ink("#000000")),), "t", "a"))


def test_equal_sheets_give_equal_text() -> None:
    assert sheet_svg(every_mark()) == sheet_svg(every_mark())
