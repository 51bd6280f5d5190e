"""The page knows the server: its types are made of the document that the server tells, its words name every act."""

from __future__ import annotations

import json
from pathlib import Path

from quarterturn.studio.acts import ACTS, name_of
from quarterturn.studio.openapi import document

SOURCE = Path(__file__).parents[2] / "frontend" / "src"


def test_the_page_has_its_types_from_this_server() -> None:
    kept = (SOURCE / "api" / "openapi.json").read_text(encoding="utf-8")
    assert kept == document(), "run `npm run types` in frontend/"


def test_the_catalogue_of_the_page_names_every_act() -> None:
    words = json.loads((SOURCE / "words" / "en.json").read_text(encoding="utf-8"))
    assert [name for act in ACTS if not words["acts"].get(name := name_of(act))] == []
