"""Acts on the motifs of panels: place, move, order, remove."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from quarterturn.design import Design, PanelSet, section_key, write_length
from quarterturn.studio.acts.maps import setting_of
from quarterturn.studio.acts.model import Act, Change, Name, RefusedError, written

LengthText = Annotated[str, Field(min_length=1, max_length=40)]
Place = tuple[LengthText, LengthText]
Degrees = Annotated[int, Field(ge=0, le=359)]
Number = Annotated[int, Field(ge=0, le=200)]


class PlaceMotif(Act):
    """Place the shape of a recipe on a panel, on top of what is there."""

    key: ClassVar[str] = "m"
    name: Literal["place-motif"] = "place-motif"
    section: Name
    recipe: Name
    fabric: Name
    at: Place
    turn: Degrees = 0

    def change(self, text: str, design: Design) -> Change:
        """Write one motif more."""
        count = len(panel_of(design, self.section).motifs)
        added = {"recipe": self.recipe, "fabric": self.fabric, "at": list(self.at), "turn": self.turn}
        key = (
            section_key(self.section, "motifs") if count == 0 else section_key(self.section, "motifs", count)
        )
        changed = written(text, {key: added if count else [added]})
        return Change(changed, {"section": self.section, "motif": count + 1, "recipe": self.recipe})


class MoveMotif(Act):
    """Move a motif, or turn it, or give it another fabric."""

    key: ClassVar[str] = ""
    name: Literal["move-motif"] = "move-motif"
    section: Name
    motif: Number
    at: Place | None = None
    turn: Degrees | None = None
    fabric: Name | None = None

    def change(self, text: str, design: Design) -> Change:
        """Write what is given."""
        _check(design, self.section, self.motif)
        key = section_key(self.section, "motifs", self.motif)
        new = {"at": list(self.at) if self.at else None, "turn": self.turn, "fabric": self.fabric}
        changes: dict[str, object] = {
            f"{key}.{name}": value for name, value in new.items() if value is not None
        }
        return Change(written(text, changes), {"section": self.section, "motif": self.motif + 1})


class OrderMotif(Act):
    """Lay a motif above or below others: at another place in the order of fusing."""

    key: ClassVar[str] = ""
    name: Literal["order-motif"] = "order-motif"
    section: Name
    motif: Number
    to: Number

    def change(self, text: str, design: Design) -> Change:
        """Write the motifs in their new order."""
        _check(design, self.section, self.motif)
        motifs = [
            {
                "recipe": motif.recipe,
                "fabric": motif.fabric,
                "at": [write_length(motif.x, design.units), write_length(motif.y, design.units)],
                "turn": motif.degrees,
            }
            for motif in panel_of(design, self.section).motifs
        ]
        motifs.insert(self.to, motifs.pop(self.motif))
        changes = {
            section_key(self.section, "motifs", k, name): value
            for k, motif in enumerate(motifs)
            for name, value in motif.items()
        }
        return Change(written(text, changes), {"section": self.section, "motif": self.motif + 1})


class RemoveMotif(Act):
    """Take a motif off a panel."""

    key: ClassVar[str] = ""
    name: Literal["remove-motif"] = "remove-motif"
    section: Name
    motif: Number

    def change(self, text: str, design: Design) -> Change:
        """Take it out of the list."""
        _check(design, self.section, self.motif)
        key = section_key(self.section, "motifs", self.motif)
        if len(panel_of(design, self.section).motifs) == 1:
            key = section_key(self.section, "motifs")
        return Change(written(text, {key: None}), {"section": self.section, "motif": self.motif + 1})


def panel_of(design: Design, section: str) -> PanelSet:
    """Return a panel by its section. Raises RefusedError where the section is none."""
    setting = setting_of(design, section)
    if not isinstance(setting, PanelSet):
        raise RefusedError(f"The section `{section}` is no panel.", "Place motifs on a panel.")
    return setting


def _check(design: Design, section: str, motif: int) -> None:
    count = len(panel_of(design, section).motifs)
    if motif >= count:
        raise RefusedError(f"The panel has {count} motifs.", "Choose one of them.")
