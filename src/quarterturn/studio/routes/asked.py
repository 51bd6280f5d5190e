"""What requests bring and answers hold, besides the views; and how a route comes by a design."""

from __future__ import annotations

from typing import Annotated, Literal

from fastapi import Depends, Path, Query, Request
from pydantic import BaseModel, ConfigDict, Field

from quarterturn.studio.acts import AnyAct
from quarterturn.studio.papers import Paper, Result
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.studio import Studio
from quarterturn.studio.views import FindingView, NewDesign, PaperFacts
from quarterturn.studio.views.model import View

MOST_TEXT = 2**21
Revision = Annotated[int, Field(ge=0, le=2**53)]
FileName = Annotated[str, Field(min_length=1, max_length=1000)]


class Asked(BaseModel):
    """What a request brings: its fields and no others."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class OpenOrder(Asked):
    """Which design to open: a file, one that was open before, an example, a new one, or a text. One of these."""

    open: FileName | None = None
    recent: Annotated[str, Field(max_length=40)] | None = None
    example: Annotated[str, Field(max_length=80)] | None = None
    new: NewDesign | None = None
    text: Annotated[str, Field(max_length=MOST_TEXT)] | None = None


class Opened(View):
    """A design that is open, by its id."""

    id: str


class ActOrder(Asked):
    """An act, and the revision that it is to be done to."""

    revision: Revision
    act: AnyAct


class LookOrder(Asked):
    """An act whose outcome is to be looked at before it is done."""

    act: AnyAct


class RevisionOrder(Asked):
    """The revision that something is to be done to."""

    revision: Revision


class SaveOrder(Asked):
    """Where to save: where it was opened from, or somewhere else; whether over what is there, or in a new folder."""

    path: FileName | None = None
    replace: bool = False
    make_folder: bool = False


class CopyOrder(Asked):
    """Where the copy goes, and whether a folder is made for it."""

    path: FileName
    make_folder: bool = False


class KeepOrder(Asked):
    """Which of two texts goes on: ours, or that which someone else wrote into the file."""

    revision: Revision
    keep: Literal["ours", "theirs"]


class TickOrder(Asked):
    """What is ticked off, by the id of its entry."""

    entry: Annotated[str, Field(min_length=1, max_length=120)]
    done: bool
    size: Annotated[str, Field(max_length=120)] | None = None


class Outcome(View):
    """What a change came to. `facts` tell what it did; the page has the words."""

    revision: int
    changed: bool
    act: str
    facts: dict[str, str | int]


class PaperView(PaperFacts):
    """A design as it is: its text and what that names, and what the desk knows of its file.

    `outside` where the file holds another text; `elsewhere` where another studio has it open too. `found` is how many
    findings the checks make, those that stop it included; null until they have been made.
    """

    id: str
    revision: int
    path: str
    name: str
    saved: bool
    missing: bool
    outside: bool
    elsewhere: bool
    can_undo: bool
    can_redo: bool
    undo_of: str
    redo_of: str
    found: int | None


class ActName(View):
    """An act by its name, and the keys that do it."""

    name: str
    key: str


class Refused(BaseModel):
    """Why a request is refused, and what to do instead."""

    detail: str
    remedy: str
    line: int | None = None
    column: int | None = None
    revision: int | None = None
    can_anyway: bool = False
    findings: tuple[FindingView, ...] = ()


def studio_of(request: Request) -> Studio:
    """Return the studio that answers."""
    studio = request.app.state.studio
    assert isinstance(studio, Studio)
    return studio


Room = Annotated[Studio, Depends(studio_of)]


def paper_of(studio: Room, identity: Annotated[str, Path(max_length=40)]) -> Paper:
    """Return the design of an id. Raises NotHereError."""
    return studio.desk.paper(identity)


Open = Annotated[Paper, Depends(paper_of)]
SizeName = Annotated[str | None, Query(alias="size", max_length=120)]


class Drawn:
    """A design at one moment, in one size, with what the stages make of it."""

    def __init__(self, paper: Open, size: SizeName = None) -> None:
        self.paper = paper
        now, self.made = paper.made()
        self.revision = now.revision
        self._wanted = size

    made: Made

    @property
    def size(self) -> OneSize:
        """Return what is made of the size. Raises UnmadeError, UnknownSizeError."""
        return self.made.size(self._wanted)


At = Annotated[Drawn, Depends()]


def outcome(result: Result) -> Outcome:
    """Return what a change came to, as JSON has it."""
    return Outcome(revision=result.revision, changed=result.changed, act=result.act, facts=dict(result.facts))
