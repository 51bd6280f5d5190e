"""Read how sections are laid: straight, on point, in a line, or as a panel with motifs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.habits import read_count
from quarterturn.design.maps import Words, check_symmetry, read_map, read_word
from quarterturn.design.notes import Notes, listed
from quarterturn.design.recipes import DrawnOutline, Recipe, Rejoined
from quarterturn.design.sections import (
    ClothCell,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PanelMotif,
    PanelSet,
    Sashing,
    SectionSet,
    StraightSet,
    Strip,
    Symmetry,
    TriangleFit,
)
from quarterturn.design.words import refer
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import MotifTable, PartTable, SashingTable, SettingTable

_LINE = ("parts",)
KEYS = {
    "straight": ("map", "symmetry", "across", "down", "sashing"),
    "on point": (
        "map", "between", "triangles", "corners", "fit", "float", "side_square", "corner_square", "sashing",
    ),
    "columns": _LINE,
    "rows": _LINE,
    "panel": ("fabric", "width", "height", "motifs"),
}  # fmt: skip
"""The keys that each kind of setting has."""


@dataclass(frozen=True, slots=True)
class Known:
    """What a setting may name: the words of maps, and recipes."""

    words: Words
    recipes: list[str]
    no_motifs: Mapping[str, str]
    """What makes a recipe unfit for a motif, by its name."""


def no_motifs(recipes: Sequence[Recipe], rejoined: Sequence[Rejoined]) -> Mapping[str, str]:
    """Return the recipes that have not just one shape without a hole, which is what a motif is, and what they have."""
    found = {recipe.name: "rejoins halves" for recipe in rejoined}
    for recipe in recipes:
        if len(recipe.shapes) > 1:
            found[recipe.name] = f"has {len(recipe.shapes)} shapes"
        elif any(isinstance(shape.size, DrawnOutline) and shape.size.inner for shape in recipe.shapes):
            found[recipe.name] = "has a ring"
    return found


NOTHING_LAID = StraightSet((), 1, 1)


def read_setting(table: SettingTable, key: str, known: Known, notes: Notes) -> SectionSet:
    """Return how a section is laid, without its borders. What is missing is noted, and something empty stands in."""
    if table.kind is None:
        if notes.is_spoiled(f"{key}.kind"):
            return NOTHING_LAID
        notes.missing(f"{key}.kind", 'Write kind = "straight".')
    kind = table.kind or "straight"
    check_wanted(table, key, f"A setting of kind {kind}", ("kind", "borders", *KEYS[kind]), notes)
    match kind:
        case "on point":
            return _on_point(table, key, known.words, notes)
        case "panel":
            return _panel(table, key, known, notes)
        case "columns" | "rows":
            return _line(table, key, known.words, notes)
    setting = StraightSet(
        cells=_map(table.map, f"{key}.map", known.words, notes),
        across=read_count(table.across, f"{key}.across", 1, limits.MOST_ROWS, notes),
        down=read_count(table.down, f"{key}.down", 1, limits.MOST_ROWS, notes),
        symmetry=Symmetry(table.symmetry) if table.symmetry else Symmetry.SLIDE,
        sashing=_sashing(table.sashing, f"{key}.sashing", known.words, notes),
    )
    check_symmetry(setting, key, notes)
    _check_rows(setting, key, notes)
    return setting


def check_wanted(table: object, key: str, what: str, wanted: tuple[str, ...], notes: Notes) -> None:
    """Note each key of a table that things of its kind do not have."""
    for name in type(table).model_fields:  # type: ignore[attr-defined]
        if getattr(table, name) is not None and name not in wanted:
            rest = [each for each in wanted if each not in ("kind", "borders")]
            notes.add(
                "unwanted-key", f"{key}.{name}", f"{what} has no `{name}`.", f"It has {listed(rest, 12)}."
            )


def _map(text: str | None, key: str, words: Words, notes: Notes) -> Map:
    if text is None:
        notes.missing(key, 'Write map = """, then a line for each row, then """.')
        return ()
    return read_map(text, key, words, notes) if words.codes else ()


def _check_rows(setting: StraightSet, key: str, notes: Notes) -> None:
    down, across = setting.size
    if max(down, across) > limits.MOST_ROWS:
        notes.add(
            "map-too-large",
            key,
            f"With its repeats the map has {down} rows of {across} units.",
            f"Keep to {limits.MOST_ROWS} each way.",
        )


def _sashing(table: SashingTable | None, key: str, words: Words, notes: Notes) -> Sashing | None:
    if table is None:
        return None
    letters = list(words.letters)
    fabric = refer(table.fabric, f"{key}.fabric", "fabric", letters, notes)
    width = notes.length(table.width, f"{key}.width", limits.SASHING)
    if table.width is None:
        notes.missing(f"{key}.width", "Give its finished width.")
    stone = table.cornerstone and refer(table.cornerstone, f"{key}.cornerstone", "fabric", letters, notes)
    return Sashing(fabric, width or Length(1), stone or "", bool(table.outer))


def _on_point(table: SettingTable, key: str, words: Words, notes: Notes) -> SectionSet:
    cells = _map(table.map, f"{key}.map", words, notes)
    side = refer(table.triangles, f"{key}.triangles", "fabric", list(words.letters), notes)
    corner = side
    if table.corners is not None:
        corner = refer(table.corners, f"{key}.corners", "fabric", list(words.letters), notes)
    sashing = _sashing(table.sashing, f"{key}.sashing", words, notes)
    if sashing:
        sashing = Sashing(sashing.fabric, sashing.width, sashing.cornerstone or sashing.fabric, True)
    fit = TriangleFit(table.fit) if table.fit else TriangleFit.HANDBOOK
    return OnPointSet(
        cells=cells,
        between=_between(table.between, cells, f"{key}.between", words, notes),
        side_fabric=side,
        corner_fabric=corner,
        fit=fit,
        float=_float(table, fit, key, notes),
        sashing=sashing,
        side_square=notes.length(table.side_square, f"{key}.side_square", limits.TRIANGLE_SQUARE),
        corner_square=notes.length(table.corner_square, f"{key}.corner_square", limits.TRIANGLE_SQUARE),
    )


def _float(table: SettingTable, fit: TriangleFit, key: str, notes: Notes) -> Length:
    if fit is TriangleFit.OVERSIZED and table.float is None:
        notes.missing(f"{key}.float", "Say how far the triangles stand out: float = '1/2\"'.")
    if fit is not TriangleFit.OVERSIZED and table.float is not None:
        sentence = (
            f"Triangles that are cut by the {fit.value} fit stand out by nothing, and `float` is given."
        )
        notes.add("unwanted-key", f"{key}.float", sentence, 'Write fit = "oversized", or leave float out.')
        return Length(0)
    return notes.length(table.float, f"{key}.float", limits.FLOAT) or Length(0)


def _between(text: str | None, cells: Map, key: str, words: Words, notes: Notes) -> Map:
    """Return what stands between the cells: a map of its own, or one word for all."""
    rows, columns = len(cells) - 1, len(cells[0]) - 1 if cells else 0
    if rows < 0:
        return ()
    if text is None:
        if rows and columns:
            notes.missing(key, 'Say what stands between them: between = "A", or a map.')
        return ((),) * rows
    if len(text.split()) == 1:
        cell = read_word(text, key, words, notes)
        return ((cell,) * columns,) * rows if cell else ()
    between = read_map(text, key, words, notes)
    if between and (len(between), len(between[0])) != (rows, columns):
        found = f"{len(between)} of {len(between[0])}"
        sentence = f"Between the cells there are {rows} rows of {columns}, and here {found}."
        notes.add("ragged-map", key, sentence, "Give it a row and a column less than the map has.")
    return between


def _line(table: SettingTable, key: str, words: Words, notes: Notes) -> LineSet:
    parts = table.parts or []
    if not parts:
        notes.missing(f"{key}.parts", 'Write parts = ["…", "…"], the names of sections or units.')
    if len(parts) > limits.MOST_PARTS:
        notes.add(
            "too-many", f"{key}.parts", f"There are {len(parts)} parts.", f"Keep to {limits.MOST_PARTS}."
        )
    read = [
        _part(part, f"{key}.parts.{n}", words, notes) for n, part in enumerate(parts[: limits.MOST_PARTS])
    ]
    return LineSet(tuple(part for part in read if part is not None), table.kind == "rows")


def _part(part: str | PartTable, key: str, words: Words, notes: Notes) -> MapCell | Strip | None:
    if isinstance(part, str):
        cell = read_word(part, key, words, notes)
        if isinstance(cell, ClothCell):
            remedy = f'Write {{ fabric = "{cell.fabric}", width = … }}.'
            notes.add("bad-cell", key, "A strip of plain cloth in a line has no width.", remedy)
            return None
        return cell
    fabric = refer(part.fabric, f"{key}.fabric", "fabric", list(words.letters), notes)
    width = notes.length(part.width, f"{key}.width", limits.STRIP)
    if part.width is None:
        notes.missing(f"{key}.width", "Give its finished width.")
    return Strip(fabric, width) if width is not None else None


def _panel(table: SettingTable, key: str, known: Known, notes: Notes) -> PanelSet:
    fabric = refer(table.fabric, f"{key}.fabric", "fabric", list(known.words.letters), notes)
    sizes = []
    for name in ("width", "height"):
        if getattr(table, name) is None:
            notes.missing(f"{key}.{name}", f"Give the finished {name} of the panel.")
        sizes.append(notes.length(getattr(table, name), f"{key}.{name}", limits.PANEL) or Length(1))
    motifs = table.motifs or []
    if len(motifs) > limits.MOST_PARTS:
        notes.add(
            "too-many", f"{key}.motifs", f"There are {len(motifs)} motifs.", f"Keep to {limits.MOST_PARTS}."
        )
    read = [_motif(m, f"{key}.motifs.{n}", known, notes) for n, m in enumerate(motifs[: limits.MOST_PARTS])]
    return PanelSet(fabric, sizes[0], sizes[1], tuple(read))


def _motif(table: MotifTable, key: str, known: Known, notes: Notes) -> PanelMotif:
    place = [notes.length(each, f"{key}.at.{n}", limits.ON_PANEL) for n, each in enumerate(table.at or ())]
    if table.at is None:
        notes.missing(f"{key}.at", "Say where its middle lies: at = ['3\"', '4\"'].")
    elif len(place) != 2:
        sentence = f"`at` has {len(place)} lengths, and a place has two: from the left and from the top."
        notes.add("wrong-type", f"{key}.at", sentence, "Write at = ['3\"', '4\"'].")
    across, down = (*place, None, None)[:2]
    recipe = refer(table.recipe, f"{key}.recipe", "recipe", known.recipes, notes)
    if recipe in known.no_motifs:
        sentence = f"The recipe {recipe} {known.no_motifs[recipe]}, and a motif is one shape without a hole."
        notes.add("motif-unclear", f"{key}.recipe", sentence, "Name a recipe of one shape.")
    return PanelMotif(
        recipe=recipe,
        fabric=refer(table.fabric, f"{key}.fabric", "fabric", list(known.words.letters), notes),
        x=across or Length(0),
        y=down or Length(0),
        degrees=read_count(table.turn, f"{key}.turn", 0, limits.LAST_DEGREE, notes),
    )
