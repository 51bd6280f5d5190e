"""The schema for editors, and the page that tells of each key."""

from __future__ import annotations

import json
import re
from enum import Enum
from pathlib import Path
from typing import Any, get_args

import pytest

from quarterturn.design import (
    CODES,
    BindingKind,
    ClothKind,
    Curve,
    Direction,
    EdgeStitchKind,
    Fold,
    Joins,
    LongCut,
    Making,
    Paper,
    Pressing,
    Symmetry,
    TriangleFit,
    schema,
)
from quarterturn.design.file import (
    BindingTable,
    DesignFile,
    FabricTable,
    HouseTable,
    MakingTable,
    SettingTable,
    StitchTable,
)
from quarterturn.design.file_recipes import RecipeTable
from quarterturn.design.selling_tables import ClassTable
from quarterturn.measure import Units
from quarterturn.steps import Chapter
from tests.conftest import Golden

PAGE = (Path(__file__).parents[2] / "docs" / "file-format.md").read_text("utf-8")
CHOICES: list[tuple[type[Any], str, type[Enum]]] = [
    (DesignFile, "units", Units),
    (FabricTable, "direction", Direction),
    (FabricTable, "kind", ClothKind),
    (RecipeTable, "curve", Curve),
    (SettingTable, "symmetry", Symmetry),
    (SettingTable, "fit", TriangleFit),
    (BindingTable, "kind", BindingKind),
    (BindingTable, "fold", Fold),
    (StitchTable, "kind", EdgeStitchKind),
    (MakingTable, "pressing", Pressing),
    (MakingTable, "borders", LongCut),
    (MakingTable, "joins", Joins),
    (HouseTable, "paper", Paper),
]


def tables() -> dict[str, dict[str, Any]]:
    """Each table of the schema by its class name, with its properties."""
    whole = schema()
    inner: dict[str, dict[str, Any]] = whole["$defs"]
    return {"DesignFile": whole} | inner


def documented() -> dict[str, set[str]]:
    """The keys that the page gives in the table under each heading, by the header of the file that it names."""
    found: dict[str, set[str]] = {}
    for part in re.split(r"\n(?=## )", PAGE):
        title = re.match(r"## .*?(?:`(\[.*\])`)?\n", part)
        keys = set(re.findall(r"^\| `([a-z_]+)` \|", part, re.MULTILINE))
        if title and keys:
            found[title[1] or ""] = keys
    return found


HEADERS = {
    "": "DesignFile",
    "[fabrics.A]": "FabricTable",
    "[[fabrics.A.on_hand]]": "OnHandTable",
    "[fabrics.A.bought_as]": "BoughtTable",
    "[[fabrics.A.strips]]": "PinnedTable",
    "[outlines.fox]": "OutlineTable",
    "[recipes.lantern]": "RecipeTable",
    "[recipes.lantern.shape]": "ShapeTable",
    "[[recipes.ripple.shapes]]": "ShapeOnTable",
    "[colourways.a]": "ColourwayTable",
    "[setting]": "SettingTable",
    "[setting.sashing]": "SashingTable",
    "[[setting.parts]]": "PartTable",
    "[[setting.motifs]]": "MotifTable",
    "[sections.wreath]": "SectionTable",
    "[[borders]]": "BorderTable",
    "[binding]": "BindingTable",
    "[backing]": "BackingTable",
    "[batting]": "BattingTable",
    "[making]": "MakingTable",
    "[making.stitch]": "StitchTable",
    "[house]": "HouseTable",
    "[money]": "MoneyTable",
    "[money.minutes]": "MinutesTable",
    "[[notions]]": "NotionTable",
    "[kits]": "KitsTable",
    "[class]": "ClassTable",
    "[sizes.queen]": "SizeTable",
}


def test_the_schema_is_the_one_that_editors_have(golden: Golden) -> None:
    golden.check("design.schema.json", json.dumps(schema(), indent=2, ensure_ascii=False) + "\n")


def test_every_key_has_a_description() -> None:
    bare = [
        f"{name}.{key}"
        for name, table in tables().items()
        for key, value in table["properties"].items()
        if not value.get("description")
    ]
    assert bare == []


def test_the_schema_knows_nothing_that_toml_has_not() -> None:
    assert "null" not in json.dumps(schema())


def test_every_key_that_is_needed_is_a_key() -> None:
    for table in tables().values():
        assert set(table.get("required", ())) <= table["properties"].keys()


@pytest.mark.parametrize(("table", "key", "choice"), CHOICES, ids=[key for _, key, _ in CHOICES])
def test_the_words_to_choose_from_are_those_of_the_design(table: Any, key: str, choice: type[Enum]) -> None:
    words = get_args(get_args(table.model_fields[key].annotation)[0])
    assert list(words) == [each.value for each in choice]


def test_what_can_be_done_at_home_are_the_chapters_of_the_work() -> None:
    chapters = [chapter.value for chapter in Chapter]
    words = get_args(get_args(get_args(ClassTable.model_fields["homework"].annotation)[0])[0])
    assert list(words) == chapters
    [row] = [line for line in PAGE.splitlines() if line.startswith("| `homework` |")]
    assert re.findall(r'`"([a-z ]+)"`', row) == chapters


def test_everything_about_making_can_be_set() -> None:
    assert set(MakingTable.model_fields) == set(Making.__dataclass_fields__)


def test_the_page_tells_of_every_key_of_every_table_and_of_no_other() -> None:
    wanted = {header: set(tables()[name]["properties"]) for header, name in HEADERS.items()}
    wanted["[sections.wreath]"] -= wanted["[setting]"]  # "A section has all the keys of the setting".
    assert documented() == wanted


def test_the_page_tells_of_every_table() -> None:
    assert set(HEADERS.values()) == set(tables())


def test_the_page_tells_of_every_code() -> None:
    told = dict(re.findall(r"^\| `([a-z]+-[a-z-]+)` \| (.*?) \|$", PAGE, re.MULTILINE))
    assert told == {code: meaning for code, (_, meaning) in CODES.items()}
