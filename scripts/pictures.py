"""Remake the pictures of the documents from an example: `.venv/bin/python scripts/pictures.py`."""

from __future__ import annotations

from pathlib import Path

import pypdfium2

from quarterturn.pipeline import run
from quarterturn.publish import sheet_png, typeset
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.printing import source_files
from quarterturn.publish.picture import PLAIN, top_sheet

ROOT = Path(__file__).parent.parent
EXAMPLE = ROOT / "examples" / "lanterns-on-the-quay.toml"
PICTURES = ROOT / "docs" / "pictures"

PAGES = {"cutting.png": "Cutting", "fusing.png": "Fusing and stitching"}
"""Each picture of a page, with the heading at the top of the page."""

QUILT_PIXELS = 480
PAGE_PIXELS_PER_INCH = 72


def main() -> None:
    """Write the picture of the quilt, and some pages of its booklet."""
    pattern = run(EXAMPLE.read_bytes(), EXAMPLE.name).pattern
    assert pattern is not None
    PICTURES.mkdir(parents=True, exist_ok=True)
    sheet = top_sheet(pattern.design, pattern.blocks, pattern.setting, 200, PLAIN)
    (PICTURES / "quilt.png").write_bytes(sheet_png(sheet, QUILT_PIXELS))
    files = source_files(assemble(pattern, pattern.design.house.paper))
    [pdf] = typeset(files)
    pages = typeset(files, form="png", pixels_per_inch=PAGE_PIXELS_PER_INCH)
    for name, heading in PAGES.items():
        (PICTURES / name).write_bytes(pages[page_with(pdf, heading)])


def page_with(pdf: bytes, heading: str) -> int:
    """Return the index of the first page that begins with a heading."""
    texts = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(pdf)]
    return next(index for index, text in enumerate(texts) if text.lstrip().startswith(heading))


if __name__ == "__main__":
    main()
