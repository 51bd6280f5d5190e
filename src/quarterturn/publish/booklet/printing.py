"""Typeset a booklet: its blocks as data, its drawings as pictures, the page design from the template."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from importlib.resources import files
from typing import Any

from quarterturn.publish.booklet.model import Document
from quarterturn.publish.pdf import without_print_scaling
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.svg import sheet_svg
from quarterturn.publish.typesetting import typeset

TEMPLATES = ("booklet.typ", "blocks.typ", "style.typ")
_KEPT_TOGETHER = (
    (re.compile(" × "), "\u00a0×\u00a0"),
    (re.compile(r"\((\d+)\) "), "(\\1)\u00a0"),
    (re.compile(r"(\d[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]) (mm|cm|m|yards?)\b"), "\\1\u00a0\\2"),
    (re.compile(r"\b(Fabric|Figure|figure|unit|pair|row|Row|Pair|Unit|border) (\w{1,3})\b"), "\\1\u00a0\\2"),
)
"""What must not be torn apart at the end of a line: a size, a count and what it counts, a name."""


def print_booklet(document: Document) -> bytes:
    """Return the booklet as PDF/UA-1, with print scaling off; equal documents give equal bytes.

    Raises UnprintableTextError for text that the fonts lack.
    """
    [pdf] = typeset(source_files(document))
    return without_print_scaling(pdf)


def source_files(document: Document) -> dict[str, bytes]:
    """Return the files from which the booklet is typeset."""
    folder = files(__package__) / "templates"
    sources = {name: (folder / name).read_bytes() for name in TEMPLATES}
    drawings: dict[str, bytes] = {}
    data = json.dumps(as_data(document, drawings), ensure_ascii=False).encode()
    return {"main": sources.pop("booklet.typ"), **sources, **drawings, "booklet.json": data}


def as_data(value: Any, drawings: dict[str, bytes]) -> Any:
    """Return plain data for the template: records as mappings with their kind, drawings as the names of files."""
    if isinstance(value, Sheet):
        return _drawing(value, drawings)
    if is_dataclass(value):
        kept = {f.name: as_data(getattr(value, f.name), drawings) for f in fields(value)}
        return {"kind": type(value).__name__.lower(), **kept}
    if isinstance(value, tuple):
        return [as_data(item, drawings) for item in value]
    return kept_together(value) if isinstance(value, str) else value


def _drawing(sheet: Sheet, drawings: dict[str, bytes]) -> Mapping[str, Any]:
    name = f"{len(drawings)}.svg"
    drawings[name] = sheet_svg(sheet).encode()
    return {
        "file": name,
        "width": sheet.width,
        "height": sheet.height,
        "alt": sheet.alt,
        "title": sheet.title,
    }


def kept_together(text: str) -> str:
    """Return a text in which sizes, counts and names do not break at the end of a line."""
    for pattern, kept in _KEPT_TOGETHER:
        text = pattern.sub(kept, text)
    return text
