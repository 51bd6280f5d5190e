"""What the page gets of three designs, as text: each item of a list on a line of its own."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from pydantic import BaseModel

from quarterturn.studio import views
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.booklet import BookletView
from tests.conftest import Golden

FOLDER = Path(__file__).parents[3] / "examples"
NAMES = ("gates-of-the-orchard", "marbles-on-the-stair", "pocket-of-moons", "vines-at-the-window")
STAGES = {name: Stages() for name in NAMES}
_SVG = re.compile(r"<svg .*</svg>\n", re.DOTALL)


def shown(view: BaseModel) -> str:
    """Return a view as JSON whose lists stand a line to an item, drawings by their length alone."""
    data = json.loads(view.model_dump_json())
    fields = (f'"{key}": {_shown(value, 1)}' for key, value in data.items())
    return "{\n" + ",\n".join(fields) + "\n}\n"


def _shown(value: object, depth: int) -> str:
    if isinstance(value, dict | list) and len(json.dumps(value)) > 110 and depth < 5:
        inner = "\n" + " " * depth
        if isinstance(value, list):
            return "[" + ",".join(inner + _shown(each, depth + 1) for each in value) + "]"
        items = (f"{json.dumps(key)}: {_shown(each, depth + 1)}" for key, each in value.items())
        return "{" + ",".join(inner + item for item in items) + "}"
    if isinstance(value, str) and value.startswith("<svg "):
        return '"drawing"'
    return json.dumps(value, ensure_ascii=False)


Shows = Callable[[Stages, str], BaseModel]
VIEWS: dict[str, Shows] = {
    "paper": lambda stages, text: views.paper_facts(stages.at(text)),
    "quilt": lambda stages, text: views.quilt_view(1, stages.at(text).size()),
    "figures": lambda stages, text: views.figures_view(1, stages.at(text).size()),
    "blocks": lambda stages, text: views.blocks_view(1, stages.at(text)),
    "cloth": lambda stages, text: views.cloth_view(1, stages.at(text).size()),
    "cutting": lambda stages, text: views.cutting_view(1, stages.at(text), stages.at(text).size()),
    "seams": lambda stages, text: views.seams_view(1, stages.at(text).size()),
    "proof": lambda stages, text: views.proof_view(1, stages.at(text)),
    "sizes": lambda stages, text: views.sizes_view(1, stages.at(text).size()),
    "film": lambda stages, text: views.film_view(1, stages.at(text).size()),
    "frame": lambda stages, text: views.frame_view(1, stages.at(text).size(), 12),
    "making": lambda stages, text: views.making_view(1, stages.at(text).size()),
    "booklet": lambda stages, text: views.booklet_view(1, stages.at(text)),
}
SMALL = {
    "pocket-of-moons": set(VIEWS) - {"sizes"},  # its stretched maps would fill pages; see tests/setting
    "marbles-on-the-stair": {"sizes"},
    "gates-of-the-orchard": {"quilt", "figures", "cutting", "proof", "sizes"},
}
SMALL["vines-at-the-window"] = {"quilt", "seams", "cloth", "figures"}


@pytest.mark.parametrize(
    ("name", "view"), [(name, view) for name in NAMES for view in VIEWS if view in SMALL[name]]
)
def test_a_view_is_as_it_was(name: str, view: str, golden: Golden) -> None:
    text = (FOLDER / f"{name}.toml").read_text(encoding="utf-8")
    made = VIEWS[view](STAGES[name], text)
    if isinstance(made, BookletView):
        assert len(made.pages) > 5
    golden.check(f"{name}-{view}.json", shown(made))


def test_the_start_is_as_it_was(golden: Golden) -> None:
    golden.check("start.json", shown(views.start_view((), {})))


def test_what_is_found_is_as_it_was(golden: Golden) -> None:
    text = (FOLDER / "pocket-of-moons.toml").read_text(encoding="utf-8")
    question = views.FindQuestion(repeat=2, symmetry="mirror", most=4)
    found = views.find_view(1, STAGES["pocket-of-moons"].at(text).size(), question)
    golden.check("find.json", shown(found))
