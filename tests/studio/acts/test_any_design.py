"""Whatever a design is made of, an act leaves a design that can be drawn, or is refused."""

from __future__ import annotations

import random

from hypothesis import HealthCheck, given, settings

from quarterturn.design import Design, format_design, read_design
from quarterturn.studio.acts import RefusedError, do
from quarterturn.studio.stages import Stages
from quarterturn.studio.views import quilt_view
from tests.studio.acts.samples import samples
from tests.trees import tops

SOME = 6


@given(tops())
@settings(max_examples=25, suppress_health_check=list(HealthCheck))
def test_an_act_leaves_a_design_that_can_be_drawn(made: Design) -> None:
    text, stages = format_design(made), Stages()
    design = read_design(text).design
    assert design is not None
    acts = [act for act in samples(design) if not act.may_break]
    for act in random.Random(len(text)).sample(acts, SOME):
        try:
            done = do(act.model_copy(update={"anyway": True}), text, stages)
        except RefusedError:
            continue
        assert quilt_view(1, done.made.size()).width > 0
