"""The rehearsal of sections can fail: every small fault put into their steps is caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from functools import cache
from typing import Any

import pytest

from quarterturn import steps as s
from quarterturn.geometry import quarter_turns, shift
from quarterturn.proof import Pattern, supplies_of
from quarterturn.setting import Side
from tests.conftest import Golden
from tests.proof.rehearsal.faults import EIGHTH, Mutation, alter, drop, made_more, rework, verdict
from tests.proof.rehearsal.test_mutations import smaller_piece
from tests.samples import pattern_of
from tests.section_texts import MITRED, ON_POINT, PANELS, PIECED, SASHED


@cache
def pattern_for(text: str) -> Pattern:
    """Return the pattern of a text, made once."""
    return pattern_of(text)


def part(field: str, nth: int, change: Callable[[Any], object]) -> Callable[[Any], object]:
    """Change one of the things that a field of an action lists."""

    def changed(action: Any) -> object:
        things = list(getattr(action, field))
        things[nth] = change(things[nth])
        return replace(action, **{field: tuple(things)})

    return changed


def more(field: str, by: Fraction = EIGHTH) -> Callable[[Any], object]:
    """Change a length of an action or of a part of it."""
    return lambda thing: replace(thing, **{field: getattr(thing, field) + by})


def turned(thing: Any, field: str = "turn") -> object:
    """Turn a part of an action a quarter further."""
    return replace(thing, **{field: (getattr(thing, field) + 1) % 4})


def without_last(field: str) -> Callable[[Any], object]:
    """Leave out the last of the things that a field of an action lists."""
    return lambda action: replace(action, **{field: getattr(action, field)[:-1]})


def last_two_swapped(field: str) -> Callable[[Any], object]:
    """Exchange the last two of the things that a field of an action lists."""

    def changed(action: Any) -> object:
        things = getattr(action, field)
        return replace(action, **{field: (*things[:-2], things[-1], things[-2])})

    return changed


def narrower(products: tuple[s.Product, ...], by: Fraction = EIGHTH) -> tuple[s.Product, ...]:
    """Make the first product narrower."""
    return (replace(products[0], width=products[0].width - by), *products[1:])


def ends_exchanged(action: s.AddTriangles) -> s.AddTriangles:
    """Sew the left triangle to the right end, and the right one to the left."""
    return replace(action, left=action.right, right=action.left)


def end(change: Callable[[Any], object]) -> Callable[[Any], object]:
    """Change the triangle at the left end."""
    return lambda action: replace(action, left=change(action.left))


def moved(motif: s.PlacedMotif) -> s.PlacedMotif:
    """Lay a motif an eighth of an inch further to the right."""
    return replace(motif, motion=motif.motion.then(shift(0.125)))


def laid_across(motif: s.PlacedMotif) -> s.PlacedMotif:
    """Turn a motif a quarter about its middle."""
    return replace(motif, motion=quarter_turns(1).then(motif.motion))


def longer(edges: tuple[s.MotifEdge, ...]) -> tuple[s.MotifEdge, ...]:
    """Say that an edge is an inch longer."""
    return (replace(edges[0], edge=edges[0].edge + 1), *edges[1:])


FAULTS: dict[str, tuple[str, Mutation]] = {
    "squares for side triangles cut too small, and said so": (ON_POINT, smaller_piece("A1")),
    "squares for side triangles cut once": (ON_POINT, alter(s.CutTriangles, lambda a: replace(a, cuts=1))),
    "squares for corner triangles cut twice": (
        ON_POINT,
        alter(s.CutTriangles, lambda a: replace(a, cuts=2), nth=1),
    ),
    "five triangles from a square": (
        ON_POINT,
        rework(s.CutTriangles, lambda t: replace(t, makes=made_more(t.makes))),
    ),
    "squares not cut into triangles": (ON_POINT, drop(s.CutTriangles)),
    "triangles left over and not set aside": (ON_POINT, drop(s.SetAside)),
    "no triangles at the ends of a row": (ON_POINT, drop(s.AddTriangles)),
    "a triangle turned": (ON_POINT, alter(s.AddTriangles, end(turned))),
    "a triangle level with the other edge": (
        ON_POINT,
        alter(s.AddTriangles, end(lambda e: replace(e, level=Side.TOP))),
    ),
    "triangles exchanged": (ON_POINT, alter(s.AddTriangles, ends_exchanged)),
    "a triangle at one end only": (ON_POINT, alter(s.AddTriangles, lambda a: replace(a, right=None))),
    "a triangle sewn an eighth too deep": (ON_POINT, alter(s.AddTriangles, more("seam"))),
    "one triangle too many taken": (
        ON_POINT,
        rework(
            s.AddTriangles,
            lambda t: replace(t, uses=(t.uses[0], replace(t.uses[1], count=t.uses[1].count + 1))),
        ),
    ),
    "a row an eighth to the right": (ON_POINT, alter(s.JoinRows, part("offsets", 1, lambda x: x + EIGHTH))),
    "a row a unit to the right": (ON_POINT, alter(s.JoinRows, part("offsets", 1, lambda x: x + 2))),
    "slanting rows in another order": (ON_POINT, alter(s.JoinRows, last_two_swapped("parts"))),
    "a slanting row upside down": (
        ON_POINT,
        alter(s.JoinRows, part("parts", 1, lambda p: replace(p, turn=2))),
    ),
    "a slanting row left out": (ON_POINT, alter(s.JoinRows, without_last("parts"))),
    "slanting rows sewn an eighth too deep": (ON_POINT, alter(s.JoinRows, more("seam"))),
    "a corner an eighth off the middle": (
        ON_POINT,
        alter(s.AddCorners, part("corners", 0, more("middle"))),
    ),
    "two corners at one side": (
        ON_POINT,
        alter(s.AddCorners, part("corners", 0, lambda c: replace(c, side=Side.LEFT))),
    ),
    "a corner left out": (ON_POINT, alter(s.AddCorners, without_last("corners"))),
    "points trimmed an eighth too far in": (ON_POINT, alter(s.AddCorners, more("level"))),
    "points trimmed to a greater width": (ON_POINT, alter(s.AddCorners, more("across"))),
    "corners sewn an eighth too deep": (ON_POINT, alter(s.AddCorners, more("seam"))),
    "corners forgotten": (ON_POINT, drop(s.AddCorners)),
    "squared up an eighth too narrow": (
        ON_POINT,
        rework(s.SquareUp, lambda t: replace(t, makes=narrower(t.makes))),
    ),
    "squared up an inch too wide": (
        ON_POINT,
        rework(s.SquareUp, lambda t: replace(t, makes=narrower(t.makes, by=Fraction(-1)))),
    ),
    "not squared up": (ON_POINT, drop(s.SquareUp)),
    "borders not trimmed": (ON_POINT, drop(s.TrimToFit)),
    "borders trimmed an eighth too short": (ON_POINT, alter(s.TrimToFit, more("length", -EIGHTH))),
    "borders trimmed longer than they are": (ON_POINT, alter(s.TrimToFit, more("length", Fraction(1)))),
    "a slanting row missing from the layout": (ON_POINT, alter(s.LayOut, without_last("rows"))),
    "a triangle set in an eighth too far right": (SASHED, alter(s.SetIn, part("places", 0, more("x")))),
    "a triangle set in an eighth too low": (SASHED, alter(s.SetIn, part("places", 0, more("y")))),
    "a triangle set in turned": (SASHED, alter(s.SetIn, part("places", 0, turned))),
    "a triangle not set in": (SASHED, alter(s.SetIn, without_last("places"))),
    "triangles set in an eighth too deep": (SASHED, alter(s.SetIn, more("seam"))),
    "no triangles set in": (SASHED, drop(s.SetIn)),
    "sashing joined to another place": (SASHED, alter(s.JoinRows, part("offsets", 1, lambda x: x + EIGHTH))),
    "a mitred border of another depth": (MITRED, alter(s.AddMitred, more("depth"))),
    "mitred strips exchanged": (MITRED, alter(s.AddMitred, lambda a: replace(a, sides=a.ends, ends=a.sides))),
    "a mitred border sewn an eighth too deep": (MITRED, alter(s.AddMitred, more("seam"))),
    "a mitred border of strips two inches too short": (MITRED, smaller_piece("C1")),
    "a mitred border left out": (MITRED, drop(s.AddMitred)),
    "a mitred border of five strips": (
        MITRED,
        rework(s.AddMitred, lambda t: replace(t, uses=(t.uses[0], replace(t.uses[1], count=3), *t.uses[2:]))),
    ),
    "a pieced strip upside down": (PIECED, alter(s.AddBorder, lambda a: replace(a, turn=2))),
    "a pieced strip across": (PIECED, alter(s.AddBorder, lambda a: replace(a, turn=1))),
    "a corner of a pieced border turned": (
        PIECED,
        alter(s.SewLine, part("parts", 0, turned), nth=-1),
    ),
    "a corner of a pieced border not kept": (PIECED, alter(s.LayOut, lambda a: replace(a, later=()))),
    "a section made once only": (
        PIECED,
        rework(s.SewLine, lambda t: replace(t, makes=made_more(t.makes, -1))),
    ),
    "a motif an eighth off its place": (PANELS, alter(s.FuseToPanel, part("motifs", 0, moved))),
    "a motif turned": (PANELS, alter(s.FuseToPanel, part("motifs", 0, laid_across))),
    "motifs fused in another order": (
        PANELS,
        alter(s.FuseToPanel, lambda a: replace(a, motifs=(a.motifs[1], a.motifs[0], *a.motifs[2:]))),
    ),
    "a motif left out": (PANELS, alter(s.FuseToPanel, without_last("motifs"))),
    "a motif of another fabric": (
        PANELS,
        alter(s.FuseToPanel, part("motifs", 0, lambda m: replace(m, label="C leaf"))),
    ),
    "a panel laid across": (PANELS, alter(s.FuseToPanel, lambda a: replace(a, turn=0))),
    "the edge of a motif longer": (
        PANELS,
        alter(s.StitchMotifs, lambda a: replace(a, edges=longer(a.edges))),
    ),
    "a motif stitched in another colour": (
        PANELS,
        alter(s.StitchMotifs, part("edges", 0, lambda e: replace(e, thread_fabric="A"))),
    ),
    "motifs not stitched": (PANELS, drop(s.StitchMotifs)),
    "panels cut away through the stitching": (
        PANELS,
        alter(s.CutAwayBehind, lambda a: replace(a, inside=Fraction(0))),
    ),
    "one panel too few": (
        PANELS,
        rework(s.FuseToPanel, lambda t: replace(t, makes=made_more(t.makes, -1))),
    ),
}


@pytest.mark.parametrize("text", [ON_POINT, SASHED, MITRED, PIECED, PANELS])
def test_the_unchanged_steps_are_sound(text: str) -> None:
    pattern = pattern_for(text)
    assert verdict(pattern, (supplies_of(pattern), pattern.steps.steps)) == "sound"


def fault_shows(name: str) -> str:
    """Return how a fault shows."""
    text, mutate = FAULTS[name]
    pattern = pattern_for(text)
    before = (supplies_of(pattern), pattern.steps.steps)
    after = mutate(before)
    assert after != before, "the mutation changes nothing"
    return verdict(pattern, after)


@pytest.mark.parametrize("name", FAULTS)
def test_fault_is_caught(name: str) -> None:
    assert fault_shows(name) != "sound"


def test_how_each_fault_shows(golden: Golden) -> None:
    """Kept as a text, so that nobody takes a fault for caught that fails for another reason."""
    golden.check("verdicts.txt", "".join(f"{name}: {fault_shows(name)}\n" for name in FAULTS))
