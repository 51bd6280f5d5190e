"""The envelope's front: what there is to begin with, and the text of a new design from a few choices."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    BEDS,
    DROP,
    WITHIN,
    Bed,
    Design,
    Fit,
    dotted,
    read_design,
    starter,
    write_design,
    write_length,
)
from quarterturn.design.colour import value_of
from quarterturn.measure import MM, Length, LengthError, Units, parse_length, show_length
from quarterturn.proof import changes_of
from quarterturn.setting import fit_to
from quarterturn.setting.known import begin_with, known_names, known_setting
from quarterturn.studio.acts import RefusedError
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View

PALETTES: dict[str, dict[str, str]] = {
    "harbour": {
        "sailcloth": "#f1e5d0",
        "tide": "#6d979b",
        "deep": "#1b2a3f",
        "lamplight": "#e8b04f",
        "rust": "#a5402c",
    },
    "orchard": {
        "blossom": "#f3ead8",
        "lichen": "#a9b08a",
        "leaf": "#3e5842",
        "russet": "#b4602c",
        "plum": "#56203f",
    },
    "frost": {
        "snow": "#f4f6f5",
        "ice": "#b9c9d2",
        "slate blue": "#6b86a0",
        "night": "#2f4159",
        "rose": "#c98f9b",
    },
    "kiln": {"slip": "#f4e9db", "clay": "#d9a37b", "brick": "#b5553c", "umber": "#5d2f2a", "soot": "#2f3b3a"},
    "meadow": {
        "cream": "#fbf4d9",
        "buttercup": "#e3c04c",
        "grass": "#7f9a45",
        "hedge": "#33553c",
        "clover": "#8a4b7d",
    },
    "slate": {
        "chalk": "#efefec",
        "ash": "#c2c3be",
        "pewter": "#8d9192",
        "slate": "#565d63",
        "coal": "#2b2f35",
    },
}
"""Colours to begin with, by name, light to dark and then accents; all invented."""

LengthText = Annotated[str, Field(min_length=1, max_length=40)]


class NewDesign(BaseModel):
    """What a new design begins from: a size (a bed, or width and height), a block, colours, a known setting.

    `block` is the finished side of a unit.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")
    title: Annotated[str, Field(min_length=1, max_length=120)] = "Untitled"
    units: Literal["inch", "metric"] = "inch"
    bed: Annotated[str, Field(max_length=40)] | None = None
    size: tuple[LengthText, LengthText] | None = None
    block: LengthText | None = None
    colours: Annotated[str, Field(max_length=40)] | None = None
    setting: Annotated[str, Field(max_length=60)] | None = None


class ExampleView(View):
    """A design to look at: an example, or a known setting."""

    name: str
    title: str
    about: str


class BedView(View):
    """A known mattress."""

    name: str
    width: str
    length: str


class PaletteName(View):
    """Colours to begin with."""

    name: str
    colours: tuple[str, ...]


class RecentView(View):
    """A design that was open before."""

    id: str | None
    path: str
    title: str
    changed: str
    missing: bool


class StartView(View):
    """All that a person can begin from."""

    recent: tuple[RecentView, ...]
    examples: tuple[ExampleView, ...]
    settings: tuple[ExampleView, ...]
    beds: tuple[BedView, ...]
    units: tuple[str, ...]
    blocks: dict[str, tuple[str, ...]]
    palettes: tuple[PaletteName, ...]


def start_view(recent: tuple[RecentView, ...], examples: dict[str, str]) -> StartView:
    """Return the envelope's front; `examples` are texts of designs by name."""
    return StartView(
        recent=recent,
        examples=tuple(_example(name, text) for name, text in sorted(examples.items())),
        settings=tuple(_setting(name) for name in known_names()),
        beds=tuple(_bed(name, *sides) for name, sides in BEDS.items()),
        units=tuple(units.value for units in Units),
        blocks={"inch": ('3"', '4"', '5"', '6"'), "metric": ("75 mm", "100 mm", "125 mm", "150 mm")},
        palettes=tuple(
            PaletteName(name=name, colours=tuple(colours.values())) for name, colours in PALETTES.items()
        ),
    )


def _example(name: str, text: str) -> ExampleView:
    design = read_design(text).design
    if design is None:
        return ExampleView(name=name, title=name, about="")
    return ExampleView(name=name, title=design.title, about=design.about)


def _setting(name: str) -> ExampleView:
    known = known_setting(name)
    return ExampleView(name=name, title=known.design.title, about=known.looks)


def _bed(name: str, width: Length, length: Length) -> BedView:
    units = Units.METRIC if name.startswith("continental") else Units.INCH
    return BedView(name=name, width=show_length(width, units), length=show_length(length, units))


def picture_svg(size: OneSize, width: float = 120.0) -> str:
    """Return the sewn top as a drawing of so many millimetres across. Raises UnmadeError."""
    from quarterturn.publish import PLAIN, sheet_svg, top_sheet

    sheet = top_sheet(size.laid_design, size.blocks, size.setting, width, PLAIN)
    return size.once(f"picture {width}", lambda: sheet_svg(sheet))


def beginning(new: NewDesign) -> str:
    """Return the text of a new design. Raises RefusedError where a choice is none that there is."""
    units = Units(new.units)
    if new.setting is None:
        text = starter(new.title, units)
    elif new.setting in known_names():
        text = begin_with(new.setting, new.title, units)
    else:
        raise RefusedError(
            f"There is no known setting {new.setting!r}.", f"Choose {', '.join(known_names())}."
        )
    text = _coloured(text, new.colours) if new.colours else text
    text = _in_blocks(text, new.block) if new.block else text
    return _sized(text, new, units)


def _coloured(text: str, palette: str) -> str:
    """Return the text with the colours of a palette, and what they are called."""
    if palette not in PALETTES:
        raise RefusedError(f"There are no colours {palette!r}.", f"Choose {', '.join(PALETTES)}.")
    design = _read(text)
    fabrics = sorted(design.fabrics, key=lambda fabric: -value_of(fabric.colour))
    base = sorted(PALETTES[palette].items(), key=lambda named: -value_of(named[1]))
    last = max(len(fabrics) - 1, 1)
    changes: dict[str, object] = {}
    for k, fabric in enumerate(fabrics):
        name, colour = base[round(k * (len(base) - 1) / last)]
        changes[dotted("fabrics", fabric.letter, "name")] = name
        changes[dotted("fabrics", fabric.letter, "colour")] = colour
    return write_design(text, changes)


def _in_blocks(text: str, block: str) -> str:
    """Return the text with every recipe in proportion, its unit finished as wanted."""
    design = _read(text)
    side = _on_ruler(_length(block, design.units), design.units)
    changes: dict[str, object] = {}
    for recipe in design.recipes:
        share = side / recipe.finished
        changes[dotted("recipes", recipe.name, "finished")] = write_length(side, design.units)
        for name in ("radius", "diameter"):
            value = getattr(recipe.size, name, None)
            if isinstance(value, Length):
                scaled = _on_ruler(value * share, design.units)
                changes[dotted("recipes", recipe.name, "shape", name)] = write_length(scaled, design.units)
    return write_design(text, changes)


def _on_ruler(value: Length, units: Units) -> Length:
    """Return the nearest size that a ruler of the design shows: to 1/8 inch, or to 5 mm."""
    step = Length(1, 8) if units is Units.INCH else 5 * MM
    return round(value / step) * step


def _sized(text: str, new: NewDesign, units: Units) -> str:
    """Return the text with the fewest repeats that cover a bed, or come to a size."""
    if new.bed is None and new.size is None:
        return text
    design = _read(text)
    if new.bed is not None:
        if new.bed not in BEDS:
            raise RefusedError(f"There is no bed {new.bed!r}.", f"Choose {', '.join(BEDS)}.")
        bed = Bed(new.bed, *BEDS[new.bed], DROP[units], Length(0), WITHIN[units])
        wanted = bed.wanted
    else:
        assert new.size is not None, "a bed or a size is given"
        wanted = _length(new.size[0], units), _length(new.size[1], units)
    text = write_design(text, dict(changes_of(design, _fit(design, wanted))))
    return _with_bed(text, new.bed) if new.bed else text


def _with_bed(text: str, bed: str) -> str:
    size = bed[:20]
    return write_design(text, {"size": size, dotted("sizes", size, "bed"): bed})


def _fit(design: Design, wanted: tuple[Length, Length]) -> Fit:
    fit = fit_to(design, draft_blocks(design), wanted)
    setting = design.setting
    rows, columns = getattr(setting, "size", (1, 1))
    if max(fit.down * rows, fit.across * columns) > 200:
        raise RefusedError("So many units are more than a map can have.", "Choose a larger block.")
    return fit


def _length(text: str, units: Units) -> Length:
    try:
        return parse_length(text, units)
    except LengthError as error:
        raise RefusedError(f"{text!r} is not a length.", "Write one such as 4 in, or 10 cm.") from error


def _read(text: str) -> Design:
    design = read_design(text).design
    assert design is not None, "a new design reads without a finding that stops"
    return design
