"""Sheet -> PNG of so many pixels' width, through the same typesetter as the PDF."""

from __future__ import annotations

from quarterturn.publish.pdf import sheet_files
from quarterturn.publish.sheet import MM_PER_INCH, Sheet
from quarterturn.publish.typesetting import typeset


def sheet_png(sheet: Sheet, pixels_wide: int) -> bytes:
    """Return a picture of a sheet; its height follows from the sheet's shape."""
    assert pixels_wide > 0, "a picture has pixels"
    files = sheet_files((sheet,), sheet.title)
    [picture] = typeset(files, form="png", pixels_per_inch=pixels_wide / sheet.width * MM_PER_INCH)
    return picture
