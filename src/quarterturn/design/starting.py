"""The file that a new design begins with."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design.migrations import newest
from quarterturn.design.text import quote_text
from quarterturn.measure import Units

PLACEHOLDERS = {
    "maker": "Your name",
    "contact": "Where to write about mistakes",
    "about": "A sentence about the quilt for the cover.",
}
"""What a new file says until its designer does; none of it may be printed."""


_TURNS = ((2, 3), (1, 0))
"""Turns of the four quarters of a circle."""


def rounds_map(rows: int, columns: int, outer: str = "a", inner: str = "b") -> str:
    """Return a map of circles within a ring of cut ones, as the starter has it: each code of a string in turn.

    Rows and columns are even, four at least: so every circle inside is whole.
    """
    assert rows % 2 == columns % 2 == 0, "circles are two units wide"
    assert min(rows, columns) >= 4, "there is room for a circle within the ring"
    return "".join(f"{' '.join(line)}\n" for line in _rounds(rows, columns, outer, inner))


def _rounds(rows: int, columns: int, outer: str, inner: str) -> Iterator[list[str]]:
    for row in range(rows):
        words = []
        for column in range(columns):
            ring = row in (0, rows - 1) or column in (0, columns - 1)
            codes, r, c = (outer, row, column) if ring else (inner, row - 1, column - 1)
            words.append(f"{codes[(r // 2 + c // 2) % len(codes)]}{_TURNS[r % 2][c % 2]}")
        yield words


def starter(title: str, units: Units) -> str:
    """Return the text of a small design that works, with a comment on each thing to change."""
    name = "".join(c if c.isprintable() else " " for c in title).strip()[:120] or "Untitled"
    metric = units is Units.METRIC
    return _TEXT.format(
        format=newest(),
        title=quote_text(name),
        units=units.value,
        finished=quote_text("100 mm" if metric else '4"'),
        diameter=quote_text("160 mm" if metric else '6 1/2"'),
        border=quote_text("6 cm" if metric else '2 1/2"'),
        bare="millimetres" if metric else "inches",
        map=rounds_map(6, 6),
        **PLACEHOLDERS,
    )


_TEXT = """\
# A quilt design. Lines that begin with # are notes to yourself.
format = {format}
title = {title}
maker = "{maker}"
number = "1" # shops order by it
version = "0.1"
date = "2026-01-01" # of this version
contact = "{contact}"
about = "{about}"
units = "{units}" # a bare number is in {bare}; '4 1/4"' and "11 cm" can be written anywhere

# Fabrics, by the letter that the booklet prints.
[fabrics.A]
name = "cream"
role = "background"
colour = "#f3ead9"

[fabrics.B]
name = "teal"
role = "circles and border"
colour = "#1f5f66"

[fabrics.C]
name = "marigold"
role = "circles and binding"
colour = "#dd9c3c"

# How one square becomes four units: fuse a circle, stitch its edge, cut the square both ways.
[recipes.round]
kind = "circle cut both ways"
finished = {finished} # side of a unit, sewn; the size of the square follows
shape = {{ diameter = {diameter} }} # or {{ radius = … }}, or {{ flow = true }} for paths that run on
curve = "sewn true" # or "as drawn"

# The recipe in cloth. The code is what the map writes.
[colourways.a]
recipe = "round"
ground = "A"
shape = "B"

[colourways.b]
recipe = "round"
ground = "B"
shape = "C"

# A line for each row. a2 is colourway a, turned twice: 0 has the middle of the circle at the
# top left, 1 top right, 2 bottom right, 3 bottom left.
[setting]
kind = "straight"
map = \"\"\"
{map}\"\"\"

[[borders]]
fabric = "B"
width = {border} # finished

[binding]
fabric = "C"

[backing]
fabric = "A"
"""
