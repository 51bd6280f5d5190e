"""Write outlines into the text of a design file, which from then on needs no drawing."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Mapping

from quarterturn.design.formatting import outline_table, path_lines
from quarterturn.design.keys import dotted
from quarterturn.design.text import write_length
from quarterturn.design.writing import WriteError, write_design
from quarterturn.geometry import OUTLINES, Path, fitted, path_bounds, scaled, write_path_data
from quarterturn.measure import MM, Length, Units

DIGITS = 9
"""Path data is written to so many digits behind the point: as fine as `geometry` tells points apart."""
_LONGEST_NAME = 40
_RULERS = (Length(1, 64), MM / 100)
"""A width is a whole number of one of these where it is so but for float noise."""
_NOISE = 1e-7


def own_width(path: Path) -> Length:
    """Return the true width of a path in inches: on a ruler where it is so, else to a ten-thousandth of an inch."""
    width = path_bounds(path).width
    for part in _RULERS:
        count = round(width / float(part))
        if abs(count * float(part) - width) < _NOISE:
            return count * part
    return Length(round(width * 10**4), 10**4)


def width_text(path: Path) -> str:
    """Return the true width of a path as a design file has it."""
    return write_length(own_width(path), Units.INCH)


def table_of(name: str, path: Path, units: Units) -> str:
    """Return the table of an outline as a design file in such units has it, its middle at 0."""
    return outline_table(name, _data(path, units), own_width(path), units)


def _data(path: Path, units: Units) -> str:
    size = path_bounds(path).width / float(MM if units is Units.METRIC else 1)
    return write_path_data(scaled(fitted(path), size), DIGITS)


def suggested_names(identities: Iterable[str]) -> list[str]:
    """Return a name for each id of a drawing: plain words, all different, none of them one of the program's own."""
    names: list[str] = []
    for identity in identities:
        words = "".join(c if c.isalnum() else " " for c in identity.lower()).split()
        name = "-".join(words)[:_LONGEST_NAME] or "outline"
        name = f"own-{name}" if name in OUTLINES else name
        count, free = 1, name
        while free in names:
            count += 1
            free = f"{name}-{count}"
        names.append(free)
    return names


def with_outlines(text: str, outlines: Mapping[str, Path], *, replace: bool = False) -> str:
    """Return the text of a design with outlines added behind its last line, all else as it was to the letter.

    An outline of the same name is exchanged where it stands, if `replace`. Raises WriteError where the text is no
    TOML, where it has such an outline that is not to be replaced, and where nothing can be added to it.
    """
    data = _parsed(text)
    units = Units.METRIC if data.get("units") == "metric" else Units.INCH
    there = data.get("outlines", {})
    if not isinstance(there, dict):
        raise WriteError("its outlines are no tables")
    for name, path in outlines.items():
        if name not in there:
            text = _added(text, table_of(name, path, units))
        elif replace:
            text = _exchanged(text, name, path, units)
        else:
            raise WriteError(f"it has an outline {name!r} already")
    now = _parsed(text).get("outlines")
    if not isinstance(now, dict) or set(now) != {*there, *outlines}:
        raise WriteError("its outlines cannot be added to; write each as a table [outlines.NAME]")
    return text


def _parsed(text: str) -> Mapping[str, object]:
    try:
        return tomllib.loads(text.removeprefix("\ufeff"))
    except (ValueError, RecursionError) as error:
        raise WriteError(f"it does not follow TOML: {error}") from error


def _added(text: str, table: str) -> str:
    end = "\r\n" if "\r\n" in text else "\n"
    return f"{text.rstrip()}{end}{end}{table.replace(chr(10), end)}{end}"


def _exchanged(text: str, name: str, path: Path, units: Units) -> str:
    key = dotted("outlines", name)
    lines, width = path_lines(_data(path, units)), write_length(own_width(path), units)
    return write_design(text, {f"{key}.path": f"{lines}\n", f"{key}.width": width})
