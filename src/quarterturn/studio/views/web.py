"""The web as it is unrolled, or its sheets one below the other: every ring where it is traced."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import islice

from quarterturn.geometry import Motion, Region, path_bounds, shift
from quarterturn.materials import Effort, WebPlan, WebRows, drawn_motion
from quarterturn.measure import Length, show_cloth, show_count, show_length
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import LengthView, View, inches_of, path_data


class TracingView(View):
    """A ring on the web: its box, its outline as it lies there, and its middle, at which the template is laid."""

    shape: str
    x: float
    y: float
    width: float
    height: float
    middle: tuple[float, float]
    outline: str
    number: int
    """Its number in the list of places, where each ring has a place of its own; 0 where it lies in a row."""


class WebCentreView(View):
    """Equal centres that rings leave: how many, how large, and what of the quilt's own shapes would fit."""

    shape: str
    count: int
    width: LengthView
    height: LengthView
    disc: LengthView
    fits: tuple[tuple[str, int], ...]


class WebView(View):
    """The web as it is unrolled, x across it; of sheets, all of them. `saved` is against plain rows."""

    width: LengthView
    used: LengthView
    bought: LengthView
    bound: LengthView
    saved: LengthView
    sheet: LengthView | None
    tracings: tuple[TracingView, ...]
    centres: tuple[WebCentreView, ...]
    unplaced: tuple[str, ...]


def web_view(size: OneSize, effort: Effort) -> WebView:
    """Return the web of a size with a tracing for every ring."""
    web = size.materials(effort).web
    rings = {rows.shape: _ring(size, rows) for rows in web.rows}
    return WebView(
        width=_length(size, web.web_width),
        used=_length(size, web.used_length),
        bought=_bought(size, web),
        bound=_length(size, web.bound),
        saved=_length(size, web.saved),
        sheet=None if web.sheet is None else _length(size, web.sheet),
        tracings=tuple(_tracing(rings, *each) for each in _laid(web)),
        centres=tuple(_centres(size, web)),
        unplaced=web.unplaced,
    )


def _ring(size: OneSize, rows: WebRows) -> Region:
    """Return the outside of a ring as it is drawn on the paper, about the middle of its shape."""
    templates = size.blocks.master(rows.recipe).templates
    shape = next(each for each, _ in templates if each.name == rows.shape)
    return drawn_motion(shape).region(shape.ring_out)


def _laid(web: WebPlan) -> Iterator[tuple[str, Motion, int]]:
    """Yield every ring: its shape, the motion that lays it, and its number where it has a place of its own."""
    if web.nested:
        for number, place in enumerate(web.nested.places, 1):
            down = shift(complex(0, place.sheet * float(web.sheet or 0)))
            yield place.shape, place.motion.then(down), number
        return
    top = 0.0
    for rows in web.rows:
        for number, motion in enumerate(_in_rows(rows, web.sheet)):
            sheet = number // rows.on_sheet if rows.on_sheet else 0
            yield rows.shape, motion.then(shift(complex(0, top + sheet * float(web.sheet or 0)))), 0
        taken = rows.sheets * web.sheet if web.sheet else rows.length + rows.gap
        top += float(taken)


def _in_rows(rows: WebRows, sheet: Length | None) -> Iterator[Motion]:
    """Yield how each ring of some rows is laid, from the beginning of the web or of its own sheet."""
    left, most = rows.count, rows.on_sheet if sheet else rows.count
    while left > 0:
        here = min(left, most)
        yield from rows.stagger.motions(here) if rows.stagger else islice(_plain(rows), here)
        left -= here


def _plain(rows: WebRows) -> Iterator[Motion]:
    width, height, gap = (float(each) for each in (rows.width, rows.height, rows.gap))
    for number in range(rows.count):
        row, column = divmod(number, rows.per_row)
        yield shift(complex(column * (width + gap) + width / 2, row * (height + gap) + height / 2))


def _tracing(rings: Mapping[str, Region], shape: str, motion: Motion, number: int) -> TracingView:
    ring = motion.region(rings[shape])
    box = path_bounds(max(ring.paths, key=lambda path: abs(path.area())))
    return TracingView(
        shape=shape,
        x=inches_of(box.left),
        y=inches_of(box.top),
        width=inches_of(box.width),
        height=inches_of(box.height),
        middle=(inches_of(motion.move.real), inches_of(motion.move.imag)),
        outline=path_data(ring),
        number=number,
    )


def _centres(size: OneSize, web: WebPlan) -> Iterator[WebCentreView]:
    for centre in web.centres:
        yield WebCentreView(
            shape=centre.shape,
            count=centre.count,
            width=_length(size, centre.width),
            height=_length(size, centre.height),
            disc=_length(size, centre.disc),
            fits=centre.fits,
        )


def _bought(size: OneSize, web: WebPlan) -> LengthView:
    text = show_count(web.sheets, "sheet") if web.sheet else show_cloth(web.bought, size.design.units)
    return LengthView(inches=inches_of(web.bought), text=text)


def _length(size: OneSize, value: Length) -> LengthView:
    return LengthView(inches=inches_of(value), text=show_length(value, size.design.units))
