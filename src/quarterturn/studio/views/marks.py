"""What of the quilt a piece of the bill becomes: the cloth to be marked where a piece is pointed at."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

from quarterturn.geometry import region_bounds
from quarterturn.pieces import Piece, Purpose
from quarterturn.setting import ClothUse, PlacedCloth
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View

CLOTHS: Mapping[Purpose, str] = {
    Purpose.BORDER: ClothUse.BORDER.value,
    Purpose.COPING: ClothUse.COPING.value,
    Purpose.PANEL: ClothUse.PANEL.value,
    Purpose.STRIP: ClothUse.STRIP.value,
    Purpose.SASH: ClothUse.SASH.value,
    Purpose.SQUARE: ClothUse.SQUARE.value,
    Purpose.CORNERSTONE: ClothUse.CORNERSTONE.value,
    Purpose.SIDE_TRIANGLES: "side triangle",
    Purpose.CORNER_TRIANGLES: "corner triangle",
}
"""What the top calls the cloth that a piece becomes, where it is no part of a unit."""

NEAR = 1e-3
"""Inches by which a side that is seen may differ from the piece less its seams."""


class MarksView(View):
    """Where a piece is seen: its fabric in the units of some colourways, other cloth, the binding, or the back.

    `cloths` are places in `QuiltView.cloths`.
    """

    colourways: tuple[str, ...]
    cloths: tuple[int, ...]
    binding: bool
    backing: bool


def marks_of(size: OneSize) -> Mapping[str, MarksView]:
    """Return where each piece of the bill is seen, by its label."""
    colourways = _colourways(size)
    motifs = {each.shape for each in size.bill.motifs}
    return {
        piece.label: MarksView(
            colourways=tuple(colourways[piece.label]),
            cloths=_motifs(size, piece) if piece.label in motifs else _cloths(size, piece),
            binding=piece.purpose in (Purpose.BINDING, Purpose.BIAS),
            backing=piece.purpose is Purpose.BACKING,
        )
        for piece in size.bill.pieces
    }


def _colourways(size: OneSize) -> Mapping[str, list[str]]:
    """Return the colourways in which each piece is seen: its master's own, and those that are rejoined from it."""
    found: dict[str, list[str]] = defaultdict(list)
    for masters in size.bill.masters:
        rejoined = (each.code for each in size.bill.rejoined if masters.code in each.masters)
        codes = (masters.code, *rejoined)
        for label in dict.fromkeys((masters.ground, *(blank.label for blank in masters.blanks))):
            found[label] += [code for code in codes if code not in found[label]]
    return found


def _motifs(size: OneSize, piece: Piece) -> tuple[int, ...]:
    cloths = enumerate(size.setting.cloths)
    return tuple(k for k, cloth in cloths if (cloth.what, cloth.fabric) == ("motif", piece.fabric))


def _cloths(size: OneSize, piece: Piece) -> tuple[int, ...]:
    """Return the cloth of a piece: of its kind and fabric, and where any is as large, of its size."""
    what = CLOTHS.get(piece.purpose)
    cloths = enumerate(size.setting.cloths)
    same = [(k, cloth) for k, cloth in cloths if (cloth.what, cloth.fabric) == (what, piece.fabric)]
    mine = [(k, cloth) for k, cloth in same if _is_of_border(cloth, piece)] or same
    seams = 2 * float(size.laid_design.making.seam)
    sides = sorted((float(piece.length) - seams, float(piece.width) - seams))
    exact = [k for k, cloth in mine if _is_as_large(cloth, sides)]
    return tuple(exact or (k for k, _ in mine))


def _is_of_border(cloth: PlacedCloth, piece: Piece) -> bool:
    """Tell whether a strip lies in the border for which a piece is named: `border 2, side strip`."""
    user = piece.name.partition(",")[0].removeprefix("coping").removeprefix("border").strip()
    where = cloth.section.removeprefix("border").removesuffix(" of top").strip()
    return where in (user, f"1 {user}".strip())


def _is_as_large(cloth: PlacedCloth, sides: list[float]) -> bool:
    box = region_bounds(cloth.region)
    seen = sorted((box.width, box.height))
    return all(abs(one - other) < NEAR for one, other in zip(seen, sides, strict=True))
