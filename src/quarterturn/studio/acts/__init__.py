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

from quarterturn.studio.acts.doing import Done, do
from quarterturn.studio.acts.model import Act, CellAt, Change, RefusedError
from quarterturn.studio.acts.painting import LayCells, TurnCells
from quarterturn.studio.acts.putting import Put, Puts

ACTS: tuple[type[Act], ...] = (TurnCells, LayCells, Put, Puts)
"""Every act that there is."""

AnyAct: TypeAlias = Annotated[TurnCells | LayCells | Put | Puts, Field(discriminator="name")]

__all__ = ["ACTS", "Act", "AnyAct", "CellAt", "Change", "Done", "RefusedError", "do"]
