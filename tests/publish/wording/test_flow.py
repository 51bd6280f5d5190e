"""What the booklet says of the curves: rounds, paths from edge to edge, and paths that end within."""

from __future__ import annotations

import pytest

from quarterturn.publish.wording import flow_facts
from tests.samples import ROUNDS, Changed, pattern_of

MAP = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"


def said(rows: str) -> tuple[str, ...]:
    """Return what is said of a map in which curves meet the middle of each side."""
    return flow_facts(pattern_of(Changed(ROUNDS).with_(MAP, f"{rows}\n").text))


@pytest.mark.parametrize(
    ("rows", "words"),
    [
        ("a2 a3\na1 a0", "1 round closes, a circle."),
        ("a2 a3 b2 b3\na1 a0 b1 b0", "2 rounds close, all of them circles."),
        (
            "a2 a3 a2\na1 a0 a2",
            '1 round closes, a circle; 1 path runs from edge to edge; it is 1½" long; 1 path ends at a seam '
            "between units.",
        ),
        ("a1 a3", '1 path runs from edge to edge; it is 3" long.'),
        ("a1 a3\na3 a1", '2 paths run from edge to edge; the longest is 4½" long.'),
        (
            "a0 a2 a3 a1\na2 a0 a1 a3\na1 a3 a2 a0\na3 a1 a0 a2",
            '1 round closes; 4 paths run from edge to edge; the longest is 1½" long.',
        ),
        ("a2 a2 a3\na2 a1 a0", "1 round closes, a circle; 2 paths end at a seam between units."),
        (
            "a0 a2 a3 a1 b2 b3\na2 a0 a1 a3 b1 b0\na1 a3 a2 a0 b2 b3\na3 a1 a0 a2 b1 b0",
            '3 rounds close, 2 of them circles; 2 paths run from edge to edge; the longest is 1½" long; 2 paths end '
            "at a seam between units.",
        ),
    ],
)
def test_curves_are_counted(rows: str, words: str) -> None:
    assert said(rows)[0] == words


def test_the_sewer_is_told_to_follow_one() -> None:
    assert said("a2 a3\na1 a0")[1].startswith("Follow a curve with your finger")


def test_where_no_curve_goes_on_nothing_is_said() -> None:
    assert said("a0 a0\na0 a0") == ()
    assert said("a2 a2 a2\na2 a1 a2") == ()
