"""The typesetter: typst source and the files it reads in, PDF or PNG out.

Always tagged and held to PDF/UA-1, which refuses a picture without a description and a letter without a
glyph; without system fonts, network or clock, so that equal files give equal bytes on every machine.
"""

from __future__ import annotations

import importlib.util
import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    import typst

FONT_PACKAGES = ("font_source_sans_pro", "font_source_serif_pro")
"""Packages whose folder `files` holds the fonts (SIL Open Font License)."""

_NO_GLYPH = re.compile(r"the text `\"(.*)\"` could not be displayed")


class UnprintableTextError(ValueError):
    """The design has a letter for which the booklet's fonts have no glyph."""

    def __init__(self, letters: str) -> None:
        super().__init__(f"The fonts of the printed pages have no glyph for {letters!r}.")
        self.letters = letters


@cache
def fonts() -> typst.Fonts:
    """Return the fonts of the printed pages: those of the locked packages, then those inside the typesetter."""
    import typst

    folders = [str(font_folder(package)) for package in FONT_PACKAGES]
    return typst.Fonts(include_system_fonts=False, font_paths=folders)


def font_folder(package: str) -> Path:
    """Return the folder of a font package that is installed with the program."""
    found = importlib.util.find_spec(package)
    origin = found and found.origin
    assert origin, f"the font package {package} is not installed"
    return Path(origin).parent / "files"


def typeset(
    files: Mapping[str, bytes],
    *,
    form: Literal["pdf", "png"] = "pdf",
    inputs: Mapping[str, str] | None = None,
    pixels_per_inch: float = 144.0,
) -> list[bytes]:
    """Typeset the file called `main`; return one PDF, or one PNG for each page.

    The other files are read by their names. Raises UnprintableTextError for text that the fonts lack; any
    other complaint is a fault of ours and ends in an assertion with the typesetter's message.
    """
    import typst

    source: Any = dict(files)  # a mapping of files is taken, though the stubs leave it out
    try:
        made: bytes | list[bytes] = typst.compile(
            source,
            font_paths=fonts(),
            ignore_system_fonts=True,
            format=form,
            ppi=pixels_per_inch if form == "png" else None,
            sys_inputs=dict(inputs or {}),
            pdf_standards=["ua-1"] if form == "pdf" else [],
            timestamp=0,
        )
    except typst.TypstError as error:
        missing = _NO_GLYPH.search(error.message)
        if missing:
            raise UnprintableTextError(missing[1]) from None
        raise AssertionError(error.diagnostic) from error
    return made if isinstance(made, list) else [made]
