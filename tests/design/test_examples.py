"""The examples that come with the program, and the one in the page on the file format."""

from __future__ import annotations

import itertools
import re
from pathlib import Path

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Curve, Design, DrawnDiameter, PanelSet, PathsFlow, codes_in, read_design
from quarterturn.design.colour import value_of
from quarterturn.measure import Units
from quarterturn.setting import arrange, laid_upright

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.toml"))


def design_of(text: str) -> Design:
    reading = read_design(text)
    assert reading.findings == ()
    assert reading.design is not None
    return reading.design


DESIGNS = {file.stem: design_of(file.read_text("utf-8")) for file in EXAMPLES}


@pytest.mark.parametrize("name", DESIGNS)
def test_no_two_fabrics_of_an_example_are_near_in_value(name: str) -> None:
    values = [value_of(fabric.colour) for fabric in DESIGNS[name].fabrics]
    assert min(abs(a - b) for a, b in itertools.combinations(values, 2)) >= 12


@pytest.mark.parametrize("name", DESIGNS)
def test_every_fabric_recipe_and_colourway_of_an_example_is_used(name: str) -> None:
    design = DESIGNS[name]
    codes = codes_in(design)
    codes |= {master for code in codes for master in design.masters_of(code)}
    assert codes == {way.code for way in design.colourways}
    panels = [each.setting for each in design.sections if isinstance(each.setting, PanelSet)]
    panels += [design.setting] if isinstance(design.setting, PanelSet) else []
    names = {recipe.name for recipe in design.recipes} | {recipe.name for recipe in design.rejoined}
    used_names = {way.recipe for way in design.colourways} | {
        m.recipe for each in panels for m in each.motifs
    }
    assert used_names == names
    used = {letter for way in design.colourways for letter in way.letters if letter}
    blocks = draft_blocks(design)
    used |= {cloth.fabric for cloth in arrange(laid_upright(design, blocks), blocks).cloths}
    used |= {design.binding_fabric, design.backing_fabric}
    assert used == {fabric.letter for fabric in design.fabrics}


def test_the_examples_show_each_way_to_make_a_curve_and_both_units() -> None:
    recipes = [recipe for design in DESIGNS.values() for recipe in design.recipes]
    ways = {(type(shape.size), recipe.curve) for recipe in recipes for shape in recipe.shapes}
    assert ways >= {
        (PathsFlow, Curve.SEWN_TRUE),
        (PathsFlow, Curve.AS_DRAWN),
        (DrawnDiameter, Curve.AS_DRAWN),
    }
    assert {design.units for design in DESIGNS.values()} == set(Units)


def snippets() -> list[str]:
    page = (ROOT / "docs" / "file-format.md").read_text("utf-8")
    return re.findall(r"```toml\n(.*?)```", page, re.DOTALL)


def test_the_example_in_the_page_on_the_file_format_reads() -> None:
    assert design_of(snippets()[0]).title == "Lanterns on the Quay"


@pytest.mark.parametrize(
    "snippet", [each for each in snippets()[1:] if "recipes." not in each and "cuts" not in each]
)
def test_every_example_of_a_setting_in_the_page_reads_in_place_of_its_setting(snippet: str) -> None:
    text = re.sub(
        r"\[setting\]\n.*?(?=\[binding\])", snippet.replace("\\", r"\\"), snippets()[0], flags=re.DOTALL
    )
    named = set(re.findall(r"\b(wreath|vine)\d?\b", snippet)) - set(
        re.findall(r"\[sections\.(\w+)\]", snippet)
    )
    text += "".join(f'[sections.{name}]\nkind = "straight"\nmap = "a0"\n' for name in sorted(named))
    assert read_design(text).findings == ()


def test_the_examples_of_recipes_in_the_page_read_in_place_of_its_recipes() -> None:
    """Each stands for the recipes and colourways of the first, which is a whole file."""
    text = snippets()[0]
    cuts, *others = (each for each in snippets()[1:] if "[recipes." in each or each.startswith("cuts"))
    start, end = text.index("[recipes.lantern]"), text.index("[setting]")
    read = [design_of(text[:start] + other.replace('"C"', '"A"') + text[end:]) for other in others]
    assert [design.recipes[0].name for design in read] == ["ripple", "hearts"]
    ripple = others[0].replace('cuts = "both ways"', f"width = 9\nheight = 8\n{cuts}").replace('"C"', '"A"')
    ripple = ripple.replace("finished", "# finished")
    assert len(design_of(text[:start] + ripple + text[end:]).recipes[0].cuts) == 2
