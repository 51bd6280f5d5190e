"""What lies behind shapes, what trims are measured from, and how halves are rejoined."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import TypeVar

import pytest

from quarterturn import steps as s
from quarterturn.measure import inches
from quarterturn.steps.making import Reference
from tests.recipe_samples import BANDS, GIZZARDS, HALVES, LONE_HEARTS, MOONS, PONDS, RIPPLES, WHOLE
from tests.samples import ROUNDS, Changed, pattern_of

A = TypeVar("A")


def actions(text: str, kind: type[A]) -> list[A]:
    """Return the actions of a kind in the steps of a design."""
    return [step.action for step in pattern_of(text).steps.steps if isinstance(step.action, kind)]


def made_by(text: str, kind: type) -> list[tuple[str, Fraction, Fraction]]:
    """Return what steps of a kind make, with its size."""
    steps = pattern_of(text).steps.steps
    return [(p.label, p.width, p.height) for x in steps if isinstance(x.action, kind) for p in x.makes]


def trims(text: str) -> list[list[tuple[Reference, Fraction]]]:
    """Return what each trimming is measured from, and how far."""
    return [sorted(((t.kind, t.distance) for t in a.lines), key=str) for a in actions(text, s.Trim)]


def test_behind_a_shape_on_a_shape_both_the_ground_and_that_shape_are_cut_away() -> None:
    (away,) = actions(RIPPLES, s.CutAway)
    assert [(b.part, b.layers) for b in away.behind] == [("outer", (-1,)), ("inner", (-1, 0))]


def test_every_shape_keeps_its_own_underlap() -> None:
    (away,) = actions(RIPPLES, s.CutAway)
    assert [b.inside for b in away.behind] == [inches(0, 1, 4), inches(0, 1, 2)]


def test_nothing_is_cut_away_behind_a_shape_narrower_than_its_underlaps() -> None:
    text = Changed(RIPPLES).with_("underlap = '1/2\"'", "underlap = '2\"'").text
    (away,) = actions(text, s.CutAway)
    assert [b.part for b in away.behind] == ["outer"]
    assert [(b.part, b.layers) for b in away.narrow] == [("inner", ())]


def test_nothing_is_cut_away_behind_a_shape_that_is_glued_all_over() -> None:
    """A bloom of 7/8" is too small to be hollowed out: its web holds the leaves and the ground everywhere."""
    text = Changed(WHOLE).with_("width = '2\"'", "width = '7/8\"'").text
    (away,) = actions(text, s.CutAway)
    assert [b.part for b in away.behind] == ["leaf", "leaf"]
    assert [b.part for b in away.narrow] == ["bloom"]


def test_a_unit_without_a_shape_has_nothing_cut_away() -> None:
    shapes = BANDS[BANDS.index('[[recipes.band.shapes]]\nname = "bar"') : BANDS.index("[colourways.a]")]
    text = Changed(BANDS).with_(shapes, "").with_(', bar = "C"', "").with_("a-pc0", "a-pa2").text
    assert len(actions(text, s.CutAway)) == 1


def test_published_units_are_trimmed_on_their_two_outer_sides_only() -> None:
    """Check value 12.8: 12" squares cut in four 6" units, trimmed on the two outer sides to 5 1/2" (Fall 2014)."""
    text = Changed(ROUNDS).with_("finished = '2\"'", "finished = '5\"'\nstart = '12\"'").text
    assert trims(text) == [[(Reference.CUT, inches(5, 1, 2))] * 2] * 2
    assert {(width, height) for _, width, height in made_by(text, s.CutApart)} == {(inches(6), inches(6))}


def test_where_no_cut_runs_across_the_trim_is_measured_from_the_crease() -> None:
    across = (Reference.CREASE, inches(2, 1, 4))
    assert trims(HALVES) == [[across, across, (Reference.CUT, inches(4, 1, 2))]] * 2


def test_a_square_that_is_not_cut_is_trimmed_from_its_creases() -> None:
    assert trims(WHOLE) == [[(Reference.CREASE, inches(3))] * 4]


def test_a_piece_between_two_cuts_is_trimmed_above_and_below_only() -> None:
    assert [len(lines) for lines in trims(BANDS)] == [3, 2, 3]


def test_a_master_cut_on_a_slant_is_trimmed_before_it_is_cut() -> None:
    steps = pattern_of(LONE_HEARTS).steps.steps
    first = {
        kind: next(x.number for x in steps if isinstance(x.action, kind)) for kind in (s.Trim, s.CutApart)
    }
    assert first[s.Trim] < first[s.CutApart]
    assert trims(LONE_HEARTS)[0] == [(Reference.CREASE, inches(4, 1, 8))] * 4


def test_rejoined_blocks_are_trimmed_from_the_middle_of_their_seam() -> None:
    assert trims(LONE_HEARTS)[-1] == [(Reference.SEAM, inches(3, 3, 4))] * 4


def test_hearts_and_gizzards() -> None:
    """Check value 14.4: squares of 8 3/4" give blocks of 8 3/4 − 1/4·(2 + √2) inside their seams."""
    ((label, width, height),) = made_by(GIZZARDS, s.Rejoin)
    assert label == "unit g"
    assert float(width) == float(height) == pytest.approx(8.75 - 0.25 * (2 + math.sqrt(2)) + 0.5)


def test_published_size_of_hearts_and_gizzards() -> None:
    """Check value 12.6: squares of 8 3/8" cut once make quadrants that finish 7 1/2" (allpeoplequilt.com, 2014)."""
    text = (
        Changed(GIZZARDS)
        .with_("8 3/4", "8 3/8")
        .with_('of = "pair"', 'of = "pair"\nfinished = \'7 1/2"\'')
        .text
    )
    assert made_by(text, s.Trim) == [("unit g", inches(8), inches(8))]


def test_a_published_heart_halved() -> None:
    """Check value 12.9: a heart on 5" × 4 1/2", cut down, gives 2 1/2" × 4 1/2" (quilterscache.com, 2003)."""
    given = "width = '9 1/2\"'\nheight = '5\"'\ntrim = '1/2\"'"
    text = Changed(HALVES).with_(given, "width = '5\"'\nheight = '4 1/2\"'\ntrim = '0\"'").text
    sizes = [(width, height) for _, width, height in made_by(text, s.CutApart)]
    assert sizes == [(inches(2, 1, 2), inches(4, 1, 2))] * 2


def test_halves_are_joined_across_the_cut_with_ears_where_they_are_sharp() -> None:
    (diagonal,) = actions(GIZZARDS, s.Rejoin)
    upright, _ = actions(MOONS, s.Rejoin)
    assert (diagonal.ears, upright.ears) == (2, 0)
    assert abs(diagonal.way.real) == pytest.approx(abs(diagonal.way.imag))
    assert upright.way == pytest.approx(1 + 0j)


def test_the_seam_is_pressed_as_the_house_presses() -> None:
    (aside,) = actions(GIZZARDS, s.Rejoin)
    (opened,) = actions(GIZZARDS + '\n[making]\npressing = "open"\n', s.Rejoin)
    assert (aside.press_to, opened.press_to) == (0, None)


def test_only_what_the_map_takes_is_stacked() -> None:
    (stacks,) = actions(GIZZARDS, s.LabelStacks)
    assert stacks.stacks == (s.Pile("unit g", 6),)


def test_the_stitching_of_upper_shapes_stands_with_their_fusing() -> None:
    """What is stitched comes before what is fused on it, so the chapter of stitching fuses it."""
    steps = pattern_of(RIPPLES).steps
    kinds = [type(step.action) for step in steps.of(s.Chapter.STITCHING)]
    assert kinds == [s.StitchEdge, s.FuseToGround, s.StitchEdge]


def test_the_ground_of_two_recipes_is_creased_for_each() -> None:
    """One piece of cloth, two ways to mark it: the two do not lie in one pile."""
    recipe = PONDS[PONDS.index("[recipes.pond]") : PONDS.index("[colourways.a]")]
    other = recipe.replace("pond", "pool").replace("at = ['-1\"', '-1\"']", "at = ['-1\"', '1\"']")
    way = '[colourways.b]\nrecipe = "pool"\nground = "A"\nshapes = { ring = "B", lily = "C" }\n\n[setting]'
    text = Changed(PONDS).with_("[setting]", other + way).with_("a-bl0 a-br0", "b-bl0 b-br0").text
    creased = [label for label, _, _ in made_by(text, s.Crease)]
    assert creased == ["A1, creased for pond", "A1, creased for pool"]
