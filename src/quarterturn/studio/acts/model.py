"""What an act is: one thing that a hand does to the design, as a pure change of its text."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Annotated, ClassVar

from pydantic import BaseModel, ConfigDict, Field

from quarterturn.design import Design, WriteError, write_design


class RefusedError(Exception):
    """An act that cannot be done: what is so, and what to do instead, each a sentence."""

    def __init__(self, sentence: str, remedy: str, *, can_anyway: bool = False) -> None:
        super().__init__(f"{sentence} {remedy}")
        self.sentence, self.remedy = sentence, remedy
        self.can_anyway = can_anyway
        """Whether the same act with `anyway` would be done."""


Facts = Mapping[str, str | int]


@dataclass(frozen=True, slots=True)
class Change:
    """The text that an act leaves, and facts about what it did, for the page to tell."""

    text: str
    facts: Facts = field(default_factory=dict)


class Act(BaseModel, ABC):
    """One act, whose fields are its arguments. `name` tells acts apart in JSON; `key` is its shortcut on the page."""

    model_config = ConfigDict(frozen=True, extra="forbid")
    key: ClassVar[str] = ""
    may_break: ClassVar[bool] = False
    """Whether it may leave, and change, a text that is no design."""
    anyway: bool = False
    """Whether it is to be done though parts of the quilt would no longer fit together."""

    @abstractmethod
    def change(self, text: str, design: Design) -> Change:
        """Return what becomes of the text of a design. Raises RefusedError."""


Name = Annotated[str, Field(min_length=1, max_length=60)]
Turn = Annotated[int, Field(ge=0, le=3)]


class CellAt(BaseModel):
    """The address of a cell: a section, and a row and column of its map as written, from 0."""

    model_config = ConfigDict(frozen=True, extra="forbid")
    section: Name
    row: Annotated[int, Field(ge=0, le=1000)]
    column: Annotated[int, Field(ge=0, le=1000)]


def written(text: str, changes: Mapping[str, object]) -> str:
    """Return the text with dotted keys changed. Raises RefusedError where a key leads nowhere."""
    try:
        return write_design(text, changes)
    except WriteError as error:
        sentence = f"This cannot be written into the file: {str(error).rstrip('.')}."
        raise RefusedError(sentence, "Look at the file itself, and try again.") from error
