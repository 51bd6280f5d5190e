"""What a hand can do to a design: one act is one object, and changes its text.

In:  an act with its arguments, and the text of a design.
Out: the text that it leaves, which can be read and laid, or a refusal: a sentence and a remedy.
Promise: comments and layout of the file stay; nothing but what the act names is changed.

To add an act: a class in the module of its kind, with a `name` of its own (a Literal), its arguments as fields, the
`key` that does it on the page (none: empty) and `change`; its class in `ACTS`; a row in `docs/studio.md`, a label under
`acts` in `frontend/src/words/en.json`, and a sample in `tests/studio/acts/samples.py`. Tests fail until each has it.
"""

from __future__ import annotations

from typing import Annotated, TypeAlias

from pydantic import Field

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
from quarterturn.studio.acts.doing import Done, do
from quarterturn.studio.acts.finding import TakeSetting
from quarterturn.studio.acts.lines import AddPart, MovePart, RemovePart
from quarterturn.studio.acts.model import Act, CellAt, Change, RefusedError
from quarterturn.studio.acts.motifs import MoveMotif, OrderMotif, PlaceMotif, RemoveMotif
from quarterturn.studio.acts.painting import FillSection, LayCells, StampWords, SwapColourways, TurnCells
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
from quarterturn.studio.acts.symmetry import Brush, Ground, Paint, strokes
from quarterturn.studio.acts.units import ChangeUnits

ACTS: tuple[type[Act], ...] = (
    TurnCells,
    LayCells,
    FillSection,
    StampWords,
    SwapColourways,
    AddSection,
    RemoveSection,
    RenameSection,
    ResizeMap,
    WriteOut,
    LayOtherwise,
    LayBeside,
    AddPart,
    RemovePart,
    MovePart,
    AddBorder,
    RemoveBorder,
    MoveBorder,
    PlaceMotif,
    MoveMotif,
    OrderMotif,
    RemoveMotif,
    AddRecipe,
    CopyRecipe,
    RenameRecipe,
    RemoveRecipe,
    AddShape,
    RemoveShape,
    OrderShape,
    TakeOutline,
    AddFabric,
    RemoveFabric,
    RenameFabric,
    SwapFabrics,
    TakeColours,
    SetPhoto,
    AddColourway,
    RemoveColourway,
    DecideStrips,
    FreeStrips,
    TakeSetting,
    AddSize,
    RemoveSize,
    RenameSize,
    ChangeUnits,
    Put,
    Puts,
    Write,
)
"""Every act that there is."""

AnyAct: TypeAlias = Annotated[
    TurnCells
    | LayCells
    | FillSection
    | StampWords
    | SwapColourways
    | AddSection
    | RemoveSection
    | RenameSection
    | ResizeMap
    | WriteOut
    | LayOtherwise
    | LayBeside
    | AddPart
    | RemovePart
    | MovePart
    | AddBorder
    | RemoveBorder
    | MoveBorder
    | PlaceMotif
    | MoveMotif
    | OrderMotif
    | RemoveMotif
    | AddRecipe
    | CopyRecipe
    | RenameRecipe
    | RemoveRecipe
    | AddShape
    | RemoveShape
    | OrderShape
    | TakeOutline
    | AddFabric
    | RemoveFabric
    | RenameFabric
    | SwapFabrics
    | TakeColours
    | SetPhoto
    | AddColourway
    | RemoveColourway
    | DecideStrips
    | FreeStrips
    | TakeSetting
    | AddSize
    | RemoveSize
    | RenameSize
    | ChangeUnits
    | Put
    | Puts
    | Write,
    Field(discriminator="name"),
]
"""An act as JSON has it, told from others by its name."""


def name_of(act: type[Act]) -> str:
    """Return the name of a kind of act."""
    return str(act.model_fields["name"].default)


__all__ = [
    "ACTS",
    "Act",
    "AnyAct",
    "Brush",
    "CellAt",
    "Change",
    "Done",
    "Ground",
    "Paint",
    "RefusedError",
    "do",
    "name_of",
    "strokes",
]
