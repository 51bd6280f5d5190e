"""Laws of every act, on every example: what is left is a design, notes stay, and an act is one object."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from pydantic import TypeAdapter

from quarterturn.design import Design, read_design
from quarterturn.studio.acts import ACTS, Act, AnyAct, RefusedError, do, name_of
from quarterturn.studio.acts.tables import joined, tables_of
from quarterturn.studio.stages import Stages
from tests.studio.acts.samples import samples

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
TAKES_AWAY = ("remove-", "write", "swap-")


def texts() -> list[str]:
    return [path.read_text(encoding="utf-8") for path in EXAMPLES]


def design_of(text: str) -> Design:
    design = read_design(text).design
    assert design is not None
    return design


def notes_of(text: str) -> list[str]:
    return sorted(re.findall(r"(?m)^[ \t]*#.*$|[ \t]#[^'\"\n]*$", text))


def outcome(act: Act, text: str, stages: Stages) -> str | None:
    """Return the text that an act leaves; None where it is refused, as it must be: by two sentences."""
    try:
        return do(act, text, stages).made.text
    except RefusedError as error:
        refused = error
    assert refused.sentence.endswith("."), refused.sentence
    assert refused.remedy.endswith((".", "?")), refused.remedy
    return None


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_act_leaves_a_design_or_is_refused_by_a_sentence(path: Path) -> None:
    text, stages = path.read_text(encoding="utf-8"), Stages()
    done: set[str] = set()
    for act in samples(design_of(text)):
        name = name_of(type(act))
        left = outcome(act, text, stages)
        if left is None or act.may_break:
            continue
        done.add(name)
        assert read_design(left).design is not None, act
        if not name.startswith(TAKES_AWAY):
            assert set(notes_of(text)) <= set(notes_of(left)), act
    assert {"put", "puts", "add-recipe", "add-fabric", "take-colours", "add-border"} <= done


def test_every_act_is_done_on_some_example() -> None:
    done = set()
    for text in texts():
        stages = Stages()
        for act in samples(design_of(text)):
            name = name_of(type(act))
            if name not in done and outcome(act, text, stages) not in (None, text):
                done.add(name)
    assert done == {name_of(act) for act in ACTS}


def test_an_act_is_told_by_its_name_in_json() -> None:
    adapter: TypeAdapter[Act] = TypeAdapter(AnyAct)
    assert len({name_of(act) for act in ACTS}) == len(ACTS)
    for act in samples(design_of(texts()[0])):
        assert adapter.validate_json(act.model_dump_json()) == act


def test_shortcuts_differ_where_two_acts_are_at_hand_together() -> None:
    keys = [act.key for act in ACTS if act.key and act.key != "Enter"]
    assert len(set(keys)) == len(keys)


def test_the_pieces_of_a_text_are_the_text() -> None:
    for text in texts():
        assert joined(tables_of(text)) == text


def test_a_bracket_in_a_note_or_a_list_begins_no_table() -> None:
    text = 'a = [\n  [1, 2],\n  [3],\n]\nb = """\n[no]\n"""\n# [neither]\n\n# about x\n[x.y] # [so]\nc = "#["\n[[z]]\n'
    assert [table.parts for table in tables_of(text)] == [(), ("x", "y"), ("z",)]
    assert tables_of(text)[1].text.startswith("# about x\n")
