"""Sections laid beside the whole quilt."""

from __future__ import annotations

import pytest

from quarterturn.design import LineSet, SectionCell, StraightSet, read_design
from quarterturn.studio.acts import RefusedError, do
from quarterturn.studio.acts.beside import LayBeside, Side
from quarterturn.studio.acts.putting import Put
from quarterturn.studio.acts.sections import AddSection
from quarterturn.studio.stages import Stages
from tests.samples import ROUNDS

QUILT = ROUNDS + "\n"


def added(text: str, name: str, side: Side, *, columns: int = 4, rows: int = 1) -> str:
    act = AddSection(section=name, unit="a", fabric="A", rows=rows, columns=columns, beside=side, anyway=True)
    return do(act, text, Stages()).made.text


def line_of(text: str) -> tuple[list[str], bool]:
    """Return the names of the sections of which the whole is a line, and whether they lie one below another."""
    design = read_design(text).design
    assert design
    assert isinstance(design.setting, LineSet)
    names = [part.section for part in design.setting.parts if isinstance(part, SectionCell)]
    assert len(names) == len(design.setting.parts)
    return names, design.setting.below


@pytest.mark.parametrize(
    ("side", "names", "below"),
    [
        ("above", ["newer", "body"], True),
        ("below", ["body", "newer"], True),
        ("left", ["newer", "body"], False),
        ("right", ["body", "newer"], False),
    ],
)
def test_the_whole_becomes_a_section_and_a_line_is_laid_of_both(
    side: Side, names: list[str], below: bool
) -> None:
    text = added(QUILT, "newer", side)
    assert line_of(text) == (names, below)
    before, after = read_design(QUILT).design, read_design(text).design
    assert before
    assert after
    sections = {section.name: section.setting for section in after.sections}
    assert sections["body"] == before.setting
    assert isinstance(sections["newer"], StraightSet)
    assert after.borders == before.borders


def test_one_more_is_laid_in_the_same_line() -> None:
    text = added(added(QUILT, "foot", "below"), "head", "above")
    assert line_of(text) == (["head", "body", "foot"], True)


def test_across_a_line_the_line_becomes_a_section_under_a_free_name() -> None:
    text = added(added(QUILT, "foot", "below"), "wing", "right", columns=1, rows=4)
    assert line_of(text) == (["bodya", "wing"], False)


def test_a_section_that_stands_already_is_laid_again() -> None:
    text = added(QUILT, "foot", "below")
    again = do(LayBeside(section="foot", side="above"), text, Stages()).made.text
    assert line_of(again) == (["foot", "body", "foot"], True)


def test_notes_on_the_setting_go_with_it() -> None:
    text = added(QUILT.replace("[setting]", "# how the rounds lie\n[setting]"), "foot", "below")
    assert "# how the rounds lie\n[sections.body]" in text


def test_what_a_size_changes_of_the_whole_it_changes_of_the_section() -> None:
    sized = do(Put(at="sizes.wall.changes", value={"setting.across": 1}), QUILT, Stages()).made.text
    text = added(sized, "foot", "below")
    assert '"sections.body.across" = 1' in text or "sections.body" in text.partition("[sizes")[2]


def test_a_section_that_there_is_not_is_refused() -> None:
    with pytest.raises(RefusedError, match="no section"):
        do(LayBeside(section="none", side="left"), QUILT, Stages())
