"""The file that a new design begins with."""

from __future__ import annotations

from quarterturn.design.migrations import newest
from quarterturn.design.text import quote_text
from quarterturn.measure import Units

PLACEHOLDERS = {
    "maker": "Your name",
    "contact": "Where to write about mistakes",
    "about": "A sentence about the quilt for the cover.",
}
"""What a new file says until its designer does; none of it may be printed."""


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
a2 a3 a2 a3 a2 a3
a1 b2 b3 b2 b3 a0
a2 b1 b0 b1 b0 a3
a1 b2 b3 b2 b3 a0
a2 b1 b0 b1 b0 a3
a1 a0 a1 a0 a1 a0
\"\"\"

[[borders]]
fabric = "B"
width = {border} # finished

[binding]
fabric = "C"

[backing]
fabric = "A"
"""
