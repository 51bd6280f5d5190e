"""What the booklet says and shows of borders cut along the cloth."""

from __future__ import annotations

from functools import cache

from quarterturn.proof import Pattern
from quarterturn.publish.figures import cloth_figure
from quarterturn.publish.figures.cloth import LONGEST
from quarterturn.publish.wording import plan_line, tell
from quarterturn.steps import CutRest, Subcut
from tests.samples import pattern_of, quay_with_borders


@cache
def quay() -> Pattern:
    return pattern_of(quay_with_borders("lengthwise"))


def test_the_booklet_says_how_borders_are_cut_and_what_the_other_way_takes() -> None:
    pattern = quay()
    band = next(s for s in pattern.steps.steps if isinstance(s.action, Subcut) and s.uses[0].label == "Bs1")
    rest = next(s for s in pattern.steps.steps if isinstance(s.action, CutRest))
    said = tell(band, pattern).line
    assert said.startswith("cut along the cloth into (2) ")
    assert said.endswith("– Bs1 rest")
    assert tell(rest, pattern).line == (
        'Cut Bs1 rest into (7) 9½" × 20" strips – Bs2 and (2) 2½" × 20" strips – Bs3'
    )
    assert "without joins; joined, they take as much." in plan_line(pattern, pattern.materials.plan("B"))


def test_the_figure_shows_the_pieces_cut_from_the_rest() -> None:
    pattern = quay()
    sheet = cloth_figure(pattern, pattern.materials.plan("B"), 100)
    assert '(7) strips 9½" high, each: 2 of B3' in sheet.alt
    assert sheet.height < LONGEST + 20


def test_joined_borders_say_what_the_other_way_takes() -> None:
    pattern = pattern_of(quay_with_borders("cheapest"))
    said = plan_line(pattern, pattern.materials.plan("B"))
    assert "joined from strips; cut along the cloth, they take as much." in said
