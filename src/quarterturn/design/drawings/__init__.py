"""Outlines out of a drawing: the text of an SVG file in, closed outlines at true size out.

In:  an SVG document, as bytes or text. It is read for its outlines alone: nothing that it names is opened or
     fetched, no script or style sheet is run, and entities are refused.
Out: a `Drawing`: outlines in inches with the names, elements and lines that they have in the file, and what was
     passed over or refused, with the reason.
Promise: whatever the bytes, the answer is a `Drawing` or a `DrawingError`, in time bounded by `design.limits`.
"""

from quarterturn.design.drawings.elements import DrawingError, Refused
from quarterturn.design.drawings.reading import Drawing, Found, read_drawing
from quarterturn.design.drawings.tables import suggested_names, table_of, width_text, with_outlines

__all__ = [
    "Drawing",
    "DrawingError",
    "Found",
    "Refused",
    "read_drawing",
    "suggested_names",
    "table_of",
    "width_text",
    "with_outlines",
]
