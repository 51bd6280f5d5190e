"""The lines of keys."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Finding, Place, Severity, dotted, line_of, locate
from quarterturn.design.locating import key_lines
from tests.design.broken_cases import GOOD

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))

TEXT = '''\
# a comment with = and [brackets]
plain = 1
"quoted key" = 'a = b # no comment'
dotted.inside = """
not = a key
[nor a table]
"""
inline = { first = 1, second = { third = "}" } }
list = [
  { one = 1 }, # a comment
  "two]",
]

[table.inner] # another
after = 2

[[items]]
name = "x"

[[items]]
name = "y"

  [items.part]
  deep = true

[setting]
map = """

a0 a1

a2 a3
"""
'''
LINES = {
    "plain": 2,
    '"quoted key"': 3,
    "dotted": 4,
    "dotted.inside": 4,
    "inline": 8,
    "inline.first": 8,
    "inline.second": 8,
    "inline.second.third": 8,
    "list": 9,
    "list.0": 10,
    "list.0.one": 10,
    "list.1": 11,
    "table": 14,
    "table.inner": 14,
    "table.inner.after": 15,
    "items": 17,
    "items.0": 17,
    "items.0.name": 18,
    "items.1": 20,
    "items.1.name": 21,
    "items.1.part": 23,
    "items.1.part.deep": 24,
    "setting": 26,
    "setting.map": 27,
    "setting.map.0": 29,
    "setting.map.1": 31,
}


def keys_of(data: Any, path: tuple[str, ...] = ()) -> set[str]:
    """Every dotted key of parsed data."""
    items = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    keys = {dotted(*path)} if path else set()
    return keys.union(*(keys_of(value, (*path, str(key))) for key, value in items))


def test_every_kind_of_key_has_its_line() -> None:
    assert key_lines(TEXT) == LINES


@pytest.mark.parametrize("text", [TEXT, GOOD, *(file.read_text("utf-8") for file in EXAMPLES)])
def test_the_scan_finds_the_keys_that_the_parser_finds(text: str) -> None:
    scanned = {key for key in key_lines(text) if not re.search(r"\.(map|between)\.\d+$", key)}
    assert scanned == keys_of(tomllib.loads(text))


def test_a_key_that_is_not_there_has_the_line_of_its_table() -> None:
    assert line_of(TEXT, "table.inner.missing") == 14
    assert line_of(TEXT, "items.1.part.x.y") == 23
    assert line_of(TEXT, "nowhere") is None
    assert line_of(TEXT, "not a key") is None


def test_a_finding_of_a_later_stage_gets_its_line_and_one_that_has_a_line_keeps_it() -> None:
    late = Finding("c", Severity.STYLE, Place("setting.map.1", "row 2, unit 1"), "S.", "R.")
    early = Finding("c", Severity.STYLE, Place("", line=7), "S.", "R.")
    whole = Finding("c", Severity.STYLE, Place(""), "S.", "R.")
    lines = [finding.place.line for finding in locate(TEXT, [late, early, whole])]
    assert lines == [31, 7, None]


@given(st.text("ab[]{}=\"'.#\\\n ,1", max_size=60))
@settings(deadline=None)
def test_the_scan_of_any_text_ends(text: str) -> None:
    assert all(1 <= line <= text.count("\n") + 1 for line in key_lines(text).values())
