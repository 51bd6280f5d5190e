"""8. All -> files.

In:  the results of all stages.
Out: sheets (marks in millimetres) and the files that pens make of them: SVG, PDF, PNG, DXF, tables.
Promise: a sheet holds all decisions and a pen holds none; equal input gives equal bytes.
"""

from quarterturn.publish.dxf import sheet_dxf
from quarterturn.publish.lettering import text_width
from quarterturn.publish.pdf import sheets_pdf, without_print_scaling
from quarterturn.publish.pens import Pen, Recorder, draw, laid_out, lay
from quarterturn.publish.picture import COLOURED, LINES, PLAIN, Look, describe_top, faces_sheet, top_sheet
from quarterturn.publish.png import sheet_png
from quarterturn.publish.shape_marks import cutter_sheet, template_of
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Scale, Sheet, Stroke, Text, Use
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.tables import cut_list_csv, job_json, json_value
from quarterturn.publish.templates import template_sheets
from quarterturn.publish.typesetting import UnprintableTextError, typeset

__all__ = [
    "COLOURED",
    "LINES",
    "MM_PER_INCH",
    "PLAIN",
    "Area",
    "Ink",
    "Look",
    "Mark",
    "Pen",
    "Recorder",
    "Scale",
    "Sheet",
    "Stroke",
    "Text",
    "UnprintableTextError",
    "Use",
    "cut_list_csv",
    "cutter_sheet",
    "describe_top",
    "draw",
    "faces_sheet",
    "job_json",
    "json_value",
    "laid_out",
    "lay",
    "sheet_dxf",
    "sheet_png",
    "sheet_svg",
    "sheets_pdf",
    "template_of",
    "template_sheets",
    "text_width",
    "top_sheet",
    "typeset",
    "without_print_scaling",
]
