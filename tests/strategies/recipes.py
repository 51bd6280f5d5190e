"""Recipes of any shapes and cuts that can be made: those that the reader finds nothing wrong with."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import assume
from hypothesis import strategies as st

from quarterturn.design import RING, Curve, Cut, DrawnOutline, Recipe, ShapeOn
from quarterturn.design.cuts import CUT_WORDS, are_apart, cuts_of_word, pieces_of
from quarterturn.design.fitting import check_fit
from quarterturn.design.notes import Notes
from quarterturn.design.soundness import fitted_and_width, sound_path
from quarterturn.geometry import OUTLINES, Path, read_path_data
from quarterturn.measure import Length, inches

SEAM = inches(0, 1, 4)
NOTHING = Fraction(0)


def eighths(low: int, high: int) -> st.SearchStrategy[Length]:
    """Return lengths from `low` to `high` inches in steps of an eighth."""
    return st.integers(8 * low, 8 * high).map(lambda step: Fraction(step, 8))


def _own(data: str) -> Path:
    unit, _ = fitted_and_width(sound_path(read_path_data(data)))
    return unit


OWN = {
    "tulip": _own("M 0 0 C -2 1 -2 4 -1.6 5 L -0.8 3.8 L 0 5.4 L 0.8 3.8 L 1.6 5 C 2 4 2 1 0 0 Z"),
    "flag": _own("M 0 0 H 4 L 3 1.5 L 4 3 H 0 Z"),
    "slant": _own("M 0 0 L 3 0 L 4 2 L 1 2 Z"),
    "comma": _own("M 0 0 C 3 -1 4 3 1 4 C 2 3 1 2 0 2 Z"),
}
"""Outlines of one's own: with an upright mirror line, a level one, a half turn alone, and no symmetry."""


@st.composite
def shapes(draw: st.DrawFn, *, own: bool = True) -> ShapeOn:
    """A shape somewhere about the middle, turned by steps of 15°, of one of two parts; `own` outlines too."""
    width = draw(eighths(1, 4))
    name = draw(st.sampled_from([*OUTLINES, RING, *(OWN if own else ())]))
    inner = width / 2 if name == RING else NOTHING
    size = DrawnOutline(name, width, 0, 7 if name == "scallop" else 0, inner, OWN.get(name))
    degrees = Fraction(draw(st.integers(-12, 12)) * 15)
    return ShapeOn(
        draw(st.sampled_from(["petal", "moon"])), size, draw(eighths(-2, 2)), draw(eighths(-2, 2)), degrees
    )


cuts_anywhere = st.builds(Cut, eighths(-2, 2), eighths(-2, 2), eighths(-2, 2), eighths(-2, 2)).filter(
    lambda cut: (cut.start_x, cut.start_y) != (cut.end_x, cut.end_y)
)


def recipe_of(
    width: Length,
    height: Length,
    trim: Length,
    cuts: str | tuple[Cut, ...],
    on: tuple[ShapeOn, ...],
    curve: Curve,
) -> Recipe:
    """Return a recipe from its numbers, its finished sizes worked out."""
    made = cuts_of_word(cuts, width, height) if isinstance(cuts, str) else cuts
    across, down = pieces_of(made) or (1, 1)
    finished = (width - trim) / across - 2 * SEAM, (height - trim) / down - 2 * SEAM
    return Recipe("any", width, height, *finished, trim, trim, made, on, curve)


@st.composite
def recipes(draw: st.DrawFn, *, halved: bool = False, own: bool = True) -> Recipe:
    """A recipe that can be made, of one to three shapes, its cuts by a word or one or two lines anywhere.

    `halved` are those whose halves can be rejoined to rectangles; `own` lets outlines of one's own take part.
    """
    words = ["down", "across", "one diagonal"] if halved else list(CUT_WORDS)
    lines = st.lists(cuts_anywhere, min_size=1, max_size=1 if halved else 2).map(tuple)
    width = draw(eighths(8, 12))
    height = draw(st.just(width) | eighths(8, 12))
    recipe = recipe_of(
        width,
        height,
        draw(st.sampled_from([NOTHING, inches(0, 1, 2)])),
        draw(st.sampled_from(words) | lines),
        tuple(draw(st.lists(shapes(own=own), min_size=1, max_size=3))),
        draw(st.sampled_from(Curve)),
    )
    notes = Notes()
    assume(are_apart(recipe.cuts, "cuts", notes))
    check_fit(recipe, SEAM, notes)
    assume(not notes.findings)
    return recipe
