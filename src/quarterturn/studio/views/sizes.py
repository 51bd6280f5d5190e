"""The repeats that each known bed takes, with the changes that make a size of them."""

from __future__ import annotations

from pydantic import JsonValue

from quarterturn.design import DROP, Design
from quarterturn.measure import Length, Units, show_length
from quarterturn.proof import changes_of, suggestions
from quarterturn.setting import Stretched, stretched_to
from quarterturn.studio.acts.maps import map_text
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View


class SuggestionView(View):
    """A bed: what it wants, what comes nearest from above, and the changes of the act `add-size`; or why none does."""

    bed: str
    wanted: tuple[str, str]
    finished: tuple[str, str] | None
    over: tuple[str, str] | None
    """By how much it is wider and longer than the bed wants, where that is more than its drop: it goes no smaller."""
    changes: dict[str, JsonValue]
    but: str


class SizesView(View):
    """All known beds, by a drop and a tuck."""

    revision: int
    drop: str
    suggestions: tuple[SuggestionView, ...]


def sizes_view(revision: int, size: OneSize, drop: Length | None = None) -> SizesView:
    """Return what each known bed takes. Raises UnmadeError where the quilt does not fit together."""
    design, units = size.laid_design, size.design.units
    hang = DROP[units] if drop is None else drop
    found = []
    for each in suggestions(design, size.blocks, hang, Length(0)):
        wide, high = each.bed.wanted
        stretched = stretched_to(design, size.blocks, each.bed.wanted)
        fit = stretched.fit if stretched else each.fit
        changes = _changes(design, stretched) if stretched else changes_of(design, fit) if fit else {}
        found.append(
            SuggestionView(
                bed=each.bed.name,
                wanted=(show_length(wide, units), show_length(high, units)),
                finished=(show_length(fit.width, units), show_length(fit.height, units)) if fit else None,
                over=_over((fit.width - wide, fit.height - high), hang, units) if fit else None,
                changes={
                    key: value if isinstance(value, int) else str(value) for key, value in changes.items()
                },
                but="" if fit else each.but,
            )
        )
    return SizesView(revision=revision, drop=show_length(hang, units), suggestions=tuple(found))


def _over(over: tuple[Length, Length], hang: Length, units: Units) -> tuple[str, str] | None:
    return (show_length(over[0], units), show_length(over[1], units)) if max(over) > hang else None


def _changes(design: Design, stretched: Stretched) -> dict[str, object]:
    """Return what a stretched map changes: the map itself, and the border where it becomes another."""
    border = changes_of(design, stretched.fit)
    kept = {key: value for key, value in border.items() if key.startswith("borders")}
    return {"setting.map": map_text(stretched.cells), **kept}
