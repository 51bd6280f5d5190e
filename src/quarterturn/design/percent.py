"""Read numbers that are no lengths: prices, minutes, percentages."""

from __future__ import annotations

from fractions import Fraction

from quarterturn.design.notes import Notes

Raw = int | float | None


def read_number(raw: Raw, key: str, most: int, notes: Notes) -> Fraction | None:
    """Return a number from 0 to `most`; None where there is none, or no good one."""
    if raw is None:
        return None
    if 0 <= raw <= most:
        return Fraction(repr(raw))
    name = key.rpartition(".")[2]
    notes.add("count-out-of-range", key, f"`{name}` is out of range.", f"Give a number from 0 to {most:,}.")
    return None


def read_percent(raw: Raw, key: str, most: int, notes: Notes, default: Fraction = Fraction(0)) -> Fraction:
    """Return a percentage as a share."""
    percent = read_number(raw, key, most, notes)
    return default if percent is None else percent / 100
