"""Every key of recipes, colourways, sections, borders and sizes has its field in the page, or is set by an act."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path

import pytest

from quarterturn.design import schema
from quarterturn.studio import views
from quarterturn.studio.acts import ACTS
from tests.studio.views.view_cases import MADE

ROOMS = Path(__file__).parents[2] / "frontend" / "src" / "rooms"
TABLES = {
    "RecipeTable": "drafting/Numbers.svelte",
    "ShapeTable": "drafting/ShapeFields.svelte",
    "ShapeOnTable": "drafting/ShapeFields.svelte",
    "ColourwayTable": "cloth/Colourways.svelte",
    "SettingTable": "quilt/SectionsSheet.svelte quilt/TriangleFields.svelte quilt/SashingFields.svelte",
    "SashingTable": "quilt/SashingFields.svelte",
    "PartTable": "quilt/LineParts.svelte",
    "MotifTable": "quilt/MotifsSheet.svelte",
    "BorderTable": "quilt/BorderFields.svelte",
    "SizeTable": "cutting/SizeFields.svelte",
}
"""Tables of the file, and the components that have fields for their keys."""
BY_ACT = {
    "RecipeTable.kind": "add-recipe",
    "RecipeTable.shapes": "add-shape",
    "RecipeTable.shape": "add-recipe",
    "ColourwayTable.recipe": "add-colourway",
    "ColourwayTable.shapes": "add-shape",
    "SettingTable.kind": "lay-otherwise",
    "SettingTable.map": "lay",
    "SettingTable.between": "lay",
    "SettingTable.parts": "add-part",
    "SettingTable.motifs": "place-motif",
    "BorderTable.kind": "add-border",
}
"""Keys that are no field of their own, and the act that a hand does instead."""
STATED = re.compile(r"""\bat=(?:"|\{[^}]*?`)[^"`]*\}\.(\w+)["`]""")
ANY = re.compile(r"""\b(?:at|data-at)="[^"]*\}\.\{\w+\}"|\bat=\{\w+\.key\}""")
"""A field for a key that a word names."""


LISTED = re.compile(r'\[((?:"[a-z_]+"(?:, )?)+)\] as const')
"""Words for which such a field is repeated."""


def fields(source: str, words: str) -> set[str]:
    """Return the keys for which a source has a field: those it names, and the words of one that takes several."""
    several = set(re.findall(r"\b[a-z_]+\b", words)) if ANY.search(source) else set()
    return set(STATED.findall(source)) | several


def numbers() -> set[str]:
    """Return the keys of recipes that the drafting table has as numbers, in any example."""
    drafts = [draft for made in MADE.values() for draft in views.blocks_view(1, made).drafts]
    return {number.key.rsplit(".", 1)[1] for draft in drafts for number in draft.numbers}


def parts() -> set[str]:
    """Return what a colourway has fields for."""
    ways = [way for made in MADE.values() for way in views.paper_facts(made).colourways]
    return {part for way in ways for part in way.cloths} | {"first", "second"}


def without(keys: Mapping[str, set[str]], sources: Mapping[str, str]) -> set[str]:
    """Return the keys of tables that have neither a field nor an act."""
    known = {"RecipeTable": numbers(), "ShapeTable": numbers(), "ColourwayTable": parts()}
    missing = set()
    for table, named in keys.items():
        source = sources[table]
        quoted = " ".join(LISTED.findall(source))
        found = fields(source, quoted if table not in known else " ".join(known[table]))
        missing |= {f"{table}.{key}" for key in named - found}
    return missing - BY_ACT.keys()


def of_schema() -> dict[str, set[str]]:
    return {table: set(schema()["$defs"][table]["properties"]) for table in TABLES}


def of_page() -> dict[str, str]:
    return {
        table: "\n".join((ROOMS / name).read_text("utf-8") for name in names.split())
        for table, names in TABLES.items()
    }


def test_every_key_has_a_field_or_an_act() -> None:
    assert without(of_schema(), of_page()) == set()
    assert set(BY_ACT.values()) <= {act.model_fields["name"].default for act in ACTS}


def test_no_key_that_has_an_act_has_gone() -> None:
    assert BY_ACT.keys() <= {f"{table}.{key}" for table, keys in of_schema().items() for key in keys}


@pytest.mark.parametrize(
    ("table", "key", "field"),
    [
        ("SashingTable", "cornerstone", 'at="{key}.cornerstone"'),
        ("SettingTable", "side_square", '"side_square", '),
        ("ShapeOnTable", "underlap", 'at="{shape.key}.underlap"'),
        ("BorderTable", "first", 'at="{border.key}.first"'),
        ("SizeTable", "tuck", '"tuck", '),
    ],
)
def test_a_key_without_its_field_is_missed(table: str, key: str, field: str) -> None:
    sources = of_page()
    assert field in sources[table]
    assert without(of_schema(), {**sources, table: sources[table].replace(field, "")}) == {f"{table}.{key}"}


def test_a_new_key_is_missed() -> None:
    keys = of_schema()
    assert without({**keys, "MotifTable": keys["MotifTable"] | {"scale"}}, of_page()) == {"MotifTable.scale"}
