"""A sample of every act that could be done to a design: whatever it has, something of it is named."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import ROOT, Cell, ClothCell, Design, LineSet, PanelSet
from quarterturn.studio.acts import Act, CellAt
from quarterturn.studio.acts.beside import LayBeside
from quarterturn.studio.acts.borders import AddBorder, MoveBorder, RemoveBorder
from quarterturn.studio.acts.cloth import (
    AddColourway,
    AddFabric,
    RemoveColourway,
    RemoveFabric,
    RenameFabric,
    SetPhoto,
    SwapFabrics,
    TakeColours,
)
from quarterturn.studio.acts.finding import TakeSetting
from quarterturn.studio.acts.lines import AddPart, MovePart, RemovePart
from quarterturn.studio.acts.maps import sheet_of
from quarterturn.studio.acts.motifs import MoveMotif, OrderMotif, PlaceMotif, RemoveMotif
from quarterturn.studio.acts.painting import (
    FillSection,
    LayCells,
    StampWords,
    SwapColourways,
    TurnCells,
    painted_sections,
)
from quarterturn.studio.acts.putting import Put, Puts, Write
from quarterturn.studio.acts.recipes import (
    AddRecipe,
    AddShape,
    CopyRecipe,
    OrderShape,
    RemoveRecipe,
    RemoveShape,
    RenameRecipe,
    TakeOutline,
)
from quarterturn.studio.acts.sections import (
    AddSection,
    LayOtherwise,
    RemoveSection,
    RenameSection,
    ResizeMap,
    WriteOut,
)
from quarterturn.studio.acts.sizes import AddSize, RemoveSize, RenameSize
from quarterturn.studio.acts.strips import DecideStrips, FreeStrips
from quarterturn.studio.acts.units import ChangeUnits


def samples(design: Design) -> Iterator[Act]:
    """Yield acts of every kind."""
    yield from _painting(design)
    yield from _sections(design)
    yield from _lines(design)
    yield from _borders(design)
    yield from _motifs(design)
    yield from _recipes(design)
    yield from _cloth(design)
    yield TakeSetting(lines=("a2 a3", "a1 a0"), symmetry="mirror", across=2, down=2)
    yield AddSize(size="tiny", changes={"borders.0.width": '3"'}, bed="crib", drop='9"')
    yield from (RemoveSize(size=each.size) for each in (*design.sizes, design))
    yield from (RenameSize(size=each.size, to="another") for each in (*design.sizes, design))
    yield from (ChangeUnits(units=units) for units in ("inch", "metric"))
    yield Put(at="title", value="Another title")
    yield Put(at="about")
    yield Puts(values={"maker": "Somebody", "making.seam": "6 mm", "fabrics.A.price": 12.5})
    yield Write(text='title = "no design"\n')


def some_cells(design: Design) -> list[CellAt]:
    """Return the first and the last cell of everything that has words."""
    found = []
    for section in painted_sections(design):
        rows = sheet_of(design, section).rows
        for r, c in {(0, 0), (len(rows) - 1, len(rows[-1]) - 1)}:
            if rows[r][c] is not None:
                found.append(CellAt(section=section, row=r, column=c))
    return found


def _painting(design: Design) -> Iterator[Act]:
    cells = some_cells(design)
    codes = [way.code for way in design.colourways]
    if cells:
        yield TurnCells(cells=tuple(cells))
        yield from (TurnCells(cells=(at,), by=3) for at in cells)
        for at in cells:
            held = sheet_of(design, at.section).rows[at.row][at.column]
            word = held.name if isinstance(held, Cell) else "A" if isinstance(held, ClothCell) else held
            if isinstance(word, str):
                yield LayCells(cells=(at,), unit=word, turn=1)
            yield LayCells(cells=(at,), unit=codes[-1], turn=2)
            yield StampWords(
                section=at.section, row=at.row, column=at.column, words=(("A", f"{codes[0]}1"), ("",))
            )
    for section in painted_sections(design):
        yield FillSection(section=section, unit=codes[0], turn=1)
        yield SwapColourways(a=codes[0], b=codes[-1], section=section)
    yield SwapColourways(a=codes[0], b=codes[-1])
    yield LayCells(cells=(CellAt(section="centre", row=900, column=0),), unit=codes[0])


def _sections(design: Design) -> Iterator[Act]:
    code, letter = design.colourways[0].code, design.fabrics[0].letter
    for kind in ("straight", "on point", "columns", "rows", "panel"):
        yield AddSection(section="newest", kind=kind, unit=code, fabric=letter, rows=3)
    for name in (ROOT, *(section.name for section in design.sections)):
        yield ResizeMap(section=name, right=1, bottom=1)
        yield ResizeMap(section=name, left=-1, top=2, fill=code)
        yield ResizeMap(section=name, right=-200)
        yield WriteOut(section=name)
        for kind in ("straight", "on point", "columns", "rows"):
            yield LayOtherwise(section=name, kind=kind)
    for section in design.sections:
        yield RemoveSection(section=section.name)
        yield RemoveSection(section=section.name, instead=letter)
        yield RenameSection(section=section.name, to="another")
        yield LayBeside(section=section.name, side="below", anyway=True)
        yield RenameSection(section=section.name, to=section.name)
    yield AddSection(section="newest", unit=code, fabric=letter, beside="left")


def _lines(design: Design) -> Iterator[Act]:
    code, letter = design.colourways[0].code, design.fabrics[0].letter
    settings = {ROOT: design.setting, **{section.name: section.setting for section in design.sections}}
    for name, setting in settings.items():
        if isinstance(setting, LineSet) or name == ROOT:
            yield AddPart(section=name, place=1, part=code, turn=1)
            yield AddPart(section=name, place=0, part=letter, width='2"')
            yield RemovePart(section=name, place=0)
            yield MovePart(section=name, place=0, to=1)


def _borders(design: Design) -> Iterator[Act]:
    letter = design.fabrics[0].letter
    for name in (ROOT, *(section.name for section in design.sections)):
        yield AddBorder(section=name, fabric=letter, width='2"')
        yield AddBorder(section=name, place=0, fabric=letter, width="5 cm", corners="mitred")
        yield AddBorder(section=name, kind="coping", fabric=letter, to=('90"', '99"'))
        yield AddBorder(section=name, kind="pieced", sides="nowhere", ends="nowhere", corners=letter)
        yield RemoveBorder(section=name, place=0)
        yield MoveBorder(section=name, place=1, to=0)
        yield MoveBorder(section=name, place=0, to=1)


def _motifs(design: Design) -> Iterator[Act]:
    letter, recipe = design.fabrics[-1].letter, design.recipes[-1].name
    settings = {ROOT: design.setting, **{section.name: section.setting for section in design.sections}}
    for name, setting in settings.items():
        if isinstance(setting, PanelSet) or name == ROOT:
            yield PlaceMotif(section=name, recipe=recipe, fabric=letter, at=('4"', '4"'), turn=20)
            yield MoveMotif(section=name, motif=0, at=("11 cm", '4 1/2"'), turn=45, fabric=letter)
            yield OrderMotif(section=name, motif=0, to=1)
            yield RemoveMotif(section=name, motif=0)


def _recipes(design: Design) -> Iterator[Act]:
    first, letter = design.recipes[0], design.fabrics[0].letter
    name = first.base or first.name
    for kind in ("circle cut both ways", "shape cut both ways", "shapes cut", "halves rejoined"):
        yield AddRecipe(recipe="newest", kind=kind, of=name)
    yield AddRecipe(recipe="newest", kind="shapes cut", cuts="one diagonal", outline="leaf")
    yield AddRecipe(recipe="a new one", kind="shape cut both ways", outline="drop")
    yield CopyRecipe(recipe=name, to="twin of it")
    yield RenameRecipe(recipe=name, to="other name")
    yield from (RemoveRecipe(recipe=each.base or each.name) for each in design.recipes)
    yield from (RemoveRecipe(recipe=each.base or each.name) for each in design.rejoined)
    yield AddShape(recipe=name, part="dot", width='1"', fabric=letter, at=('1/2"', '1/2"'), turn=45)
    yield RemoveShape(recipe=name, shape=0)
    yield OrderShape(recipe=name, shape=0, to=1)
    yield TakeOutline(outline="kite", path="M -1 0 L 0 -2 L 1 0 L 0 1 Z")
    yield TakeOutline(outline="heart", path="M -1 0 L 0 -2 L 1 0 L 0 1 Z")
    yield TakeOutline(outline="nothing", path="M -1 0 L 0")


def _cloth(design: Design) -> Iterator[Act]:
    letters = [fabric.letter for fabric in design.fabrics]
    yield AddFabric(called="newest cloth", colour="#336699", role="new")
    yield AddFabric(letter=letters[0], called="newest cloth", colour="#336699")
    for letter in letters:
        yield RemoveFabric(letter=letter)
        yield RemoveFabric(letter=letter, instead=letters[-1] if letter == letters[0] else letters[0])
    yield SwapFabrics(a=letters[0], b=letters[-1])
    yield RenameFabric(letter=letters[0], to="QQ")
    yield TakeColours(colours={letters[0]: "#102030", letters[-1]: "#aabbcc"})
    yield SetPhoto(letter=letters[0], photo="cloth.jpg", width='12"', crop=(0.1, 0.1, 0.8, 0.8))
    yield SetPhoto(letter=letters[0])
    for letter in letters:
        yield DecideStrips(fabric=letter, height='12 1/2"', count=1)
        yield DecideStrips(fabric=letter, height="30 cm", pieces=(f"{letter}1",))
        yield FreeStrips(fabric=letter)
        yield FreeStrips(fabric=letter, place=0)
    for recipe in design.recipes:
        parts = dict.fromkeys(("ground", *(shape.part for shape in recipe.shapes)), letters[0])
        parts["ground"] = letters[-1]
        yield AddColourway(recipe=recipe.base or recipe.name, cloths=parts)
    for way in design.colourways:
        if way.is_rejoined:
            yield AddColourway(recipe=way.recipe, first=way.second, second=way.first)
        yield RemoveColourway(code=way.code)
        yield RemoveColourway(code=way.code, instead=design.colourways[0].code)
