"""The shape of a design file: which keys there are, and of which type. Imported only when a file is read.

Keys that every design needs are optional here, since the reader goes on past a missing one to tell of all
mistakes together; `needs` lists them, and so does the schema.
"""

from __future__ import annotations

import datetime
from typing import Annotated, Any, Literal

from pydantic import BaseModel, Discriminator, Field, Tag

from quarterturn.design.file_recipes import ColourwayTable, Measure, OutlineTable, RecipeTable, table
from quarterturn.design.selling_tables import ClassTable, KitsTable, MoneyTable, NotionTable


class OnHandTable(BaseModel):
    """Equal pieces of a fabric that lie on the shelf."""

    model_config = table(("width", "height"))
    width: Measure | None = Field(None, description="Its true width across the cloth, selvage off.")
    height: Measure | None = Field(None, description="Its true height along the cloth.")
    count: int | None = Field(None, description="How many there are, 1 if left out.")
    squaring: Measure | None = Field(
        None, description="Taken off its width and its height to square it up, if not that of [making]."
    )


class BoughtTable(BaseModel):
    """Pieces in which a fabric is bought, in a size of one's own."""

    model_config = table()
    name: str | None = Field(None, description="What one is called, such as fat quarter.")
    width: Measure | None = Field(None, description="Its width across the cloth, selvage off.")
    height: Measure | None = Field(None, description="Its height along the cloth.")
    squaring: Measure | None = Field(
        None, description="Taken off its width and its height to square it up, if not that of [making]."
    )


BoughtWord = Literal["bolt", "fat quarter", "fat eighth", "10 inch square", "2 1/2 inch strip"]


def _bought_kind(given: Any) -> str:
    return "size" if isinstance(given, dict | BoughtTable) else "word"


BoughtAs = Annotated[
    Annotated[BoughtWord, Tag("word")] | Annotated[BoughtTable, Tag("size")], Discriminator(_bought_kind)
]
"""A word for how a fabric is bought, or pieces of a size of one's own."""


class PinnedTable(BaseModel):
    """Strips that the designer has decided on."""

    model_config = table(("height",))
    height: Measure | None = Field(None, description="The height of the strips.")
    count: int | None = Field(None, description="So many of them, if not as many as the pieces need.")
    pieces: list[str] | None = Field(None, description="Labels of the pieces that they are cut into.")


class FabricTable(BaseModel):
    """A fabric. The key is the letter that the booklet prints, one or two capitals."""

    model_config = table(("name", "colour"))
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
        None,
        description="Price of a yard (inch patterns), of a metre, or of a piece if it is bought in pieces.",
    )
    shrink_along: int | Annotated[float, Field(allow_inf_nan=False)] | None = Field(
        None, description="Percent of its length that it loses when it is washed before it is cut."
    )
    shrink_across: int | Annotated[float, Field(allow_inf_nan=False)] | None = Field(
        None, description="Percent of its width that it loses when it is washed before it is cut."
    )
    photo: str | None = Field(None, description="A photo of it: the name of a file beside the design.")
    photo_width: Measure | None = Field(
        None, description="What the photo, as cropped, shows across in truth."
    )
    photo_crop: list[int | Annotated[float, Field(allow_inf_nan=False)]] | None = Field(
        None, description="What is shown of the photo: left, top, width and height as shares of it, 0 to 1."
    )
    on_hand: list[OnHandTable] | None = Field(
        None, description="Pieces of it that lie on the shelf; they are used first."
    )
    bought_as: BoughtAs | None = Field(
        None, description="bolt (by the length), a precut of the trade, or pieces of a size of your own."
    )
    strips: list[PinnedTable] | None = Field(
        None, description="Strips that you have decided on: the others are planned around them."
    )
    strip_heights: list[Measure] | None = Field(
        None, description="The heights that its strips may have, if not any."
    )


class SashingTable(BaseModel):
    """Strips between the places of a map."""

    model_config = table(("fabric", "width"))
    fabric: str | None = Field(None, description="The letter of the fabric of its strips.")
    width: Measure | None = Field(None, description="Its finished width.")
    cornerstone: str | None = Field(
        None, description="The letter of the fabric of the squares where strips cross."
    )
    outer: bool | None = Field(None, description="true: strips round all places too.")


class PartTable(BaseModel):
    """A plain strip in a line of sections."""

    model_config = table(("fabric", "width"))
    fabric: str | None = Field(None, description="The letter of its fabric.")
    width: Measure | None = Field(None, description="Its finished width.")


class MotifTable(BaseModel):
    """A shape fused on a panel."""

    model_config = table(("recipe", "fabric", "at"))
    recipe: str | None = Field(None, description="The recipe whose shape it is.")
    fabric: str | None = Field(None, description="The letter of its fabric.")
    at: list[Measure] | None = Field(
        None, description="Where its middle lies, from the left and from the top of the finished panel."
    )
    turn: int | None = Field(None, description="Degrees clockwise, 0 to 359.")


def _part_kind(part: Any) -> str:
    return "strip" if isinstance(part, dict | PartTable) else "word"


Part = Annotated[Annotated[str, Tag("word")] | Annotated[PartTable, Tag("strip")], Discriminator(_part_kind)]
"""A word of a map, or a plain strip."""


class BorderTable(BaseModel):
    """A border: plain, pieced of sections, or coping strips."""

    model_config = table()
    kind: Literal["plain", "pieced", "coping"] | None = Field(None, description="plain if it is left out.")
    fabric: str | None = Field(None, description="The letter of its fabric (plain and coping).")
    width: Measure | None = Field(None, description="Its finished width (plain).")
    first: Literal["sides", "ends"] | None = Field(None, description="Which pair is sewn on first.")
    corners: str | None = Field(
        None,
        description="butted, mitred or cornerstones; in a pieced border the word of what fills the corners.",
    )
    cornerstone: str | None = Field(None, description="The letter of the fabric of its cornerstones.")
    sides: str | None = Field(None, description="The section on the left and, turned, on the right (pieced).")
    ends: str | None = Field(None, description="The section at the top and, turned, at the bottom (pieced).")
    to: list[Measure] | None = Field(
        None, description="Finished width and height that it brings its section to (coping)."
    )


class SettingTable(BaseModel):
    """How the quilt, or a section of it, is laid."""

    model_config = table(("kind",))
    kind: Literal["straight", "on point", "columns", "rows", "panel"] | None = Field(
        None, description="straight: rows and columns; on point; columns or rows of sections; or a panel."
    )
    map: str | None = Field(
        None,
        description="A line for each row; for each place a unit with its turns, a fabric, or a section with its turns.",
    )
    symmetry: Literal["slide", "mirror", "turn", "half turn"] | None = Field(
        None,
        description="How copies of the map are laid: slide (all alike), mirror (each second one mirrored), turn "
        "(the map is a quarter; four turned about its lower right corner make a copy) or half turn (each second "
        "one upside down).",
    )
    across: int | None = Field(None, description="How many times the map is laid side by side.")
    down: int | None = Field(None, description="How many times the map is laid one below the other.")
    sashing: SashingTable | None = Field(None, description="Strips between the places.")
    between: str | None = Field(
        None, description="On point: what stands between the places, a word for all or a map."
    )
    triangles: str | None = Field(None, description="On point: the letter of the fabric of the triangles.")
    corners: str | None = Field(None, description="On point: that of the corner triangles, if another.")
    fit: Literal["exact", "handbook", "oversized"] | None = Field(
        None, description="On point: how large the squares are that the triangles are cut from."
    )
    float: Measure | None = Field(None, description="How far oversized triangles stand out.")
    side_square: Measure | None = Field(
        None, description="The square, as cut, for four side triangles, if it is to be another."
    )
    corner_square: Measure | None = Field(
        None, description="The square, as cut, for two corner triangles, if it is to be another."
    )
    parts: list[Part] | None = Field(None, description="Columns and rows: sections, units and strips.")
    fabric: str | None = Field(None, description="Panel: the letter of its fabric.")
    width: Measure | None = Field(None, description="Panel: its finished width.")
    height: Measure | None = Field(None, description="Panel: its finished height.")
    motifs: list[MotifTable] | None = Field(None, description="Panel: shapes fused on it, later ones on top.")


class SectionTable(SettingTable):
    """A part of the quilt that is sewn by itself. The key is the name that maps call it by."""

    borders: list[BorderTable] | None = Field(None, description="Borders round the section.")


class BindingTable(BaseModel):
    """The binding."""

    model_config = table(("fabric",))
    fabric: str | None = Field(None, description="The letter of its fabric.")
    kind: Literal["straight", "bias"] | None = Field(
        None, description="straight: across the cloth; bias: from a square, round and round."
    )
    fold: Literal["double", "single"] | None = Field(
        None, description="double: folded in half; single: its raw edges folded in."
    )
    width: Measure | None = Field(None, description="Width of the strip as cut.")
    finished: Measure | None = Field(
        None, description="Finished width of one face, from which the strip follows."
    )


class BackingTable(BaseModel):
    """The back of the quilt."""

    model_config = table(("fabric",))
    fabric: str | None = Field(None, description="The letter of its fabric.")


class BattingTable(BaseModel):
    """The batting."""

    model_config = table()
    packages: dict[str, list[Measure]] | None = Field(
        None, description="The two sides of each package that is sold, by name."
    )


class StitchTable(BaseModel):
    """The stitch that holds the edge of a fused shape: starting values for the machine."""

    model_config = table()
    kind: Literal["zigzag", "satin", "blanket", "straight"] | None = Field(None, description="Which stitch.")
    width: Measure | None = Field(None, description="Its width.")
    length: Measure | None = Field(None, description="Its length.")
    thread: str | None = Field(None, description="The thread, in words.")
    needle: str | None = Field(None, description="The needle, in words.")
    repeat: str | None = Field(
        None,
        description="The way of the needle through one repeat, for the thread: points across and along, in mm.",
    )
    layers: int | None = Field(None, description="Layers of cloth that it goes through.")
    bobbin: Measure | None = Field(None, description="Thread on a full bobbin.")


class MakingTable(BaseModel):
    """How the quilt is made: every allowance, each with a default."""

    model_config = table()
    seam: Measure | None = Field(None, description="Seam allowance.")
    usable_width: Measure | None = Field(None, description="Usable width of fabrics that state none.")
    ring_out: Measure | None = Field(None, description="Web left outside the drawn line.")
    ring_in: Measure | None = Field(None, description="Web left inside the drawn line; the rest is cut out.")
    tracing_gap: Measure | None = Field(None, description="Gap between two drawn lines on the web.")
    cut_away: Measure | None = Field(
        None, description="Ground left inside the stitching when the rest behind the shape is cut away."
    )
    web_width: Measure | None = Field(None, description="Width of the web as bought.")
    web_sheet: list[Measure] | None = Field(
        None, description="Width and height of a sheet of web, where it is sold by the sheet."
    )
    binding_extra: Measure | None = Field(None, description="Binding beyond the perimeter.")
    overage: Measure | None = Field(None, description="Backing and batting beyond the top, on each side.")
    backing_seam: Measure | None = Field(None, description="Allowance of each edge in a seam of the backing.")
    squaring: Measure | None = Field(None, description="Lost when the cut end of a fabric is straightened.")
    piece_squaring: Measure | None = Field(
        None,
        description="Taken off width and height of a piece of cloth, such as a fat quarter, to square it up.",
    )
    slack: Measure | None = Field(
        None, description="Cloth bought beyond the cuts, squaring included, at least."
    )
    spare_masters: int | None = Field(None, description="Masters made beyond need, of each colourway.")
    pressing: Literal["opposed", "open"] | None = Field(None, description="How joining seams are pressed.")
    borders: Literal["cheapest", "lengthwise", "crosswise"] | None = Field(
        None, description="How borders longer than the cloth is wide are cut."
    )
    joins: Literal["cheapest", "straight", "diagonal"] | None = Field(
        None, description="How strips are joined for borders longer than the cloth is wide."
    )
    layers: int | None = Field(None, description="Layers of cloth cut at once with a rotary cutter, at most.")
    stitch: StitchTable | None = Field(None, description="The edge stitch.")


class HouseTable(BaseModel):
    """House style: how the pattern speaks and looks."""

    model_config = table()
    paper: Literal["letter", "a4"] | None = Field(
        None, description="The sheet that the booklet is printed on."
    )
    sixteenths: bool | None = Field(
        None, description='true: quote sizes to 1/16" where 1/8" hides something.'
    )
    currency: str | None = Field(None, description="What prices are in, such as USD or €.")
    skill: str | None = Field(None, description="Who can sew it, such as confident beginner.")


class SizeTable(BaseModel):
    """The design in another size: what differs, and the bed that it is meant for. The key is the size's name."""

    model_config = table()
    changes: dict[str, Any] | None = Field(
        None, description="Dotted keys of this file, each with the value that it has in this size."
    )
    bed: (
        Literal[
            "crib", "twin", "twin XL", "full", "queen", "king", "California king",
            "UK small single", "UK single", "UK small double", "UK double", "UK king", "UK super king",
            "UK emperor", "continental 90", "continental 140", "continental 160", "continental 180",
        ]
        | None
    ) = Field(None, description="The known mattress that this size is meant for.")  # fmt: skip
    mattress: list[Measure] | None = Field(
        None, description="Width and length of a mattress that is not known."
    )
    drop: Measure | None = Field(None, description="How far the quilt hangs down on both sides and the foot.")
    tuck: Measure | None = Field(None, description="Added at the head, to be tucked behind the pillows.")
    within: Measure | None = Field(
        None, description="How far the quilt may be from the wanted size, either way."
    )


class DesignFile(BaseModel):
    """A quilt design."""

    model_config = table(
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
    outlines: dict[str, OutlineTable] | None = Field(None, description="Outlines of your own, by name.")
    recipes: dict[str, RecipeTable] | None = Field(None, description="The recipes, by name.")
    colourways: dict[str, ColourwayTable] | None = Field(None, description="The colourways, by code.")
    sections: dict[str, SectionTable] | None = Field(None, description="Parts of the quilt, by name.")
    setting: SettingTable | None = Field(None, description="How the quilt is laid.")
    borders: list[BorderTable] | None = Field(None, description="The borders, from the inside outwards.")
    binding: BindingTable | None = Field(None, description="The binding.")
    backing: BackingTable | None = Field(None, description="The backing.")
    batting: BattingTable | None = Field(None, description="The batting.")
    making: MakingTable | None = Field(None, description="Allowances and habits.")
    house: HouseTable | None = Field(None, description="House style.")
    money: MoneyTable | None = Field(None, description="What a quilt costs and must bring in.")
    notions: list[NotionTable] | None = Field(None, description="What a sewer needs besides cloth.")
    kits: KitsTable | None = Field(None, description="Kits to pack.")
    lesson: ClassTable | None = Field(None, alias="class", description="A class.")
    size: str | None = Field(None, description="What the size of this file is called, if it has others.")
    sizes: dict[str, SizeTable] | None = Field(None, description="The design in other sizes, by name.")
