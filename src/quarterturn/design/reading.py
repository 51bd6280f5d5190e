"""Read a design file: text in, a design and findings out, and never an exception."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from quarterturn.design.codes import CODES
from quarterturn.design.conversion import convert
from quarterturn.design.findings import Finding, Place
from quarterturn.design.limits import DEEPEST, LARGEST_FILE, LONGEST_LINE, MOST_VALUES
from quarterturn.design.locating import locate
from quarterturn.design.migrations import migrate
from quarterturn.design.model import Design
from quarterturn.design.notes import Notes
from quarterturn.design.sizes import with_sizes
from quarterturn.design.typed import take_shape
from quarterturn.measure import Units

_PLACE = re.compile(r" \(at (?:line (\d+), column (\d+)|end of document)\)$")
_LONG_KEY = re.compile(r"(?<![\w-])(?:[\w-]++[ \t]*+\.[ \t]*+){40}[\w-]")
"""The parser takes time by the square of the parts of a dotted key."""
_TWICE = re.compile(r"Cannot (overwrite|declare|mutate|redefine)|already", re.IGNORECASE)

_COMMA = re.compile(r"([+-]?\d{1,20}),(\d{1,20})(?:\s*#.*)?")
_QUOTED = re.compile(r"'[^']*'|\"[^\"]*\"")
_BARE_LENGTH = re.compile(
    r"([\w-]{1,60}) *= *(\d{1,6}(?: +\d{1,4})?/\d{1,4}|\d{1,6}(?:\.\d{1,6})? *(?:mm|cm|in)\b)"
)
"""A length without quotes in a table of one line, once what is in quotes is taken out."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What a file gave: a design, unless a finding stops it, and the findings in the order of their lines."""

    design: Design | None
    findings: tuple[Finding, ...]


def read_design(text: str | bytes, name: str = "design.toml") -> Reading:
    """Read the text of a design file. `name` is used where a finding speaks of the file as a whole."""
    fault = _unreadable(text, name)
    if fault:
        return Reading(None, (fault,))
    plain = text if isinstance(text, str) else text.decode("utf-8-sig")
    plain = plain.removeprefix("\ufeff")
    data = _parse(plain)
    if isinstance(data, Finding):
        return Reading(None, (data,))
    notes = Notes(Units.METRIC if data.get("units") == "metric" else Units.INCH)
    design = _design(data, notes)
    found = locate(plain, notes.findings) if notes.findings else ()
    return Reading(design, tuple(sorted(found, key=lambda finding: finding.place.line or 0)))


def _design(data: dict[str, Any], notes: Notes) -> Design | None:
    current = migrate(data, notes)
    if current is None:
        return None
    file = take_shape(current, notes)
    design = convert(file, current, notes)
    return design and with_sizes(design, file, current, notes)


def _unreadable(raw: str | bytes, name: str) -> Finding | None:
    """Return what makes the file no text for a design at all."""
    if len(raw) > LARGEST_FILE:
        return _whole(
            "file-too-large", f"{name} is too large for a design.", "A design is text of a few pages."
        )
    if isinstance(raw, bytes):
        try:
            text = raw.decode("utf-8-sig")
        except UnicodeDecodeError as error:
            line = raw.count(b"\n", 0, error.start) + 1
            return _whole(
                "not-text", f"{name} is not text in UTF-8.", "Save it as plain text in UTF-8.", line
            )
    else:
        text = raw
    if "\0" in text or not _encodes(text):
        return _whole("not-text", f"{name} is not text but some other kind of file.", "Open a design file.")
    if not text.strip("\ufeff \t\r\n"):
        return _whole("empty-file", f"{name} is empty.", "Begin with a new design.")
    return _long_line(text)


def _long_line(text: str) -> Finding | None:
    for number, line in enumerate(text.split("\n"), 1):
        if len(line) > LONGEST_LINE:
            sentence = f"Line {number} has {len(line)} characters."
            return _whole(
                "line-too-long", sentence, f"Break it, so that no line has over {LONGEST_LINE}.", number
            )
    return None


def _encodes(text: str) -> bool:
    """Tell whether text is free of halves of characters, which no file can hold."""
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return True


def _parse(text: str) -> dict[str, Any] | Finding:
    if _LONG_KEY.search(text):
        return _TOO_NESTED
    try:
        data = tomllib.loads(text)
    except RecursionError:
        return _TOO_NESTED
    except ValueError as error:
        return _syntax(str(error), text)
    return _overgrown(data) or data


def _overgrown(data: dict[str, Any]) -> Finding | None:
    """Return what makes data deeper or larger than any design, so that nothing later can be kept busy by it."""
    level: list[Any] = [data]
    values = 0
    for _ in range(DEEPEST):
        level = [inner for each in level for inner in _inside(each)]
        values += len(level)
    if level:
        return _TOO_NESTED
    if values > MOST_VALUES:
        return _whole("too-many", f"The file has {values} keys and values.", f"Keep it to {MOST_VALUES}.")
    return None


def _inside(value: Any) -> Iterable[Any]:
    return value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()


def _syntax(message: str, text: str) -> Finding:
    place = _PLACE.search(message)
    reason = message[: place.start()] if place else message
    line = int(place[1]) if place and place[1] else len(text.splitlines())
    column = int(place[2]) if place and place[2] else None
    if reason == "Unterminated string" and not (place and place[1]):
        code, sentence = "bad-syntax", "The text of several lines that begins here has no end."
        remedy, line = 'Close it with """ on a line of its own.', _last_opening(text)
    elif _TWICE.search(reason):
        code, sentence = "key-twice", "A key or a table is there twice."
        remedy = "Keep one of the two; codes, letters and names must differ."
    else:
        code, sentence = "bad-syntax", f"This line does not follow the rules of TOML: {reason.lower()}."
        remedy = _mend(text, line)
    return Finding(code, CODES[code][0], Place("", line=line, column=column), sentence, remedy)


def _last_opening(text: str) -> int:
    opening = max(text.rfind('"""'), text.rfind("'''"), 0)
    return text.count("\n", 0, opening) + 1


def _mend(text: str, line: int) -> str:
    """Guess what is wrong with a line from what is often wrong."""
    lines = text.split("\n")
    bare = lines[min(line, len(lines)) - 1].strip()
    name, equals, value = bare.partition("=")
    comma = _COMMA.fullmatch(value.strip())
    if comma:
        return f"A number has a full stop, not a comma: {name.strip()[:40]} = {comma[1]}.{comma[2]}."
    inner = _BARE_LENGTH.search(_QUOTED.sub("", bare))
    if inner and "{" in (bare[:1], value.strip()[:1]):
        return f"A length goes in quotes: {inner[1][:40]} = '{inner[2]}'."
    if equals and value.strip()[:1] not in ("'", '"', "[", "{", "") and "inf" not in value:
        return f"Text and lengths go in quotes: {name.strip()[:40]} = '{value.strip()[:40]}'."
    if equals and value.strip().startswith('"') and value.count('"') % 2:
        return "A length with an inch mark goes in single quotes: '4 1/2\"'."
    if not equals and not bare.startswith("["):
        return "A line is key = value, [table], or a comment that begins with #."
    return "Check quotes and brackets on this line and the one before."


def _whole(code: str, sentence: str, remedy: str, line: int | None = None) -> Finding:
    return Finding(code, CODES[code][0], Place("", line=line), sentence, remedy)


_TOO_NESTED = _whole(
    "too-nested", "Tables or brackets are nested too deeply.", "A design needs no more than a few levels."
)
