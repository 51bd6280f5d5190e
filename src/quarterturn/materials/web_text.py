"""The plan of the web as text: rows, places, and the centres that remain."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from quarterturn.materials.model import WebPlan, WebRows
from quarterturn.materials.nested import NestedWeb, WebCentre
from quarterturn.materials.staggered import Stagger
from quarterturn.measure import Length, Units, aligned, show_cloth, show_count, show_plain

_ROWS_HEAD = ("shape", "count", "room", "gap", "in a row", "rows")
_PLACES_HEAD = ("", "shape", "across", "along", "turned", "within")
_CENTRES_HEAD = ("what remains", "count", "size", "disc", "holds", "still fits")


def web_text(web: WebPlan, units: Units) -> Iterator[str]:
    """Return what is bought, how that compares with plain rows and with the bound, and where each tracing lies."""
    plain = partial(show_plain, units=units)
    if web.sheet:
        yield f"web in sheets of {plain(web.web_width)} × {plain(web.sheet)}, {web.sheets} bought"
    else:
        bought = show_cloth(web.bought, units)
        yield f"web {plain(web.web_width)} wide, {plain(web.used_length)} used, {bought} bought"
    if web.rows:
        yield _compared(web, units)
        heads = (*_ROWS_HEAD, "rows on a sheet", "sheets") if web.sheet else _ROWS_HEAD
        yield from aligned([heads, *(_rows(group, units) for group in web.rows)], right=(1, 3, 4, 5, 6, 7))
    if web.nested:
        yield from _nested(web, web.nested, units)
    else:
        yield from (_stagger(g.shape, g.stagger, units) for g in web.rows if g.stagger)
    if web.centres:
        rows = (_centre(centre, units) for centre in web.centres)
        yield from aligned([_CENTRES_HEAD, *rows], right=(1, 3))
    if web.unplaced:
        yield f"  wider than the web: {', '.join(web.unplaced)}"


def _compared(web: WebPlan, units: Units) -> str:
    told = (_taken(length, web, units) for length in (web.plain_length, web.saved, web.bound))
    plain, saved, bound = told
    return f"  in plain rows {plain}, saved {saved}, lower bound {bound}, gap {web_gap_percent(web):.1f} %"


def _taken(length: Length, web: WebPlan, units: Units) -> str:
    return show_count(int(length / web.sheet), "sheet") if web.sheet else show_plain(length, units)


def web_gap_percent(web: WebPlan) -> float:
    """Return by how much a plan may exceed the best one, in percent of the lower bound."""
    return float((web.used_length / web.bound - 1) * 100) if web.bound else 0.0


def _rows(group: WebRows, units: Units) -> tuple[str, ...]:
    room = f"{show_plain(group.width, units)} × {show_plain(group.height, units)}"
    gap = show_plain(group.gap, units)
    told = (group.shape, str(group.count), room, gap, str(group.per_row), str(group.rows))
    return (*told, str(group.rows_on_sheet), str(group.sheets)) if group.rows_on_sheet else told


def _stagger(shape: str, rule: Stagger, units: Units) -> str:
    plain = partial(show_plain, units=units)
    turned = ", all turned 90°" if rule.quarter else ""
    flipped = ", those in even rows 180° more" if rule.flipped else ""
    return (
        f"  {shape}: rows of {rule.odd} and {rule.even} in turn, {plain(rule.pitch)} apart from "
        f"{plain(rule.first)} and {plain(rule.second)} across, rows {plain(rule.down)} and {plain(rule.back)} apart "
        f"from {plain(rule.top)} along{turned}{flipped}"
    )


def _nested(web: WebPlan, nested: NestedWeb, units: Units) -> Iterator[str]:
    yield f"nested, {show_plain(nested.gap, units)} apart"
    heads = (*_PLACES_HEAD, "sheet") if web.sheet else _PLACES_HEAD
    yield from aligned([heads, *_places(web, nested, units)], right=(0, 2, 3, 4, 5, 6))


def _places(web: WebPlan, nested: NestedWeb, units: Units) -> Iterator[tuple[str, ...]]:
    for number, place in enumerate(nested.places, start=1):
        across, along = (show_plain(part, units) for part in (place.middle.real, place.middle.imag))
        within = "" if place.within is None else str(place.within + 1)
        told = (str(number), place.shape, across, along, f"{place.turned}°", within)
        yield (*told, str(place.sheet + 1)) if web.sheet else told


def _centre(centre: WebCentre, units: Units) -> tuple[str, ...]:
    size = f"{show_plain(centre.width, units)} × {show_plain(centre.height, units)}"
    disc, holds = show_plain(centre.disc, units), ", ".join(centre.holds)
    fits = ", ".join(f"{most} {shape}" for shape, most in centre.fits)
    return f"centre of {centre.shape}", str(centre.count), size, disc, holds, fits
