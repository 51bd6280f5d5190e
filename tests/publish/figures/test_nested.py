"""The web with tracings at their places: it says which edge is which, and bears the lines that places are read off."""

from __future__ import annotations

from functools import cache

from quarterturn.proof import Pattern
from quarterturn.publish.figures.nested import nested_figures
from quarterturn.publish.sheet import Sheet, Text
from quarterturn.publish.wording import tell
from quarterturn.steps import Step, TraceNested
from tests.proof.rehearsal.test_web_faults import sample


@cache
def traced(name: str) -> tuple[Pattern, Step, TraceNested]:
    pattern = sample(name)
    for step in pattern.steps.steps:
        if isinstance(step.action, TraceNested):
            return pattern, step, step.action
    raise AssertionError("nothing is nested")


def lettering(sheet: Sheet) -> dict[str, Text]:
    return {mark.text: mark for mark in sheet.marks if isinstance(mark, Text)}


def test_the_roll_names_the_edges_that_places_are_measured_from() -> None:
    pattern, _, action = traced("nested")
    sheet = next(iter(nested_figures(pattern, action)))
    marks = lettering(sheet)
    cut, left = marks["cut end"], marks["left edge of the web"]
    numbers = [marks[text] for text in ('0"', '6"', '12"') if text in marks]
    assert len(numbers) > 1
    assert all(number.at.real > cut.at.real and number.at.imag < left.at.imag for number in numbers)
    assert left.at.imag < sheet.height


def test_the_numbers_of_the_grid_grow_away_from_the_cut_end() -> None:
    pattern, _, action = traced("nested")
    marks = lettering(next(iter(nested_figures(pattern, action))))
    assert marks["cut end"].at.real < marks['0"'].at.real < marks['6"'].at.real


def test_the_web_is_laid_as_the_list_measures_it() -> None:
    pattern, step, _ = traced("nested")
    assert "Lay the web paper side up, its cut end away from you." in tell(step, pattern).sentences[0]
    pattern, step, _ = traced("nested on sheets")
    assert "cut end" not in " ".join(tell(step, pattern).sentences)
