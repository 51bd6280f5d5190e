"""Read the photos of fabrics: pictures that lie beside the design, which only a screen shows."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.model import WHOLE_PHOTO, Photo
from quarterturn.design.notes import Notes, quoted
from quarterturn.design.words import LONGEST_NAME

if TYPE_CHECKING:
    from quarterturn.design.file import FabricTable

ENDINGS = (".jpg", ".jpeg", ".png", ".webp")
_REMEDY = 'Name a file beside the design: photo = "oyster.jpg".'


def read_photo(table: FabricTable, key: str, notes: Notes) -> Photo | None:
    """Return the photo of a fabric, if it has one."""
    if table.photo is None:
        for name in ("photo_width", "photo_crop"):
            if getattr(table, name) is not None:
                notes.add(
                    "photo-unclear", f"{key}.{name}", f"`{name}` is given, and there is no photo.", _REMEDY
                )
        return None
    if not is_photo_name(table.photo):
        sentence = f"{quoted(table.photo)} is not the name of a photo beside the design."
        notes.add("photo-unclear", f"{key}.photo", sentence, f"{_REMEDY[:-1]}, ending in {_listed()}.")
    width = notes.length(table.photo_width, f"{key}.photo_width", limits.PHOTO_WIDTH)
    return Photo(table.photo, width, _crop(table.photo_crop, f"{key}.photo_crop", notes))


def is_photo_name(name: str) -> bool:
    """Tell whether a name is that of a picture in the same folder, with nothing that leads out of it."""
    plain = name.isprintable() and name == name.strip() and not set(name) & set('/\\:*?"<>|')
    return plain and len(name) <= LONGEST_NAME and not name.startswith(".") and name.lower().endswith(ENDINGS)


def _listed() -> str:
    return f"{', '.join(ENDINGS[:-1])} or {ENDINGS[-1]}"


def _crop(
    shares: Sequence[int | float] | None, key: str, notes: Notes
) -> tuple[Fraction, Fraction, Fraction, Fraction]:
    if shares is None:
        return WHOLE_PHOTO
    exact = [Fraction(repr(share)) for share in shares]
    if len(exact) == 4:
        left, top, width, height = exact
        within = (
            left >= 0 and top >= 0 and width > 0 and height > 0 and left + width <= 1 and top + height <= 1
        )
        if within:
            return left, top, width, height
    sentence = "What is shown of the photo does not lie within it."
    notes.add("photo-unclear", key, sentence, "Give left, top, width and height from 0 to 1: [0, 0, 1, 0.5].")
    return WHOLE_PHOTO
