"""The text of a new design from a few choices: a size, a unit, colours, a known setting."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    BEDS,
    BORDER_STEP,
    DROP,
    WITHIN,
    Bed,
    Design,
    Growth,
    StraightSet,
    dotted,
    fit_over,
    nearest_fit,
    read_design,
    rounds_map,
    starter,
    write_design,
    write_length,
)
from quarterturn.design.colour import value_of
from quarterturn.design.limits import LARGEST_QUILT, MOST_ROWS
from quarterturn.measure import MM, Length, LengthError, Units, parse_length, show_length
from quarterturn.proof import changes_of
from quarterturn.setting import fit_to, nearest_to, outermost_of, with_repeats
from quarterturn.setting.known import begin_with, known_names
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

ALL_CODES = ("ac", "bd")
"""Codes of the circles in the ring and within it, where a new design has all colours of a palette."""

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


class BegunView(View):
    """What a new design comes to: its finished size, how many units it has, and how far it hangs down from its bed."""

    width: str
    height: str
    count: int
    sides: str
    """How far at each side; empty where it is for no bed, as are the next two."""
    foot: str
    pillows: str
    """What is left to be tucked behind the pillows; empty where nothing is."""


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
    text = _coloured(text, new.colours, adds=new.setting is None) if new.colours else text
    text = _in_blocks(text, new.block) if new.block else text
    return _sized(text, new, units)


def begun(new: NewDesign, size: OneSize) -> BegunView:
    """Return what a new design comes to, from its own size as it is laid."""
    setting, design = size.setting, size.laid_design
    bed = design.bed
    hangs = bed.hangs(setting.width, setting.height) if bed else ()
    sides, foot, pillows = (show_length(each, design.units) if each else "" for each in hangs or (0, 0, 0))
    return BegunView(
        width=show_length(setting.width, design.units),
        height=show_length(setting.height, design.units),
        count=len(setting.units),
        sides=sides,
        foot=foot,
        pillows=pillows,
    )


def _coloured(text: str, palette: str, *, adds: bool) -> str:
    """Return the text with the colours of a palette, and what they are called; `adds` those that it lacks cloth for."""
    if palette not in PALETTES:
        raise RefusedError(f"There are no colours {palette!r}.", f"Choose {', '.join(PALETTES)}.")
    fabrics = sorted(_read(text).fabrics, key=lambda fabric: -value_of(fabric.colour))
    base = sorted(PALETTES[palette].items(), key=lambda named: -value_of(named[1]))
    if adds:
        return write_design(text, _all_colours(base))
    last = max(len(fabrics) - 1, 1)
    chosen = ((fabric.letter, base[round(k * (len(base) - 1) / last)]) for k, fabric in enumerate(fabrics))
    return write_design(text, _named_colours(chosen))


def _all_colours(base: list[tuple[str, str]]) -> dict[str, object]:
    """Return the changes that give the starter all colours: the lightest and the darkest as grounds."""
    light, *rest, dark = base
    chosen = [("A", light), ("B", dark), *zip("CDE", rest, strict=True)]
    changes = {**_named_colours(chosen), "setting.map": rounds_map(6, 6, *ALL_CODES)}
    for letter in "DE":
        changes[dotted("fabrics", letter, "role")] = "circles"
    for code, ground, shape in (("c", "A", "D"), ("d", "B", "E")):
        own: dict[str, object] = {"recipe": "round", "ground": ground, "shape": shape}
        changes |= {dotted("colourways", code, key): value for key, value in own.items()}
    return changes


def _named_colours(chosen: Iterable[tuple[str, tuple[str, str]]]) -> dict[str, object]:
    changes: dict[str, object] = {}
    for letter, (name, colour) in chosen:
        changes[dotted("fabrics", letter, "name")] = name
        changes[dotted("fabrics", letter, "colour")] = colour
    return changes


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
    """Return the text with the fewest repeats that cover a bed, or those that come nearest to a size."""
    if new.bed is None and new.size is None:
        return text
    design = _read(text)
    if new.bed is not None:
        if new.bed not in BEDS:
            raise RefusedError(f"There is no bed {new.bed!r}.", f"Choose {', '.join(BEDS)}.")
        wanted = Bed(new.bed, *BEDS[new.bed], DROP[units], Length(0), WITHIN[units]).wanted
    else:
        assert new.size is not None, "a bed or a size is given"
        wanted = _length(new.size[0], units), _length(new.size[1], units)
        _refuse_huge(wanted, units)
    text = write_design(text, _near(design, wanted, new))
    return _with_bed(text, new.bed) if new.bed else text


def _with_bed(text: str, bed: str) -> str:
    size = bed[:20]
    return write_design(text, {"size": size, dotted("sizes", size, "bed"): bed})


def _near(design: Design, wanted: tuple[Length, Length], new: NewDesign) -> dict[str, object]:
    """Return the changes that bring a design to a size: its circles by pairs of units, a known setting by repeats."""
    if new.setting is None:
        return _in_circles(design, wanted, new)
    blocks = draft_blocks(design)
    if new.bed is not None:
        fit = fit_to(design, blocks, wanted)
    else:
        fit = nearest_to(design, blocks, wanted, WITHIN[design.units])
    grown = with_repeats(design, fit.across, fit.down).setting
    assert isinstance(grown, StraightSet), "known settings repeat"
    _refuse_large(*grown.size)
    return dict(changes_of(design, fit))


def _in_circles(design: Design, wanted: tuple[Length, Length], new: NewDesign) -> dict[str, object]:
    border, step = outermost_of(design), BORDER_STEP[design.units]
    assert border is not None, "the starter has a plain border"
    pair = 2 * design.recipes[0].finished
    grows = Growth(2 * border + pair, pair)  # of two pairs at least: there is a circle within the ring
    if new.bed is not None:
        fit = fit_over(wanted, grows, grows, border, step)
    else:
        fit = nearest_fit(wanted, grows, grows, border, step, step)
    rows, columns = 2 * (fit.down + 1), 2 * (fit.across + 1)
    _refuse_large(rows, columns)
    codes = ALL_CODES if new.colours else ("a", "b")
    changes: dict[str, object] = {"setting.map": rounds_map(rows, columns, *codes)}
    if fit.border is not None:
        changes["borders.0.width"] = write_length(fit.border, design.units)
    return changes


def _refuse_huge(wanted: tuple[Length, Length], units: Units) -> None:
    if max(wanted) > LARGEST_QUILT:
        most, asked = show_length(LARGEST_QUILT, units), show_length(max(wanted), units)
        raise RefusedError(f"A quilt of {asked} is larger than any.", f"Give sides up to {most}.")


def _refuse_large(rows: int, columns: int) -> None:
    if max(rows, columns) > MOST_ROWS:
        raise RefusedError(
            f"That takes {rows} rows of {columns} units; a map has {MOST_ROWS} of each at most.",
            "Choose a smaller quilt, or a larger unit.",
        )


def _length(text: str, units: Units) -> Length:
    try:
        return parse_length(text, units)
    except LengthError as error:
        raise RefusedError(f"{text!r} is not a length.", "Write one such as 4 in, or 10 cm.") from error


def _read(text: str) -> Design:
    design = read_design(text).design
    assert design is not None, "a new design reads without a finding that stops"
    return design
