"""A release is a list of named files, the same for the same pattern."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pytest

from quarterturn.design import Finding, Place, Severity
from quarterturn.proof import prove
from quarterturn.publish.release import (
    CONTENTS,
    PARTS,
    Order,
    Verdict,
    contents,
    draft_line,
    release,
    shape_stems,
)
from tests.samples import ROUNDS, pattern_of

PATTERN = pattern_of(ROUNDS)
VERDICT = Verdict("rounds.toml", (), prove(PATTERN))
STOP = Finding("planted", Severity.STOPS, Place(""), "Something is wrong.", "Mend it.")


def test_every_part_gives_files_of_its_own_and_the_contents_come_last() -> None:
    made = [name for part in PARTS for name in part.make(Order(PATTERN, VERDICT, draft=False))]
    assert len(set(made)) == len(made)
    assert list(release(PATTERN, VERDICT)) == [*made, CONTENTS]


def test_the_contents_name_each_file_with_its_checksum() -> None:
    empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    assert contents({"b": b"", "a": b""}) == f"{empty}  a\n{empty}  b\n".encode()


def test_each_part_is_told_as_it_begins() -> None:
    told: list[str] = []
    release(PATTERN, VERDICT, only=("findings", "lists"), watch=told.append)
    assert told == ["lists", "findings"]


@pytest.mark.parametrize("name", ["round", "../../etc/passwd", "Über – groß", "…", "a" * 200, "CON", "-"])
def test_a_recipe_of_any_name_gives_plain_names_of_files(name: str) -> None:
    [master] = PATTERN.blocks.masters
    [stem] = shape_stems(replace(PATTERN.blocks, masters=(replace(master, recipe=name),)))
    assert re.fullmatch(r"shape-1(-[a-z0-9]+)*", stem)
    assert len(stem) <= 60


def test_recipes_whose_names_look_alike_give_different_files() -> None:
    [master] = PATTERN.blocks.masters
    other = replace(master, recipe="ROUND!", shapes=(replace(master.shape, name="ROUND!"),))
    stems = shape_stems(replace(PATTERN.blocks, masters=(master, other)))
    assert stems == ["shape-1-round", "shape-2-round"]


def test_a_draft_says_how_much_is_open_and_a_finished_pattern_says_nothing() -> None:
    order = Order(PATTERN, replace(VERDICT, findings=(STOP, STOP)), draft=True)
    assert draft_line(order) == "Draft: 2 findings that stop the sewer. Not for sale and not for sewing."
    assert draft_line(replace(order, draft=False)) == ""


def test_a_pattern_in_several_sizes_has_lists_for_each_and_one_for_all() -> None:
    design = PATTERN.design
    sizes = tuple(replace(design, size=name) for name in ("Wall!", "wall", "UK super king"))
    others = tuple((replace(PATTERN, design=each), VERDICT.proof) for each in sizes)
    files = release(PATTERN, replace(VERDICT, others=others), only=("lists", "findings"))
    assert [name for name in files if name.startswith(("cut", "job", "sizes"))] == [
        "cut-list.csv",
        "job.json",
        "sizes.csv",
        "cut-list-2-wall.csv",
        "job-2-wall.json",
        "cut-list-3-wall.csv",
        "job-3-wall.json",
        "cut-list-4-uk-super-king.csv",
        "job-4-uk-super-king.json",
    ]
    assert json.loads(files["job-3-wall.json"])["design"]["size"] == "wall"
    assert files["findings.txt"].decode().count(" size:\n") == 3
