"""Changing the units in which a design is drafted and printed; no length that it states becomes another."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from typing import ClassVar, Literal

from quarterturn.design import Design, dotted, read_design, write_length
from quarterturn.measure import Units
from quarterturn.studio.acts.model import Act, Change, RefusedError, written

_BARE = re.compile(
    r"[-−]?\s*(?:\d+(?:\.\d+)?|\.\d+)(?:[\s-]+\d+/\d+|\s*[½⅓⅔¼¾⅛⅜⅝⅞])?|[-−]?\s*(?:\d+/\d+|[½⅓⅔¼¾⅛⅜⅝⅞])"
)
_WORDS = {Units.INCH: '"', Units.METRIC: " mm"}


class ChangeUnits(Act):
    """Draft and print in the other units: stated lengths and seams stay, other allowances are as is usual."""

    key: ClassVar[str] = ""
    name: Literal["change-units"] = "change-units"
    units: Literal["inch", "metric"]

    def change(self, text: str, design: Design) -> Change:
        """Write the units behind each bare length, and then the others for the whole."""
        if design.units.value == self.units:
            return Change(text)
        stated = with_units_stated(text, design)
        if read_design(stated).design != design:
            sentence = "Some lengths of the file have no units of their own."
            raise RefusedError(sentence, "Write inches or millimetres behind each, and try again.")
        seam = write_length(design.making.seam, design.units)  # or units would finish otherwise
        return Change(written(stated, {"making.seam": seam, "units": self.units}), {"seam": seam})


def with_units_stated(text: str, design: Design) -> str:
    """Return the text with the units of the design behind each bare length.

    A bare number is a length if with units the text is the same design: a count with units is none.
    """
    for key, number in _numbers(tomllib.loads(text.removeprefix("\ufeff")), ()):
        try:
            told = written(text, {dotted(*key): f"{number}{_WORDS[design.units]}"})
        except RefusedError:
            continue
        if read_design(told).design == design:
            text = told
    return text


def _numbers(value: object, key: tuple[str | int, ...]) -> Iterator[tuple[tuple[str | int, ...], str]]:
    """Yield the keys of all bare numbers, and each as it is written."""
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from _numbers(inner, (*key, name))
    elif isinstance(value, list):
        for k, inner in enumerate(value):
            yield from _numbers(inner, (*key, k))
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield key, str(value)
    elif isinstance(value, str) and _BARE.fullmatch(value.strip()):
        yield key, value.strip()
