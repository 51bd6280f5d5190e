"""What the requirement table says is never less than what is needed."""

from __future__ import annotations

from quarterturn.measure import Units
from quarterturn.publish.wording.requirements import thread_length


def test_thread_is_bought_by_whole_lengths_that_are_enough() -> None:
    assert thread_length(36.0 * 37 + 1, Units.INCH) == "38 yards"
    assert thread_length(36.0, Units.INCH) == "1 yard"
    assert thread_length(1010 / 25.4, Units.METRIC) == "2 m"
