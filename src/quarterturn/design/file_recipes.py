"""The shape of a design file as far as recipes go: their outlines, shapes and colourways. See `file`."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, WithJsonSchema

from quarterturn.design.cuts import CUT_WORDS


def table(needs: tuple[str, ...] = ()) -> ConfigDict:
    """Return how a table is read: no other keys, no other types; `needs` are the keys that the schema asks for."""
    extra: dict[str, Any] = {"required": list(needs)} if needs else {}
    return ConfigDict(extra="forbid", strict=True, json_schema_extra=extra)


Measure = str | int | Annotated[float, Field(allow_inf_nan=False)]
"""A length: text with its unit, or a bare number in inches (in millimetres where units is metric)."""


_LENGTH_SCHEMA: dict[str, Any] = {"type": ["string", "number"]}
_POINT_SCHEMA: dict[str, Any] = {
    "type": "array",
    "items": _LENGTH_SCHEMA,
    "minItems": 2,
    "maxItems": 2,
}
_CUTS_SCHEMA: dict[str, Any] = {
    "anyOf": [
        {"enum": list(CUT_WORDS)},
        {"type": "array", "items": {"type": "array", "items": _POINT_SCHEMA, "minItems": 2, "maxItems": 2}},
    ]
}

Point = Annotated[Any, WithJsonSchema(_POINT_SCHEMA)]
"""Two lengths, x and y, of which the reader tells the mistakes itself."""
Cuts = Annotated[Any, WithJsonSchema(_CUTS_SCHEMA)]
"""A word, or a list of lines, each through two points; the reader tells the mistakes itself."""
Outline = Literal["circle", "heart", "soft heart", "leaf", "petal", "drop", "rounded square", "scallop"]


class ShapeTable(BaseModel):
    """What the shape is and how large: one of diameter, radius and flow for a circle, width for any other."""

    model_config = table()
    outline: Outline | str | None = Field(
        None, description="Its outline, one of these or one of [outlines]; a circle if it is left out."
    )
    width: Measure | None = Field(
        None, description="What the outline measures across as you trace it, before it is turned."
    )
    turn: int | None = Field(None, description="Quarter turns clockwise, 0 to 3.")
    lobes: int | None = Field(None, description="How many lobes a scallop has.")
    diameter: Measure | None = Field(None, description="What the shape measures across as you trace it.")
    radius: Measure | None = Field(
        None, description="How far from the finished corner the curve meets the sewn seam."
    )
    flow: Literal[True] | None = Field(
        None, description="true: the curve meets the middle of the unit's side and runs on into a neighbour."
    )


class OutlineTable(BaseModel):
    """An outline of your own. The key is the name by which shapes call it."""

    model_config = table(("path",))
    path: str | None = Field(
        None,
        description="The outline as path data (SVG): one closed line, y down, in inches, or in millimetres where "
        "units is metric.",
    )
    width: Measure | None = Field(
        None, description="What it truly measures across; if not given, what the numbers of its path say."
    )


class ShapeOnTable(BaseModel):
    """A shape of a recipe of kind "shapes cut". They are fused in the order of the file, the later on top."""

    model_config = table(("name",))
    name: str | None = Field(None, description="The part that it is; colourways give each part a fabric.")
    outline: Outline | Literal["ring"] | str | None = Field(
        None,
        description="Its outline, one of these or one of [outlines]; a circle if it is left out. A ring is a disc with "
        "a round hole.",
    )
    width: Measure | None = Field(None, description="What the outline measures across before it is turned.")
    inner: Measure | None = Field(None, description="What the hole of a ring measures across.")
    lobes: int | None = Field(None, description="How many lobes a scallop has.")
    at: Point = Field(
        None, description="Where its middle lies, right of and below the middle of the master: two lengths."
    )
    turn: int | Annotated[float, Field(allow_inf_nan=False)] | None = Field(
        None, description="Degrees clockwise, such as 45."
    )
    underlap: Measure | None = Field(
        None, description="What of the cloth below stays inside its stitching when the rest is cut away."
    )


class RecipeTable(BaseModel):
    """How masters become units. Give one or two of finished, start and trim; the rest follows."""

    model_config = table(("kind",))
    kind: Literal["circle cut both ways", "shape cut both ways", "shapes cut", "halves rejoined"] | None = (
        Field(None, description="What is fused, and how it is cut; or which halves are rejoined.")
    )
    finished: Measure | None = Field(None, description="Side of the unit inside its seams.")
    finished_width: Measure | None = Field(None, description="Width of a unit that is not square.")
    finished_height: Measure | None = Field(None, description="Height of a unit that is not square.")
    start: Measure | None = Field(None, description="Side of the master square as you cut it.")
    width: Measure | None = Field(None, description="Width, as you cut it, of a master that is not square.")
    height: Measure | None = Field(None, description="Height, as you cut it, of a master that is not square.")
    trim: Measure | None = Field(None, description="What is trimmed off the master in all.")
    shape: ShapeTable | None = Field(None, description="The size of the shape, where there is one.")
    cuts: Cuts = Field(
        None,
        description="How shapes cut are cut: none, across, down, both ways, one diagonal, both diagonals, or lines, "
        "each through two points from the middle of the master.",
    )
    shapes: list[ShapeOnTable] | None = Field(
        None, description="The shapes of shapes cut, in the order of fusing: the later on top."
    )
    of: str | None = Field(None, description="The recipe whose halves are rejoined.")
    pieced: bool | None = Field(
        None, description="true: the pattern offers the circle to be sewn along its curve as well."
    )
    curve: Literal["as drawn", "sewn true"] | None = Field(
        None,
        description="as drawn: trace it as it is; sewn true: trace it spread, so that it is true when sewn.",
    )


class ColourwayTable(BaseModel):
    """A recipe in cloth. The key is the code that the map writes, one or two small letters."""

    model_config = table(("recipe",))
    recipe: str | None = Field(None, description="The recipe that it follows.")
    ground: str | None = Field(None, description="The letter of the fabric below.")
    shape: str | None = Field(
        None, description="The letter of the fabric that is fused on, where there is one."
    )
    shapes: dict[str, str] | None = Field(
        None, description="The letter of the fabric of each part of shapes cut."
    )
    first: str | None = Field(
        None, description="The colourway of the first master whose halves are rejoined."
    )
    second: str | None = Field(None, description="The colourway of the second.")
