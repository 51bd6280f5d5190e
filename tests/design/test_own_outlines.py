"""Outlines of the designer's own: read, printed whole, and carried through every stage like any other."""

from __future__ import annotations

import math
import re
from fractions import Fraction
from pathlib import Path as File

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    Curve,
    Design,
    DrawnOutline,
    Severity,
    format_design,
    read_design,
    wanted_outline,
)
from quarterturn.design.formatting import path_lines
from quarterturn.design.own_outlines import caret
from quarterturn.geometry import (
    OUTLINES,
    Path,
    fitted,
    outline_path,
    path_bounds,
    same_outline,
    write_path_data,
)
from quarterturn.measure import Units, inches, mm
from quarterturn.pipeline import make_pattern
from quarterturn.proof import ACCEPTED, check_pattern, prove
from tests.design.broken_cases import GOOD
from tests.samples import HEARTS, ROUNDS, design_of
from tests.strategies.outlines import outlines

ROOT = File(__file__).parents[2]
SHAPES = {
    "crescent": "M2 0 A2 2 0 1 0 4 2 A1.6 1.6 0 0 1 2 0z",
    "tilted oval": "M0 0 a1 1.2 20 0 1 2 0 a1 1.2 20 0 1 -2 0z",
    "circle": "M0 0 a1 1 0 0 1 2 0 a1 1 0 0 1 -2 0z",
    "tee": "M0 0 H4 V2 H3 V4 H1 V2 H0 z",
    "comb": "M0 0 H4 V4 H3.5 V1 H3 V4 H2.6 V1 H2.2 V4 H1.8 V1 H1.4 V4 H0 z",
    "wave": "M0 0 C6 0 0 4 4 4 C2 6 -2 3 0 0z",
    "star": "M2 0 L2.5 1.4 L4 1.5 L2.8 2.4 L3.2 4 L2 3 L.8 4 L1.2 2.4 L0 1.5 L1.5 1.4z",
}


def with_fox(path: str, shape: str = "", more: str = "", curve: str = "sewn true") -> str:
    """Return a design of one recipe that fuses an outline, with a map of one whole master."""
    fox = f"[outlines.fox]\npath = '''\n{path}\n'''\n{more}\n"
    head, tail = HEARTS[: HEARTS.index("[recipes.heart]")], HEARTS[HEARTS.index("[[borders]]") :]
    recipe = f"""
[recipes.head]
kind = "shape cut both ways"
finished = '2"'
shape = {{ outline = "fox"{shape} }}
curve = "{curve}"

[colourways.a]
recipe = "head"
ground = "A"
shape = "B"

[setting]
kind = "straight"
map = '''
a0 a1
a2 a3
'''

"""
    return with_whole_master(head + fox + recipe + tail)


def with_whole_master(text: str) -> str:
    """Lay a whole master in the map, whatever kinds of quarters it has."""
    (master,) = draft_blocks(design_of(text)).masters
    laid = {}
    for part in master.parts:
        unit = master.units[part.unit]
        back = part.motion.inverse()
        middle = back(complex(1, 1) * float(unit.side) / 2)
        turn = round(math.atan2(back.factor.imag, back.factor.real) / (math.pi / 2)) % 4
        laid[middle.imag > 0, middle.real > 0] = f"a-{unit.quarter}{turn}" if unit.quarter else f"a{turn}"
    cells = [laid[below, right] for below in (False, True) for right in (False, True)]
    return text.replace("a0 a1\na2 a3", "{} {}\n{} {}".format(*cells))


@pytest.mark.parametrize("curve", [curve.value for curve in Curve])
@pytest.mark.parametrize("name", SHAPES)
def test_a_drawn_shape_goes_through_every_stage_and_the_steps_make_its_picture(name: str, curve: str) -> None:
    pattern = make_pattern(design_of(with_fox(SHAPES[name], ", width = '3 3/4\"', turn = 1", curve=curve)))
    proof = prove(pattern)
    assert proof.findings == ()
    assert proof.share < ACCEPTED
    assert proof.rehearsal.steps_done == len(pattern.steps.steps)
    stops = [finding.code for finding in check_pattern(pattern) if finding.severity is Severity.STOPS]
    assert set(stops) <= {"ring-no-hollow"}


def test_a_circle_that_was_drawn_makes_the_units_of_the_program_s_own() -> None:
    drawn = design_of(with_fox(SHAPES["circle"], ", width = 3"))
    own = design_of(ROUNDS.replace("flow = true", "diameter = 3").replace('"as drawn"', '"sewn true"'))
    (first,), (second,) = draft_blocks(drawn).masters, draft_blocks(own).masters
    assert same_outline(first.shape.traced, second.shape.traced)
    assert len(first.units) == len(second.units) == 1


@pytest.mark.parametrize("name", [name for name in OUTLINES if name != "circle"])
def test_an_outline_of_the_program_written_as_path_data_is_the_same_shape(name: str) -> None:
    data = write_path_data(outline_path(name, 3))
    design = design_of(with_fox(data, ", width = '2 1/2\"', turn = 3"))
    size = design.recipes[0].size
    assert isinstance(size, DrawnOutline)
    own = DrawnOutline(name, inches(2, 1, 2), 3, 8)
    for curve in Curve:
        drawn = wanted_outline(size, curve, design.making.seam)
        assert same_outline(drawn, wanted_outline(own, curve, design.making.seam))


def size_of(text: str) -> DrawnOutline:
    size = design_of(text).recipes[0].size
    assert isinstance(size, DrawnOutline)
    return size


def in_good(table: str, units: Units = Units.INCH) -> str:
    """Return the good file with an outline in it that no recipe uses."""
    return GOOD.replace('"inch"', f'"{units.value}"').replace(
        "[recipes.round]", f"[outlines.fox]\n{table}\n\n[recipes.round]"
    )


def test_the_numbers_of_a_path_are_inches_or_millimetres_as_the_file_has_them() -> None:
    table = "path = 'M 0 0 h 85.5 v 80 h -85.5 z'"
    assert design_of(in_good(table)).outlines[0].width == Fraction("85.5")
    assert design_of(in_good(table, Units.METRIC)).outlines[0].width == mm("85.5")
    assert size_of(with_fox("M 0 0 h 3.5 v 3 h -3.5 z")).width == inches(3, 1, 2)


def test_a_stated_width_holds_whatever_the_numbers_say() -> None:
    square = "M 0 0 h 700 v 600 h -700 z"
    assert size_of(with_fox(square, more="width = '3 1/4\"'")).width == inches(3, 1, 4)
    assert size_of(with_fox(square, ", width = 2", "width = '3 1/4\"'")).width == 2


def test_an_outline_drawn_the_other_way_round_or_elsewhere_is_the_same() -> None:
    first = size_of(with_fox("M 0 0 H 3 V 2 L 1 3 Z")).own
    second = size_of(with_fox("M 10 10 L 11 13 L 13 12 V 10 Z")).own
    assert first is not None
    assert second is not None
    assert same_outline(first, second)
    assert path_bounds(first).width == pytest.approx(1)


def again(design: Design) -> Design:
    reading = read_design(format_design(design))
    assert reading.design is not None, reading.findings
    return reading.design


@pytest.mark.parametrize("name", SHAPES)
def test_a_design_printed_whole_reads_back_as_itself(name: str) -> None:
    design = design_of(with_fox(SHAPES[name], more="width = '3.3 in'"))
    assert again(design) == design


@given(outlines(), st.sampled_from(Units))
@settings(max_examples=40)
def test_any_outline_reads_back_as_it_was_printed(path: Path, units: Units) -> None:
    data = write_path_data(fitted(path))
    reading = read_design(in_good(f'path = """\n{path_lines(data)}\n"""\nwidth = "80 mm"', units))
    if reading.design is None:
        assert {finding.code for finding in reading.findings} == {"outline-unsound"}
    else:
        assert again(reading.design) == reading.design
        assert same_outline(reading.design.outlines[0].path, fitted(path))


@given(st.text("MmLlHhVvCcSsQqTtAaZz0123456789.-+eE, \n", max_size=60))
@settings(max_examples=200)
def test_path_data_of_any_kind_never_raises(data: str) -> None:
    reading = read_design(in_good(f"path = '''\n{data}\n'''"))
    assert (reading.design is None) == bool(reading.findings)


def test_long_path_data_is_broken_before_commands_and_stays_the_same() -> None:
    data = " ".join(("M 0 0 " + "L 1.5 2.5 " * 40 + "C " + "1 2 " * 60 + "Z").split())
    lines = path_lines(data)
    assert " ".join(lines.split()) == data
    assert max(map(len, lines.splitlines())) <= 100
    assert path_lines("l1-1" * 80) == "l1-1" * 80


def test_a_fault_is_shown_with_a_caret_below_its_place() -> None:
    assert caret("M 1 x", 4) == "M 1 x\n    ^"
    assert caret("1 " * 100, 100) == f"…{'1 ' * 24}…\n{' ' * 25}^"
    (finding,) = read_design(in_good("path = 'M 0 0 L 1 x Z'")).findings
    assert finding.place.detail == "M 0 0 L 1 x Z\n          ^"
    assert finding.sentence == "This is not path data: a number is missing."


def test_the_outline_in_the_page_on_the_file_format_is_sound() -> None:
    page = (ROOT / "docs" / "file-format.md").read_text("utf-8")
    (table,) = re.findall(r"```\n\[outlines\.fox\]\n(.*?)```", page, re.DOTALL)
    assert design_of(in_good(table)).outlines[0].width == inches(5, 1, 4)


SEVERAL = (
    HEARTS[: HEARTS.index("[recipes.heart]")]
    + """
[outlines.fox]
path = "{path}"

[recipes.den]
kind = "shapes cut"
start = '9 1/2"'
cuts = "none"
[[recipes.den.shapes]]
name = "fox"
outline = "fox"
{size}at = ['1"', '0"']
turn = 30

[colourways.a]
recipe = "den"
ground = "A"
shapes = {{ fox = "B" }}

[setting]
kind = "straight"
map = "a0"

"""
    + HEARTS[HEARTS.index("[[borders]]") :]
)


@pytest.mark.parametrize(("size", "width"), [("", 4), ("width = '5\"'\n", 5)])
def test_one_shape_of_several_may_have_an_outline_of_ones_own(size: str, width: int) -> None:
    """Without a width it has its true one."""
    design = design_of(SEVERAL.format(path=SHAPES["wave"], size=size))
    (shape,) = design.recipes[0].shapes
    assert isinstance(shape.size, DrawnOutline)
    assert shape.size.own == design.outlines[0].path
    drawn = path_bounds(fitted(design.outlines[0].path))
    assert shape.size.width == pytest.approx(width if size else float(design.outlines[0].width))
    (fused,) = draft_blocks(design).masters[0].shapes
    assert fused.traced.area() == pytest.approx(
        float(shape.size.width) ** 2 * fitted(design.outlines[0].path).area() / drawn.width**2
    )
    assert read_design(format_design(design)).design == design


def test_a_shape_of_several_with_an_outline_at_fault_tells_nothing_more() -> None:
    reading = read_design(SEVERAL.format(path="M0 0 L1 1", size=""))
    assert [finding.place.key for finding in reading.findings] == ["outlines.fox.path"]
    unknown = read_design(
        SEVERAL.format(path=SHAPES["wave"], size="").replace('outline = "fox"', 'outline = "fx"')
    )
    assert [(f.code, f.place.key) for f in unknown.findings] == [
        ("unknown-outline", "recipes.den.shapes.0.outline")
    ]


def test_an_outline_cannot_be_called_ring() -> None:
    text = SEVERAL.format(path=SHAPES["wave"], size="").replace("outlines.fox", "outlines.ring")
    assert "outline-taken" in {finding.code for finding in read_design(text).findings}
