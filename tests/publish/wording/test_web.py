"""What is said of room on the web agrees with what lies there."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

from hypothesis import given
from hypothesis import strategies as st

from quarterturn.measure import Units, inches, parse_length
from quarterturn.publish.wording import room_side, tell
from quarterturn.steps import TraceRings
from tests.samples import ROUNDS, design_of, pattern_of

EXAMPLES = Path(__file__).parents[3] / "examples"

DESIGN = design_of(ROUNDS)


@given(st.fractions(1, 12, max_denominator=10_000), st.integers(1, 6))
def test_a_room_as_it_is_told_is_enough_and_never_makes_a_row_too_wide(side: Fraction, count: int) -> None:
    web = count * side
    said = room_side(DESIGN, side, count, inches(0), web)
    told, step = parse_length(said.removeprefix("a little over "), Units.INCH), inches(0, 1, 16)
    assert count * told <= web + count * Fraction(2, 10**6)
    assert side - step < told
    if not said.startswith("a little over "):
        assert side <= told + Fraction(1, 10**6)


def test_a_room_is_rounded_up_unless_a_row_of_it_would_be_too_wide() -> None:
    side = Fraction(283, 100)
    assert room_side(DESIGN, side) == '2⅞"'
    assert room_side(DESIGN, side, 5, inches(0), inches(17)) == '2⅞"'
    assert room_side(DESIGN, side, 6, inches(0), inches(17)) == 'a little over 2¹³⁄₁₆"'
    assert room_side(DESIGN, inches(8, 1, 2), 2, inches(0), inches(17)) == '8½"'


def test_rows_that_lie_in_one_line_are_told_as_one_row() -> None:
    """Two pears upright and two on their heads between them: four in a row, 4⅛″ from middle to middle."""
    pattern = pattern_of((EXAMPLES / "pears-in-the-pantry.toml").read_text(encoding="utf-8"))
    said, rule = next(
        (tell(step, pattern).line, step.action.stagger)
        for step in pattern.steps.steps
        if isinstance(step.action, TraceRings) and step.action.stagger
    )
    assert rule.in_one_line
    assert ' in rows of (4). The first row is 3⅛"' in said
    assert 'from the left edge, then one every 4⅛". Rows are 6¼" apart.' in said
    assert "Turn every second template in a row by a half." in said
