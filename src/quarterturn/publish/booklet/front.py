"""The first pages: cover, requirements, and what to read before the first cut."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.design.colour import text_colour_on
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import Block, Cover, FabricKey, Notes, Pairs, Section, Swatch, Table
from quarterturn.publish.picture import Look, top_sheet
from quarterturn.publish.wording import (
    TECHNIQUE,
    abbreviations,
    assumptions,
    borders_said,
    cautions,
    cloth_needs,
    fabric_words,
    listed,
    node_said,
    notions,
    other_needs,
    plural,
    rectangle,
    sections_of,
    size_named,
    sizes_said,
    unit_grid,
    unit_sizes,
    width_line,
)

SQUARE = " square"
LONGEST_ON_COVER = 240
"""Letters of the words about a quilt; longer ones stand on the last page."""


def cover(pattern: Pattern, width: float, height: float) -> Cover:
    """Return the cover, its picture as large as the room allows."""
    design, setting = pattern.design, pattern.setting
    broad = min(width, height * float(setting.width) / float(setting.height))
    facts = (
        (size_named(pattern) or "Finished size", rectangle(design, setting.width, setting.height)),
        *_units_on_cover(pattern),
        ("Skill level", design.house.skill),
        ("Pattern", design.number),
        ("Version", design.version),
    )
    return Cover(
        title=design.title,
        maker=design.maker,
        about=design.about if len(design.about) <= LONGEST_ON_COVER else "",
        technique=TECHNIQUE,
        facts=tuple((name, value) for name, value in facts if value),
        picture=top_sheet(design, pattern.blocks, setting, broad, Look(line=0.06)),
    )


def _units_on_cover(pattern: Pattern) -> Iterator[tuple[str, str]]:
    """Return the finished sizes of the units, without their codes, which mean nothing yet."""
    sizes = list(dict.fromkeys(size for _, size in unit_sizes(pattern)))
    if not sizes:
        return
    if all(size.endswith(SQUARE) for size in sizes):
        sizes = [f"{listed([size.removesuffix(SQUARE) for size in sizes])}{SQUARE}"]
    yield f"Finished {plural(len(pattern.setting.tally), 'unit')}", listed(sizes)


def requirements(pattern: Pattern) -> Iterator[Block]:
    """Return the fabric key, the requirement table, sizes and notions."""
    design = pattern.design
    yield Section("Requirements", opens=True)
    yield FabricKey(
        tuple(Swatch(f.letter, fabric_words(f), f.colour, text_colour_on(f.colour)) for f in design.fabrics)
    )
    needs = (*cloth_needs(pattern), *other_needs(pattern))
    rows = tuple((need.what, need.use, need.amount, need.note) for need in needs)
    yield Table(("To buy", "For", "Amount", "Note"), rows, (3.3, 2.0, 1.3, 2.7))
    yield Notes("", (width_line(pattern),))
    yield Pairs("Finished sizes", _sizes(pattern), columns=2)
    yield Notes("You also need", notions(pattern), ticked=True)


def _sizes(pattern: Pattern) -> tuple[tuple[str, str], ...]:
    design, setting = pattern.design, pattern.setting
    sections = (
        (f"Section {made.name}", f"{rectangle(design, made.node.width, made.node.height)}, ({made.count})")
        for made in sections_of(setting.top)
    )
    said = node_said(setting.centre)
    return (
        ("Quilt", rectangle(design, setting.width, setting.height)),
        ("Quilt centre", rectangle(design, setting.centre.width, setting.centre.height)),
        *((name.capitalize(), size) for name, size in unit_sizes(pattern)),
        ("Units in the setting" if unit_grid(setting.centre) else "Setting", said),
        *sections,
        *borders_said(design),
    )


def before_you_begin(pattern: Pattern, printed: Sequence[str]) -> Iterator[Block]:
    """Return assumptions, words, cautions, and the abbreviations that the printed texts use."""
    yield Section("Before you begin")
    yield Notes("What this pattern takes for granted", assumptions(pattern))
    yield Notes("How it speaks", sizes_said(pattern))
    shorts = abbreviations(printed, pattern.design.units)
    if shorts:
        yield Notes("Abbreviations", tuple(f"{short}: {long}" for short, long in shorts))
    yield Notes("Take care", cautions(pattern), framed=True)
