"""The rehearsal can fail: every small fault put into the steps or the supplies is caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from quarterturn import steps as s
from quarterturn.geometry import Motion, Region, StraightLine, circle, offset_path
from quarterturn.proof import Pattern, supplies_of
from quarterturn.proof.rehearsal import Bolt, Supplies, area_of_difference, rehearse
from quarterturn.setting import Side, picture
from tests.conftest import Golden
from tests.proof.rehearsal.faults import (
    EIGHTH,
    Case,
    Mutation,
    alter,
    drop,
    made_more,
    narrower,
    one_more,
    rework,
    supply,
    swap,
    trimmed_by,
    verdict,
)
from tests.samples import ROUNDS, pattern_of


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    """The sample quilt."""
    return pattern_of(ROUNDS)


def smaller_piece(label: str) -> Mutation:
    """Cut a piece an eighth shorter both ways, and say so in what is made."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        return supplies, tuple(_with_smaller(step, label) for step in steps)

    return mutate


def _with_smaller(step: s.Step, label: str) -> s.Step:
    if not isinstance(step.action, s.Subcut):
        return step
    cuts = tuple(
        replace(c, along=c.along - EIGHTH, across=c.across - EIGHTH) if c.piece == label else c
        for c in step.action.crosscuts
    )
    makes = tuple(
        replace(p, width=p.width - EIGHTH, height=p.height - EIGHTH) if p.label == label else p
        for p in step.makes
    )
    return replace(step, action=s.Subcut(cuts), makes=makes)


def renamed(names: dict[str, str], kind: type = s.CutApart) -> Mutation:
    """Exchange labels from the first step of a kind on."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        first = next(i for i, step in enumerate(steps) if isinstance(step.action, kind))
        return supplies, (*steps[:first], *(_renamed(step, names) for step in steps[first:]))

    return mutate


def _renamed(step: s.Step, names: dict[str, str]) -> s.Step:
    action: Any = step.action
    if isinstance(action, s.SewLine):
        action = replace(
            action, parts=tuple(replace(p, label=names.get(p.label, p.label)) for p in action.parts)
        )
    if isinstance(action, s.LayOut):
        rows = tuple(tuple(replace(p, label=names.get(p.label, p.label)) for p in row) for row in action.rows)
        action = s.LayOut(rows)
    if not isinstance(action, s.SewLine | s.LayOut | s.AddBorder):
        return step
    uses = tuple(replace(p, label=names.get(p.label, p.label)) for p in step.uses)
    return replace(step, action=action, uses=uses)


def first_turned(action: s.SewLine) -> s.SewLine:
    """Turn the first part of a line a quarter more."""
    part = action.parts[0]
    return replace(action, parts=(replace(part, turn=(part.turn + 1) % 4), *action.parts[1:]))


def last_two_swapped(action: s.SewLine) -> s.SewLine:
    """Exchange the last two parts of a line."""
    return replace(action, parts=(*action.parts[:-2], action.parts[-1], action.parts[-2]))


def shorter_cloth(fabric: str) -> Callable[[Supplies], Supplies]:
    """Give half as much of a fabric as the list says."""

    def change(supplies: Supplies) -> Supplies:
        bolt = supplies.cloth[fabric]
        cut = Bolt(bolt.width, bolt.length / 2)
        return replace(supplies, cloth={**supplies.cloth, fabric: cut})

    return change


def narrower_cloth(supplies: Supplies) -> Supplies:
    """Give the border's fabric narrower than its strips."""
    bolt = supplies.cloth["A"]
    return replace(supplies, cloth={**supplies.cloth, "A": Bolt(bolt.width / 2, bolt.length)})


MUTATIONS: dict[str, Mutation] = {
    "cloth bought too short": supply(shorter_cloth("A")),
    "cloth for the border bought too short": supply(shorter_cloth("C")),
    "cloth too narrow": supply(narrower_cloth),
    "no such fabric": alter(s.CutStrips, lambda a: replace(a, fabric="Z")),
    "web bought too short": supply(lambda x: replace(x, web=Bolt(x.web.width, Fraction(1)))),
    "web too narrow": supply(lambda x: replace(x, web=Bolt(Fraction(6), x.web.length))),
    "batting too small": supply(lambda x: replace(x, batting=Bolt(x.batting.width - 8, x.batting.length))),
    "more straightened off than there is": alter(s.Straighten, lambda a: replace(a, loss=a.loss + 36)),
    "strip cut too narrow": alter(s.CutStrips, lambda a: replace(a, height=a.height - EIGHTH)),
    "strip cut too wide": alter(s.CutStrips, lambda a: replace(a, height=a.height + EIGHTH)),
    "one strip too few": rework(s.CutStrips, lambda t: replace(t, makes=made_more(t.makes, -1))),
    "one strip too many": rework(s.CutStrips, lambda t: replace(t, makes=made_more(t.makes))),
    "strip cut from another fabric": alter(s.CutStrips, lambda a: replace(a, fabric="C")),
    "one piece more from each strip": alter(
        s.Subcut, lambda a: replace(a, crosscuts=(replace(a.crosscuts[0], count=a.crosscuts[0].count + 1),))
    ),
    "piece cut an eighth too long": alter(
        s.Subcut,
        lambda a: replace(a, crosscuts=(replace(a.crosscuts[0], along=a.crosscuts[0].along + EIGHTH),)),
    ),
    "pieces promised but not cut": rework(s.Subcut, lambda t: replace(t, makes=made_more(t.makes))),
    "pieces called by another letter": rework(
        s.Subcut, lambda t: replace(t, makes=(replace(t.makes[0], label="Z9"), *t.makes[1:]))
    ),
    "strips never subcut": drop(s.Subcut),
    "binding joined with a smaller loss": alter(s.JoinEnds, lambda a: replace(a, loss=a.loss / 2), nth=-1),
    "binding a strip short": rework(s.JoinEnds, lambda t: replace(t, uses=one_more(t.uses, by=-1)), nth=-1),
    "ring without web outside the line": alter(
        s.TraceRings, lambda a: replace(a, ring_out=Region((a.traced,)))
    ),
    "ring hollowed up to the line": alter(s.TraceRings, lambda a: replace(a, ring_in=Region((a.traced,)))),
    "more rings in a row than the web holds": alter(
        s.TraceRings, lambda a: replace(a, per_row=a.per_row + 4)
    ),
    "rings drawn over one another": alter(s.TraceRings, lambda a: replace(a, room_width=a.room_width / 2)),
    "shape traced a quarter inch larger": alter(
        s.TraceRings, lambda a: replace(a, traced=offset_path(a.traced, 0.125).paths[0])
    ),
    "one tracing too few": rework(s.TraceRings, lambda t: replace(t, makes=made_more(t.makes, -1))),
    "shape cut out beside the line": alter(s.CutOut, lambda a: replace(a, traced=circle(1.2))),
    "rings not fused to the cloth": drop(s.FuseRings),
    "cloth blank of another label": rework(
        s.FuseRings, lambda t: replace(t, uses=(t.uses[0], replace(t.uses[1], label="A1")))
    ),
    "no creases": drop(s.Crease),
    "crease beside the middle": alter(
        s.Crease, lambda a: replace(a, folds=(StraightLine(0.125 + 0j, 1j), a.folds[1]))
    ),
    "shape of the other colourway": rework(
        s.FuseToGround, lambda t: replace(t, uses=(t.uses[0], replace(t.uses[1], label="A round")))
    ),
    "edge not stitched": drop(s.StitchEdge),
    "stitched after cutting apart": swap(s.StitchEdge, s.CutApart),
    "stitched length wrong": alter(s.StitchEdge, lambda a: replace(a, edge=a.edge + 1)),
    "stitching started on a cut": alter(
        s.StitchEdge, lambda a: replace(a, starts=(complex(abs(a.starts[0]), 0),))
    ),
    "stitching started beside the edge": alter(
        s.StitchEdge, lambda a: replace(a, starts=(a.starts[0] * 1.1,))
    ),
    "thread to match the ground": alter(s.StitchEdge, lambda a: replace(a, thread_fabric="A")),
    "cut an eighth off the middle": alter(
        s.CutApart, lambda a: replace(a, cuts=(StraightLine(0.125 + 0j, 1j), a.cuts[1]))
    ),
    "cut once only": alter(s.CutApart, lambda a: replace(a, cuts=a.cuts[:1])),
    "cut corner to corner": alter(
        s.CutApart, lambda a: replace(a, cuts=(StraightLine(0j, (1 + 1j) / abs(1 + 1j)), a.cuts[1]))
    ),
    "a unit laid turned": alter(
        s.CutApart,
        lambda a: replace(a, parts=((a.parts[0][0], a.parts[0][1].then(Motion(1j))), *a.parts[1:])),
    ),
    "all units laid turned": alter(
        s.CutApart, lambda a: replace(a, parts=tuple((n, m.then(Motion(1j))) for n, m in a.parts))
    ),
    "five units from a square": rework(s.CutApart, lambda t: replace(t, makes=made_more(t.makes))),
    "ground cut away through the stitching": alter(
        s.CutAway, lambda a: replace(a, behind=(replace(a.behind[0], inside=Fraction(0)),))
    ),
    "trimmed an eighth too small": alter(s.Trim, trimmed_by(EIGHTH)),
    "trimmed an eighth too small, and said so": rework(
        s.Trim,
        lambda t: replace(
            t,
            action=trimmed_by(EIGHTH)(t.action),
            makes=(replace(t.makes[0], width=t.makes[0].width - EIGHTH, height=t.makes[0].height - EIGHTH),),
        ),
    ),
    "not trimmed": drop(s.Trim),
    "surplus units not set aside": drop(s.SetAside),
    "too many units set aside": rework(s.SetAside, lambda t: replace(t, uses=one_more(t.uses))),
    "a stack with a wrong label": alter(s.LabelStacks, lambda a: replace(a, stacks=one_more(a.stacks))),
    "a unit missing from the layout": alter(s.LayOut, lambda a: replace(a, rows=a.rows[:-1])),
    "a ragged layout": alter(s.LayOut, lambda a: replace(a, rows=(a.rows[0][:-1], *a.rows[1:]))),
    "a pair with a unit turned": alter(s.SewLine, first_turned),
    "a pair the wrong way round": alter(s.SewLine, last_two_swapped, nth=1),
    "a row with its pairs exchanged": alter(
        s.SewLine, lambda a: replace(a, parts=(a.parts[1], a.parts[0], *a.parts[2:])), nth=-2
    ),
    "rows in another order": alter(s.SewLine, last_two_swapped, nth=-1),
    "a row upside down": alter(
        s.SewLine, lambda a: replace(a, parts=(replace(a.parts[0], turn=2), *a.parts[1:])), nth=-1
    ),
    "a seam an eighth too deep": alter(s.SewLine, lambda a: replace(a, seam=a.seam + EIGHTH)),
    "row seams an eighth too narrow": alter(s.SewLine, lambda a: replace(a, seam=a.seam - EIGHTH), nth=-1),
    "rows sewn side by side": alter(s.SewLine, lambda a: replace(a, way=Side.RIGHT), nth=-1),
    "a pair made once too often": rework(
        s.SewLine,
        lambda t: replace(
            t, makes=made_more(t.makes), uses=tuple(replace(p, count=p.count * 2) for p in t.uses)
        ),
    ),
    "a pair left out": drop(s.SewLine),
    "border sewn to the wrong side": alter(s.AddBorder, lambda a: replace(a, side=Side.TOP)),
    "border on one side twice": alter(s.AddBorder, lambda a: replace(a, side=Side.LEFT), nth=1),
    "border left out": drop(s.AddBorder, nth=3),
    "borders in another order": rework(
        s.AddBorder, lambda t: replace(t, uses=(t.uses[0], replace(t.uses[1], label="C1"))), nth=0
    ),
    "border seam too deep": alter(s.AddBorder, lambda a: replace(a, seam=a.seam * 2)),
    "backing panels not joined": drop(s.JoinPanels),
    "backing trimmed too small": rework(s.JoinPanels, lambda t: replace(t, makes=narrower(t.makes))),
    "backing stands out too little": alter(s.LayerQuilt, lambda a: replace(a, overage=a.overage + 1)),
    "quilting forgotten": drop(s.QuiltLayers),
    "binding forgotten": drop(s.Bind),
    "binding too narrow for its seam": alter(s.Bind, lambda a: replace(a, seam=a.seam * 2)),
    "squares cut an eighth too small, and said so": smaller_piece("A1"),
    "blanks for the shapes cut too small, and said so": smaller_piece("A2"),
    "side borders cut an eighth too short, and said so": smaller_piece("C2"),
    "the two colourways exchanged throughout": renamed({"unit a": "unit b", "unit b": "unit a"}),
    "the two border pairs exchanged throughout": renamed({"C1": "C2", "C2": "C1"}, s.AddBorder),
    "binding sewn an eighth deeper": alter(s.Bind, lambda a: replace(a, seam=a.seam + EIGHTH)),
}


def test_the_unchanged_steps_are_sound(pattern: Pattern) -> None:
    assert verdict(pattern, (supplies_of(pattern), pattern.steps.steps)) == "sound"


@pytest.mark.parametrize("name", MUTATIONS)
def test_fault_is_caught(pattern: Pattern, name: str) -> None:
    before = (supplies_of(pattern), pattern.steps.steps)
    after = MUTATIONS[name](before)
    assert after != before, "the mutation changes nothing"
    assert verdict(pattern, after) != "sound"


def test_how_each_fault_shows(pattern: Pattern, golden: Golden) -> None:
    """Kept as a text, so that nobody takes a fault for caught that fails for another reason."""
    before = (supplies_of(pattern), pattern.steps.steps)
    lines = [f"{name}: {verdict(pattern, mutate(before))}" for name, mutate in MUTATIONS.items()]
    golden.check("verdicts.txt", "\n".join(lines) + "\n")


def test_a_wrong_picture_is_caught(pattern: Pattern) -> None:
    """The comparison itself: one face in another fabric differs by its own area, twice counted."""
    rehearsal = rehearse(supplies_of(pattern), pattern.steps)
    drawn = list(picture(pattern.design, pattern.blocks, pattern.setting))
    odd = replace(drawn[1], fabric="C")
    area = area_of_difference(rehearsal.top, [drawn[0], odd, *drawn[2:]])
    assert area == pytest.approx(2 * odd.region.area(), rel=1e-4)
