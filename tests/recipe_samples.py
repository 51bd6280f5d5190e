"""Small quilts of recipes of any shapes and cuts, in the designer's own words, that tests share."""

from __future__ import annotations

from tests.samples import ROUNDS

_FABRICS = ROUNDS[: ROUNDS.index("[recipes.round]")]
_REST = ROUNDS[ROUNDS.index("[[borders]]") :]


def quilt_of(recipes: str, rows: str) -> str:
    """Return a quilt of three fabrics, A, B and C, with one border."""
    setting = f"[setting]\nkind = \"straight\"\nmap = '''\n{rows}\n'''\n\n"
    return f"{_FABRICS}{recipes}\n{setting}{_REST}"


RIPPLES = quilt_of(
    """
[recipes.ripple]
kind = "shapes cut"
start = '9 1/2"'
finished = '4 1/4"'
trim = '0"'
cuts = "both ways"
[[recipes.ripple.shapes]]
name = "outer"
width = '7"'
[[recipes.ripple.shapes]]
name = "inner"
width = '4"'
underlap = '1/2"'

[colourways.a]
recipe = "ripple"
ground = "A"
shapes = { outer = "B", inner = "C" }
""",
    "a0 a1 a2\na2 a3 a0",
)
"""Six units of a disc on a disc; eight are made."""

PONDS = quilt_of(
    """
[recipes.pond]
kind = "shapes cut"
start = '9 1/2"'
trim = '1/2"'
cuts = "both ways"
[[recipes.pond.shapes]]
name = "ring"
outline = "ring"
width = '6"'
inner = '3"'
at = ['1"', '1/2"']
[[recipes.pond.shapes]]
name = "lily"
outline = "heart"
width = '4"'
at = ['-1"', '-1"']
turn = 30

[colourways.a]
recipe = "pond"
ground = "A"
shapes = { ring = "B", lily = "C" }
""",
    "a-tl0 a-tr0\na-bl0 a-br0",
)
"""One master: a ring beside the middle, and a heart that lies partly on it."""

HEART_PAIR = """
[recipes.pair]
kind = "shapes cut"
start = '8 3/4"'
trim = '0"'
cuts = "one diagonal"
[[recipes.pair.shapes]]
name = "heart"
outline = "heart"
width = '3 1/2"'
at = ['-1 1/2"', '-1 1/2"']
turn = 135
[[recipes.pair.shapes]]
name = "heart"
outline = "heart"
width = '3 1/2"'
at = ['1 1/2"', '1 1/2"']
turn = 315

[recipes.gizzard]
kind = "halves rejoined"
of = "pair"

[colourways.a]
recipe = "pair"
ground = "A"
shapes = { heart = "B" }

[colourways.b]
recipe = "pair"
ground = "B"
shapes = { heart = "A" }

[colourways.g]
recipe = "gizzard"
first = "a"
second = "b"
"""

GIZZARDS = quilt_of(HEART_PAIR, "g0 g1 g2\ng2 g3 g0")
"""Six blocks of two hearts each, rejoined from twelve halves of two colourways."""

LONE_HEARTS = quilt_of(
    HEART_PAIR[: HEART_PAIR.rindex("[[recipes.pair.shapes]]")].replace("trim = '0\"'", "trim = '1/2\"'")
    + HEART_PAIR[HEART_PAIR.index("[recipes.gizzard]") :].replace(
        'of = "pair"', 'of = "pair"\nfinished = \'7"\''
    ),
    "g-lh0 g-rh1\ng-lh2 g-lh3",
)
"""Four blocks with half a heart in each: the halves are of two kinds, and the blocks are trimmed."""

MOON = """
[recipes.moon]
kind = "shapes cut"
width = '9 1/2"'
height = '5"'
trim = '1/2"'
cuts = "down"
[[recipes.moon.shapes]]
name = "moon"
width = '3"'
at = ['0"', '1/4"']

[colourways.a]
recipe = "moon"
ground = "A"
shapes = { moon = "B" }
"""

HALVES = quilt_of(MOON, "a-lh0 a-rh0 a-lh0")
"""Three halves of two rectangles, trimmed from the cut and from the crease across; two halves are left over."""

MOONS = quilt_of(
    MOON
    + """
[recipes.full]
kind = "halves rejoined"
of = "moon"

[colourways.b]
recipe = "moon"
ground = "C"
shapes = { moon = "B" }

[colourways.m]
recipe = "full"
first = "a"
second = "b"
""",
    "m-lh0 m-rh0\nm-lh0 m-lh2",
)
"""Four blocks of two halves each, joined along a vertical seam."""

WHOLE = quilt_of(
    """
[recipes.posy]
kind = "shapes cut"
start = '6 1/2"'
trim = '1/2"'
cuts = "none"
[[recipes.posy.shapes]]
name = "leaf"
outline = "leaf"
width = '1 1/2"'
at = ['-1"', '1/2"']
turn = 45
[[recipes.posy.shapes]]
name = "leaf"
outline = "leaf"
width = '1 1/2"'
at = ['1"', '1/2"']
turn = 315
[[recipes.posy.shapes]]
name = "bloom"
outline = "scallop"
lobes = 6
width = '2"'
at = ['0"', '-3/4"']

[colourways.a]
recipe = "posy"
ground = "A"
shapes = { leaf = "B", bloom = "C" }
""",
    "a0 a0\na2 a0",
)
"""Four squares that are not cut, with two leaves and a bloom that lies on them."""

BANDS = quilt_of(
    """
[recipes.band]
kind = "shapes cut"
width = '14"'
height = '5"'
trim = '1/2"'
cuts = [[['-2 1/4"', '-2 1/2"'], ['-2 1/4"', '2 1/2"']], [['2 1/4"', '-2 1/2"'], ['2 1/4"', '2 1/2"']]]
[[recipes.band.shapes]]
name = "dot"
width = '3"'
[[recipes.band.shapes]]
name = "bar"
outline = "rounded square"
width = '2"'
at = ['2 1/4"', '0"']

[colourways.a]
recipe = "band"
ground = "A"
shapes = { dot = "B", bar = "C" }
""",
    "a-pa0 a-pb0 a-pc0",
)
"""One rectangle cut by two drawn lines in three squares."""

SAMPLES = {
    "ripples": RIPPLES,
    "ponds": PONDS,
    "gizzards": GIZZARDS,
    "lone hearts": LONE_HEARTS,
    "halves": HALVES,
    "moons": MOONS,
    "whole": WHOLE,
    "bands": BANDS,
}
