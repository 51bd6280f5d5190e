"""Colour in numbers: how light a fabric is, how far apart two are, whether lettering can be read on one.

Colours come as #rrggbb in sRGB. L* (CIE 1976) is a quilter's value: 0 is black, 100 is white.
"""

from __future__ import annotations

import math
import operator
from collections.abc import Sequence
from dataclasses import dataclass

INK = "#1d1d1b"
"""The dark colour of lettering and lines."""
PAPER = "#ffffff"

_WHITE = (0.95047, 1.0, 1.08883)
"""XYZ of the D65 white, 2° observer."""
_TO_XYZ = (
    (0.4124564, 0.3575761, 0.1804375),
    (0.2126729, 0.7151522, 0.0721750),
    (0.0193339, 0.1191920, 0.9503041),
)
"""sRGB (IEC 61966-2-1) to XYZ; from memory, held by the check of pure red."""
_LEVELS = 256
_EPSILON = 216 / 24389
_KAPPA = 24389 / 27


@dataclass(frozen=True, slots=True)
class Lab:
    """A colour of CIELAB (1976) under D65: `light` from 0 to 100, `a` towards red, `b` towards yellow."""

    light: float
    a: float
    b: float

    @property
    def chroma(self) -> float:
        """Return how far the colour is from grey."""
        return math.hypot(self.a, self.b)


def lab(colour: str) -> Lab:
    """Return the CIELAB coordinates of a colour."""
    rgb = _linear(colour)
    xyz = (sum(m * c for m, c in zip(row, rgb, strict=True)) for row in _TO_XYZ)
    x, y, z = (_root(v / w) for v, w in zip(xyz, _WHITE, strict=True))
    return Lab(116 * y - 16, 500 * (x - y), 200 * (y - z))


def value_of(colour: str) -> float:
    """Return the value of a colour: L*, from 0 (black) to 100 (white)."""
    return lab(colour).light


def lightness(y: float, white: float = 1.0) -> float:
    """Return L* of a luminance y under a white of luminance `white`."""
    return 116 * _root(y / white) - 16


def luminance(colour: str) -> float:
    """Return the relative luminance, 0 to 1 (WCAG 2.2, definition of relative luminance)."""
    red, green, blue = _linear(colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(a: str, b: str) -> float:
    """Return the contrast ratio of two colours, 1 to 21 (WCAG 2.2): text needs 4.5, drawings 3."""
    darker, lighter = sorted((luminance(a), luminance(b)))
    return (lighter + 0.05) / (darker + 0.05)


def text_colour_on(fill: str) -> str:
    """Return INK or PAPER, whichever is better read on a fill."""
    return max((INK, PAPER), key=lambda colour: contrast(colour, fill))


def colour_distance(one: Lab, other: Lab) -> float:
    """Return the CIEDE2000 difference with all weights 1 (Sharma, Wu, Dalal 2005); about 1 is just seen."""
    one, other = _stretched(one, other)
    mean_light = (one.light + other.light) / 2
    mean_chroma = (one.chroma + other.chroma) / 2
    hue, turn = _mean_hue(one, other), _hue_step(one, other)
    off = (mean_light - 50) ** 2
    light = (other.light - one.light) / (1 + 0.015 * off / math.sqrt(20 + off))
    chroma = (other.chroma - one.chroma) / (1 + 0.045 * mean_chroma)
    hue_part = turn / (1 + 0.015 * mean_chroma * _hue_weight(hue))
    return math.sqrt(light**2 + chroma**2 + hue_part**2 + _rotation(hue, mean_chroma) * chroma * hue_part)


def _stretched(one: Lab, other: Lab) -> tuple[Lab, Lab]:
    """Stretch the red-green axis of near-greys: the first step of CIEDE2000."""
    factor = 1 + (1 - _share((one.chroma + other.chroma) / 2)) / 2
    return Lab(one.light, one.a * factor, one.b), Lab(other.light, other.a * factor, other.b)


def _share(chroma: float) -> float:
    return math.sqrt(chroma**7 / (chroma**7 + 25.0**7))


def _hue(colour: Lab) -> float:
    return math.degrees(math.atan2(colour.b, colour.a)) % 360


def _hue_step(one: Lab, other: Lab) -> float:
    """Return the part of the difference that is hue, as a chord."""
    product = one.chroma * other.chroma
    if product == 0:
        return 0.0
    step = _hue(other) - _hue(one)
    if abs(step) > 180:
        step -= math.copysign(360, step)
    return 2 * math.sqrt(product) * math.sin(math.radians(step / 2))


def _mean_hue(one: Lab, other: Lab) -> float:
    a, b = _hue(one), _hue(other)
    if one.chroma * other.chroma == 0:
        return a + b
    if abs(a - b) <= 180:
        return (a + b) / 2
    return (a + b + 360) / 2 if a + b < 360 else (a + b - 360) / 2


def _hue_weight(hue: float) -> float:
    terms = ((-0.17, 1, -30), (0.24, 2, 0), (0.32, 3, 6), (-0.20, 4, -63))
    return 1 + sum(size * math.cos(math.radians(times * hue + shift)) for size, times, shift in terms)


def _rotation(hue: float, chroma: float) -> float:
    """Return the factor that ties hue and chroma together among the blues."""
    angle = 30 * math.exp(-(((hue - 275) / 25) ** 2))
    return -2 * _share(chroma) * math.sin(math.radians(2 * angle))


def mean_colour(counts: Sequence[int]) -> str:
    """Return the colour that an area has from afar: light adds up, not the numbers of sRGB (IEC 61966-2-1).

    counts: of each of the 256 levels of red, then of green, then of blue.
    """
    assert len(counts) == 3 * _LEVELS, "three channels"
    light = [_linear_part(level / (_LEVELS - 1)) for level in range(_LEVELS)]
    channels = (counts[k : k + _LEVELS] for k in range(0, len(counts), _LEVELS))
    parts = [sum(map(operator.mul, channel, light)) / sum(channel) for channel in channels]
    return "#" + "".join(f"{round(_signal(part) * (_LEVELS - 1)):02x}" for part in parts)


def _linear(colour: str) -> tuple[float, float, float]:
    red, green, blue = (_linear_part(int(colour[k : k + 2], 16) / 255) for k in (1, 3, 5))
    return red, green, blue


def _linear_part(part: float) -> float:
    return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4


def _signal(light: float) -> float:
    return light * 12.92 if light <= 0.0031308 else 1.055 * light ** (1 / 2.4) - 0.055


def _root(t: float) -> float:
    return math.cbrt(t) if t > _EPSILON else (_KAPPA * t + 16) / 116
