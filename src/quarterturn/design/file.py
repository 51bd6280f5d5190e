"""The shape of a design file: which keys there are, and of which type. Imported only when a file is read.

Keys that every design needs are optional here, since the reader goes on past a missing one to tell of all
mistakes together; `needs` lists them, and so does the schema.
"""

from __future__ import annotations

import datetime
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, WithJsonSchema

from quarterturn.design.cuts import CUT_WORDS


def _table(needs: tuple[str, ...] = ()) -> ConfigDict:
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


class FabricTable(BaseModel):
    """A fabric. The key is the letter that the booklet prints, one or two capitals."""

    model_config = _table(("name", "colour"))
    name: str | None = Field(None, description="What you call it, such as oyster.")
    role: str | None = Field(None, description="What it does in the quilt, such as background.")
    colour: str | None = Field(None, description="Its colour on the screen and in print, as #rrggbb.")
    width: Measure | None = Field(None, description="Usable width, selvages off, if not that of [making].")
    direction: Literal["none", "two-way", "one-way"] | None = Field(
        None, description="How its print runs: none (any way up), two-way (stripes) or one-way."
    )
    kind: Literal["cotton", "flannel", "wool"] | None = Field(None, description="What it is made of.")
    upright: bool | None = Field(
        None, description="true: its print, which has a direction, must stand upright in the quilt."
    )
    price: int | Annotated[float, Field(allow_inf_nan=False)] | None = Field(
        None, description="Price of a yard (inch patterns) or of a metre, in the currency of [house]."
    )


class ShapeTable(BaseModel):
    """What the shape is and how large: one of diameter, radius and flow for a circle, width for any other."""

    model_config = _table()
    outline: Outline | None = Field(None, description="Its outline; a circle if it is left out.")
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


class ShapeOnTable(BaseModel):
    """A shape of a recipe of kind "shapes cut". They are fused in the order of the file, the later on top."""

    model_config = _table(("name", "width"))
    name: str | None = Field(None, description="The part that it is; colourways give each part a fabric.")
    outline: Outline | Literal["ring"] | None = Field(
        None, description="Its outline; a circle if it is left out. A ring is a disc with a round hole."
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

    model_config = _table(("kind",))
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

    model_config = _table(("recipe",))
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


class SettingTable(BaseModel):
    """How the units are laid."""

    model_config = _table(("kind", "map"))
    kind: Literal["straight"] | None = Field(None, description="straight: rows and columns.")
    map: str | None = Field(
        None,
        description="A line for each row; for each unit its code, its quarter if it needs one, and its turns.",
    )
    symmetry: Literal["slide", "mirror", "turn", "half turn"] | None = Field(
        None,
        description="How copies of the map are laid: slide (all alike), mirror (each second one mirrored), turn "
        "(the map is a quarter; four turned about its lower right corner make a copy) or half turn (each second "
        "one upside down).",
    )
    across: int | None = Field(None, description="How many times the map is laid side by side.")
    down: int | None = Field(None, description="How many times the map is laid one below the other.")


class BorderTable(BaseModel):
    """A plain border with butted corners, from the inside outwards."""

    model_config = _table(("fabric", "width"))
    fabric: str | None = Field(None, description="The letter of its fabric.")
    width: Measure | None = Field(None, description="Its finished width.")
    first: Literal["sides", "ends"] | None = Field(None, description="Which pair is sewn on first.")


class BindingTable(BaseModel):
    """The binding, folded double."""

    model_config = _table(("fabric",))
    fabric: str | None = Field(None, description="The letter of its fabric.")
    width: Measure | None = Field(None, description="Width of the strip as cut.")


class BackingTable(BaseModel):
    """The back of the quilt."""

    model_config = _table(("fabric",))
    fabric: str | None = Field(None, description="The letter of its fabric.")


class StitchTable(BaseModel):
    """The stitch that holds the edge of a fused shape: starting values for the machine."""

    model_config = _table()
    kind: Literal["zigzag", "satin", "blanket", "straight"] | None = Field(None, description="Which stitch.")
    width: Measure | None = Field(None, description="Its width.")
    length: Measure | None = Field(None, description="Its length.")
    thread: str | None = Field(None, description="The thread, in words.")
    needle: str | None = Field(None, description="The needle, in words.")


class MakingTable(BaseModel):
    """How the quilt is made: every allowance, each with a default."""

    model_config = _table()
    seam: Measure | None = Field(None, description="Seam allowance.")
    usable_width: Measure | None = Field(None, description="Usable width of fabrics that state none.")
    ring_out: Measure | None = Field(None, description="Web left outside the drawn line.")
    ring_in: Measure | None = Field(None, description="Web left inside the drawn line; the rest is cut out.")
    tracing_gap: Measure | None = Field(None, description="Gap between two drawn lines on the web.")
    cut_away: Measure | None = Field(
        None, description="Ground left inside the stitching when the rest behind the shape is cut away."
    )
    web_width: Measure | None = Field(None, description="Width of the web as bought.")
    binding_extra: Measure | None = Field(None, description="Binding beyond the perimeter.")
    overage: Measure | None = Field(None, description="Backing and batting beyond the top, on each side.")
    backing_seam: Measure | None = Field(None, description="Allowance of each edge in a seam of the backing.")
    squaring: Measure | None = Field(None, description="Lost when the cut end of a fabric is straightened.")
    slack: Measure | None = Field(
        None, description="Cloth bought beyond the cuts, squaring included, at least."
    )
    spare_masters: int | None = Field(None, description="Masters made beyond need, of each colourway.")
    pressing: Literal["opposed", "open"] | None = Field(None, description="How joining seams are pressed.")
    stitch: StitchTable | None = Field(None, description="The edge stitch.")


class HouseTable(BaseModel):
    """House style: how the pattern speaks and looks."""

    model_config = _table()
    paper: Literal["letter", "a4"] | None = Field(
        None, description="The sheet that the booklet is printed on."
    )
    sixteenths: bool | None = Field(
        None, description='true: quote sizes to 1/16" where 1/8" hides something.'
    )
    currency: str | None = Field(None, description="What prices are in, such as USD or €.")
    skill: str | None = Field(None, description="Who can sew it, such as confident beginner.")


class DesignFile(BaseModel):
    """A quilt design."""

    model_config = _table(
        ("format", "title", "units", "fabrics", "recipes", "colourways", "setting", "binding", "backing")
    )
    format: int | None = Field(None, description="The format of this file: 1.")
    title: str | None = Field(None, description="The name of the quilt.")
    maker: str | None = Field(None, description="Whose design it is.")
    units: Literal["inch", "metric"] | None = Field(
        None, description="In which units it is drafted and printed."
    )
    number: str | None = Field(None, description="Your pattern number, by which shops order.")
    version: str | None = Field(None, description="The version of the pattern.")
    date: str | datetime.date | None = Field(None, description="The date of the version.")
    contact: str | None = Field(None, description="Where sewers ask, and where corrections are found.")
    about: str | None = Field(None, description="A paragraph or two for the cover.")
    fabrics: dict[str, FabricTable] | None = Field(None, description="The fabrics, by letter.")
    recipes: dict[str, RecipeTable] | None = Field(None, description="The recipes, by name.")
    colourways: dict[str, ColourwayTable] | None = Field(None, description="The colourways, by code.")
    setting: SettingTable | None = Field(None, description="How the units are laid.")
    borders: list[BorderTable] | None = Field(None, description="The borders, from the inside outwards.")
    binding: BindingTable | None = Field(None, description="The binding.")
    backing: BackingTable | None = Field(None, description="The backing.")
    making: MakingTable | None = Field(None, description="Allowances and habits.")
    house: HouseTable | None = Field(None, description="House style.")
