"""The booklet's figures: functions that each return one `Sheet`, drawn from the steps and the stages' results.

In:  a `Pattern`, the step or plan to be shown, and the width to be filled, in millimetres.
Out: a `Sheet` with alternative text.
Promise: cloth is shown in its own colours and by its letter, so that fabrics can be told apart without colour.
"""

from quarterturn.publish.figures.borders import border_figure, mitre_figure
from quarterturn.publish.figures.centre import centre_figure
from quarterturn.publish.figures.cloth import cloth_figure
from quarterturn.publish.figures.finishing import backing_figure, binding_figure
from quarterturn.publish.figures.frames import least_share
from quarterturn.publish.figures.grids import grid_figure
from quarterturn.publish.figures.layout import layout_figure, section_figure
from quarterturn.publish.figures.lines import pair_figure, row_figure
from quarterturn.publish.figures.maps import MapPart, map_figure, map_parts, name_letters, overview_figure
from quarterturn.publish.figures.masters import apart_figure, fusing_figure, stitching_figure
from quarterturn.publish.figures.panels import motif_line, panel_figure
from quarterturn.publish.figures.shapes import blank_figure, ring_figure
from quarterturn.publish.figures.slanting import slanting_figure
from quarterturn.publish.figures.triangles import triangles_figure
from quarterturn.publish.figures.units import colourway_figure, trim_figure, turns_figure

__all__ = [
    "MapPart",
    "apart_figure",
    "backing_figure",
    "binding_figure",
    "blank_figure",
    "border_figure",
    "centre_figure",
    "cloth_figure",
    "colourway_figure",
    "fusing_figure",
    "grid_figure",
    "layout_figure",
    "least_share",
    "map_figure",
    "map_parts",
    "mitre_figure",
    "motif_line",
    "name_letters",
    "overview_figure",
    "pair_figure",
    "panel_figure",
    "ring_figure",
    "row_figure",
    "section_figure",
    "slanting_figure",
    "stitching_figure",
    "triangles_figure",
    "trim_figure",
    "turns_figure",
]
