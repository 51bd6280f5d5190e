"""Recipes of any shapes and cuts that can be made: those that the reader finds nothing wrong with."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import assume
from hypothesis import strategies as st

from quarterturn.design import RING, Curve, Cut, DrawnOutline, Recipe, ShapeOn
from quarterturn.design.cuts import CUT_WORDS, are_apart, cuts_of_word, pieces_of
from quarterturn.design.fitting import check_fit
from quarterturn.design.notes import Notes
from quarterturn.geometry import OUTLINES
from quarterturn.measure import Length, inches

SEAM = inches(0, 1, 4)
NOTHING = Fraction(0)


def eighths(low: int, high: int) -> st.SearchStrategy[Length]:
    """Return lengths from `low` to `high` inches in steps of an eighth."""
    return st.integers(8 * low, 8 * high).map(lambda step: Fraction(step, 8))


@st.composite
def shapes(draw: st.DrawFn) -> ShapeOn:
    """A shape somewhere about the middle, turned by steps of 15°, of one of two parts."""
    width = draw(eighths(1, 4))
    name = draw(st.sampled_from([*OUTLINES, RING]))
    inner = width / 2 if name == RING else NOTHING
    size = DrawnOutline(name, width, 0, 7 if name == "scallop" else 0, inner)
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
def recipes(draw: st.DrawFn, *, halved: bool = False) -> Recipe:
    """A recipe that can be made, of one to three shapes, its cuts by a word or one or two lines anywhere.

    `halved` are those whose halves can be rejoined to rectangles.
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
        tuple(draw(st.lists(shapes(), min_size=1, max_size=3))),
        draw(st.sampled_from(Curve)),
    )
    notes = Notes()
    assume(are_apart(recipe.cuts, "cuts", notes))
    check_fit(recipe, SEAM, notes)
    assume(not notes.findings)
    return recipe
