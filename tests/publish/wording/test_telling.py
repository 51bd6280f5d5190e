"""Every kind of action is told, in the trade's style, with the step's own numbers."""

from __future__ import annotations

import re
from functools import cache
from typing import get_args

import pytest

from quarterturn.proof import Pattern
from quarterturn.publish.wording import TELLERS, tell
from quarterturn.steps import (
    Action,
    AddBorder,
    CutApart,
    CutAway,
    CutOut,
    CutStrips,
    JoinEnds,
    LayOut,
    SewLine,
    Step,
    StitchEdge,
    Subcut,
    TraceRings,
    Trim,
)
from tests.conftest import Golden
from tests.samples import ROUNDS, Changed, pattern_of

METRIC = (
    Changed(ROUNDS)
    .with_('units = "inch"', 'units = "metric"')
    .with_("finished = '2\"'", 'finished = "50 mm"')
    .with_("width = '1 1/2\"'", 'width = "40 mm"')
    .text
)


@cache
def rounds() -> Pattern:
    return pattern_of(ROUNDS)


def steps_of(kind: type, pattern: Pattern | None = None) -> list[Step]:
    return [s for s in (pattern or rounds()).steps.steps if isinstance(s.action, kind)]


def line(kind: type) -> str:
    return tell(steps_of(kind)[0], rounds()).line


def words(kind: type) -> str:
    told = tell(steps_of(kind)[0], rounds())
    return " ".join((told.title, *told.sentences, told.line))


def test_every_kind_of_action_has_its_words() -> None:
    assert set(TELLERS) == set(get_args(Action))


@pytest.mark.parametrize(("text", "name"), [(ROUNDS, "rounds"), (METRIC, "metric")])
def test_all_that_is_said_of_a_design(text: str, name: str, golden: Golden) -> None:
    pattern = pattern_of(text)
    told = [(step, tell(step, pattern)) for step in pattern.steps.steps]
    golden.check(
        f"{name}.txt",
        "".join(f"{s.number}. {w.title} | {' '.join(w.sentences)} | {w.line}\n" for s, w in told),
    )


def test_strips_are_cut_by_the_width_of_the_fabric_and_subcut() -> None:
    step = steps_of(CutStrips)[0]
    assert re.fullmatch(rf"Cut \({step.makes[0].count}\) [\d½¼¾⅛⅜⅝⅞]+\" × WOF strips?.*", line(CutStrips))
    assert line(Subcut).startswith("subcut into (")
    assert steps_of(Subcut)[0].makes[0].label in line(Subcut)


def test_a_square_has_one_number_and_a_strip_two() -> None:
    told = " ".join(tell(s, rounds()).line for s in steps_of(Subcut))
    assert re.search(r'\(\d+\) \d[½¼¾⅛⅜⅝⅞]?" squares?', told)
    assert re.search(r'\(2\) 2" × \d+[½¼¾⅛⅜⅝⅞]?" strips', told)


def test_a_joined_run_says_how_and_at_what_loss() -> None:
    told = [tell(s, rounds()).line for s in steps_of(JoinEnds) if s.uses[0].count > 1]
    assert any("diagonal seams" in said and "each join takes" in said for said in told)


def test_tracings_are_counted_and_a_symmetrical_shape_needs_no_mirroring() -> None:
    step = steps_of(TraceRings)[0]
    assert f"trace ({step.makes[0].count}), up to" in line(TraceRings)
    assert "needs no mirroring" in words(TraceRings)


def test_shapes_are_counted_by_fabric() -> None:
    assert line(CutOut).startswith("Fabric B (ink, circles): make (")


def test_stitch_settings_are_starting_values_in_millimetres() -> None:
    assert "1.5 mm wide and 1.4 mm long" in words(StitchEdge)
    assert "starting values" in words(StitchEdge)
    assert "between two creases" in words(StitchEdge)


def test_cutting_apart_gives_four_units_of_a_master() -> None:
    step = steps_of(CutApart)[0]
    assert f"cut ({step.uses[0].count}) " in line(CutApart)
    assert f"make ({step.uses[0].count * 4}) unit a" in line(CutApart)


def test_only_the_outer_edges_are_trimmed_and_the_unit_is_unfinished() -> None:
    assert "trim the two outer edges only" in words(Trim)
    assert line(Trim).endswith('each should measure 2½" square, unfinished.')


def test_the_ground_is_cut_away_inside_the_stitching() -> None:
    assert '¼" inside the stitching' in words(CutAway)


def test_units_are_named_with_their_turns() -> None:
    pairs = [s for s in steps_of(SewLine) if s.makes[0].label.startswith("pair")]
    made = pairs[0].makes[0].count
    assert tell(pairs[0], rounds()).line == f"Pair 1: a2 and a3. Make ({made}), pressed to the right."


def test_a_row_says_where_it_stands() -> None:
    rows = [s for s in steps_of(SewLine) if s.makes[0].label.startswith("row")]
    assert tell(rows[0], rounds()).line.endswith("Make (1): row 1 from the top.")


def test_rows_and_units_of_the_layout_are_counted() -> None:
    assert line(LayOut).startswith("(3) rows of (5) units")


def test_a_border_asks_to_measure_the_top_and_says_its_new_size() -> None:
    step = steps_of(AddBorder)[0]
    assert "Measure your own top" in words(AddBorder)
    assert f"(1) {step.uses[1].label}" in line(AddBorder)
    assert "The top now measures" in line(AddBorder)


def test_steps_told_alike_differ_only_in_their_lines() -> None:
    told = [tell(s, rounds()) for s in steps_of(CutApart)]
    assert len({w.alike for w in told}) == 1
    assert len({w.line for w in told}) == len(told) == 2


@pytest.mark.parametrize("text", [ROUNDS, METRIC])
def test_no_sentence_has_a_decimal_before_an_inch_mark_or_a_bare_fraction(text: str) -> None:
    pattern = pattern_of(text)
    said = [
        s for step in pattern.steps.steps for s in (*tell(step, pattern).sentences, tell(step, pattern).line)
    ]
    assert [s for s in said if re.search(r'\d\.\d+"|\b\d/(2|4|8|16)\b', s)] == []


def test_a_metric_pattern_says_no_inches() -> None:
    pattern = pattern_of(METRIC)
    assert [tell(s, pattern) for s in pattern.steps.steps if '"' in str(tell(s, pattern).line)] == []
