"""Small designs that tests share, in the designer's own words, and the way from their text to a pattern."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from quarterturn.design import Cell, Design, Map, StraightSet, read_design
from quarterturn.pipeline import make_pattern
from quarterturn.proof import Pattern

ROUNDS = """
format = 1
title = "Two Rounds"
maker = "Isolde Marram"
units = "inch"
number = "T-1"
version = "1.0"
date = "2026-11-25"
contact = "corrections@marram.example"
about = "A round of each colour."

[fabrics.A]
name = "oyster"
role = "background"
colour = "#efe6d8"

[fabrics.B]
name = "ink"
role = "circles"
colour = "#22304a"

[fabrics.C]
name = "brick"
role = "border"
colour = "#9c4a35"

[recipes.round]
kind = "circle cut both ways"
finished = '2"'
shape = { flow = true }
curve = "as drawn"

[colourways.a]
recipe = "round"
ground = "A"
shape = "B"

[colourways.b]
recipe = "round"
ground = "B"
shape = "A"

[setting]
kind = "straight"
map = '''
a2 a3 b2 b3 a2
a1 a0 b1 b0 a1
b0 b1 a0 a2 b1
'''

[[borders]]
fabric = "C"
width = '1 1/2"'
first = "sides"

[binding]
fabric = "B"

[backing]
fabric = "A"
"""
"""Fifteen units of two colourways in three rows of five, trimmed, with one border."""


ONE_UPRIGHT = ROUNDS.replace(
    'name = "brick"', 'name = "brick"\nupright = true\ndirection = "one-way"'
).replace('ground = "B"\nshape = "A"', 'ground = "B"\nshape = "C"')
"""Two colourways of one recipe, the print of one of which must stand upright: the reader makes a copy of the recipe."""

HEARTS = (
    ROUNDS[: ROUNDS.index("[recipes.round]")]
    + """
[recipes.heart]
kind = "shape cut both ways"
finished = '2"'
shape = { outline = "heart", width = '3 3/4"' }
curve = "sewn true"

[recipes.leaf]
kind = "shape cut both ways"
finished = '2"'
shape = { outline = "leaf", width = '2 1/4"', turn = 1 }

[colourways.a]
recipe = "heart"
ground = "A"
shape = "B"

[colourways.c]
recipe = "leaf"
ground = "B"
shape = "A"

[setting]
kind = "straight"
map = '''
a-tl0 a-tr0 c-tl0 c-tr0 a-tl0
a-bl0 a-br0 c-tr2 c-tl2 a-tl1
'''

"""
    + ROUNDS[ROUNDS.index("[[borders]]") :]
)
"""Ten units: a whole heart and two quarters more, and a whole leaf, whose quarters are of two kinds."""


@dataclass(frozen=True, slots=True)
class Changed:
    """A text with some words exchanged; each word must be there."""

    text: str

    def with_(self, before: str, after: str) -> Changed:
        """Return the text with the first `before` made `after`."""
        assert before in self.text, before
        return Changed(self.text.replace(before, after, 1))


def with_setting(tables: str) -> str:
    """Return `ROUNDS` with other tables in place of its setting and its border."""
    start, end = ROUNDS.index("[setting]"), ROUNDS.index("[binding]")
    return f"{ROUNDS[:start]}{tables}\n{ROUNDS[end:]}"


def straight(design: Design) -> StraightSet:
    """Return the setting of a design that is laid in rows and columns."""
    assert isinstance(design.setting, StraightSet)
    return design.setting


def units_in(rows: Map) -> list[list[Cell]]:
    """Return the cells of a map that holds units alone."""
    return [[cell for cell in row if isinstance(cell, Cell)] for row in rows]


def design_of(text: str) -> Design:
    """Return the design of a text that has no faults."""
    reading = read_design(text)
    assert reading.design is not None, reading.findings
    return reading.design


def quay_with_borders(way: str) -> str:
    """Return an example with long borders, cut in a way."""
    text = (Path(__file__).parents[1] / "examples" / "lanterns-on-the-quay.toml").read_text("utf-8")
    return text.replace("[making]\n", f'[making]\nborders = "{way}"\n')


def pattern_of(text: str) -> Pattern:
    """Return the pattern of a text that has no faults."""
    return make_pattern(design_of(text))
