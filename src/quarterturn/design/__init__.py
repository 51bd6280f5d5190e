"""1. text -> Design.

In:  the text of a design file (TOML).
Out: a `Design`, every default filled in, and the findings made on the way, each with its line.
Promise: bad text gives findings and never an exception; writing back keeps the designer's comments.
"""

from quarterturn.design.codes import CODES
from quarterturn.design.defaults import default_making, default_trim
from quarterturn.design.findings import Finding, Place, Severity
from quarterturn.design.formatting import format_design
from quarterturn.design.habits import default_house
from quarterturn.design.keys import dotted, parts_of
from quarterturn.design.locating import line_of, locate
from quarterturn.design.maps import QUARTERS
from quarterturn.design.model import (
    ClothKind,
    Colourway,
    Curve,
    Design,
    Direction,
    DrawnDiameter,
    DrawnOutline,
    EdgeStitch,
    EdgeStitchKind,
    Fabric,
    FinishedRadius,
    House,
    Making,
    Paper,
    PathsFlow,
    Pressing,
    Recipe,
    ShapeSize,
    code_of_unit,
    quarter_of_unit,
)
from quarterturn.design.nesting import ROOT, TOP, NamedCell, border_key, codes_in, named_cells, section_key
from quarterturn.design.outlined import wanted_outline
from quarterturn.design.reading import Reading, read_design
from quarterturn.design.repeats import laid, mirrored, turned, upended
from quarterturn.design.schema import schema
from quarterturn.design.section_tables import map_word
from quarterturn.design.sections import (
    AnyBorder,
    Border,
    Cell,
    ClothCell,
    Coping,
    Corner,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PanelMotif,
    PanelSet,
    PiecedBorder,
    Sashing,
    Section,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    Symmetry,
    TriangleFit,
    unit_name,
)
from quarterturn.design.starting import PLACEHOLDERS, starter
from quarterturn.design.writing import WriteError, write_design

__all__ = [
    "CODES",
    "PLACEHOLDERS",
    "QUARTERS",
    "ROOT",
    "TOP",
    "AnyBorder",
    "Border",
    "Cell",
    "ClothCell",
    "ClothKind",
    "Colourway",
    "Coping",
    "Corner",
    "Curve",
    "Design",
    "Direction",
    "DrawnDiameter",
    "DrawnOutline",
    "EdgeStitch",
    "EdgeStitchKind",
    "Fabric",
    "Finding",
    "FinishedRadius",
    "House",
    "LineSet",
    "Making",
    "Map",
    "MapCell",
    "NamedCell",
    "OnPointSet",
    "PanelMotif",
    "PanelSet",
    "Paper",
    "PathsFlow",
    "PiecedBorder",
    "Place",
    "Pressing",
    "Reading",
    "Recipe",
    "Sashing",
    "Section",
    "SectionCell",
    "SectionSet",
    "Severity",
    "ShapeSize",
    "StraightSet",
    "Strip",
    "Symmetry",
    "TriangleFit",
    "WriteError",
    "border_key",
    "code_of_unit",
    "codes_in",
    "default_house",
    "default_making",
    "default_trim",
    "dotted",
    "format_design",
    "laid",
    "line_of",
    "locate",
    "map_word",
    "mirrored",
    "named_cells",
    "parts_of",
    "quarter_of_unit",
    "read_design",
    "schema",
    "section_key",
    "starter",
    "turned",
    "unit_name",
    "upended",
    "wanted_outline",
    "write_design",
]
