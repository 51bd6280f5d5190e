"""Ways to spoil the shape of a recipe of any outline: what is wrong, the shape, and what the reader must find."""

from __future__ import annotations

from collections.abc import Iterator

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
        "unknown-outline recipes.round.shape.outline",
    ),
)

_SHARED = "path = 'M 0 0 H 4 V 4 L 2 1 L 0 4 Z'"
_OWN_CASES: tuple[tuple[str, ...], ...] = (
    ("path =", "a path that is none", "path = 'M 0 0 L 1 x Z'", "bad-path outlines.fox.path"),
    (
        "path =",
        "a path without end",
        'path = """\nM 0 0\n' + "l 1 1\n" * 17_000 + '"""',
        "bad-path outlines.fox.path",
    ),
    ("path =", "an open path", "path = 'M 0 0 L 4 0 L 4 4'", "outline-unsound outlines.fox.path"),
    (
        "path =",
        "a path that crosses itself",
        "path = 'M 0 0 L 4 4 H 0 L 4 0 Z'",
        "outline-unsound outlines.fox.path",
    ),
    (
        "path =",
        "a path with a hole",
        "path = 'M 0 0 h 4 v 4z m 3 1 v 1 h -1 z'",
        "outline-unsound outlines.fox.path",
    ),
    ("path =", "a path of nothing", "path = ''", "outline-unsound outlines.fox.path"),
    (
        "path =",
        "a path too small to be in inches",
        "path = 'M 0 0 H .04 V .04 L .02 .01 L 0 .04 Z'",
        "size-out-of-range outlines.fox.path",
    ),
    ("path =", "a path that is a number", "path = 4", "wrong-type outlines.fox.path"),
    ("[outlines.fox]", "an outline without a path", "width = 4", "missing-key outlines.fox.path"),
    ("width = 'w", "an outline of no width", f"width = 'wide'\n{_SHARED}", "bad-length outlines.fox.width"),
    (
        "[outlines.heart]",
        "a heart of one's own",
        f"{_SHARED}\n\n[outlines.heart]\n{_SHARED}",
        "outline-taken outlines.heart",
    ),
    (
        "[outlines.fox]",
        "outlines without number",
        _SHARED + "".join(f"\n\n[outlines.f{n}]\n{_SHARED}" for n in range(60)),
        "too-many outlines",
    ),
    (
        "shape =",
        "an outline that leaves a quarter of its box empty",
        "path = 'M 0 0 H 2 V 2 H 4 V 4 H 0 Z'",
        "shape-vanishes recipes.round.shape",
    ),
    (
        "shape =",
        "an outline whose edge meets the seams where they cross",
        "path = 'M 0 0 H 4 V 4 L 2 2 L 1 4 H 0 Z'",
        "shape-through-corner recipes.round.shape",
    ),
    (
        "shape =",
        "an outline too wide for its units",
        f"width = 11\n{_SHARED}",
        "shape-too-large recipes.round.shape",
    ),
)
"""The line of the finding, what is wrong, the table of the outline that the recipe uses, and what must be found."""


def own_cases(circle: str) -> Iterator[tuple[str, ...]]:
    """Return for each case the line of the finding, what is wrong, what is exchanged, and what must be found.

    `circle` is the recipe of a circle that makes place for that of the outline.
    """
    fox = circle.replace("circle cut", "shape cut").replace("diameter = '7\"'", 'outline = "fox"')
    for line, what, table, *found in _OWN_CASES:
        new = f"[outlines.fox]\n{table}\n\n[recipes.round]\n{fox}"
        yield line, what, f"[recipes.round]\n{circle}", new, *found


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
