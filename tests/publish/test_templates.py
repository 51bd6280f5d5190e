"""True-size templates, measured on the vector coordinates of their PDF."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from dataclasses import replace
from functools import cache

import pytest

from quarterturn.blocks import FusedShape, draft_blocks
from quarterturn.design import Colourway, Paper
from quarterturn.geometry import Cubic, Line, Path, circle, congruence, offset_path, path_bounds
from quarterturn.publish import Area, Sheet, Stroke, Text, sheets_pdf, template_of, template_sheets
from quarterturn.publish.lettering import text_width
from quarterturn.publish.paper import BLEED, MARGIN, PAPER_MM, SMALLEST
from quarterturn.publish.shape_marks import template_marks, ticks, traced_extent
from tests.publish.reading import Page, Stroked, read_pdf
from tests.publish.stages import moons
from tests.samples import HEARTS, design_of

SMALL = ('1 1/2"', "{ diameter = '2.5\"' }", "as drawn")
SEVEN = ('4 1/4"', "{ diameter = '7\"' }", "as drawn")
SPREAD = ('3"', "{ flow = true }", "sewn true")
LARGE = ('8"', "{ diameter = '14\"' }", "as drawn")
TINY = ('3/4"', "{ diameter = '1\"' }", "as drawn")

SHAPES = {"small": SMALL, "seven": SEVEN, "spread": SPREAD, "large": LARGE, "tiny": TINY}
PAPERS = tuple(Paper)


@cache
def sheets(name: str, paper: Paper) -> tuple[Sheet, ...]:
    quilt = moons(*SHAPES[name])
    return template_sheets(quilt.design, quilt.blocks, quilt.bill, paper)


@cache
def pages(name: str, paper: Paper) -> list[Page]:
    return read_pdf(sheets_pdf(sheets(name, paper), "templates"))


def every_sheet() -> Iterator[Sheet]:
    return (sheet for name, paper in itertools.product(SHAPES, PAPERS) for sheet in sheets(name, paper))


def texts(sheet: Sheet) -> list[Text]:
    return [mark for mark in sheet.marks if isinstance(mark, Text)]


def words(sheet: Sheet) -> str:
    return " ".join(text.text for text in texts(sheet))


def solid_curves(page: Page) -> list[Stroked]:
    """Return the undashed lines that have curves: the traced line, and nothing else but the key's (0.2 mm)."""
    return [p for p in page.paths if not p.dashed and len(p.points) > 6 and p.width > 0.22]


every_page = pytest.mark.parametrize(("name", "paper"), list(itertools.product(SHAPES, PAPERS)))
every_paper = pytest.mark.parametrize("paper", PAPERS)


@every_page
def test_pages_have_the_size_of_the_paper(name: str, paper: Paper) -> None:
    for page in pages(name, paper):
        assert (page.width, page.height) == pytest.approx(PAPER_MM[paper], abs=1e-3)


@every_page
def test_every_page_has_an_inch_square_a_metric_square_and_two_rulers(name: str, paper: Paper) -> None:
    for page in pages(name, paper):
        squares = [p.size for p in page.paths if p.closed and len(p.points) == 5]
        for side in (25.4, 20.0):
            assert [s for s in squares if s == pytest.approx((side, side), abs=0.01)]
        lengths = [
            p.size[0] for p in page.paths if len(p.points) == 2 and p.size[1] < 0.001 and p.width < 0.22
        ]
        for length in (100.0, 101.6):
            assert [x for x in lengths if x == pytest.approx(length, abs=0.01)]


@every_page
def test_every_page_says_how_to_print_it_and_which_page_it_is(name: str, paper: Paper) -> None:
    found = sheets(name, paper)
    for number, sheet in enumerate(found, 1):
        assert "Print at 100 % (actual size)" in words(sheet)
        assert "before cutting" in words(sheet)
        assert f"page {number} of {len(found)}" in words(sheet)
        assert "Pocket of Moons" in words(sheet)


@every_paper
@pytest.mark.parametrize(("name", "inches"), [("tiny", 1.0), ("small", 2.5), ("spread", 3.5), ("seven", 7.0)])
def test_a_shape_has_its_true_size(name: str, inches: float, paper: Paper) -> None:
    [traced] = solid_curves(pages(name, paper)[0])
    assert traced.size == pytest.approx((inches * 25.4, inches * 25.4), abs=0.05)


@every_paper
def test_the_web_ring_lies_a_quarter_inch_out_and_in(paper: Paper) -> None:
    page = pages("seven", paper)[0]
    rings = sorted(p.size[0] for p in page.paths if p.dashed and len(p.points) > 6)
    assert rings == pytest.approx([6.5 * 25.4, 7.5 * 25.4], abs=0.05)


def on_curve(curve: Stroked) -> Iterator[complex]:
    """Return points along a run of cubics."""
    ends, ones, twos = curve.points[0::3], curve.points[1::3], curve.points[2::3]
    for start, one, two, end in zip(ends, ones, twos, ends[1:], strict=False):
        for t in (k / 64 for k in range(65)):
            u = 1 - t
            yield u**3 * start + 3 * u * u * t * one + 3 * u * t * t * two + t**3 * end


def is_diamond(path: Stroked) -> bool:
    return path.closed and path.size == pytest.approx((6.4, 6.4), abs=0.01)


def edge_diamonds(page: Page, side: str) -> list[complex]:
    """Return the middles of the two diamonds nearest a side of the page."""
    middles = [complex(p.box[0] + p.box[2], p.box[1] + p.box[3]) / 2 for p in page.paths if is_diamond(p)]
    keys = {
        "right": lambda m: -m.real,
        "left": lambda m: m.real,
        "bottom": lambda m: -m.imag,
        "top": lambda m: m.imag,
    }
    return sorted(sorted(middles, key=keys[side])[:2], key=lambda m: (round(m.imag, 2), m.real))


def laid_on(page: Page, side: str, other: Page, facing: str) -> complex:
    """Return by how much to move another page so that its diamonds lie on those of this one."""
    moves = [a - b for a, b in zip(edge_diamonds(page, side), edge_diamonds(other, facing), strict=True)]
    assert moves[0] == pytest.approx(moves[1], abs=0.005)
    return moves[0]


@every_paper
def test_tiles_joined_by_their_diamonds_make_the_whole_shape(paper: Paper) -> None:
    first, right, below, across = pages("large", paper)
    moves = [0j, laid_on(first, "right", right, "left"), laid_on(first, "bottom", below, "top")]
    moves.append(moves[1] + laid_on(right, "bottom", across, "top"))
    assert moves[3] == pytest.approx(moves[2] + laid_on(below, "right", across, "left"), abs=0.01)
    joined = zip((first, right, below, across), moves, strict=True)
    points = [p + move for page, move in joined for curve in solid_curves(page) for p in on_curve(curve)]
    left, right_end = min(p.real for p in points), max(p.real for p in points)
    top, bottom = min(p.imag for p in points), max(p.imag for p in points)
    assert (right_end - left, bottom - top) == pytest.approx((355.6, 355.6), abs=0.05)
    middle = complex(left + right_end, top + bottom) / 2
    assert [2 * abs(p - middle) for p in points] == pytest.approx([355.6] * len(points), abs=0.05)
    angles = sorted(math.degrees(math.atan2((p - middle).imag, (p - middle).real)) % 360 for p in points)
    assert max(b - a for a, b in zip(angles, [*angles[1:], angles[0] + 360], strict=True)) < 1


@every_paper
def test_tiles_say_which_part_they_are_and_carry_a_key(paper: Paper) -> None:
    for number, sheet in enumerate(sheets("large", paper), 1):
        assert f"part {number} of 4" in words(sheet)
        assert "this page is grey" in words(sheet)
        assert "diamonds with equal numbers meet" in words(sheet)


@pytest.mark.parametrize("name", SHAPES)
def test_a_template_says_all_that_a_sewer_must_know(name: str) -> None:
    shown = " ".join(words(sheet) for sheet in sheets(name, Paper.LETTER))
    for wanted in (
        "template moon",
        "Fuse 1 of fabric B (ink) for a, 1 of fabric A (oyster) for b.",
        "Same both ways: no need to mirror.",
        "No seam allowance is added to fused shapes.",
        "grain",
        "cut 1",
        "cut 2",
        "web: cut here",
        "hollow out",
    ):
        assert wanted in shown


def test_a_spread_shape_says_that_it_is_spread() -> None:
    assert 'Circle sewn true, 3½" across: spread by ½" for the seams.' in words(sheets("spread", Paper.A4)[0])


@every_paper
def test_the_trimmed_unit_is_drawn_true_where_it_fits(paper: Paper) -> None:
    page = pages("seven", paper)[-1]
    squares = [p for p in page.paths if p.closed and len(p.points) == 5]
    sizes = sorted(p.size[0] for p in squares)
    assert sizes[-2:] == pytest.approx([4.25 * 25.4, 4.75 * 25.4], abs=0.01)
    said = words(sheets("seven", paper)[-1])
    assert "unit check, units a and b" in said
    assert 'Units a and b, trimmed to 4¾"' in said


def test_a_unit_that_fits_no_page_is_left_out() -> None:
    assert not [s for s in sheets("large", Paper.LETTER) if "unit check" in s.title]


def text_box(text: Text) -> tuple[complex, complex]:
    """Return the corners of the upright box round a text."""
    width = text_width(text.text, text.size, bold=text.bold)
    left = {"start": 0.0, "middle": -width / 2, "end": -width}[text.anchor]
    turned = complex(math.cos(math.radians(text.turn)), math.sin(math.radians(text.turn)))
    rows = (-0.7 * text.size, 0.2 * text.size)
    corners = [text.at + turned * complex(x, y) for x in (left, left + width) for y in rows]
    across, down = [c.real for c in corners], [c.imag for c in corners]
    return complex(min(across), min(down)), complex(max(across), max(down))


def test_all_lettering_can_be_read_and_stays_inside_the_margins() -> None:
    for sheet in every_sheet():
        for text in texts(sheet):
            low, high = text_box(text)
            assert text.size >= SMALLEST
            assert low.real >= MARGIN - 0.01, text
            assert high.real <= sheet.width - MARGIN + 0.01, text
            assert low.imag >= MARGIN - 0.01, text
            assert high.imag <= sheet.height - MARGIN + 0.01, text


def test_no_lettering_lies_on_other_lettering() -> None:
    for sheet in every_sheet():
        for one, other in itertools.combinations(texts(sheet), 2):
            if one.turn or other.turn:
                continue
            (low, high), (low2, high2) = text_box(one), text_box(other)
            apart = (
                low.real >= high2.real
                or low2.real >= high.real
                or low.imag >= high2.imag
                or low2.imag >= high.imag
            )
            assert apart, (one, other)


@every_page
def test_no_line_comes_nearer_to_the_edge_of_the_paper_than_printers_reach(name: str, paper: Paper) -> None:
    for page in pages(name, paper):
        for path in page.paths:
            left, top, right, bottom = path.box
            assert min(left, top) >= BLEED - 0.01
            assert right <= page.width - BLEED + 0.01
            assert bottom <= page.height - BLEED + 0.01


def test_many_fabrics_leave_room_for_the_shape() -> None:
    """The counts of two dozen colourways with long names are cut short, and the head says where to look."""
    quilt = moons(*SEVEN)
    letters = [chr(97 + k) for k in range(24)]
    cloth = quilt.design.fabrics[0]
    fabrics = tuple(replace(cloth, letter=x.upper(), name=f"a very long name {x}") for x in letters)
    codes = tuple(Colourway(x, "moon", "A", (("shape", x.upper()),)) for x in letters)
    title = "A title that goes on and on " * 5
    design = replace(quilt.design, fabrics=fabrics, colourways=codes, title=title)
    counts = tuple(replace(quilt.bill.masters[0], code=code.code) for code in codes)
    found = template_sheets(design, quilt.blocks, replace(quilt.bill, masters=counts), Paper.LETTER)
    assert "and more: see the list of shapes in the booklet" in words(found[0])
    assert max(text_box(text)[1].real for text in texts(found[0])) <= 215.9 - MARGIN
    [shown] = [text for text in texts(found[0]) if text.bold and text.at.imag < 15]
    assert shown.text.endswith("…")


def test_a_shape_whose_sides_differ_is_mirrored_for_tracing() -> None:
    comma = Path((Cubic(0j, 3 + 0j, 2 + 2j, 1 + 1j), Line(1 + 1j, 2j), Line(2j, 0j)))
    shape = FusedShape(
        "comma", comma, comma, offset_path(comma, 0.25), offset_path(comma, -0.1), 1.0, 2.0, 2.0
    )
    template = template_of(shape, ())
    assert template.mirrored
    assert template.shape.traced.area() == pytest.approx(comma.area())
    assert template.shape.traced.segments != comma.segments
    assert abs(path_bounds(template.shape.traced).centre) < 1e-9
    assert congruence(comma, template.shape.traced, mirrored=True)
    assert not congruence(comma, template.shape.traced)


def test_marks_across_the_outline_show_where_to_fold() -> None:
    shape = draft_blocks(design_of(HEARTS)).masters[0].shape
    template = template_of(shape, ())
    marks = ticks(template.shape)
    assert len(marks) == 4
    for mark in marks:
        middle = (mark.start + mark.end) / 2
        on_axis = min(abs(middle.real), abs(middle.imag))
        assert on_axis < 1e-9
        assert abs(middle) <= max(traced_extent(template)) / 2 + 1e-6
    assert "top" in {mark.text for mark in template_marks(template, "") if isinstance(mark, Text)}


def test_a_circle_is_not_mirrored() -> None:
    whole = circle(3.5)
    shape = FusedShape(
        "moon", whole, whole, offset_path(whole, 0.25), offset_path(whole, -0.25), 1.0, 7.0, 7.0
    )
    assert not template_of(shape, ()).mirrored


def test_equal_templates_give_equal_bytes() -> None:
    quilt = moons(*LARGE)
    again = template_sheets(quilt.design, quilt.blocks, quilt.bill, Paper.A4)
    assert sheets_pdf(again, "t") == sheets_pdf(sheets("large", Paper.A4), "t")


def test_marks_are_areas_strokes_and_texts_only() -> None:
    assert all(isinstance(m, Area | Stroke | Text) for sheet in every_sheet() for m in sheet.marks)
