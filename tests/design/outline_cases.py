"""Ways to spoil the shape of a recipe of any outline: what is wrong, the shape, and what the reader must find."""

from __future__ import annotations

OUTLINE_CASES: tuple[tuple[str, ...], ...] = (
    ("a heart without a width", 'outline = "heart"', "shape-unclear recipes.round.shape"),
    ("a heart with a radius", 'outline = "heart", radius = 2', "shape-unclear recipes.round.shape"),
    (
        "a heart with a length that is none",
        'outline = "heart", width = "wide"',
        "bad-length recipes.round.shape.width",
    ),
    (
        "a heart turned too far",
        'outline = "heart", width = 5, turn = 4',
        "unknown-turn recipes.round.shape.turn",
    ),
    (
        "a scallop of two lobes",
        'outline = "scallop", width = 5, lobes = 2',
        "count-out-of-range recipes.round.shape.lobes",
    ),
    (
        "a heart that is too wide",
        'outline = "heart", width = 9.5',
        "shape-too-large recipes.round.shape",
    ),
    ("a leaf that is too high", 'outline = "leaf", width = 6', "shape-too-large recipes.round.shape"),
    (
        "a drop lost in the seams",
        'outline = "drop", width = 0.5',
        "shape-vanishes recipes.round.shape",
    ),
    (
        "an outline that is none",
        'outline = "star", width = 5',
        "unknown-word recipes.round.shape.outline",
    ),
)

QUARTER_CASES: tuple[tuple[str, ...], ...] = (
    ("a1 a-xl0", "an unknown quarter", "a1 a0 a1", "a1 a-xl0 a1", "unknown-quarter setting.map.1"),
    ("a1 a-tl7", "an unknown turn of a quarter", "a1 a0 a1", "a1 a-tl7 a1", "unknown-turn setting.map.1"),
    (
        "a1 a-tl0",
        "a quarter to be mirrored",
        'a1 a0 a1\n"""',
        'a1 a-tl0 a1\n"""\nsymmetry = "mirror"',
        "quarter-mirrored setting.map.1",
    ),
)
"""The line on which the finding is, what is wrong, what is exchanged, and what must be found."""
