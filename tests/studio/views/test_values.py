"""Every key of the file has its field in the page, with what it states or what stands otherwise."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from quarterturn.design import schema
from quarterturn.studio import views
from quarterturn.studio.acts import do
from quarterturn.studio.acts.putting import Put
from quarterturn.studio.stages import Made, Stages
from quarterturn.studio.views.values import SHELVED, TABLES, ValuesView
from tests.samples import ROUNDS
from tests.studio.views.view_cases import MADE, each_example

ROOT = Path(__file__).parents[3]
PAGE = ROOT / "frontend" / "src"
CATALOGUE = json.loads((PAGE / "words" / "en.json").read_text("utf-8"))["values"]
SCHEMA = schema()

IN_ROOMS = {
    "fabrics": "Cloth", "outlines": "Drafting table", "recipes": "Drafting table", "colourways": "Cloth",
    "sections": "Quilt", "setting": "Quilt", "borders": "Quilt", "house": "Booklet", "sizes": "Cutting",
    "title": "Booklet", "maker": "Booklet", "number": "Booklet", "version": "Booklet", "date": "Booklet",
    "contact": "Booklet", "about": "Booklet",
}  # fmt: skip
"""Keys that have their fields in a room, by hand."""
WITHOUT = {
    "format": "the program writes it",
    "units": "chosen when a quilt is begun: a change of it would leave every length as it is",
    "size": "told by the name of a size that is added",
}
"""Keys that have no field, and why."""


def shown(made: Made) -> ValuesView:
    return views.values_view(1, made)


def value(text: str, key: str) -> tuple[object, str]:
    """Return what is stated at a key and what stands otherwise."""
    found = {each.key: each for table in shown(Stages().at(text)).tables for each in table.values}[key]
    return found.stated, found.usual


def test_every_table_of_the_file_has_its_place_in_the_page() -> None:
    assert set(SCHEMA["properties"]) == {*TABLES, *IN_ROOMS, *WITHOUT}


def test_every_value_is_called_by_the_catalogue_and_nothing_else_is() -> None:
    keys = {
        re.sub(r"^fabrics\.[A-Z]+\.", "fabrics.", each.key)
        for t in shown(MADE["pears-in-the-pantry"]).tables
        for each in t.values
    }
    assert {re.sub("[^a-z]+", "-", key) for key in keys} == set(CATALOGUE["of"])


def test_every_table_lies_on_a_sheet() -> None:
    sheets = (PAGE / "rooms" / "values" / "values.svelte.ts").read_text("utf-8")
    for table in shown(MADE["pears-in-the-pantry"]).tables:
        if not table.key.startswith("fabrics."):
            assert f'"{table.key}"' in sheets
            assert table.key.replace(".", "-") in CATALOGUE["tables"]


def test_every_key_of_a_fabric_has_its_field() -> None:
    sources = "".join(path.read_text("utf-8") for path in (PAGE / "rooms").rglob("*.svelte"))
    acts = {"photo", "photo_width", "photo_crop"}  # one act puts them together, from the sheet of the photo
    keys = set(SCHEMA["$defs"]["FabricTable"]["properties"]) - acts - set(SHELVED)
    assert {key for key in keys if f'put("{key}"' not in sources and f".{key}" not in sources} == set()


@each_example
def test_what_the_file_states_is_what_is_shown(name: str) -> None:
    made = MADE[name]
    stated = {each.key: each.stated for table in shown(made).tables for each in table.values if each.stated}
    for key, each in stated.items():
        if not isinstance(each, list | dict):
            assert str(each).split()[0].rstrip('"') in made.text, key


@pytest.mark.parametrize(
    ("key", "given", "usual"),
    [
        ("making.slack", '3"', '2"'),
        ("making.web_sheet", ['9"', '12"'], ""),
        ("money.spool", "500 m", "200 yd"),
        ("kits.spare", 8, "5"),
        ("class.homework", ["cutting"], ""),
        ("fabrics.A.bought_as", "fat quarter", ""),
        ("batting.packages", {"throw": ['60"', '60"']}, ""),
    ],
)
def test_a_value_that_is_put_is_stated_then(key: str, given: object, usual: str) -> None:
    text = ROUNDS
    if key.startswith(("kits", "class")):
        needed = {"kits": {"count": 6}, "class": {"students": 8, "hours": 6}}[key.partition(".")[0]]
        text += f"\n[{key.partition('.')[0]}]\n" + "".join(f"{k} = {v}\n" for k, v in needed.items())
    assert value(text, key) == (None, usual)
    changed = do(Put.model_validate({"at": key, "value": given}), text, Stages()).made.text
    assert value(changed, key) == (given, usual)
