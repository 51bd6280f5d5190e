"""Remake the pictures of the documents from the examples: `.venv/bin/python scripts/pictures.py`."""

from __future__ import annotations

from pathlib import Path

import pypdfium2

from quarterturn.pipeline import run
from quarterturn.proof import Pattern
from quarterturn.publish import sheet_png, typeset
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.printing import source_files
from quarterturn.publish.picture import PLAIN, top_sheet

ROOT = Path(__file__).parent.parent
EXAMPLES = ROOT / "examples"
PICTURES = ROOT / "docs" / "pictures"

SHOWN: dict[str, tuple[str, dict[str, str]]] = {
    "lanterns-on-the-quay": ("quilt.png", {"cutting.png": "Cutting", "fusing.png": "Fusing and stitching"}),
    "kites-over-the-moor": ("on-point.png", {"rows.png": "Assembly"}),
    "the-walled-garden": ("medallion.png", {}),
}
"""For each example the picture of its quilt, and pictures of pages with the heading at the top of each."""

QUILT_PIXELS = 480
PAGE_PIXELS_PER_INCH = 72


def main() -> None:
    """Write the picture of each quilt, and some pages of its booklet."""
    PICTURES.mkdir(parents=True, exist_ok=True)
    for name, (quilt, pages) in SHOWN.items():
        file = EXAMPLES / f"{name}.toml"
        pattern = run(file.read_bytes(), file.name).pattern
        assert pattern is not None
        sheet = top_sheet(pattern.design, pattern.blocks, pattern.setting, 200, PLAIN)
        (PICTURES / quilt).write_bytes(sheet_png(sheet, QUILT_PIXELS))
        if pages:
            draw_pages(pattern, pages)


def draw_pages(pattern: Pattern, pages: dict[str, str]) -> None:
    """Write the pages of a booklet that begin with certain headings."""
    files = source_files(assemble(pattern, pattern.design.house.paper))
    [pdf] = typeset(files)
    drawn = typeset(files, form="png", pixels_per_inch=PAGE_PIXELS_PER_INCH)
    for name, heading in pages.items():
        (PICTURES / name).write_bytes(drawn[page_with(pdf, heading)])


def page_with(pdf: bytes, heading: str) -> int:
    """Return the index of the first page that begins with a heading."""
    texts = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(pdf)]
    return next(index for index, text in enumerate(texts) if text.lstrip().startswith(heading))


if __name__ == "__main__":
    main()
