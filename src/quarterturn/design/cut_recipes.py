"""Read recipes of any shapes and cuts, and those that rejoin halves."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cuts import cuts_of_word, pieces_of, read_cuts
from quarterturn.design.fitting import check_fit
from quarterturn.design.keys import dotted
from quarterturn.design.master_sums import read_both, read_sizes
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.placing import line_of_cut
from quarterturn.design.recipes import Curve, OwnOutline, Recipe, RecipeKind, Rejoined
from quarterturn.design.shapes_on import read_shapes_on
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import RecipeTable

_SHARED = ("kind", "finished", "trim")
KEYS: Mapping[RecipeKind, tuple[str, ...]] = {
    RecipeKind.CIRCLE: (*_SHARED, "start", "shape", "curve", "pieced"),
    RecipeKind.SHAPE: (*_SHARED, "start", "shape", "curve"),
    RecipeKind.SHAPES: (
        *_SHARED, "finished_width", "finished_height", "start", "width", "height", "cuts", "shapes", "curve",
    ),
    RecipeKind.REJOINED: (*_SHARED, "finished_width", "finished_height", "of"),
}  # fmt: skip
"""The keys of each kind of recipe."""


def check_keys(table: RecipeTable, kind: RecipeKind, key: str, notes: Notes) -> None:
    """Note each key that a recipe of this kind does not have."""
    for name in type(table).model_fields:
        if getattr(table, name) is not None and name not in KEYS[kind]:
            sentence = f'A recipe of the kind "{kind.value}" has no `{name}`.'
            notes.add("key-unfit", f"{key}.{name}", sentence, _instead(name, kind, key))


def _instead(name: str, kind: RecipeKind, key: str) -> str:
    if name == "shape" and kind is RecipeKind.SHAPES:
        return f"Begin each shape with a line [[{key}.shapes]], its name and width below."
    if name in ("shapes", "cuts", "width", "height") and kind in (RecipeKind.CIRCLE, RecipeKind.SHAPE):
        return 'Write kind = "shapes cut", or leave it out.'
    if kind is RecipeKind.REJOINED:
        return "Leave it out; halves are those of the recipe that `of` names."
    return "Leave it out."


def read_shapes_cut(
    name: str,
    table: RecipeTable,
    outlines: Mapping[str, OwnOutline | None],
    seam: Length,
    notes: Notes,
) -> Recipe | None:
    """Read a recipe of any shapes and cuts; None where it is not whole, which is noted."""
    key = dotted("recipes", name)
    check_keys(table, RecipeKind.SHAPES, key, notes)
    cuts = read_cuts(table.cuts, f"{key}.cuts", notes)
    shapes = read_shapes_on(table.shapes, f"{key}.shapes", outlines, notes)
    if cuts is None:
        return None
    bare = cuts_of_word(cuts, Length(2), Length(2)) if isinstance(cuts, str) else cuts
    sizes = read_sizes(table, key, pieces_of(bare), seam, notes)
    if sizes is None or shapes is None:
        return None
    recipe = Recipe(
        name=name,
        width=sizes.start[0],
        height=sizes.start[1],
        finished_width=sizes.finished[0],
        finished_height=sizes.finished[1],
        trim_width=sizes.trim[0],
        trim_height=sizes.trim[1],
        cuts=cuts_of_word(cuts, *sizes.start) if isinstance(cuts, str) else cuts,
        shapes=shapes,
        curve=Curve(table.curve or "as drawn"),
    )
    check_fit(recipe, seam, notes)
    return recipe


def read_rejoined(
    tables: Mapping[str, RecipeTable], recipes: Sequence[Recipe], seam: Length, notes: Notes
) -> Iterator[Rejoined]:
    """Read the recipes that rejoin halves of masters of others; what they lack is noted."""
    by_name = {recipe.name: recipe for recipe in recipes}
    for name, table in tables.items():
        key = dotted("recipes", name)
        check_keys(table, RecipeKind.REJOINED, key, notes)
        if table.of is None:
            notes.missing(f"{key}.of", "Name the recipe whose halves are rejoined, which is cut once.")
        elif table.of in by_name:
            rejoined = _rejoined(name, table, by_name[table.of], seam, notes)
            if rejoined:
                yield rejoined


def check_of(tables: Mapping[str, RecipeTable], kinds: Mapping[str, str | None], notes: Notes) -> None:
    """Note a recipe to be halved that there is not, or that is itself rejoined. `kinds` are those of all recipes."""
    for name, table in tables.items():
        key = f"{dotted('recipes', name)}.of"
        if table.of is None:
            continue
        if table.of not in kinds:
            others = [each for each in kinds if each != name]
            notes.add(
                "unknown-recipe",
                key,
                f"There is no recipe {quoted(table.of)}.",
                did_you_mean(table.of, others),
            )
        elif kinds[table.of] == RecipeKind.REJOINED.value:
            what = "itself" if table.of == name else f"{table.of}, which rejoins halves too"
            sentence = f"{name} rejoins halves of {what}."
            notes.add("not-halved", key, sentence, "Name a recipe of shapes cut once.")


def _rejoined(name: str, table: RecipeTable, of: Recipe, seam: Length, notes: Notes) -> Rejoined | None:
    key = dotted("recipes", name)
    if len(of.cuts) != 1:
        count = {0: "not at all", 2: "twice"}.get(len(of.cuts), f"{len(of.cuts)} times")
        sentence = f"Halves come of one cut, and a master of {of.name} is cut {count}."
        remedy = f'Write cuts = "one diagonal", "down" or "across" in {of.name}, or name another recipe.'
        notes.add("not-halved", f"{key}.of", sentence, remedy)
        return None
    whole = rejoined_size(of, seam)
    finished = read_both(
        table, key, ("finished", "finished_width", "finished_height"), limits.FINISHED, notes
    )
    trim = notes.length(table.trim, f"{key}.trim", limits.TRIM)
    names = ("finished", "finished_width", "finished_height", "trim")
    if any(notes.is_spoiled(f"{key}.{each}") for each in names):
        return None
    if finished is None:
        off = trim or Length(0)
        finished = whole[0] - off, whole[1] - off
    elif trim is not None and (whole[0] - trim, whole[1] - trim) != finished:
        notes.add(
            "sums-disagree", f"{key}.trim", _too_much(name, whole, notes), "Give finished or trim, not both."
        )
        return None
    if min(finished) <= 0 or any(a > b for a, b in zip(finished, whole, strict=True)):
        remedy = f"Finish it at {_size(whole, notes)} or less, or start {of.name} larger."
        notes.add("start-too-small", f"{key}.finished", _too_much(name, whole, notes), remedy)
        return None
    return Rejoined(name, of.name, *finished, whole[0] - finished[0], whole[1] - finished[1])


def rejoined_size(of: Recipe, seam: Length) -> tuple[Length, Length]:
    """Return what two halves of a master finish as, untrimmed: every way less by 2s for its outer seams, and by what
    the seam along the cut takes, 2s square to it. Where that is irrational, good to 10⁻⁹ inch.

    A square of side c cut corner to corner so makes c − s(2 + √2).
    """
    off = line_of_cut(of.cuts[0]).direction * 1j
    taken = (Length(2 * float(seam) * abs(part)) for part in (off.real, off.imag))
    raw = (of.width - of.trim_width, of.height - of.trim_height)
    across, down = (
        (side - 2 * seam - less).limit_denominator(10**9) for side, less in zip(raw, taken, strict=True)
    )
    return across, down


def _too_much(name: str, whole: tuple[Length, Length], notes: Notes) -> str:
    return f"Two halves of {name} make {_size(whole, notes)} inside their seams before any trimming."


def _size(size: tuple[Length, Length], notes: Notes) -> str:
    width, height = (notes.show(side) for side in size)
    return width if size[0] == size[1] else f"{width} by {height}"
