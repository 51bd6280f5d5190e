"""Each check of the cutting fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from quarterturn.materials import ClothPlan, RunEnd, Split, StripGroup
from quarterturn.measure import Length, inches
from quarterturn.pieces import Purpose
from tests.proof.checks.sound import (
    EIGHTH,
    Spoil,
    first_cut,
    found,
    pieces,
    plan,
    recipe,
    text,
)


def more_pieces(group: StripGroup) -> StripGroup:
    """Let a strip hold five more of its first piece."""
    first, *rest = group.crosscuts
    return replace(group, crosscuts=(replace(first, count=first.count + 5), *rest))


def smaller(group: StripGroup) -> StripGroup:
    """Let a strip be cut into pieces 1/8" too small."""
    first, *rest = group.crosscuts
    return replace(group, crosscuts=(replace(first, along=first.along - EIGHTH), *rest))


def low(group: StripGroup) -> StripGroup:
    """Let a strip be lower than its pieces."""
    return replace(group, height=group.height - EIGHTH)


def longer(group: StripGroup) -> StripGroup:
    """Let a strip be cut into a piece longer than cloth is wide."""
    return replace(group, crosscuts=(replace(group.crosscuts[0], along=inches(50)),))


def short_run(whole: ClothPlan) -> ClothPlan:
    """Let a run have a strip less than is needed for its length."""
    return replace(whole, runs=(replace(whole.runs[0], strips=1), *whole.runs[1:]))


def small_first(whole: ClothPlan) -> ClothPlan:
    """Cut a strip with small pieces before one with large."""
    group = next(group for group in whole.strips if group.crosscuts)
    small = tuple(replace(c, along=inches(1), across=inches(1)) for c in group.crosscuts)
    return replace(whole, strips=(replace(group, crosscuts=small), group))


FIRES: dict[str, Spoil] = {
    "strip-overfull": first_cut(more_pieces),
    "strip-tight": first_cut(
        lambda group: replace(
            group, crosscuts=(replace(group.crosscuts[0], along=inches(39, 3, 4), count=1),)
        )
    ),
    "subcut-wrong": first_cut(smaller),
    "piece-unplaced": pieces(Purpose.GROUND, width=inches(41), length=inches(41)),
    "piece-not-joined": first_cut(longer),
    "run-too-short": plan("C", short_run),
    "off-ruler": pieces(Purpose.BORDER, width=inches(2, 9, 16)),
    "unit-off-ruler": text(recipe('finished = \'4 1/16"\'\nshape = { flow = true }\ncurve = "sewn true"')),
    "beyond-ruler": text(recipe("finished = '10\"'\nshape = { diameter = '7\"' }\ncurve = \"sewn true\"")),
    "small-cut-first": plan("A", small_first),
    "strips-near-equal": text(("width = '2\"'", "width = '1 3/4\"'")),
    "label-unclear": pieces(Purpose.BORDER, label="A1"),
}
PASSES: dict[str, Spoil] = {
    "unit-off-ruler": text(recipe('finished = \'4 1/8"\'\nshape = { flow = true }\ncurve = "sewn true"')),
    "beyond-ruler": text(recipe("finished = '9\"'\nshape = { diameter = '7\"' }\ncurve = \"sewn true\"")),
    "strips-near-equal": text(("width = '2\"'", "width = '2 1/2\"'")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_strip_lower_than_its_pieces_is_found() -> None:
    assert "high; A" in found("subcut-wrong", first_cut(low)())[0]


def test_a_tight_strip_names_its_pieces() -> None:
    (sentence,) = found("strip-tight", FIRES["strip-tight"]())
    assert re.search(r"The tightest, strip As\d+ with 1 of A\d+ \([a-z][^)]*\), leaves", sentence)


def test_a_segment_that_cannot_hold_its_pieces_is_found() -> None:
    def split(group: StripGroup) -> StripGroup:
        cut = replace(group.crosscuts[0], count=2)
        segment = Split(f"{group.label} segment", cut.along, group.height, 1, (cut,))
        return replace(group, crosscuts=(), splits=(segment,))

    (sentence, *_) = found("subcut-wrong", first_cut(split)())
    assert re.fullmatch(r"As\d+ segment, .* cannot be cut into 2 of A1\.", sentence)


def test_a_rest_that_cannot_hold_its_strips_is_found() -> None:
    def overfull(group: StripGroup) -> StripGroup:
        rest = StripGroup(f"{group.label}x", group.height, 2 * group.strips, (), Length(0))
        return replace(group, rest=(rest,))

    (sentence,) = found("strip-overfull", first_cut(overfull)())
    assert sentence.startswith("From the rest of As")


def test_a_run_of_ends_that_are_not_cut_is_found() -> None:
    def missing(whole: ClothPlan) -> ClothPlan:
        run = whole.runs[0]
        return replace(whole, runs=(replace(run, ends=(RunEnd("Cs9", 1, inches(20)),)), *whole.runs[1:]))

    (sentence,) = found("run-too-short", plan("C", missing)())
    assert sentence.startswith("3 strips make a run")
