"""Acts on strips that the designer decides on: what the plan of a fabric must cut, and is free to cut otherwise."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import Design, Fabric
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, written


class DecideStrips(Act):
    """Decide on strips of a fabric: their height, how many, and the labels of pieces that they are cut into."""

    key: ClassVar[str] = ""
    name: Literal["decide-strips"] = "decide-strips"
    fabric: Name
    height: Annotated[str, Field(min_length=1, max_length=40)]
    count: Annotated[int, Field(ge=1, le=1000)] | None = None
    pieces: Annotated[tuple[Name, ...], Field(max_length=60)] = ()

    def change(self, text: str, design: Design) -> Change:
        """Write a table of them behind those that there are."""
        fabric = _off_the_bolt(design, self.fabric)
        own = f"fabrics.{self.fabric}.strips.{len(fabric.strips)}"
        values: dict[str, object] = {f"{own}.height": self.height}
        if self.count is not None:
            values[f"{own}.count"] = self.count
        if self.pieces:
            values[f"{own}.pieces"] = list(self.pieces)
        return Change(written(text, values), {"fabric": self.fabric})


class FreeStrips(Act):
    """Leave strips that were decided on to the plan: those of a place, from 0, or all of a fabric."""

    key: ClassVar[str] = ""
    name: Literal["free-strips"] = "free-strips"
    fabric: Name
    place: Annotated[int, Field(ge=0, le=1000)] | None = None

    def change(self, text: str, design: Design) -> Change:
        """Take their tables out."""
        count = len(_fabric(design, self.fabric).strips)
        if not count or (self.place is not None and self.place >= count):
            sentence = f"There are {count or 'no'} strips of fabric {self.fabric} to leave to the plan."
            raise RefusedError(sentence, "Choose some that are decided on.")
        own = f"fabrics.{self.fabric}.strips"
        only = self.place if count > 1 else None
        return Change(
            written(text, {own if only is None else f"{own}.{only}": None}), {"fabric": self.fabric}
        )


def _off_the_bolt(design: Design, letter: str) -> Fabric:
    fabric = _fabric(design, letter)
    if fabric.bought_as:
        sentence = f"Fabric {letter} is bought in pieces, whose strips cannot be decided on."
        raise RefusedError(sentence, "Buy it off the bolt, or leave the strips to the plan.")
    return fabric


def _fabric(design: Design, letter: str) -> Fabric:
    found = next((fabric for fabric in design.fabrics if fabric.letter == letter), None)
    if found is None:
        raise RefusedError(f"There is no fabric {letter}.", "Choose one of the design.")
    return found
