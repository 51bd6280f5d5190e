"""From the shape of the file to a `Design`: defaults filled in, each part held against the others."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from quarterturn.design import limits
from quarterturn.design.borders import read_borders
from quarterturn.design.cloth import check_count, read_fabrics
from quarterturn.design.colourways import known, read_colourways
from quarterturn.design.edging import read_binding_width, read_fold, read_kind, read_packages
from quarterturn.design.habits import read_house, read_making
from quarterturn.design.keys import dotted
from quarterturn.design.maps import Words
from quarterturn.design.model import Design
from quarterturn.design.nesting import check_nesting
from quarterturn.design.notes import Notes
from quarterturn.design.own_outlines import read_outlines
from quarterturn.design.recipe_reading import read_recipes
from quarterturn.design.sections import Section
from quarterturn.design.selling_reading import has_prices, read_selling
from quarterturn.design.settings import NOTHING_LAID, Known, no_motifs, read_setting
from quarterturn.design.upright import with_pieces_apart
from quarterturn.design.words import LONGEST_TEXT, check_section_name, read_name, read_text, refer
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import DesignFile, SectionTable

_NEEDED = {
    "units": 'Write units = "inch" or units = "metric".',
    "fabrics": "Add a table [fabrics.A] with a name and a colour.",
    "recipes": "Add a table [recipes.circle] with kind, finished and shape.",
    "colourways": "Add a table [colourways.a] with recipe, ground and shape.",
    "setting": "Add a table [setting] with kind and map.",
    "binding": "Add a table [binding] with the letter of its fabric.",
    "backing": "Add a table [backing] with the letter of its fabric.",
}


def convert(file: DesignFile, written: Mapping[str, Any], notes: Notes) -> Design | None:
    """Return the design, or None where a finding stops it.

    `written` is the data with its faults: a fabric that has a fault of its own is not unknown for that.
    """
    _note_missing(file, notes)
    design = _read_parts(file, written, notes)
    if not notes.stops():
        check_nesting(design, notes)
    return None if notes.stops() else with_pieces_apart(design)


def _note_missing(file: DesignFile, notes: Notes) -> None:
    for key, remedy in _NEEDED.items():
        if not getattr(file, key):
            notes.missing(key, remedy)


def _read_parts(file: DesignFile, written: Mapping[str, Any], notes: Notes) -> Design:
    """Read each part by itself; where one is wanting or at fault, something plain stands in for it."""
    letters, names, codes = (_keys(written.get(each)) for each in ("fabrics", "recipes", "colourways"))
    title = read_name(file.title, "title", 'Give the quilt a name: title = "…".', notes)
    maker, number, version, date, contact = (
        read_text(_words(getattr(file, each)), each, notes)
        for each in ("maker", "number", "version", "date", "contact")
    )
    making = read_making(file.making, notes)
    fabrics = read_fabrics(file.fabrics, making, notes)
    outlines = read_outlines(file.outlines, _keys(written.get("outlines")), notes)
    recipes, rejoined = read_recipes(file.recipes, outlines, making.seam, notes)
    colourways = read_colourways(file.colourways, known((letters, names, codes), recipes, rejoined), notes)
    words = Words(codes, letters, _keys(written.get("sections")))
    of_settings = Known(words, names, no_motifs(recipes, rejoined))
    sections = _read_sections(file.sections, of_settings, notes)
    setting = read_setting(file.setting, "setting", of_settings, notes) if file.setting else NOTHING_LAID
    borders = read_borders(file.borders, "borders", words, notes)
    binding, binding_width, backing = _read_finish(file, letters, notes)
    selling = read_selling(file, notes)
    return Design(
        title=title,
        maker=maker,
        units=notes.units,
        number=number,
        version=version,
        date=date,
        contact=contact,
        about=read_text(file.about, "about", notes, LONGEST_TEXT),
        fabrics=fabrics,
        outlines=tuple(outline for outline in outlines.values() if outline),
        recipes=recipes,
        colourways=colourways,
        sections=sections,
        setting=setting,
        borders=borders,
        binding_fabric=binding,
        binding_width=binding_width,
        backing_fabric=backing,
        making=making,
        house=read_house(file.house, has_prices(selling, fabrics), notes),
        rejoined=rejoined,
        packages=read_packages(file.batting, notes),
        selling=selling,
        binding_kind=read_kind(file.binding),
        binding_fold=read_fold(file.binding),
    )


def _keys(table: object) -> list[str]:
    return list(table) if isinstance(table, dict) else []


def _words(value: object) -> str | None:
    return None if value is None else str(value)


def _read_sections(
    tables: Mapping[str, SectionTable] | None, known: Known, notes: Notes
) -> tuple[Section, ...]:
    """Read the sections that maps may call, in the order of the file."""
    sections = []
    for name, table in check_count(tables, "sections", limits.MOST_SECTIONS, notes):
        key = dotted("sections", name)
        check_section_name(name, key, notes)
        setting = read_setting(table, key, known, notes)
        borders = read_borders(table.borders, f"{key}.borders", known.words, notes)
        sections.append(Section(name, replace(setting, borders=borders)))
    return tuple(sections)


def _read_finish(file: DesignFile, letters: list[str], notes: Notes) -> tuple[str, Length, str]:
    """Return the fabric and the width of the binding, and the fabric of the backing."""
    binding = backing = ""
    if file.binding:
        binding = refer(file.binding.fabric, "binding.fabric", "fabric", letters, notes)
    if file.backing:
        backing = refer(file.backing.fabric, "backing.fabric", "fabric", letters, notes)
    return binding, read_binding_width(file.binding, notes), backing
