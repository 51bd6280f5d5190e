"""Acts on recipes: add one of each kind, copy, rename, remove; shapes on a master; outlines of the designer's own."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import Design, PanelSet, Recipe, RecipeKind, dotted, written_name
from quarterturn.design.text import quote_text
from quarterturn.studio.acts.first_sizes import FirstSizes, first_sizes
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, written
from quarterturn.studio.acts.tables import (
    renamed_table,
    tables_of,
    with_items,
    with_sizes_renamed,
    with_tables,
    without_table,
)

LengthText = Annotated[str, Field(min_length=1, max_length=40)]
Number = Annotated[int, Field(ge=0, le=40)]
PathText = Annotated[str, Field(min_length=5, max_length=100_000)]


class AddRecipe(Act):
    """Add a recipe of a kind, with sizes to begin from; of halves rejoined, the recipe whose halves they are."""

    key: ClassVar[str] = "Shift+R"
    name: Literal["add-recipe"] = "add-recipe"
    recipe: Name
    kind: Literal["circle cut both ways", "shape cut both ways", "shapes cut", "halves rejoined"]
    outline: Name | None = None
    of: Name | None = None
    cuts: Literal["none", "down", "across", "both ways", "one diagonal"] = "both ways"

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other recipes."""
        _check_free(design, self.recipe)
        tables = with_tables(text, "recipes", self._table(first_sizes(design)))
        return Change(tables, {"recipe": self.recipe, "kind": self.kind})

    def _table(self, sizes: FirstSizes) -> str:
        outline = quote_text(self.outline or "heart")
        head = f"[{dotted('recipes', self.recipe)}]\nkind = {quote_text(self.kind)}\n"
        finished = f"finished = {sizes.of(sizes.unit)}\n"
        if self.kind == "circle cut both ways":
            return f"{head}{finished}shape = {{ diameter = {sizes.of(sizes.unit * 13 / 8)} }}\n"
        if self.kind == "shape cut both ways":
            return (
                f"{head}{finished}shape = {{ outline = {outline}, width = {sizes.of(sizes.unit * 9 / 8)} }}\n"
            )
        if self.kind == "halves rejoined":
            if not self.of:
                raise RefusedError("Halves rejoined are halves of a recipe.", "Name one that is cut once.")
            return f"{head}of = {quote_text(self.of)}\n"
        start = f"start = {sizes.of(sizes.start(self.cuts))}\n"
        return f"{head}{start}cuts = {quote_text(self.cuts)}\n{self._shapes(sizes)}"

    def _shapes(self, sizes: FirstSizes) -> str:
        shape = quote_text(self.outline or "circle")
        header = f'\n[[{dotted("recipes", self.recipe, "shapes")}]]\nname = "shape"\noutline = {shape}\n'
        width = f"width = {sizes.of(sizes.unit * (Fraction(5, 8) if self.cuts == 'none' else 1))}\n"
        if self.cuts != "one diagonal":
            return header + width
        off = sizes.unit * 15 / 32
        ways = ((-off, 135), (off, 315))
        return "".join(
            f"{header}{width}at = [{sizes.of(at)}, {sizes.of(at)}]\nturn = {turn}\n" for at, turn in ways
        )


class CopyRecipe(Act):
    """Add a copy of a recipe under another name, to draft from."""

    key: ClassVar[str] = ""
    name: Literal["copy-recipe"] = "copy-recipe"
    recipe: Name
    to: Name

    def change(self, text: str, design: Design) -> Change:
        """Write its tables once more, under the other name."""
        _check_there(design, self.recipe)
        _check_free(design, self.to)
        parts = ("recipes", self.recipe)
        own = "".join(each.text for each in tables_of(text) if each.parts[:2] == parts)
        if not own:
            raise RefusedError(
                "The recipe is written inside another table.", "Give it a table of its own first."
            )
        copied = renamed_table(own, parts, self.to)
        return Change(with_tables(text, "recipes", copied), {"recipe": self.recipe, "to": self.to})


class RemoveRecipe(Act):
    """Take a recipe away that no colourway, motif or rejoining uses."""

    key: ClassVar[str] = ""
    name: Literal["remove-recipe"] = "remove-recipe"
    recipe: Name

    def change(self, text: str, design: Design) -> Change:
        """Take its tables out."""
        _check_there(design, self.recipe)
        users = [
            f"colourway {way.code}"
            for way in design.colourways
            if written_name(design, way.recipe) == self.recipe
        ]
        users += [
            f"recipe {each.name}" for each in design.rejoined if written_name(design, each.of) == self.recipe
        ]
        panels = [section.name for section in design.sections if _has_motif(section.setting, self.recipe)]
        users += [f"panel {name}" for name in panels]
        if users or _has_motif(design.setting, self.recipe):
            sentence = f"The recipe `{self.recipe}` is used by {', '.join(users[:4]) or 'the panel'}."
            raise RefusedError(sentence, "Take that away first.")
        return Change(without_table(text, ("recipes", self.recipe)), {"recipe": self.recipe})


class RenameRecipe(Act):
    """Give a recipe another name, wherever it is named."""

    key: ClassVar[str] = ""
    name: Literal["rename-recipe"] = "rename-recipe"
    recipe: Name
    to: Name

    def change(self, text: str, design: Design) -> Change:
        """Write the name in its headers, and in colourways, rejoinings and motifs."""
        _check_there(design, self.recipe)
        _check_free(design, self.to)
        changes: dict[str, object] = {
            dotted("colourways", way.code, "recipe"): self.to
            for way in design.colourways
            if written_name(design, way.recipe) == self.recipe
        }
        changes |= {
            dotted("recipes", each.name, "of"): self.to
            for each in design.rejoined
            if not each.origin and written_name(design, each.of) == self.recipe
        }
        settings = [
            ("setting", design.setting),
            *((f"sections.{s.name}", s.setting) for s in design.sections),
        ]
        changes |= {
            f"{key}.motifs.{k}.recipe": self.to
            for key, setting in settings
            if isinstance(setting, PanelSet)
            for k, motif in enumerate(setting.motifs)
            if motif.recipe == self.recipe
        }
        changed = renamed_table(written(text, changes), ("recipes", self.recipe), self.to)
        return Change(with_sizes_renamed(changed, self._renamed), {"recipe": self.recipe, "to": self.to})

    def _renamed(self, parts: tuple[str, ...], value: object) -> tuple[tuple[str, ...], object]:
        if parts[:2] == ("recipes", self.recipe):
            parts = ("recipes", self.to, *parts[2:])
        names = parts[-1] in ("recipe", "of")
        return parts, self.to if names and value == self.recipe else value


class AddShape(Act):
    """Fuse a shape more on a master of shapes cut, on top; colourways give its part a fabric."""

    key: ClassVar[str] = ""
    name: Literal["add-shape"] = "add-shape"
    recipe: Name
    part: Name
    outline: Name = "circle"
    width: LengthText
    fabric: Name
    at: tuple[LengthText, LengthText] | None = None
    turn: Annotated[float, Field(ge=-360, le=360)] = 0
    inner: LengthText | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write its table behind the other shapes, and its part into colourways that lack it."""
        recipe = shapes_of(design, self.recipe)
        changed = with_items(text, ("recipes", self.recipe, "shapes"), lambda items: [*items, self._table()])
        if self.part not in {shape.part for shape in recipe.shapes}:
            ways = [way for way in design.colourways if written_name(design, way.recipe) == self.recipe]
            changes = {dotted("colourways", way.code, "shapes", self.part): self.fabric for way in ways}
            changed = written(changed, changes)
        return Change(changed, {"recipe": self.recipe, "part": self.part})

    def _table(self) -> str:
        lines = [f"[[{dotted('recipes', self.recipe, 'shapes')}]]", f"name = {quote_text(self.part)}"]
        lines += [f"outline = {quote_text(self.outline)}", f"width = {quote_text(self.width)}"]
        if self.inner:
            lines.append(f"inner = {quote_text(self.inner)}")
        if self.at:
            lines.append(f"at = [{', '.join(map(quote_text, self.at))}]")
        if self.turn:
            lines.append(f"turn = {self.turn:g}")
        return "\n".join(lines) + "\n"


class RemoveShape(Act):
    """Take a shape off a master of shapes cut; with the last of its part, the part out of its colourways."""

    key: ClassVar[str] = ""
    name: Literal["remove-shape"] = "remove-shape"
    recipe: Name
    shape: Number

    def change(self, text: str, design: Design) -> Change:
        """Take its table out."""
        shapes = shapes_of(design, self.recipe).shapes
        _check_shape(len(shapes), self.shape)
        if len(shapes) == 1:
            raise RefusedError("A master needs one shape at least.", "Fuse another first.")
        part = shapes[self.shape].part
        parts = ("recipes", self.recipe, "shapes")
        changed = with_items(text, parts, lambda items: items[: self.shape] + items[self.shape + 1 :])
        if [shape.part for shape in shapes].count(part) == 1:
            ways = [way for way in design.colourways if written_name(design, way.recipe) == self.recipe]
            gone: dict[str, object] = {dotted("colourways", way.code, "shapes", part): None for way in ways}
            changed = written(changed, gone)
        return Change(changed, {"recipe": self.recipe, "part": part})


class OrderShape(Act):
    """Fuse a shape above or below others: at another place in the order of fusing."""

    key: ClassVar[str] = ""
    name: Literal["order-shape"] = "order-shape"
    recipe: Name
    shape: Number
    to: Number

    def change(self, text: str, design: Design) -> Change:
        """Move its table, its notes with it."""
        _check_shape(len(shapes_of(design, self.recipe).shapes), self.shape)

        def moved(items: list[str]) -> list[str]:
            rest = items[: self.shape] + items[self.shape + 1 :]
            return [*rest[: self.to], items[self.shape], *rest[self.to :]]

        changed = with_items(text, ("recipes", self.recipe, "shapes"), moved)
        return Change(changed, {"recipe": self.recipe, "shape": self.shape + 1})


class TakeOutline(Act):
    """Take an outline of the designer's own into the file: path data in inches, as a drawing gave it."""

    key: ClassVar[str] = ""
    name: Literal["take-outline"] = "take-outline"
    outline: Name
    path: PathText
    replace: bool = False

    def change(self, text: str, design: Design) -> Change:
        """Write its table; one of the same name is exchanged if that is wanted."""
        from quarterturn.design import WriteError
        from quarterturn.design.drawings import with_outlines
        from quarterturn.geometry import OUTLINES, PathDataError, read_path_data

        if self.outline in OUTLINES:
            raise RefusedError(
                f"The program has an outline {self.outline!r} of its own.", "Give it another name."
            )
        try:
            subpaths = read_path_data(self.path)
        except PathDataError as error:
            raise RefusedError(f"This is no path data: {error.reason}.", "Take it from a drawing.") from error
        if len(subpaths) != 1 or not subpaths[0].closed:
            raise RefusedError("An outline is one closed line.", "Take another shape of the drawing.")
        try:
            changed = with_outlines(text, {self.outline: subpaths[0].path()}, replace=self.replace)
        except WriteError as error:
            raise RefusedError(f"The outline cannot be added: {error}.", "Give it another name.") from error
        return Change(changed, {"outline": self.outline})


def shapes_of(design: Design, recipe: str) -> Recipe:
    """Return a recipe of shapes cut. Raises RefusedError where it is of another kind, or not there."""
    for each in design.recipes:
        if each.name == recipe and each.kind is RecipeKind.SHAPES:
            return each
    raise RefusedError(f"The recipe `{recipe}` is not of the kind shapes cut.", "Choose one that is.")


def _has_motif(setting: object, recipe: str) -> bool:
    return isinstance(setting, PanelSet) and any(motif.recipe == recipe for motif in setting.motifs)


def _names(design: Design) -> set[str]:
    names = {recipe.base or recipe.name for recipe in design.recipes}
    return names | {recipe.base or recipe.name for recipe in design.rejoined}


def _check_there(design: Design, name: str) -> None:
    if name not in _names(design):
        raise RefusedError(f"There is no recipe `{name}`.", "Choose one that the design has.")


def _check_free(design: Design, name: str) -> None:
    if name in _names(design):
        raise RefusedError(f"There is a recipe `{name}` already.", "Choose another name.")


def _check_shape(count: int, shape: int) -> None:
    if shape >= count:
        raise RefusedError(f"The master has {count} shapes.", "Choose one of them.")
