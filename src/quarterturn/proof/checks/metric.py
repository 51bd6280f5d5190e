"""Checks of the units of measure (group I of the trade's list): a pattern is drafted in one system only."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.design import (
    AnyBorder,
    Border,
    Coping,
    Design,
    LineSet,
    OnPointSet,
    PanelSet,
    RecipeKind,
    SectionSet,
    Severity,
    StraightSet,
    Strip,
    dotted,
)
from quarterturn.measure import MM, Length, Units
from quarterturn.proof.checks.fault import Fault, check, tell
from quarterturn.proof.checks.walking import settings_of
from quarterturn.proof.model import Pattern


def mixed_units(pattern: Pattern) -> Iterator[Fault]:
    """Tell of inch sizes in a metric pattern, and of metric sizes in inches."""
    units = pattern.design.units
    other = "inches" if units is Units.METRIC else "millimetres"
    for key, value in _sizes(pattern.design):
        if not _at_home(value, units) and _at_home(value, _other(units)):
            sentence = (
                f"{key} is drafted in {other}, {tell(value, _other(units))}; in this pattern that is "
                f"{tell(float(value), units)}, which cannot be measured."
            )
            yield Fault(key, sentence, f"Draft it anew: nearest is {_nearest(value, units)}.")


def _other(units: Units) -> Units:
    return Units.INCH if units is Units.METRIC else Units.METRIC


def _at_home(value: Length, units: Units) -> bool:
    """Tell whether a length is a multiple of 1/16", or of half a millimetre."""
    return (value * 16 if units is Units.INCH else value / MM * 2).denominator == 1


def _nearest(value: Length, units: Units) -> str:
    step = Length(1, 8) if units is Units.INCH else 5 * MM
    return tell(round(value / step) * step, units)


def _sizes(design: Design) -> Iterator[tuple[str, Length]]:
    for recipe in design.recipes:
        if recipe.kind is RecipeKind.SHAPES:
            yield dotted("recipes", recipe.name, "width"), recipe.width
            yield dotted("recipes", recipe.name, "height"), recipe.height
        else:
            yield dotted("recipes", recipe.name, "finished"), recipe.finished
        yield dotted("recipes", recipe.name, "trim"), recipe.trim_width
    yield from _border_widths("borders", design.borders)
    for key, setting in settings_of(design):
        yield from _setting_sizes(key, setting)
        yield from _border_widths(dotted(*key.split("."), "borders"), setting.borders)
    yield "binding.width", design.binding_width
    yield "making.seam", design.making.seam
    yield "making.ring_in", design.making.ring_in
    yield "making.cut_away", design.making.cut_away


def _border_widths(key: str, borders: Sequence[AnyBorder]) -> Iterator[tuple[str, Length]]:
    for number, border in enumerate(borders):
        if isinstance(border, Border):
            yield f"{key}.{number}.width", border.width
        elif isinstance(border, Coping):
            yield from ((f"{key}.{number}.to", size) for size in (border.width, border.height))


def _setting_sizes(key: str, setting: SectionSet) -> Iterator[tuple[str, Length]]:
    match setting:
        case StraightSet() | OnPointSet():
            if setting.sashing:
                yield f"{key}.sashing.width", setting.sashing.width
        case LineSet():
            yield from ((f"{key}.parts", part.width) for part in setting.parts if isinstance(part, Strip))
        case PanelSet():
            yield f"{key}.width", setting.width
            yield f"{key}.height", setting.height


METRIC = (
    check("units-mixed", Severity.STOPS, (97,), "A pattern keeps to inches or to metric.", mixed_units),
)
