"""Drafting a design anew in the other units: each length that it states at the nearest mark of the other ruler.

The two are never mixed in one pattern, and an inch that is only called 25.4 mm can be cut by nobody. Units keep their
proportions; masters follow from what their units finish at, and allowances that are usual become those usual there.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from quarterturn.design import Design, Recipe, dotted, read_design, write_length
from quarterturn.design.defaults import default_making, default_trim
from quarterturn.measure import INCH, MM, Length, LengthError, Units, parse_length
from quarterturn.measure.rounding import round_nearest
from quarterturn.setting import FIT_CODES
from quarterturn.studio.acts.model import Act, Change, RefusedError, written
from quarterturn.studio.stages import Stages

Key = tuple[str | int, ...]
_MARKS = {
    Units.INCH: ((INCH, INCH / 4), (INCH / 4, INCH / 8), (Length(0), INCH / 16)),
    Units.METRIC: ((20 * MM, 5 * MM), (5 * MM, 1 * MM), (Length(0), MM / 2)),
}
"""From each length on, at which marks of the ruler it is drafted."""
_MASTER = {"start": "width", "width": "width", "height": "height"}
"""Keys of a recipe that are a side of its master."""


class ChangeUnits(Act):
    """Draft a design anew in inches or in metric: every length that it states at the nearest mark of that ruler."""

    key: ClassVar[str] = ""
    name: Literal["change-units"] = "change-units"
    units: Literal["inch", "metric"]

    def change(self, text: str, design: Design) -> Change:
        """Write each length anew, and the units; where that makes no design, anyway, each as long as it is."""
        units = Units(self.units)
        if design.units is units:
            return Change(text)
        stated = lengths_of(text, design)
        changed = written(text, {**_Anew(design, units).changes(stated), "units": self.units})
        stops = [finding for finding in Stages().at(changed).stops if finding.code not in FIT_CODES]
        if stops and not self.anyway:
            sentence = f"Not all of it can be brought to the other ruler: {stops[0].sentence}"
            remedy = "Do it anyway, and lengths stay as they are; the proof then says what to draft anew."
            raise RefusedError(sentence, remedy, can_anyway=True)
        if stops:
            changed = written(text, {**_as_long(stated, design), "units": self.units})
        return Change(changed, {"lengths": len(stated)})


def _as_long(stated: Mapping[Key, Length], design: Design) -> dict[str, object]:
    """Return what keys that state a length state in other units, so that it, and what each unit finishes at, stays."""
    kept: dict[str, object] = {
        dotted(*key): write_length(length, design.units) for key, length in stated.items()
    }
    return {**kept, "making.seam": write_length(design.making.seam, design.units)}


def lengths_of(text: str, design: Design) -> Mapping[Key, Length]:
    """Return every length that the text of a design states, by its key.

    A text or number is a length if the design is the same when it stands there in the other units.
    """
    other = Units.METRIC if design.units is Units.INCH else Units.INCH
    found = {}
    for key, told in _leaves(tomllib.loads(text.removeprefix("\ufeff")), ()):
        try:
            length = parse_length(told, design.units)
            same = written(text, {dotted(*key): write_length(length, other)})
        except (LengthError, RefusedError):
            continue
        if read_design(same).design == design:
            found[key] = length
    return found


def _leaves(value: object, key: Key) -> Iterator[tuple[Key, str]]:
    """Yield the keys of all texts and numbers, and each as it is written."""
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from _leaves(inner, (*key, name))
    elif isinstance(value, list):
        for k, inner in enumerate(value):
            yield from _leaves(inner, (*key, k))
    elif isinstance(value, str | int | float) and not isinstance(value, bool):
        yield key, str(value)


@dataclass(frozen=True, slots=True)
class _Anew:
    """How lengths of a design are drafted in other units: its seams as they were, if they were not as usual."""

    design: Design
    units: Units

    def changes(self, stated: Mapping[Key, Length]) -> dict[str, object]:
        """Return what each key that states a length states then; None where it states nothing."""
        usual = default_making(self.design.units)
        found: dict[str, object] = {}
        for key, length in stated.items():
            new: Length | None = nearest_mark(length, self.units)
            match key:
                case ("making", str(name)) if length == getattr(usual, name, None):
                    new = None  # what is usual is not stated, and so is what is usual in the other units
                case ("recipes", str(name), str(side)) if side in _MASTER:
                    new = self._master(self.design.recipe(name), _MASTER[side])
                case ("recipes", str(name), "trim"):
                    new = self._trim(self.design.recipe(name), "width")
            found[dotted(*key)] = None if new is None else write_length(new, self.units)
        return found

    @property
    def seam(self) -> Length:
        seam = self.design.making.seam
        is_usual = seam == default_making(self.design.units).seam
        return default_making(self.units).seam if is_usual else nearest_mark(seam, self.units)

    def _master(self, recipe: Recipe, side: str) -> Length:
        return self._untrimmed(recipe, side) + self._trim(recipe, side)

    def _untrimmed(self, recipe: Recipe, side: str) -> Length:
        """Return the side that the units of a master need in all: as many as it was cut into."""
        before: Length = getattr(recipe, side) - getattr(recipe, f"trim_{side}")
        finished: Length = getattr(recipe, f"finished_{side}")
        count = round(before / (finished + 2 * self.design.making.seam))
        return count * (nearest_mark(finished, self.units) + 2 * self.seam)

    def _trim(self, recipe: Recipe, side: str) -> Length:
        """Return what is trimmed off a master: the usual where it was the usual, or the nearest."""
        trim: Length = getattr(recipe, f"trim_{side}")
        if trim == default_trim(getattr(recipe, side) - trim, self.design.units):
            return default_trim(self._untrimmed(recipe, side), self.units)
        return nearest_mark(trim, self.units)


def nearest_mark(length: Length, units: Units) -> Length:
    """Return the nearest mark of the ruler, and never nothing."""
    step = next(step for least, step in _MARKS[units] if abs(length) >= least)
    return round_nearest(length, step) or (step if length else length)
