"""Drawings: every kind of shape at its true size, and hostile files harmless."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design.drawings import Drawing, DrawingError, read_drawing
from quarterturn.design.limits import DEEPEST_DRAWING, LARGEST_DRAWING, MOST_ELEMENTS
from quarterturn.geometry import Arc, Path, merged, path_bounds

HEAD = '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">'
MM = 1 / 25.4


def svg(inside: str, head: str = HEAD) -> str:
    return f"{head}{inside}</svg>"


def only(inside: str, head: str = HEAD) -> Path:
    drawing = read_drawing(svg(inside, head))
    assert drawing.refused == ()
    (found,) = drawing.outlines
    return found.path


def size(path: Path) -> tuple[float, float, float]:
    """Width, height and area in millimetres."""
    box = path_bounds(path)
    return box.width / MM, box.height / MM, abs(path.area()) / MM**2


@pytest.mark.parametrize(
    ("shape", "width", "height", "area"),
    [
        ('<path d="M 0 0 h 20 v 10 z"/>', 20, 10, 100),
        ('<path d="M 0 0 h 20 v 10 L 0 0"/>', 20, 10, 100),
        ('<rect x="3" y="4" width="20" height="10"/>', 20, 10, 200),
        ('<rect width="20" height="10" rx="3"/>', 20, 10, 200 - (4 - math.pi) * 9),
        ('<rect width="20" height="10" rx="40" ry="2"/>', 20, 10, 200 - (4 - math.pi) * 20),
        ('<rect width="20mm" height="10px"/>', 20 * 96 / 25.4, 10, 200 * 96 / 25.4),
        ('<circle cx="9" cy="9" r="10"/>', 20, 20, math.pi * 100),
        ('<ellipse cx="9" cy="9" rx="10" ry="5"/>', 20, 10, math.pi * 50),
        ('<ellipse rx="10"/>', 20, 20, math.pi * 100),
        ('<polygon points="0,0 20,0 20,10"/>', 20, 10, 100),
        ('<g transform="scale(2)"><rect width="20" height="10"/></g>', 40, 20, 800),
        ('<g transform="rotate(90)"><rect width="20" height="10"/></g>', 10, 20, 200),
        ('<g transform="translate(5)"><a><rect width="20" height="10" transform="skewX(45)"/></a></g>', 30, 10, 200),
        ('<circle r="10" transform="scale(1 .5)"/>', 20, 10, math.pi * 50),
    ],
)  # fmt: skip
def test_a_shape_has_its_true_size(shape: str, width: float, height: float, area: float) -> None:
    assert size(only(shape)) == pytest.approx((width, height, area), rel=1e-6)


def test_a_circle_stays_one_arc_also_when_it_is_turned_and_mirrored() -> None:
    (arc,) = merged(only('<circle r="25.4" transform="rotate(20) scale(-1 1)"/>')).segments
    assert isinstance(arc, Arc)
    assert arc.radius == pytest.approx(1)


def test_a_file_without_a_name_space_or_a_size_is_read_and_tells_so() -> None:
    drawing = read_drawing('<svg><rect id="a" width="96" height="48"/></svg>')
    assert not drawing.states_size
    assert path_bounds(drawing.outlines[0].path).width == pytest.approx(1)
    assert read_drawing(svg('<rect width="9" height="9"/>')).states_size


def test_outlines_come_with_id_element_and_line() -> None:
    drawing = read_drawing(
        svg('\n<rect id="a" width="9" height="9"/>\n<g>\n<circle id="b" r="9"/></g>\n<rect/>')
    )
    assert [(f.name, f.identity, f.line) for f in drawing.outlines] == [("rect", "a", 2), ("circle", "b", 4)]
    assert [(r.name, r.line, r.reason) for r in drawing.refused] == [("rect", 5, "draws nothing")]


def test_one_outline_is_taken_by_its_id() -> None:
    text = svg('<rect id="a" width="9" height="9"/><path id="b" d="no"/><use id="c"/>')
    assert [f.identity for f in read_drawing(text, "a").outlines] == ["a"]
    assert [r.identity for r in read_drawing(text, "b").refused] == ["b"]
    assert read_drawing(text, "d") == Drawing((), (), True)


@pytest.mark.parametrize(
    "hidden",
    [
        '<g display="none">{}</g>',
        '<g style="fill:red; display : none">{}</g>',
        '<g visibility="hidden">{}</g>',
        '<g style="visibility:collapse"><g>{}</g></g>',
        "<defs>{}</defs>",
        "<symbol>{}</symbol>",
        '<clipPath id="c">{}</clipPath>',
        "<mask>{}</mask>",
        "<pattern>{}</pattern>",
        "<marker>{}</marker>",
        "<metadata>{}</metadata>",
        "<script>{}</script>",
        "<style>{}</style>",
        '<x:thing xmlns:x="urn:other">{}</x:thing>',
    ],
)
def test_what_is_not_shown_is_not_read(hidden: str) -> None:
    drawing = read_drawing(svg(hidden.format('<rect width="9" height="9"/>')))
    assert drawing == Drawing((), (), True)


def test_what_is_visible_inside_something_hidden_is_read() -> None:
    inner = '<rect visibility="visible" width="9" height="9"/>'
    assert size(only(f'<g visibility="hidden">{inner}<rect width="5" height="5"/></g>'))[0] == pytest.approx(
        9
    )


@pytest.mark.parametrize(
    "element",
    ["use", "image", "text", "line", "polyline", "foreignObject", "switch", "svg"],
)
def test_what_is_passed_over_is_told_and_nothing_inside_it_is_read(element: str) -> None:
    inside = f'\n<{element} href="https://drawings.example/a.svg"><rect width="9" height="9"/></{element}>'
    drawing = read_drawing(svg(inside))
    assert drawing.outlines == ()
    assert [(r.name, r.line) for r in drawing.refused] == [(element, 2)]
    assert "passed over" in drawing.refused[0].reason


@pytest.mark.parametrize(
    ("shape", "reason"),
    [
        ('<path d="M0 0 L20 0 L20 20"/>', "is open: its ends lie 141.4% of its width apart; close it"),
        ('<path d="M0 0 L20 20 L20 0 L0 20 z"/>', "crosses or touches itself 50% of its width from the left and"),
        ('<path d="M0 0 H20 V20 H10 V0 H5 V20 H0 z"/>', "crosses or touches itself"),
        ('<path d="M0 0 h20 v20z m5 5 h5 v5z"/>', "has 2 parts; an outline is one line without holes"),
        ('<path d="M0 0 h20 z"/>', "encloses nothing"),
        ('<path d="M0 0 L20 10 L40 20 z"/>', "encloses nothing"),
        ('<path d="M0 0 C 30 0 -30 0 0 0z"/>', "encloses nothing"),
        ('<path d="M0 0 h90 v1 h-90z"/>', "is over 50 times as long as wide"),
        ('<path d="M0 0 h.1 v.1z"/>', 'is 0.003937" wide; an outline is from 0.125" to 124" wide'),
        ('<path d="M0 0 h5000000 v5000000z"/>', 'is 1.969e+05" wide; an outline is from'),
        ('<path d="M0 0 h20 q"/>', "has no sound path data: a number is missing (at character 11)"),
        ("<path/>", "draws nothing"),
        ('<path d="none"/>', "draws nothing"),
        ('<path d="M0 0h9v9z" transform="spin(3)"/>', "has the transform `spin(3)`, which cannot be read"),
        ('<g transform="scale(a)"><path d="M0 0h9v9z"/></g>', "has a transform that is no list of numbers"),
        ('<path d="M0 0h9v9z" transform="scale(0)"/>', "encloses nothing"),
        ('<path d="M0 0h9v9z" style="transform: rotate(5deg)"/>', "is moved by its style"),
        ('<path d="M0 0h9v9z" transform-origin="5 5"/>', "is turned about a place of its own"),
        ('<rect width="wide" height="9"/>', "has the width `wide`, which is no length"),
        ('<circle r="5%"/>', "has the r `5%`, which is no length"),
        ('<circle r="1e300"/>', "has no sound path data: no number may be beyond 10,000,000"),
        ('<circle r="nan"/>', "has the r `nan`"),
        ('<polygon points="0 0 9 9 0"/>', "has 5 numbers in its points, and one of them is alone"),
        ('<polygon points="0,0 9;9"/>', "has a points that is no list of numbers"),
        (f'<path d="M0 0 {"h1 v1 " * 300} V0z"/>', "has 602 segments; 500 are the most"),
        (f'<path d="{"M0 0 h20 v20 z " * 9000}"/>', "has 135,000 characters of path data; 100,000 are the most"),
    ],
)  # fmt: skip
def test_what_cannot_be_cut_out_of_cloth_is_refused_with_the_reason(shape: str, reason: str) -> None:
    drawing = read_drawing(svg(f"\n{shape}"))
    assert drawing.outlines == ()
    (refused,) = drawing.refused
    assert refused.reason.startswith(reason)
    assert refused.line == 2


def test_a_fault_in_path_data_is_shown_with_a_caret() -> None:
    (refused,) = read_drawing(svg('<path d="M0 0 L10 x"/>')).refused
    assert refused.detail == "M0 0 L10 x\n         ^"


LAUGHS = "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10}">' for n in range(1, 10))


@pytest.mark.parametrize(
    ("content", "reason"),
    [
        (f'<!DOCTYPE svg [<!ENTITY l0 "ha">{LAUGHS}]><svg>&l9;</svg>', "declares things of its own"),
        ('<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg>&x;</svg>', "declares things of its own"),
        ('<!DOCTYPE svg [<!ENTITY % x SYSTEM "http://a.example/x">%x;]><svg/>', "declares things of its own"),
        ("", "cannot be read as an SVG drawing: no element found"),
        ("<svg>", "cannot be read as an SVG drawing: no element found"),
        ("<svg></g>", "cannot be read as an SVG drawing: mismatched tag"),
        ("<html><svg/></html>", "is not SVG: its first element is not svg"),
        (b"\x89PNG\r\n\x1a\n", "cannot be read as an SVG drawing: not well-formed (invalid token)"),
        (b"<svg>\xff\xfe</svg>", "cannot be read as an SVG drawing: not well-formed (invalid token)"),
        (b'<?xml version="1.0" encoding="no-such"?><svg/>', "is"),
        ("<svg>\ud800</svg>", "is in an encoding that is not known here"),
        ("<svg>&undeclared;</svg>", "cannot be read as an SVG drawing: undefined entity"),
        ('<svg width="0"/>', "has the width `0`, on which nothing can be drawn"),
        ("<svg>" + "<g>" * 200, f"is nested over {DEEPEST_DRAWING} deep"),
        ("<svg>" + "<g/>" * (MOST_ELEMENTS + 1), f"has over {MOST_ELEMENTS:,} elements"),
        ("<svg>" + "<g>" * 400_000, f"is nested over {DEEPEST_DRAWING} deep"),
        ("<svg>" + " " * LARGEST_DRAWING + "</svg>", "is larger than 2,000,000 bytes"),
        ("<svg>" + '<rect width="9" height="9"/>' * 61 + "</svg>", "has 61 shapes, and 60 are the most"),
        ("<s:svg/>", "cannot be read as an SVG drawing: unbound prefix"),
    ],
)  # fmt: skip
def test_a_hostile_file_is_refused(content: str | bytes, reason: str) -> None:
    with pytest.raises(DrawingError) as refused:
        read_drawing(content)
    assert refused.value.reason.startswith(reason)


def test_a_document_type_that_only_names_the_standard_is_passed_over() -> None:
    kind = (
        '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
    )
    assert len(read_drawing(kind + svg('<rect width="9" height="9"/>')).outlines) == 1
    assert read_drawing(f"{kind}<svg>&elsewhere;</svg>").outlines == ()


def test_a_fault_in_the_xml_has_its_line_and_column() -> None:
    with pytest.raises(DrawingError) as refused:
        read_drawing("<svg>\n  <g>\n</svg>")
    assert (refused.value.line, refused.value.column) == (3, 3)


def read_or_refused(content: bytes | str) -> Drawing | DrawingError:
    try:
        return read_drawing(content)
    except DrawingError as error:
        return error


@given(st.binary(max_size=300))
@settings(max_examples=200)
def test_bytes_of_any_kind_are_a_drawing_or_refused(data: bytes) -> None:
    for content in (data, b"<svg>" + data + b"</svg>"):
        result = read_or_refused(content)
        assert isinstance(result, Drawing) or result.reason


SCRAPS = st.sampled_from(
    [
        "", "0", "-", "1e9", "1e-9", "1e999", "nan", "Z", "M", "a1 1 0 0 1 5 5", '"', "<", ">", "/>", "</g>", "&amp;",
        "&#0;", "rotate(", ")", "scale(0)", "%", "em", "C 1 2 3 4 5 6", "99999999999", "<g>", "é", "\x00", "  ", ",",
    ]
)  # fmt: skip
SAMPLE = svg(
    '<g transform="translate(10 5) rotate(30) skewX(5)" style="display:inline"><path id="p" d="M 10 10 L 50 25 Q 70 -5 '
    '90 10 A 40 50 10 0 1 50 95 S 0 60 10 10 Z"/></g><rect x="1" y="2" width="30" height="40" rx="5"/>'
    '<ellipse cx="1" cy="2" rx="9" ry="8"/><polygon points="0,0 9,9 0,9"/>'
)


@given(st.lists(st.tuples(st.integers(0, len(SAMPLE)), st.integers(0, 12), SCRAPS), min_size=1, max_size=4))
@settings(max_examples=300)
def test_a_drawing_with_places_scratched_out_is_a_drawing_or_refused(
    changes: list[tuple[int, int, str]],
) -> None:
    text = SAMPLE
    for at, cut, scrap in changes:
        text = text[:at] + scrap + text[at + cut :]
    result = read_or_refused(text)
    if isinstance(result, Drawing):
        assert all(found.path.is_closed() and abs(found.path.area()) > 0 for found in result.outlines)
        assert all(refused.reason for refused in result.refused)
    else:
        assert result.reason
