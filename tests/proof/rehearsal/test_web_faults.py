"""Every ring is laid at its stated place on the web: what lies wrong there is caught, nested, staggered, on sheets."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any

import pytest

from quarterturn import steps as s
from quarterturn.geometry import STAY, Motion, Region, shift
from quarterturn.measure import inches
from quarterturn.proof import Pattern, supplies_of
from tests.conftest import Golden
from tests.proof.rehearsal.faults import Case, Mutation, alter, verdict
from tests.recipe_samples import RIPPLES
from tests.samples import ROUNDS, Changed, pattern_of

SHEETS = "\n[making]\nweb_sheet = ['9\"', '12\"']\n"
STAGGERED = (
    Changed(ROUNDS)
    .with_("{ flow = true }", "{ diameter = '5\"' }")
    .with_("finished = '2\"'", "finished = '4\"'")
)
TEXTS = {
    "nested": RIPPLES,
    "nested on sheets": RIPPLES + SHEETS,
    "staggered": f"{STAGGERED.text}\n[making]\nweb_width = '10 1/4\"'\n",
    "staggered on sheets": f"{STAGGERED.text}\n[making]\nspare_masters = 1\nweb_sheet = ['10\"', '12\"']\n",
    "rows on sheets": f"{STAGGERED.text}\n[making]\nweb_sheet = ['12\"', '12\"']\n",
}


@cache
def sample(name: str) -> Pattern:
    return pattern_of(TEXTS[name])


def case_of(name: str) -> Case:
    return supplies_of(sample(name)), sample(name).steps.steps


def every_tracing(action: Any, **values: Any) -> Any:
    """Return the action with every tracing changed."""
    return replace(action, tracings=tuple(replace(one, **values) for one in action.tracings))


def place(number: int, way: Motion = STAY, sheet: int | None = None, **values: Any) -> Mutation:
    """Move one of the places."""

    def changed(action: Any) -> Any:
        places = list(action.places)
        old = places[number]
        motion = replace(old.motion.then(way), **values)
        places[number] = replace(old, motion=motion, sheet=old.sheet if sheet is None else sheet)
        return replace(action, places=tuple(places))

    return alter(s.TraceNested, changed)


def rule(**values: Any) -> Mutation:
    """Change the rule of staggered rows."""

    def changed(action: Any) -> Any:
        return replace(action, stagger=replace(action.stagger, **values))

    return alter(s.TraceRings, changed)


def fewer_sheets(case: Case) -> Case:
    supplies, steps = case
    sheet = supplies.web.sheet
    assert sheet is not None
    return replace(supplies, web=replace(supplies.web, length=supplies.web.length - sheet)), steps


def no_sheets(case: Case) -> Case:
    supplies, steps = case
    return replace(supplies, web=replace(supplies.web, sheet=None)), steps


FAULTS: dict[str, tuple[str, Mutation]] = {
    "web not hollowed out": ("nested", alter(s.TraceNested, lambda a: every_tracing(a, ring_in=Region(())))),
    "ring traced beside the centre that should hold it": ("nested", place(-1, shift(1.0))),
    "ring traced over the edge of the web": ("nested", place(0, shift(-1.0))),
    "ring traced over the cut end": ("nested", place(0, shift(-1j))),
    "two rings traced at one place": (
        "nested",
        alter(s.TraceNested, lambda a: replace(a, places=(a.places[1], *a.places[1:]))),
    ),
    "a ring traced once too often": (
        "nested",
        alter(s.TraceNested, lambda a: replace(a, places=(*a.places, a.places[-1]))),
    ),
    "template flipped over": ("nested", place(0, mirrored=True)),
    "a gap asked for that is not there": (
        "nested",
        alter(s.TraceNested, lambda a: replace(a, gap=inches(1))),
    ),
    "more web traced on than is bought": (
        "nested",
        alter(s.TraceNested, lambda a: replace(a, length=a.length * 9)),
    ),
    "a second roll": ("nested", place(0, sheet=1)),
    "ring on another sheet than the one around it": ("nested on sheets", place(0, sheet=1)),
    "ring traced over the edge of its sheet": ("nested on sheets", place(0, shift(8j))),
    "ring traced before the first sheet": ("nested on sheets", place(0, sheet=-1)),
    "a sheet too few": ("nested on sheets", fewer_sheets),
    "rows too near": ("staggered", rule(down=inches(2))),
    "rows too near on the way back": ("staggered", rule(back=inches(2))),
    "rows not shifted": ("staggered", rule(second=inches(2, 3, 4))),
    "rows shifted over the edge": ("staggered", rule(second=inches(8))),
    "first row over the cut end": ("staggered", rule(top=inches(2))),
    "rows of none": ("staggered", rule(even=0)),
    "rows that run back": ("staggered", rule(down=inches(-1))),
    "less web than the rows take": (
        "staggered",
        alter(s.TraceRings, lambda a: replace(a, length=a.length / 2)),
    ),
    "more web than is bought": ("staggered", alter(s.TraceRings, lambda a: replace(a, length=a.length * 9))),
    "a row too many on a sheet": (
        "staggered on sheets",
        alter(s.TraceRings, lambda a: replace(a, rows_on_sheet=a.rows_on_sheet + 1)),
    ),
    "no row on a sheet": ("staggered on sheets", alter(s.TraceRings, lambda a: replace(a, rows_on_sheet=0))),
    "fewer rows on a sheet than there are sheets for": (
        "rows on sheets",
        alter(s.TraceRings, lambda a: replace(a, rows_on_sheet=1)),
    ),
    "plain rows beyond the sheet": (
        "rows on sheets",
        alter(s.TraceRings, lambda a: replace(a, rows_on_sheet=3)),
    ),
    "a roll where sheets are told of": ("nested on sheets", no_sheets),
}


@pytest.mark.parametrize("name", TEXTS)
def test_the_unchanged_steps_make_the_picture(name: str) -> None:
    assert verdict(sample(name), case_of(name)) == "sound"


def test_each_sample_is_traced_as_it_is_called() -> None:
    kinds = {}
    for name in TEXTS:
        traced = [each.action for each in sample(name).steps.steps]
        nested = any(isinstance(action, s.TraceNested) for action in traced)
        shifted = any(isinstance(action, s.TraceRings) and action.stagger for action in traced)
        kinds[name] = nested, shifted, bool(sample(name).materials.web.sheets)
    assert kinds == {
        "nested": (True, False, False),
        "nested on sheets": (True, False, True),
        "staggered": (False, True, False),
        "staggered on sheets": (False, True, True),
        "rows on sheets": (False, False, True),
    }


@pytest.mark.parametrize("fault", FAULTS)
def test_fault_is_caught(fault: str) -> None:
    name, mutate = FAULTS[fault]
    after = mutate(case_of(name))
    assert after != case_of(name), "the mutation changes nothing"
    assert verdict(sample(name), after) != "sound"


def test_how_each_fault_shows(golden: Golden) -> None:
    """Kept as a text, so that nobody takes a fault for caught that fails for another reason."""
    lines = [
        f"{fault}: {verdict(sample(name), mutate(case_of(name)))}" for fault, (name, mutate) in FAULTS.items()
    ]
    golden.check("verdicts.txt", "\n".join(lines) + "\n")
