"""The envelope's front: what there is to begin with."""

from __future__ import annotations

from quarterturn.design import BEDS, read_design
from quarterturn.measure import Length, Units, show_rectangle
from quarterturn.setting.known import known_names, known_setting
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.beginning import PALETTES
from quarterturn.studio.views.model import View


class ExampleView(View):
    """A design to look at: an example, or a known setting."""

    name: str
    title: str
    about: str


class BedView(View):
    """A known mattress, and its size as it is told in each of the units."""

    name: str
    sizes: dict[str, str]


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
    return BedView(name=name, sizes={units.value: show_rectangle(width, length, units) for units in Units})


def picture_svg(size: OneSize, width: float = 120.0) -> str:
    """Return the sewn top as a drawing of so many millimetres across. Raises UnmadeError."""
    from quarterturn.publish import PLAIN, sheet_svg, top_sheet

    sheet = top_sheet(size.laid_design, size.blocks, size.setting, width, PLAIN)
    return size.once(f"picture {width}", lambda: sheet_svg(sheet))
