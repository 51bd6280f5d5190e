"""The act that takes a setting of the finder into the quilt."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import ROOT, Design, StraightSet, section_key
from quarterturn.studio.acts.maps import setting_of
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, written

Line = Annotated[str, Field(min_length=1, max_length=4000)]
Times = Annotated[int, Field(ge=1, le=200)]


class TakeSetting(Act):
    """Lay a section by another map: its lines, how its copies lie, and how often it is laid."""

    key: ClassVar[str] = "Enter"
    name: Literal["take-setting"] = "take-setting"
    section: Name = ROOT
    lines: Annotated[tuple[Line, ...], Field(min_length=1, max_length=200)]
    symmetry: Literal["slide", "mirror", "turn", "half turn"] = "slide"
    across: Times = 1
    down: Times = 1

    def change(self, text: str, design: Design) -> Change:
        """Write map, symmetry and repeats in the place of those that were."""
        setting = setting_of(design, self.section)
        if not isinstance(setting, StraightSet):
            sentence = "This section is not set in rows and columns, so that no setting can take their place."
            raise RefusedError(sentence, "Choose one that is straight.")
        values = {
            "map": "\n".join(self.lines) + "\n",
            "symmetry": None if self.symmetry == "slide" else self.symmetry,
            "across": self.across if self.across > 1 or setting.across > 1 else None,
            "down": self.down if self.down > 1 or setting.down > 1 else None,
        }
        changes = {section_key(self.section, name): value for name, value in values.items()}
        return Change(written(text, changes), {"section": self.section})
