"""docs/studio.md says what acts and views there are, with their arguments and keys."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from quarterturn.studio import views
from quarterturn.studio.acts import ACTS, Act, name_of
from quarterturn.studio.views.model import View

PAGE = (Path(__file__).parents[2] / "docs" / "studio.md").read_text(encoding="utf-8")
ROWS = {found[1]: found[0] for found in re.finditer(r"^\| `([a-z-]+)` \|.*$", PAGE, re.MULTILINE)}
PARTS_OF_OTHERS = {"FindingView", "RecentView"}


def test_the_acts_of_the_page_are_those_of_the_studio() -> None:
    assert list(ROWS) == [name_of(act) for act in ACTS]


@pytest.mark.parametrize("act", ACTS, ids=name_of)
def test_an_act_is_documented_with_its_arguments_and_its_key(act: type[Act]) -> None:
    fields = {name: field for name, field in act.model_fields.items() if name not in ("name", "anyway")}
    said = ", ".join(f"`{name}`{'' if field.is_required() else '?'}" for name, field in fields.items())
    _, _, _, arguments, key, _ = (cell.strip() for cell in ROWS[name_of(act)].split("|"))
    assert arguments == said
    assert key == (f"`{act.key}`" if act.key else "–")


def test_the_views_of_the_page_are_those_of_the_studio() -> None:
    told = re.findall(r"^\| `([A-Z]\w+)` \|", PAGE, re.MULTILINE)
    made = {
        name
        for name in views.__all__
        if isinstance(kind := getattr(views, name), type) and issubclass(kind, View)
    }
    assert sorted(told) == sorted(made - PARTS_OF_OTHERS)
