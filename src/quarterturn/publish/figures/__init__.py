"""The booklet's figures: functions that each return one `Sheet`, drawn from the steps and the stages' results.

In:  a `Pattern`, the step or plan to be shown, and the width to be filled, in millimetres.
Out: a `Sheet` with alternative text.
Promise: cloth is shown in its own colours and by its letter, so that fabrics can be told apart without colour.
"""

from quarterturn.publish.figures.apart import cuts_figure, sewn_figure
from quarterturn.publish.figures.bias import bias_figure
from quarterturn.publish.figures.borders import border_figure, mitre_figure
from quarterturn.publish.figures.bulk import bulk_figures
from quarterturn.publish.figures.centre import centre_figure
from quarterturn.publish.figures.cloth import cloth_figure
from quarterturn.publish.figures.curves import curve_figure
from quarterturn.publish.figures.finishing import backing_figure, binding_figure
from quarterturn.publish.figures.frames import least_share
from quarterturn.publish.figures.grids import grid_figure
from quarterturn.publish.figures.halves import rejoin_figure
from quarterturn.publish.figures.layout import layout_figure, section_figure
from quarterturn.publish.figures.lines import pair_figure, row_figure
from quarterturn.publish.figures.maps import MapPart, map_figure, map_parts, name_letters, overview_figure
from quarterturn.publish.figures.masters import apart_figure, fusing_figure, stitching_figure
from quarterturn.publish.figures.nested import nested_figures
from quarterturn.publish.figures.panels import motif_line, panel_figure
from quarterturn.publish.figures.parcels import parcel_figure
from quarterturn.publish.figures.plans import layer_figure, marking_figure
from quarterturn.publish.figures.shapes import blank_figure, ring_figure, template_shape
from quarterturn.publish.figures.slanting import slanting_figure
from quarterturn.publish.figures.staggered import staggered_figure
from quarterturn.publish.figures.triangles import triangles_figure
from quarterturn.publish.figures.trims import finishing_figure, trimmed_whole_figure
from quarterturn.publish.figures.units import colourway_figure, trim_figure, turns_figure

__all__ = [
    "MapPart",
    "apart_figure",
    "backing_figure",
    "bias_figure",
    "binding_figure",
    "blank_figure",
    "border_figure",
    "bulk_figures",
    "centre_figure",
    "cloth_figure",
    "colourway_figure",
    "curve_figure",
    "cuts_figure",
    "finishing_figure",
    "fusing_figure",
    "grid_figure",
    "layer_figure",
    "layout_figure",
    "least_share",
    "map_figure",
    "map_parts",
    "marking_figure",
    "mitre_figure",
    "motif_line",
    "name_letters",
    "nested_figures",
    "overview_figure",
    "pair_figure",
    "panel_figure",
    "parcel_figure",
    "rejoin_figure",
    "ring_figure",
    "row_figure",
    "section_figure",
    "sewn_figure",
    "slanting_figure",
    "staggered_figure",
    "stitching_figure",
    "template_shape",
    "triangles_figure",
    "trim_figure",
    "trimmed_whole_figure",
    "turns_figure",
]
