"""Sheets -> one PDF, a page for each at its exact size, with print scaling off."""

from __future__ import annotations

import json
from collections.abc import Sequence
from io import BytesIO

from quarterturn.publish.sheet import Sheet
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.typesetting import typeset

_MAIN = b"""\
#let data = json("sheets.json")
#set document(title: data.title, date: none)
#set text(lang: data.language)
#set page(margin: 0pt)
#for sheet in data.sheets {
  let size = (width: sheet.width * 1mm, height: sheet.height * 1mm)
  page(..size, image(sheet.file, alt: sheet.alt, ..size))
}
"""


def sheets_pdf(sheets: Sequence[Sheet], title: str, language: str = "en") -> bytes:
    """Return the sheets as a PDF/UA-1 file; equal sheets give equal bytes.

    Raises UnprintableTextError for text that the fonts lack.
    """
    [pdf] = typeset(sheet_files(sheets, title, language))
    return without_print_scaling(pdf)


def sheet_files(sheets: Sequence[Sheet], title: str, language: str = "en") -> dict[str, bytes]:
    """Return the files from which sheets are typeset."""
    files = {"main": _MAIN}
    told = []
    for number, sheet in enumerate(sheets):
        file = f"{number}.svg"
        files[file] = sheet_svg(sheet).encode()
        told.append({"file": file, "alt": sheet.alt or None, "width": sheet.width, "height": sheet.height})
    data = {"title": title, "language": language, "sheets": told}
    return {**files, "sheets.json": json.dumps(data).encode()}


def without_print_scaling(pdf: bytes) -> bytes:
    """Ask viewers to print a PDF at its true size (ISO 32000-1, 12.2: PrintScaling None)."""
    import pikepdf

    out = BytesIO()
    with pikepdf.open(BytesIO(pdf)) as document:
        root = document.Root
        if pikepdf.Name.ViewerPreferences not in root:
            root.ViewerPreferences = pikepdf.Dictionary()
        root.ViewerPreferences.PrintScaling = pikepdf.Name("/None")
        document.save(out, deterministic_id=True)
    return out.getvalue()
