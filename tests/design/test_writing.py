"""Writing back: what changes is changed, and what does not is kept to the letter."""

from __future__ import annotations

import difflib
import tomllib
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Border, Design, WriteError, read_design, write_design
from quarterturn.measure import inches
from tests.design.broken_cases import GOOD
from tests.design.recipe_cases import RIPPLES
from tests.samples import straight

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))
TEXTS = {file.stem: file.read_text("utf-8") for file in EXAMPLES}
COMMENTED = GOOD.replace("down = 3", "down = 3   # as long as the sofa").replace(
    "[house]", "# my house\n[house]"
)


def design_of(text: str) -> Design:
    reading = read_design(text)
    assert reading.design is not None, reading.findings
    return reading.design


def changed(before: str, after: str) -> list[str]:
    """The lines that differ, with + or - before them."""
    marked = difflib.ndiff(before.splitlines(), after.splitlines())
    return [line.replace("  ", " ", 1) if line[0] == " " else line for line in marked if line[0] in "+-"]


@pytest.mark.parametrize("name", TEXTS)
def test_writing_nothing_gives_the_same_bytes(name: str) -> None:
    assert write_design(TEXTS[name], {}) == TEXTS[name]


@pytest.mark.parametrize("name", TEXTS)
def test_writing_what_is_there_gives_the_same_bytes(name: str) -> None:
    text = TEXTS[name]
    written = tomllib.loads(text)
    assert write_design(text, {"title": written["title"], "setting.kind": written["setting"]["kind"]}) == text


def test_a_value_is_changed_where_it_stands_and_its_comment_stays() -> None:
    after = write_design(COMMENTED, {"setting.down": 5})
    assert changed(COMMENTED, after) == [
        "- down = 3   # as long as the sofa",
        "+ down = 5   # as long as the sofa",
    ]
    assert straight(design_of(after)).down == 5


def test_a_length_is_written_in_quotes_that_need_no_escapes() -> None:
    after = write_design(GOOD, {"borders.0.width": '3 1/2"'})
    assert "width = '3 1/2\"'" in after
    assert design_of(after).borders[0] == Border("B", inches(3, 1, 2))


def test_a_value_inside_braces_is_changed() -> None:
    after = write_design(GOOD, {"recipes.round.shape.diameter": '6"'})
    assert changed(GOOD, after) == ["- shape = { diameter = '7\"' }", "+ shape = { diameter = '6\"' }"]


def test_a_map_is_written_over_several_lines() -> None:
    after = write_design(GOOD, {"setting.map": "a0 a1\na3 a2"})
    assert 'map = """\na0 a1\na3 a2\n"""\nacross = 2' in after
    assert len(straight(design_of(after)).cells) == 2


def test_a_key_that_is_not_there_is_added_to_its_table() -> None:
    after = write_design(COMMENTED, {"making.seam": "6 mm", "fabrics.B.price": 12.5})
    assert "# as long as the sofa" in after
    reading = read_design(after)
    assert reading.design is not None
    assert reading.design.fabric("B").price == Fraction("12.5")


def test_a_table_that_is_not_there_is_added() -> None:
    bare = GOOD[: GOOD.index("[making]")]
    after = write_design(
        bare, {"house.skill": "anybody", "fabrics.C.name": "mist", "fabrics.C.colour": "#99aabb"}
    )
    assert design_of(after).house.skill == "anybody"
    assert design_of(after).fabric("C").name == "mist"


def fabrics_of_borders(text: str) -> list[str]:
    return [border.fabric for border in design_of(text).borders if isinstance(border, Border)]


def test_a_border_is_added_behind_the_last_and_taken_away() -> None:
    two = write_design(GOOD, {"borders.1.fabric": "A", "borders.1.width": 3})
    assert fabrics_of_borders(two) == ["B", "A"]
    one = write_design(two, {"borders.0": None})
    assert fabrics_of_borders(one) == ["A"]
    first = write_design(
        GOOD.replace('[[borders]]\nfabric = "B"\nwidth = \'2"\'\nfirst = "sides"\n', ""),
        {"borders.0.fabric": "A", "borders.0.width": 3},
    )
    assert len(design_of(first).borders) == 1


def test_none_takes_a_key_away_and_a_missing_one_is_no_matter() -> None:
    after = write_design(COMMENTED, {"setting.across": None, "house.currency": None, "no.such.table": None})
    assert changed(COMMENTED, after) == ["- across = 2"]


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("title = ", "title"),
        (GOOD, "title.x"),
        (GOOD, "a..b"),
        (GOOD, "borders.7.width"),
        (GOOD, "borders.x"),
    ],
)
def test_a_change_that_cannot_be_made_is_refused(text: str, key: str) -> None:
    with pytest.raises(WriteError):
        write_design(text, {key: 1})


def test_text_that_toml_cannot_hold_is_refused() -> None:
    with pytest.raises(WriteError):
        write_design(GOOD, {"about": "two\nlines and a bell \x07"})


@given(st.text(st.characters(codec="utf-8", categories=("L", "N", "P", "S", "Zs")), min_size=1, max_size=40))
@settings(max_examples=60, deadline=None)
def test_what_is_written_is_what_is_read(title: str) -> None:
    after = write_design(COMMENTED, {"title": title})
    reading = read_design(after)
    if reading.design:
        assert reading.design.title == title.replace("\N{NO-BREAK SPACE}", " ").strip()
    assert after.partition("\n")[2].partition("\n")[2] == COMMENTED.partition("\n")[2].partition("\n")[2]


def test_a_shape_of_several_is_changed_where_it_stands_and_another_added_below() -> None:
    after = write_design(RIPPLES, {"recipes.ripple.shapes.1.turn": 45, "recipes.ripple.cuts": "both ways"})
    assert changed(RIPPLES, after) == ["- turn = 22.5", "+ turn = 45"]
    more = write_design(
        after,
        {
            "recipes.ripple.shapes.2.name": "heart",
            "recipes.ripple.shapes.2.width": '1"',
            "recipes.ripple.shapes.2.at": ['-3"', 0],
        },
    )
    (recipe, _), before = design_of(more).recipes, design_of(after).recipes[0]
    assert recipe.shapes[:2] == before.shapes
    assert (recipe.shapes[2].part, recipe.shapes[2].x) == ("heart", inches(-3))


def test_the_mark_that_some_editors_begin_a_file_with_stays() -> None:
    marked = "\ufeff# mine\nformat = 1\n"
    assert write_design(marked, {"format": 2}) == "\ufeff# mine\nformat = 2\n"


def test_a_new_key_stands_before_the_notes_of_the_next_table() -> None:
    text = '[fabrics.A]\nname = "oyster"\n\n# The recipe.\n[recipes.moon]\nkind = "circle cut both ways"\n'
    changed = write_design(text, {"fabrics.A.role": "background"})
    assert changed == text.replace('"oyster"\n', '"oyster"\nrole = "background"\n')


@pytest.mark.parametrize("first", ["[fabrics.A]", "[[borders]]"])
def test_a_new_key_of_the_whole_file_stands_before_the_notes_of_its_first_table(first: str) -> None:
    text = f'# A quilt.\ntitle = "Moons"\nunits = "inch" # not metric\n\n# What is first.\n{first}\nname = "oyster"\n'
    changed = write_design(text, {"size": "queen"})
    assert changed == text.replace("# not metric\n", '# not metric\nsize = "queen"\n')
