"""Tens of whole small quilts of random measure, from text to a rehearsed top, and twice the same."""

from __future__ import annotations

import random

import pytest

from quarterturn.materials import materials_text
from quarterturn.pipeline import make_pattern
from quarterturn.proof import ACCEPTED, check_pattern, prove
from quarterturn.proof.checks.fault import REBUILD
from quarterturn.steps import steps_text
from tests.samples import ROUNDS, Changed, design_of

QUILTS = 40


def text_of(seed: int) -> str:
    """Return a small quilt: units, repeats, borders, widths, prints, slack, spares and binding by chance."""
    draw = random.Random(seed)
    width = draw.choice([22, 30, 40, 42, 58])
    print_ = draw.choice(["", "", '\ndirection = "one-way"', '\ndirection = "two-way"'])
    made = "\n".join(
        (
            "[making]",
            f"spare_masters = {draw.randint(0, 2)}",
            f"slack = '{draw.randint(1, 4)}\"'",
            f'borders = "{draw.choice(["lengthwise", "crosswise", "cheapest"])}"',
        )
    )
    kind = draw.choice(["", "", "", 'kind = "bias"\n'])
    changes = (
        ("finished = '2\"'", f"finished = '{draw.choice([2, 3, 4, 5])} {draw.choice([1, 3])}/4\"'"),
        (
            'kind = "straight"',
            f'kind = "straight"\nacross = {draw.randint(1, 4)}\ndown = {draw.randint(1, 4)}',
        ),
        ('role = "circles"', f'role = "circles"\nwidth = \'{width}"\'{print_}'),
        ('role = "border"', f'role = "border"\nshrink_along = {draw.choice([0, 0, 3])}'),
        ("[binding]\n", f"{made}\n\n[binding]\n{kind}"),
    )
    changed = Changed(ROUNDS)
    for before, after in changes:
        changed = changed.with_(before, after)
    return changed.text


@pytest.mark.parametrize("seed", range(QUILTS))
def test_a_small_quilt_is_sewn_as_drawn_with_what_is_bought_and_twice_alike(seed: int) -> None:
    design = design_of(text_of(seed))
    one, other = make_pattern(design), make_pattern(design)
    proof = prove(one)
    assert proof.findings == ()
    assert proof.share <= ACCEPTED
    assert [finding.sentence for finding in check_pattern(one) if finding.remedy == REBUILD] == []
    assert min(proof.rehearsal.cloth_left.values()) >= 0
    assert proof.rehearsal.web_left >= 0
    units = design.units
    assert materials_text(one.materials, units) == materials_text(other.materials, units)
    assert steps_text(one.steps, units) == steps_text(other.steps, units)
