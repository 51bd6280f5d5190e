"""Small designs whose tops are more than a map of units, each with what another has not."""

from __future__ import annotations

from tests.samples import ROUNDS

HEAD = ROUNDS[: ROUNDS.index("[setting]")]
TAIL = """
[binding]
fabric = "B"

[backing]
fabric = "A"
"""


def quilt(setting: str) -> str:
    """Return the text of a design with the sections, the setting and the borders given."""
    return HEAD + setting + TAIL


def plain_on_point(rows: int, columns: int, side: str, extra: str = "") -> str:
    """Return a design of plain squares on point round a single coped unit that tells their side."""
    cells = "\n".join(" ".join(["A"] * columns) for _ in range(rows - 1))
    first = " ".join(["unit", *["A"] * (columns - 1)])
    return quilt(f"""
[sections.unit]
kind = "straight"
map = "a0"

[[sections.unit.borders]]
kind = "coping"
fabric = "B"
to = ['{side}', '{side}']

[setting]
kind = "on point"
map = '''
{first}
{cells}
'''
between = "A"
triangles = "B"
corners = "C"
{extra}
""")


ON_POINT = quilt("""
[setting]
kind = "on point"
map = '''
a0 b1
b3 a2
a1 b0
'''
between = '''
A
b2
'''
triangles = "A"
corners = "C"

[[borders]]
fabric = "C"
width = '1 1/2"'
""")
"""Three rows of two units with two places between them, and a border that no ruler measures."""

SASHED = quilt("""
[setting]
kind = "on point"
map = '''
a0 b1
b3 a2
a1 b0
b0 a3
'''
between = "A"
triangles = "B"
sashing = { fabric = "C", width = '1/2"', cornerstone = "A" }
""")
"""Four rows of two, sashed: one slanting row moves on, so that a triangle is set in."""

MITRED = ROUNDS.replace('first = "sides"', 'corners = "mitred"')
"""A straight map with a mitred border."""

PIECED = quilt("""
[sections.hedge]
kind = "straight"
map = '''
a0
b1
'''

[sections.verge]
kind = "straight"
map = '''
a0 b1 b2
'''

[setting]
kind = "straight"
map = '''
a0 b1 b0
a1 b1 b0
'''

[[borders]]
kind = "pieced"
sides = "hedge"
ends = "verge"
corners = "a0"
""")
"""A map of six units with a pieced border, units in its corners."""

PANELS = quilt("""
[recipes.leaf]
kind = "shape cut both ways"
finished = '2"'
shape = { outline = "leaf", width = '2 1/4"', turn = 1 }

[sections.vase]
kind = "panel"
fabric = "A"
width = '8"'
height = '12"'
motifs = [
  { recipe = "leaf", fabric = "B", at = ['3"', '4"'], turn = 45 },
  { recipe = "leaf", fabric = "C", at = ['3 1/2"', '4 1/2"'] },
  { recipe = "round", fabric = "C", at = ['5"', '9"'] },
]

[setting]
kind = "straight"
map = '''
vase0 vase2
'''
""")
"""A panel made twice, of three motifs, two of which overlap."""

NESTED = quilt("""
[sections.round]
kind = "straight"
map = '''
a0 a1
a3 a2
'''

[[sections.round.borders]]
fabric = "C"
width = '1"'
corners = "cornerstones"
cornerstone = "B"

[sections.medal]
kind = "on point"
map = '''
round0 round1
round2 round3
'''
between = "A"
triangles = "B"

[[sections.medal.borders]]
kind = "coping"
fabric = "A"
to = ['18"', '18"']

[[sections.medal.borders]]
fabric = "C"
width = '1"'
corners = "mitred"

[sections.vine]
kind = "on point"
map = '''
b0
b1
b2
b3
'''
triangles = "A"
corners = "C"

[[sections.vine.borders]]
kind = "coping"
fabric = "C"
to = ['3 1/2"', '20"']

[setting]
kind = "columns"
parts = ["vine", { fabric = "A", width = '2"' }, "medal", { fabric = "A", width = '2"' }, "vine2"]

[[borders]]
fabric = "B"
width = '2"'
corners = "mitred"
""")
"""A medallion on point between columns of units on point, framed and coped."""

SASHED_STRAIGHT = ROUNDS.replace(
    "'''\n\n[[borders]]", "'''\nsashing = { fabric = \"C\", width = '1/2\"' }\n\n[[borders]]"
)
"""The map of the sample quilt with strips that run through between its rows."""

TEXTS = {
    "on point": ON_POINT,
    "sashed on point": SASHED,
    "mitred": MITRED,
    "pieced": PIECED,
    "panels": PANELS,
    "nested": NESTED,
    "sashed straight": SASHED_STRAIGHT,
}
