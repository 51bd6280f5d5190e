"""Printing a design whole: what is printed reads back as the same design."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quarterturn.design import (
    QUARTERS,
    Border,
    Cell,
    Curve,
    Design,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    PathsFlow,
    Pressing,
    Recipe,
    ShapeSize,
    format_design,
    one_shape_cut_both_ways,
    read_design,
    starter,
)
from quarterturn.design.text import write_length
from quarterturn.measure import Length, Units, inches, mm, parse_length
from tests.conftest import Golden
from tests.design.broken_cases import GOOD
from tests.design.recipe_cases import RIPPLES
from tests.samples import straight
from tests.strategies.recipes import SEAM, recipes

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))
PLAIN = st.text(st.characters(codec="utf-8", categories=("L", "N", "P", "S")), min_size=1, max_size=30)
SIZES: tuple[ShapeSize, ...] = (
    DrawnDiameter(inches(6, 3, 8)),
    FinishedRadius(mm(70)),
    PathsFlow(),
    DrawnOutline("soft heart", inches(5), 3, 0),
    DrawnOutline("scallop", mm(110), 0, 7),
)
lengths = st.one_of(
    st.builds(Fraction, st.integers(1, 3000), st.sampled_from([1, 2, 3, 4, 7, 8, 16, 64, 100])),
    st.integers(1, 5000).map(lambda tenths: mm(Fraction(tenths, 10))),
)


def read(text: str) -> Design:
    reading = read_design(text)
    assert reading.design is not None, reading.findings
    return reading.design


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_an_example_printed_whole_reads_back_as_itself(file: Path) -> None:
    design = read(file.read_text("utf-8"))
    assert read(format_design(design)) == design


def test_the_printed_text_is_as_a_designer_would_write_it(golden: Golden) -> None:
    golden.check("small-harbour.toml", format_design(read(GOOD)))


@given(title=PLAIN, about=st.lists(PLAIN, min_size=1, max_size=3), needle=PLAIN)
@settings(max_examples=60, deadline=None)
def test_words_of_any_kind_read_back(title: str, about: list[str], needle: str) -> None:
    design = read(GOOD)
    stitch = replace(design.making.stitch, needle=needle)
    design = replace(
        design, title=title, about="\n".join(about), making=replace(design.making, stitch=stitch)
    )
    assert read(format_design(design)) == design


@given(
    units=st.sampled_from(Units),
    size=st.sampled_from(SIZES),
    curve=st.sampled_from(Curve),
    turn=st.integers(0, 3),
    quarter=st.sampled_from(["", *QUARTERS]),
)
@settings(max_examples=60, deadline=None)
def test_choices_of_any_kind_read_back(
    units: Units, size: ShapeSize, curve: Curve, turn: int, quarter: str
) -> None:
    design = read(GOOD.replace('"inch"', f'"{units.value}"').replace("'0\"'", "'1/3\"'"))
    recipe = one_shape_cut_both_ways(*_sizes_of(design.recipes[0]), size, curve)
    setting = replace(straight(design), cells=((Cell("a", turn, quarter),),))
    design = replace(
        design,
        recipes=(recipe,),
        setting=setting,
        borders=(*design.borders, Border("A", mm("33.3"), False)),
        making=replace(
            design.making,
            pressing=Pressing.OPEN,
            spare_masters=turn,
            web_sheet=(mm("230"), mm("300.5")) if turn else None,
        ),
    )
    assert read(format_design(design)) == design


def _sizes_of(recipe: Recipe) -> tuple[str, Length, Length, Length]:
    return recipe.name, recipe.finished_width, recipe.width, recipe.trim_width


@given(recipes(own=False), st.sampled_from(Units), st.booleans())
@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
def test_recipes_of_any_shapes_and_cuts_read_back(recipe: Recipe, units: Units, underlap: bool) -> None:
    ripples = read(RIPPLES)
    shapes = tuple(replace(s, underlap=mm(3) if underlap else None) for s in recipe.shapes)
    named = replace(recipe, name="ripple", shapes=shapes)
    fabrics = tuple((part, "C") for part in named.parts)
    design = replace(
        ripples,
        units=units,
        recipes=(named, *ripples.recipes[1:]),
        colourways=(replace(ripples.colourways[0], shapes=fabrics), *ripples.colourways[1:]),
        making=replace(ripples.making, seam=SEAM),
    )
    assert read(format_design(design)) == design


@pytest.mark.parametrize(
    "sizes", ["trim = '1/4\"'", "finished = 7", "finished_width = 7\nfinished_height = 6"]
)
def test_a_rejoined_recipe_that_is_trimmed_reads_back(sizes: str) -> None:
    design = read(RIPPLES.replace('of = "pair"', f'of = "pair"\n{sizes}').replace("g0 g1\ng3 g2", "g0 g0"))
    assert read(format_design(design)) == design


def test_an_upright_print_reads_back() -> None:
    design = read(RIPPLES.replace('"one-way"', '"one-way"\nupright = true'))
    assert design.fabric("B").upright
    assert read(format_design(design)) == design


def test_a_photo_reads_back() -> None:
    photo = 'photo = "brick wall.jpg"\nphoto_width = "21 cm"\nphoto_crop = [0.125, 0, 0.5, 0.25]'
    design = read(RIPPLES.replace('name = "brick"', f'name = "brick"\n{photo}'))
    found = design.fabric("C").photo
    assert found is not None
    assert (found.file, found.width) == ("brick wall.jpg", mm("210"))
    assert found.crop == (Fraction(1, 8), Fraction(0), Fraction(1, 2), Fraction(1, 4))
    assert read(format_design(design)) == design


@given(lengths, st.sampled_from(Units))
def test_a_length_of_ruler_sizes_reads_back_exactly(value: Length, units: Units) -> None:
    assert parse_length(write_length(value, units), units) == value


@pytest.mark.parametrize(
    ("value", "units", "text"),
    [
        (inches(4, 1, 4), Units.INCH, '4 1/4"'),
        (inches(0, 1, 2), Units.INCH, '1/2"'),
        (inches(0), Units.INCH, '0"'),
        (mm("1.5"), Units.INCH, "1.5 mm"),
        (inches(0, 1, 3), Units.INCH, '1/3"'),
        (mm("7.5"), Units.METRIC, "7.5 mm"),
        (inches(1), Units.METRIC, "25.4 mm"),
    ],
)
def test_a_length_is_written_as_its_ruler_shows_it(value: Length, units: Units, text: str) -> None:
    assert write_length(value, units) == text


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("title", ["First Light", 'Say "When"', "two\nlines", "", "it's", "x" * 300, "\\"])
def test_a_new_design_works_whatever_its_title(title: str, units: Units) -> None:
    reading = read_design(starter(title, units))
    assert reading.findings == ()
    assert reading.design is not None
    assert reading.design.units is units


def test_a_new_design_has_a_comment_on_what_to_change(golden: Golden) -> None:
    golden.check("first-light.toml", starter("First Light", Units.INCH))


def test_strips_that_are_decided_on_read_back() -> None:
    pinned = "strip_heights = ['4 1/2\"', '2 1/2\"']\n\n[[fabrics.A.strips]]\nheight = '4 1/2\"'\ncount = 3\n"
    more = '\n[[fabrics.A.strips]]\nheight = \'2 1/2"\'\npieces = ["A1"]\n\n[fabrics.B]'
    design = read(GOOD.replace("[fabrics.B]", f"{pinned}{more}", 1))
    assert design.fabric("A").strip_heights == (inches(2, 1, 2), inches(4, 1, 2))
    assert [(s.count, s.pieces) for s in design.fabric("A").strips] == [(3, ()), (None, ("A1",))]
    assert read(format_design(design)) == design
