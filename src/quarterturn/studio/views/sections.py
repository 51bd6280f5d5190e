"""The sections of a design as their maps and lists are written, for the page to paint and to change."""

from __future__ import annotations

from quarterturn.design import (
    ROOT,
    AnyBorder,
    Border,
    Coping,
    Design,
    LineSet,
    Map,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    SectionSet,
    StraightSet,
    Strip,
    border_key,
    map_word,
    section_key,
    write_length,
)
from quarterturn.studio.views.model import View, inches_of
from quarterturn.studio.views.places import kind_of


class BorderName(View):
    """A border of a section, from the inside, with its dotted key. `corners` is a kind of corner or a word of a map."""

    key: str
    kind: str
    fabric: str
    width: str | None
    corners: str
    cornerstone: str
    sides: str
    ends: str
    to: tuple[str, str] | None
    first: str
    """Which pair is sewn on first: `sides` or `ends`."""


class SashingName(View):
    """The strips between the places of a map; `cornerstone` is empty where the file names no cloth for it."""

    fabric: str
    width: str
    cornerstone: str
    outer: bool


class TrianglesName(View):
    """The triangles round a map on point; squares and the float are empty where they follow from the fit."""

    corners: str
    fit: str
    float: str
    side_square: str
    corner_square: str


class StripName(View):
    """A plain strip of a line of sections, at its place among the parts."""

    place: int
    fabric: str
    width: str


class MotifName(View):
    """A motif of a panel: `x` and `y` are those of its middle in inches, `at` as the file has them."""

    recipe: str
    fabric: str
    at: tuple[str, str]
    x: float
    y: float
    turn: int


class SectionView(View):
    """A section as its map is written; its words can be painted where it is `editable`."""

    name: str
    kind: str
    rows: int
    columns: int
    key: str
    editable: bool
    words: tuple[tuple[str, ...], ...]
    symmetry: str
    across: int
    down: int
    borders: tuple[BorderName, ...]
    strips: tuple[StripName, ...]
    motifs: tuple[MotifName, ...]
    panel: tuple[str, str] | None
    """Width and height of a panel as the file has them."""
    fabric: str
    """Cloth of a panel, or of the side triangles of a map on point."""
    sashing: SashingName | None
    triangles: TrianglesName | None


def section_views(design: Design) -> tuple[SectionView, ...]:
    root = _section(ROOT, design.setting, design)
    return (root, *(_section(each.name, each.setting, design) for each in design.sections))


def _section(name: str, setting: SectionSet, design: Design) -> SectionView:
    words = words_of(setting)
    borders = design.borders if name == ROOT else setting.borders
    straight = setting if isinstance(setting, StraightSet) else None
    return SectionView(
        name=name,
        kind=kind_of(setting),
        rows=len(words),
        columns=max(map(len, words), default=0),
        key=section_key(name),
        editable=bool(words),
        words=words,
        symmetry=straight.symmetry.value if straight else "",
        across=straight.across if straight else 1,
        down=straight.down if straight else 1,
        borders=tuple(_border(name, k, border, design) for k, border in enumerate(borders)),
        strips=_strips(setting, design),
        motifs=_motifs(setting, design),
        panel=_panel(setting, design),
        fabric=_ground(setting),
        sashing=_sashing(setting, design),
        triangles=_triangles(setting, design),
    )


def _sashing(setting: SectionSet, design: Design) -> SashingName | None:
    found = setting.sashing if isinstance(setting, StraightSet | OnPointSet) else None
    if found is None:
        return None
    return SashingName(
        fabric=found.fabric,
        width=write_length(found.width, design.units),
        cornerstone=found.cornerstone,
        outer=found.outer,
    )


def _triangles(setting: SectionSet, design: Design) -> TrianglesName | None:
    if not isinstance(setting, OnPointSet):
        return None
    side, corner = (
        "" if square is None else write_length(square, design.units)
        for square in (setting.side_square, setting.corner_square)
    )
    return TrianglesName(
        corners=setting.corner_fabric,
        fit=setting.fit.value,
        float=write_length(setting.float, design.units) if setting.float else "",
        side_square=side,
        corner_square=corner,
    )


def _panel(setting: SectionSet, design: Design) -> tuple[str, str] | None:
    if not isinstance(setting, PanelSet):
        return None
    return write_length(setting.width, design.units), write_length(setting.height, design.units)


def _ground(setting: SectionSet) -> str:
    if isinstance(setting, OnPointSet):
        return setting.side_fabric
    return setting.fabric if isinstance(setting, PanelSet) else ""


def _strips(setting: SectionSet, design: Design) -> tuple[StripName, ...]:
    parts = setting.parts if isinstance(setting, LineSet) else ()
    return tuple(
        StripName(place=k, fabric=part.fabric, width=write_length(part.width, design.units))
        for k, part in enumerate(parts)
        if isinstance(part, Strip)
    )


def _motifs(setting: SectionSet, design: Design) -> tuple[MotifName, ...]:
    motifs = setting.motifs if isinstance(setting, PanelSet) else ()
    return tuple(
        MotifName(
            recipe=motif.recipe,
            fabric=motif.fabric,
            at=(write_length(motif.x, design.units), write_length(motif.y, design.units)),
            x=inches_of(motif.x),
            y=inches_of(motif.y),
            turn=motif.degrees,
        )
        for motif in motifs
    )


def _border(name: str, number: int, border: AnyBorder, design: Design) -> BorderName:
    plain = border if isinstance(border, Border) else None
    pieced = border if isinstance(border, PiecedBorder) else None
    coping = border if isinstance(border, Coping) else None
    return BorderName(
        key=border_key(name, number),
        kind="pieced" if pieced else "coping" if coping else "plain",
        fabric="" if isinstance(border, PiecedBorder) else border.fabric,
        width=write_length(plain.width, design.units) if plain else None,
        corners=plain.corner.value
        if plain
        else map_word(pieced.corners)
        if pieced and pieced.corners
        else "",
        cornerstone=plain.cornerstone if plain else "",
        sides=map_word(pieced.sides) if pieced else "",
        ends=map_word(pieced.ends) if pieced else "",
        to=(write_length(coping.width, design.units), write_length(coping.height, design.units))
        if coping
        else None,
        first="sides" if border.sides_first else "ends",
    )


def words_of(setting: SectionSet) -> tuple[tuple[str, ...], ...]:
    """Return the words of a map by the rows and columns of cell addresses; strips of a line are empty words."""
    if isinstance(setting, StraightSet):
        return _rows(setting.cells)
    if isinstance(setting, OnPointSet):
        between = _rows(setting.between)
        rows = _rows(setting.cells)
        return tuple(row for k, each in enumerate(rows) for row in (each, *between[k : k + 1]))
    if isinstance(setting, LineSet):
        parts = tuple("" if isinstance(part, Strip) else map_word(part) for part in setting.parts)
        return tuple((part,) for part in parts) if setting.below else (parts,)
    return ()


def _rows(cells: Map) -> tuple[tuple[str, ...], ...]:
    return tuple(tuple(map_word(cell) for cell in row) for row in cells)
