"""Ways to spoil recipes of any shapes and cuts, and those that rejoin halves: what is exchanged, what must be found."""

from __future__ import annotations

RIPPLES = '''\
format = 1
title = "Ripples and Hearts"
units = "inch"

[fabrics.A]
name = "oyster"
colour = "#efe6d8"

[fabrics.B]
name = "ink"
colour = "#22304a"
direction = "one-way"

[fabrics.C]
name = "brick"
colour = "#9c4a35"

[recipes.ripple]
kind = "shapes cut"
start = '9 1/2"'
finished = '4"'
cuts = "both ways"
curve = "sewn true"

[[recipes.ripple.shapes]]
name = "outer"
outline = "ring"
width = '7"'
inner = '4"'

[[recipes.ripple.shapes]]
name = "heart"
outline = "heart"
width = '3"'
at = ['1"', '-1/2"']
turn = 22.5
underlap = '1/8"'

[recipes.pair]
kind = "shapes cut"
start = '8 3/4"'
trim = 0
cuts = [[['-4"', '-4"'], ['4"', '4"']]]

[[recipes.pair.shapes]]
name = "heart"
outline = "heart"
width = '3 1/2"'
turn = 135

[recipes.gizzard]
kind = "halves rejoined"
of = "pair"

[colourways.a]
recipe = "ripple"
ground = "A"
shapes = { outer = "B", heart = "C" }

[colourways.b]
recipe = "pair"
ground = "A"
shapes = { heart = "B" }

[colourways.c]
recipe = "pair"
ground = "B"
shapes = { heart = "A" }

[colourways.g]
recipe = "gizzard"
first = "b"
second = "c"

[setting]
kind = "straight"
map = """
g0 g1
g3 g2
"""

[binding]
fabric = "B"

[backing]
fabric = "A"
'''
"""One recipe of two shapes, one cut corner to corner along a line, and one that rejoins its halves."""

RECIPE_CASES: tuple[tuple[str, str, str, str | None, str], ...] = (
    (
        "no size at all",
        "start = '9 1/2\"'\nfinished = '4\"'\n",
        "",
        "[recipes.ripple]",
        "sums-missing recipes.ripple",
    ),
    (
        "a side and a width",
        "start = '9 1/2\"'",
        "start = 9.5\nwidth = 9.5",
        "width =",
        "sums-disagree recipes.ripple.width",
    ),
    (
        "a width without a height",
        "start = '9 1/2\"'",
        "width = 9.5",
        "[recipes.ripple]",
        "missing-key recipes.ripple.height",
    ),
    (
        "a start too small",
        "start = '9 1/2\"'",
        "start = 8",
        "[recipes.ripple]",
        "start-too-small recipes.ripple",
    ),
    (
        "a start of seams",
        "finished = '4\"'\ncuts",
        "trim = 9\ncuts",
        "[recipes.ripple]",
        "start-too-small recipes.ripple",
    ),
    (
        "sums that disagree",
        "finished = '4\"'\ncuts",
        "finished = 4\ntrim = 1\ncuts",
        "[recipes.ripple]",
        "sums-disagree recipes.ripple",
    ),
    (
        "a finished size of halves",
        "trim = 0\n",
        "finished = 4\n",
        None,
        "sums-disagree recipes.pair.finished",
    ),
    (
        "no start of what is cut slanting",
        "start = '8 3/4\"'\n",
        "",
        "[recipes.pair]",
        "sums-missing recipes.pair",
    ),
    ("no cuts", 'cuts = "both ways"\n', "", "[recipes.ripple]", "missing-key recipes.ripple.cuts"),
    ("cuts by a word that is none", '"both ways"', '"both way"', None, "unknown-word recipes.ripple.cuts"),
    ("cuts of a number", '"both ways"', "3", None, "wrong-type recipes.ripple.cuts"),
    (
        "a cut of one point",
        "['-4\"', '-4\"'], ['4\"', '4\"']",
        "[1, 1]",
        None,
        "wrong-type recipes.pair.cuts.0",
    ),
    ("a point of one length", "['4\"', '4\"']]]", "['4\"']]]", None, "wrong-type recipes.pair.cuts.0.1"),
    (
        "a point of a length that is none",
        "['4\"', '4\"']]]",
        "['4\"', 'x']]]",
        None,
        "bad-length recipes.pair.cuts.0.1.1",
    ),
    (
        "a point a mile off",
        "['4\"', '4\"']]]",
        "['4\"', 900]]]",
        None,
        "size-out-of-range recipes.pair.cuts.0.1.1",
    ),
    (
        "a cut from a point to itself",
        "['4\"', '4\"']]]",
        "[-4, -4]]]",
        None,
        "cut-unclear recipes.pair.cuts.0",
    ),
    ("one cut twice", "'4\"']]]", "'4\"']], [[0, 0], [1, 1]]]", None, "cut-unclear recipes.pair.cuts.1"),
    (
        "a cut beside the master",
        "[['-4\"', '-4\"'], ['4\"', '4\"']]",
        "[[9, 0], [9, 1]]",
        None,
        "cut-misses recipes.pair.cuts.0",
    ),
    (
        "a cut of what is trimmed off",
        "trim = 0\ncuts = [[['-4\"', '-4\"'], ['4\"', '4\"']]]",
        "trim = 1\ncuts = [[[4, 0], [4, 1]]]",
        "cuts = [[[4",
        "cut-misses recipes.pair.cuts.0",
    ),
    (
        "cuts without end",
        '"both ways"',
        "[[[0, 0], [1, 1]],[[0, 0], [1, 1]],[[0, 0], [1, 1]],[[0, 0], [1, 1]],[[0, 0], [1, 1]],[[0, 0], [1, 1]],]",
        None,
        "too-many recipes.ripple.cuts",
    ),
    (
        "a sliver",
        "[['-4\"', '-4\"'], ['4\"', '4\"']]",
        "[[4, -4], [4, 4]]",
        None,
        "piece-too-small recipes.pair.cuts",
    ),
    (
        "three directions of what is sewn true",
        'finished = \'4"\'\ncuts = "both ways"',
        "cuts = [[[0, 0], [0, 1]], [[0, 0], [1, 0]], [[0, 0], [1, 1]]]",
        "cuts = [[[0",
        "cut-unclear recipes.ripple.cuts",
    ),
    (
        "a shape without a name",
        'name = "outer"\n',
        "",
        "[[recipes.ripple.shapes]]",
        "missing-key recipes.ripple.shapes.0.name",
    ),
    (
        "a shape called ground",
        'name = "outer"',
        'name = "ground"',
        None,
        "bad-text recipes.ripple.shapes.0.name",
    ),
    ("a shape with a slash", 'name = "outer"', 'name = "a/b"', None, "bad-text recipes.ripple.shapes.0.name"),
    (
        "a shape with a long name",
        'name = "outer"',
        'name = "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"',
        None,
        "bad-text recipes.ripple.shapes.0.name",
    ),
    (
        "a shape without a width",
        "width = '7\"'\n",
        "",
        "[[recipes.ripple.shapes]]",
        "missing-key recipes.ripple.shapes.0.width",
    ),
    (
        "a ring without a hole",
        "inner = '4\"'\n",
        "",
        "[[recipes.ripple.shapes]]",
        "missing-key recipes.ripple.shapes.0.inner",
    ),
    (
        "a ring that is all hole",
        "inner = '4\"'",
        "inner = 7",
        None,
        "shape-unclear recipes.ripple.shapes.0.inner",
    ),
    ("a heart with a hole", "turn = 22.5", "inner = 1", None, "shape-unclear recipes.ripple.shapes.1.inner"),
    (
        "lobes of a heart",
        "turn = 22.5",
        "lobes = 5",
        "#2 [[recipes.ripple.shapes]]",
        "shape-unclear recipes.ripple.shapes.1",
    ),
    (
        "a shape turned too far",
        "turn = 22.5",
        "turn = 361",
        None,
        "unknown-turn recipes.ripple.shapes.1.turn",
    ),
    (
        "a place of one length",
        "at = ['1\"', '-1/2\"']",
        "at = 1",
        None,
        "wrong-type recipes.ripple.shapes.1.at",
    ),
    (
        "a shape over the edge",
        "at = ['1\"', '-1/2\"']",
        "at = [3, 0]",
        "#2 [[recipes.ripple.shapes]]",
        "shape-outside recipes.ripple.shapes.1",
    ),
    (
        "a shape lost in the seams",
        "width = '3\"'\nat",
        "width = '1/8\"'\nat",
        "#2 [[recipes.ripple.shapes]]",
        "shape-vanishes recipes.ripple.shapes.1",
    ),
    (
        "a shape that nobody sees",
        "outline = \"ring\"\nwidth = '7\"'\ninner = '4\"'",
        "width = '1\"'\nat = ['1\"', '-1/2\"']",
        "[[recipes.ripple.shapes]]",
        "shape-hidden recipes.ripple.shapes.0",
    ),
    (
        "a shape of the short form",
        'cuts = "both ways"',
        'cuts = "both ways"\nshape = { width = 3 }',
        "shape =",
        "key-unfit recipes.ripple.shape",
    ),
    (
        "a recipe called as a shape",
        "[recipes.gizzard]",
        '[recipes."ripple outer"]\nkind = "circle cut both ways"\nfinished = 4\n'
        "shape = { flow = true }\n\n[recipes.gizzard]",
        None,
        'bad-text recipes."ripple outer"',
    ),
    ("halves of nothing", 'of = "pair"\n', "", "[recipes.gizzard]", "missing-key recipes.gizzard.of"),
    ("halves of no recipe", 'of = "pair"', 'of = "pear"', None, "unknown-recipe recipes.gizzard.of"),
    ("halves of halves", 'of = "pair"', 'of = "gizzard"', None, "not-halved recipes.gizzard.of"),
    ("halves of quarters", 'of = "pair"', 'of = "ripple"', None, "not-halved recipes.gizzard.of"),
    (
        "halves that start as something",
        'of = "pair"',
        'of = "pair"\nstart = 9',
        "start = 9",
        "key-unfit recipes.gizzard.start",
    ),
    (
        "a block too large",
        'of = "pair"',
        'of = "pair"\nfinished = 8',
        "finished = 8",
        "start-too-small recipes.gizzard.finished",
    ),
    (
        "a block of two sizes",
        'of = "pair"',
        'of = "pair"\nfinished = 7\ntrim = 1',
        "trim = 1",
        "sums-disagree recipes.gizzard.trim",
    ),
    (
        "a colourway without fabrics",
        'shapes = { outer = "B", heart = "C" }\n',
        "",
        "[colourways.a]",
        "missing-key colourways.a.shapes",
    ),
    ("a part without a fabric", 'outer = "B", heart', "heart", None, "missing-key colourways.a.shapes.outer"),
    (
        "a fabric without a part",
        'outer = "B"',
        'outer = "B", leaf = "B"',
        None,
        "part-unknown colourways.a.shapes.leaf",
    ),
    ("a part of no fabric", 'outer = "B"', 'outer = "Z"', None, "unknown-fabric colourways.a.shapes.outer"),
    (
        "one shape where there are parts",
        'shapes = { outer = "B", heart = "C" }',
        'shape = "B"',
        None,
        "key-unfit colourways.a.shape",
    ),
    ("half a block", 'second = "c"\n', "", "[colourways.g]", "missing-key colourways.g.second"),
    (
        "a block of no colourway",
        'second = "c"',
        'second = "z"',
        None,
        "unknown-colourway colourways.g.second",
    ),
    ("a block of one master", 'second = "c"', 'second = "b"', None, "self-rejoined colourways.g.second"),
    ("a block of other masters", 'second = "c"', 'second = "a"', None, "not-halved colourways.g.second"),
    (
        "the ground of a block",
        'second = "c"',
        'second = "c"\nground = "A"',
        "#4 ground =",
        "key-unfit colourways.g.ground",
    ),
)
"""What is wrong, what is exchanged, the line of the finding where that is another, and what must be found."""
