"""Laying a section beside the whole quilt, which becomes a section itself if it is no line yet."""

from __future__ import annotations

from string import ascii_lowercase
from typing import ClassVar, Literal

from quarterturn.design import ROOT, Design, LineSet, Section, SectionCell, map_word
from quarterturn.design.section_tables import section_tables, setting_table
from quarterturn.studio.acts.lines import parts_of_line, written_line
from quarterturn.studio.acts.maps import setting_of
from quarterturn.studio.acts.model import Act, Change, Name, written
from quarterturn.studio.acts.tables import has_table, renamed_table, with_sizes_renamed, with_tables

Side = Literal["above", "right", "below", "left"]

BODY = "body"
"""What the whole is called when it becomes a section."""


class LayBeside(Act):
    """Lay a section above, below, left or right of the whole quilt, inside its borders."""

    key: ClassVar[str] = ""
    name: Literal["lay-beside"] = "lay-beside"
    section: Name
    side: Side

    def change(self, text: str, design: Design) -> Change:
        """Write a line of both, or one more part where the whole is such a line."""
        setting_of(design, self.section)
        laid = text_beside(text, design, self.section, self.side)
        return Change(laid, {"section": self.section, "side": self.side})


def text_beside(text: str, design: Design, section: str, side: Side) -> str:
    """Return the text of a design with a section, which it need not have yet, beside the whole."""
    below, first = side in ("above", "below"), side in ("above", "left")
    word = map_word(SectionCell(section, 0))
    whole = design.setting
    if isinstance(whole, LineSet) and whole.below == below:
        parts = parts_of_line(design, ROOT)
        parts.insert(0 if first else len(parts), word)
        return written_line(text, ROOT, parts)
    body = _free_name(design, section)
    cells = (SectionCell(section, 0), SectionCell(body, 0))
    line = LineSet(cells if first else cells[::-1], below=below)
    inner = with_sizes_renamed(
        _as_section(text, design, body), lambda parts, value: (_moved(parts, body), value)
    )
    return with_tables(inner, "setting", setting_table(line, "setting", design.units))


def _as_section(text: str, design: Design, body: str) -> str:
    """Return the text with the whole as a section, and without a whole."""
    if has_table(text, ("setting",)):
        return renamed_table(text, ("setting",), "sections", body)
    made = "\n\n".join(section_tables(Section(body, design.setting), design.units))
    return with_tables(written(text, {"setting": None}), "sections", made)


def _moved(parts: tuple[str, ...], body: str) -> tuple[str, ...]:
    return ("sections", body, *parts[1:]) if parts[:1] == ("setting",) else parts


def _free_name(design: Design, but: str) -> str:
    taken = {but, *(section.name for section in design.sections)}
    names = [BODY, *(BODY + letter for letter in ascii_lowercase)]
    return next(name for name in names if name not in taken)
