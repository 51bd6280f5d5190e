"""Each check of the web ring fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import pytest

from quarterturn.geometry import Region, disc
from quarterturn.pipeline import run
from quarterturn.proof import prove
from quarterturn.steps import TraceRings
from tests.proof.checks.sound import Spoil, action, found, making, one_more, recipe, step, text
from tests.recipe_samples import RIPPLES

SMALL = recipe("finished = '4\"'\nshape = { diameter = '7/8\"' }")
FIRES: dict[str, Spoil] = {
    "ring-no-hollow": text(SMALL),
    "ring-too-narrow": text(making("ring_in = '1/16\"'")),
    "ground-glued": text(making("ring_in = '1/2\"'")),
    "cut-away-too-close": text(making("cut_away = '1/16\"'")),
    "nothing-to-cut-away": text(SMALL),
    "ring-lines-wrong": action(TraceRings, ring_in=Region(())),
    "rings-miscounted": step(TraceRings, one_more),
}
PASSES: dict[str, Spoil] = {
    "ring-no-hollow": text(recipe("finished = '4\"'\nshape = { diameter = '1\"' }")),
    "ring-too-narrow": text(making("ring_in = '1/8\"'")),
    "ground-glued": text(making("ring_in = '5/16\"'\ncut_away = '5/16\"'")),
    "cut-away-too-close": text(making("cut_away = '1/8\"'")),
    "nothing-to-cut-away": text(recipe("finished = '4\"'\nshape = { diameter = '1 1/4\"' }")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_ring_cut_too_wide_is_found() -> None:
    wide = action(TraceRings, ring_out=disc(3.0))
    assert 'measures 6" across' in found("ring-lines-wrong", wide())[0]


@pytest.mark.parametrize(("underlap", "faults"), [("1/8", 1), ("7/32", 0)])
def test_what_lies_below_a_shape_is_not_glued_where_it_is_cut_away(underlap: str, faults: int) -> None:
    """Web 1/4" inside the line, a stitch of 1.5 mm: with 7/32" left inside it the cut runs clear of the web."""
    text = RIPPLES.replace("underlap = '1/2\"'", f"underlap = '{underlap}\"'")
    job = run(text.encode(), "ripples.toml")
    assert [finding.code for finding in job.findings].count("ground-glued") == faults
    assert job.pattern is not None
    assert len(prove(job.pattern).findings) == faults
