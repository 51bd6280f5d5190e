"""Settings that quilters have long made of quarter circles, each a small design in two fabrics.

In:  the name of one.
Out: the text of its design, or the text of a new design that begins with it.
Promise: every one reads without a finding, is laid by its own repeat and symmetry, and can be sewn as drawn.
"""

from __future__ import annotations

from dataclasses import dataclass
from importlib.resources import files
from importlib.resources.abc import Traversable

from quarterturn.design import (
    Design,
    FinishedRadius,
    Recipe,
    StraightSet,
    codes_in,
    read_design,
    write_design,
)
from quarterturn.design.text import write_length
from quarterturn.measure import INCH, MM, Length, Units

_METRIC_INCH = 24 * MM
"""What an inch becomes in a metric pattern: four masters of a 4" unit then lie within a metre of cloth."""

_METRIC_STEP = 5 * MM


@dataclass(frozen=True, slots=True)
class KnownSetting:
    """A setting by its name: `repeat` is rows and columns of what is laid over and over, in units."""

    name: str
    text: str
    design: Design
    setting: StraightSet
    repeat: tuple[int, int]

    @property
    def looks(self) -> str:
        """Return a sentence on what it looks like."""
        return self.design.about

    @property
    def colourways(self) -> int:
        """Return how many colourways it needs."""
        return len(codes_in(self.design))


def known_names() -> list[str]:
    """Return the names of all known settings, in the order of the alphabet."""
    return sorted(
        file.name.removesuffix(".toml") for file in _folder().iterdir() if file.name.endswith(".toml")
    )


def known_setting(name: str) -> KnownSetting:
    """Return a setting by its name, one of `known_names`."""
    text = (_folder() / f"{name}.toml").read_text(encoding="utf-8")
    design = read_design(text).design
    assert design is not None, "a known setting reads without a finding"
    setting = design.setting
    assert isinstance(setting, StraightSet), "a known setting is laid in rows and columns"
    rows, columns = setting.size
    return KnownSetting(name, text, design, setting, (rows // setting.down, columns // setting.across))


def begin_with(name: str, title: str, units: Units) -> str:
    """Return the text of a new design of this title that begins with a known setting."""
    known = known_setting(name)
    changes: dict[str, object] = {"title": title}
    if units is Units.METRIC:
        changes["units"] = units.value
        for recipe in known.design.recipes:
            changes |= _metric_sizes(recipe)
    return write_design(known.text, changes)


def _metric_sizes(recipe: Recipe) -> dict[str, object]:
    sizes = {f"recipes.{recipe.name}.finished": recipe.finished}
    if isinstance(recipe.size, FinishedRadius):
        sizes[f"recipes.{recipe.name}.shape.radius"] = recipe.size.radius
    return {key: write_length(_metric(size), Units.METRIC) for key, size in sizes.items()}


def _metric(size: Length) -> Length:
    """Return a size in steps of half a centimetre."""
    return round(size / INCH * _METRIC_INCH / _METRIC_STEP) * _METRIC_STEP


def _folder() -> Traversable:
    return files(__name__)
