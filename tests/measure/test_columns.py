"""Columns line up, and no line ends in space."""

from __future__ import annotations

from quarterturn.measure import aligned


def test_cells_are_padded_to_the_widest_of_their_column() -> None:
    assert aligned([("a", "12", "x"), ("bcd", "3", "y")], indent="", right=[1]) == [
        "a    12  x",
        "bcd   3  y",
    ]


def test_a_short_row_leaves_its_last_columns_empty_and_ends_without_space() -> None:
    assert aligned([("a",), ("bcd", "3")]) == ["  a", "  bcd  3"]


def test_no_rows_give_no_lines() -> None:
    assert aligned([]) == []
