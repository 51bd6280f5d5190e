"""Sheet -> PNG of so many pixels' width, through the same typesetter as the PDF."""

from __future__ import annotations

import math
from dataclasses import replace

from quarterturn.publish.pdf import sheet_files
from quarterturn.publish.sheet import MM_PER_INCH, Sheet
from quarterturn.publish.typesetting import typeset

_SHY = 1e-3
"""The picture is this part of a pixel short of whole pixels: the typesetter rounds the page to the nearest pixel
but the drawing on it up, and where the two differ it leaves out a row or a column, thin lines and all."""


def sheet_png(sheet: Sheet, pixels_wide: int) -> bytes:
    """Return a picture of a sheet; its height follows from the sheet's shape, rounded up to a pixel."""
    assert pixels_wide > 0, "a picture has pixels"
    per_mm = (pixels_wide - _SHY) / sheet.width
    rows = math.ceil(sheet.height * per_mm)
    whole = replace(sheet, height=(rows - _SHY) / per_mm)
    files = sheet_files((whole,), sheet.title)
    [picture] = typeset(files, form="png", pixels_per_inch=per_mm * MM_PER_INCH)
    return picture
