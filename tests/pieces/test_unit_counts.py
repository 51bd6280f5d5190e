"""Masters are counted for the kind of unit that needs most of them (trade check 17)."""

from __future__ import annotations

from quarterturn.pieces import UnitCount
from quarterturn.steps import CutApart, LabelStacks, SetAside
from tests.samples import HEARTS, pattern_of


def test_masters_are_made_for_the_quarter_that_is_used_most() -> None:
    hearts, leaves = pattern_of(HEARTS).bill.masters
    assert (hearts.needed, hearts.count, hearts.per_master) == (3, 3, 4)
    assert hearts.units == (
        UnitCount("a-tl", 3, 1, 0),
        UnitCount("a-tr", 1, 1, 2),
        UnitCount("a-br", 1, 1, 2),
        UnitCount("a-bl", 1, 1, 2),
    )
    assert (leaves.needed, leaves.units) == (1, (UnitCount("c-tl", 2, 2, 0), UnitCount("c-tr", 2, 2, 0)))


def test_what_is_left_over_of_each_kind_is_set_aside() -> None:
    steps = pattern_of(HEARTS).steps.steps
    aside = [pile for step in steps if isinstance(step.action, SetAside) for pile in step.uses]
    assert {pile.label: pile.count for pile in aside if pile.label.startswith("unit")} == {
        "unit a-tr": 2,
        "unit a-br": 2,
        "unit a-bl": 2,
    }
    [stacks] = [step.action.stacks for step in steps if isinstance(step.action, LabelStacks)]
    assert [(pile.label, pile.count) for pile in stacks][:2] == [("unit a-tl", 3), ("unit a-tr", 1)]


def test_a_quarter_that_the_map_never_uses_is_set_aside_as_cut() -> None:
    text = HEARTS.replace("a-br0", "a-tl0")
    steps = pattern_of(text).steps.steps
    aside = [pile for step in steps if isinstance(step.action, SetAside) for pile in step.uses]
    assert [(p.label, p.count) for p in aside if p.label.startswith("unit a-br")] == [
        ("unit a-br, as cut", 4)
    ]


def test_a_master_is_cut_into_a_label_for_each_kind() -> None:
    actions = [s.action for s in pattern_of(HEARTS).steps.steps if isinstance(s.action, CutApart)]
    labels = [sorted(label for label, _ in action.parts) for action in actions]
    assert labels[0] == [f"unit a-{q}, as cut" for q in ("bl", "br", "tl", "tr")]
    assert labels[1] == ["unit c-tl, as cut"] * 2 + ["unit c-tr, as cut"] * 2
