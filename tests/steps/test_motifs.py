"""The steps of motifs of recipes of any shape."""

from __future__ import annotations

import pytest

from quarterturn.pipeline import make_pattern
from quarterturn.proof import prove
from quarterturn.steps import Chapter, CutAwayBehind, FuseToPanel, StitchMotifs
from tests.samples import design_of
from tests.section_texts import quilt


def one_motif(width: str) -> str:
    """Return a quilt that is one panel with a heart, which its recipe lays off the middle and turned."""
    return quilt(f"""
[recipes.beat]
kind = "shapes cut"
start = '9 1/2"'
trim = '1/2"'
cuts = "both ways"

[[recipes.beat.shapes]]
name = "heart"
outline = "heart"
width = '{width}'
at = ['1"', '1/2"']
turn = 30

[sections.vase]
kind = "panel"
fabric = "A"
width = '8"'
height = '12"'
motifs = [{{ recipe = "beat", fabric = "B", at = ['4"', '4"'], turn = 45 }}]

[setting]
kind = "straight"
map = "vase0 vase0"
""")


@pytest.mark.parametrize(
    ("width", "actions"),
    [
        ('4"', [FuseToPanel, StitchMotifs, CutAwayBehind]),
        ('3/8"', [FuseToPanel, StitchMotifs]),
    ],
)
def test_nothing_is_cut_away_behind_a_motif_that_web_holds_everywhere(
    width: str, actions: list[type]
) -> None:
    pattern = make_pattern(design_of(one_motif(width)))
    assert [type(step.action) for step in pattern.steps.of(Chapter.PANELS)] == actions
    assert prove(pattern).holds
