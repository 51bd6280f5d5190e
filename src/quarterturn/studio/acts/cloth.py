"""Acts on cloth: add and remove fabrics and colourways, exchange fabrics, take colours, set a photo."""

from __future__ import annotations

import string
from collections.abc import Collection, Iterable, Iterator
from itertools import chain
from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import (
    GROUND,
    ROOT,
    Border,
    Cell,
    ClothCell,
    Coping,
    Design,
    LineSet,
    OnPointSet,
    PanelSet,
    RecipeKind,
    SectionSet,
    StraightSet,
    Strip,
    border_key,
    dotted,
    named_cells,
    recipes_of_file,
    section_key,
)
from quarterturn.design.text import quote_text
from quarterturn.studio.acts.maps import painted, sheet_of, word_of
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, written
from quarterturn.studio.acts.painting import painted_sections
from quarterturn.studio.acts.tables import (
    renamed_table,
    with_sizes_renamed,
    with_tables,
    without_table,
)

Letter = Annotated[str, Field(pattern=r"^[A-Z]{1,2}$")]
Code = Annotated[str, Field(pattern=r"^[a-z]{1,2}$")]
Colour = Annotated[str, Field(pattern=r"^#[0-9a-fA-F]{6}$")]
LengthText = Annotated[str, Field(min_length=1, max_length=40)]


class AddFabric(Act):
    """Add a fabric, with the letter given or the next that is free."""

    key: ClassVar[str] = "Shift+F"
    name: Literal["add-fabric"] = "add-fabric"
    letter: Letter | None = None
    called: Name
    colour: Colour
    role: Annotated[str, Field(max_length=120)] = ""

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other fabrics."""
        taken = {fabric.letter for fabric in design.fabrics}
        letter = self.letter or _free(string.ascii_uppercase, taken)
        if letter in taken:
            raise RefusedError(f"There is a fabric `{letter}` already.", "Choose another letter.")
        role = f"role = {quote_text(self.role)}\n" if self.role else ""
        table = f"[fabrics.{letter}]\nname = {quote_text(self.called)}\n{role}colour = {quote_text(self.colour)}\n"
        return Change(with_tables(text, "fabrics", table), {"letter": letter, "called": self.called})


class RemoveFabric(Act):
    """Take a fabric away; wherever it is used, another takes its place."""

    key: ClassVar[str] = ""
    name: Literal["remove-fabric"] = "remove-fabric"
    letter: Letter
    instead: Letter | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write the other letter wherever it stands, and take its table out."""
        _check_letter(design, self.letter)
        changes = letters_changed(design, {self.letter: self.instead or ""})
        if changes and self.instead is None:
            sentence = f"The fabric `{self.letter}` is used in {len(changes)} places."
            raise RefusedError(sentence, "Say which fabric is to take its place.")
        if self.instead is not None:
            _check_letter(design, self.instead)
        changed = without_table(written(text, changes), ("fabrics", self.letter))
        return Change(changed, {"letter": self.letter, "places": len(changes)})


class RenameFabric(Act):
    """Give a fabric another letter, wherever it is named."""

    key: ClassVar[str] = ""
    name: Literal["rename-fabric"] = "rename-fabric"
    letter: Letter
    to: Letter

    def change(self, text: str, design: Design) -> Change:
        """Write the letter in its header, and wherever it stands."""
        _check_letter(design, self.letter)
        if any(fabric.letter == self.to for fabric in design.fabrics):
            raise RefusedError(f"There is a fabric `{self.to}` already.", "Choose another letter.")
        changes = letters_changed(design, {self.letter: self.to})
        changed = renamed_table(written(text, changes), ("fabrics", self.letter), self.to)
        return Change(with_sizes_renamed(changed, self._renamed), {"letter": self.letter, "to": self.to})

    def _renamed(self, parts: tuple[str, ...], value: object) -> tuple[tuple[str, ...], object]:
        if parts[:2] == ("fabrics", self.letter):
            parts = ("fabrics", self.to, *parts[2:])
        names = parts[-1] in _NAME_CLOTH or "shapes" in parts[-2:-1]
        return parts, self.to if names and value == self.letter else value


_NAME_CLOTH = frozenset({"fabric", "ground", "shape", "cornerstone", "triangles", "corners"})
"""Last parts of keys whose value is the letter of a fabric."""


class SwapFabrics(Act):
    """Exchange two fabrics wherever they are used."""

    key: ClassVar[str] = "Shift+X"
    name: Literal["swap-fabrics"] = "swap-fabrics"
    a: Letter
    b: Letter

    def change(self, text: str, design: Design) -> Change:
        """Write each letter as the other."""
        for letter in (self.a, self.b):
            _check_letter(design, letter)
        changes = letters_changed(design, {self.a: self.b, self.b: self.a})
        return Change(written(text, changes), {"a": self.a, "b": self.b, "places": len(changes)})


class TakeColours(Act):
    """Give fabrics the colours of a palette, those of a photo or of one's own choice, and names if they are told."""

    key: ClassVar[str] = ""
    name: Literal["take-colours"] = "take-colours"
    colours: Annotated[dict[Letter, Colour], Field(min_length=1, max_length=60)]
    called: Annotated[dict[Letter, Name], Field(max_length=60)] = Field(default_factory=dict)
    """New names of fabrics, where they are to be called by their colours."""

    def change(self, text: str, design: Design) -> Change:
        """Write the colour of each."""
        for letter in (*self.colours, *self.called):
            _check_letter(design, letter)
        changes = {dotted("fabrics", letter, "colour"): colour for letter, colour in self.colours.items()}
        changes |= {dotted("fabrics", letter, "name"): name for letter, name in self.called.items()}
        return Change(written(text, changes), {"fabrics": len(self.colours)})


class SetPhoto(Act):
    """Give a fabric a photo: a file beside the design, its width in truth, what is cut out of it, and its colour."""

    key: ClassVar[str] = ""
    name: Literal["set-photo"] = "set-photo"
    letter: Letter
    photo: Annotated[str, Field(min_length=1, max_length=120)] | None = None
    width: LengthText | None = None
    crop: tuple[float, float, float, float] | None = None
    colour: Colour | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write the three keys and the colour, or take the keys away with the photo."""
        _check_letter(design, self.letter)
        key = dotted("fabrics", self.letter)
        crop = [round(each, 4) for each in self.crop] if self.crop and self.photo else None
        values = {"photo": self.photo, "photo_width": self.width if self.photo else None, "photo_crop": crop}
        changes: dict[str, object] = {f"{key}.{name}": value for name, value in values.items()}
        if self.colour:
            changes[f"{key}.colour"] = self.colour
        return Change(written(text, changes), {"letter": self.letter})


class AddColourway(Act):
    """Add a colourway of a recipe, with the code given or the next that is free: cloth for each of its parts."""

    key: ClassVar[str] = "Shift+C"
    name: Literal["add-colourway"] = "add-colourway"
    recipe: Name
    code: Code | None = None
    cloths: Annotated[dict[Name, Letter], Field(max_length=41)] = Field(default_factory=dict)
    """The letter for each part, `ground` among them; of a recipe of one shape that is called `shape`."""
    first: Code | None = None
    second: Code | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other colourways."""
        taken = {way.code for way in design.colourways}
        code = self.code or _free(string.ascii_lowercase, taken)
        if code in taken:
            raise RefusedError(f"There is a colourway `{code}` already.", "Choose another code.")
        lines = [f"[colourways.{code}]", f"recipe = {quote_text(self.recipe)}", *self._cloths(design)]
        return Change(
            with_tables(text, "colourways", "\n".join(lines) + "\n"), {"code": code, "recipe": self.recipe}
        )

    def _cloths(self, design: Design) -> Iterator[str]:
        kinds = {each.name: each.kind for each in recipes_of_file(design.recipes)}
        if self.first and self.second:
            yield f'first = "{self.first}"'
            yield f'second = "{self.second}"'
            return
        ground = self.cloths.get(GROUND)
        if ground is None:
            raise RefusedError("A colourway needs cloth for its ground.", "Choose a fabric for each part.")
        yield f'ground = "{ground}"'
        rest = {part: letter for part, letter in self.cloths.items() if part != GROUND}
        if kinds.get(self.recipe) is RecipeKind.SHAPES:
            parts = ", ".join(f"{dotted(part)} = {quote_text(letter)}" for part, letter in rest.items())
            yield f"shapes = {{ {parts} }}"
        else:
            yield from (f"shape = {quote_text(letter)}" for letter in list(rest.values())[:1])


class RemoveColourway(Act):
    """Take a colourway away; where it lies, something else is laid instead."""

    key: ClassVar[str] = ""
    name: Literal["remove-colourway"] = "remove-colourway"
    code: Code
    instead: Name | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write other words where it lies, with its turns, and take its table out."""
        if all(way.code != self.code for way in design.colourways):
            raise RefusedError(f"There is no colourway `{self.code}`.", "Choose one that the design has.")
        halves = [way.code for way in design.colourways if self.code in (way.first, way.second)]
        if halves:
            raise RefusedError(f"The colourway `{halves[0]}` rejoins its halves.", "Take that away first.")
        used = any(
            isinstance(each.cell, Cell) and each.cell.code == self.code for each in named_cells(design)
        )
        if used and self.instead is None:
            raise RefusedError(
                f"The colourway `{self.code}` lies in the quilt.", "Say what is to lie there instead."
            )
        cells = {
            (section, r, c): word_of(design, self.instead, cell.turn)
            for section in painted_sections(design)
            for r, row in enumerate(sheet_of(design, section).rows)
            for c, cell in enumerate(row)
            if self.instead and isinstance(cell, Cell) and cell.code == self.code
        }
        changed = without_table(written(text, painted(design, cells)), ("colourways", self.code))
        return Change(changed, {"code": self.code, "cells": len(cells)})


def letters_changed(design: Design, to: dict[str, str]) -> dict[str, object]:
    """Return the changes of keys by which letters of fabrics are exchanged wherever a design names them."""
    changes: dict[str, object] = {key: to[letter] for key, letter in letters_named(design) if letter in to}
    cells = {
        (section, r, c): ClothCell(to[cell.fabric])
        for section in painted_sections(design)
        for r, row in enumerate(sheet_of(design, section).rows)
        for c, cell in enumerate(row)
        if isinstance(cell, ClothCell) and cell.fabric in to
    }
    return changes | painted(design, cells)


def letters_named(design: Design) -> Iterator[tuple[str, str]]:
    """Yield every key of the file whose value is the letter of a fabric, with it, but for the words of maps."""
    yield "binding.fabric", design.binding_fabric
    yield "backing.fabric", design.backing_fabric
    kinds = {each.name: (each.origin or each).kind for each in design.recipes}
    for way in design.colourways:
        if not way.is_rejoined:
            yield dotted("colourways", way.code, "ground"), way.ground
            many = kinds[way.recipe] is RecipeKind.SHAPES
            for part, letter in way.shapes:
                yield dotted("colourways", way.code, *(("shapes", part) if many else ("shape",))), letter
    yield from _of_section(ROOT, design.setting)
    yield from _of_borders(ROOT, design.borders)
    for section in design.sections:
        yield from _of_section(section.name, section.setting)
        yield from _of_borders(section.name, section.setting.borders)


def _of_section(name: str, setting: SectionSet) -> Iterator[tuple[str, str]]:
    if isinstance(setting, StraightSet | OnPointSet) and setting.sashing:
        sashing = setting.sashing
        yield section_key(name, "sashing", "fabric"), sashing.fabric
        on_point = isinstance(setting, OnPointSet)
        if sashing.cornerstone and not (on_point and sashing.cornerstone == sashing.fabric):
            yield section_key(name, "sashing", "cornerstone"), sashing.cornerstone
    if isinstance(setting, OnPointSet):
        yield section_key(name, "triangles"), setting.side_fabric
        if setting.corner_fabric != setting.side_fabric:
            yield section_key(name, "corners"), setting.corner_fabric
    if isinstance(setting, LineSet):
        for k, part in enumerate(setting.parts):
            if isinstance(part, Strip):
                yield section_key(name, "parts", k, "fabric"), part.fabric
    if isinstance(setting, PanelSet):
        yield section_key(name, "fabric"), setting.fabric
        for k, motif in enumerate(setting.motifs):
            yield section_key(name, "motifs", k, "fabric"), motif.fabric


def _of_borders(name: str, borders: Iterable[object]) -> Iterator[tuple[str, str]]:
    for k, border in enumerate(borders):
        key = border_key(name, k)
        if isinstance(border, Border | Coping):
            yield f"{key}.fabric", border.fabric
        if isinstance(border, Border) and border.cornerstone:
            yield f"{key}.cornerstone", border.cornerstone


def _check_letter(design: Design, letter: str) -> None:
    if all(fabric.letter != letter for fabric in design.fabrics):
        raise RefusedError(f"There is no fabric `{letter}`.", "Choose one that the design has.")


def _free(letters: str, taken: Collection[str]) -> str:
    """Return the first of the letters, then of pairs of them, that is not taken."""
    pairs = (f"{one}{other}" for one in letters for other in letters)
    names: Iterator[str] = chain(letters, pairs)
    return next(name for name in names if name not in taken)
