"""The colours of a photo, what each is called, and one for each fabric."""

from __future__ import annotations

import math
from io import BytesIO
from typing import TYPE_CHECKING, Literal

from quarterturn.design import Design
from quarterturn.design.colour import lab, mean_colour, value_of
from quarterturn.studio.views.model import View

if TYPE_CHECKING:
    from PIL.Image import Image

COLOURS = 6
"""Into how many colours a photo is gathered."""
_SIDE = 160
"""A photo is made so small, in pixels, before its colours are gathered: a palette needs no more."""

Crop = tuple[float, float, float, float]
"""Left, top, width and height of what is cut out of a photo, as shares of it."""
WHOLE: Crop = (0.0, 0.0, 1.0, 1.0)

Hue = Literal[
    "white",
    "cream",
    "grey",
    "black",
    "red",
    "orange",
    "brown",
    "yellow",
    "green",
    "teal",
    "blue",
    "violet",
    "pink",
]
Depth = Literal["dark", "middle", "pale"]

_GREY = 9.0
"""Of less chroma than this no hue is seen."""
_HUES: tuple[tuple[float, Hue], ...] = (
    (10, "pink"), (47, "red"), (72, "orange"), (105, "yellow"), (165, "green"), (215, "teal"), (306.3, "blue"),
    (332, "violet"), (360, "pink"),
)  # fmt: skip
"""Up to which angle of CIELAB (degrees from red towards yellow) each hue reaches (from memory, of sRGB's primaries)."""
_DARK, _PALE, _STRONG = 38.0, 75.0, 55.0
"""A colour of more chroma than the last is called by its hue alone, however light."""
_CREAMS = (60.0, 115.0)
"""Between these angles what is nearly white is cream."""
_BLACK, _WHITE, _CREAM = 15.0, 88.0, 28.0


class PaletteColour(View):
    """A colour of a photo, what it is called, and its share of the photo."""

    colour: str
    share: float
    value: float
    hue: Hue
    depth: Depth


class PaletteView(View):
    """Colours of a photo, the most of it first, and what is suggested for the fabrics, dark for dark.

    `average` is the colour that the photo has from afar.
    """

    colours: tuple[PaletteColour, ...]
    suggested: dict[str, str]
    average: str


def palette_view(photo: bytes, design: Design, count: int = COLOURS, crop: Crop = WHOLE) -> PaletteView:
    """Return the colours of a photo, and one for each fabric: the lightest for the lightest, and so on."""
    small = _small(photo, crop)
    colours = _gathered(small, count)
    fabrics = sorted(design.fabrics, key=lambda fabric: value_of(fabric.colour))
    ordered = sorted(colours, key=lambda each: each.value)
    last = max(len(fabrics) - 1, 1)
    suggested = {
        fabric.letter: ordered[round(k * (len(ordered) - 1) / last)].colour
        for k, fabric in enumerate(fabrics)
    }
    return PaletteView(colours=colours, suggested=suggested, average=mean_colour(small.histogram()))


def palette_of(photo: bytes, count: int = COLOURS) -> tuple[PaletteColour, ...]:
    """Return the colours that make up a photo, the most of it first.

    They are gathered by median cut and then by k-means. Raises OSError where the bytes are no picture.
    """
    return _gathered(_small(photo, WHOLE), count)


def _small(photo: bytes, crop: Crop) -> Image:
    from PIL import Image

    left, top, width, height = crop
    with Image.open(BytesIO(photo)) as picture:
        across, down = picture.size
        x, end_x = _points(left, width, across)
        y, end_y = _points(top, height, down)
        small = picture.convert("RGB").crop((x, y, end_x, end_y))
    small.thumbnail((_SIDE, _SIDE))
    return small


def _points(start: float, share: float, of: int) -> tuple[int, int]:
    """Return where a part of so many points begins and ends: one of them at least."""
    first = min(round(start * of), of - 1)
    return first, max(first + 1, round((start + share) * of))


def _gathered(picture: Image, count: int) -> tuple[PaletteColour, ...]:
    from PIL import Image

    reduced = picture.quantize(colors=count, method=Image.Quantize.MEDIANCUT, kmeans=16)
    table, counts = reduced.getpalette() or [], reduced.getcolors() or []
    total = sum(number for number, _ in counts)
    found = []
    for number, index in sorted(counts, key=lambda each: (-each[0], str(each[1]))):
        assert isinstance(index, int), "a picture with a palette holds numbers"
        found.append(_colour(_hex(*table[3 * index : 3 * index + 3]), number / total))
    return tuple(found)


def _hex(red: int, green: int, blue: int) -> str:
    return f"#{red:02x}{green:02x}{blue:02x}"


def _colour(colour: str, share: float) -> PaletteColour:
    hue, depth = words_of(colour)
    value = round(value_of(colour), 1)
    return PaletteColour(colour=colour, share=round(share, 4), value=value, hue=hue, depth=depth)


def words_of(colour: str) -> tuple[Hue, Depth]:
    """Return by what hue and depth a colour is called; a dark orange or yellow is a brown."""
    seen = lab(colour)
    depth: Depth = "dark" if seen.light < _DARK else "pale" if seen.light > _PALE else "middle"
    angle = math.degrees(math.atan2(seen.b, seen.a)) % 360
    if seen.light > _WHITE and seen.chroma < _CREAM and _CREAMS[0] < angle < _CREAMS[1]:
        return ("white" if seen.chroma < _GREY / 2 else "cream"), "middle"
    if seen.chroma < _GREY:
        ends: dict[bool, Hue] = {seen.light > _WHITE: "white", seen.light < _BLACK: "black"}
        return (ends[True], "middle") if True in ends else ("grey", depth)
    if depth == "pale" and seen.chroma > _STRONG:
        depth = "middle"
    hue = next(name for end, name in _HUES if angle <= end)
    return ("brown" if hue in ("orange", "yellow") and seen.light < 58 else hue), depth
