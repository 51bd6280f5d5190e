"""8. All -> files.

In:  the results of all stages.
Out: sheets (marks in millimetres) and the files that pens make of them: SVG, PDF, PNG, DXF, tables.
Promise: a sheet holds all decisions and a pen holds none; equal input gives equal bytes.
"""

from quarterturn.publish.pdf import sheets_pdf, without_print_scaling
from quarterturn.publish.pens import Pen, Recorder, draw, laid_out, lay
from quarterturn.publish.png import sheet_png
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Scale, Sheet, Stroke, Text, Use
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.typesetting import UnprintableTextError, typeset

__all__ = [
    "MM_PER_INCH",
    "Area",
    "Ink",
    "Mark",
    "Pen",
    "Recorder",
    "Scale",
    "Sheet",
    "Stroke",
    "Text",
    "UnprintableTextError",
    "Use",
    "draw",
    "laid_out",
    "lay",
    "sheet_png",
    "sheet_svg",
    "sheets_pdf",
    "typeset",
    "without_print_scaling",
]
