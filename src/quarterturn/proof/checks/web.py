"""Checks of the web: plain and staggered rows, nested tracings, sheets (group D of the trade's list)."""

from __future__ import annotations

import math
from collections.abc import Iterator

from quarterturn.design import Severity
from quarterturn.materials import Stagger, WebPlan, WebRows
from quarterturn.measure import Length, Units, show_cloth, show_count
from quarterturn.proof.checks.drafting import called, drafts_of, shapes_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.model import Pattern

CLOSE = 0.05
"""Inches. Middles are brought to a ruler, and rooms are boxes of curves."""


def web_rows(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the plain rows of tracings on the web, and their number."""
    web, units = pattern.materials.web, pattern.design.units
    for rows in web.rows:
        across = rows.per_row * rows.width + (rows.per_row - 1) * rows.gap
        down = rows.rows_on_sheet * (rows.height + rows.gap) - rows.gap
        if rows.stagger is None and web.sheet and web.nested is None and not 0 < down <= web.sheet:
            sentence = (
                f"{show_count(rows.rows_on_sheet, 'row')} of {rows.shape} should fit a sheet, {tell(web.sheet, units)} "
                f"high, and take {tell(down, units)}."
            )
            yield Fault("making.web_sheet", sentence, REBUILD, rows.shape)
        if rows.stagger is None and (across > web.web_width or rows.per_row * rows.rows < rows.count):
            sentence = (
                f"{show_count(rows.rows, 'row')} of {rows.per_row} tracings of {rows.shape}, {tell(across, units)} "
                f"across, do not hold {rows.count} on web {tell(web.web_width, units)} wide."
            )
            yield Fault("making.web_width", sentence, REBUILD, rows.shape)


def web_staggered(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate staggered rows: how many they hold, their edges, and how far neighbours are apart."""
    web, units = pattern.materials.web, pattern.design.units
    circles = {recipe.name for recipe, draft in drafts_of(pattern.design) if draft.peak is not None}
    for rows in web.rows:
        if rows.stagger is None or web.nested:
            continue
        for want, found, what in _staggered(rows, rows.stagger, web, rows.recipe in circles):
            if found < want - CLOSE / 10:
                sentence = (
                    f"The staggered rows of {rows.shape} need {_told(want, what, units)} {what}, and have "
                    f"{_told(found, what, units)}."
                )
                yield Fault("making.web_width", sentence, REBUILD, rows.shape)


COUNTED = "tracings"


def _told(value: float, what: str, units: Units) -> str:
    return f"{value:g}" if what == COUNTED else tell(value, units)


def _staggered(
    rows: WebRows, rule: Stagger, web: WebPlan, is_circle: bool
) -> Iterator[tuple[float, float, str]]:
    """Return what is needed, what there is, and of what."""
    sides = float(rows.width), float(rows.height)
    wide, high = sides[::-1] if rule.quarter else sides
    held = rows.rows // 2 * (rule.odd + rule.even) + rows.rows % 2 * rule.odd
    yield rows.count, held, COUNTED
    yield wide + float(rows.gap), float(rule.pitch), "between the middles in a row"
    last = max(rule.first + (rule.odd - 1) * rule.pitch, rule.second + (rule.even - 1) * rule.pitch)
    yield float(last) + wide / 2, float(web.web_width), "of web across"
    there = rows.rows_on_sheet or rows.rows
    along = rule.top + (there - 1) // 2 * (rule.down + rule.back) + (there - 1) % 2 * rule.down
    yield float(along) + high / 2, float(web.sheet or rows.staggered_length), "of web along"
    if is_circle:
        aside = float(abs(rule.second - rule.first))
        nearest = min(math.hypot(aside, float(rule.down)), math.hypot(aside, float(rule.back)))
        yield wide + float(rows.gap), nearest, "from row to row"


def web_room(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the whole ring has room on the web."""
    making, units = pattern.design.making, pattern.design.units
    drafts = [(recipe.name, shape) for recipe, shape in shapes_of(pattern.design)]
    over = 2 * float(making.ring_out)
    for rows in pattern.materials.web.rows:
        wanted = [(s.width + over, s.height + over) for name, s in drafts if name == rows.recipe]
        want = min(wanted, key=lambda size: abs(size[0] - rows.width) + abs(size[1] - rows.height))
        if rows.width < want[0] - CLOSE / 10 or rows.height < want[1] - CLOSE / 10:
            sentence = (
                f"A ring of {rows.shape} measures {tell(want[0], units)} × {tell(want[1], units)}, and has room of "
                f"{tell(rows.width, units)} × {tell(rows.height, units)} on the web."
            )
            yield Fault("making.ring_out", sentence, REBUILD, rows.shape)


def web_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Name the shapes that are wider than the web, or larger than a sheet of it."""
    making, units = pattern.design.making, pattern.design.units
    width, height = making.web_sheet or (making.web_width, None)
    for recipe, draft in shapes_of(pattern.design):
        across, down = (side + 2 * float(making.ring_out) for side in (draft.width, draft.height))
        key = "making.web_sheet" if height else "making.web_width"
        remedy = f"Make the shape smaller, or set {key} to the size of your web."
        if across > width:
            sentence = (
                f"The ring of {called(recipe, draft)} is {near(across, units)} across, and the web "
                f"{tell(width, units)} wide."
            )
            yield Fault(key, sentence, remedy, recipe.name)
        elif height and down > height:
            sentence = (
                f"The ring of {called(recipe, draft)} is {near(down, units)} high, and a sheet of web "
                f"{tell(height, units)}."
            )
            yield Fault(key, sentence, remedy, recipe.name)


def web_length(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the length of web, or the number of sheets; hold it to the bound and to plain rows."""
    web, units = pattern.materials.web, pattern.design.units
    used = _length(web)
    if used > web.bought or web.used_length > web.bought:
        sentence = (
            f"The tracings take {tell(max(used, web.used_length), units)} of web, and {show_cloth(web.bought, units)} "
            "is bought."
        )
        yield Fault("making.web_width", sentence, REBUILD)
    if web.rows and not web.bound <= web.used_length <= web.plain_length:
        sentence = (
            f"The tracings are said to take {tell(web.used_length, units)} of web, in plain rows "
            f"{tell(web.plain_length, units)}, and never less than {tell(web.bound, units)}."
        )
        yield Fault("making.web_width", sentence, REBUILD)


def _length(web: WebPlan) -> Length:
    """Return what tracings take at least by how they lie."""
    if web.nested and web.sheet:
        return (max(place.sheet for place in web.nested.places) + 1) * web.sheet
    if web.nested:
        return web.nested.length
    if web.sheet:
        return sum((-(-rows.count // _on_sheet(rows)) for rows in web.rows), 0) * web.sheet
    plain = (rows.rows * rows.height for rows in web.rows if rows.stagger is None)
    shifted = (rows.staggered_length for rows in web.rows if rows.stagger)
    return sum((*plain, *shifted), Length(0))


def _on_sheet(rows: WebRows) -> int:
    """Return how many tracings a full sheet holds, and never none."""
    odd, even = (rows.stagger.odd, rows.stagger.even) if rows.stagger else (rows.per_row, rows.per_row)
    return max(1, (rows.rows_on_sheet + 1) // 2 * odd + rows.rows_on_sheet // 2 * even)


def web_nested(pattern: Pattern) -> Iterator[Fault]:
    """Count the places of nested tracings, and hold them to the web or to their sheets."""
    web, units = pattern.materials.web, pattern.design.units
    if web.nested is None:
        return
    along, sheets = web.sheet or web.nested.length, max(1, web.sheets)
    for rows in web.rows:
        places = [place for place in web.nested.places if place.shape == rows.shape]
        over = float(min(rows.width, rows.height)) / 2 - CLOSE
        off = sum(
            not (
                over <= place.middle.real <= web.web_width - over
                and over <= place.middle.imag <= along - over
                and 0 <= place.sheet < sheets
            )
            for place in places
        )
        if len(places) != rows.count or off:
            sentence = (
                f"{show_count(rows.count, 'tracing')} of {rows.shape} should lie on web {tell(web.web_width, units)} "
                f"wide, and {len(places)} do, {off} of them over its edge."
            )
            yield Fault("making.web_width", sentence, REBUILD, rows.shape)


WEB = (
    check("web-row-overfull", Severity.STOPS, (48,), "The tracings fit their rows of web.", web_rows),
    check(
        "web-staggered-wrong",
        Severity.STOPS,
        (48,),
        "Staggered rows hold their tracings apart.",
        web_staggered,
    ),
    check("web-room", Severity.STOPS, (48,), "Each ring has room on the web.", web_room),
    check("web-too-narrow", Severity.STOPS, (48,), "The web is wide enough for each ring.", web_narrow),
    check(
        "web-nested-wrong", Severity.STOPS, (48,), "Nested tracings lie on the web, all of them.", web_nested
    ),
    check("web-short", Severity.STOPS, (48,), "Enough web is bought.", web_length),
)
