"""The shape of the tables that tell of money, notions, kits and a class. Imported only when a file is read."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

_CLOSED = ConfigDict(extra="forbid", strict=True)
_NAMED = ConfigDict(extra="forbid", strict=True, json_schema_extra={"required": ["name"]})
_COUNTED = ConfigDict(extra="forbid", strict=True, json_schema_extra={"required": ["count"]})
_HELD = ConfigDict(extra="forbid", strict=True, json_schema_extra={"required": ["students", "hours"]})

Number = int | Annotated[float, Field(allow_inf_nan=False)]
Measure = str | Number


class MinutesTable(BaseModel):
    """How long each kind of work takes, in minutes."""

    model_config = _CLOSED
    strip: Number | None = Field(
        None, description="To cut one strip across the cloth, straightening included."
    )
    cut: Number | None = Field(None, description="To cut one piece from a strip.")
    ring: Number | None = Field(None, description="To trace a ring of web and hollow it out.")
    shape: Number | None = Field(None, description="To fuse a ring to cloth and cut the shape out.")
    placing: Number | None = Field(
        None, description="To crease a square, centre a shape on it and fuse it down."
    )
    stitching: Number | None = Field(None, description="For an inch of edge.")
    apart: Number | None = Field(None, description="To cut one master once.")
    cut_away: Number | None = Field(None, description="To cut the ground away behind one piece.")
    trim: Number | None = Field(None, description="To trim one piece.")
    seam: Number | None = Field(None, description="To pin and press one seam.")
    seam_inch: Number | None = Field(None, description="For an inch of seam.")
    border: Number | None = Field(None, description="For one strip of a border, from measuring to pressing.")
    layering: Number | None = Field(None, description="For a square yard of quilt, to layer and baste it.")
    quilting: Number | None = Field(None, description="For a square yard of quilt.")
    binding: Number | None = Field(None, description="For an inch of the quilt's edge.")
    other: Number | None = Field(None, description="To lay, label or set aside one thing.")


class MoneyTable(BaseModel):
    """What a quilt on commission must bring in at least."""

    model_config = _CLOSED
    rate: Number | None = Field(None, description="For an hour of work.")
    share: Number | None = Field(
        None, description="Percent added to materials and work, for all else and the profit."
    )
    web: Number | None = Field(None, description="Price of a yard (inch patterns) or of a metre of web.")
    batting: Number | None = Field(None, description="Price of the whole batting.")
    thread: Number | None = Field(None, description="Price of a spool of thread.")
    spool: Measure | None = Field(None, description="Thread on a spool.")
    minutes: MinutesTable | None = Field(None, description="How long each kind of work takes.")


class NotionTable(BaseModel):
    """Something that a sewer needs besides cloth."""

    model_config = _NAMED
    name: str | None = Field(None, description="What it is.")
    count: int | None = Field(None, description="How many.")
    price: Number | None = Field(None, description="What one costs.")


class KitsTable(BaseModel):
    """Kits to pack."""

    model_config = _COUNTED
    count: int | None = Field(None, description="How many kits.")
    content: Literal["pieces", "cloth"] | None = Field(
        None, description="pieces: ready cut; cloth: by the length."
    )
    spare: Number | None = Field(
        None, description="Percent of each kind of piece cut beyond need, one at least."
    )
    web: bool | None = Field(None, description="true: a kit holds its web.")
    backing: bool | None = Field(None, description="true: a kit holds its backing.")
    bolt: Measure | None = Field(None, description="Cloth on a full bolt.")
    label: str | None = Field(None, description="A line of your own on the label.")
    size: str | None = Field(None, description="The size that is packed; the file's own if not given.")


class ClassTable(BaseModel):
    """A class."""

    model_config = _HELD
    students: int | None = Field(None, description="How many students.")
    hours: Number | None = Field(None, description="How long it is.")
    masters: int | None = Field(None, description="Masters that each makes; all of the quilt if not given.")
    pace: Number | None = Field(
        None, description="How many times as long as a practised sewer a student takes."
    )
    irons: int | None = Field(None, description="Irons in the room.")
    cutters: int | None = Field(None, description="Places to cut at.")
    showing: Number | None = Field(None, description="Minutes in which you show each stage.")
    homework: (
        list[
            Literal[
                "cutting", "preparing the shapes", "fusing", "stitching", "cutting apart", "panels", "assembly",
                "borders", "finishing",
            ]
        ]
        | None
    ) = Field(None, description="Chapters done at home; suggested if not given.")  # fmt: skip
    size: str | None = Field(None, description="The size that is made; the file's own if not given.")
