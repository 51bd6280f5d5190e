"""Plain cloth whose print must stand upright, and would not: in a section that lies turned, or on point.

Plain cloth is cut as its section's map shows it, once for all the places of the section.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import (
    ROOT,
    AnyBorder,
    Border,
    ClothCell,
    Coping,
    Design,
    Direction,
    Finding,
    LineSet,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    Place,
    SectionCell,
    SectionSet,
    Severity,
    StraightSet,
    Strip,
    border_key,
    cells_of,
    section_key,
)

WAYS_AROUND = {Direction.NONE: 1, Direction.TWO_WAY: 180, Direction.ONE_WAY: 360}
"""After so many degrees a print looks the same."""


@dataclass(frozen=True, slots=True)
class Plain:
    """Plain cloth of a section: where the file names it, its fabric, and by how many degrees it is turned there."""

    key: str
    fabric: str
    degrees: int = 0
    slants: bool = False


def cloth_sideways(design: Design) -> Iterator[Finding]:
    """Tell once of each piece of plain cloth whose print would not stand upright somewhere."""
    told: set[str] = set()
    settings = {section.name: section.setting for section in design.sections}
    for name, turn, slants in _all_turns(design, settings):
        setting = settings[name] if name != ROOT else design.setting
        borders = setting.borders if name != ROOT else design.borders
        for plain in (*_inside(name, setting), *_round(name, borders)):
            fabric = design.fabric(plain.fabric)
            leans = slants or plain.slants
            off = (90 * turn + plain.degrees) % WAYS_AROUND[fabric.direction]
            if fabric.upright and (leans or off) and plain.key not in told:
                told.add(plain.key)
                yield _finding(name, plain, leans=leans)


def _finding(name: str, plain: Plain, *, leans: bool) -> Finding:
    where = "Where it slants, on point" if leans else "As it is turned"
    if not leans and not plain.degrees:
        where = f"Where `{name}` lies turned"
    return Finding(
        "print-sideways",
        Severity.STOPS,
        Place(plain.key),
        f"{where}, the print of fabric {plain.fabric}, which must stand upright, would not.",
        f"Use another fabric there, or let fabric {plain.fabric} lie any way up.",
    )


def _all_turns(design: Design, settings: dict[str, SectionSet]) -> Iterator[tuple[str, int, bool]]:
    """Return each section with every turn in which it lies in the top, and whether it slants there."""
    waiting: list[tuple[str, int, bool]] = [(ROOT, 0, False)]
    for name, turn, slants in waiting:
        yield name, turn, slants
        setting = settings[name] if name != ROOT else design.setting
        borders = setting.borders if name != ROOT else design.borders
        leans = slants or isinstance(setting, OnPointSet)
        inner = [(cell, more, leans) for cell, more in _held(name, setting)]
        inner += [(cell, more, slants) for cell, more in _held_round(borders)]
        for cell, more, lean in inner:
            lying = cell.section, (turn + cell.turn + more) % 4, lean
            if lying not in waiting:
                waiting.append(lying)


def _held(name: str, setting: SectionSet) -> Iterator[tuple[SectionCell, int]]:
    """Return the sections that stand in a section, as each copy of its map turns them."""
    cells = [named.cell for named in cells_of(name, setting, ())]
    if isinstance(setting, StraightSet):
        cells = [cell for row in setting.rows() for cell in row]
    yield from ((cell, 0) for cell in dict.fromkeys(cells) if isinstance(cell, SectionCell))


def _held_round(borders: tuple[AnyBorder, ...]) -> Iterator[tuple[SectionCell, int]]:
    """Return the sections of pieced borders, and how far each of their copies is turned."""
    for border in borders:
        if isinstance(border, PiecedBorder):
            yield from ((cell, more) for cell in (border.sides, border.ends) for more in (0, 2))
            if isinstance(border.corners, SectionCell):
                yield from ((border.corners, more) for more in range(4))


def _inside(name: str, setting: SectionSet) -> Iterator[Plain]:
    """Return the plain cloth of a section, without that of its borders."""
    slants = isinstance(setting, OnPointSet)
    for named in cells_of(name, setting, ()):
        if isinstance(named.cell, ClothCell):
            yield Plain(named.key, named.cell.fabric, slants=slants)
    if isinstance(setting, OnPointSet):
        yield Plain(section_key(name, "triangles"), setting.side_fabric, slants=True)
        yield Plain(section_key(name, "corners"), setting.corner_fabric, slants=True)
    if isinstance(setting, StraightSet | OnPointSet) and setting.sashing:
        for fabric in filter(None, (setting.sashing.fabric, setting.sashing.cornerstone)):
            yield Plain(section_key(name, "sashing"), fabric, slants=slants)
    if isinstance(setting, LineSet):
        for number, part in enumerate(setting.parts):
            if isinstance(part, Strip):
                yield Plain(section_key(name, "parts", number), part.fabric)
    if isinstance(setting, PanelSet):
        yield Plain(section_key(name, "fabric"), setting.fabric)
        for number, motif in enumerate(setting.motifs):
            yield Plain(section_key(name, "motifs", number), motif.fabric, motif.degrees)


def _round(name: str, borders: tuple[AnyBorder, ...]) -> Iterator[Plain]:
    """Return the plain cloth of borders."""
    for number, border in enumerate(borders):
        key = border_key(name, number)
        if isinstance(border, Border | Coping):
            yield Plain(key, border.fabric)
        if isinstance(border, Border) and border.cornerstone:
            yield Plain(key, border.cornerstone)
        if isinstance(border, PiecedBorder) and isinstance(border.corners, ClothCell):
            yield Plain(f"{key}.corners", border.corners.fabric)
